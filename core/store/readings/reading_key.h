// Where a reading lies in the file: its sensor, and the block of time that its instant falls in.
// Not for use outside core/store.
#pragma once

#include "core/quantity/instant.h"

#include <algorithm>
#include <cstdint>

namespace holdband::store {

inline constexpr int instantBits = 44; ///< milliseconds since 1970, until the year 2527
inline constexpr std::int64_t instantRange = std::int64_t{1} << instantBits;

inline constexpr int blockBits = 26; ///< a block is 2^26 ms, about 18.6 hours
inline constexpr std::int64_t lastBlock = (instantRange - 1) >> blockBits;

constexpr std::int64_t blockOf(std::int64_t ms)
{
    return ms >> blockBits;
}

/// Instants outside 1970 … 2527 are clamped; the intake refuses them.
constexpr std::int64_t storedMs(Instant at)
{
    return std::clamp<std::int64_t>(toMs(at), 0, instantRange - 1);
}

} // namespace holdband::store
