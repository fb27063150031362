#include "core/intake/log/store_log.h"

#include "core/editing/register_check.h"
#include "core/intake/log/interval_energy.h"
#include "core/intake/log/units.h"
#include "core/store/readings/meter_readings.h"
#include "core/store/readings/reading_units.h"
#include "core/store/readings/readings.h"
#include "core/store/records/equipment.h"
#include "core/text/name_suggestions.h"
#include "core/text/numbers.h"
#include "core/text/phrase.h"
#include "core/text/times.h"

#include <algorithm>
#include <map>
#include <set>

namespace holdband::intake {

namespace {

constexpr std::size_t conflictsListed = 20;

/// Where new readings are stored: an import inside a change.
struct Destination {
    const store::Change& change;
    store::ImportId import;
};

/// Reports the results for one column, and stores the new readings if there is a destination.
class ColumnStorer {
public:
    ColumnStorer(const store::LogbookFile& logbook, const std::optional<Destination>& destination,
                 Zone zone, const StoreOptions& options, ImportReport& report)
        : m_logbook(logbook), m_destination(destination), m_zone(std::move(zone)),
          m_options(options), m_report(report)
    {
    }

    Done keep(const LogColumn& column)
    {
        m_report.columns.push_back({column.name, column.header, column.unit, column.unitReason, 0,
                                    column.duplicates,
                                    static_cast<std::int64_t>(column.conflicts.size())});
        for (const ConflictingRow& conflict : column.conflicts) {
            note(column, conflict.line, conflict.at, conflict.stored, conflict.refused);
            list(m_report.rows.conflicting, conflict.line, conflict.at, conflict.refused,
                 conflict.stored);
        }
        listRepeated(column);
        return column.kind == SeriesKind::meter ? storeRegister(column) : storeSeries(column);
    }

private:
    Done storeSeries(const LogColumn& column)
    {
        if (column.kind == SeriesKind::intervalEnergy && looksLikeRegister(column.raw))
            return failure(registerIn(column));
        store::SensorRows rows{column.name, column.header, column.unit,
                               &column.at,  &column.raw,   &column.line};
        auto added = m_destination
                         ? store::addReadings(m_destination->change, m_destination->import, rows)
                         : store::compareReadings(m_logbook, rows);
        HOLDBAND_TRY(added);
        ImportedColumn& counts = m_report.columns.back();
        counts.added = added->added;
        counts.alreadyThere += added->alreadyThere;
        counts.conflicting += static_cast<std::int64_t>(added->conflicts.size());
        for (const std::uint32_t row : added->firstAdded)
            listRow(m_report.rows.added, column, row);
        for (const std::uint32_t row : added->firstThere)
            listRow(m_report.rows.alreadyThere, column, row);
        for (const store::StoredConflict& conflict : added->conflicts) {
            note(column, column.line[conflict.row], column.at[conflict.row], conflict.stored,
                 column.raw[conflict.row]);
            listRow(m_report.rows.conflicting, column, conflict.row, conflict.stored);
        }
        return {};
    }

    Done storeRegister(const LogColumn& column)
    {
        auto meter = registerOf(m_logbook, column.name);
        HOLDBAND_TRY(meter);
        std::vector<MeterReading> readings;
        readings.reserve(column.at.size());
        for (std::size_t i = 0; i < column.at.size(); ++i)
            readings.push_back(readingOf(column, i));
        const ColumnFalls falls = fallsOf(readings, *meter);
        if (falls.looksLikeIntervals())
            return failure(intervalsIn(column, falls));
        for (std::size_t i = 0; i < readings.size(); ++i)
            HOLDBAND_TRY(storeRegisterReading(*meter, column, i, std::move(readings[i])));
        return m_destination ? saveMovedEvents(m_destination->change, *meter) : Done{};
    }

    static MeterReading readingOf(const LogColumn& column, std::size_t i)
    {
        MeterReading reading;
        reading.at = column.at[i];
        reading.registerReading =
            Energy::kilowattHours(store::baseValue(column.raw[i], column.unit));
        reading.decimals = std::min(
            column.decimals[i] + (column.unit == ReadingUnit::wattHour ? 3 : 0), mostDecimals);
        return reading;
    }

