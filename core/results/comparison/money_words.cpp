// What both cost over the batches, in words.
#include "core/analysis/bounded.h"
#include "core/results/comparison/side_models.h"
#include "core/results/comparison/side_sentences.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <cmath>

namespace holdband::results {

using analysis::Ahead;
using analysis::Crossing;
using analysis::CrossingKind;
using analysis::Measure;
using analysis::MeasureId;
using analysis::SideCost;

namespace {

constexpr int usualLastBatch = 20;
constexpr int furthestBatch = 1000;
constexpr double yearsShown = 5.0;

std::string moneyBounds(const analysis::Bounded& money, const SideFormat& manner)
{
    return manner.money(money.value) + manner.bounds(money, 2);
}

/// The first batch after which the line lies lower.
std::string batchAfter(double crossing)
{
    return std::to_string(static_cast<long>(std::floor(crossing)) + 1);
}

std::string years(double batches, const SideBySide& review, const SideFormat& manner)
{
    const auto perYear = review.weighing.batchesPerYear;
    if (!perYear)
        return {};
    return Phrase::tr(", after %1 years").with(manner.fixed(batches / *perYear, 1));
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
                        const SideFormat& manner)
{
    const Crossing& crossing = scenario.crossing;
    const bool aLater = *crossing.cheaperFirst == Ahead::b;
    const std::string& later = aLater ? review.a : review.b;
    const double dearer = std::abs(scenario.a.parts - scenario.b.parts);
    const double saved = std::abs(scenario.a.perBatch.value - scenario.b.perBatch.value);
    return Phrase::tr("%1 costs %2 more at first and saves %3 with each batch: it is the cheaper "
                      "one from batch %4 on")
               .with(later, manner.money(dearer), manner.money(saved),
                     batchAfter(crossing.batches)) +
           years(crossing.batches, review, manner) + crossingRange(crossing) + ".";
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

void addScenario(SideBySide& review, const SideFormat& manner, std::string name,
                 const analysis::Bounded& a, const analysis::Bounded& b)
{
    MoneyWords& money = review.money;
    CostScenario scenario;
    scenario.name = std::move(name);
    scenario.a = {*money.partsA, a};
    scenario.b = {*money.partsB, b};
    scenario.crossing = analysis::crossingOf(scenario.a, scenario.b);
    scenario.perBatchA = moneyBounds(a, manner);
    scenario.perBatchB = moneyBounds(b, manner);
    if (scenario.crossing.kind == CrossingKind::crosses)
        scenario.sentence = crossesText(review, scenario, manner);
    else if (scenario.crossing.kind == CrossingKind::never)
        scenario.sentence = neverText(review, scenario);
    else
        scenario.sentence = Phrase::tr("Both cost the same, however many batches.");
    money.scenarios.push_back(std::move(scenario));
}

std::string priceText(double price, const SideFormat& manner)
{
    const int decimals = std::abs(price * 100.0 - std::round(price * 100.0)) < 1e-9 ? 2 : 4;
    const std::string number = manner.fixed(price, decimals);
    const std::string& currency = manner.settings.currency;
    return currency == "USD" ? "$" + number : currency.empty() ? number : number + " " + currency;
}

std::string logbooksPrice(const SideBySide& review, const SideFormat& manner, bool windows)
{
    if (windows || !review.settings.tariffChanges.empty() || !review.settings.tariff.pricePerKwh)
        return Phrase::tr("at the logbook's prices");
    return Phrase::tr("at the logbook's price of %1 for a kWh")
        .with(priceText(*review.settings.tariff.pricePerKwh, manner));
}

/// Their batches are seldom alike: the same hold in the same weather, where the models decide, at
/// what a kWh cost both in the mean.
void addSameWeather(SideBySide& review, const SideFormat& manner)
{
    const Measure& cost = measureOf(review, MeasureId::cost);
    const Measure& energy = measureOf(review, MeasureId::energy);
    if (!review.weather.ahead || !cost.a || !cost.b || !energy.a || !energy.b)
        return;
    const double kwh = energy.a->value + energy.b->value;
    if (!(kwh > 0.0))
        return;
    const double price = (cost.a->value + cost.b->value) / kwh;
    addScenario(review, manner,
                Phrase::tr("of %1 in the same weather, at %2 for a kWh")
                    .with(manner.duration(review.weather.hold.hours), priceText(price, manner)),
                analysis::scaled(notNegative(review.weather.a.atReference->kwh), price),
                analysis::scaled(notNegative(review.weather.b.atReference->kwh), price));
}

void addTimeOfUse(SideBySide& review, const SideFormat& manner)
{
    const Measure& cost = measureOf(review, MeasureId::cost);
    const Measure& energy = measureOf(review, MeasureId::energy);
    const bool known =
        cost.a && cost.b && energy.a && energy.b && energy.a->value > 0.0 && energy.b->value > 0.0;
    if (known)
        review.money.timeOfUse =
            Phrase::tr("The price changes with the time of day: %1 paid %2 for a kWh in the mean, "
                       "%3 %4.")
                .with(review.a, priceText(cost.a->value / energy.a->value, manner), review.b,
                      priceText(cost.b->value / energy.b->value, manner));
}

/// How far the chart goes: past the crossings, and some years of brewing.
int lastBatchOf(const SideBySide& review)
{
    double last = usualLastBatch;
    if (review.weighing.batchesPerYear)
        last = std::max(last, yearsShown * *review.weighing.batchesPerYear);
    for (const CostScenario& scenario : review.money.scenarios)
        last = std::max(
            last, std::min(1.3 * scenario.crossing.batches, static_cast<double>(furthestBatch)));
    return static_cast<int>(std::ceil(std::min(last, static_cast<double>(furthestBatch))));
}

std::string missingText(const SideBySide& review)
{
    const MoneyWords& money = review.money;
    if (!money.partsA || !money.partsB)
        return Phrase::tr("The total can't be drawn: %1 has no parts listed.")
            .with(money.partsA ? review.setupB : review.setupA);
    const Measure& energy = measureOf(review, MeasureId::energy);
    if (!energy.a || !energy.b)
        return Phrase::tr("The total can't be drawn: the energy of one of them is not known.");
    return Phrase::tr("The total can't be drawn: the logbook knows no price for a kWh.");
}

void addYear(SideBySide& review, const SideFormat& manner)
{
    const auto perYear = review.weighing.batchesPerYear;
    if (!perYear)
        return;
    for (CostScenario& scenario : review.money.scenarios)
        scenario.yearSentence =
            Phrase::tr("At %1 batches a year the energy costs %2 a year with %3 and %4 with %5.")
                .with(manner.fixed(*perYear, *perYear == std::round(*perYear) ? 0 : 1),
                      manner.money(scenario.a.perBatch.value * *perYear), review.a,
                      manner.money(scenario.b.perBatch.value * *perYear), review.b);
}

} // namespace

void addMoney(SideBySide& review, const SideFormat& manner, const Setup& setupA,
              const Setup& setupB, bool windows)
{
    MoneyWords& money = review.money;
    money.partsA = partsTotal(setupA);
    money.partsB = partsTotal(setupB);
    const auto partsText = [&](const std::optional<double>& parts) {
        return parts ? manner.money(*parts) : Phrase::tr("no parts listed").text();
    };
    money.partsTextA = partsText(money.partsA);
    money.partsTextB = partsText(money.partsB);
    money.batchesPerYear = review.weighing.batchesPerYear;
    if (windows)
        addTimeOfUse(review, manner);
    const Measure& cost = measureOf(review, MeasureId::cost);
    const Measure& energy = measureOf(review, MeasureId::energy);
    if (money.partsA && money.partsB) {
        if (cost.a && cost.b)
            addScenario(review, manner, logbooksPrice(review, manner, windows), *cost.a, *cost.b);
        if (const auto other = review.weighing.otherPricePerKwh; other && energy.a && energy.b)
            addScenario(review, manner,
                        Phrase::tr("at %1 for a kWh").with(priceText(*other, manner)),
                        analysis::scaled(*energy.a, *other), analysis::scaled(*energy.b, *other));
    }
    if (money.partsA && money.partsB)
        addSameWeather(review, manner);
    if (money.scenarios.empty())
        money.why = missingText(review);
    money.lastBatch = lastBatchOf(review);
    addYear(review, manner);
}

} // namespace holdband::results
