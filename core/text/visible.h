// Texts that stem from files and names, made fit for a terminal: control characters and marks that
// turn the direction of text are shown as escapes instead of being obeyed.
#pragma once

#include <string>
#include <string_view>

namespace holdband {

enum class LineEnds {
    stay,    ///< the text has several lines
    escaped, ///< it is one line, and shall stay one
};

/// "\x1b[31m" for what would turn the terminal red. Bytes that are no UTF-8 are shown as "\xff",
/// characters beyond ASCII as "\u202e".
std::string visible(std::string_view text, LineEnds ends);

/// JSON that means the same, with those characters as its own escapes.
std::string visibleJson(std::string_view json);

} // namespace holdband