    Done storeRegisterReading(RegisterCheck& meter, const LogColumn& column, std::size_t i,
                              MeterReading reading)
    {
        ReadingCheck check = meter.check(reading);
        if (m_options.registerDrop && check.doubt &&
            check.doubt->doubt == ReadingDoubt::belowBefore) {
            reading.event = m_options.registerDrop;
            check = meter.check(reading);
        }
        ImportedColumn& counts = m_report.columns.back();
        if (check.doubt && check.doubt->doubt == ReadingDoubt::sameInstant) {
            ++counts.conflicting;
            listRow(m_report.rows.conflicting, column, i);
            if (m_report.conflicts.size() < conflictsListed)
                m_report.conflicts.push_back(
                    Phrase::tr("line %1: %2")
                        .with(std::to_string(column.line[i]), check.doubt->problem.what));
            return {};
        }
        if (check.doubt)
            return failure(doubtIn(column, i, *check.doubt));
        if (check.alreadyThere) {
            ++counts.alreadyThere;
            listRow(m_report.rows.alreadyThere, column, i);
            return {};
        }
        reading.event = check.event;
        if (m_destination)
            HOLDBAND_TRY(store::addMeterReading(
                m_destination->change, column.name, reading,
                store::ReadingSource{m_destination->import, column.line[i]}));
        meter.accept(reading, check);
        ++counts.added;
        listRow(m_report.rows.added, column, i);
        return {};
    }

    std::string placeIn(const LogColumn& column, std::size_t i) const
    {
        return Phrase::tr("%1, line %2, column %3")
            .with(m_report.file.fileName, std::to_string(column.line[i]), column.header);
    }

    Problem intervalsIn(const LogColumn& column, const ColumnFalls& falls) const
    {
        const std::size_t first = falls.firstAt.front();
        std::vector<std::string> lines;
        for (const std::size_t i : falls.firstAt)
            lines.push_back(std::to_string(column.line[i]));
        return {
            ProblemKind::data,
            Phrase::tr("the values fall in %1 of the %2 rows in which they change, first from %3 "
                       "to %4 (lines %5 …): the column looks like the energy of each interval, "
                       "not like a meter's register, which only rises")
                .with(std::to_string(falls.falls), std::to_string(falls.steps),
                      shortestText(column.raw[first - 1]), shortestText(column.raw[first]),
                      joined(lines)),
            placeIn(column, first),
            Phrase::tr("import it for a sensor that reads the energy of each interval, or a column "
                       "that holds the register's running total for the meter")};
    }

    Problem registerIn(const LogColumn& column) const
    {
        return {ProblemKind::data,
                Phrase::tr("the values never fall in %1 rows and rise in at least %2 of them: the "
                           "column looks like a meter's register, not like the energy of each "
                           "interval")
                    .with(std::to_string(column.raw.size()), std::to_string(mostRises)),
                placeIn(column, 0), Phrase::tr("import it for a meter"), Decision::columns};
    }

    Problem doubtIn(const LogColumn& column, std::size_t i, const DoubtfulReading& doubt) const
    {
        Problem problem = doubt.problem;
        problem.place = placeIn(column, i);
        if (doubt.doubt == ReadingDoubt::belowBefore) {
            problem.decision = Decision::registerDrop;
            problem.options = {"rollover", "reset"};
            problem.remedy = Phrase::tr("say --event rollover (it passed its top) or --event "
                                        "reset (it restarted at 0); another meter gets a name of "
                                        "its own, and the energy of each interval is no register");
        }
        return problem;
    }

    void listRow(std::vector<ReportedRow>& rows, const LogColumn& column, std::size_t i,
                 std::optional<double> stored = std::nullopt) const
    {
        list(rows, column.line[i], column.at[i], column.raw[i], stored);
    }

    void list(std::vector<ReportedRow>& rows, std::int64_t line, Instant at, double value,
              std::optional<double> stored) const
    {
        const std::size_t which = m_report.columns.size() - 1;
        // The rows of one column follow each other, so its count is taken from the end.
        if (rows.size() >= maxRowsListed && rows[rows.size() - maxRowsListed].column == which)
            return;
        rows.push_back({line, which, at, value, stored});
    }

    /// Lists rows that occur twice in the file.
    void listRepeated(const LogColumn& column) const
    {
        for (const std::uint32_t line : column.repeated)
            m_report.rows.repeated.push_back({line, m_report.columns.size() - 1});
    }

    void note(const LogColumn& column, std::int64_t line, Instant at, double stored, double refused)
    {
        if (m_report.conflicts.size() >= conflictsListed)
            return;
        m_report.conflicts.push_back(Phrase::tr("line %1, %2: %3 at %4, where %5 is stored")
                                         .with(std::to_string(line), column.name,
                                               shortestText(refused), localIso(at, m_zone),
                                               shortestText(stored)));
    }

