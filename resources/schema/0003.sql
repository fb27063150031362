-- Schema step 3: what a person says an excursion came from. Same units as in step 1.

-- The excursion is known by when it was (`from_at` … `to_at`) and its side, 'above' or 'below', as it
-- stood when the cause was given: it belongs to whatever excursion of that side overlaps it now.
-- `cause`: absent where there is only a note.
CREATE TABLE causes (
    id      INTEGER PRIMARY KEY,
    batch   INTEGER NOT NULL REFERENCES batches (id),
    from_at INTEGER NOT NULL,
    to_at   INTEGER NOT NULL,
    side    TEXT NOT NULL,
    cause   TEXT,
    note    TEXT NOT NULL,
    act     INTEGER NOT NULL REFERENCES acts (id)
) STRICT;
CREATE INDEX causes_batch ON causes (batch, from_at);
