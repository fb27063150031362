// Register readings in the store: as first typed, their corrections, and what holds now.
#pragma once

#include "core/model/readings.h"
#include "core/store/logbook_file.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::store {

/// What stood there until it was corrected.
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
    std::vector<Replaced> before; ///< oldest first; mostly empty
};

/// Where a reading came from, if not typed.
struct ReadingSource {
    ImportId import;
    std::int64_t line = 0;
};

/// A reading with all that a copy of the logbook has to carry.
struct RecordedRegister : StoredReading {
    std::optional<ReadingSource> source;
    bool withdrawn = false;                  ///< together with its import
    std::optional<HistoryEntryId> leftOutBy; ///< it was taken out of the record by itself
};

/// All of the meter's, also those that do not count: in order of time, at one instant the one that
/// counts last. Problem (data): unknown meter.
Result<std::vector<RecordedRegister>> readRegisterRecord(const LogbookFile& logbook,
                                                         const std::string& meter);

/// The meter's readings in order of time. Problem (data): unknown meter.
Result<std::vector<StoredReading>> readMeterReadings(const LogbookFile& logbook,
                                                     const std::string& meter);

/// Adds a reading without judging it. Problem (data): unknown meter, or a reading stands at that
/// instant already.
Result<MeterReadingId> addMeterReading(const Change& change, const std::string& meter,
                                       const MeterReading& reading,
                                       const std::optional<ReadingSource>& source = {});

/// Puts another value in force; the old one stays on record.
Done correctMeterReading(const Change& change, MeterReadingId reading, double kwh, int decimals,
                         Instant at, const std::string& why);

Done setMeterReadingNote(const Change& change, MeterReadingId reading, const std::string& note);

/// Takes the reading out of the record; it stays in the file, with the entry and its reason: this
/// one, or `by`, which brought it about elsewhere.
Done setMeterReadingAside(const Change& change, MeterReadingId reading,
                          std::optional<HistoryEntryId> by = {});

/// Brings it back into the record without judging it. Problem (data): another one stands at its
/// instant by now.
Done bringMeterReadingBack(const Change& change, MeterReadingId reading);

/// Says that the register rolled over or was reset before this reading, or that it did not.
Done setMeterReadingEvent(const Change& change, MeterReadingId reading,
                          const std::optional<MeterEvent>& event);

/// A reading as it is looked at: also one that was taken out of the record by itself.
struct ListedRegister : StoredReading {
    std::string file; ///< that brought it; empty where it was typed
    std::int64_t line = 0;
    bool leftOut = false;
    std::string why; ///< it was left out
};
struct RegisterList {
    std::vector<ListedRegister> readings; ///< in order of time
    bool more = false;                    ///< the span holds further ones after these
};

/// The readings inside the span (ends included), `most` at most, without those that were taken
/// back with their import. Problem (data): unknown meter.
Result<RegisterList> listRegister(const LogbookFile& logbook, const std::string& meter, Span span,
                                  std::size_t most);

} // namespace holdband::store
