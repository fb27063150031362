#include "core/analysis/stage_figures.h"

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
    figures.coverage = band.coverage();
    figures.insideShare = band.insideShare();
    if (!deviation.empty())
        figures.meanDeviation = deviation.mean();
    if (const Excursion* worst = worstOf(band.excursions))
        figures.worst = worst->signedPeak();
    return figures;
}

} // namespace holdband::analysis
