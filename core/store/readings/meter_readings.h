// Register readings in the store: the first typed values, their corrections, and the values in
// force.
#pragma once

#include "core/model/readings.h"
#include "core/store/logbook_file.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::store {

/// A value before its correction.
struct Replaced {
    double kwh = 0.0; ///< kWh
    int decimals = 0;
    Instant until;
    std::string why;

    bool operator==(const Replaced&) const = default;
};

struct StoredReading {
    MeterReadingId id;
    MeterReading inForce;
    std::vector<Replaced> before; ///< oldest first; usually empty
};

/// Where a reading came from, if not typed.
struct ReadingSource {
    ImportId import;
    std::int64_t line = 0;
};

/// A reading with everything that a copy of the logbook needs.
struct RecordedRegister : StoredReading {
    std::optional<ReadingSource> source;
    bool withdrawn = false;                  ///< together with its import
    std::optional<HistoryEntryId> leftOutBy; ///< the history entry that deleted it on its own
};

/// All of the meter's readings, including those that do not count: in order of time, at one instant
/// the one that counts last. Problem (data): unknown meter.
Result<std::vector<RecordedRegister>> readRegisterRecord(const LogbookFile& logbook,
                                                         const std::string& meter);

/// The meter's readings in order of time. Problem (data): unknown meter.
Result<std::vector<StoredReading>> readMeterReadings(const LogbookFile& logbook,
                                                     const std::string& meter);

/// Adds a reading without checking it. Problem (data): unknown meter, or there is already a reading
/// at that instant.
Result<MeterReadingId> addMeterReading(const Change& change, const std::string& meter,
                                       const MeterReading& reading,
                                       const std::optional<ReadingSource>& source = {});

/// Replaces the value in force; the old one remains on record.
Done correctMeterReading(const Change& change, MeterReadingId reading, double kwh, int decimals,
                         Instant at, const std::string& why);

Done setMeterReadingNote(const Change& change, MeterReadingId reading, const std::string& note);

/// Deletes the reading from the record; it remains in the file, with the history entry and its
/// reason: this change's entry, or `by`, an entry loaded from another logbook.
Done deleteMeterReading(const Change& change, MeterReadingId reading,
                        std::optional<HistoryEntryId> by = {});

/// Restores it to the record without checking it. Problem (data): there is another one at its
/// instant by now.
Done restoreMeterReading(const Change& change, MeterReadingId reading);

/// Sets whether the register rolled over or was reset before the reading that counts at that
/// instant.
Done setMeterReadingEvent(const Change& change, const std::string& meter, Instant at,
                          const std::optional<MeterEvent>& event);

/// A reading for a list: includes those that were deleted on their own.
struct ListedRegister : StoredReading {
    std::string file; ///< the imported file; empty if it was typed
    std::int64_t line = 0;
    bool leftOut = false;
    std::string why; ///< the reason why it was deleted
};
struct RegisterList {
    std::vector<ListedRegister> readings; ///< in order of time
    bool more = false;                    ///< the span contains further ones after these
};

/// The readings inside the span (ends included), at most `most`, without those withdrawn with their
/// import. Problem (data): unknown meter.
Result<RegisterList> listRegister(const LogbookFile& logbook, const std::string& meter, Span span,
                                  std::size_t most);

} // namespace holdband::store
