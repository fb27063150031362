// The logbook's choices as words of the person's language; core/model/names.h has the written
// names that files keep.
#pragma once

#include "core/model/batch.h"
#include "core/model/equipment.h"
#include "core/model/readings.h"
#include "core/text/zone.h"

#include <QDate>
#include <QLocale>
#include <QString>

namespace holdband::ui {

/// The locale of the language that the texts are in: for the names of days and months. Numbers
/// follow the person's own locale.
QLocale wordsLocale();
/// A date for that locale's names of days and months.
QDate qtDate(Date date);

/// "beer", "ambient", …; of a power sensor "power_w", as a log names it.
QString readsWord(SensorKind reads);

/// "hold", "ramp"
QString stageKindWord(StageKind kind);

/// "rollover", "reset"
QString meterEventWord(MeterEvent event);

/// The usual rounds are kept in English and said in everybody's language; another name stays as it
/// was written. "Morning"; inside a line "morning".
QString roundWord(const std::string& label);
QString roundWordInLine(const std::string& label);
/// What the logbook keeps of a round's name as it was typed.
std::string keptRound(const QString& typed);

/// "1 vessel", "3 vessels"
QString vesselsWords(std::uint64_t count);

} // namespace holdband::ui
