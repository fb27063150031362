// Decides which copies of a logbook to retain and which to delete. Takes dates and sizes and
// returns the choice; touches no file. No Qt.
#pragma once

#include <chrono>
#include <cstdint>
#include <span>
#include <vector>

namespace holdband::store {

struct DatedCopy {
    std::chrono::local_days day; ///< in the logbook's zone
    std::uint64_t bytes = 0;
};

struct RotationLimits {
    int days = 7;  ///< of the last days that have a copy, the newest copy of each
    int weeks = 8; ///< the same for weeks, which begin on Monday
    std::uint64_t bytes = std::uint64_t{1} << 30; ///< of all copies together
    int least = 3;                                ///< number always retained, however large
};

/// For each copy, whether it is retained. `newestFirst`: in that order. Days and weeks without a
/// copy are not counted, so that a logbook that is not used for a season retains its copies. The
/// newest is always retained; if the limit of bytes is exceeded, the oldest of those that days and
/// weeks would retain are not.
///
/// Copies dated after `today` are from a clock that was ahead. They are chosen by the same limits
/// on their own, from what the others leave of the bytes, so that they push out no copy of a real
/// day.
std::vector<bool> copiesToRetain(std::span<const DatedCopy> newestFirst,
                                 std::chrono::local_days today, RotationLimits limits = {});

} // namespace holdband::store
