-- Schema step 5: checksums over short stretches of an import, so that a part of a long log can be
-- verified without reading all of it. Existing imports get theirs from the program.

-- `block`: instant >> 26, some 18.6 hours. A record of the readings alone, whether their import is
-- in force or not: undo and withdrawal leave it as it is.
CREATE TABLE block_checksums (
    sensor   INTEGER NOT NULL,
    block    INTEGER NOT NULL,
    import   INTEGER NOT NULL,
    readings INTEGER NOT NULL,
    checksum INTEGER NOT NULL,
    PRIMARY KEY (sensor, block, import)
) STRICT, WITHOUT ROWID;
