#include "core/intake/map_request.h"

#include "core/intake/guess.h"

#include <algorithm>
#include <set>

namespace holdband::intake {

namespace {

/// Turns each choice into a wanted column, once for each sensor and meter.
class Wishes {
public:
    explicit Wishes(const std::vector<Target>& targets) : m_targets(targets) {}

    Done add(WantedColumn column)
    {
        const auto found =
            std::find_if(m_targets.begin(), m_targets.end(),
                         [&](const Target& target) { return target.name == column.name; });
        if (found == m_targets.end())
            return dataProblem("there is no sensor and no meter \"" + column.name + "\"", {},
                               "choose another", Decision::columns);
        if (!m_seen.insert(column.name).second)
            return dataProblem("\"" + column.name + "\" is given twice", {}, "choose it once",
                               Decision::columns);
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

Result<std::vector<WantedColumn>> wishes(const ColumnMap& map, const std::vector<Target>& targets)
{
    Wishes wishes(targets);
    for (std::size_t i = 0; i < map.columns.size(); ++i) {
        const ColumnChoice& choice = map.columns[i];
        if (choice.meaning == Meaning::reading)
            HOLDBAND_TRY(wishes.add({choice.of, {}, std::nullopt, choice.unit, i}));
    }
    const bool isLong = map.columnOf(Meaning::name) && map.columnOf(Meaning::value);
    for (const NameChoice& choice : map.names) {
        if (isLong && !choice.of.empty())
            HOLDBAND_TRY(wishes.add({choice.of, {}, choice.name, choice.unit, std::nullopt}));
    }
    auto wanted = wishes.take();
    if (wanted.empty())
        return dataProblem("no column is a sensor’s or meter’s yet", {},
                           "choose what its columns are", Decision::columns);
    return wanted;
}

} // namespace

Done fillByMap(const store::LogbookFile& logbook, const ImportOptions& options, LogRequest& request)
{
    const ColumnMap& map = *options.map;
    auto targets = readTargets(logbook);
    HOLDBAND_TRY(targets);
    auto wanted = wishes(map, *targets);
    HOLDBAND_TRY(wanted);
    const auto time = map.columnOf(Meaning::time);
    if (!time)
        return dataProblem("no column has the time yet", {}, "choose it", Decision::timeColumn);
    request.wanted = std::move(*wanted);
    request.layout = options.layout.value_or(LogLayout{});
    request.layout->timeColumn = *time;
    request.layout->clockColumn = map.columnOf(Meaning::clock);
    const auto name = map.columnOf(Meaning::name), value = map.columnOf(Meaning::value);
    if (name && value)
        request.longForm = LongForm{{{}, name}, {{}, value}};
    request.dateOrder = map.dateOrder;
    request.timePattern = map.timePattern;
    request.decimalSign = map.decimalSign;
    return {};
}

} // namespace holdband::intake
