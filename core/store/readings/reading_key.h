// The key of a reading in the table of readings: sensor and instant in one integer. Not for use
// outside core/store.
#pragma once

#include "core/quantity/instant.h"

#include <algorithm>
#include <cstdint>

namespace holdband::store {

inline constexpr int instantBits = 44; ///< milliseconds since 1970, until the year 2527
inline constexpr std::int64_t instantRange = std::int64_t{1} << instantBits;

/// Instants outside 1970 … 2527 are clamped; the intake refuses them.
constexpr std::int64_t readingKey(std::int64_t sensor, Instant at)
{
    return sensor * instantRange + std::clamp<std::int64_t>(toMs(at), 0, instantRange - 1);
}

constexpr std::int64_t sensorOfKey(std::int64_t place)
{
    return place >> instantBits;
}

constexpr std::int64_t msOfKey(std::int64_t place)
{
    return place & (instantRange - 1);
}

} // namespace holdband::store
