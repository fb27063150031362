// Takes a logbook back to the columns of an older format, to test the steps from it.
#pragma once

#include <string>

namespace holdband::test {

/// Made data, in the tables of format 1; the later steps bring it to the later formats.
inline const std::string contentsOfFormat1 = R"sql(
INSERT INTO settings VALUES ('zone', 'America/Denver'), ('units', 'us'), ('currency', 'USD');
INSERT INTO acts VALUES (1, 1772000000000, 'loaded garage.json');
INSERT INTO setups VALUES (1, 'Loop', 'coolant loop', 2, 600.0, 1);
INSERT INTO sensors VALUES (1, 'Beer', 'beer', 1, 0.2, 'in the beer', 1);
INSERT INTO offsets VALUES (1, 1772000000000, 0.3, 0.1);
INSERT INTO meters VALUES (1, 'Meter', 1, 0.01, NULL, NULL, NULL, NULL, 1);
INSERT INTO batches VALUES (1, 'Ale', 1, 20.0, 1772000000000, NULL, 1, NULL, 1.5, NULL, 0, 1.050,
                            NULL, 1);
INSERT INTO stages VALUES (1, 0, 'Primary', 'hold', 19.0, NULL, NULL, NULL);
INSERT INTO meter_readings VALUES (1, 1, 1772000000000, 5.0, 2, NULL, 'first', NULL, NULL, 1),
                                  (2, 1, 1772100000000, 6.5, 2, NULL, '', NULL, NULL, 1);
)sql";

/// The rows of readings that lie in blocks since step 12, without what step 13 added.
inline const std::string rowsFromBlocks = R"sql(
CREATE TABLE readings (
    place  INTEGER PRIMARY KEY,
    value  REAL NOT NULL,
    import INTEGER NOT NULL
) STRICT;
CREATE TABLE aside_readings (
    import INTEGER NOT NULL,
    place  INTEGER NOT NULL,
    value  REAL NOT NULL,
    PRIMARY KEY (import, place)
) STRICT, WITHOUT ROWID;
INSERT INTO readings (place, value, import)
SELECT (b.sensor << 44) + b.first_at +
       coalesce(b.step_ms * one.key, json_extract(one.value, '$[0]')),
       CASE WHEN b.step_ms IS NULL THEN json_extract(one.value, '$[1]') ELSE one.value END, b.import
FROM reading_blocks b, json_each(b.logged) one;
INSERT INTO aside_readings (import, place, value)
SELECT b.import,
       (b.sensor << 44) + b.first_at +
       coalesce(b.step_ms * one.key, json_extract(one.value, '$[0]')),
       CASE WHEN b.step_ms IS NULL THEN json_extract(one.value, '$[1]') ELSE one.value END
FROM aside_blocks b, json_each(b.logged) one;
DROP TABLE reading_blocks;
DROP TABLE aside_blocks;
DROP TABLE read_logs;
)sql";

/// What the steps from 7 on added; to be run before other changes, which views would hinder.
inline const std::string dropStepsFrom7 =
    "DROP VIEW v_energy; DROP VIEW v_batches; DROP VIEW v_meter_readings; DROP VIEW v_readings; " +
    rowsFromBlocks +
    "DROP TABLE zone_offsets; ALTER TABLE sensors DROP COLUMN interval_time; "
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
