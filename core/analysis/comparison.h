// Two runs, or two setups over their batches, side by side: measures with bounds, who is ahead or
// that it is too close to call, and the reasons why the comparison may be unfair. Section 6 of the
// method in DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include "core/analysis/run.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace holdband::analysis {

enum class MeasureId {
    energy,
    energyBeforeCrash,
    energyCrash,
    meanPower,
    energyPerDegreeDay,
    cost,
    insideShare,
    outsideHours,
    excursions,
    worstPastEdge,
    rmsDeviation,
    meanAbsoluteDeviation,
    meanDeviation,
    settlingFirst,
    settlingCrash,
    effectivePerformance,
    parts,
};

enum class Better { less, more };
enum class Ahead { a, b, tooClose };

/// One of the two is ahead, not too close to call.
inline bool isDecided(const std::optional<Ahead>& ahead)
{
    return ahead && *ahead != Ahead::tooClose;
}

/// What is fixed about a measure. Units: kWh, W, kWh/(K·d), money, 1, h, K.
struct MeasureRule {
    MeasureId id;
    std::string_view name;
    std::string_view unit;
    Better better;
    bool ofTemperature;
};

const std::vector<MeasureRule>& measureRules();

/// A figure with its bounds, where they are known.
struct Bounded {
    double value = 0.0;         ///< in the unit of its measure
    std::optional<double> low;  ///< the same unit; absent where it is not known
    std::optional<double> high; ///< likewise

    bool bounded() const { return low && high; }
    bool operator==(const Bounded&) const = default;
};

struct Measure {
    MeasureRule rule;
    std::optional<Bounded> a;
    std::optional<Bounded> b;
    std::optional<Bounded> difference; ///< A − B
    std::optional<Bounded> ratio;      ///< A ÷ B
    std::optional<Ahead> ahead;        ///< absent where the measure can't decide who is ahead
};

enum class NoteKind {
    targets,
    tolerances,
    durations,
    volumes,
    ambient,
    coverage,
    sensorAccuracy,
    sensorPlacement,
    loggingInterval,
    fermentationHeat,
    partlyMetered,
    batchesAtOnce,
    meterAccuracyAssumed,
    missedStage,
    noCommonMetering,
    oneMeter,    ///< the same meter measured both, at different times
    sharedMeter, ///< both ran at once on one meter; a, b: hours in which they did
    fewBatches,  ///< of setups: fewer than three batches, too few for an interval
};

/// A reason to read a measure with care, as numbers; the display code words it.
struct FairnessNote {
    NoteKind kind;
    MeasureId touches;
    double a = 0.0; ///< the kind's own unit: K, h, a share, kg …
    double b = 0.0; ///< the same unit
    /// Of fermentationHeat: the last measured gravity is used because no final one was given.
    bool measuredA = false;
    bool measuredB = false;
};

/// What the comparison needs to know of one side beyond its run.
struct ComparisonSide {
    const RunInput* input = nullptr;
    const RunFigures* figures = nullptr;
    std::optional<double> parts; ///< sum of the setup's parts list, in the logbook's currency
    std::string placement;       ///< of the beer sensor
};

/// Cumulative energy at equal elapsed time.
struct RatioPoint {
    double elapsedHours = 0.0; ///< h since both sides' start
    Bounded a;                 ///< kWh
    Bounded b;                 ///< kWh
    std::optional<Bounded> ratio;
};

/// The energy used up to a reading of a register.
struct EnergyPoint {
    double elapsedHours = 0.0; ///< h since pitching
    double kwh = 0.0;

    bool operator==(const EnergyPoint&) const = default;
};

struct RunComparison {
    std::vector<Measure> measures;
    std::vector<FairnessNote> notes;
    double commonHours = 0.0; ///< elapsed time metered in both
    std::vector<RatioPoint> ratioCurve;
};

/// Elapsed time is counted from pitching, or from the first stage of that label in each run. The
/// label must be among commonStages().
RunComparison compareRuns(const ComparisonSide& a, const ComparisonSide& b,
                          const std::optional<std::string>& fromStage = {});

/// The instant from which a run's elapsed time counts: pitching, or the start of its first stage of
/// that label. Absent where it has none.
std::optional<Instant> alignedStart(const ComparisonSide& run,
                                    const std::optional<std::string>& fromStage);

/// Labels of the stages that both runs have, in A's order, each once.
std::vector<std::string> commonStages(const ComparisonSide& a, const ComparisonSide& b);

/// The measures of one run over its own full span, without bounds, in the order of measureRules().
std::vector<std::optional<double>> plainMeasures(const ComparisonSide& run);

} // namespace holdband::analysis
