#include "core/intake/log/map_request.h"

#include "core/intake/csv/guess.h"
#include "core/intake/log/store_log.h"
#include "core/store/records/equipment.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <set>

namespace holdband::intake {

namespace {

/// Turns each choice into a wanted column, and checks that each sensor and meter has only one.
class MapColumns {
public:
    explicit MapColumns(const std::vector<Target>& targets) : m_targets(targets) {}

    Done add(WantedColumn column)
    {
        const auto found =
            std::find_if(m_targets.begin(), m_targets.end(),
                         [&](const Target& target) { return target.name == column.name; });
        if (found == m_targets.end())
            return dataProblem(
                Phrase::tr("there is no sensor and no meter \"%1\"").with(column.name), {},
                Phrase::tr("choose another"), Decision::columns);
        if (!m_seen.insert(column.name).second)
            return dataProblem(Phrase::tr("\"%1\" is given twice").with(column.name), {},
                               Phrase::tr("choose it once"), Decision::columns);
        column.kind = found->kind;
        m_wanted.push_back(std::move(column));
        return {};
    }

    std::vector<WantedColumn> take() { return std::move(m_wanted); }

private:
    const std::vector<Target>& m_targets;
    std::set<std::string> m_seen;
    std::vector<WantedColumn> m_wanted;
};

Result<std::vector<WantedColumn>> columnsOfMap(const ColumnMap& map,
                                               const std::vector<Target>& targets)
{
    MapColumns columns(targets);
    for (std::size_t i = 0; i < map.columns.size(); ++i) {
        const ColumnChoice& choice = map.columns[i];
        if (choice.meaning == Meaning::reading)
            HOLDBAND_TRY(columns.add({choice.of, {}, std::nullopt, choice.unit, i}));
    }
    const bool isLong = map.columnOf(Meaning::name) && map.columnOf(Meaning::value);
    for (const NameChoice& choice : map.names) {
        if (isLong && !choice.of.empty())
            HOLDBAND_TRY(columns.add({choice.of, {}, choice.name, choice.unit, std::nullopt}));
    }
    auto wanted = columns.take();
    if (wanted.empty() && isLong)
        return dataProblem(Phrase::tr("no name in the file is a sensor’s or meter’s yet"), {},
                           Phrase::tr("choose beside each name what it is"), Decision::columns);
    if (wanted.empty())
        return dataProblem(Phrase::tr("no column is a sensor’s or meter’s yet"), {},
                           Phrase::tr("choose what its columns are"), Decision::columns);
    return wanted;
}

/// Fills in the columns that the user chose, by position.
Done fillByMap(const store::LogbookFile& logbook, const ImportOptions& options, LogRequest& request)
{
    const ColumnMap& map = *options.map;
    auto targets = readTargets(logbook);
    HOLDBAND_TRY(targets);
    auto wanted = columnsOfMap(map, *targets);
    HOLDBAND_TRY(wanted);
    const auto time = map.columnOf(Meaning::time);
    if (!time)
        return dataProblem(Phrase::tr("no column has the time yet"), {}, Phrase::tr("choose it"),
                           Decision::timeColumn);
    request.wanted = std::move(*wanted);
    request.layout = options.layout.value_or(LogLayout{});
    request.layout->timeColumn = *time;
    request.layout->clockColumn = map.columnOf(Meaning::clock);
    const auto name = map.columnOf(Meaning::name), value = map.columnOf(Meaning::value);
    const auto unit = map.columnOf(Meaning::unit);
    if (unit && !(name && value))
        return dataProblem(Phrase::tr("a column of units belongs to a log with one value a row"),
                           {}, Phrase::tr("choose which columns have the names and the values"),
                           Decision::columns);
    if (name && value)
        request.longForm = LongForm{{{}, name}, {{}, value}, {}};
    if (unit)
        request.longForm->unit = ColumnRef{{}, unit};
    request.dateOrder = map.dateOrder;
    request.timePattern = map.timePattern;
    request.decimalSign = map.decimalSign;
    request.timeUnit = map.timeUnit;
    request.start = map.start;
    return {};
}

/// Fills in the columns by names, as on the command line.
Done fillByName(const store::LogbookFile& logbook, const ImportOptions& options,
                LogRequest& request)
{
    auto wanted = wantedColumns(logbook, options.columns);
    HOLDBAND_TRY(wanted);
    request.wanted = std::move(*wanted);
    request.timeColumn = options.timeColumn;
    request.dateOrder = options.dateOrder;
    request.timePattern = options.timePattern;
    request.decimalSign = options.decimalSign;
    request.timeUnit = options.timeUnit;
    request.start = options.start;
    request.layoutRequest = options.layoutRequest;
    if (!options.longColumns)
        return {};
    request.longForm = LongForm{{options.longColumns->name}, {options.longColumns->value}, {}};
    if (options.longColumns->unit)
        request.longForm->unit = ColumnRef{*options.longColumns->unit};
    return {};
}

} // namespace

Result<LogRequest> requestFor(const store::LogbookFile& logbook, const ImportOptions& options)
{
    auto settings = store::readSettings(logbook);
    HOLDBAND_TRY(settings);
    const auto& named = options.map ? options.map->zone : options.zone;
    auto zone = Zone::named(named.value_or(settings->zone));
    if (!zone) {
        zone.error().decision = Decision::zone;
        return failure(zone.error());
    }
    LogRequest request;
    request.path = options.path;
    request.text = options.text;
    request.sheet = options.sheet;
    request.zone = *zone;
    request.zoneSet = named.has_value();
    request.zoneReason = named ? Phrase::tr("as set") : Phrase::tr("the logbook's zone");
    if (options.map)
        HOLDBAND_TRY(fillByMap(logbook, options, request));
    else
        HOLDBAND_TRY(fillByName(logbook, options, request));
    if (options.unit)
        request.temperatureUnit = *options.unit == TemperatureUnit::celsius
                                      ? ReadingUnit::celsius
                                      : ReadingUnit::fahrenheit;
    request.energyUnit = options.energyUnit;
    request.fallbackUnit = settings->temperatureUnit();
    return request;
}

} // namespace holdband::intake
