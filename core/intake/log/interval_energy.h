// Some loggers write the energy of each interval, where a meter's register has its running total.
// Read as a register, such a column would give only a fraction of the energy used.
#pragma once

#include "core/editing/register_check.h"

#include <cstddef>
#include <vector>

namespace holdband::intake {

/// How often a column's values fall, in order of time.
struct ColumnFalls {
    std::size_t falls = 0;
    std::size_t steps = 0;            ///< between neighbours that differ: rises and falls
    std::vector<std::size_t> firstAt; ///< readings below the one before; at most mostFallsListed

    /// Too many falls for a register. A register that was reset, rolled over or mistyped falls
    /// occasionally; one that counts from 0 each day falls in at most every fourth step if it is
    /// read four times a day. The energy of intervals rises as often as it falls. Fewer than three
    /// falls are not enough to decide.
    bool looksLikeIntervals() const { return falls >= 3 && falls * 3 >= steps; }
};

inline constexpr std::size_t mostFallsListed = 3;

/// Whether the energies of intervals, in order of time, look like a register's running total: they
/// rise at least mostRises times and never fall.
bool looksLikeRegister(const std::vector<double>& energies);

inline constexpr std::size_t mostRises = 20;

/// `readings` in order of time. A clear rollover is not a fall.
ColumnFalls fallsOf(const std::vector<MeterReading>& readings, const RegisterCheck& meter);

} // namespace holdband::intake
