// The figures of single batches in a comparison of setups.
#pragma once

#include "core/analysis/comparison.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::results {

/// One batch's figure of one measure, for the dots.
struct BatchFigure {
    std::string batch;
    double value = 0.0; ///< in the measure's own unit
};

/// The mean of several batches with its interval, before impossible values are cut off.
struct SetupFigures {
    std::vector<BatchFigure> batches; ///< those that have the measure, in order of pitching
    std::optional<double> mean;
    std::optional<double> low; ///< 95 %, Student t; from three batches on
    std::optional<double> high;
    bool cut = false; ///< the shown bounds are cut at what is possible (0, or a share of 1)
};

/// For setups, one for each measure.
struct MeasureBatches {
    SetupFigures a;
    SetupFigures b;
};

/// One side of the work that the registers took: rounds with a reading typed by hand.
struct WorkSide {
    std::optional<analysis::Bounded> rounds; ///< absent without a meter; of setups: the mean
    std::vector<BatchFigure> batches;        ///< of setups
};

struct Work {
    WorkSide a;
    WorkSide b;
    std::optional<analysis::Ahead> ahead;
};

/// The energy that one batch had used at each reading of a register.
struct EnergyCurve {
    std::string batch;
    std::vector<analysis::EnergyPoint> points;
};

} // namespace holdband::results
