#include "ui/words/choice_text.h"

#include "core/model/names.h"
#include "ui/words/words.h"

namespace holdband::ui {

namespace {

/// As named by usualRounds().
constexpr const char* morning = "Morning";
constexpr const char* evening = "Evening";

} // namespace

QLocale wordsLocale()
{
    return QLocale(Words::tr("en", "the code of the language that this catalogue is in"));
}

QDate qtDate(Date date)
{
    return {static_cast<int>(date.year()), static_cast<int>(unsigned(date.month())),
            static_cast<int>(unsigned(date.day()))};
}

QString readsWord(SensorKind reads)
{
    switch (reads) {
    case SensorKind::beer:
        return Words::tr("beer");
    case SensorKind::ambient:
        return Words::tr("ambient");
    case SensorKind::chamber:
        return Words::tr("chamber");
    case SensorKind::coolant:
        return Words::tr("coolant");
    case SensorKind::gravity:
        return Words::tr("gravity");
    case SensorKind::power:
        return Words::tr("power, W");
    case SensorKind::intervalEnergy:
        break;
    }
    return Words::tr("energy of each interval");
}

QString stageKindWord(StageKind kind)
{
    return kind == StageKind::ramp ? Words::tr("ramp") : Words::tr("hold");
}

QString meterEventWord(MeterEvent event)
{
    return event == MeterEvent::rollover ? Words::tr("rollover") : Words::tr("reset");
}

QString roundWord(const std::string& label)
{
    if (label == morning)
        return Words::tr("Morning", "a round");
    return label == evening ? Words::tr("Evening", "a round") : shown(label);
}

QString roundWordInLine(const std::string& label)
{
    if (label == morning)
        return Words::tr("morning", "a round, beside its date");
    if (label == evening)
        return Words::tr("evening", "a round, beside its date");
    const bool english = wordsLocale().language() == QLocale::English;
    // In other languages the names stay capitalized, as German nouns are.
    return english ? shown(label).toLower() : shown(label);
}

std::string storedRoundName(const QString& typed)
{
    for (const char* usual : {morning, evening}) {
        if (typed.compare(roundWord(usual), Qt::CaseInsensitive) == 0)
            return usual;
    }
    return core(typed);
}

QString vesselsText(std::uint64_t count)
{
    return Words::counted("%n vessels", "%n vessel", count);
}

} // namespace holdband::ui
