#include "ui/readings/readings_words.h"

#include "core/logbook/names.h"
#include "core/text/numbers.h"
#include "core/text/times.h"
#include "ui/words/words.h"

namespace holdband::ui {

namespace {

QString unitName(ReadingUnit unit)
{
    if (unit == ReadingUnit::celsius)
        return QStringLiteral("°C");
    if (unit == ReadingUnit::fahrenheit)
        return QStringLiteral("°F");
    return shown(nameOf(unit));
}

QString valueWords(double value)
{
    return shown(shortestText(value, decimalSign()));
}

QString stateWords(const ReadingsView& view, const store::ListedReading& reading)
{
    QStringList words;
    if (reading.instead)
        words << QStringLiteral("corrected") +
                     (reading.why.empty() ? QString() : QStringLiteral(": ") + shown(reading.why));
    if (const auto why = leftOutBecause(view, reading.at))
        words << QStringLiteral("left out") +
                     (why->empty() ? QString() : QStringLiteral(": ") + shown(*why));
    return words.join(QStringLiteral(" · "));
}

} // namespace

std::optional<std::string> leftOutBecause(const ReadingsView& view, Instant at)
{
    for (const store::Exclusion& exclusion : view.exclusions) {
        if (exclusion.span.start <= at && at <= exclusion.span.end)
            return exclusion.why;
    }
    return std::nullopt;
}

TableWords readingWords(const ReadingsView& view)
{
    TableWords words;
    words.header = {QStringLiteral("when"), QStringLiteral("logged"), QStringLiteral("counts as"),
                    QStringLiteral("unit"), QStringLiteral("from"),   QStringLiteral("remarks")};
    words.numeric = {false, true, true, false, false, false};
    for (const store::ListedReading& reading : view.list.readings) {
        const bool out = leftOutBecause(view, reading.at).has_value();
        const double counts = reading.instead.value_or(reading.value);
        words.rows.push_back(
            {{shown(localIso(reading.at, view.zone)).left(19).replace(u'T', u' '), {}, false},
             {valueWords(reading.value), {}, false},
             {out ? dash : valueWords(counts), {}, reading.instead.has_value()},
             {unitName(reading.unit), {}, false},
             {shown(reading.from), {}, false},
             {stateWords(view, reading), {}, false}});
    }
    return words;
}

} // namespace holdband::ui
