// Finds what makes a comparison less fair, from the figures of two runs or of two setups. No Qt, no
// SQL.
#pragma once

#include "core/analysis/comparison.h"

#include <set>
#include <string>
#include <vector>

namespace holdband::analysis {

/// The facts about one run, or the mean of several, that fairness is judged by.
struct FairnessFacts {
    double runs = 1.0;               ///< how many
    double hours = 0.0;              ///< h, length of the run
    double target = 0.0;             ///< °C, the plan's mean over time
    double tolerance = 0.0;          ///< K, the plan's mean over time
    std::optional<double> litres;    ///< L of beer
    std::optional<double> extractKg; ///< kg of extract fermented
    bool extractMeasured = false;    ///< from the last measured gravity: no final one was given
    std::optional<double> lift;      ///< mean, K
    double coverage = 0.0;           ///< share of the hold time
    std::optional<double> accuracy;  ///< of the beer sensor, K; of several the largest
    std::set<std::string> placements;
    double intervalMinutes = 0.0;          ///< of logging
    double meteredShare = 0.0;             ///< of the run
    double atOnce = 1.0;                   ///< batches on the setup
    double missed = 0.0;                   ///< stages, of all runs together
    std::set<std::string> meters;          ///< in service during the run
    std::set<std::string> unclassedMeters; ///< those of them whose accuracy is unknown
};

FairnessFacts factsOf(const ComparisonSide& run);

/// The mean of each figure over the runs that have it; accuracy: the largest, unknown if any is
/// unknown. `runs` must not be empty.
FairnessFacts meanFacts(const std::vector<FairnessFacts>& runs);

/// `anyCommon`: some elapsed time is metered in both; `widening`: how energies were compared.
std::vector<FairnessNote> fairnessNotes(const ComparisonSide& a, const ComparisonSide& b,
                                        bool anyCommon, const Widening& widening);

/// Of two setups, in the mean of their batches.
std::vector<FairnessNote> fairnessNotes(const FairnessFacts& a, const FairnessFacts& b);

} // namespace holdband::analysis
