// Which copies of a logbook stay and which make room. Dates and sizes in, a choice out: no file is
// touched here. No Qt.
#pragma once

#include <chrono>
#include <cstdint>
#include <span>
#include <vector>

namespace holdband::store {

struct DatedCopy {
    std::chrono::local_days day; ///< of the logbook's zone
    std::uint64_t bytes = 0;
};

struct RotationLimits {
    int days = 7;  ///< of the last days with a copy, the newest copy of each
    int weeks = 8; ///< likewise of weeks, which begin on Monday
    std::uint64_t bytes = std::uint64_t{1} << 30; ///< of all copies together
    int least = 3;                                ///< that stay, however large they are
};

/// For each copy, whether it stays. `newestFirst`: in that order. Days and weeks without a copy are
/// not counted, so that a logbook that rests for a season keeps its copies. The newest always
/// stays; what the limit of bytes forbids is the oldest of what the days and weeks would keep.
std::vector<bool> copiesToKeep(std::span<const DatedCopy> newestFirst, RotationLimits limits = {});

} // namespace holdband::store
