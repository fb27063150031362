-- Schema step 11: the logged readings of a sensor lie in blocks of time, where each was a row. The
-- program moves them before step 12.

-- `block`: instant >> 26, some 18.6 hours. `logged`: a JSON array of the values as they were logged,
-- in the unit of their import's column: the first one at `first_at`, each next one `step_ms` later.
-- Where `step_ms` is NULL, each is an array of two: the ms after `first_at`, and the value. No
-- foreign keys: `block_checksums` covers the readings, their import's record covers their number.
CREATE TABLE reading_blocks (
    sensor   INTEGER NOT NULL,
    block    INTEGER NOT NULL,
    import   INTEGER NOT NULL,
    first_at INTEGER NOT NULL,
    step_ms  INTEGER,
    logged   TEXT NOT NULL,
    PRIMARY KEY (sensor, block, import)
) STRICT, WITHOUT ROWID;

-- Those of an import that is taken back, or undone.
CREATE TABLE aside_blocks (
    sensor   INTEGER NOT NULL,
    block    INTEGER NOT NULL,
    import   INTEGER NOT NULL,
    first_at INTEGER NOT NULL,
    step_ms  INTEGER,
    logged   TEXT NOT NULL,
    PRIMARY KEY (import, sensor, block)
) STRICT, WITHOUT ROWID;
