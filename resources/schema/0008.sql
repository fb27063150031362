-- Schema step 8: what a batch was forecast to use when it was pitched. Same units as in step 1.

-- `forecast_at`: when the forecast was made; NULL: the batch was pitched without one, and so are the
-- others. Energies are kWh, in nine of ten such batches between low and high. The hours of the crash
-- (from turning down to the band) may be unknown. `forecast_room_c` is the room's mean, °C.
ALTER TABLE batches ADD COLUMN forecast_at INTEGER;
ALTER TABLE batches ADD COLUMN forecast_kwh REAL;
ALTER TABLE batches ADD COLUMN forecast_low_kwh REAL;
ALTER TABLE batches ADD COLUMN forecast_high_kwh REAL;
ALTER TABLE batches ADD COLUMN forecast_crash_h REAL;
ALTER TABLE batches ADD COLUMN forecast_crash_low_h REAL;
ALTER TABLE batches ADD COLUMN forecast_crash_high_h REAL;
ALTER TABLE batches ADD COLUMN forecast_room_c REAL;
