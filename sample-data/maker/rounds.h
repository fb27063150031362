// The twice-daily readings of the two meters, with what happens to people: minutes early or late, a
// missed round, digits swapped and corrected the next morning, a register that was reset to 0.
#pragma once

#include "sample-data/maker/scenario.h"
#include "sample-data/maker/trace.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::sample {

inline constexpr int loopMeterDecimals = 3;
inline constexpr int cabinetMeterDecimals = 2;

struct Correction {
    std::string kwhBefore;
    Instant until;
    std::string why;
};

struct MeterReading {
    std::string meter;
    Instant at;
    std::string kwh; ///< as the register showed it
    bool reset = false;
    std::string note;
    std::optional<Correction> was;
};

/// All readings of both meters, by time.
std::vector<MeterReading> meterReadings(const Scenario& scenario, const Trace& trace);

} // namespace holdband::sample
