// How a cell of a log is shown to people.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace holdband {

/// At most so many bytes of the text, cut between characters of UTF-8, with "…" where it was cut.
std::string clipped(std::string_view text, std::size_t mostBytes);

} // namespace holdband
