// Makes texts from files and names safe for a terminal: control characters and marks that change
// the text direction are shown as escapes instead of being obeyed.
#pragma once

#include <string>
#include <string_view>

namespace holdband {

enum class LineEnds {
    stay,    ///< the text has several lines
    escaped, ///< the text is one line and must remain one
};

/// Such as "\x1b[31m" for a sequence that would turn the terminal red. Bytes that are not UTF-8 are
/// shown as "\xff", characters beyond ASCII as "\u202e".
std::string visible(std::string_view text, LineEnds ends);

/// JSON with the same meaning, in which those characters are JSON escapes.
std::string visibleJson(std::string_view json);

} // namespace holdband
