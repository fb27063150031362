// The logbook's choices as text in the user's language; core/model/names.h has the names written in
// files.
#pragma once

#include "core/model/batch.h"
#include "core/model/equipment.h"
#include "core/model/readings.h"
#include "core/text/zone.h"

#include <QDate>
#include <QLocale>
#include <QString>

namespace holdband::ui {

/// The locale of the texts' language: for the names of days and months. Numbers follow the user's
/// own locale.
QLocale wordsLocale();
/// A date for that locale's names of days and months.
QDate qtDate(Date date);

/// "beer", "ambient", …; of a power sensor "power_w", as in a log.
QString readsWord(SensorKind reads);

/// "hold", "ramp"
QString stageKindWord(StageKind kind);

/// "rollover", "reset"
QString meterEventWord(MeterEvent event);

/// The default rounds are stored in English and shown in the user's language; any other name is
/// shown as written. "Morning"; inside a line "morning".
QString roundWord(const std::string& label);
QString roundWordInLine(const std::string& label);
/// The stored form of a typed round name.
std::string storedRoundName(const QString& typed);

/// "1 vessel", "3 vessels"
QString vesselsText(std::uint64_t count);

} // namespace holdband::ui
