// Letters of ASCII, whatever the locale.
#pragma once

namespace holdband {

/// 'A' … 'Z' as 'a' … 'z'; any other character as it is.
constexpr char asciiLower(char c)
{
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

} // namespace holdband
