// Explains each figure in one or two sentences, the rule first and then this batch's own numbers,
// taken from the computed structs and never computed again. For the window's hints (hover, F1), in
// the units of the logbook.
#pragma once

#include "core/results/run/run_review.h"

#include <string>

namespace holdband::results {

/// A figure of the full run.
enum class Figure {
    insideShare,
    outsideTime,
    excursions,
    worst,
    settling,
    coverage,
    certainty,
    meanDeviation,
    spread, ///< standard deviation of the deviation
    rmsDeviation,
    meanAbsoluteDeviation,
    wholeEnergy,
    beforeCrash,
    crash,
    perDay,
    meanPower,
    cost,
    lift,
    perDegreeDay,
    heatMoved,
    effectivePerformance,
    apparentAttenuation,
    realAttenuation,
    alcoholSimple,
    alcoholBalling,
    arrival, ///< when the crash or warm-up in progress reaches its band
};

/// A figure of one stage.
enum class StageFigure {
    settledIn,
    settlingRate,
    overshoot,
    coverage,
    insideShare,
    outsideTime,
    excursions,
    worst,
    meanDeviation,
    spread,
    rmsDeviation,
    meanAbsoluteDeviation,
    quantiles, ///< 5, 50 and 95 % of the deviation
    range,     ///< minimum and maximum of the beer's temperature
    energy,
    meanPower,
};

/// If the figure is absent, the sentence gives the reason. Never empty.
std::string explain(const RunReview& review, Figure figure, char decimalSign = '.');

/// `stage` is an index into the judged stages.
std::string explainStage(const RunReview& review, std::size_t stage, StageFigure figure,
                         char decimalSign = '.');

/// Explains an excursion: its start and end, how far past the edge, its area, how it ended.
std::string explainExcursion(const RunReview& review, std::size_t stage, std::size_t excursion,
                             char decimalSign = '.');

} // namespace holdband::results
