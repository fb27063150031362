#include "ui/forms/typed_time.h"

#include "core/intake/time/stamps.h"
#include "core/text/times.h"
#include "ui/words/words.h"

#include <QLocale>

namespace holdband::ui {

namespace {

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

} // namespace

Result<Instant> readTypedTime(const QString& text, const Zone& zone, Instant now)
{
    const std::string typed = core(text);
    auto iso = parseTypedTime(typed, zone, now);
    if (iso)
        return iso;
    auto stamp = scanStamp(typed);
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

} // namespace holdband::ui
