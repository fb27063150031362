// The readings dialog's data for one sensor or one meter, read at once. Pure, without widgets.
#pragma once

#include "core/store/readings/meter_readings.h"
#include "core/store/readings/reading_list.h"
#include "core/store/records/exclusions.h"
#include "core/text/zone.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::ui {

/// The sensor or meter of the readings.
struct ReadingSubject {
    bool meter = false; ///< else a sensor
    std::string name;

    bool operator==(const ReadingSubject&) const = default;
};

/// A register reading and the energy since the one before.
struct RegisterRow {
    store::ListedRegister reading;
    std::optional<double> usedKwh; ///< absent if it is not known
    int decimals = 0;              ///< significant decimals of `usedKwh`
    std::string usedWhy;           ///< how it was computed, or why it wasn't; usually empty
};

struct ReadingsView {
    std::vector<ReadingSubject> subjects; ///< sensors first
    ReadingSubject subject;
    Zone zone;
    TemperatureUnit unit = TemperatureUnit::celsius; ///< the logbook's
    Span span;
    std::vector<store::ListedReading> readings; ///< of a sensor
    std::vector<store::Exclusion> exclusions;   ///< of the sensor, that touch the span
    std::vector<RegisterRow> registers;         ///< of a meter
    bool more = false;                          ///< the span contains further ones

    std::size_t size() const { return subject.meter ? registers.size() : readings.size(); }
    Instant at(std::size_t row) const
    {
        return subject.meter ? registers[row].reading.inForce.at : readings[row].at;
    }
};

/// `wanted` unknown: the first subject. `span` absent: the stretch up to its last reading, one day
/// for a sensor, two weeks for a meter.
Result<ReadingsView> readReadingsView(const store::LogbookFile& file, const ReadingSubject& wanted,
                                      const std::optional<Span>& span);

} // namespace holdband::ui
