#include "core/results/run/run_glance.h"

#include "core/results/run/energy_texts.h"
#include "core/results/run/stage_texts.h"
#include "core/text/durations.h"
#include "core/text/phrase.h"
#include "core/text/quantities.h"

#include <algorithm>

namespace holdband::results {

using analysis::BandTotals;
using analysis::Settled;
using analysis::Verdict;

namespace {

GlanceFigure onTargetFigure(const RunReview& review, double share)
{
    const BandTotals& totals = review.figures.judged.asPlanned.totals;
    return {shareText(share, 1, review.decimalSign),
            Phrase::tr("on target, of %1 recorded")
                .with(durationText(wholeMs(totals.coveredMs), review.decimalSign)),
            Figure::insideShare};
}

std::string timesOutside(std::size_t excursions)
{
    return excursions == 2 ? Phrase::tr("outside, twice").text()
                           : Phrase::counted("outside, %n times", "outside, once", excursions);
}

GlanceFigure outsideFigure(const RunReview& review)
{
    const BandTotals& totals = review.figures.judged.asPlanned.totals;
    return {durationText(wholeMs(totals.outsideMs()), review.decimalSign),
            timesOutside(totals.excursions), Figure::outsideTime, true};
}

GlanceFigure worstFigure(const RunReview& review)
{
    const analysis::Excursion& excursion = review.figures.judged.asPlanned.totals.worst->excursion;
    const double signedPeak =
        excursion.side == analysis::Side::above ? excursion.peak : -excursion.peak;
    const TemperatureUnit unit = review.settings.temperatureUnit();
    return {pastEdgeText(signedPeak, unit, review.decimalSign) + " " + std::string(unitText(unit)),
            Phrase::tr("worst past the edge"), Figure::worst, true};
}

/// The crash, else the last stage whose target jumped.
std::optional<std::size_t> stageThatSettled(const RunReview& review)
{
    const auto settles = [&](std::size_t stage) {
        return review.figures.stages[stage].settled != Settled::notNeeded;
    };
    if (review.figures.crash && settles(*review.figures.crash))
        return review.figures.crash;
    for (std::size_t i = review.figures.stages.size(); i-- > 0;) {
        if (settles(i))
            return i;
    }
    return std::nullopt;
}

GlanceFigure settledFigure(const RunReview& review, std::size_t stage)
{
    const std::string& label = review.figures.judged.stages[stage].label;
    const std::string value = stageTexts(review, stage).settledIn;
    if (review.figures.stages[stage].settled == Settled::arrived)
        return {value, Phrase::tr("%1 settled in", "a stage").with(label), Figure::settling};
    return {value, label, Figure::settling,
            review.figures.stages[stage].settled == Settled::missed};
}

GlanceFigure coveredFigure(const RunReview& review, double coverage)
{
    return {shareText(coverage, 1, review.decimalSign), Phrase::tr("of the hold time recorded"),
            Figure::coverage, coverage < review.input.settings.coverageNeeded};
}

GlanceFigure energyOfRun(const RunReview& review)
{
    const analysis::RunEnergy& used = review.figures.energy;
    const EnergyTexts texts = energyTexts(used.whole, review.decimalSign);
    std::string caption = texts.bounds;
    if (used.cost)
        caption +=
            " · " + moneyText(used.cost->amount, review.settings.currency, review.decimalSign);
    return {texts.kwh + " kWh", caption, Figure::wholeEnergy};
}

} // namespace

RunGlance glanceOf(const RunReview& review)
{
    RunGlance glance;
    const BandTotals& totals = review.figures.judged.asPlanned.totals;
    if (const auto share = totals.insideShare())
        glance.lead = onTargetFigure(review, *share);
    if (totals.worst) {
        glance.others.push_back(outsideFigure(review));
        glance.others.push_back(worstFigure(review));
    }
    if (const auto stage = stageThatSettled(review))
        glance.others.push_back(settledFigure(review, *stage));
    if (const auto coverage = totals.coverage())
        glance.others.push_back(coveredFigure(review, *coverage));
    if (review.figures.energy.whole.any())
        glance.others.push_back(energyOfRun(review));
    return glance;
}

} // namespace holdband::results
