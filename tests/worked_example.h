// The worked example of the method as a description and a log.
#pragma once

#include <string>

namespace holdband::test {

/// The worked example of the method as a description; its log is workedLog().
inline std::string workedDescription()
{
    return R"json({
  "holdband": 1, "zone": "UTC", "units": "metric",
  "setups": [ { "name": "Loop" } ],
  "sensors": [ { "name": "Beer", "reads": "beer", "setup": "Loop" } ],
  "meters": [ { "name": "Meter", "setup": "Loop", "resolution_kwh": 0.01 } ],
  "batches": [ { "name": "Worked", "setup": "Loop", "pitched": "2026-03-07 00:00",
                 "ended": "2026-03-07 10:00", "beer_sensor": "Beer", "tolerance_c": 1,
                 "gap_limit_min": 90,
                 "schedule": [ { "stage": "Hold", "target_c": 20 } ] } ],
  "files": [ { "file": "worked.csv", "columns": { "Beer": "Beer (C)" } } ],
  "meter_readings": [ { "meter": "Meter", "at": "2026-03-07 00:00", "kwh": 5.00 },
                      { "meter": "Meter", "at": "2026-03-07 08:00", "kwh": 5.80 },
                      { "meter": "Meter", "at": "2026-03-07 20:00", "kwh": 6.40 } ] })json";
}

inline std::string workedLog()
{
    return "Time,Beer (C)\n"
           "2026-03-07 00:00,20.0\n2026-03-07 01:00,20.5\n2026-03-07 02:00,21.5\n"
           "2026-03-07 03:00,22.0\n2026-03-07 04:00,20.0\n2026-03-07 05:00,19.5\n"
           "2026-03-07 06:00,18.5\n2026-03-07 07:00,19.5\n2026-03-07 09:00,20.0\n"
           "2026-03-07 10:00,20.0\n";
}

} // namespace holdband::test
