// The contents of the Rounds page: a row for each meter and thermometer to be read, one for the
// gravity of each running batch, and the last rounds as a grid.
#pragma once

#include "core/model/readings.h"
#include "core/store/logbook_file.h"
#include "core/text/zone.h"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace holdband::results {

/// The subject of a row of the round.
enum class RoundKind { meter, thermometer, gravity };

/// What a meter used on average from one reading to the next.
struct MeterRate {
    Instant from;
    Instant to;
    double watts = 0.0;
};

/// The rates between a meter's readings of the last seven days, oldest first. A pair whose energy
/// is unknown is left out. Empty with fewer than three readings.
struct MeterWeek {
    std::vector<MeterRate> rates;
    double leastWatts = 0.0;
    double mostWatts = 0.0;
};

struct RoundRow {
    RoundKind kind = RoundKind::meter;
    std::string name; ///< the meter's, sensor's or batch's
    std::string setup;
    std::optional<int> setupIndex; ///< of `setup` in the logbook; absent without one
    Instant at;                    ///< of the next reading: now, unless another time was typed
    ReadingUnit unit = ReadingUnit::kilowattHour; ///< in which it is typed
    std::optional<Instant> lastAt;
    double last = 0.0;     ///< in the unit of the row
    int decimals = 2;      ///< of its readings
    bool topKnown = false; ///< for a meter: its register's highest value is set
    bool toRead = true;    ///< else it is only in the grid: a meter no longer in service,
                           ///< or the gravity of a batch that has ended
    /// The expected range of the next reading. For a meter: the last reading plus half to twice the
    /// mean power of the last three days × the time since; absent with fewer than two readings, and
    /// if the last one is over a week old. For a thermometer in a running batch's beer: the band.
    /// For a gravity: not above the last one.
    std::optional<std::pair<double, double>> expected;
    std::string expectedWhy; ///< a sentence: how that was computed
    MeterWeek week;          ///< up to `at`; of a meter only
};

/// The energy since the last reading of a meter's row.
struct UsedSince {
    double kwh = 0.0;
    double watts = 0.0; ///< on average
};

/// If the meter reads `kwh` at the row's time. Absent without a reading before, and below it:
/// then the user says first what happened.
std::optional<UsedSince> usedSince(const RoundRow& row, double kwh);

struct RoundCell {
    std::optional<double> value; ///< in force, in the row's unit
    int decimals = 2;            ///< as shown: those of the finest reading that the row shows
    int storedDecimals = 0;      ///< as it was typed
    bool missed = false;
    Instant at;          ///< time of the reading, or when it was due
    std::int64_t id = 0; ///< the reading's id in the store, if there is a value
    std::string note;
    std::string history; ///< "was 85.140, corrected 2 Mar 19:10: digits swapped"; usually empty
};

struct RoundColumn {
    Date date;
    int slot = 0; ///< index into the logbook's windows

    bool operator==(const RoundColumn&) const = default;
};

/// The round that the page is about.
struct NextRound {
    enum class State {
        none,  ///< no batch with a meter runs
        due,   ///< its window is open or over, and one of its meters is not read
        later, ///< nothing is to be read before its window opens
    };
    State state = State::none;
    RoundColumn round;
    Instant opens; ///< its window
};

struct RoundsSheet {
    LogbookSettings settings;
    Zone zone;
    Instant now;
    Instant nextDue; ///< the middle of the next window, or of the open one until it is read
    NextRound next;
    bool dueNow = false; ///< a window is open, a batch runs, and one of its meters is not read yet
    std::vector<RoundRow> rows;
    std::vector<RoundColumn> columns;          ///< 14 rounds, oldest first
    bool hasEarlier = false;                   ///< there are readings before them
    std::vector<std::vector<RoundCell>> cells; ///< [row][column]

    const RoundWindow& windowOf(const RoundColumn& column) const
    {
        return settings.rounds[static_cast<std::size_t>(column.slot)];
    }
};

/// The round of an instant: the one whose window's middle is nearest.
RoundColumn roundOf(Instant at, const Zone& zone, const std::vector<RoundWindow>& windows);

/// Which rounds to show.
struct RoundsRequest {
    std::optional<Instant> at; ///< time of the typed round, if not now: ranges are
                               ///< expected for then
    int sheetsBack = 0;        ///< how many sheets of 14 rounds before the last one the grid shows
    char decimalSign = '.';    ///< for the sentences
};

Result<RoundsSheet> reviewRounds(const store::LogbookFile& logbook,
                                 const RoundsRequest& request = {});

} // namespace holdband::results
