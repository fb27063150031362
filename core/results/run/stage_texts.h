// A stage's figures as text: window, report and command line show the same. Differences are in the
// logbook's unit, which is in the heading; "–" where there is no figure.
#pragma once

#include "core/results/run/run_review.h"

#include <string>

namespace holdband::results {

inline constexpr const char* noFigure = "–";

struct StageTexts {
    std::string settledIn; ///< "13 h 20 min", "missed", "still settling"
    std::string hold;
    std::string coverage;
    std::string inside;
    std::string meanDeviation; ///< "+0.12"
    std::string worst;         ///< past the edge, "−2.14"
    std::string kwh;
};

/// With the decimal sign of the review.
StageTexts stageTexts(const RunReview& review, std::size_t stage);

/// "+0.12", "−0.40", "0.00": K in the unit; "–" where absent.
std::string signedDifference(std::optional<double> kelvins, TemperatureUnit unit,
                             char decimalSign = '.');
/// How far past an edge: as above, but a value above 0 never rounds to 0: "< 0.01".
std::string pastEdgeText(std::optional<double> kelvins, TemperatureUnit unit,
                         char decimalSign = '.');

} // namespace holdband::results
