// How a cell of a log is shown to people.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace holdband {

/// At most `mostBytes` of the text, cut between UTF-8 characters, with "…" where it was cut.
std::string clipped(std::string_view text, std::size_t mostBytes);

} // namespace holdband
