#include "core/intake/keep_log.h"

#include "core/intake/register_check.h"
#include "core/store/equipment.h"
#include "core/store/meter_readings.h"
#include "core/store/reading_units.h"
#include "core/store/readings.h"
#include "core/text/near.h"
#include "core/text/numbers.h"
#include "core/text/times.h"

#include <algorithm>
#include <map>
#include <set>

namespace holdband::intake {

namespace {

constexpr std::size_t conflictsListed = 20;

SeriesKind kindOf(Reads reads)
{
    if (reads == Reads::power)
        return SeriesKind::power;
    return reads == Reads::gravity ? SeriesKind::gravity : SeriesKind::temperature;
}

/// Writes down what was found of one column.
class Keeper {
public:
    Keeper(const store::LogbookFile& logbook, const store::Change& change, Zone zone,
           store::ImportId import, ImportReport& report)
        : m_logbook(logbook), m_change(change), m_zone(std::move(zone)), m_import(import),
          m_report(report)
    {
    }

    Done keep(const LogColumn& column)
    {
        m_report.columns.push_back({column.name, column.header, column.unit, column.unitReason, 0,
                                    column.duplicates,
                                    static_cast<std::int64_t>(column.conflicts.size())});
        for (const ConflictingRow& conflict : column.conflicts)
            note(column, conflict.line, conflict.at, conflict.kept, conflict.refused);
        return column.kind == SeriesKind::meter ? keepRegister(column) : keepSeries(column);
    }

private:
    Done keepSeries(const LogColumn& column)
    {
        store::SensorRows rows{column.name, column.header, column.unit,
                               &column.at,  &column.raw,   &column.line};
        auto added = store::addReadings(m_change, m_import, rows);
        HOLDBAND_TRY(added);
        ImportedColumn& counts = m_report.columns.back();
        counts.added = added->added;
        counts.alreadyThere += added->alreadyThere;
        counts.conflicting += static_cast<std::int64_t>(added->conflicts.size());
        for (const store::StoredConflict& conflict : added->conflicts)
            note(column, column.line[conflict.row], column.at[conflict.row], conflict.stored,
                 column.raw[conflict.row]);
        return {};
    }

    Done keepRegister(const LogColumn& column)
    {
        auto meter = registerOf(m_logbook, column.name);
        HOLDBAND_TRY(meter);
        for (std::size_t i = 0; i < column.at.size(); ++i)
            HOLDBAND_TRY(keepRegisterReading(*meter, column, i));
        return {};
    }

    Done keepRegisterReading(RegisterCheck& meter, const LogColumn& column, std::size_t i)
    {
        MeterReading reading;
        reading.at = column.at[i];
        reading.registerReading =
            Energy::kilowattHours(store::baseValue(column.raw[i], column.unit));
        reading.decimals = std::min(
            column.decimals[i] + (column.unit == ReadingUnit::wattHour ? 3 : 0), mostDecimals);
        const ReadingCheck check = meter.check(reading);
        ImportedColumn& counts = m_report.columns.back();
        if (check.doubt && check.doubt->doubt == ReadingDoubt::sameInstant) {
            ++counts.conflicting;
            if (m_report.conflicts.size() < conflictsListed)
                m_report.conflicts.push_back("line " + std::to_string(column.line[i]) + ": " +
                                             check.doubt->problem.what);
            return {};
        }
        if (check.doubt) {
            Problem problem = check.doubt->problem;
            problem.place = m_report.file.fileName + ", line " + std::to_string(column.line[i]) +
                            ", column " + column.header;
            return failure(std::move(problem));
        }
        if (check.alreadyThere) {
            ++counts.alreadyThere;
            return {};
        }
        reading.event = eventOf(reading, check);
        HOLDBAND_TRY(store::addMeterReading(m_change, column.name, reading,
                                            store::ReadingSource{m_import, column.line[i]}));
        meter.accept(reading);
        ++counts.added;
        return {};
    }

    void note(const LogColumn& column, std::int64_t line, Instant at, double kept, double refused)
    {
        if (m_report.conflicts.size() >= conflictsListed)
            return;
        m_report.conflicts.push_back("line " + std::to_string(line) + ", " + column.name + ": " +
                                     shortestText(refused) + " at " + localIso(at, m_zone) +
                                     ", where " + shortestText(kept) + " is kept");
    }

    const store::LogbookFile& m_logbook;
    const store::Change& m_change;
    Zone m_zone;
    store::ImportId m_import;
    ImportReport& m_report;
};

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
        wanted.push_back({sensor.name, kindOf(sensor.reads), std::nullopt, std::nullopt});
    for (const Meter& meter : *meters)
        wanted.push_back({meter.name, SeriesKind::meter, std::nullopt, std::nullopt});
    for (const WantedColumn& column : wanted)
        names.push_back(column.name);
    std::set<std::string> seen;
    for (const auto& [name, header] : mapped) {
        const auto found =
            std::find_if(wanted.begin(), wanted.end(),
                         [&](const WantedColumn& each) { return each.name == name; });
        if (found == wanted.end())
            return dataProblem("there is no sensor and no meter \"" + name + "\"", {},
                               suggestion(name, names));
        if (!seen.insert(name).second)
            return dataProblem("\"" + name + "\" is given two columns", {}, "name it once");
        found->header = header;
    }
    return wanted;
}

Result<ImportReport> keepLog(const store::LogbookFile& logbook, const store::Change& change,
                             LogFile file)
{
    auto settings = store::readSettings(logbook);
    HOLDBAND_TRY(settings);
    auto zone = Zone::named(settings->zone);
    HOLDBAND_TRY(zone);
    auto import = store::addImport(change, {file.fileName, file.sha256, file.rowsRead});
    HOLDBAND_TRY(import);
    ImportReport report;
    report.file = std::move(file);
    const std::vector<LogColumn> columns = std::exchange(report.file.columns, {});
    Keeper keeper(logbook, change, *zone, *import, report);
    for (const LogColumn& column : columns)
        HOLDBAND_TRY(keeper.keep(column));
    HOLDBAND_TRY(store::dropEmptyImport(change, *import));
    if (report.added() > 0)
        report.import = *import;
    return report;
}

} // namespace holdband::intake
