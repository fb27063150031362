// The grid of the last rounds: its columns, and the cells of a row. Not for use outside
// core/results.
#pragma once

#include "core/results/rounds/rounds_sheet.h"
#include "core/results/rounds/shown_readings.h"
#include "core/results/snapshot.h"

#include <functional>
#include <vector>

namespace holdband::results {

/// The last rounds: up to now while a batch runs or if something was read today, else up to the
/// last reading; or that many sheets before them.
std::vector<RoundColumn> columnsShown(const Snapshot& snapshot, Instant now, int sheetsBack);

/// Places instants and readings in the columns of a sheet.
class RoundsGrid {
public:
    /// `sheet` must outlive it. `lastIsOpen`: the last column may still be read.
    RoundsGrid(const RoundsSheet& sheet, bool lastIsOpen) : m_sheet(sheet), m_lastIsOpen(lastIsOpen)
    {
    }

    bool isBefore(Instant at) const;
    bool holds(Instant at) const;

    /// One for each column, all with the same number of decimals. `expected(due)`: whether the row
    /// should have been read when the round was due.
    std::vector<RoundCell> cells(const std::vector<ShownReading>& readings, int leastDecimals,
                                 const std::function<bool(Instant)>& expected) const;

private:
    RoundColumn roundAt(Instant at) const;
    void place(std::vector<RoundCell>& cells, const ShownReading& reading, int decimals) const;

    const RoundsSheet& m_sheet;
    bool m_lastIsOpen;
};

} // namespace holdband::results
