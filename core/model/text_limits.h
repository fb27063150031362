// How long typed texts may be, in bytes of UTF-8.
#pragma once

#include <cstddef>

namespace holdband {

/// Of a name or a label.
inline constexpr std::size_t longestName = 200;

/// Of a note, a reason or a remark: about six pages. A pasted megabyte is a mistake, and would make
/// every report slow.
inline constexpr std::size_t longestText = 20'000;

} // namespace holdband
