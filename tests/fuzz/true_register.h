// What a meter's register truly did, made from a fuzz input: the readings with the energy used
// before each, known without the program's own sums.
#pragma once

#include "core/editing/register_check.h"
#include "tests/fuzz/fuzz_one.h"

#include <optional>
#include <vector>

namespace holdband::fuzz {

struct TrueReading {
    MeterReading reading;               ///< without an event
    std::optional<MeterEvent> happened; ///< since the reading before
    double used = 0.0;                  ///< kWh since the reading before; of a reset: counted since
};

struct TrueRegister {
    Meter meter;
    /// It was reset and has a top: then a reset can look like a rollover, and must be said.
    bool mixed = false;
    std::vector<TrueReading> readings; ///< in order of time

    double total() const
    {
        double kwh = 0.0;
        for (const TrueReading& each : readings)
            kwh += each.used;
        return kwh;
    }
    double kwhAt(std::size_t i) const
    {
        return readings[i].reading.registerReading.kilowattHours();
    }
};

inline constexpr double topOfRegister = 10'000.0; // kWh

/// 2 to 11 readings in whole kWh, so that sums are exact. A reset ends below the reading before it:
/// one that is not seen in the readings can't be known.
inline TrueRegister trueRegisterFrom(Bytes& bytes)
{
    TrueRegister truth;
    truth.meter.name = "Meter";
    const std::uint8_t kind = bytes.byte() % 4;
    truth.mixed = kind == 1;
    if (kind != 0)
        truth.meter.rollsOverAt = Energy::kilowattHours(topOfRegister);
    const auto count = 2 + bytes.below(10);
    auto kwh = static_cast<double>(bytes.below(10'000));
    for (std::size_t i = 0; i < count; ++i) {
        TrueReading next;
        const std::uint8_t what = bytes.byte() % 8;
        const std::uint16_t amount = bytes.word();
        const auto lower =
            kwh > 0.0 ? static_cast<double>(amount % static_cast<unsigned>(kwh)) : 0.0;
        if (i > 0 && what == 0 && kwh > 0.0 && kind <= 1) {
            next.happened = MeterEvent::reset;
            next.used = lower;
            kwh = lower;
        } else if (i > 0 && what <= 2 && kwh > 0.0 && truth.meter.rollsOverAt) {
            next.happened = MeterEvent::rollover;
            next.used = topOfRegister - kwh + lower;
            kwh = lower;
        } else if (i > 0) {
            const double room = topOfRegister - 1.0 - kwh;
            next.used =
                room > 0.0 ? static_cast<double>(amount % static_cast<unsigned>(room + 1.0)) : 0.0;
            kwh += next.used;
        }
        next.reading.at = instantFromMs(1'772'000'000'000) + std::chrono::hours{2 * i};
        next.reading.registerReading = Energy::kilowattHours(kwh);
        truth.readings.push_back(next);
    }
    return truth;
}

} // namespace holdband::fuzz
