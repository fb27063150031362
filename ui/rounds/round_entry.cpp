#include "ui/rounds/round_entry.h"

#include "core/text/numbers.h"
#include "core/text/times.h"
#include "ui/window/status_words.h"
#include "ui/words/words.h"

#include <QDate>
#include <QLocale>

namespace holdband::ui {

namespace {

constexpr double farFactor = 3.0;

QDate qdate(Date date)
{
    return {static_cast<int>(date.year()), static_cast<int>(unsigned(date.month())),
            static_cast<int>(unsigned(date.day()))};
}

} // namespace

Result<MeterReading> parseReading(const QString& text, Instant at, const QString& note,
                                  char decimalSign)
{
    const auto number = parseTypedNumber(core(text.trimmed()), decimalSign);
    if (!number)
        return failure(number.error());
    if (number->value < 0.0)
        return dataProblem("a register can't read below 0", {}, "check the number");
    return MeterReading{
        at, Energy::kilowattHours(number->value), number->decimals, {}, core(note.trimmed())};
}

bool farOutside(const review::RoundRow& row, double kwh)
{
    if (!row.expectedKwh || kwh < row.lastKwh)
        return false;
    const double used = kwh - row.lastKwh;
    const double most = (row.expectedKwh->second - row.lastKwh) * farFactor;
    const double oneUnit = std::pow(10.0, -row.decimals);
    return used > most + oneUnit;
}

QString expectedText(const review::RoundRow& row)
{
    if (!row.expectedKwh)
        return dash;
    return QStringLiteral("%1 – %2").arg(numberText(row.expectedKwh->first, row.decimals),
                                         numberText(row.expectedKwh->second, row.decimals));
}

QString lastText(const review::RoundRow& row)
{
    return row.lastAt ? numberText(row.lastKwh, row.decimals) : dash;
}

QString lastTimeText(const review::RoundRow& row, Instant now, const Zone& zone)
{
    if (!row.lastAt)
        return QStringLiteral("never read");
    const QString clock = shown(localClockText(*row.lastAt, zone));
    const qint64 days = qdate(zone.localDate(*row.lastAt)).daysTo(qdate(zone.localDate(now)));
    const bool morning = review::roundOf(*row.lastAt, zone).slot == review::RoundSlot::morning;
    if (days == 0)
        return (morning ? QStringLiteral("this morning ") : QStringLiteral("this evening ")) +
               clock;
    if (days == 1)
        return QStringLiteral("yesterday ") + clock;
    return shown(localShortText(*row.lastAt, zone)) + QStringLiteral(" · ") +
           agoText(*row.lastAt, now);
}

QString roundTitle(Instant now, const Zone& zone)
{
    const review::RoundColumn round = review::roundOf(now, zone);
    const QString day = QLocale(QLocale::English).toString(qdate(round.date), "dddd d MMMM");
    return QStringLiteral("%1 round · %2 · now %3")
        .arg(round.slot == review::RoundSlot::morning ? QStringLiteral("Morning")
                                                      : QStringLiteral("Evening"),
             day, shown(localClockText(now, zone)));
}

} // namespace holdband::ui
