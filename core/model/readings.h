// Plain values for what was measured. No Qt.
#pragma once

#include "core/quantity/energy.h"
#include "core/quantity/instant.h"
#include "core/quantity/temperature.h"

#include <optional>
#include <string>

namespace holdband {

/// The unit of a number in a log. The store has the original number with its unit.
enum class ReadingUnit {
    celsius,
    fahrenheit,
    watt,
    kilowatt,
    wattHour,
    kilowattHour,
    specificGravity,
    degreePlato,
};

/// Why a register reads less than before.
enum class MeterEvent {
    rollover, ///< passed its highest value and restarted at 0
    reset,    ///< lost its count and restarted at 0
};

/// More decimals than any register shows; further ones, which a spreadsheet may add, are dropped.
inline constexpr int mostDecimals = 12;
/// A register reading this high is a typing error.
inline constexpr Energy mostOfARegister = Energy::kilowattHours(1e9);

/// The most that a reading's time may be off.
inline constexpr Milliseconds mostTimeDoubt = std::chrono::hours{12};

struct MeterReading {
    Instant at;
    Energy registerReading;
    int decimals = 0; ///< as typed: 5.00 has two
    std::optional<MeterEvent> event;
    std::string note;
    /// It was truly read within `at` ± this. Absent: typed with a time of its own, so the logbook's
    /// setting counts. Imported and saved as "now": 0.
    std::optional<Milliseconds> timeDoubt = {};

    bool operator==(const MeterReading&) const = default;
};

/// A thermometer or hydrometer read by eye, as it was typed.
struct HandReading {
    Instant at;
    double value = 0.0; ///< in `unit`
    ReadingUnit unit = ReadingUnit::celsius;
    int decimals = 0;
    std::optional<Temperature> sample; ///< of a gravity: the sample's temperature
    std::string note;

    bool operator==(const HandReading&) const = default;
};

/// A remark with its time, of one batch or of the logbook.
struct JournalNote {
    Instant at;
    std::optional<std::string> batch;
    std::string text;

    bool operator==(const JournalNote&) const = default;
};

} // namespace holdband
