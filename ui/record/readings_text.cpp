#include "ui/record/readings_text.h"

#include "core/model/names.h"
#include "core/text/numbers.h"
#include "core/text/quantities.h"
#include "core/text/times.h"
#include "ui/words/choice_text.h"
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

/// In the logbook's unit; with the unit's name if it is not the logged one.
QString countedWords(double value, ReadingUnit unit, TemperatureUnit own)
{
    const bool celsius = unit == ReadingUnit::celsius;
    if (!celsius && unit != ReadingUnit::fahrenheit)
        return valueWords(value);
    const TemperatureUnit logged = celsius ? TemperatureUnit::celsius : TemperatureUnit::fahrenheit;
    return logged == own
               ? valueWords(value)
               : shown(temperatureText(temperatureFrom(value, logged), own, 2, decimalSign()));
}

QString withReason(const QString& words, const std::string& why)
{
    return why.empty() ? words : words + QStringLiteral(": ") + shown(why);
}

QString timeWords(Instant at, const Zone& zone)
{
    return shown(localIso(at, zone)).left(19).replace(u'T', u' ');
}

QString stateText(const ReadingsView& view, const store::ListedReading& reading)
{
    QStringList words;
    if (reading.instead)
        words << withReason(Words::tr("corrected"), reading.why);
    if (const auto why = leftOutBecause(view, reading.at))
        words << withReason(Words::tr("left out"), *why);
    return words.join(QStringLiteral(" · "));
}

TableText sensorText(const ReadingsView& view)
{
    TableText words;
    words.header = {Words::tr("when"), Words::tr("logged"), Words::tr("counts as"),
                    Words::tr("unit"), Words::tr("from"),   Words::tr("remarks")};
    words.numeric = {false, true, true, false, false, false};
    for (const store::ListedReading& reading : view.readings) {
        const bool out = leftOutBecause(view, reading.at).has_value();
        const double counts = reading.instead.value_or(reading.value);
        words.rows.push_back({{timeWords(reading.at, view.zone), {}, false},
                              {valueWords(reading.value), {}, false},
                              {out ? dash : countedWords(counts, reading.unit, view.unit),
                               {},
                               reading.instead.has_value()},
                              {unitName(reading.unit), {}, false},
                              {shown(reading.from), {}, false},
                              {stateText(view, reading), {}, false}});
    }
    return words;
}

QString originText(const store::ListedRegister& reading)
{
    if (reading.file.empty())
        return Words::tr("by hand");
    return reading.line > 0 ? Words::tr("%1, line %2").arg(shown(reading.file)).arg(reading.line)
                            : shown(reading.file);
}

QString registerStateText(const store::ListedRegister& reading, const Zone& zone)
{
    QStringList words;
    if (reading.inForce.event)
        words << Words::tr("%1 before it").arg(meterEventWord(*reading.inForce.event));
    for (const store::Replaced& before : reading.before)
        words << withReason(Words::tr("was %1, corrected %2")
                                .arg(numberText(before.kwh, before.decimals),
                                     shown(localShortText(before.until, zone))),
                            before.why);
    if (reading.leftOut)
        words << withReason(Words::tr("left out"), reading.why);
    return words.join(QStringLiteral(" · "));
}

TableText meterText(const ReadingsView& view)
{
    TableText words;
    words.header = {Words::tr("when"), Words::tr("register"), Words::tr("kWh since"),
                    Words::tr("note"), Words::tr("from"),     Words::tr("remarks")};
    words.numeric = {false, true, true, false, false, false};
    for (const RegisterRow& row : view.registers) {
        const MeterReading& reading = row.reading.inForce;
        words.rows.push_back(
            {{timeWords(reading.at, view.zone), {}, false},
             {numberText(reading.registerReading.kilowattHours(), reading.decimals),
              {},
              !row.reading.before.empty()},
             {row.usedKwh ? numberText(*row.usedKwh, row.decimals) : dash, shown(row.usedWhy),
              false},
             {shown(reading.note), shown(reading.note), false},
             {originText(row.reading), {}, false},
             {registerStateText(row.reading, view.zone), {}, false}});
    }
    return words;
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

TableText readingWords(const ReadingsView& view)
{
    return view.subject.meter ? meterText(view) : sensorText(view);
}

QString countWords(const ReadingsView& view)
{
    if (view.subjects.empty())
        return Words::tr("No sensor or meter is on record yet. Add one on the Equipment "
                         "page.");
    if (view.more)
        return Words::tr("The first %1 of this stretch; choose a shorter one to see the rest.")
            .arg(view.size());
    return Words::counted("%n readings in this stretch.", "%n reading in this stretch.",
                          view.size());
}

} // namespace holdband::ui
