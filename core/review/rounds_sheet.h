// What stands on the Rounds page: a row for each meter to be read, and the last rounds as a grid.
#pragma once

#include "core/store/logbook_file.h"
#include "core/text/zone.h"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace holdband::review {

/// The two rounds of a day.
enum class RoundSlot { morning, evening };

struct RoundRow {
    std::string meter;
    std::string setup;
    std::optional<Instant> lastAt;
    double lastKwh = 0.0;
    int decimals = 2; ///< that its readings are written with
    /// Where the next reading should fall: the last one plus what half to twice the mean power of
    /// the last three days makes of the time since. Absent with fewer than two readings, and where
    /// the last one is over a week old.
    std::optional<std::pair<double, double>> expectedKwh;
    std::string expectedWhy; ///< how that was computed, a sentence
};

struct RoundCell {
    std::optional<double> kwh; ///< in force
    int decimals = 2;
    bool missed = false;
    std::string history; ///< "was 85.140, corrected 2 Mar 19:10: digits swapped"; mostly empty
};

struct RoundColumn {
    Date date;
    RoundSlot slot = RoundSlot::morning;
};

struct RoundsSheet {
    LogbookSettings settings;
    Zone zone;
    Instant now;
    std::vector<RoundRow> rows;
    std::vector<RoundColumn> columns;          ///< the last 14 rounds, oldest first
    std::vector<std::vector<RoundCell>> cells; ///< [row][column]
};

/// Which round an instant belongs to: before 12:30 local time the morning's.
RoundColumn roundOf(Instant at, const Zone& zone);

Result<RoundsSheet> reviewRounds(const store::LogbookFile& logbook);

} // namespace holdband::review
