// The loggers: what the sensors said every five minutes, in three differently shaped CSV files.
#pragma once

#include "sample-data/maker/scenario.h"
#include "sample-data/maker/trace.h"

#include <string>

namespace holdband::sample {

/// Commas, "MM/DD/YYYY hh:mm AM" in Denver's time, °F to a tenth.
std::string loopLog(const Scenario& scenario, const Trace& trace);

/// A few lines before the header, semicolons, decimal commas, °C to a sixteenth, date and time in
/// columns of their own (dd.mm.yyyy, Denver's time), CRLF.
std::string cabinetLog(const Scenario& scenario, const Trace& trace);

/// Tabs, RFC 3339 times in UTC, °F to a tenth.
std::string roomLog(const Scenario& scenario, const Trace& trace);

} // namespace holdband::sample
