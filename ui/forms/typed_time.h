// A time as people type it here: ISO, the time of day alone for today, or a date as their locale
// writes it with a clock of 12 or 24 hours ("10/27/2026 6:00 pm"). Fields show times in the form
// in which they are typed: as the locale writes them if its clock has 12 hours, else ISO.
#pragma once

#include "core/problem.h"
#include "core/text/zone.h"

#include <QString>
#include <optional>

namespace holdband::ui {

/// Problem (data): no time, or one that clocks skip or repeat, with both ways to write it. Without
/// `now` a time of day alone is no time.
Result<Instant> readTypedTime(const QString& text, const Zone& zone, std::optional<Instant> now);

/// A typed time before it is resolved in a zone.
struct TypedLocalTime {
    LocalTime local;
    bool hasOffset = false;
};

/// `today`: the date of a time of day alone. Absent: no time.
std::optional<TypedLocalTime> typedLocalTime(const QString& text, Date today);

/// "2026-03-07 18:12", or "3/7/2026 6:12 pm"; seconds only where there are any.
QString localTimeText(LocalTime local);

enum class TimeDetail { minute, second };

/// As localTimeText, cut to the minute or second; in full with its offset if the text alone would
/// be another instant or exists twice.
QString typedTime(Instant at, const Zone& zone, TimeDetail detail = TimeDetail::minute);

/// 7 March 2026, 18:12, as a placeholder.
QString sampleTime();
/// The longest text of a time to the minute, for the width of fields.
QString longestTime();

} // namespace holdband::ui
