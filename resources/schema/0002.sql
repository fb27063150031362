-- Schema step 2: everything that is entered can be changed, taken back and read up on.
-- Same units as in step 1. Columns that a record gained later have defaults that mean "as before".

-- kind: 'edit' (a person's), 'own' (the program's, such as rows of a watched file), 'undo', 'redo'.
-- `of`: the act that was undone or redone.
ALTER TABLE acts ADD COLUMN kind TEXT NOT NULL DEFAULT 'edit';
ALTER TABLE acts ADD COLUMN of INTEGER REFERENCES acts (id);
ALTER TABLE acts ADD COLUMN why TEXT NOT NULL DEFAULT '';
CREATE INDEX acts_at ON acts (at);
CREATE INDEX acts_of ON acts (of) WHERE of IS NOT NULL;

-- What an act changed, row by row, before and after, as SQLite's session extension writes it; the
-- readings of imports are not among it. `digest`: SHA-256 of `changes`.
CREATE TABLE act_changes (
    act     INTEGER PRIMARY KEY REFERENCES acts (id),
    changes BLOB NOT NULL,
    digest  TEXT NOT NULL
) STRICT;

CREATE TABLE round_windows (
    position    INTEGER PRIMARY KEY,
    label       TEXT NOT NULL,
    from_minute INTEGER NOT NULL,
    to_minute   INTEGER NOT NULL
) STRICT;

CREATE TABLE tariff_changes (
    from_at       INTEGER PRIMARY KEY,
    price_per_kwh REAL
) STRICT;

CREATE TABLE tariff_change_windows (
    from_at       INTEGER NOT NULL REFERENCES tariff_changes (from_at),
    position      INTEGER NOT NULL,
    days          INTEGER NOT NULL,
    from_minute   INTEGER NOT NULL,
    to_minute     INTEGER NOT NULL,
    price_per_kwh REAL NOT NULL,
    PRIMARY KEY (from_at, position)
) STRICT, WITHOUT ROWID;

ALTER TABLE setups ADD COLUMN retired_at INTEGER;
ALTER TABLE sensors ADD COLUMN retired_at INTEGER;
ALTER TABLE sensors ADD COLUMN by_hand INTEGER NOT NULL DEFAULT 0;
ALTER TABLE offsets ADD COLUMN why TEXT NOT NULL DEFAULT '';
ALTER TABLE meters ADD COLUMN retired_at INTEGER;

CREATE TABLE meter_moves (
    meter   INTEGER NOT NULL REFERENCES meters (id),
    from_at INTEGER NOT NULL,
    setup   INTEGER REFERENCES setups (id), -- absent: on the shelf
    PRIMARY KEY (meter, from_at)
) STRICT, WITHOUT ROWID;

ALTER TABLE batches ADD COLUMN vessel TEXT NOT NULL DEFAULT '';
ALTER TABLE batches ADD COLUMN split_from INTEGER REFERENCES batches (id);
ALTER TABLE stages ADD COLUMN ends_by TEXT NOT NULL DEFAULT 'hours';
ALTER TABLE stages ADD COLUMN until_gravity REAL;

CREATE TABLE plan_changes (
    id      INTEGER PRIMARY KEY,
    batch   INTEGER NOT NULL REFERENCES batches (id),
    from_at INTEGER NOT NULL,
    why     TEXT NOT NULL
) STRICT;

