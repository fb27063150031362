-- Schema step 13: logs whose every row is in the logbook, so that the same file, or a longer one
-- that begins with it, need not be read again.

-- `before`: the import with the rows above those that this import added; NULL: it added all of them.
-- `asked`: digest of everything that decides how the rows are read. `head`: digest of the first
-- 4 KiB. `bytes`, `lines`: of the whole file, whose digest is `imports.sha256`. No foreign keys: an
-- import that was undone may come back.
CREATE TABLE read_logs (
    import INTEGER PRIMARY KEY,
    before INTEGER,
    asked  TEXT NOT NULL,
    head   TEXT NOT NULL,
    bytes  INTEGER NOT NULL,
    lines  INTEGER NOT NULL
) STRICT;
