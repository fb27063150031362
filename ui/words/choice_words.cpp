#include "ui/words/choice_words.h"

#include "core/logbook/names.h"
#include "ui/words/words.h"

namespace holdband::ui {

QLocale wordsLocale()
{
    return QLocale(Words::tr("en", "the code of the language that this catalogue is in"));
}

QString readsWord(Reads reads)
{
    switch (reads) {
    case Reads::beer:
        return Words::tr("beer");
    case Reads::ambient:
        return Words::tr("ambient");
    case Reads::chamber:
        return Words::tr("chamber");
    case Reads::coolant:
        return Words::tr("coolant");
    case Reads::gravity:
        return Words::tr("gravity");
    case Reads::power:
        break;
    }
    return shown(nameOf(Reads::power));
}

QString stageKindWord(StageKind kind)
{
    return kind == StageKind::ramp ? Words::tr("ramp") : Words::tr("hold");
}

QString meterEventWord(MeterEvent event)
{
    return event == MeterEvent::rollover ? Words::tr("rollover") : Words::tr("reset");
}

QString vesselsWords(std::uint64_t count)
{
    return Words::counted("%n vessels", "%n vessel", count);
}

} // namespace holdband::ui