CREATE TABLE changed_stages (
    plan_change   INTEGER NOT NULL REFERENCES plan_changes (id),
    position      INTEGER NOT NULL,
    label         TEXT NOT NULL,
    kind          TEXT NOT NULL,
    target_c      REAL NOT NULL,
    hours         REAL,
    tolerance_k   REAL,
    settle_hours  REAL,
    ends_by       TEXT NOT NULL,
    until_gravity REAL,
    PRIMARY KEY (plan_change, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE stage_ends (
    batch INTEGER NOT NULL REFERENCES batches (id),
    at    INTEGER NOT NULL,
    PRIMARY KEY (batch, at)
) STRICT, WITHOUT ROWID;

CREATE TABLE beer_uses (
    batch   INTEGER NOT NULL REFERENCES batches (id),
    from_at INTEGER NOT NULL,
    sensor  INTEGER NOT NULL REFERENCES sensors (id),
    vessel  TEXT NOT NULL,
    PRIMARY KEY (batch, from_at)
) STRICT, WITHOUT ROWID;

CREATE TABLE plans (
    id          INTEGER PRIMARY KEY,
    name        TEXT NOT NULL UNIQUE,
    note        TEXT NOT NULL,
    tolerance_k REAL
) STRICT;

CREATE TABLE plan_stages (
    plan          INTEGER NOT NULL REFERENCES plans (id),
    position      INTEGER NOT NULL,
    label         TEXT NOT NULL,
    kind          TEXT NOT NULL,
    target_c      REAL NOT NULL,
    hours         REAL,
    tolerance_k   REAL,
    settle_hours  REAL,
    ends_by       TEXT NOT NULL,
    until_gravity REAL,
    PRIMARY KEY (plan, position)
) STRICT, WITHOUT ROWID;

-- Thermometers and hydrometers read by eye: of a sensor, or a gravity of a batch.
CREATE TABLE hand_readings (
    id        INTEGER PRIMARY KEY,
    sensor    INTEGER REFERENCES sensors (id),
    batch     INTEGER REFERENCES batches (id),
    at        INTEGER NOT NULL,
    value     REAL NOT NULL,
    unit      TEXT NOT NULL,
    decimals  INTEGER NOT NULL,
    sample_c  REAL,
    note      TEXT NOT NULL,
    set_aside INTEGER NOT NULL DEFAULT 0,
    act       INTEGER NOT NULL REFERENCES acts (id),
    CHECK ((sensor IS NULL) <> (batch IS NULL))
) STRICT;
CREATE UNIQUE INDEX hand_readings_sensor ON hand_readings (sensor, at)
    WHERE sensor IS NOT NULL AND set_aside = 0;
CREATE UNIQUE INDEX hand_readings_batch ON hand_readings (batch, at)
    WHERE batch IS NOT NULL AND set_aside = 0;

CREATE TABLE hand_corrections (
    id       INTEGER PRIMARY KEY,
    reading  INTEGER NOT NULL REFERENCES hand_readings (id),
    value    REAL NOT NULL,
    decimals INTEGER NOT NULL,
    at       INTEGER NOT NULL,
    why      TEXT NOT NULL,
    act      INTEGER NOT NULL REFERENCES acts (id)
) STRICT;

-- What a logged reading was changed to, when and why; the last one holds.
CREATE TABLE value_corrections (
    id           INTEGER PRIMARY KEY,
    sensor       INTEGER NOT NULL REFERENCES sensors (id),
    at           INTEGER NOT NULL,
    value        REAL NOT NULL,
    unit         TEXT NOT NULL,
    corrected_at INTEGER NOT NULL,
    why          TEXT NOT NULL,
    act          INTEGER NOT NULL REFERENCES acts (id)
) STRICT;
CREATE INDEX value_corrections_place ON value_corrections (sensor, at);

-- A meter reading that was taken back leaves its instant free for another one.
CREATE TABLE meter_readings_2 (
    id        INTEGER PRIMARY KEY,
    meter     INTEGER NOT NULL REFERENCES meters (id),
    at        INTEGER NOT NULL,
    kwh       REAL NOT NULL,
    decimals  INTEGER NOT NULL,
    event     TEXT,
    note      TEXT NOT NULL,
    import    INTEGER REFERENCES imports (id),
    line      INTEGER,
    set_aside INTEGER NOT NULL DEFAULT 0,
    act       INTEGER NOT NULL REFERENCES acts (id)
) STRICT;
INSERT INTO meter_readings_2
    SELECT id, meter, at, kwh, decimals, event, note, import, line, 0, act FROM meter_readings;
CREATE TABLE meter_corrections_2 (
    id       INTEGER PRIMARY KEY,
    reading  INTEGER NOT NULL REFERENCES meter_readings_2 (id),
    kwh      REAL NOT NULL,
    decimals INTEGER NOT NULL,
    at       INTEGER NOT NULL,
    why      TEXT NOT NULL,
    act      INTEGER NOT NULL REFERENCES acts (id)
) STRICT;
INSERT INTO meter_corrections_2
    SELECT id, reading, kwh, decimals, at, why, act FROM meter_corrections;
DROP TABLE meter_corrections;
DROP TABLE meter_readings;
ALTER TABLE meter_readings_2 RENAME TO meter_readings;
ALTER TABLE meter_corrections_2 RENAME TO meter_corrections;
CREATE UNIQUE INDEX meter_readings_place ON meter_readings (meter, at) WHERE set_aside = 0;
CREATE INDEX meter_corrections_reading ON meter_corrections (reading);

-- An import taken back keeps its record; its readings stand aside until it is put back. Those of an
-- import that was undone stand aside too, without a record.
ALTER TABLE imports ADD COLUMN taken_back_at INTEGER;
ALTER TABLE import_columns ADD COLUMN first_at INTEGER; -- of its readings
ALTER TABLE import_columns ADD COLUMN last_at INTEGER;
ALTER TABLE source_lines ADD COLUMN step INTEGER NOT NULL DEFAULT 1; -- lines from one to the next
CREATE TABLE aside_readings (
    import INTEGER NOT NULL,
    place  INTEGER NOT NULL,
    value  REAL NOT NULL,
    PRIMARY KEY (import, place)
) STRICT, WITHOUT ROWID;

-- How a file of a certain shape was read last time, and files to look at by itself.
CREATE TABLE log_maps (
    shape   TEXT PRIMARY KEY,
    spec    TEXT NOT NULL,
    used_at INTEGER NOT NULL
) STRICT;
CREATE TABLE watches (
    id    INTEGER PRIMARY KEY,
    path  TEXT NOT NULL UNIQUE,
    spec  TEXT NOT NULL,
    state TEXT NOT NULL
) STRICT;