    const store::LogbookFile& m_logbook;
    const std::optional<Destination>& m_destination;
    Zone m_zone;
    const StoreOptions& m_options;
    ImportReport& m_report;
};

/// The values of the file's first rows, collected from all columns.
std::vector<ResultRow> firstRows(const std::vector<LogColumn>& columns, std::int64_t headerLine)
{
    const std::int64_t last = headerLine + 4 * static_cast<std::int64_t>(mostResultRows);
    std::map<std::int64_t, ResultRow> rows;
    for (std::size_t k = 0; k < columns.size(); ++k) {
        for (std::size_t i = 0; i < columns[k].line.size(); ++i) {
            const std::int64_t line = columns[k].line[i];
            if (line > last)
                continue;
            ResultRow& row = rows[line];
            row.line = line;
            row.at = columns[k].at[i];
            row.values.resize(columns.size());
            row.values[k] = columns[k].raw[i];
        }
    }
    std::vector<ResultRow> first;
    for (auto& [line, row] : rows) {
        if (first.size() < mostResultRows)
            first.push_back(std::move(row));
    }
    return first;
}

} // namespace

Result<std::vector<WantedColumn>>
wantedColumns(const store::LogbookFile& logbook,
              const std::vector<std::pair<std::string, std::string>>& mapped)
{
    auto sensors = store::readSensors(logbook);
    HOLDBAND_TRY(sensors);
    auto meters = store::readMeters(logbook);
    HOLDBAND_TRY(meters);
    std::vector<WantedColumn> wanted;
    std::vector<std::string> names;
    for (const Sensor& sensor : *sensors)
        wanted.push_back({sensor.name, seriesKind(sensor.reads), std::nullopt, std::nullopt});
    for (const Meter& meter : *meters)
        wanted.push_back({meter.name, SeriesKind::meter, std::nullopt, std::nullopt});
    for (const WantedColumn& column : wanted)
        names.push_back(column.name);
    std::set<std::string> seen;
    for (const auto& [name, header] : mapped) {
        const auto found =
            std::find_if(wanted.begin(), wanted.end(),
                         [&, &name = name](const WantedColumn& each) { return each.name == name; });
        if (found == wanted.end())
            return dataProblem(Phrase::tr("there is no sensor and no meter \"%1\"").with(name), {},
                               suggestion(name, names), Decision::columns);
        if (!seen.insert(name).second)
            return dataProblem(Phrase::tr("\"%1\" is given two columns").with(name), {},
                               Phrase::tr("name it once"), Decision::columns);
        found->header = header;
    }
    return wanted;
}

namespace {

/// Reports on every column; stores it or only compares it.
Result<ImportReport> reportOn(const store::LogbookFile& logbook,
                              const std::optional<Destination>& destination, LogFile file,
                              const StoreOptions& options)
{
    auto settings = store::readSettings(logbook);
    HOLDBAND_TRY(settings);
    auto zone = Zone::named(settings->zone);
    HOLDBAND_TRY(zone);
    ImportReport report;
    report.file = std::move(file);
    const std::vector<LogColumn> columns = std::exchange(report.file.columns, {});
    report.firstRows = firstRows(columns, report.file.headerLine);
    ColumnStorer keeper(logbook, destination, *zone, options, report);
    for (std::size_t i = 0; i < columns.size(); ++i) {
        HOLDBAND_TRY(keeper.keep(columns[i]));
        if (options.progress &&
            !options.progress(static_cast<double>(i + 1) / static_cast<double>(columns.size())))
            return failure(importCancelled());
    }
    return report;
}

} // namespace

Problem importCancelled()
{
    return {ProblemKind::data, Phrase::tr("the import was cancelled; nothing was stored"), {}, {}};
}

Result<ImportReport> compareLog(const store::LogbookFile& logbook, LogFile file,
                                const StoreOptions& options)
{
    return reportOn(logbook, std::nullopt, std::move(file), options);
}

Result<ImportReport> storeLog(const store::LogbookFile& logbook, const store::Change& change,
                              LogFile file, const StoreOptions& options)
{
    const store::ImportedFile source{file.fileName, file.sha256, file.rowsRead};
    auto import = options.extend ? store::extendImport(change, *options.extend, source)
                                 : store::addImport(change, source);
    HOLDBAND_TRY(import);
    auto report = reportOn(logbook, Destination{change, *import}, std::move(file), options);
    HOLDBAND_TRY(report);
    HOLDBAND_TRY(store::dropEmptyImport(change, *import));
    if (report->added() > 0)
        report->import = *import;
    return report;
}

} // namespace holdband::intake
