#include "core/text/csv_cell.h"

namespace holdband {

std::string withoutFormula(std::string_view text)
{
    constexpr std::string_view starts = "=+-@\t\r";
    const bool formula = !text.empty() && starts.find(text.front()) != starts.npos;
    return (formula ? "'" : "") + std::string(text);
}

std::string csvInQuotes(std::string_view text)
{
    std::string quoted = "\"";
    for (const char c : text) {
        if (c == '"')
            quoted += '"';
        quoted += c;
    }
    return quoted + '"';
}

std::string csvQuoted(std::string_view text)
{
    return text.find_first_of(",\"\r\n") == text.npos ? std::string(text) : csvInQuotes(text);
}

} // namespace holdband
