#include "core/results/rounds/rounds_grid.h"

#include "core/results/rounds/round_calendar.h"

#include <algorithm>

namespace holdband::results {

std::vector<RoundColumn> columnsShown(const Snapshot& snapshot, Instant now, int sheetsBack)
{
    constexpr int roundsShown = 14;
    const auto& windows = snapshot.settings.rounds;
    std::optional<Instant> last;
    for (const auto& [meter, readings] : snapshot.meterReadings) {
        if (!readings.empty())
            last = std::max(last.value_or(readings.back().inForce.at), readings.back().inForce.at);
    }
    const bool running = std::any_of(snapshot.batches.begin(), snapshot.batches.end(),
                                     [](const Batch& batch) { return !batch.ended.has_value(); });
    RoundColumn round = roundOf(running || !last ? now : *last, snapshot.zone, windows);
    for (int i = 0; i < sheetsBack * roundsShown; ++i)
        round = roundBefore(round, windows);
    std::vector<RoundColumn> columns;
    for (int i = 0; i < roundsShown; ++i) {
        columns.push_back(round);
        round = roundBefore(round, windows);
    }
    std::reverse(columns.begin(), columns.end());
    return columns;
}

RoundColumn RoundsGrid::roundAt(Instant at) const
{
    return roundOf(at, m_sheet.zone, m_sheet.settings.rounds);
}

bool RoundsGrid::isBefore(Instant at) const
{
    return earlier(roundAt(at), m_sheet.columns.front());
}

bool RoundsGrid::holds(Instant at) const
{
    const RoundColumn round = roundAt(at);
    return !earlier(round, m_sheet.columns.front()) && !earlier(m_sheet.columns.back(), round);
}

std::vector<RoundCell> RoundsGrid::cells(const std::vector<ShownReading>& readings,
                                         int leastDecimals,
                                         const std::function<bool(Instant)>& expected) const
{
    const auto& columns = m_sheet.columns;
    const auto& windows = m_sheet.settings.rounds;
    std::vector<RoundCell> cells(columns.size());
    for (std::size_t i = 0; i < columns.size(); ++i) {
        cells[i].at = dueAt(columns[i], m_sheet.zone, windows);
        const bool over = missedFrom(columns[i], m_sheet.zone, windows) < m_sheet.now;
        const bool open = m_lastIsOpen && i + 1 == columns.size();
        cells[i].missed = over && !open && expected(cells[i].at);
    }
    int decimals = leastDecimals;
    for (const ShownReading& reading : readings) {
        if (holds(reading.at))
            decimals = std::max(decimals, reading.decimals);
    }
    for (const ShownReading& reading : readings)
        place(cells, reading, decimals);
    return cells;
}

void RoundsGrid::place(std::vector<RoundCell>& cells, const ShownReading& reading,
                       int decimals) const
{
    const auto& columns = m_sheet.columns;
    const auto found = std::find(columns.begin(), columns.end(), roundAt(reading.at));
    if (found == columns.end())
        return;
    RoundCell& cell = cells[static_cast<std::size_t>(found - columns.begin())];
    cell = {reading.value, decimals,   reading.decimals, false,
            reading.at,    reading.id, reading.note,     reading.history};
}

} // namespace holdband::results
