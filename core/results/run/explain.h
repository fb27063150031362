// How each figure came about: one or two sentences, the rule first and then this batch's own
// numbers, taken from the structs that were computed and never computed again. For the window's
// hints (hover, F1), in the units of the logbook.
#pragma once

#include "core/results/run/run_review.h"

#include <string>

namespace holdband::results {

/// A figure of the run as a whole.
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
    range,     ///< least and most of the beer's temperature
    energy,
    meanPower,
};

/// Where the figure is absent, the sentence says why. Never empty.
std::string explain(const RunReview& review, Figure figure, char decimalSign = '.');

/// `stage` is an index into the judged stages.
std::string explainStage(const RunReview& review, std::size_t stage, StageFigure figure,
                         char decimalSign = '.');

/// One excursion: where it began and ended, how far past the edge, its area, what ended it.
std::string explainExcursion(const RunReview& review, std::size_t stage, std::size_t excursion,
                             char decimalSign = '.');

} // namespace holdband::results
