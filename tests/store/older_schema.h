// Takes a logbook back to the columns of an older format, to test the steps from it.
#pragma once

#include <string>

namespace holdband::test {

/// What steps 7 and 8 added.
inline const std::string dropStepsFrom7 =
    "ALTER TABLE meter_readings DROP COLUMN time_doubt_ms; "
    "ALTER TABLE batches DROP COLUMN dwell_ms; ALTER TABLE batches DROP COLUMN return_ms; "
    "ALTER TABLE batches DROP COLUMN forecast_at; ALTER TABLE batches DROP COLUMN forecast_kwh; "
    "ALTER TABLE batches DROP COLUMN forecast_low_kwh; "
    "ALTER TABLE batches DROP COLUMN forecast_high_kwh; "
    "ALTER TABLE batches DROP COLUMN forecast_crash_h; "
    "ALTER TABLE batches DROP COLUMN forecast_crash_low_h; "
    "ALTER TABLE batches DROP COLUMN forecast_crash_high_h; "
    "ALTER TABLE batches DROP COLUMN forecast_room_c; ";

} // namespace holdband::test
