#include "core/intake/csv/cells.h"

namespace holdband {

std::string clipped(std::string_view text, std::size_t mostBytes)
{
    if (text.size() <= mostBytes)
        return std::string(text);
    std::size_t end = mostBytes;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80)
        --end; // not inside a character
    return std::string(text.substr(0, end)) + "…";
}

} // namespace holdband
