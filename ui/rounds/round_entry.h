// What somebody typed into the Rounds page, taken apart: pure, without widgets.
#pragma once

#include "core/model/readings.h"
#include "core/problem.h"
#include "core/results/rounds/rounds_sheet.h"
#include "core/store/readings/hand_readings.h"

#include <QString>

namespace holdband::ui {

/// A register reading from the text of a field, written in the person's manner.
/// Problem (data): letters, a negative number, two ways to read it.
Result<MeterReading> parseReading(const QString& text, Instant at, const QString& note,
                                  char decimalSign);

/// A thermometer or a gravity, in the unit that is typed. Temperatures may be below 0.
Result<HandReading> parseHandReading(const QString& text, Instant at, const QString& note,
                                     char decimalSign, ReadingUnit unit);

/// The temperature of a gravity's sample, as typed; absent where nothing was.
/// Problem (data): no number, or colder or hotter than a sample can be.
Result<std::optional<Temperature>> parseSample(const QString& text, char decimalSign,
                                               TemperatureUnit unit);

/// "A hydrometer made for 20 °C, read at 82 °F: the gravity is 1.052.", or empty where the typed
/// gravity and temperature are no numbers, or the temperature lies outside 0 … 40 °C.
QString correctedGravityText(const QString& gravity, const QString& sample, char decimalSign,
                             TemperatureUnit unit);

/// "kWh", "°F", "gravity"
QString unitText(const results::RoundRow& row);

/// So far from the expected range that it is asked about once: beyond three times its distance
/// from the last reading; of a thermometer, its own width beyond it. Never where nothing is
/// expected.
bool farOutside(const results::RoundRow& row, double value);
/// What was typed with a unit of its own, in that of the row.
double valueInUnitOf(const results::RoundRow& row, const HandReading& reading);
/// Whose hand readings the row shows.
store::HandOwner ownerOf(const results::RoundRow& row);
/// "85.1 is far from the 64.2 – 66.2 expected. Press Enter again to save it."
QString askFarOutside(const QString& typed, const results::RoundRow& row);
/// "3.3 kWh … is rated 750 W. Press Enter again to save it."
QString askOnce(const std::string& unusual);

/// "58.27 – 58.35", or a dash.
QString expectedText(const results::RoundRow& row);
/// "58.140", or a dash.
QString lastText(const results::RoundRow& row);
/// "today 07:05", "yesterday 18:00", "30 Mar 18:00 · 55 days ago"
QString lastTimeText(const results::RoundRow& row, Instant now, const Zone& zone);

/// "Evening round · Sunday 5 April · now 18:12"
QString roundTitle(const results::RoundsSheet& sheet);

} // namespace holdband::ui
