#include "ui/forms/typed_time.h"

#include "core/intake/time/stamps.h"
#include "core/text/iso_time.h"
#include "core/text/times.h"
#include "ui/words/words.h"

#include <QLocale>
#include <QRegularExpression>
#include <QTime>
#include <algorithm>

namespace holdband::ui {

namespace {

using std::chrono::days;
using std::chrono::floor;

/// Which comes first in a short date of the user's locale.
DateOrder orderOfLocale()
{
    const QString format = QLocale().dateFormat(QLocale::ShortFormat);
    const qsizetype day = format.indexOf(u'd');
    const qsizetype month = format.indexOf(u'M');
    const qsizetype year = format.indexOf(u'y');
    if (year >= 0 && year < std::min(day, month))
        return DateOrder::yearMonthDay;
    return month >= 0 && month < day ? DateOrder::monthDayYear : DateOrder::dayMonthYear;
}

bool hasTwelveHours()
{
    static const QRegularExpression quoted(QStringLiteral("'[^']*'"));
    QString format = QLocale().timeFormat(QLocale::ShortFormat);
    return format.remove(quoted).contains(u'a', Qt::CaseInsensitive);
}

QString dateAsTyped(const Date& date)
{
    const auto number = [](auto part) { return QString::number(static_cast<int>(part)); };
    const QString day = number(static_cast<unsigned>(date.day()));
    const QString month = number(static_cast<unsigned>(date.month()));
    const QString year = number(static_cast<int>(date.year()));
    switch (orderOfLocale()) {
    case DateOrder::monthDayYear:
        return QStringList{month, day, year}.join(u'/');
    case DateOrder::dayMonthYear:
        return QStringList{day, month, year}.join(u'/');
    default:
        return shown(isoDate(date));
    }
}

/// "6:12 pm": the marks that the reader of typed times knows, in every language.
QString twelveHourClock(Milliseconds ofDay)
{
    const QTime clock = QTime::fromMSecsSinceStartOfDay(static_cast<int>(ofDay.count()));
    const QString format = clock.msec() != 0     ? QStringLiteral("h:mm:ss.zzz ap")
                           : clock.second() != 0 ? QStringLiteral("h:mm:ss ap")
                                                 : QStringLiteral("h:mm ap");
    return QLocale::c().toString(clock, format).toLower();
}

/// With today's date before a time of day alone.
std::string withDate(std::string typed, const std::optional<Date>& today)
{
    return today && isClockAlone(typed) ? isoDate(*today) + " " + typed : typed;
}

} // namespace

Result<Instant> readTypedTime(const QString& text, const Zone& zone, std::optional<Instant> now)
{
    std::string typed = core(text.trimmed());
    auto iso = now ? parseTypedTime(typed, zone, *now) : parseTime(typed, zone);
    if (iso)
        return iso;
    auto stamp =
        scanStamp(withDate(typed, now ? std::optional(zone.localDate(*now)) : std::nullopt));
    if (!stamp)
        return iso;
    if (stamp->kind == StampKind::loose) {
        const auto ordered = stampInOrder(unpacked(stamp->value), orderOfLocale());
        if (!ordered)
            return iso;
        stamp = *ordered;
    }
    if (stamp->kind == StampKind::instant)
        return iso; // Unix time: nobody types that
    return resolveLocal(LocalTime{Milliseconds{stamp->value}}, zone);
}

std::optional<TypedLocalTime> typedLocalTime(const QString& text, Date today)
{
    if (const auto iso = scanIsoTime(core(text.trimmed())))
        return TypedLocalTime{iso->local, iso->offset.has_value()};
    const Zone plain = Zone::utc(); // every local time exists in it once
    const auto at = readTypedTime(text, plain, plain.startOfDay(today));
    return at ? std::optional(TypedLocalTime{plain.toLocal(*at)}) : std::nullopt;
}

QString localTimeText(LocalTime local)
{
    const auto day = floor<days>(local);
    if (hasTwelveHours())
        return dateAsTyped(Date{day}) + u' ' + twelveHourClock(local - day);
    return shown(isoDate(Date{day}) + " " + clockText(local));
}

QString typedTime(Instant at, const Zone& zone, TimeDetail detail)
{
    const auto cut = [detail](auto time) -> decltype(time) {
        if (detail == TimeDetail::minute)
            return floor<std::chrono::minutes>(time);
        return floor<std::chrono::seconds>(time);
    };
    const QString text = localTimeText(cut(zone.toLocal(at)));
    const auto read = readTypedTime(text, zone, std::nullopt);
    if (read && *read == cut(at))
        return text;
    return shown(localIso(at, zone)).replace(QLatin1Char('T'), QLatin1Char(' '));
}

namespace {

QString textOf(Date date, Milliseconds ofDay)
{
    return localTimeText(LocalTime{std::chrono::local_days{date}} + ofDay);
}

} // namespace

QString sampleTime()
{
    using namespace std::chrono;
    return textOf(2026y / March / 7, hours{18} + minutes{12});
}

QString longestTime()
{
    using namespace std::chrono;
    return textOf(2028y / December / 28, hours{22} + minutes{58});
}

} // namespace holdband::ui
