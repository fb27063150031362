// What the bar beneath the grid of rounds does to the logbook: each change as work for the
// session's writer. Nothing is done before that runs it.
#pragma once

#include "core/model/readings.h"
#include "core/results/rounds/rounds_sheet.h"
#include "core/store/logbook_file.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>

namespace holdband::ui {

/// True once it is done.
using ReadingChange = std::function<Result<bool>(const store::LogbookFile&)>;

/// A reading that stands: its row, and its id in the store.
struct StandingReading {
    results::RoundRow row;
    std::int64_t id = 0;
};

/// What is said beside a correction.
struct CorrectionNote {
    std::string why;
    std::optional<std::string> note; ///< the reading's own, where it is another now
};

/// A late reading of the row.
ReadingChange addingRegister(const results::RoundRow& row, const MeterReading& reading);
ReadingChange addingHand(const results::RoundRow& row, const HandReading& reading);
/// The reading is the first of another meter in the place of the row's.
ReadingChange replacingMeter(const results::RoundRow& row, const MeterReading& reading);

ReadingChange correctingRegister(const StandingReading& standing, const MeterReading& reading,
                                 const CorrectionNote& note);
ReadingChange correctingHand(const StandingReading& standing, const HandReading& reading,
                             const CorrectionNote& note);
ReadingChange settingNote(const StandingReading& standing, const std::string& note);
ReadingChange takingAway(const StandingReading& standing, const std::string& why);

} // namespace holdband::ui
