#include "core/analysis/stage_figures.h"

#include <cmath>

namespace holdband::analysis {

namespace {

Settled settledOf(const BandJudgement& judged)
{
    if (judged.missed)
        return Settled::missed;
    if (!judged.settles)
        return Settled::notNeeded;
    return judged.arrival ? Settled::arrived : Settled::notYet;
}

std::optional<double> share(double part, double whole)
{
    return whole > 0.0 ? std::optional(part / whole) : std::nullopt;
}

std::optional<double> worstOf(const std::vector<Excursion>& excursions)
{
    std::optional<double> worst;
    for (const Excursion& excursion : excursions) {
        if (!worst || excursion.peak > std::abs(*worst))
            worst = excursion.side == Side::above ? excursion.peak : -excursion.peak;
    }
    return worst;
}

} // namespace

StageFigures stageFigures(const JudgedBatch& judged, std::size_t stage)
{
    const BandJudgement& band = judged.asPlanned.stages[stage];
    const TimeMoments& deviation = judged.statistics[stage].deviation;
    const SettlingFigures settling = settlingFigures(judged.tracks[stage], band);
    StageFigures figures;
    figures.settled = settledOf(band);
    if (band.arrival)
        figures.settledInMs = band.arrival->ms;
    figures.settlingMs = band.settlingMs;
    figures.ratePerMs = settling.ratePerMs;
    figures.overshoot = settling.overshoot;
    figures.coverage = share(band.coveredMs, band.holdMs);
    figures.insideShare = share(band.insideMs, band.coveredMs);
    if (!deviation.empty())
        figures.meanDeviation = deviation.mean();
    figures.worst = worstOf(band.excursions);
    return figures;
}

} // namespace holdband::analysis
