// What is unpacked at most. A log of three million rows has about 150 MB, so no honest one comes
// near.
#pragma once

#include <cstdint>

namespace holdband {

/// Of a packed file, in bytes: it is held in memory, because an archive lists its files at its end.
inline constexpr std::int64_t mostPacked = std::int64_t{256} << 20;

/// Of an unpacked text, in bytes: it is read in pieces, and its readings must fit in memory.
inline constexpr std::int64_t mostUnpacked = std::int64_t{1} << 30;

/// Of a text that must be in memory as a whole (standard input, JSON lines, a workbook's table).
inline constexpr std::int64_t mostWhole = std::int64_t{512} << 20;

/// Unpacked size divided by packed size, from `suspiciousSize` on. Logs reach 5 to 50; a file made
/// to fill the memory reaches up to 1032, which is all that the method can give.
inline constexpr std::int64_t mostRatio = 200;
inline constexpr std::int64_t suspiciousSize = std::int64_t{50} << 20;

} // namespace holdband
