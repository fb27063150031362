#include "sample-data/maker/equipment.h"

namespace holdband::sample {

const char* equipmentText()
{
    return R"json(  "holdband": 1,
  "zone": "America/Denver", "units": "us", "currency": "USD", "price_per_kwh": 0.15,
  "setups": [
    { "name": "Loop", "kind": "coolant loop", "vessels": 2, "rated_power_w": 260,
      "parts": [
        { "item": "compressor unit with evaporator coil", "quantity": 1, "price": 118 },
        { "item": "insulated coolant tank, 6 gal", "quantity": 1, "price": 42.5 },
        { "item": "submersible pump, 12 W", "quantity": 2, "price": 21.5 },
        { "item": "cooling coil for a vessel", "quantity": 2, "price": 36 },
        { "item": "insulating sleeve", "quantity": 2, "price": 18 },
        { "item": "heat belt, 24 W", "quantity": 2, "price": 17 },
        { "item": "two-stage controller", "quantity": 2, "price": 34 },
        { "item": "stirrer", "quantity": 1, "price": 14 },
        { "item": "propylene glycol, 1 gal", "quantity": 2, "price": 19 },
        { "item": "tubing and fittings", "quantity": 1, "price": 31.4 } ],
      "ratings": { "build effort": 2, "ease of use": 4, "cleaning": 2, "noise": 3, "space": 3 } },
    { "name": "Cabinet", "kind": "cabinet", "vessels": 1, "rated_power_w": 110,
      "parts": [
        { "item": "cooling unit of a small refrigerator, second-hand", "quantity": 1, "price": 60 },
        { "item": "foam board, 2 in, sheet", "quantity": 3, "price": 27.8 },
        { "item": "lumber, hinges and seal", "quantity": 1, "price": 48.9 },
        { "item": "fan, 3 W", "quantity": 1, "price": 9.5 },
        { "item": "heat belt, 25 W", "quantity": 1, "price": 17 },
        { "item": "two-stage controller", "quantity": 1, "price": 34 } ],
      "ratings": { "build effort": 3, "ease of use": 4, "cleaning": 4, "noise": 4, "space": 2 } } ],
  "sensors": [
    { "name": "Loop beer 1", "reads": "beer", "setup": "Loop", "accuracy_c": 0.5 },
    { "name": "Loop beer 2", "reads": "beer", "setup": "Loop", "accuracy_c": 0.5,
      "offsets": [ { "from": "2026-03-01 09:30", "add_c": 0.3, "doubt_c": 0.2 } ] },
    { "name": "Loop coolant", "reads": "coolant", "setup": "Loop", "accuracy_c": 0.5 },
    { "name": "Cabinet beer", "reads": "beer", "setup": "Cabinet", "accuracy_c": 0.2 },
    { "name": "Cabinet air", "reads": "chamber", "setup": "Cabinet", "accuracy_c": 0.2 },
    { "name": "Room", "reads": "ambient", "accuracy_c": 0.5 } ],
  "meters": [
    { "name": "Loop meter", "setup": "Loop", "resolution_kwh": 0.001, "accuracy_pct": 1,
      "rolls_over_at_kwh": 10000 },
    { "name": "Cabinet meter", "setup": "Cabinet", "resolution_kwh": 0.01, "accuracy_pct": 2,
      "rolls_over_at_kwh": 10000 } ])json";
}

const char* filesText()
{
    return R"json(  "files": [
    { "file": "loop.csv", "time": "Logged", "zone": "America/Denver",
      "columns": { "Loop beer 1": "Vessel 1 beer (F)", "Loop beer 2": "Vessel 2 beer (F)",
                   "Loop coolant": "Coolant (F)" } },
    { "file": "cabinet.csv", "time": "Date+Time", "zone": "America/Denver",
      "columns": { "Cabinet beer": "Beer (°C)", "Cabinet air": "Chamber air (°C)" } },
    { "file": "room.csv", "time": "time", "unit": "f", "columns": { "Room": "room F" } } ])json";
}

const char* exclusionsText()
{
    return R"json(  "exclusions": [
    { "sensor": "Cabinet beer", "from": "2026-03-01 10:00", "to": "2026-03-01 10:40",
      "why": "probe out of the thermowell while a sample was drawn" } ])json";
}

const char* journalText()
{
    return R"json(  "journal": [
    { "at": "2026-02-16 17:45", "batch": "Lager 1",
      "text": "Pitched at 57 °F, cabinet set to 52." },
    { "at": "2026-02-28 16:45", "batch": "Ale 1",
      "text": "Pump 1 found stopped, its plug half out. Pushed in; running again." },
    { "at": "2026-03-01 09:30",
      "text": "Probe of vessel 2 in an ice bath: reads 0.3 °C low. Offset entered." },
    { "at": "2026-03-01 10:05", "batch": "Lager 1",
      "text": "Drew a gravity sample, probe out for it: 1.010." },
    { "at": "2026-03-03 07:05",
      "text": "Last evening's loop reading had two digits swapped; put right." },
    { "at": "2026-03-08 09:00",
      "text": "Clocks went forward in the night." },
    { "at": "2026-03-20 08:30",
      "text": "Loop emptied and switched off." },
    { "at": "2026-03-28 19:15", "batch": "Lager 2",
      "text": "Lid of the cabinet found open since the afternoon. Closed." },
    { "at": "2026-04-25 15:25", "batch": "Ale 2",
      "text": "Loop logger had stopped overnight, its card full. New card in; the controller shows 66 °F." },
    { "at": "2026-04-28 07:10", "batch": "Ale 2",
      "text": "Power was off for about 40 minutes in the night. The loop meter starts again from 0." },
    { "at": "2026-05-22 18:00", "batch": "Ale 3",
      "text": "Turned down to 35 °F. Room at 90 °F." },
    { "at": "2026-05-24 08:20", "batch": "Ale 3",
      "text": "Compressor runs without a pause and the beer hangs well above 35 °F." },
    { "at": "2026-05-25 12:00", "batch": "Ale 3",
      "text": "Gave up on the crash and packaged it warm." },
    { "at": "2026-06-01 10:00",
      "text": "Both setups and the room's sensor moved into the garage." },
    { "at": "2026-06-16 17:50", "batch": "Ale 5",
      "text": "Lid of the cabinet found ajar after a sample. Closed." },
    { "at": "2026-07-21 18:00", "batch": "Ale 6",
      "text": "Turned down to 35 °F. Garage at 84 °F." },
    { "at": "2026-07-23 06:30", "batch": "Ale 6",
      "text": "Cold at last, after the second night. Yesterday it got warmer again until dark." },
    { "at": "2026-07-23 18:30", "batch": "Ale 6",
      "text": "Above its band again: garage at 88 °F, and the compressor runs without a pause." },
    { "at": "2026-08-05 18:30", "batch": "Ale 7",
      "text": "Turned down to 35 °F. Garage at 96 °F." },
    { "at": "2026-08-06 07:10", "batch": "Ale 7",
      "text": "Cold since half past one, the logger says." },
    { "at": "2026-09-10 08:30", "batch": "Ale 8",
      "text": "Cold by the morning: the nights are cool again." } ])json";
}

} // namespace holdband::sample
