#include "core/intake/csv/header.h"

#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"
#include "core/text/trimmed.h"

#include <algorithm>
#include <array>

namespace holdband {

namespace {

struct NamedUnit {
    std::string_view text; ///< folded
    ReadingUnit unit;
    bool kelvin = false;
};

constexpr std::array unitNames{
    NamedUnit{"°f", ReadingUnit::fahrenheit},
    NamedUnit{"℉", ReadingUnit::fahrenheit},
    NamedUnit{"f", ReadingUnit::fahrenheit},
    NamedUnit{"degf", ReadingUnit::fahrenheit},
    NamedUnit{"deg f", ReadingUnit::fahrenheit},
    NamedUnit{"deg_f", ReadingUnit::fahrenheit},
    NamedUnit{"fahrenheit", ReadingUnit::fahrenheit},
    NamedUnit{"degrees fahrenheit", ReadingUnit::fahrenheit},
    NamedUnit{"°c", ReadingUnit::celsius},
    NamedUnit{"℃", ReadingUnit::celsius},
    NamedUnit{"c", ReadingUnit::celsius},
    NamedUnit{"degc", ReadingUnit::celsius},
    NamedUnit{"deg c", ReadingUnit::celsius},
    NamedUnit{"deg_c", ReadingUnit::celsius},
    NamedUnit{"celsius", ReadingUnit::celsius},
    NamedUnit{"degrees celsius", ReadingUnit::celsius},
    NamedUnit{"k", ReadingUnit::celsius, true},
    NamedUnit{"°k", ReadingUnit::celsius, true},
    NamedUnit{"degk", ReadingUnit::celsius, true},
    NamedUnit{"kelvin", ReadingUnit::celsius, true},
    NamedUnit{"w", ReadingUnit::watt},
    NamedUnit{"watt", ReadingUnit::watt},
    NamedUnit{"watts", ReadingUnit::watt},
    NamedUnit{"kw", ReadingUnit::kilowatt},
    NamedUnit{"kilowatt", ReadingUnit::kilowatt},
    NamedUnit{"kilowatts", ReadingUnit::kilowatt},
    NamedUnit{"wh", ReadingUnit::wattHour},
    NamedUnit{"watt hours", ReadingUnit::wattHour},
    NamedUnit{"kwh", ReadingUnit::kilowattHour},
    NamedUnit{"kw h", ReadingUnit::kilowattHour},
    NamedUnit{"kilowatt hours", ReadingUnit::kilowattHour},
    NamedUnit{"sg", ReadingUnit::specificGravity},
    NamedUnit{"specific gravity", ReadingUnit::specificGravity},
    NamedUnit{"°p", ReadingUnit::degreePlato},
    NamedUnit{"plato", ReadingUnit::degreePlato},
    NamedUnit{"°plato", ReadingUnit::degreePlato},
};

/// With the masculine ordinal "º", often typed instead, replaced by "°", and without a space after
/// it.
std::string plainDegree(std::string text)
{
    constexpr std::string_view degree = "°", ordinal = "º";
    if (text.starts_with(ordinal))
        text.replace(0, ordinal.size(), degree);
    if (text.starts_with(degree) && text.size() > degree.size() && text[degree.size()] == ' ')
        text.erase(degree.size(), 1);
    return text;
}

/// The contents of the last ( ) or [ ], if it ends the text.
std::optional<std::pair<std::string_view, std::string_view>> bracketed(std::string_view text)
{
    if (!text.ends_with(')') && !text.ends_with(']'))
        return std::nullopt;
    const std::size_t open = text.rfind(text.back() == ')' ? '(' : '[');
    if (open == text.npos)
        return std::nullopt;
    return std::pair{trimmed(text.substr(0, open)),
                     trimmed(text.substr(open + 1, text.size() - open - 2))};
}

std::optional<std::size_t> onlyMatch(const std::vector<std::size_t>& found)
{
    return found.size() == 1 ? std::optional{found.front()} : std::nullopt;
}

template <typename Same>
std::vector<std::size_t> columnsWhere(const std::vector<std::string>& header, Same same)
{
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < header.size(); ++i) {
        if (same(header[i]))
            found.push_back(i);
    }
    return found;
}

std::vector<std::string> named(const std::vector<std::string>& header)
{
    std::vector<std::string> list;
    for (const std::string& name : header) {
        if (!name.empty())
            list.push_back(name);
    }
    return list;
}

} // namespace

std::optional<LogUnit> HeaderParts::logUnit() const
{
    return unit ? std::optional(LogUnit{*unit, kelvin}) : std::nullopt;
}

