// Parses what the user typed on the Rounds page: pure, without widgets.
#pragma once

#include "core/model/readings.h"
#include "core/problem.h"
#include "core/results/rounds/rounds_sheet.h"
#include "core/store/readings/hand_readings.h"

#include <QString>

namespace holdband::ui {

/// A register reading from the text of a field, in the user's number format. Problem (data):
/// letters, a negative number, an ambiguous number.
Result<MeterReading> parseReading(const QString& text, Instant at, const QString& note,
                                  char decimalSign);

/// A temperature or a gravity, in the typed unit. Temperatures may be below 0.
Result<HandReading> parseHandReading(const QString& text, Instant at, const QString& note,
                                     char decimalSign, ReadingUnit unit);

/// The typed temperature of a gravity's sample; absent if nothing was typed. Problem (data): no
/// number, or an impossible temperature for a sample.
Result<std::optional<Temperature>> parseSample(const QString& text, char decimalSign,
                                               TemperatureUnit unit);

/// "A hydrometer made for 20 °C, read at 82 °F: the gravity is 1.052.", or empty if the typed
/// gravity or temperature is no number, or the temperature is outside 0 … 40 °C.
QString correctedGravityText(const QString& gravity, const QString& sample, char decimalSign,
                             TemperatureUnit unit);

/// "kWh", "°F", "gravity"
QString unitText(const results::RoundRow& row);

/// Whether the value is so far from the expected range that the user is asked once: for a register,
/// beyond three times the range's distance from the last reading; for a thermometer, further
/// outside than the range is wide. Never if nothing is expected.
bool farOutside(const results::RoundRow& row, double value);
/// A value typed with a unit, converted to the row's unit.
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

/// What the typed text is read at, and how.
struct UsedFormat {
    Instant now;
    const Zone& zone;
    char decimalSign = '.';
};

/// "0.17 kWh since 07:05, 14 W"; empty if the text is no register reading, or below the last one.
QString usedText(const results::RoundRow& row, const QString& typed, const UsedFormat& format);

/// "Evening round, due now · Sunday 5 April, 18:12", "Next round: evening, from 16:00 · Sunday 5
/// April, 13:10"
QString roundTitle(const results::RoundsSheet& sheet);

} // namespace holdband::ui
