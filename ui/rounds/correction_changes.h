// The changes that the bar below the grid of rounds makes to the logbook, each as work for the
// session's writer. Nothing happens before the writer runs it.
#pragma once

#include "core/model/readings.h"
#include "core/results/rounds/rounds_sheet.h"
#include "core/store/logbook_file.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>

namespace holdband::ui {

/// Returns true after it is done.
using ReadingChange = std::function<Result<bool>(const store::LogbookFile&)>;

/// A stored reading: its row, and its id in the store.
struct RowReading {
    results::RoundRow row;
    std::int64_t id = 0;
};

/// The reason and note of a correction.
struct CorrectionNote {
    std::string why;
    std::optional<std::string> note; ///< the reading's note, if it was changed
};

/// Adds a late reading to the row.
ReadingChange addingRegister(const results::RoundRow& row, const MeterReading& reading);
ReadingChange addingHand(const results::RoundRow& row, const HandReading& reading);
/// Adds the reading as the first of another meter that replaced the row's.
ReadingChange replacingMeter(const results::RoundRow& row, const MeterReading& reading);

ReadingChange correctingRegister(const RowReading& stored, const MeterReading& reading,
                                 const CorrectionNote& note);
ReadingChange correctingHand(const RowReading& stored, const HandReading& reading,
                             const CorrectionNote& note);
ReadingChange settingNote(const RowReading& stored, const std::string& note);
ReadingChange deletingReading(const RowReading& stored, const std::string& why);

} // namespace holdband::ui
