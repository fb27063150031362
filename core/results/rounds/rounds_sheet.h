// What stands on the Rounds page: a row for each meter and each
// thermometer to be read, one for the gravity of each running batch, and the last rounds as a grid.
#pragma once

#include "core/model/readings.h"
#include "core/store/logbook_file.h"
#include "core/text/zone.h"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace holdband::results {

/// What a row of the round is of.
enum class RoundKind { meter, thermometer, gravity };

struct RoundRow {
    RoundKind kind = RoundKind::meter;
    std::string name; ///< of the meter, the sensor, or the batch
    std::string setup;
    ReadingUnit unit = ReadingUnit::kilowattHour; ///< that it is typed in
    std::optional<Instant> lastAt;
    double last = 0.0;     ///< in the unit of the row
    int decimals = 2;      ///< that its readings are written with
    bool topKnown = false; ///< of a meter: where its register rolls over
    bool toRead = true;    ///< else it stands in the grid only: a meter no longer in service,
                           ///< or the gravity of a batch that has ended
    /// Where the next reading should fall. Of a meter: the last one plus what half to twice the
    /// mean power of the last three days makes of the time since; absent with fewer than two
    /// readings, and where the last one is over a week old. Of a thermometer in a running batch's
    /// beer: the band. Of a gravity: not above the last one.
    std::optional<std::pair<double, double>> expected;
    std::string expectedWhy; ///< how that was computed, a sentence
};

struct RoundCell {
    std::optional<double> value; ///< in force, in the row's unit
    int decimals = 2;
    bool missed = false;
    Instant at;          ///< of the reading, or when it was due
    std::int64_t id = 0; ///< of the store's reading, where there is a value
    std::string note;
    std::string history; ///< "was 85.140, corrected 2 Mar 19:10: digits swapped"; mostly empty
};

struct RoundColumn {
    Date date;
    int slot = 0; ///< index into the logbook's windows

    bool operator==(const RoundColumn&) const = default;
};

struct RoundsSheet {
    LogbookSettings settings;
    Zone zone;
    Instant now;
    Instant nextDue;     ///< the middle of the next window; of the open one while it is not read
    bool dueNow = false; ///< a window is open, a batch runs, and a meter of it is not read yet
    std::vector<RoundRow> rows;
    std::vector<RoundColumn> columns;          ///< 14 rounds, oldest first
    bool hasEarlier = false;                   ///< something was read before them
    std::vector<std::vector<RoundCell>> cells; ///< [row][column]

    const RoundWindow& windowOf(const RoundColumn& column) const
    {
        return settings.rounds[static_cast<std::size_t>(column.slot)];
    }
};

/// Which round an instant belongs to: the one whose window's middle is nearest.
RoundColumn roundOf(Instant at, const Zone& zone, const std::vector<RoundWindow>& windows);

/// What is looked at.
struct RoundsWish {
    std::optional<Instant> at; ///< of the round that is typed, where it is not now: ranges are
                               ///< expected for then
    int sheetsBack = 0;        ///< how many times 14 rounds before the last ones the grid shows
    char decimalSign = '.';    ///< of the sentences
};

Result<RoundsSheet> reviewRounds(const store::LogbookFile& logbook, const RoundsWish& wish = {});

} // namespace holdband::results
