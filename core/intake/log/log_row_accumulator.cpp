#include "core/intake/log/log_row_accumulator.h"

#include "core/intake/log/log_places.h"
#include "core/intake/time/header_zone.h"
#include "core/text/phrase.h"
#include "core/text/trimmed.h"

#include <QtGlobal>
#include <algorithm>

namespace holdband {

namespace {

std::string orderReason(DateOrder order)
{
    switch (order) {
    case DateOrder::yearMonthDay:
        return Phrase::tr("is no date with the year first");
    case DateOrder::monthDayYear:
        return Phrase::tr("is no date with the month first");
    case DateOrder::dayMonthYear:
        break;
    }
    return Phrase::tr("is no date with the day first");
}

} // namespace

std::string timeHeader(const Dialect& dialect)
{
    const std::string& first = dialect.header[dialect.time.first];
    return dialect.time.second ? first + "+" + dialect.header[*dialect.time.second] : first;
}

LogRowAccumulator::LogRowAccumulator(const LogRequest& request, Dialect dialect,
                                     std::vector<ReadColumn> columns,
                                     std::optional<TimePattern> pattern)
    : m_request(request), m_dialect(std::move(dialect)), m_timeHeader(timeHeader(m_dialect)),
      m_columns(std::move(columns)), m_values(m_columns.size()), m_pattern(std::move(pattern)),
      m_units(m_columns), m_numbers(request.decimalSign)
{
    const auto& numbers = m_dialect.timeNumbers;
    if (numbers && numbers->unit && *numbers->unit != TimeUnit::days)
        m_elapsed.emplace(*numbers->unit);
}

void LogRowAccumulator::setNameColumn(std::size_t column)
{
    m_named.emplace(column, m_columns);
}

void LogRowAccumulator::setUnitColumn(std::size_t column)
{
    m_units.setColumn(column);
}

std::int64_t LogRowAccumulator::lineOf(const CsvRow& row) const
{
    return row.line + m_request.linesBefore;
}

void LogRowAccumulator::expect(std::size_t rows)
{
    m_times.value.reserve(rows);
    m_times.kind.reserve(rows);
    m_times.line.reserve(rows);
    if (m_named)
        return; // the names that occur are not known yet
    for (std::size_t i = 0; i < m_columns.size(); ++i) {
        m_values[i].value.reserve(rows);
        if (m_columns[i].column.kind == SeriesKind::meter)
            m_values[i].decimals.reserve(rows);
    }
}

void LogRowAccumulator::take(const CsvRow& row)
{
    if (row.line <= m_dialect.headerLine || row.line == m_dialect.unitsLine || row.isBlank())
        return;
    ++m_rowsRead;
    if (m_named && hasRightWidth(row))
        return takeNamed(row);
    if (m_named || !hasRightWidth(row) || !takeTime(row))
        return;
    m_times.line.push_back(static_cast<std::uint32_t>(lineOf(row)));
    for (std::size_t i = 0; i < m_columns.size(); ++i)
        takeValue(row, i);
}

/// A column's values begin with its first row; rows before it have none.
void LogRowAccumulator::takeNamed(const CsvRow& row)
{
    if (m_named->column() >= row.fields.size())
        return rejectWidth(row);
    const auto which = m_named->which(cell(row, m_named->column()));
    if (!which || !takeTime(row))
        return;
    ColumnInFileOrder& values = m_values[*which];
    values.value.resize(m_times.line.size(), noValue);
    if (m_columns[*which].column.kind == SeriesKind::meter)
        values.decimals.resize(m_times.line.size(), 0);
    m_times.line.push_back(static_cast<std::uint32_t>(lineOf(row)));
    takeValue(row, *which);
}

/// The text of a cell; empty where the row is shorter.
std::string_view LogRowAccumulator::cell(const CsvRow& row, std::size_t column) const
{
    return column < row.fields.size() ? trimmed(row.fields[column]) : std::string_view{};
}

/// A row may lack its last cells, which then have no value.
bool LogRowAccumulator::hasRightWidth(const CsvRow& row)
{
    const std::size_t width = m_dialect.header.size();
    const bool extraText =
        row.fields.size() > width && !CsvRow{row.line, row.fields.subspan(width), true}.isBlank();
    const bool unfinished = row.fields.size() < width && !row.ended;
    if (unfinished)
        m_rejects.add(lineOf(row), {}, shownInList(row.fields.front()),
                      [] { return Phrase::tr("the last line is not finished").text(); });
    else if (extraText)
        rejectWidth(row);
    return !unfinished && !extraText;
}

void LogRowAccumulator::rejectWidth(const CsvRow& row)
{
    m_rejects.add(lineOf(row), {}, shownInList(row.fields.front()), [&] {
        return Phrase::counted("has %n fields, the header has %1",
                               "has %n field, the header has %1", row.fields.size())
            .with(std::to_string(m_dialect.header.size()));
    });
}

std::string_view LogRowAccumulator::timeText(const CsvRow& row)
{
    if (!m_dialect.time.second)
        return cell(row, m_dialect.time.first);
    m_joined = cell(row, m_dialect.time.first);
    m_joined += ' ';
    m_joined += cell(row, *m_dialect.time.second);
    return m_joined;
}

bool LogRowAccumulator::takeTime(const CsvRow& row)
{
    const std::string_view text = timeText(row);
    const bool isShort = row.fields.size() < m_dialect.header.size();
    if (isShort && m_dialect.delimiter == ' ') { // any of its cells may be the missing one
        rejectWidth(row);
        return false;
    }
    auto stamp = stampOf(row, text);
    const bool mayName = !stamp && !m_pattern && !m_dialect.timeNumbers;
    const ZonedText zoned = mayName ? zonedText(text) : ZonedText{};
    if (!zoned.zone.empty())
        stamp = scanStamp(zoned.stamp);
    if (!stamp && isShort) {
        rejectWidth(row);
        return false;
    }
    if (!stamp) {
        const bool nul = text.find('\0') != text.npos;
        m_rejects.add(lineOf(row), m_timeHeader, text, [&] {
            return nul ? Phrase::tr("holds NUL characters").text()
                       : Phrase::tr(stamp.error()).text();
        });
        return false;
    }
    if (stamp->kind != StampKind::instant && !suitsOtherZones(zoned.zone)) {
        m_rejects.add(lineOf(row), m_timeHeader, text, [&] { return zoneDiffers(zoned.zone); });
        return false;
    }
    m_shortRows += isShort ? 1 : 0;
    if (stamp->kind == StampKind::loose)
        return takeLoose(unpacked(stamp->value), row);
    m_anyLocal = m_anyLocal || stamp->kind == StampKind::local;
    m_times.kind.push_back(stamp->kind);
    m_times.value.push_back(stamp->value);
    return true;
}

/// A time without a zone's name behind it, or the reason why it is none.
tl::expected<Stamp, const char*> LogRowAccumulator::stampOf(const CsvRow& row,
                                                            std::string_view text)
{
    if (m_dialect.timeNumbers)
        return numberStamp(row, text);
    if (m_pattern)
        return m_pattern->read(text);
    return m_dialect.dateAlone && isDateAlone(text) ? scanStamp(std::string(text) + " 00:00")
                                                    : scanStamp(text);
}

/// Of times since a start an instant is what has to be added to it.
tl::expected<Stamp, const char*> LogRowAccumulator::numberStamp(const CsvRow& row,
                                                                std::string_view text)
{
    const auto reason = [](const char* why) { return tl::unexpected<const char*>(why); };
    if (text.empty())
        return reason(QT_TRANSLATE_NOOP("Phrase", "is missing"));
    const auto number = m_numbers.take(text, SeriesKind::power, lineOf(row), m_dialect.time.first);
    if (!number)
        return reason(QT_TRANSLATE_NOOP("Phrase", "is not a number"));
    if (m_elapsed) {
        const auto ms = m_elapsed->take(*number, text, lineOf(row));
        return ms ? tl::expected<Stamp, const char*>(Stamp{StampKind::instant, *ms})
                  : reason(ms.error());
    }
    const auto wall = wallOfDays(number->value, number->decimals);
    if (!wall)
        return reason(QT_TRANSLATE_NOOP("Phrase", "its year is not between 1990 and 2100"));
    return Stamp{StampKind::local, *wall};
}

/// One zone for all local times of a log. Two abbreviations, such as EST and EDT, can be of one
/// zone.
bool LogRowAccumulator::suitsOtherZones(std::string_view zone)
{
    if (!m_anyLocal)
        m_zoneOfRows = zone;
    else if (zone != m_zoneOfRows)
        return !zone.empty() && !headerZone({zone}).zone && !headerZone({m_zoneOfRows}).zone &&
               !m_zoneOfRows.empty();
    return true;
}

std::string LogRowAccumulator::zoneDiffers(std::string_view zone) const
{
    if (zone.empty())
        return Phrase::tr("names no zone, but the rows above name %1")
            .with(shownInList(m_zoneOfRows));
    return m_zoneOfRows.empty() ? Phrase::tr("names a zone, but the rows above name none").text()
                                : Phrase::tr("its zone is not that of the rows above, %1")
                                      .with(shownInList(m_zoneOfRows));
}

bool LogRowAccumulator::takeLoose(const LooseTime& time, const CsvRow& row)
{
    m_anyLocal = m_anyLocal || !time.offset;
    if (!m_request.dateOrder) {
        m_votes.take(time, lineOf(row), trimmed(timeText(row)));
        m_times.kind.push_back(StampKind::loose);
        m_times.value.push_back(packed(time));
        return true;
    }
    const auto stamp = stampInOrder(time, *m_request.dateOrder);
    if (!stamp) {
        m_rejects.add(lineOf(row), m_timeHeader, timeText(row),
                      [this] { return orderReason(*m_request.dateOrder); });
        return false;
    }
    m_times.kind.push_back(stamp->kind);
    m_times.value.push_back(stamp->value);
    return true;
}

void LogRowAccumulator::takeValue(const CsvRow& row, std::size_t which)
{
    const ReadColumn& read = m_columns[which];
    ColumnInFileOrder& values = m_values[which];
    const std::string_view text = cell(row, read.index);
    const bool missing = isMissing(text);
    const ValueCell value = missing ? ValueCell{} : valueCell(text);
    auto number = missing ? std::nullopt
                          : m_numbers.take(value.number, read.column.kind, lineOf(row), read.index);
    const char* reason = missing ? nullptr : whyNot(number, row, which, value.unit);
    if (reason != nullptr)
        m_rejects.add(lineOf(row), read.column.header, text, [&] { return said(reason); });
    values.value.push_back(number && reason == nullptr ? number->value : noValue);
    if (read.column.kind == SeriesKind::meter)
        values.decimals.push_back(
            static_cast<std::uint8_t>(number ? std::min(number->decimals, 255) : 0));
}

/// The reason from whyNot(), for people.
std::string LogRowAccumulator::said(const char* reason) const
{
    return reason == m_reason.c_str() ? m_reason : Phrase::tr(reason).text();
}

/// The unit that the value's cell or row names; absent: the column's. Else the reason against it.
tl::expected<std::optional<LogUnit>, std::string>
LogRowAccumulator::unitOf(const CsvRow& row, std::size_t which,
                          const std::optional<LogUnit>& cellUnit)
{
    const ReadColumn& read = m_columns[which];
    const std::string_view text = cell(row, read.index);
    if (cellUnit)
        return m_units.readCell(*cellUnit, which, text, lineOf(row));
    if (m_units.column() && !read.unit.said) // a setting for this import takes precedence
        return m_units.read(cell(row, *m_units.column()), which);
    m_units.takeBare(which, text, lineOf(row));
    return read.unit.kelvin ? std::optional(LogUnit{read.unit.unit, true}) : std::nullopt;
}

/// Checks the number in its own unit, and converts it to the column's. Returns null if it is
/// possible.
const char* LogRowAccumulator::whyNot(std::optional<Decimal>& number, const CsvRow& row,
                                      std::size_t which, const std::optional<LogUnit>& cellUnit)
{
    if (!number)
        return QT_TRANSLATE_NOOP("Phrase", "is not a number");
    const auto unit = unitOf(row, which, cellUnit);
    if (!unit) {
        m_reason = unit.error();
        return m_reason.c_str();
    }
    if (!*unit)
        return impossible(m_columns[which].column.unit, number->value);
    const double shift = (*unit)->kelvin ? kelvinOfZeroCelsius : 0.0;
    const char* reason = impossible((*unit)->unit, number->value - shift);
    if (reason == nullptr)
        number = m_units.inUnitOfColumn(*number, **unit, which);
    return reason;
}

std::optional<char> LogRowAccumulator::signToReadAgain() const
{
    return m_numbers.readGroupsWrong() ? std::optional(*m_numbers.decimalSign()) : std::nullopt;
}

} // namespace holdband
