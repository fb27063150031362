// The second header line of some logs: the units of the columns ("°C", "%", "kWh").
#pragma once

#include "core/intake/csv/sample.h"

#include <cstdint>
#include <optional>

namespace holdband {

/// If a row below a header has nothing but units, they are put into the header ("Beer" and "°C"
/// give "Beer (°C)") and the row is removed. Returns its line; 0: there is none. `headerLine`: the
/// line of the header, if it is known.
std::int64_t joinUnitsRow(SampleRows& rows, std::optional<std::int64_t> headerLine = {});

} // namespace holdband
