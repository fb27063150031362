#include "core/intake/log/row_units.h"

#include "core/intake/csv/cells.h"
#include "core/intake/log/log_places.h"
#include "core/store/readings/reading_units.h"
#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"
#include "core/text/visible.h"

#include <cmath>

namespace holdband {

namespace {

constexpr double fineSteps = 1e9; // further digits come from the conversion, not from the value

double rounded(double value)
{
    return std::round(value * fineSteps) / fineSteps;
}

/// On one line, and not too long for a list.
std::string shownUnit(std::string_view text)
{
    constexpr std::size_t mostBytes = 60;
    return clipped(visible(text, LineEnds::escaped), mostBytes);
}

} // namespace

RowUnits::RowUnits(std::vector<ReadColumn>& columns) : m_columns(columns), m_of(columns.size())
{
    for (std::size_t i = 0; i < columns.size(); ++i)
        m_of[i].settled = columns[i].unit.byHeader || columns[i].unit.said;
}

void RowUnits::setColumn(std::size_t unitColumn)
{
    m_unitColumn = unitColumn;
    for (ColumnUnits& of : m_of)
        of.settled = false;
}

tl::expected<LogUnit, std::string> RowUnits::fitting(const LogUnit& unit, std::size_t which) const
{
    const SeriesKind kind = m_columns[which].column.kind;
    if (!fits(unit.unit, kind))
        return tl::unexpected<std::string>(
            Phrase::tr("its unit %1 is none of %2").with(unitSymbol(unit), kindWords(kind)));
    return unit;
}

tl::expected<LogUnit, std::string> RowUnits::read(std::string_view text, std::size_t which) const
{
    if (isMissing(text))
        return tl::unexpected<std::string>(Phrase::tr("its row has no unit"));
    const auto unit = unitNamed(text);
    if (!unit)
        return tl::unexpected<std::string>(
            Phrase::tr("its unit \"%1\" is not known here").with(shownUnit(text)));
    return fitting(*unit, which);
}

tl::expected<LogUnit, std::string> RowUnits::readCell(const LogUnit& unit, std::size_t which,
                                                      std::string_view text, std::int64_t line)
{
    const ReadColumn& read = m_columns[which];
    if (read.unit.said && unit != LogUnit{read.unit.unit})
        return tl::unexpected<std::string>(Phrase::tr("says %1, but the import was set to %2")
                                               .with(unitSymbol(unit), unitSymbol(read.unit.unit)));
    if (m_of[which].withUnit.line == 0)
        m_of[which].withUnit = {line, std::string(text)};
    return fitting(unit, which);
}

void RowUnits::takeBare(std::size_t which, std::string_view text, std::int64_t line)
{
    if (m_of[which].bare.line == 0)
        m_of[which].bare = {line, std::string(text)};
}

Decimal RowUnits::inUnitOfColumn(Decimal number, const LogUnit& unit, std::size_t which)
{
    ReadColumn& read = m_columns[which];
    ColumnUnits& of = m_of[which];
    if (!of.settled) {
        of.settled = true;
        read.column.unit = read.unit.unit = unit.unit;
        read.column.unitReason = read.unit.reason =
            unit.kelvin ? Phrase::tr("its rows say K: converted to °C")
                        : Phrase::tr("its rows say %1").with(unitSymbol(unit));
        read.unit.byFallback = false;
        read.unit.kelvin = false;
    }
    if (unit.kelvin)
        number.value = rounded(number.value - kelvinOfZeroCelsius);
    if (unit.unit == read.column.unit)
        return number;
    ++of.converted;
    number.value =
        rounded(store::rawValue(store::baseValue(number.value, unit.unit), read.column.unit));
    constexpr int thousand = 3;
    if (unit.unit == ReadingUnit::wattHour)
        number.decimals += thousand;
    else if (unit.unit == ReadingUnit::kilowattHour)
        number.decimals = std::max(0, number.decimals - thousand);
    return number;
}

Done RowUnits::checkBareCells() const
{
    for (std::size_t i = 0; i < m_columns.size(); ++i) {
        const ReadColumn& read = m_columns[i];
        const ColumnUnits& of = m_of[i];
        if (read.unit.byHeader || read.unit.said || of.bare.line == 0 || of.withUnit.line == 0)
            continue;
        const bool temperature = read.column.kind == SeriesKind::temperature;
        return dataProblem(
            Phrase::tr("\"%1\" has no unit, but \"%2\" in line %3 has one")
                .with(of.bare.text, of.withUnit.text, std::to_string(of.withUnit.line)),
            linePlace(of.bare.line) + ", " + columnPlace(read.column.header),
            temperature ? Phrase::tr("say --unit c if those without a unit are in °C, or --unit f "
                                     "if they are in °F")
                        : Phrase::tr("write the right unit in the header, in brackets"),
            Decision::unit,
            temperature ? std::vector<std::string>{"c", "f"} : std::vector<std::string>{});
    }
    return {};
}

std::vector<std::string> RowUnits::remarks() const
{
    std::vector<std::string> remarks;
    for (std::size_t i = 0; i < m_columns.size(); ++i) {
        const LogColumn& column = m_columns[i].column;
        if (m_of[i].converted > 0)
            remarks.push_back(Phrase::counted("%1: %n values in another unit converted to %2",
                                              "%1: %n value in another unit converted to %2",
                                              static_cast<std::uint64_t>(m_of[i].converted))
                                  .with(column.header, unitSymbol(column.unit)));
    }
    return remarks;
}

} // namespace holdband
