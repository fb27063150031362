#include "core/intake/units.h"

#include "core/text/near.h"
#include "core/text/numbers.h"
#include "core/text/trimmed.h"

#include <algorithm>

namespace holdband {

bool fits(ReadingUnit unit, SeriesKind kind)
{
    switch (kind) {
    case SeriesKind::temperature:
        return unit == ReadingUnit::celsius || unit == ReadingUnit::fahrenheit;
    case SeriesKind::power:
        return unit == ReadingUnit::watt || unit == ReadingUnit::kilowatt;
    case SeriesKind::gravity:
        return unit == ReadingUnit::specificGravity || unit == ReadingUnit::degreePlato;
    case SeriesKind::meter:
        return unit == ReadingUnit::wattHour || unit == ReadingUnit::kilowattHour;
    }
    return false;
}

std::string_view kindWords(SeriesKind kind)
{
    switch (kind) {
    case SeriesKind::temperature:
        return "temperature";
    case SeriesKind::power:
        return "power";
    case SeriesKind::gravity:
        return "gravity";
    case SeriesKind::meter:
        return "energy";
    }
    return {};
}

namespace {

ReadingUnit fallback(SeriesKind kind, TemperatureUnit temperature)
{
    switch (kind) {
    case SeriesKind::temperature:
        return temperature == TemperatureUnit::celsius ? ReadingUnit::celsius
                                                       : ReadingUnit::fahrenheit;
    case SeriesKind::power:
        return ReadingUnit::watt;
    case SeriesKind::gravity:
        return ReadingUnit::specificGravity;
    case SeriesKind::meter:
        return ReadingUnit::kilowattHour;
    }
    return ReadingUnit::celsius;
}

/// "Vessel C" beside "Vessel A": the letter numbers the vessels.
bool lettersNumber(const std::vector<std::string>& header, std::size_t column)
{
    const std::string own = folded(header[column]);
    const std::string stem = own.substr(0, own.size() - 1);
    return std::any_of(header.begin(), header.end(), [&](const std::string& other) {
        const std::string text = folded(headerParts(other).bare);
        return text.size() == own.size() && text.starts_with(stem) && text.back() != 'c' &&
               text.back() != 'f' && text != own;
    });
}

/// What the header says of the unit, if it is meant as one.
std::optional<ReadingUnit> headerUnit(const WantedColumn& wanted,
                                      const std::vector<std::string>& header, std::size_t column)
{
    const HeaderParts parts = headerParts(header[column]);
    if (!parts.unit || parts.inBrackets || parts.unitText.size() != 1)
        return parts.unit;
    const bool isName = folded(header[column]) == folded(wanted.name);
    const bool whole = parts.unitText == parts.bare;
    if (!whole && (isName || lettersNumber(header, column)))
        return std::nullopt;
    return parts.unit;
}

Result<ChosenUnit> said(ReadingUnit unit, const WantedColumn& wanted,
                        std::optional<ReadingUnit> byHeader)
{
    if (!fits(unit, wanted.kind))
        return dataProblem("\"" + wanted.name + "\" reads " + std::string(kindWords(wanted.kind)) +
                           ", which is not in " + std::string(unitSymbol(unit)));
    ChosenUnit chosen{unit, "told to be in " + std::string(unitSymbol(unit)), true, false, {}};
    if (byHeader && *byHeader != unit)
        chosen.warning = "the header says " + std::string(unitSymbol(*byHeader)) +
                         ", but the import was told " + std::string(unitSymbol(unit));
    return chosen;
}

/// Of every so-manyth value: ten thousand are plenty.
double median(const std::vector<double>& values)
{
    const std::size_t step = values.size() / 10'000 + 1;
    std::vector<double> sample;
    for (std::size_t i = 0; i < values.size(); i += step)
        sample.push_back(values[i]);
    const auto middle = sample.begin() + static_cast<std::ptrdiff_t>(sample.size() / 2);
    std::nth_element(sample.begin(), middle, sample.end());
    return *middle;
}

struct Doubt {
    bool any = false;
    bool onlyWarn = false;
};

Doubt doubtOf(ReadingUnit unit, double middle, bool byFallback)
{
    switch (unit) {
    case ReadingUnit::celsius:
        return {middle > 45.0, false};
    case ReadingUnit::fahrenheit:
        return {middle < 28.0, !byFallback};
    case ReadingUnit::specificGravity:
        return {middle < 0.9 || middle > 1.3, false};
    case ReadingUnit::degreePlato:
        return {middle < -5.0 || middle > 50.0, false};
    default:
        return {};
    }
}

} // namespace

Result<ChosenUnit> chooseUnit(const WantedColumn& wanted, const LogRequest& request,
                              const std::vector<std::string>& header, std::size_t column)
{
    const auto byHeader = headerUnit(wanted, header, column);
    if (wanted.unit)
        return said(*wanted.unit, wanted, byHeader);
    if (request.temperatureUnit && wanted.kind == SeriesKind::temperature)
        return said(*request.temperatureUnit, wanted, byHeader);
    if (byHeader && !fits(*byHeader, wanted.kind))
        return dataProblem("the header says " + std::string(unitSymbol(*byHeader)) + ", but \"" +
                               wanted.name + "\" reads " + std::string(kindWords(wanted.kind)),
                           "column " + header[column], "choose another column for it",
                           Decision::columns);
    if (byHeader)
        return ChosenUnit{
            *byHeader, "the header says " + std::string(unitSymbol(*byHeader)), false, false, {}};
    const ReadingUnit unit = fallback(wanted.kind, request.fallbackUnit);
    if (request.fallbackSaid && wanted.kind == SeriesKind::temperature)
        return said(unit, wanted, byHeader);
    return ChosenUnit{unit,
                      "the header says no unit: taken as " + std::string(unitSymbol(unit)),
                      false,
                      true,
                      {}};
}

Result<std::string> contradiction(const LogColumn& column, const ChosenUnit& unit)
{
    if (column.raw.empty())
        return std::string{};
    const double middle = median(column.raw);
    const Doubt doubt = doubtOf(column.unit, middle, unit.byFallback);
    if (!doubt.any)
        return std::string{};
    const bool temperature = column.kind == SeriesKind::temperature;
    const std::string other = column.unit == ReadingUnit::celsius ? "f" : "c";
    const std::string what = "the median " + shortestText(middle) + " is odd for " +
                             std::string(unitSymbol(column.unit)) + " (" + unit.reason + ")";
    if (unit.said || doubt.onlyWarn)
        return "column " + column.header + ": " + what;
    return dataProblem(what, "column " + column.header,
                       temperature ? "say --unit " + other + " if they are in °" +
                                         (other == "f" ? "F" : "C") + ", or --unit " +
                                         (other == "f" ? "c" : "f") + " if they are right"
                                   : "write the right unit in the header, in brackets",
                       Decision::unit);
}

} // namespace holdband
