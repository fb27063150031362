-- Schema step 12: no rows of readings any more, and the view of them reads the blocks.

-- Stops the step where a reading was not moved into its block.
INSERT INTO reading_blocks (sensor, block, import, first_at, logged)
SELECT place, place, import, NULL, '' FROM readings LIMIT 1;
INSERT INTO aside_blocks (sensor, block, import, first_at, logged)
SELECT place, place, import, NULL, '' FROM aside_readings LIMIT 1;

DROP VIEW v_readings;
DROP TABLE readings;
DROP TABLE aside_readings;

-- One row for each reading of a sensor, logged or by eye, and each gravity of a batch.
CREATE VIEW v_readings AS
WITH
own_zone AS (SELECT value AS zone FROM settings WHERE key = 'zone'),
logged_readings AS (
    SELECT b.sensor, b.import, b.first_at + b.step_ms * one.key AS at,
           CAST(one.value AS REAL) AS logged
    FROM reading_blocks b, json_each(b.logged) one
    WHERE b.step_ms IS NOT NULL
    UNION ALL
    SELECT b.sensor, b.import, b.first_at + json_extract(one.value, '$[0]'),
           CAST(json_extract(one.value, '$[1]') AS REAL)
    FROM reading_blocks b, json_each(b.logged) one
    WHERE b.step_ms IS NULL
),
every_reading AS (
    SELECT r.sensor AS sensor, NULL AS batch, r.at AS at, r.logged AS logged, c.unit AS unit,
           (SELECT v.value FROM value_corrections v
            WHERE v.sensor = r.sensor AND v.at = r.at ORDER BY v.id DESC LIMIT 1) AS corrected,
           (SELECT v.unit FROM value_corrections v
            WHERE v.sensor = r.sensor AND v.at = r.at ORDER BY v.id DESC LIMIT 1)
               AS corrected_unit,
           i.file AS file
    FROM logged_readings r
    JOIN import_columns c ON c.import = r.import AND c.sensor = r.sensor
    JOIN imports i ON i.id = r.import
    UNION ALL
    SELECT h.sensor, h.batch, h.at, h.value, h.unit,
           (SELECT k.value FROM hand_corrections k WHERE k.reading = h.id
            ORDER BY k.id DESC LIMIT 1),
           h.unit, NULL
    FROM hand_readings h
    WHERE h.set_aside = 0
),
in_force AS (
    SELECT e.*, coalesce(e.corrected, e.logged) AS value,
           CASE WHEN e.corrected IS NULL THEN e.unit ELSE e.corrected_unit END AS value_unit,
           coalesce((SELECT o.add_k FROM offsets o
                     WHERE o.sensor = e.sensor AND o.from_at <= e.at
                     ORDER BY o.from_at DESC LIMIT 1), 0) AS add_k
    FROM every_reading e
)
SELECT f.sensor AS sensor_id, s.name AS sensor, s.reads AS reads, u.name AS setup,
       b.name AS batch,
       f.at AS at_ms,
       strftime('%Y-%m-%dT%H:%M:%fZ', f.at / 1000.0, 'unixepoch') AS at_utc,
       strftime('%Y-%m-%d %H:%M:%S',
                (f.at + (SELECT z.offset_ms FROM zone_offsets z
                         WHERE z.zone = (SELECT zone FROM own_zone) AND z.from_at <= f.at
                         ORDER BY z.from_at DESC LIMIT 1)) / 1000.0, 'unixepoch') AS at_local,
       CASE f.value_unit WHEN 'C' THEN f.value + f.add_k
                         WHEN 'F' THEN (f.value - 32) / 1.8 + f.add_k END AS temperature_c,
       CASE f.value_unit WHEN 'F' THEN f.value + f.add_k * 1.8
                         WHEN 'C' THEN (f.value + f.add_k) * 1.8 + 32 END AS temperature_f,
       CASE f.value_unit WHEN 'W' THEN f.value WHEN 'kW' THEN f.value * 1000 END AS power_w,
       CASE f.value_unit WHEN 'kWh' THEN f.value WHEN 'Wh' THEN f.value / 1000 END AS interval_kwh,
       CASE f.value_unit WHEN 'SG' THEN f.value END AS gravity_sg,
       CASE f.value_unit WHEN '°P' THEN f.value END AS gravity_plato,
       f.logged AS logged_value, f.unit AS logged_unit,
       f.corrected IS NOT NULL AS is_corrected,
       EXISTS (SELECT 1 FROM exclusions x
               WHERE x.sensor = f.sensor AND f.at BETWEEN x.from_at AND x.to_at) AS is_left_out,
       f.file AS file
FROM in_force f
LEFT JOIN sensors s ON s.id = f.sensor
LEFT JOIN batches b ON b.id = f.batch
LEFT JOIN setups u ON u.id = coalesce(s.setup, b.setup);
