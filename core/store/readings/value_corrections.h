// Corrections of single logged readings: the logged value remains, the correction is in force.
#pragma once

#include "core/model/readings.h"
#include "core/store/logbook_file.h"

#include <string>
#include <vector>

namespace holdband::store {

struct ValueCorrection {
    std::string sensor;
    Instant at; ///< of the reading
    double value = 0.0;
    ReadingUnit unit = ReadingUnit::celsius;
    Instant corrected;
    std::string why;

    bool operator==(const ValueCorrection&) const = default;
};

/// All of them, in order of creation: the last one for a reading is in force.
Result<std::vector<ValueCorrection>> readValueCorrections(const LogbookFile& logbook);
/// Those of one sensor, given its id.
Result<std::vector<ValueCorrection>> readValueCorrections(const LogbookFile& logbook, SensorId id);
/// Problem (data): unknown sensor.
Done addValueCorrection(const Change& change, const ValueCorrection& correction);

} // namespace holdband::store
