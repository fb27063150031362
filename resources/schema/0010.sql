-- Schema step 10: a log of interval energy, and views for people who work with data.
-- Same units as in step 1. A later step that alters a table must drop all views first and make them
-- again: the program's own connection has views switched off.

-- Of a sensor that reads 'interval_energy': whether a reading's time is the start or the end of its
-- interval.
ALTER TABLE sensors ADD COLUMN interval_time TEXT NOT NULL DEFAULT 'start';

-- The offsets of the logbook's zone, so that a view can tell local times: from `from_at` on, local
-- time is UTC + `offset_ms`. The program adds the rows of a zone when the logbook has none of it.
CREATE TABLE zone_offsets (
    zone      TEXT NOT NULL,
    from_at   INTEGER NOT NULL,
    offset_ms INTEGER NOT NULL,
    PRIMARY KEY (zone, from_at)
) STRICT, WITHOUT ROWID;

-- The views below are made for reading only. Their names and columns stay from one version to the
-- next; the tables may change. The page "The file for data work" of the help explains them.

-- One row for each reading of a sensor, logged or by eye, and each gravity of a batch.
CREATE VIEW v_readings AS
WITH
own_zone AS (SELECT value AS zone FROM settings WHERE key = 'zone'),
every_reading AS (
    SELECT r.place >> 44 AS sensor, NULL AS batch, r.place & 17592186044415 AS at,
           r.value AS logged, c.unit AS unit,
           (SELECT v.value FROM value_corrections v
            WHERE v.sensor = r.place >> 44 AND v.at = r.place & 17592186044415
            ORDER BY v.id DESC LIMIT 1) AS corrected,
           (SELECT v.unit FROM value_corrections v
            WHERE v.sensor = r.place >> 44 AND v.at = r.place & 17592186044415
            ORDER BY v.id DESC LIMIT 1) AS corrected_unit,
           i.file AS file
    FROM readings r
    JOIN import_columns c ON c.import = r.import AND c.sensor = r.place >> 44
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

-- One row for each register reading of a meter.
CREATE VIEW v_meter_readings AS
WITH
own_zone AS (SELECT value AS zone FROM settings WHERE key = 'zone'),
in_force AS (
    SELECT r.*, (SELECT k.kwh FROM meter_corrections k WHERE k.reading = r.id
                 ORDER BY k.id DESC LIMIT 1) AS corrected,
           (SELECT count(*) FROM meter_moves v WHERE v.meter = r.meter AND v.from_at <= r.at)
               AS moves_before
    FROM meter_readings r
    WHERE r.set_aside = 0
)
SELECT f.id AS reading_id, m.id AS meter_id, m.name AS meter,
       CASE WHEN f.moves_before = 0
            THEN (SELECT u.name FROM setups u WHERE u.id = m.setup)
            ELSE (SELECT u.name FROM meter_moves v JOIN setups u ON u.id = v.setup
                  WHERE v.meter = m.id
                    AND v.from_at = (SELECT max(w.from_at) FROM meter_moves w
                                     WHERE w.meter = m.id AND w.from_at <= f.at))
       END AS setup,
       f.at AS at_ms,
       strftime('%Y-%m-%dT%H:%M:%fZ', f.at / 1000.0, 'unixepoch') AS at_utc,
       strftime('%Y-%m-%d %H:%M:%S',
                (f.at + (SELECT z.offset_ms FROM zone_offsets z
                         WHERE z.zone = (SELECT zone FROM own_zone) AND z.from_at <= f.at
                         ORDER BY z.from_at DESC LIMIT 1)) / 1000.0, 'unixepoch') AS at_local,
       coalesce(f.corrected, f.kwh) AS register_kwh,
       f.kwh AS typed_kwh,
       f.corrected IS NOT NULL AS is_corrected,
       f.event AS event,
       CASE WHEN f.time_doubt_ms IS NOT NULL THEN f.time_doubt_ms / 60000.0
            WHEN f.import IS NOT NULL THEN 0.0
            ELSE coalesce((SELECT CAST(value AS REAL) FROM settings
                           WHERE key = 'time_doubt_min'), 0.0) END AS time_doubt_min,
       f.note AS note,
       (SELECT i.file FROM imports i WHERE i.id = f.import) AS file
FROM in_force f
JOIN meters m ON m.id = f.meter;

-- One row for each batch, as planned and typed. What is judged of it is computed by the program.
CREATE VIEW v_batches AS
WITH own_zone AS (SELECT value AS zone FROM settings WHERE key = 'zone')
SELECT b.id AS batch_id, b.name AS batch, u.name AS setup, b.vessel AS vessel,
       b.volume_l AS volume_l,
       b.pitched AS pitched_ms,
       strftime('%Y-%m-%dT%H:%M:%fZ', b.pitched / 1000.0, 'unixepoch') AS pitched_utc,
       strftime('%Y-%m-%d %H:%M:%S',
                (b.pitched + (SELECT z.offset_ms FROM zone_offsets z
                              WHERE z.zone = (SELECT zone FROM own_zone)
                                AND z.from_at <= b.pitched
                              ORDER BY z.from_at DESC LIMIT 1)) / 1000.0, 'unixepoch')
           AS pitched_local,
       b.ended AS ended_ms,
       strftime('%Y-%m-%dT%H:%M:%fZ', b.ended / 1000.0, 'unixepoch') AS ended_utc,
       strftime('%Y-%m-%d %H:%M:%S',
                (b.ended + (SELECT z.offset_ms FROM zone_offsets z
                            WHERE z.zone = (SELECT zone FROM own_zone) AND z.from_at <= b.ended
                            ORDER BY z.from_at DESC LIMIT 1)) / 1000.0, 'unixepoch')
           AS ended_local,
       (SELECT s.name FROM sensors s WHERE s.id = b.beer_sensor) AS beer_sensor,
       (SELECT s.name FROM sensors s WHERE s.id = b.ambient_sensor) AS ambient_sensor,
       b.tolerance_k AS tolerance_k,
       b.gap_limit_ms / 60000.0 AS gap_limit_min,
       b.grace_ms / 60000.0 AS ignore_shorter_than_min,
       b.dwell_ms / 60000.0 AS dwell_min,
       b.return_ms / 60000.0 AS return_min,
       b.original_gravity AS original_gravity_sg,
       b.final_gravity AS final_gravity_sg
FROM batches b
JOIN setups u ON u.id = b.setup;

-- One row for each two successive readings of a meter: the energy between them. `kwh` is NULL where
-- the register fell and nothing says why.
CREATE VIEW v_energy AS
WITH pairs AS (
    SELECT meter_id, meter,
           lag(setup) OVER w AS setup,
           lag(at_ms) OVER w AS from_ms, at_ms AS to_ms,
           lag(at_utc) OVER w AS from_utc, at_utc AS to_utc,
           lag(at_local) OVER w AS from_local, at_local AS to_local,
           lag(register_kwh) OVER w AS before, register_kwh AS register, event
    FROM v_meter_readings
    WINDOW w AS (PARTITION BY meter_id ORDER BY at_ms)
),
used AS (
    SELECT p.*,
           CASE WHEN p.event = 'reset' THEN p.register
                WHEN p.event = 'rollover'
                    THEN p.register - p.before
                         + (SELECT m.rolls_over_at_kwh FROM meters m WHERE m.id = p.meter_id)
                WHEN p.register >= p.before THEN p.register - p.before END AS kwh
    FROM pairs p
    WHERE p.from_ms IS NOT NULL
)
SELECT meter_id, meter, setup, from_ms, to_ms, from_utc, to_utc, from_local, to_local,
       (to_ms - from_ms) / 3600000.0 AS hours,
       kwh,
       kwh * 1000 / ((to_ms - from_ms) / 3600000.0) AS mean_w,
       event
FROM used;
