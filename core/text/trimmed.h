// Text without the white space at its ends. UTF-8; the no-break space counts as white space.
#pragma once

#include <string_view>

namespace holdband {

inline std::string_view trimmed(std::string_view text)
{
    constexpr std::string_view noBreak = "\xC2\xA0"; // U+00A0
    const auto blank = [](char c) { return c == ' ' || (c >= '\t' && c <= '\r'); };
    for (;;) {
        if (!text.empty() && blank(text.front()))
            text.remove_prefix(1);
        else if (text.starts_with(noBreak))
            text.remove_prefix(noBreak.size());
        else
            break;
    }
    for (;;) {
        if (!text.empty() && blank(text.back()))
            text.remove_suffix(1);
        else if (text.ends_with(noBreak))
            text.remove_suffix(noBreak.size());
        else
            break;
    }
    return text;
}

} // namespace holdband
