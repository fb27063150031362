// Letters of ASCII, whatever the locale.
#pragma once

namespace holdband {

/// Turns 'A' … 'Z' into 'a' … 'z'; any other character is unchanged.
constexpr char asciiLower(char c)
{
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

} // namespace holdband
