// Thermometers and hydrometers read by eye: as first typed, their corrections, and what holds now.
#pragma once

#include "core/model/readings.h"
#include "core/store/logbook_file.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::store {

/// Whose reading it is: a sensor's, or, of a gravity, a batch's.
struct HandOwner {
    enum class Kind { sensor, batch };
    Kind kind = Kind::sensor;
    std::string name;

    bool operator==(const HandOwner&) const = default;
};

struct ReplacedHandReading {
    double value = 0.0; ///< in the unit of the reading
    int decimals = 0;
    Instant until;
    std::string why;

    bool operator==(const ReplacedHandReading&) const = default;
};

struct StoredHandReading {
    HandReadingId id;
    HandReading inForce;
    std::vector<ReplacedHandReading> before; ///< oldest first
    bool leftOut = false;                    ///< taken out of the record
};

/// In order of time. Problem (data): unknown sensor or batch.
Result<std::vector<StoredHandReading>> readHandReadings(const LogbookFile& logbook,
                                                        const HandOwner& owner);

/// All of them, also those that were taken out of the record: in order of time, at one instant the
/// one that counts last. Problem (data): unknown sensor or batch.
Result<std::vector<StoredHandReading>> readHandRecord(const LogbookFile& logbook,
                                                      const HandOwner& owner);

/// Problem (data): unknown owner, or a reading stands at that instant already.
Result<HandReadingId> addHandReading(const Change& change, const HandOwner& owner,
                                     const HandReading& reading);

/// Puts another value in force, in the same unit; the old one stays on record.
Done correctHandReading(const Change& change, HandReadingId reading, double value, int decimals,
                        Instant at, const std::string& why);

Done setHandReadingNote(const Change& change, HandReadingId reading, const std::string& note);

/// Takes the reading out of the record; it stays in the file, with what was done in the history.
Done setHandReadingAside(const Change& change, HandReadingId reading);

} // namespace holdband::store
