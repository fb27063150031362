-- Schema step 1. Times are milliseconds since 1970 UTC; temperatures °C, differences K, energy kWh.
-- What was measured stays as it was; corrections, offsets and exclusions are rows of their own.

CREATE TABLE settings (
    key   TEXT PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- Every change of the logbook: when, and what in words. Rows below say which act brought them.
CREATE TABLE acts (
    id   INTEGER PRIMARY KEY,
    at   INTEGER NOT NULL,
    what TEXT NOT NULL
) STRICT;

CREATE TABLE tariff_windows (
    position      INTEGER PRIMARY KEY,
    days          INTEGER NOT NULL,     -- bit 0 is Monday
    from_minute   INTEGER NOT NULL,
    to_minute     INTEGER NOT NULL,
    price_per_kwh REAL NOT NULL
) STRICT;

CREATE TABLE setups (
    id            INTEGER PRIMARY KEY,
    name          TEXT NOT NULL UNIQUE,
    kind          TEXT NOT NULL,
    vessels       INTEGER NOT NULL,
    rated_power_w REAL,
    act           INTEGER NOT NULL REFERENCES acts (id)
) STRICT;

CREATE TABLE parts (
    setup    INTEGER NOT NULL REFERENCES setups (id),
    position INTEGER NOT NULL,
    item     TEXT NOT NULL,
    quantity REAL NOT NULL,
    price    REAL NOT NULL,
    PRIMARY KEY (setup, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE ratings (
    setup     INTEGER NOT NULL REFERENCES setups (id),
    criterion TEXT NOT NULL,
    rating    REAL NOT NULL,
    PRIMARY KEY (setup, criterion)
) STRICT, WITHOUT ROWID;

CREATE TABLE sensors (
    id         INTEGER PRIMARY KEY,
    name       TEXT NOT NULL UNIQUE,
    reads      TEXT NOT NULL,
    setup      INTEGER REFERENCES setups (id),
    accuracy_k REAL,
    placement  TEXT NOT NULL,
    act        INTEGER NOT NULL REFERENCES acts (id)
) STRICT;

CREATE TABLE offsets (
    sensor  INTEGER NOT NULL REFERENCES sensors (id),
    from_at INTEGER NOT NULL,
    add_k   REAL NOT NULL,
    doubt_k REAL,
    PRIMARY KEY (sensor, from_at)
) STRICT, WITHOUT ROWID;

CREATE TABLE exclusions (
    id      INTEGER PRIMARY KEY,
    sensor  INTEGER NOT NULL REFERENCES sensors (id),
    from_at INTEGER NOT NULL,
    to_at   INTEGER NOT NULL,
    why     TEXT NOT NULL,
    act     INTEGER NOT NULL REFERENCES acts (id)
) STRICT;

CREATE TABLE meters (
    id                INTEGER PRIMARY KEY,
    name              TEXT NOT NULL UNIQUE,
    setup             INTEGER NOT NULL REFERENCES setups (id),
    resolution_kwh    REAL,
    rolls_over_at_kwh REAL,
    accuracy          REAL,             -- a fraction of what it reads
    from_at           INTEGER,
    to_at             INTEGER,
    act               INTEGER NOT NULL REFERENCES acts (id)
) STRICT;

CREATE TABLE batches (
    id               INTEGER PRIMARY KEY,
    name             TEXT NOT NULL UNIQUE,
    setup            INTEGER NOT NULL REFERENCES setups (id),
    volume_l         REAL,
    pitched          INTEGER NOT NULL,
    ended            INTEGER,
    beer_sensor      INTEGER NOT NULL REFERENCES sensors (id),
    ambient_sensor   INTEGER REFERENCES sensors (id),
    tolerance_k      REAL,
    gap_limit_ms     INTEGER,
    grace_ms         INTEGER NOT NULL,
    original_gravity REAL,
    final_gravity    REAL,
    act              INTEGER NOT NULL REFERENCES acts (id)
) STRICT;

CREATE TABLE stages (
    batch        INTEGER NOT NULL REFERENCES batches (id),
    position     INTEGER NOT NULL,
    label        TEXT NOT NULL,
    kind         TEXT NOT NULL,
    target_c     REAL NOT NULL,
    hours        REAL,
    tolerance_k  REAL,
    settle_hours REAL,
    PRIMARY KEY (batch, position)
) STRICT, WITHOUT ROWID;

-- One file read in. `sha256` is of the file's bytes.
CREATE TABLE imports (
    id        INTEGER PRIMARY KEY,
    file      TEXT NOT NULL,
    sha256    TEXT NOT NULL,
    rows_read INTEGER NOT NULL,
    act       INTEGER NOT NULL REFERENCES acts (id)
) STRICT;

-- What an import added to one sensor: how many readings in which unit, and a checksum over them.
CREATE TABLE import_columns (
    import   INTEGER NOT NULL REFERENCES imports (id),
    sensor   INTEGER NOT NULL REFERENCES sensors (id),
    header   TEXT NOT NULL,
    unit     TEXT NOT NULL,
    readings INTEGER NOT NULL,
    checksum INTEGER NOT NULL,
    PRIMARY KEY (import, sensor)
) STRICT, WITHOUT ROWID;

-- Where readings stand in their file: from first_at on, readings of this import and sensor came
-- from successive lines, the first of them first_line.
CREATE TABLE source_lines (
    import     INTEGER NOT NULL REFERENCES imports (id),
    sensor     INTEGER NOT NULL REFERENCES sensors (id),
    first_at   INTEGER NOT NULL,
    first_line INTEGER NOT NULL,
    PRIMARY KEY (import, sensor, first_at)
) STRICT, WITHOUT ROWID;

-- Raw values as they were logged, in the unit of their import's column. The key is
-- sensor × 2^44 + instant, so that a sensor's readings lie together in order of time and a reading
-- takes 23 bytes. No foreign keys here: a million rows go in at once, and the import's checksum
-- covers them.
CREATE TABLE readings (
    place  INTEGER PRIMARY KEY,
    value  REAL NOT NULL,
    import INTEGER NOT NULL
) STRICT;

CREATE TABLE meter_readings (
    id       INTEGER PRIMARY KEY,
    meter    INTEGER NOT NULL REFERENCES meters (id),
    at       INTEGER NOT NULL,
    kwh      REAL NOT NULL,
    decimals INTEGER NOT NULL,
    event    TEXT,
    note     TEXT NOT NULL,
    import   INTEGER REFERENCES imports (id),
    line     INTEGER,
    act      INTEGER NOT NULL REFERENCES acts (id),
    UNIQUE (meter, at)
) STRICT;

-- What a reading was changed to, when and why; the last one holds. The first typing stays above.
CREATE TABLE meter_corrections (
    id       INTEGER PRIMARY KEY,
    reading  INTEGER NOT NULL REFERENCES meter_readings (id),
    kwh      REAL NOT NULL,
    decimals INTEGER NOT NULL,
    at       INTEGER NOT NULL,
    why      TEXT NOT NULL,
    act      INTEGER NOT NULL REFERENCES acts (id)
) STRICT;

CREATE TABLE journal (
    id    INTEGER PRIMARY KEY,
    at    INTEGER NOT NULL,
    batch INTEGER REFERENCES batches (id),
    text  TEXT NOT NULL,
    act   INTEGER NOT NULL REFERENCES acts (id)
) STRICT;

-- A digest over all small tables, renewed by every save, so that `check` sees a changed bit.
CREATE TABLE seal (
    id     INTEGER PRIMARY KEY CHECK (id = 1),
    digest TEXT NOT NULL
) STRICT;
