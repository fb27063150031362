// The counting part of a catalogue of texts, shared by the core's phrases and the window's words.
#pragma once

#include <QString>
#include <cstdint>

namespace holdband {

/// The plural form of the language for `count` (its %n filled). Where nothing is translated the
/// English `one` for one, else `many`.
QString countedText(const char* context, const char* many, const char* one, std::uint64_t count);

} // namespace holdband
