#include "ui/rounds/round_entry.h"

#include "core/analysis/gravity.h"
#include "core/quantity/plato.h"
#include "core/text/numbers.h"
#include "core/text/phrase.h"
#include "core/text/quantities.h"
#include "core/text/times.h"
#include "ui/rounds/status_text.h"
#include "ui/words/choice_text.h"
#include "ui/words/words.h"

#include <QDate>
#include <QLocale>

namespace holdband::ui {

namespace {

constexpr double farFactor = 3.0;

struct UnitTyped {
    QString number;
    ReadingUnit unit;
};

/// "65 F" in a row of °C is 65 °F; other rows take only a number.
UnitTyped splitUnit(const QString& text, ReadingUnit unit)
{
    const bool temperature = unit == ReadingUnit::celsius || unit == ReadingUnit::fahrenheit;
    const QChar last = text.isEmpty() ? QChar() : text.back().toUpper();
    if (!temperature || (last != QLatin1Char('C') && last != QLatin1Char('F')))
        return {text, unit};
    QString number = text.chopped(1).trimmed();
    if (number.endsWith(QChar(0x00B0)))
        number = number.chopped(1).trimmed();
    return {number, last == QLatin1Char('C') ? ReadingUnit::celsius : ReadingUnit::fahrenheit};
}

} // namespace

Result<MeterReading> parseReading(const QString& text, Instant at, const QString& note,
                                  char decimalSign)
{
    const auto number = parseTypedNumber(core(text.trimmed()), decimalSign);
    if (!number)
        return failure(number.error());
    if (number->value < 0.0)
        return dataProblem(Phrase::tr("a register can't read below 0"), {},
                           Phrase::tr("check the number"));
    return MeterReading{
        at, Energy::kilowattHours(number->value), number->decimals, {}, core(note.trimmed())};
}

Result<HandReading> parseHandReading(const QString& text, Instant at, const QString& note,
                                     char decimalSign, ReadingUnit unit)
{
    const UnitTyped typed = splitUnit(text.trimmed(), unit);
    const auto number = parseTypedNumber(core(typed.number), decimalSign);
    if (!number)
        return failure(number.error());
    return HandReading{at, number->value, typed.unit, number->decimals, {}, core(note.trimmed())};
}

namespace {

// Beer freezes at about this temperature.
constexpr Temperature coldestSample = Temperature::celsius(-5.0);
constexpr Temperature hottestSample = Temperature::celsius(110.0);
// The calibration temperature that Gravity assumes.
constexpr Temperature madeFor = Temperature::celsius(20.0);

} // namespace

Result<std::optional<Temperature>> parseSample(const QString& text, char decimalSign,
                                               TemperatureUnit unit)
{
    if (text.trimmed().isEmpty())
        return std::optional<Temperature>();
    const auto number = parseTypedNumber(core(text.trimmed()), decimalSign);
    if (!number)
        return failure(number.error());
    const Temperature sample = unit == TemperatureUnit::fahrenheit
                                   ? Temperature::fahrenheit(number->value)
                                   : Temperature::celsius(number->value);
    if (sample < coldestSample || sample > hottestSample)
        return dataProblem(Phrase::tr("a sample is never at %1 %2")
                               .with(core(text.trimmed()), holdband::unitText(unit)),
                           {}, Phrase::tr("check the number and its unit"));
    return std::optional(sample);
}

QString correctedGravityText(const QString& gravity, const QString& sample, char decimalSign,
                             TemperatureUnit unit)
{
    const auto read = parseTypedNumber(core(gravity.trimmed()), decimalSign);
    const auto at = parseSample(sample, decimalSign, unit);
    // The formula for the density of water is valid from 0 to 40 °C.
    if (!read || !at || !*at || **at < Temperature::celsius(0) || **at > Temperature::celsius(40))
        return {};
    const Gravity corrected =
        analysis::correctedForTemperature(Gravity::specific(read->value), **at, madeFor);
    return Words::
        tr("A hydrometer made for 20 °C, read at %1: the gravity is %2. What it showed is stored.")
            .arg(shown(temperatureText(**at, unit, 0)), shown(gravityText(corrected, decimalSign)));
}

QString unitText(const results::RoundRow& row)
{
    switch (row.unit) {
    case ReadingUnit::fahrenheit:
        return QStringLiteral("°F");
    case ReadingUnit::celsius:
        return QStringLiteral("°C");
    case ReadingUnit::specificGravity:
        return Words::tr("gravity");
    default:
        return QStringLiteral("kWh");
    }
}

double valueInUnitOf(const results::RoundRow& row, const HandReading& reading)
{
    if (reading.unit == row.unit)
        return reading.value;
    if (reading.unit == ReadingUnit::degreePlato)
        return gravityOfPlato(reading.value).specific();
    if (reading.unit == ReadingUnit::fahrenheit)
        return Temperature::fahrenheit(reading.value).celsius();
    return row.unit == ReadingUnit::fahrenheit
               ? valueIn(Temperature::celsius(reading.value), TemperatureUnit::fahrenheit)
               : reading.value;
}

store::HandOwner ownerOf(const results::RoundRow& row)
{
    return {row.kind == results::RoundKind::gravity ? store::HandOwner::Kind::batch
                                                    : store::HandOwner::Kind::sensor,
            row.name};
}

QString askFarOutside(const QString& typed, const results::RoundRow& row)
{
    return Words::tr("%1 is far from the %2 expected. Press Enter again to save it.")
        .arg(typed.trimmed(), expectedText(row));
}

QString askOnce(const std::string& unusual)
{
    return Words::tr("%1. Press Enter again to save it.").arg(capitalised(shown(unusual)));
}

bool farOutside(const results::RoundRow& row, double value)
{
    if (!row.expected)
        return false;
    const auto [low, high] = *row.expected;
    if (row.kind == results::RoundKind::gravity)
        return value < low || value > high;
    if (row.kind == results::RoundKind::thermometer)
        return value < low - (high - low) || value > high + (high - low);
    if (value < row.last)
        return false;
    const double most = (high - row.last) * farFactor;
    const double oneUnit = std::pow(10.0, -row.decimals);
    return value - row.last > most + oneUnit;
}

QString expectedText(const results::RoundRow& row)
{
    if (!row.expected)
        return dash;
    return QStringLiteral("%1 – %2").arg(numberText(row.expected->first, row.decimals),
                                         numberText(row.expected->second, row.decimals));
}

QString lastText(const results::RoundRow& row)
{
    return row.lastAt ? numberText(row.last, row.decimals) : dash;
}

QString lastTimeText(const results::RoundRow& row, Instant now, const Zone& zone)
{
    if (!row.lastAt)
        return Words::tr("never read");
    const QString clock = shown(localClockText(*row.lastAt, zone));
    const qint64 days = qtDate(zone.localDate(*row.lastAt)).daysTo(qtDate(zone.localDate(now)));
    if (days == 0)
        return Words::tr("today %1").arg(clock);
    if (days == 1)
        return Words::tr("yesterday %1").arg(clock);
    return shown(localShortText(*row.lastAt, zone)) + QStringLiteral(" · ") +
           agoText(*row.lastAt, now);
}

namespace {

/// "07:05", "yesterday 18:05", "30 Mar 18:00"
QString sinceText(Instant then, const UsedFormat& format)
{
    const QString clock = shown(localClockText(then, format.zone));
    const qint64 days =
        qtDate(format.zone.localDate(then)).daysTo(qtDate(format.zone.localDate(format.now)));
    if (days == 0)
        return clock;
    return days == 1 ? Words::tr("yesterday %1").arg(clock)
                     : shown(localShortText(then, format.zone));
}

} // namespace

QString usedText(const results::RoundRow& row, const QString& typed, const UsedFormat& format)
{
    const auto reading = parseReading(typed, row.at, {}, format.decimalSign);
    if (!reading)
        return {};
    const auto used = results::usedSince(row, reading->registerReading.kilowattHours());
    if (!used)
        return {};
    return Words::tr("%1 kWh since %2, %3 W")
        .arg(numberText(used->kwh, std::max(row.decimals, reading->decimals)),
             sinceText(*row.lastAt, format), numberText(used->watts, 0));
}

namespace {

/// "Evening round, due now", "Next round: morning, tomorrow from 05:00"
QString nextRoundText(const results::RoundsSheet& sheet)
{
    const results::NextRound& next = sheet.next;
    if (next.state == results::NextRound::State::none)
        return Words::tr("No round is due");
    const std::string& label = sheet.windowOf(next.round).label;
    if (next.state == results::NextRound::State::due)
        return Words::tr("%1 round, due now").arg(roundWord(label));
    const bool today = sheet.zone.localDate(next.opens) == sheet.zone.localDate(sheet.now);
    const QString clock = shown(localClockText(next.opens, sheet.zone));
    return (today ? Words::tr("Next round: %1, from %2")
                  : Words::tr("Next round: %1, tomorrow from %2"))
        .arg(roundWordInLine(label), clock);
}

} // namespace

QString roundTitle(const results::RoundsSheet& sheet)
{
    const QString day = wordsLocale().toString(qtDate(sheet.zone.localDate(sheet.now)),
                                               Words::tr("dddd d MMMM", "pattern of a date"));
    return Words::tr("%1 · %2, %3", "what is due, a date and the time")
        .arg(nextRoundText(sheet), day, shown(localClockText(sheet.now, sheet.zone)));
}

} // namespace holdband::ui
