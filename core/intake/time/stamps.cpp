#include "core/intake/time/stamps.h"

#include "core/intake/time/clock_scan.h"
#include "core/intake/time/header_zone.h"
#include "core/text/numbers.h"
#include "core/text/times.h"
#include "core/text/trimmed.h"

#include <QtGlobal>
#include <cmath>

namespace holdband {

using namespace std::chrono;

namespace {

constexpr const char* notATime = QT_TRANSLATE_NOOP("Phrase", "is not a time");
constexpr const char* noSuchDate = QT_TRANSLATE_NOOP("Phrase", "is no date of the calendar");
constexpr const char* noClock = QT_TRANSLATE_NOOP("Phrase", "has a date but no time of day");
constexpr const char* badYear =
    QT_TRANSLATE_NOOP("Phrase", "its year is not between 1990 and 2100");

using Scan = tl::expected<Stamp, const char*>;

tl::unexpected<const char*> reason(const char* text)
{
    return tl::unexpected<const char*>(text);
}

bool plausible(int y)
{
    return y >= firstPlausibleYear && y <= lastPlausibleYear;
}

std::optional<local_days> dayOf(int y, int m, int d)
{
    const year_month_day date{year{y}, month{static_cast<unsigned>(m)},
                              day{static_cast<unsigned>(d)}};
    return date.ok() ? std::optional{local_days{date}} : std::nullopt;
}

/// For a known date: an instant if there is an offset, else a local time.
Scan settled(local_days date, const ScannedClock& clock)
{
    const Milliseconds wall = date.time_since_epoch() + Milliseconds{clock.msOfDay};
    if (clock.offset)
        return Stamp{StampKind::instant, (wall - *clock.offset).count()};
    return Stamp{StampKind::local, wall.count()};
}

Scan withKnownOrder(int y, int m, int d, const ScannedClock& clock)
{
    if (!plausible(y))
        return reason(badYear);
    const auto date = dayOf(y, m, d);
    return date ? settled(*date, clock) : reason(noSuchDate);
}

/// Offsets of loose times are whole quarters of an hour, up to 14 h.
constexpr int mostQuarters = 14 * 4;
constexpr Milliseconds quarterHour = minutes{15};

bool canPack(Milliseconds offset)
{
    return offset % quarterHour == Milliseconds{0} && offset / quarterHour <= mostQuarters &&
           offset / quarterHour >= -mostQuarters;
}

Scan withOpenOrder(const ScannedDate& date, const ScannedClock& clock)
{
    if (date.thirdWidth == 4 && !plausible(date.third))
        return reason(badYear);
    if (clock.offset && !canPack(*clock.offset))
        return reason(QT_TRANSLATE_NOOP("Phrase", "has an offset that no zone has"));
    const LooseTime time{date.first,           date.second,   date.third,  date.thirdWidth == 2,
                         date.firstWidth == 2, clock.msOfDay, clock.offset};
    for (const DateOrder order : allDateOrders) {
        if (inOrder(time, order))
            return Stamp{StampKind::loose, packed(time)};
    }
    return reason(noSuchDate);
}

/// Two digits at a position, or −1.
int pairAt(std::string_view text, std::size_t at)
{
    const auto tens = static_cast<unsigned char>(text[at] - '0');
    const auto ones = static_cast<unsigned char>(text[at + 1] - '0');
    return tens < 10 && ones < 10 ? tens * 10 + ones : -1;
}

/// A fast path for "2026-03-07 06:30:00", which most logs have. Absent: any other text, or one that
/// must be refused; then the general grammar gives the reason.
std::optional<std::int64_t> commonLayout(std::string_view text)
{
    if (text.size() != 19 || text[4] != '-' || text[7] != '-' || text[13] != ':' ||
        text[16] != ':' || (text[10] != ' ' && text[10] != 'T'))
        return std::nullopt;
    const int century = pairAt(text, 0), ofCentury = pairAt(text, 2);
    const int m = pairAt(text, 5), d = pairAt(text, 8);
    const int hour = pairAt(text, 11), minute = pairAt(text, 14), second = pairAt(text, 17);
    const bool digits = (century | ofCentury | m | d | hour | minute | second) >= 0;
    const int y = century * 100 + ofCentury;
    if (!digits || !plausible(y) || hour > 23 || minute > 59 || second > 59)
        return std::nullopt;
    const auto date = dayOf(y, m, d);
    if (!date)
        return std::nullopt;
    const int msOfDay = ((hour * 60 + minute) * 60 + second) * 1000;
    return Milliseconds{date->time_since_epoch()}.count() + msOfDay;
}

bool isDateAndClock(std::string_view text)
{
    TextCursor cursor(trimmed(text));
    const auto date = scanDate(cursor);
    return date && !cursor.atEnd() && scanClockBehindDate(cursor, date->compact) && cursor.atEnd();
}

/// Seconds, milliseconds, microseconds or nanoseconds since 1970; all only within 1990 … 2100, so
/// that they can't be confused.
Scan unixTime(double value)
{
    constexpr double from = 631152000.0; // 1990-01-01T00:00:00Z
    constexpr double to = 4133980800.0;  // 2101-01-01T00:00:00Z
    constexpr double msInSecond = 1e3;
    for (const double inSecond : {1.0, 1e3, 1e6, 1e9}) {
        if (value >= from * inSecond && value < to * inSecond)
            return Stamp{StampKind::instant, inSecond == 1.0
                                                 ? std::llround(value * msInSecond)
                                                 : std::llround(value / (inSecond / msInSecond))};
    }
    return reason(QT_TRANSLATE_NOOP("Phrase", "as Unix time is not between 1990 and 2100"));
}

} // namespace

// 27 bits of milliseconds, 14 of the third number, 7 of each other, 2 flags, 7 of the offset in
// quarters of an hour (0: there is none).
std::int64_t packed(const LooseTime& time)
{
    std::uint64_t value = 0;
    if (time.offset)
        value = static_cast<std::uint64_t>(*time.offset / quarterHour + mostQuarters + 1);
    const auto add = [&value](int bits, int part) {
        value = value << bits | static_cast<std::uint64_t>(part);
    };
    add(1, time.shortYear ? 1 : 0);
    add(1, time.yearMayLead ? 1 : 0);
    add(7, time.first);
    add(7, time.second);
    add(14, time.third);
    add(27, time.msOfDay);
    return static_cast<std::int64_t>(value);
}

LooseTime unpacked(std::int64_t value)
{
    LooseTime time;
    time.msOfDay = static_cast<std::int32_t>(value & 0x7FFFFFF);
    time.third = static_cast<int>(value >> 27 & 0x3FFF);
    time.second = static_cast<int>(value >> 41 & 0x7F);
    time.first = static_cast<int>(value >> 48 & 0x7F);
    time.yearMayLead = (value >> 55 & 1) != 0;
    time.shortYear = (value >> 56 & 1) != 0;
    const int quarters = static_cast<int>(value >> 57 & 0x7F);
    if (quarters != 0)
        time.offset = (quarters - mostQuarters - 1) * quarterHour;
    return time;
}

std::optional<Stamp> stampInOrder(const LooseTime& time, DateOrder order)
{
    const auto wall = inOrder(time, order);
    if (!wall)
        return std::nullopt;
    if (time.offset)
        return Stamp{StampKind::instant, (wall->time_since_epoch() - *time.offset).count()};
    return Stamp{StampKind::local, wall->time_since_epoch().count()};
}

std::optional<LocalTime> inOrder(const LooseTime& time, DateOrder order)
{
    const int century = time.shortYear ? 2000 : 0;
    std::optional<local_days> date;
    if (order == DateOrder::monthDayYear)
        date = dayOf(century + time.third, time.first, time.second);
    else if (order == DateOrder::dayMonthYear)
        date = dayOf(century + time.third, time.second, time.first);
    else if (time.shortYear && time.yearMayLead)
        date = dayOf(century + time.first, time.second, time.third);
    if (!date)
        return std::nullopt;
    return LocalTime{*date} + Milliseconds{time.msOfDay};
}

Scan scanStamp(std::string_view text)
{
    text = trimmed(text);
    if (text.empty())
        return reason(QT_TRANSLATE_NOOP("Phrase", "is missing"));
    if (const auto wall = commonLayout(text))
        return Stamp{StampKind::local, *wall};
    TextCursor cursor(text);
    const auto date = scanDate(cursor);
    if (!date) {
        const auto number = scanDecimal(text);
        return number ? unixTime(number->value) : reason(notATime);
    }
    if (cursor.atEnd())
        return reason(noClock);
    const auto clock = scanClockBehindDate(cursor, date->compact);
    if (!clock || !cursor.atEnd())
        return reason(notATime);
    if (date->yearFirst)
        return withKnownOrder(date->first, date->second, date->third, *clock);
    if (date->named)
        return withKnownOrder(date->third, date->second, date->first, *clock);
    return withOpenOrder(*date, *clock);
}

ZonedText zonedText(std::string_view text)
{
    text = trimmed(text);
    if (text.empty() || (text.back() >= '0' && text.back() <= '9'))
        return {text, {}};
    std::size_t from = text.rfind(' ');
    if (text.back() == ']' || text.back() == ')')
        from = text.rfind(text.back() == ']' ? '[' : '(');
    if (from == text.npos || from == 0)
        return {text, {}};
    const std::string_view stamp = trimmed(text.substr(0, from));
    if (!isDateAndClock(stamp))
        return {text, {}};
    const std::string_view zone = trimmed(text.substr(from));
    const HeaderZone named = headerZone({zone});
    if (!named.zone && named.unclear.empty())
        return {text, {}};
    const bool brackets = text.back() == ']' || text.back() == ')';
    return {stamp, brackets ? zone.substr(1, zone.size() - 2) : zone};
}

bool looksLikeTime(std::string_view text)
{
    return isDateAndClock(text) || !zonedText(text).zone.empty();
}

bool isDateAlone(std::string_view text)
{
    TextCursor cursor(trimmed(text));
    return scanDate(cursor).has_value() && cursor.atEnd();
}

bool isClockAlone(std::string_view text)
{
    TextCursor cursor(trimmed(text));
    return scanClock(cursor).has_value() && cursor.atEnd();
}

} // namespace holdband
