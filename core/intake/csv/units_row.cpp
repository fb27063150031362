#include "core/intake/csv/units_row.h"

#include "core/intake/csv/header.h"
#include "core/intake/log/values.h"
#include "core/intake/time/header_zone.h"
#include "core/intake/time/stamps.h"
#include "core/text/ascii.h"
#include "core/text/name_suggestions.h"

#include <algorithm>
#include <array>

namespace holdband {

namespace {

/// Units of columns that are no readings here.
bool isOtherUnit(std::string_view text)
{
    constexpr std::array<std::string_view, 26> units{
        "%",  "%rh", "% rh", "v",  "mv", "a",  "ma",  "bar", "mbar", "hpa", "kpa", "psi", "l",
        "ml", "gal", "ppm",  "ph", "db", "hz", "rpm", "s",   "sec",  "ms",  "min", "h",   "dbm"};
    const std::string name = folded(text);
    return std::find(units.begin(), units.end(), name) != units.end();
}

/// "dd.mm.yyyy hh:mm:ss", "YYYY-MM-DD", "hh:mm"
bool isTimeLayout(std::string_view text)
{
    constexpr std::string_view letters = "ydmhstj", separators = " .-/:";
    bool hasHourOrYear = false, hasMinuteOrMonth = false;
    for (const char c : text) {
        const char letter = asciiLower(c);
        if (letters.find(letter) == letters.npos && separators.find(c) == separators.npos)
            return false;
        hasHourOrYear = hasHourOrYear || letter == 'h' || letter == 'y' || letter == 'j';
        hasMinuteOrMonth = hasMinuteOrMonth || letter == 'm';
    }
    constexpr std::size_t shortest = 5;
    return text.size() >= shortest && hasHourOrYear && hasMinuteOrMonth;
}

/// Not of "02/26/2026 04:30 PM", whose slash would make it a name to look up, which is slow.
bool namesZone(std::string_view text)
{
    const char first = asciiLower(text.front());
    if (first < 'a' || first > 'z')
        return false;
    const HeaderZone zone = headerZone({text});
    return zone.zone || !zone.unclear.empty();
}

/// Whether the text may be below that name in a row of units.
bool suits(std::string_view text, std::string_view name)
{
    if (text.empty())
        return true;
    if (name.empty() || isNumber(name) || looksLikeTime(name))
        return false;
    return unitNamed(text) || isOtherUnit(text) || isTimeLayout(text) || namesZone(text);
}

bool isUnitsRow(const SampleRow& row, const SampleRow& above)
{
    bool anyUnit = false;
    for (std::size_t i = 0; i < row.fields.size(); ++i) {
        if (!suits(row.cell(i), above.cell(i)))
            return false;
        anyUnit = anyUnit || unitNamed(row.cell(i)).has_value();
    }
    // A row of units alone may be the header: "t;°C" below "Logger;5".
    const auto names = headerNames(above);
    const bool aboveIsUnits = std::any_of(names.begin(), names.end(), [](const std::string& name) {
        return unitNamed(name).has_value();
    });
    return anyUnit && names.size() >= 2 && !aboveIsUnits;
}

void putInto(SampleRow& header, const SampleRow& units)
{
    for (std::size_t i = 0; i < units.fields.size(); ++i) {
        const std::string unit(units.cell(i));
        if (unit.empty() || isTimeLayout(unit) || headerParts(header.cell(i)).inBrackets)
            continue;
        header.fields[i] = std::string(header.cell(i)) + " (" + unit + ")";
    }
}

} // namespace

std::int64_t joinUnitsRow(SampleRows& rows, std::optional<std::int64_t> headerLine)
{
    for (std::size_t i = 1; i < rows.size(); ++i) {
        SampleRow& above = rows[i - 1];
        if ((headerLine && above.line != *headerLine) || !isUnitsRow(rows[i], above))
            continue;
        const std::int64_t line = rows[i].line;
        putInto(above, rows[i]);
        rows.erase(rows.begin() + static_cast<std::ptrdiff_t>(i));
        return line;
    }
    return 0;
}

} // namespace holdband
