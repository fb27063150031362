#include "core/intake/log/units.h"

#include "core/intake/log/log_places.h"
#include "core/text/name_suggestions.h"
#include "core/text/numbers.h"
#include "core/text/phrase.h"
#include "core/text/trimmed.h"

#include <algorithm>

namespace holdband {

SeriesKind seriesKind(SensorKind reads)
{
    if (reads == SensorKind::power)
        return SeriesKind::power;
    if (reads == SensorKind::intervalEnergy)
        return SeriesKind::intervalEnergy;
    return reads == SensorKind::gravity ? SeriesKind::gravity : SeriesKind::temperature;
}

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
    case SeriesKind::intervalEnergy:
        return unit == ReadingUnit::wattHour || unit == ReadingUnit::kilowattHour;
    }
    return false;
}

std::string kindWords(SeriesKind kind)
{
    switch (kind) {
    case SeriesKind::temperature:
        return Phrase::tr("temperature");
    case SeriesKind::power:
        return Phrase::tr("power");
    case SeriesKind::gravity:
        return Phrase::tr("gravity");
    case SeriesKind::meter:
    case SeriesKind::intervalEnergy:
        return Phrase::tr("energy");
    }
    return {};
}

std::string headerUnitReason(const LogUnit& unit)
{
    if (unit.kelvin)
        return Phrase::tr("the header says K: converted to °C");
    return Phrase::tr("the header says %1").with(unitSymbol(unit));
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
    case SeriesKind::intervalEnergy:
        return ReadingUnit::kilowattHour;
    }
    return ReadingUnit::celsius;
}

/// "Vessel C" beside "Vessel A": the letter counts the vessels and is no unit.
bool lettersNumber(const std::vector<std::string>& header, std::size_t column)
{
    const std::string own = folded(header[column]);
    const std::string stem = own.substr(0, own.size() - 1);
    return std::any_of(header.begin(), header.end(), [&](const std::string& other) {
        const std::string text = folded(headerParts(other).bare);
        return text.size() == own.size() && text.starts_with(stem) && text.back() != 'c' &&
               text.back() != 'f' && text.back() != 'k' && text != own;
    });
}

/// The unit in the header, if the text is meant as one.
std::optional<LogUnit> headerUnit(const WantedColumn& wanted,
                                  const std::vector<std::string>& header, std::size_t column)
{
    const HeaderParts parts = headerParts(header[column]);
    if (!parts.unit || parts.inBrackets || parts.unitText.size() != 1)
        return parts.logUnit();
    const bool isName = folded(header[column]) == folded(wanted.name);
    const bool whole = parts.unitText == parts.bare;
    if (!whole && (isName || lettersNumber(header, column)))
        return std::nullopt;
    return parts.logUnit();
}

Result<ChosenUnit> said(ReadingUnit unit, const WantedColumn& wanted,
                        std::optional<LogUnit> byHeader)
{
    if (!fits(unit, wanted.kind))
        return dataProblem(Phrase::tr("\"%1\" reads %2, which is not in %3")
                               .with(wanted.name, kindWords(wanted.kind), unitSymbol(unit)));
    ChosenUnit chosen{unit, Phrase::tr("set to %1").with(unitSymbol(unit)), true, false, false, {}};
    if (byHeader && *byHeader != LogUnit{unit})
        chosen.warning = Phrase::tr("the header says %1, but the import was set to %2")
                             .with(unitSymbol(*byHeader), unitSymbol(unit));
    return chosen;
}

/// Uses every n-th value: ten thousand are enough.
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
    if (request.energyUnit && fits(*request.energyUnit, wanted.kind))
        return said(*request.energyUnit, wanted, byHeader);
    if (byHeader && !fits(byHeader->unit, wanted.kind))
        return dataProblem(Phrase::tr("the header says %1, but \"%2\" reads %3")
                               .with(unitSymbol(*byHeader), wanted.name, kindWords(wanted.kind)),
                           columnPlace(header[column]), Phrase::tr("choose another column for it"),
                           Decision::columns);
    if (byHeader)
        return ChosenUnit{byHeader->unit,  headerUnitReason(*byHeader), false, true, false, {},
                          byHeader->kelvin};
    const ReadingUnit unit = fallback(wanted.kind, request.fallbackUnit);
    if (request.fallbackSaid && wanted.kind == SeriesKind::temperature)
        return said(unit, wanted, byHeader);
    return ChosenUnit{
        unit,  Phrase::tr("the header has no unit: %1 is assumed").with(unitSymbol(unit)),
        false, false,
        true,  {}};
}

Result<std::string> contradiction(const LogColumn& column, const ChosenUnit& unit)
{
    if (column.raw.empty())
        return std::string{};
    if (column.kind == SeriesKind::intervalEnergy && unit.byFallback)
        return dataProblem(Phrase::tr("nothing says in which unit the energy of its intervals is"),
                           columnPlace(column.header), Phrase::tr("say --unit wh or --unit kwh"),
                           Decision::unit, {"wh", "kwh"});
    const double middle = median(column.raw);
    const Doubt doubt = doubtOf(column.unit, middle, unit.byFallback);
    if (!doubt.any)
        return std::string{};
    const bool temperature = column.kind == SeriesKind::temperature;
    const bool celsius = column.unit == ReadingUnit::celsius;
    const std::string what = Phrase::tr("the median %1 is odd for %2 (%3)")
                                 .with(shortestText(middle), unitSymbol(column.unit), unit.reason);
    if (unit.said || doubt.onlyWarn)
        return columnPlace(column.header) + ": " + what;
    if (!temperature)
        return dataProblem(what, columnPlace(column.header),
                           Phrase::tr("write the right unit in the header, in brackets"),
                           Decision::unit);
    return dataProblem(
        what, columnPlace(column.header),
        celsius ? Phrase::tr("say --unit f if they are in °F, or --unit c if they are right")
                : Phrase::tr("say --unit c if they are in °C, or --unit f if they are right"),
        unit.byHeader ? Decision::headerUnit : Decision::unit,
        celsius ? std::vector<std::string>{"f", "c"} : std::vector<std::string>{"c", "f"});
}

} // namespace holdband
