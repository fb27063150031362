// The power a setup would draw in a given weather: a straight line of mean power over lift, fitted
// to the time between successive register readings. Section 5 of the method in DEVELOPERS.md. No
// Qt, no SQL.
#pragma once

#include "core/analysis/bounded.h"
#include "core/analysis/lift_interval.h"
#include "core/analysis/regression.h"
#include "core/analysis/run.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::analysis {

/// The time between two successive readings of a setup's meter, entirely within hold time of every
/// batch that ran during it, and late enough after each one's pitching.
struct WeatherPair {
    Span span;
    double liftK = 0.0;          ///< cooling degree-hours over hours, the mean of the batches
    double watts = 0.0;          ///< mean power, for each batch (its share)
    std::vector<std::string> of; ///< the batches that ran

    double hours() const { return span.hours(); }
};

enum class ModelCaution {
    noLine,     ///< fewer than 3 pairs, or all at one lift: no line can be fitted
    fewPairs,   ///< fewer than 6
    fewBatches, ///< fewer than 3 batches took part
    fewGroups,  ///< enough batches, but they can't be told apart: they ran at once, or with too few
                ///< pairs each; so their spread is assumed
    narrowLift, ///< a range of lift below 3 K
    scattered,  ///< CV(RMSE) over 30 %
};

inline constexpr std::size_t pairsNeeded = 6;
inline constexpr std::size_t batchesNeeded = 3;
inline constexpr double liftRangeNeeded = 3.0; ///< K
inline constexpr double scatterAllowed = 0.30; ///< CV(RMSE), a fraction

struct LiftModel {
    std::vector<WeatherPair> pairs; ///< in order of time
    /// The line (x: lift, K; y: mean power, W; weight: hours) and how sure it is; absent where
    /// there is none.
    std::optional<LiftInterval> interval;
    double leastLift = 0.0; ///< K; 0 without pairs
    double mostLift = 0.0;
    std::vector<ModelCaution> cautions;

    bool decides() const { return cautions.empty(); }
    double hours() const;        ///< h, of all pairs together
    std::size_t batches() const; ///< how many took part
    /// Null without a line.
    const LinearFit* fit() const { return interval ? &interval->fit() : nullptr; }
};

LiftModel liftModel(std::vector<WeatherPair> pairs);

/// A hold of that many hours at that lift.
struct ReferenceHold {
    double liftK = 0.0; ///< K, ambient − beer
    double hours = 0.0; ///< h
};

/// A model's prediction for the reference hold. Intervals of 95 % by batch, as computed: a low end
/// below 0 is what the line gives, though impossible in reality.
struct AtReference {
    Interval95 watts;        ///< the mean of many batches
    Interval95 oneMoreWatts; ///< the mean of one more batch
    Interval95 kwh;          ///< watts over the hold's hours
    Interval95 oneMoreKwh;
    bool outside = false; ///< the reference lift is outside the range of recorded lifts
};

/// Absent without a line.
std::optional<AtReference> atReference(const LiftModel& model, const ReferenceHold& hold);

/// The interval as bounds, not below 0.
Bounded notNegative(const Interval95& interval);

/// Ahead only where both models give a result and the intervals of the mean do not overlap.
std::optional<Ahead> aheadInSameWeather(const LiftModel& a, const std::optional<AtReference>& atA,
                                        const LiftModel& b, const std::optional<AtReference>& atB);

/// A run's contribution: the pairs inside its quiet hold time whose lift is known (for 90 % of it).
struct QuietPair {
    Span span;
    double liftK = 0.0; ///< K, mean over the pair
};
std::vector<QuietPair> quietPairs(const RunInput& input, const JudgedBatch& judged,
                                  const std::vector<Span>& between, Milliseconds quietAfter);

/// The times between successive readings of a setup's meter, without resets and unknown pairs.
/// With several meters at once the first one's readings are used; the others are interpolated.
std::vector<Span> timesBetweenReadings(const SetupEnergy& setup);

/// A batch that ran on the setup; `quiet` is absent where it was not examined.
struct SetupRun {
    std::string batch;
    Span span;
    bool wanted = true; ///< false: only included because it ran at the same time
    std::optional<std::vector<QuietPair>> quiet;
};

/// Pairs in which at least one wanted run took part. A pair is dropped if any batch that ran during
/// it doesn't have it among its quiet pairs.
std::vector<WeatherPair> weatherPairs(const SetupEnergy& setup, const std::vector<Span>& between,
                                      const std::vector<SetupRun>& runs);

} // namespace holdband::analysis
