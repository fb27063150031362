// The sentences at the top of a forecast, what is missing for one, and what is assumed in it.
#include "core/results/forecast/forecast_texts.h"

#include "core/analysis/forecast_spread.h"
#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <cmath>

namespace holdband::results {

using analysis::Ahead;
using analysis::ForecastLack;
using analysis::HoldOutlook;

namespace {

std::string figureOf(const SetupForecast& setup, const ForecastFormat& format)
{
    const analysis::EnergyForecast& total = *setup.energy.total;
    return format.kwh(total.kwh, total.low(), total.high());
}

std::string wouldUse(const SetupForecast& setup, const ForecastFormat& format)
{
    return Phrase::tr("%1 would use about %2", "a setup, an energy")
        .with(setup.setup.name, figureOf(setup, format));
}

std::string headlineOfTwo(const SetupForecast& a, const SetupForecast& b, Ahead less,
                          const ForecastFormat& format)
{
    if (less == Ahead::tooClose)
        return Phrase::tr("Too close to call: %1 would use %2, %3 would use %4.")
            .with(a.setup.name, figureOf(a, format), b.setup.name, figureOf(b, format));
    const SetupForecast& lower = less == Ahead::a ? a : b;
    const SetupForecast& higher = less == Ahead::a ? b : a;
    return Phrase::tr("%1 would use less: %2, %3 %4.", "a setup, its energy, the other one")
        .with(lower.setup.name, figureOf(lower, format), higher.setup.name,
              figureOf(higher, format));
}

/// Which of two is cold sooner, where their intervals don't overlap; else that they do.
std::string coldSooner(const SetupForecast& a, const SetupForecast& b, const ForecastFormat& format)
{
    if (!a.crash || !b.crash)
        return {};
    const bool aFirst = a.crash->hours < b.crash->hours;
    const SetupForecast& first = aFirst ? a : b;
    const SetupForecast& second = aFirst ? b : a;
    const double hours = second.crash->hours - first.crash->hours;
    if (first.crash->high < second.crash->low)
        return Phrase::tr("%1 would be cold about %2 sooner.")
            .with(first.setup.name, format.hours(hours));
    return Phrase::tr("Which is cold sooner is too close to call (%1 after %2, %3 after %4).")
        .with(first.setup.name, format.hours(first.crash->hours), second.setup.name,
              format.hours(second.crash->hours));
}

std::string holdSentence(const SetupForecast& setup)
{
    switch (setup.hold) {
    case HoldOutlook::heldMore:
        return Phrase::tr("%1 was seen holding more than this asks for.").with(setup.setup.name);
    case HoldOutlook::atEdge:
        return Phrase::tr("This is at the edge of what %1 was seen holding.")
            .with(setup.setup.name);
    case HoldOutlook::beyondSeen:
        return Phrase::tr("This asks for more than %1 was seen holding.").with(setup.setup.name);
    case HoldOutlook::unknown:
        break;
    }
    return {};
}

std::string holdSentences(const std::vector<SetupForecast>& setups)
{
    const auto all = [&](HoldOutlook hold) {
        return setups.size() == 2 && setups[0].hold == hold && setups[1].hold == hold;
    };
    if (all(HoldOutlook::heldMore))
        return Phrase::tr("Both were seen holding more than this asks for.");
    if (all(HoldOutlook::beyondSeen))
        return Phrase::tr("This asks for more than either was seen holding.");
    std::string text;
    for (const SetupForecast& setup : setups) {
        const std::string sentence = holdSentence(setup);
        if (!sentence.empty())
            text += (text.empty() ? "" : " ") + sentence;
    }
    return text;
}

std::size_t countingBatches(const SetupForecast& setup)
{
    return setup.energy.total ? setup.energy.total->batches : setup.batches - setup.unmetered;
}

/// Without any batch of the kind.
std::string missingBatches(const NextBatch& review, const SetupForecast& setup)
{
    const std::string& name = setup.setup.name;
    if (setup.otherKind == 0)
        return Phrase::tr("%1 has no finished batch yet. After one metered batch there is a "
                          "forecast.")
            .with(name);
    if (review.plan.shared)
        return Phrase::tr("No finished batch of %1 ran beside another one, so nothing is known of "
                          "a shared batch.")
            .with(name);
    return Phrase::tr("Every finished batch of %1 ran beside another one. After one metered batch "
                      "alone there is a forecast.")
        .with(name);
}

void join(std::string& text, const std::string& sentence)
{
    if (!sentence.empty())
        text += (text.empty() ? "" : " ") + sentence;
}

} // namespace

std::string forecastHeadline(const NextBatch& review, const ForecastFormat& format)
{
    const auto& setups = review.setups;
    if (review.less)
        return headlineOfTwo(setups[0], setups[1], *review.less, format);
    std::vector<const SetupForecast*> known;
    for (const SetupForecast& setup : setups) {
        if (setup.usable())
            known.push_back(&setup);
    }
    if (known.empty())
        return Phrase::tr("The past batches don't say yet what this plan would use.");
    std::sort(known.begin(), known.end(), [](const SetupForecast* a, const SetupForecast* b) {
        return a->energy.total->kwh < b->energy.total->kwh;
    });
    std::string text;
    for (const SetupForecast* setup : known)
        text += (text.empty() ? "" : "; ") + wouldUse(*setup, format);
    return text + ".";
}

std::string forecastAlso(const NextBatch& review, const ForecastFormat& format)
{
    std::string text;
    if (review.setups.size() == 2)
        join(text, coldSooner(review.setups[0], review.setups[1], format));
    join(text, holdSentences(review.setups));
    const bool any = std::any_of(review.setups.begin(), review.setups.end(),
                                 [](const SetupForecast& setup) { return setup.usable(); });
    if (any)
        join(text, Phrase::tr("Nine such batches in ten lie in the ranges."));
    return text;
}

std::string forecastBasis(const NextBatch& review, const ForecastFormat& format)
{
    std::vector<std::string> counts;
    bool alone = false; // a spread that is only assumed
    for (const SetupForecast& setup : review.setups) {
        if (!setup.usable())
            continue;
        alone = alone || setup.energy.total->spread.errors < 2;
        counts.push_back(Phrase::tr("%1 of %2", "3 batches of a setup")
                             .with(batchCount(countingBatches(setup)), setup.setup.name));
    }
    if (counts.empty())
        return {};
    const std::string spread = format.percent(analysis::assumedSpreadOf(review.plan.shared).total);
    const std::string assumed =
        alone ? Phrase::tr("that batches differ by %1 is assumed").with(spread)
              : Phrase::tr("that batches differ by %1 is partly assumed").with(spread);
    return Phrase::tr("From %1; %2.", "counts of batches; what is assumed")
        .with(listed(counts), assumed);
}

std::string missingForForecast(const NextBatch& review, const SetupForecast& setup,
                               const ForecastFormat& format)
{
    const std::string& name = setup.setup.name;
    if (setup.usable())
        return {};
    if (!setup.hasMeter)
        return Phrase::tr("No meter of %1 was read. Enter its readings under Rounds.").with(name);
    if (setup.batches == 0)
        return missingBatches(review, setup);
    if (setup.energy.lack == ForecastLack::noLine)
        return Phrase::tr("%1 has too few readings between rounds in quiet days to see how its "
                          "power follows the weather. After one more metered batch there may be a "
                          "forecast.")
            .with(name);
    if (setup.energy.lack == ForecastLack::tooLittle && setup.energy.total)
        return Phrase::tr("The past batches of %1 say too little: the range would be %2. After one "
                          "more metered batch it is narrower.")
            .with(name, figureOf(setup, format));
    return Phrase::tr("No finished batch of %1 is metered and has the room's temperature over at "
                      "least 90 % of what is planned. After one more metered batch there is a "
                      "forecast.")
        .with(name);
}

std::vector<std::string> assumedIn(const NextBatch& review, const SetupForecast& setup,
                                   const ForecastFormat& format)
{
    std::vector<std::string> assumed;
    if (!setup.usable())
        return assumed;
    const auto& total = *setup.energy.total;
    const std::string spread = format.percent(analysis::assumedSpreadOf(review.plan.shared).total);
    assumed.push_back(total.spread.errors < 2
                          ? Phrase::tr("batches differ by %1").with(spread)
                          : Phrase::tr("batches differ by %1, in part").with(spread));
    assumed.push_back(review.room.record ? Phrase::tr("the room is like the one picked").text()
                                         : Phrase::tr("the typed room is good to %1")
                                               .with(format.lift(analysis::typedRoomDoubtK)));
    const bool heatKnown =
        std::all_of(analysis::bothParts.begin(), analysis::bothParts.end(), [&](auto part) {
            return !setup.energy.parts[part] || setup.energy.parts[part]->heatKnown;
        });
    if (!heatKnown)
        assumed.push_back(Phrase::tr("every batch gives off as much heat, because a volume or a "
                                     "gravity is unknown"));
    if (total.outside)
        assumed.push_back(Phrase::tr("the line goes on beyond the lifts that were seen, so the "
                                     "range is half as wide again"));
    if (review.placed.lastLengthAssumed)
        assumed.push_back(
            Phrase::tr("the last stage lasts %1").with(format.duration(usualLastStage.count())));
    if (review.placed.toleranceAssumed)
        assumed.push_back(
            Phrase::tr("the band is ±%1").with(format.difference(usualTolerance.kelvins())));
    return assumed;
}

} // namespace holdband::results
