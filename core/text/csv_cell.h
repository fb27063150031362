// One cell of a CSV that people open in a spreadsheet.
#pragma once

#include <string>
#include <string_view>

namespace holdband {

/// Puts an apostrophe before a text that a spreadsheet would take for a formula (one that begins
/// with = + - @, a tab or a carriage return). Not for cells that are numbers, such as -12.5.
std::string withoutFormula(std::string_view text);

/// In quotes, those in the text doubled.
std::string csvInQuotes(std::string_view text);

/// The same where CSV asks for quotes (RFC 4180, section 2), else as it is.
std::string csvQuoted(std::string_view text);

} // namespace holdband
