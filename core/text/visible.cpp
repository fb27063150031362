#include "core/text/visible.h"

#include <array>
#include <cstdint>

namespace holdband {

namespace {

/// One character of UTF-8, or a byte that is not valid UTF-8.
struct Character {
    std::uint32_t code = 0;
    std::size_t size = 1;
    bool valid = false;
};

bool isContinuation(std::string_view text, std::size_t at)
{
    return at < text.size() && (static_cast<unsigned char>(text[at]) & 0xC0) == 0x80;
}

Character characterAt(std::string_view text, std::size_t at)
{
    const auto lead = static_cast<unsigned char>(text[at]);
    if (lead < 0x80)
        return {lead, 1, true};
    const std::size_t size = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
    if (lead < 0xC2 || lead > 0xF4)
        return {lead, 1, false};
    std::uint32_t code = lead & (0xFFU >> (size + 1));
    for (std::size_t i = 1; i < size; ++i) {
        if (!isContinuation(text, at + i))
            return {lead, 1, false};
        code = code << 6 | (static_cast<unsigned char>(text[at + i]) & 0x3FU);
    }
    constexpr std::array<std::uint32_t, 5> least{0, 0, 0x80, 0x800, 0x10000};
    const bool surrogate = code >= 0xD800 && code <= 0xDFFF;
    return code >= least[size] && code <= 0x10FFFF && !surrogate ? Character{code, size, true}
                                                                 : Character{lead, 1, false};
}

/// Whether a terminal obeys the character: controls (C0, DEL, C1), line separators, and those that
/// change the text direction: marks, embeddings, overrides and isolates (Unicode, UAX #9).
bool isObeyed(std::uint32_t code)
{
    return code < 0x20 || (code >= 0x7F && code < 0xA0) || code == 0x061C || code == 0x200E ||
           code == 0x200F || (code >= 0x2028 && code <= 0x202E) ||
           (code >= 0x2066 && code <= 0x2069);
}

std::string hexadecimal(std::uint32_t value, int digits)
{
    constexpr std::string_view signs = "0123456789abcdef";
    std::string text;
    for (int shift = 4 * (digits - 1); shift >= 0; shift -= 4)
        text += signs[value >> shift & 0xF];
    return text;
}

std::string escaped(const Character& character)
{
    switch (character.code) {
    case '\n':
        return "\\n";
    case '\r':
        return "\\r";
    case '\t':
        return "\\t";
    default:
        return !character.valid || character.code < 0x80 ? "\\x" + hexadecimal(character.code, 2)
                                                         : "\\u" + hexadecimal(character.code, 4);
    }
}

/// Rewrites with `shown` every character for which `asks` is true.
template <typename Asks, typename Shown>
std::string rewritten(std::string_view text, Asks asks, Shown shown)
{
    std::string result;
    result.reserve(text.size());
    for (std::size_t at = 0; at < text.size();) {
        const Character character = characterAt(text, at);
        if (asks(character))
            result += shown(character);
        else
            result += text.substr(at, character.size);
        at += character.size;
    }
    return result;
}

} // namespace

std::string visible(std::string_view text, LineEnds ends)
{
    return rewritten(
        text,
        [ends](const Character& character) {
            const bool lineEnd = character.code == '\n' && ends == LineEnds::stay;
            return !character.valid || (isObeyed(character.code) && !lineEnd);
        },
        escaped);
}

std::string visibleJson(std::string_view json)
{
    // JSON has no characters below the space inside its strings, and line ends only between them.
    return rewritten(
        json,
        [](const Character& character) { return character.code > ' ' && isObeyed(character.code); },
        [](const Character& character) { return "\\u" + hexadecimal(character.code, 4); });
}

} // namespace holdband
