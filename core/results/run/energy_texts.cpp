#include "core/results/run/energy_texts.h"

#include "core/results/run/forecast_outcome.h"

#include "core/results/run/stage_texts.h"
#include "core/text/durations.h"
#include "core/text/name_suggestions.h"
#include "core/text/numbers.h"
#include "core/text/phrase.h"

#include <array>

#include <cmath>

namespace holdband::results {

using analysis::EnergyFigure;
using analysis::RunEnergy;

namespace {

std::string boundsText(const EnergyFigure& energy, char decimalSign)
{
    const auto number = [decimalSign](double kwh) { return fixedText(kwh, 2, decimalSign); };
    if (!energy.any())
        return Phrase::tr("not metered");
    if (energy.lowKnown() && energy.highKnown())
        return number(energy.low) + " – " + number(energy.high);
    return energy.lowKnown() ? Phrase::tr("at least %1").with(number(energy.low))
                             : Phrase::tr("unknown", "bounds").text();
}

/// Whether the run continues after the crash's stage: the energy after it is then in the figure
/// too.
bool goesOnAfterCrash(const RunReview& review)
{
    const RunEnergy& energy = review.figures.energy;
    return energy.stages[*review.figures.crash].span.end < energy.crash->span.end;
}

} // namespace

EnergyTexts energyTexts(const EnergyFigure& energy, char decimalSign)
{
    const auto watts = analysis::meanWatts(energy);
    EnergyTexts texts;
    texts.kwh = energy.any() ? fixedText(energy.kwh, 2, decimalSign) : noFigure;
    texts.bounds = boundsText(energy, decimalSign);
    texts.metered =
        energy.any() ? durationText(wholeMs(energy.meteredMs()), decimalSign) : noFigure;
    texts.watts = watts ? fixedText(*watts, 1, decimalSign) : noFigure;
    return texts;
}

std::vector<EnergyPart> energyParts(const RunReview& review)
{
    const RunEnergy& energy = review.figures.energy;
    std::vector<EnergyPart> parts;
    parts.push_back({EnergyPartKind::whole,
                     energy.partlyMetered() ? Phrase::tr("Total metered") : Phrase::tr("Whole run"),
                     energy.whole});
    if (!energy.beforeCrash || !energy.crash)
        return parts;
    parts.push_back(
        {EnergyPartKind::beforeCrash, Phrase::tr("before the crash"), energy.beforeCrash->energy});
    parts.push_back(
        {EnergyPartKind::crash,
         goesOnAfterCrash(review) ? Phrase::tr("the crash and after it") : Phrase::tr("the crash"),
         energy.crash->energy});
    return parts;
}

std::string sharedWithText(const std::vector<analysis::SharedTime>& shared)
{
    std::vector<std::string> names;
    for (const analysis::SharedTime& each : shared)
        names.push_back(each.batch);
    return listed(names);
}

namespace {

std::string sharedSentence(const RunReview& review)
{
    std::vector<std::string> parts;
    for (const analysis::SharedTime& each : review.figures.energy.sharedWith)
        parts.push_back(each.batch + " (" + durationText(each.length, review.decimalSign) + ")");
    if (parts.empty())
        return {};
    return Phrase::tr(
               "The energy was shared with %1: each batch that runs on %2 has an equal part.")
        .with(listed(parts), review.setup.name);
}

} // namespace

std::string timeDoubtSentence(const RunReview& review, Span span)
{
    const Milliseconds doubt = analysis::largestTimeDoubt(review.input.setup, span);
    if (doubt == Milliseconds{0})
        return {};
    return Phrase::tr("Reading times are taken as good to %1.")
        .with(durationText(doubt, review.decimalSign));
}

std::vector<std::string> energyRemarks(const RunReview& review)
{
    std::vector<std::string> remarks = forecastOutcome(review);
    if (!review.figures.energy.whole.any())
        return remarks;
    for (std::string& sentence :
         std::array{sharedSentence(review), timeDoubtSentence(review, review.input.span)}) {
        if (!sentence.empty())
            remarks.push_back(std::move(sentence));
    }
    return remarks;
}

} // namespace holdband::results
