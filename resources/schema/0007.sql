-- Schema step 7: when a beer has arrived in its band, and when an excursion is over. Same units as in
-- step 1.

-- `dwell_ms`: the beer has arrived once it has stayed inside for this long. `return_ms`: an excursion
-- is over once the beer has been back inside for this long.
ALTER TABLE batches ADD COLUMN dwell_ms INTEGER NOT NULL DEFAULT 3600000;
ALTER TABLE batches ADD COLUMN return_ms INTEGER NOT NULL DEFAULT 900000;

-- How far the time of a register reading may be off. NULL: typed with a time of its own, so the
-- setting `time_doubt_min` counts; imported ones have none.
ALTER TABLE meter_readings ADD COLUMN time_doubt_ms INTEGER;

-- Batches from before are judged by these from now on. The window says once which verdicts that
-- changes, and then deletes this row. Its value is the id of the last batch from before.
INSERT INTO settings (key, value)
    SELECT 'judged_as_before_to', CAST(max(id) AS TEXT) FROM batches HAVING count(*) > 0;
