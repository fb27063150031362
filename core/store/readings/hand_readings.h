// Thermometers and hydrometers read by eye: the first typed values, their corrections, and the
// values in force.
#pragma once

#include "core/model/readings.h"
#include "core/store/logbook_file.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::store {

/// The owner of a reading: a sensor, or, for a gravity, a batch.
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
    bool leftOut = false;                    ///< the reading was deleted
};

/// In order of time. Problem (data): unknown sensor or batch.
Result<std::vector<StoredHandReading>> readHandReadings(const LogbookFile& logbook,
                                                        const HandOwner& owner);
/// Of a sensor whose id is known.
Result<std::vector<StoredHandReading>> readHandReadings(const LogbookFile& logbook,
                                                        SensorId sensor);

/// All of them, including deleted ones: in order of time, at one instant the one that counts last.
/// Problem (data): unknown sensor or batch.
Result<std::vector<StoredHandReading>> readHandRecord(const LogbookFile& logbook,
                                                      const HandOwner& owner);

/// Problem (data): unknown owner, or there is already a reading at that instant.
Result<HandReadingId> addHandReading(const Change& change, const HandOwner& owner,
                                     const HandReading& reading);

/// Replaces the value in force, in the same unit; the old one remains on record.
Done correctHandReading(const Change& change, HandReadingId reading, double value, int decimals,
                        Instant at, const std::string& why);

Done setHandReadingNote(const Change& change, HandReadingId reading, const std::string& note);

/// Deletes the reading from the record; it remains in the file, and the deletion is in the history.
Done deleteHandReading(const Change& change, HandReadingId reading);

} // namespace holdband::store
