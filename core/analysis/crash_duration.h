// How many hours a crash will take, from past ones between the same temperatures. Section 8.1 of
// the method in DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include "core/analysis/forecast_spread.h"
#include "core/analysis/track.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace holdband::analysis {

/// A past crash of the plan's kind, shared or alone.
struct PastCrash {
    Track beer;          ///< °C, from the turning down on; gaps are not bridged
    double litres = 0.0; ///< L of beer, over 0
};

/// The beer is turned down at `fromCelsius`, the target before; the crash has arrived at
/// `toCelsius`, the upper edge of its band, when the beer first enters it.
struct CrashPlan {
    double fromCelsius = 0.0; ///< °C
    double toCelsius = 0.0;   ///< °C, below fromCelsius
    double litres = 0.0;      ///< L, over 0
};

/// Hours with their 90 % interval.
struct CrashDuration {
    double hours = 0.0; ///< h, geometric mean
    double low = 0.0;   ///< h
    double high = 0.0;  ///< h
    ModeratedSpread spread;
    std::size_t crashes = 0; ///< on which it rests
};

/// The hours that a crash took between two temperatures. One that began lower is extended at the
/// rate of its first quarter of the way. Absent where it never got there, where that was not seen,
/// or where it began below the end.
std::optional<double> hoursToCool(const Track& beer, double fromCelsius, double toCelsius);

/// Absent without a past crash that got there.
std::optional<CrashDuration> crashDuration(std::span<const PastCrash> past, const CrashPlan& plan,
                                           bool shared);

/// How past crashes went between the plan's temperatures: the mean share of their hours after which
/// they had passed each of `steps` equal steps of temperature, from 0 (the start) to 1. Empty
/// without a past crash that got there.
std::vector<double> crashShape(std::span<const PastCrash> past, const CrashPlan& plan,
                               std::size_t steps);

} // namespace holdband::analysis
