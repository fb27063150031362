// The loggers: the sensors' readings every five minutes, in three CSV files of different formats.
#pragma once

#include "sample-data/maker/scenario.h"
#include "sample-data/maker/trace.h"

#include <string>

namespace holdband::sample {

/// Commas, "MM/DD/YYYY hh:mm AM" in Denver's time, °F to a tenth.
std::string loopLog(const Scenario& scenario, const Trace& trace);

/// A few lines before the header, semicolons, decimal commas, °C to a sixteenth, date and time in
/// separate columns (dd.mm.yyyy, Denver's time), CRLF.
std::string cabinetLog(const Scenario& scenario, const Trace& trace);

/// Tabs, RFC 3339 times in UTC, °F to a tenth.
std::string roomLog(const Scenario& scenario, const Trace& trace);

} // namespace holdband::sample
