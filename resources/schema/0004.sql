-- Schema step 4: what two arrangements are weighed by. Same units as in step 1.

-- How much a criterion counts, 0 … 5. One that is neither measured nor usual is the user's own.
CREATE TABLE weights (
    criterion TEXT PRIMARY KEY,
    weight    REAL NOT NULL
) STRICT, WITHOUT ROWID;

-- The case that they are asked for: 'reference_lift_k', 'reference_h', 'batches_per_year',
-- 'other_price_per_kwh', 'quiet_after_h'. One that is not there was not said.
CREATE TABLE weighing (
    key   TEXT PRIMARY KEY,
    value REAL NOT NULL
) STRICT, WITHOUT ROWID;
