// What somebody typed into the Rounds page, taken apart: pure, without widgets.
#pragma once

#include "core/logbook/readings.h"
#include "core/problem.h"
#include "core/review/rounds_sheet.h"

#include <QString>

namespace holdband::ui {

/// A register reading from the text of a field, written in the person's manner.
/// Problem (data): letters, a negative number, two ways to read it.
Result<MeterReading> parseReading(const QString& text, Instant at, const QString& note,
                                  char decimalSign);

/// So far from the expected range that it is asked about once: beyond three times its distance
/// from the last reading. Never where nothing is expected.
bool farOutside(const review::RoundRow& row, double kwh);

/// "58.27 – 58.35", or a dash.
QString expectedText(const review::RoundRow& row);
/// "58.140", or a dash.
QString lastText(const review::RoundRow& row);
/// "this morning 07:05", "yesterday 18:00", "30 Mar 18:00 · 55 days ago"
QString lastTimeText(const review::RoundRow& row, Instant now, const Zone& zone);

/// "Evening round · Sunday 5 April · now 18:12"
QString roundTitle(Instant now, const Zone& zone);

} // namespace holdband::ui
