// Emphasis for people at a terminal: bold headings and answers, a red start of a problem. It never
// carries meaning of its own, and there is none in a file, in a pipe or where NO_COLOR is set.
#pragma once

#include <string>

namespace holdband::app {

/// --color of the command that runs. `automatic`: at a terminal, unless NO_COLOR is set and not
/// empty (no-color.org, from memory) or TERM is "dumb".
enum class ColorChoice { automatic, always, never };
void chooseColors(ColorChoice choice);

/// For standard output. Without colors the text unchanged; else with marks that paintedEmphasis()
/// turns into what the terminal obeys, after all other control characters were made visible.
std::string emphasized(const std::string& text);
std::string paintedEmphasis(std::string text);

/// The start of a problem, for standard error.
std::string problemStart();

} // namespace holdband::app
