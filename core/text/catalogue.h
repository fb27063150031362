// Picks the plural form of a text from a catalogue; shared by the core's phrases and the window's
// texts.
#pragma once

#include <QString>
#include <cstdint>

namespace holdband {

/// The plural form of the language for `count`, with %n filled in. Without a translation the
/// English text: `one` for 1, else `many`.
QString countedText(const char* context, const char* many, const char* one, std::uint64_t count);

} // namespace holdband
