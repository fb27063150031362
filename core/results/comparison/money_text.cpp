// The texts of what both sides cost over the batches.
#include "core/results/comparison/side_sentences.h"
#include "core/results/comparison/side_texts.h"
#include "core/text/phrase.h"

#include <cmath>

namespace holdband::results {

using analysis::Ahead;
using analysis::Crossing;
using analysis::CrossingKind;
using analysis::Measure;
using analysis::MeasureId;

namespace {

std::string moneyBounds(const analysis::Bounded& money, const SideFormat& format)
{
    return format.money(money.value) + format.bounds(money, 2);
}

/// The first batch after which the line is lower.
std::string batchAfter(double crossing)
{
    return std::to_string(static_cast<long>(std::floor(crossing)) + 1);
}

std::string years(double batches, const SideBySide& review, const SideFormat& format)
{
    const auto perYear = review.weighing.batchesPerYear;
    if (!perYear)
        return {};
    return Phrase::tr(", after %1 years").with(format.fixed(batches / *perYear, 1));
}

std::string notKnownHowSure()
{
    return " " + Phrase::tr("(how sure that is, is not known)").text();
}

std::string crossingRange(const Crossing& crossing)
{
    if (crossing.earliest && crossing.latest) {
        if (batchAfter(*crossing.earliest) == batchAfter(*crossing.latest))
            return {};
        return " " + Phrase::tr("(between batch %1 and batch %2)")
                         .with(batchAfter(*crossing.earliest), batchAfter(*crossing.latest));
    }
    if (crossing.earliest)
        return " " + Phrase::tr("(not before batch %1; within the bounds perhaps never)")
                         .with(batchAfter(*crossing.earliest));
    return notKnownHowSure();
}

std::string crossesText(const SideBySide& review, const CostScenario& scenario,
                        const SideFormat& format)
{
    const Crossing& crossing = scenario.crossing;
    const bool aLater = *crossing.cheaperFirst == Ahead::b;
    const std::string& later = aLater ? review.a : review.b;
    const double dearer = std::abs(scenario.a.parts - scenario.b.parts);
    const double saved = std::abs(scenario.a.perBatch.value - scenario.b.perBatch.value);
    return Phrase::tr("%1 costs %2 more at first and saves %3 with each batch: it is the cheaper "
                      "one from batch %4 on")
               .with(later, format.money(dearer), format.money(saved),
                     batchAfter(crossing.batches)) +
           years(crossing.batches, review, format) + crossingRange(crossing) + ".";
}

std::string neverText(const SideBySide& review, const CostScenario& scenario)
{
    const Crossing& crossing = scenario.crossing;
    if (!crossing.earliest && !crossing.sure && scenario.a.parts == scenario.b.parts)
        return Phrase::tr("Both cost the same at first, and whose energy is cheaper is too close "
                          "to call.");
    std::string text = Phrase::tr("%1 is cheaper from the first batch on: the lines never cross")
                           .with(*crossing.cheaperFirst == Ahead::a ? review.a : review.b);
    if (crossing.earliest)
        text += Phrase::tr("; within the bounds they might, but not before batch %1")
                    .with(batchAfter(*crossing.earliest));
    else if (!crossing.sure)
        text += notKnownHowSure();
    return text + ".";
}

std::string priceText(double price, const SideFormat& format)
{
    const int decimals = std::abs(price * 100.0 - std::round(price * 100.0)) < 1e-9 ? 2 : 4;
    const std::string number = format.fixed(price, decimals);
    const std::string& currency = format.settings.currency;
    return currency == "USD" ? "$" + number : currency.empty() ? number : number + " " + currency;
}

std::string scenarioName(const SideBySide& review, const CostScenario& scenario,
                         const SideFormat& format)
{
    switch (scenario.basis) {
    case CostBasis::logbookPrices:
        if (!scenario.pricePerKwh)
            return Phrase::tr("at the logbook's prices");
        return Phrase::tr("at the logbook's price of %1 for a kWh")
            .with(priceText(*scenario.pricePerKwh, format));
    case CostBasis::otherPrice:
        return Phrase::tr("at %1 for a kWh").with(priceText(*scenario.pricePerKwh, format));
    case CostBasis::sameWeather:
        break;
    }
    return Phrase::tr("of %1 in the same weather, at %2 for a kWh")
        .with(format.duration(review.weather.hold->hours),
              priceText(*scenario.pricePerKwh, format));
}

std::string crossingSentence(const SideBySide& review, const CostScenario& scenario,
                             const SideFormat& format)
{
    switch (scenario.crossing.kind) {
    case CrossingKind::crosses:
        return crossesText(review, scenario, format);
    case CrossingKind::never:
        return neverText(review, scenario);
    default:
        return Phrase::tr("Both cost the same, however many batches.");
    }
}

std::string yearSentence(const SideBySide& review, const CostScenario& scenario,
                         const SideFormat& format)
{
    const auto perYear = review.money.batchesPerYear;
    if (!perYear)
        return {};
    return Phrase::tr("At %1 batches a year the energy costs %2 a year with %3 and %4 with %5.")
        .with(format.fixed(*perYear, *perYear == std::round(*perYear) ? 0 : 1),
              format.money(scenario.a.perBatch.value * *perYear), review.a,
              format.money(scenario.b.perBatch.value * *perYear), review.b);
}

std::string timeOfUseText(const SideBySide& review, const SideFormat& format)
{
    const Money& money = review.money;
    if (!money.meanPriceA || !money.meanPriceB)
        return {};
    return Phrase::tr("The price changes with the time of day: %1 paid %2 for a kWh in the mean, "
                      "%3 %4.")
        .with(review.a, priceText(*money.meanPriceA, format), review.b,
              priceText(*money.meanPriceB, format));
}

std::string partsText(const std::optional<double>& parts, const SideFormat& format)
{
    return parts ? format.money(*parts) : Phrase::tr("no parts listed").text();
}

std::string missingText(const SideBySide& review)
{
    const Money& money = review.money;
    if (!money.partsA || !money.partsB)
        return Phrase::tr("The total can't be drawn: %1 has no parts listed.")
            .with(money.partsA ? review.setupB : review.setupA);
    const Measure& energy = measureOf(review, MeasureId::energy);
    if (!energy.a || !energy.b)
        return Phrase::tr("The total can't be drawn: the energy of one of them is not known.");
    return Phrase::tr("The total can't be drawn: the logbook knows no price for a kWh.");
}

} // namespace

MoneyText costsText(const SideBySide& review, const SideFormat& format)
{
    const Money& money = review.money;
    MoneyText text;
    text.partsA = partsText(money.partsA, format);
    text.partsB = partsText(money.partsB, format);
    for (const CostScenario& scenario : money.scenarios)
        text.scenarios.push_back(
            {scenarioName(review, scenario, format), moneyBounds(scenario.a.perBatch, format),
             moneyBounds(scenario.b.perBatch, format), crossingSentence(review, scenario, format),
             yearSentence(review, scenario, format)});
    text.timeOfUse = timeOfUseText(review, format);
    if (money.scenarios.empty())
        text.why = missingText(review);
    return text;
}

} // namespace holdband::results
