// The checksum over readings of one import and sensor: a sum of hashes, so that rows can be added
// and verified in any order. Not for use outside core/store.
#pragma once

#include <bit>
#include <cstdint>

namespace holdband::store {

/// The finalizer of SplitMix64 (Steele, Lea and Flood, 2014): every input bit moves about half of
/// the output bits.
constexpr std::uint64_t mixed(std::uint64_t x)
{
    x += 0x9e3779b97f4a7c15u;
    x = (x ^ (x >> 30)) * 0xbf58476d1ce4e5b9u;
    x = (x ^ (x >> 27)) * 0x94d049bb133111ebu;
    return x ^ (x >> 31);
}

/// SQLite stores integral values of a REAL column as integers, so -0.0 comes back as 0.0: both get
/// the same hash.
constexpr std::uint64_t rowHash(std::int64_t instant, double value)
{
    const double stored = value == 0.0 ? 0.0 : value;
    return mixed(mixed(static_cast<std::uint64_t>(instant)) ^ std::bit_cast<std::uint64_t>(stored));
}

/// The checksum of some readings, in any order; two such sums can be added.
struct ReadingSum {
    std::int64_t readings = 0;
    std::uint64_t checksum = 0;

    void add(std::int64_t instant, double value)
    {
        ++readings;
        checksum += rowHash(instant, value);
    }
    bool operator==(const ReadingSum&) const = default;
};

} // namespace holdband::store