std::optional<LogUnit> unitNamed(std::string_view text)
{
    const std::string name = plainDegree(folded(text));
    const auto* found = std::find_if(unitNames.begin(), unitNames.end(),
                                     [&](const NamedUnit& unit) { return unit.text == name; });
    return found == unitNames.end() ? std::nullopt
                                    : std::optional{LogUnit{found->unit, found->kelvin}};
}

std::string_view unitSymbol(ReadingUnit unit)
{
    static constexpr std::array<std::string_view, 8> symbols{"°C", "°F",  "W",  "kW",
                                                             "Wh", "kWh", "SG", "°P"};
    return symbols[static_cast<std::size_t>(unit)];
}

std::string_view unitSymbol(const LogUnit& unit)
{
    return unit.kelvin ? std::string_view("K") : unitSymbol(unit.unit);
}

HeaderParts headerParts(std::string_view header)
{
    const auto withUnit = [](std::string_view bare, std::string_view text, const LogUnit& unit,
                             bool inBrackets) {
        return HeaderParts{std::string(bare), std::string(text), unit.unit, inBrackets,
                           unit.kelvin};
    };
    header = trimmed(header);
    if (const auto parts = bracketed(header)) {
        if (const auto unit = unitNamed(parts->second))
            return withUnit(parts->first, parts->second, *unit, true);
    }
    if (const auto whole = unitNamed(header))
        return withUnit(header, header, *whole, false);
    const std::size_t gap = header.find_last_of(" _-,/");
    const auto last = gap == header.npos ? std::string_view{} : header.substr(gap + 1);
    if (const auto unit = unitNamed(last))
        return withUnit(header, last, *unit, false);
    return {std::string(header), {}, std::nullopt, false, false};
}

std::string nameWithoutUnit(std::string_view header)
{
    const HeaderParts parts = headerParts(header);
    std::string_view name = parts.bare;
    if (parts.unit && !parts.inBrackets && parts.unitText != parts.bare &&
        parts.unitText.size() > 1)
        name.remove_suffix(parts.unitText.size());
    constexpr std::string_view between = " _-,/";
    name = name.substr(0, name.find_last_not_of(between) + 1);
    return folded(name.empty() ? std::string_view(parts.bare) : name);
}

std::optional<std::size_t> nameBegunBy(std::string_view header,
                                       const std::vector<std::string>& names)
{
    const std::string begin = nameWithoutUnit(header) + " ";
    std::optional<std::size_t> found;
    for (std::size_t i = 0; begin.size() > 1 && i < names.size(); ++i) {
        if (!folded(names[i]).starts_with(begin))
            continue;
        if (found)
            return std::nullopt;
        found = i;
    }
    return found;
}

Result<std::optional<std::size_t>> findColumn(const std::vector<std::string>& header,
                                              std::string_view name)
{
    const std::string wanted = folded(name);
    const std::string bare = folded(headerParts(name).bare);
    const std::array tries{
        columnsWhere(header, [&](const std::string& text) { return text == trimmed(name); }),
        columnsWhere(header, [&](const std::string& text) { return folded(text) == wanted; }),
        columnsWhere(
            header,
            [&](const std::string& text) { return folded(headerParts(text).bare) == bare; }),
        columnsWhere(header, [&](const std::string& text) {
            return nameWithoutUnit(text) == nameWithoutUnit(name);
        })};
    for (const auto& found : tries) {
        if (found.size() > 1)
            return dataProblem(Phrase::counted("the log has %n columns with the header \"%1\"",
                                               "the log has %n column with the header \"%1\"",
                                               found.size())
                                   .with(trimmed(name)),
                               {}, Phrase::tr("rename one of them in the file"), Decision::columns);
        if (const auto one = onlyMatch(found))
            return one;
    }
    return std::optional<std::size_t>{};
}

Result<std::size_t> needColumn(const std::vector<std::string>& header, std::string_view name)
{
    const auto found = findColumn(header, name);
    if (!found)
        return failure(found.error());
    if (!*found)
        return dataProblem(Phrase::tr("the log has no column \"%1\"").with(trimmed(name)), {},
                           suggestion(name, named(header)), Decision::columns);
    return **found;
}

Result<TimeColumns> namedTimeColumns(const std::vector<std::string>& header, std::string_view name)
{
    const auto whole = findColumn(header, name);
    if (whole && *whole)
        return TimeColumns{**whole, std::nullopt};
    for (std::size_t plus = name.find('+'); plus != name.npos; plus = name.find('+', plus + 1)) {
        const auto date = findColumn(header, name.substr(0, plus));
        const auto clock = findColumn(header, name.substr(plus + 1));
        if (date && clock && *date && *clock)
            return TimeColumns{**date, **clock};
    }
    const auto needed = needColumn(header, name);
    return needed ? Result<TimeColumns>(TimeColumns{*needed, std::nullopt})
                  : failure(needed.error());
}

} // namespace holdband
