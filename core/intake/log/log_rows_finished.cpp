// What a log's rows mean as a whole: the order of its dates, its zone, its columns.
#include "core/intake/log/log_places.h"
#include "core/intake/log/log_row_accumulator.h"
#include "core/intake/time/header_zone.h"
#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"
#include "core/text/times.h"

#include <algorithm>
#include <chrono>

namespace holdband {

namespace {

std::string zoneRemedy()
{
    return Phrase::tr("say --zone with the zone of the logger's clock, such as America/Denver or "
                      "-07:00");
}

} // namespace

Done LogRowAccumulator::finishInto(LogFile& file)
{
    file.rowsRead = m_rowsRead;
    file.timeHeader = m_timeHeader;
    file.timeReason = m_pattern ? Phrase::tr("by the pattern %1").with(*m_request.timePattern)
                                : m_dialect.timeReason;
    if (m_dialect.timeNumbers && m_dialect.timeNumbers->unit == TimeUnit::days)
        file.timeReason = Phrase::tr("days of a spreadsheet's calendar");
    HOLDBAND_TRY(checkNamesKnown());
    HOLDBAND_TRY(m_units.checkBareCells());
    const auto sign = m_numbers.decimalSign();
    if (!sign)
        return failure(sign.error());
    file.decimalSign = *sign;
    return settleOrder(file).and_then([&] { return resolve(file); }).and_then([&] {
        return fillColumns(file);
    });
}

/// Refuses a long log in which no name is known.
Done LogRowAccumulator::checkNamesKnown() const
{
    if (!m_named || m_named->ignored().empty() ||
        std::any_of(m_values.begin(), m_values.end(),
                    [](const ColumnInFileOrder& values) { return !values.value.empty(); }))
        return {};
    return dataProblem(
        Phrase::tr("no name in the rows is a sensor's or meter's"),
        columnPlace(m_dialect.header[m_named->column()]),
        Phrase::tr("say which is which with --column \"SENSOR=NAME\"; the names are: %1")
            .with(joined(m_named->ignored())),
        Decision::columns, m_named->ignored());
}

Done LogRowAccumulator::settleOrder(LogFile& file)
{
    file.dateOrder = m_request.dateOrder;
    if (!m_votes.any())
        return {};
    const auto decided = m_votes.decide();
    if (!decided) {
        Problem problem = decided.error();
        problem.place += (problem.place.empty() ? "" : ", ") + columnPlace(m_timeHeader);
        return failure(problem);
    }
    file.dateOrder = decided->order;
    file.timeReason = decided->reason;
    for (std::size_t i = 0; i < m_times.value.size(); ++i) {
        if (m_times.kind[i] != StampKind::loose)
            continue;
        // Every row fits the order: orders that some row doesn't fit were excluded.
        const Stamp stamp =
            stampInOrder(unpacked(m_times.value[i]), decided->order).value_or(Stamp{});
        m_times.kind[i] = stamp.kind;
        m_times.value[i] = stamp.value;
    }
    return {};
}

/// The zone of the local times: the one set, else the header's, else the default.
Result<Zone> LogRowAccumulator::zoneOfTimes(LogFile& file) const
{
    std::vector<std::string_view> headers{m_dialect.header[m_dialect.time.first]};
    if (m_dialect.time.second)
        headers.emplace_back(m_dialect.header[*m_dialect.time.second]);
    const HeaderZone ofRows = headerZone({m_zoneOfRows});
    if (ofRows.zone) {
        file.zoneReason = Phrase::tr("as the rows say");
        return *ofRows.zone;
    }
    if (!ofRows.unclear.empty() && !m_request.zoneSet)
        return dataProblem(Phrase::tr("\"%1\" behind the times is no single time zone")
                               .with(shownInList(m_zoneOfRows)),
                           columnPlace(m_timeHeader), zoneRemedy(), Decision::zone,
                           {"America/Denver", "-07:00"});
    const HeaderZone said = headerZone(headers);
    file.zoneReason = m_request.zoneReason;
    if (m_request.zoneSet) {
        if (said.zone && *said.zone != m_request.zone)
            file.zoneReason =
                Phrase::tr("%1; the header \"%2\" says %3")
                    .with(m_request.zoneReason, shownInList(m_timeHeader), zoneText(*said.zone));
        return m_request.zone;
    }
    if (!said.unclear.empty())
        return dataProblem(Phrase::tr("\"%1\" in the header is no single time zone")
                               .with(shownInList(said.unclear)),
                           columnPlace(m_timeHeader), zoneRemedy(), Decision::zone,
                           {"America/Denver", "-07:00"});
    if (said.zone)
        file.zoneReason = Phrase::tr("from the header \"%1\"").with(shownInList(m_timeHeader));
    return said.zone.value_or(m_request.zone);
}

/// Turns times since the start into instants.
Done LogRowAccumulator::addStart(LogFile& file)
{
    const std::string start = m_request.start.value_or("");
    const auto zone = zoneOfTimes(file);
    HOLDBAND_TRY(zone);
    HOLDBAND_TRY(m_elapsed->addStart(start, *zone, m_times.value, m_timeHeader));
    file.timeReason = Phrase::tr("%1 since %2").with(timeUnitText(m_elapsed->unit()), start);
    const auto own = scanStamp(start);
    if (!own || own->kind != StampKind::instant)
        file.zoneName = zone->name();
    return {};
}

Done LogRowAccumulator::resolve(LogFile& file)
{
    if (m_elapsed)
        return addStart(file);
    file.someOwnOffset = std::find(m_times.kind.begin(), m_times.kind.end(), StampKind::instant) !=
                         m_times.kind.end();
    if (!m_anyLocal)
        return {};
    const auto found = zoneOfTimes(file);
    HOLDBAND_TRY(found);
    const Zone& zone = *found;
    file.zoneName = zone.name();
    auto resolved = resolveRows(m_times, zone);
    if (!resolved)
        return failure(resolved.error());
    for (const MissingTime& gone : resolved->missing) {
        const Date date{std::chrono::floor<std::chrono::days>(gone.wall)};
        m_rejects.add(m_times.line[gone.row], m_timeHeader,
                      isoDate(date) + " " + clockText(gone.wall), [&] {
                          return Phrase::tr("does not exist in %1: clocks went forward over it")
                              .with(zone.name());
                      });
        for (ColumnInFileOrder& values : m_values) {
            if (gone.row < values.value.size())
                values.value[gone.row] = noValue;
        }
    }
    if (resolved->doubled > 0)
        file.warnings.push_back(Phrase::counted(
            "%n rows in an hour that exists twice were placed by their order",
            "%n rows in an hour that exists twice were placed by their order", resolved->doubled));
    return {};
}

Done LogRowAccumulator::fillColumns(LogFile& file)
{
    if (m_named)
        file.ignoredNames = m_named->ignored();
    const auto converted = m_units.remarks();
    file.warnings.insert(file.warnings.end(), converted.begin(), converted.end());
    if (m_shortRows > 0)
        file.warnings.push_back(Phrase::counted(
            "%n rows are shorter than the header: their missing last cells count as no value",
            "%n row is shorter than the header: its missing last cells count as no value",
            static_cast<std::uint64_t>(m_shortRows)));
    for (std::size_t i = 0; i < m_columns.size(); ++i) {
        LogColumn& column = m_columns[i].column;
        if (m_named && m_values[i].value.empty())
            continue; // a name that does not occur in the file
        deduplicateInto(column, m_values[i], m_times.value, m_times.line);
        m_values[i] = {};
        if (!m_request.isExportedCopy) {
            const Done judged = judgeValues(column, m_columns[i].unit, file);
            if (!judged)
                return judged;
        }
        file.columns.push_back(std::move(column));
    }
    m_rejects.moveInto(file);
    return {};
}

Done LogRowAccumulator::judgeValues(LogColumn& column, const ChosenUnit& unit, LogFile& file)
{
    for (const RejectedRow& row : takeOutPowerOnValues(column))
        m_rejects.add(row.line, row.column, row.text, [&] { return row.reason; });
    const auto warning = contradiction(column, unit);
    if (!warning)
        return failure(warning.error());
    for (const std::string& text : {unit.warning, *warning}) {
        if (!text.empty())
            file.warnings.push_back(text);
    }
    return {};
}

} // namespace holdband
