#include "core/text/times.h"

#include "core/text/iso_time.h"
#include "core/text/phrase.h"
#include "core/text/trimmed.h"

#include <array>
#include <cstdio>

namespace holdband {

using std::chrono::days;
using std::chrono::local_days;

namespace {

std::string monthText(std::chrono::month month)
{
    switch (static_cast<unsigned>(month)) {
    case 1:
        return Phrase::tr("Jan");
    case 2:
        return Phrase::tr("Feb");
    case 3:
        return Phrase::tr("Mar");
    case 4:
        return Phrase::tr("Apr");
    case 5:
        return Phrase::tr("May");
    case 6:
        return Phrase::tr("Jun");
    case 7:
        return Phrase::tr("Jul");
    case 8:
        return Phrase::tr("Aug");
    case 9:
        return Phrase::tr("Sep");
    case 10:
        return Phrase::tr("Oct");
    case 11:
        return Phrase::tr("Nov");
    default:
        return Phrase::tr("Dec");
    }
}

std::string pieced(const char* format, auto... parts)
{
    std::array<char, 64> buffer{};
    const int size = std::snprintf(buffer.data(), buffer.size(), format, parts...);
    return {buffer.data(), static_cast<std::size_t>(size)};
}

struct Clock {
    int hour, minute, second, millisecond;
};

Clock clockOf(LocalTime local)
{
    const auto ofDay =
        static_cast<int>((local - std::chrono::floor<days>(local)).count()); // < 86,400,000
    return {ofDay / 3'600'000, ofDay / 60'000 % 60, ofDay / 1000 % 60, ofDay % 1000};
}

Date dateOf(LocalTime local)
{
    return Date{std::chrono::floor<days>(local)};
}

/// "-07:00"
std::string offsetText(Milliseconds offset)
{
    const auto minutes = static_cast<int>(
        std::chrono::floor<std::chrono::minutes>(std::chrono::abs(offset)).count());
    return pieced("%c%02d:%02d", offset < Milliseconds{0} ? '-' : '+', minutes / 60, minutes % 60);
}

std::string isoWall(LocalTime local)
{
    const Clock clock = clockOf(local);
    std::string text =
        isoDate(dateOf(local)) + pieced("T%02d:%02d:%02d", clock.hour, clock.minute, clock.second);
    return clock.millisecond == 0 ? text : text + pieced(".%03d", clock.millisecond);
}

std::string bothWays(const Resolved& resolved, const Zone& zone)
{
    return Phrase::tr("write its offset: %1 or %2")
        .with(localIso(resolved.earlier, zone), localIso(resolved.later, zone));
}

tl::unexpected<Problem> unreadable(std::string_view text)
{
    return dataProblem(text.empty() ? Phrase::tr("a time is missing").text()
                                    : Phrase::tr("\"%1\" is not a time").with(text),
                       {}, Phrase::tr("write it as 2026-03-07 06:30 or 2026-03-07T06:30:00-07:00"));
}

tl::unexpected<Problem> implausibleYear(const IsoTime& time)
{
    return dataProblem(Phrase::tr("the year %1 is not between %2 and %3")
                           .with(std::to_string(time.year()), std::to_string(firstPlausibleYear),
                                 std::to_string(lastPlausibleYear)),
                       {}, Phrase::tr("check it for a typing slip"));
}

} // namespace

Result<Instant> parseRfc3339(std::string_view text)
{
    const auto time = scanIsoTime(text);
    if (!time || !time->offset || !time->hasSeconds)
        return dataProblem(Phrase::tr("\"%1\" is not an RFC 3339 time").with(text));
    return time->instant();
}

Result<Instant> parseTime(std::string_view text, const Zone& zone)
{
    const std::string_view inner = trimmed(text);
    const auto time = scanIsoTime(inner);
    if (!time)
        return unreadable(inner);
    if (time->year() < firstPlausibleYear || time->year() > lastPlausibleYear)
        return implausibleYear(*time);
    if (time->offset)
        return time->instant();
    if (time->leapSecond)
        return unreadable(inner);
    return resolveLocal(time->local, zone);
}

namespace {

/// "6:30" or "16:30" with the hour in two digits; empty where it is not a time of day.
std::string twoDigitClock(std::string_view clock)
{
    const auto colon = clock.find(':');
    if (colon == 1)
        return "0" + std::string(clock);
    return colon == 2 ? std::string(clock) : std::string();
}

} // namespace

Result<Instant> parseTypedTime(std::string_view text, const Zone& zone, Instant now)
{
    constexpr std::size_t dateLength = 10; // 2026-03-07
    const std::string_view inner = trimmed(text);
    if (const std::string clock = twoDigitClock(inner); !clock.empty())
        return parseTime(isoDate(zone.localDate(now)) + " " + clock, zone);
    if (inner.size() > dateLength + 1 && (inner[dateLength] == ' ' || inner[dateLength] == 'T')) {
        const std::string clock = twoDigitClock(inner.substr(dateLength + 1));
        if (!clock.empty())
            return parseTime(std::string(inner.substr(0, dateLength)) + " " + clock, zone);
    }
    return parseTime(inner, zone);
}

Result<Instant> resolveLocal(LocalTime local, const Zone& zone)
{
    const Resolved resolved = zone.resolve(local);
    if (const auto one = resolved.one())
        return *one;
    const std::string clock = clockText(local);
    const std::string date = dateText(dateOf(local));
    const Phrase phrase =
        resolved.kind == LocalKind::missing
            ? Phrase::tr("%1 on %2 does not exist in %3: clocks went forward over it")
            : Phrase::tr("%1 on %2 exists twice in %3: clocks went back over it");
    return dataProblem(phrase.with(clock, date, zone.name()), {}, bothWays(resolved, zone));
}

std::string rfc3339Utc(Instant at)
{
    const LocalTime wall{at.time_since_epoch()};
    const Clock clock = clockOf(wall);
    return isoDate(dateOf(wall)) + pieced("T%02d:%02d:%02d.%03dZ", clock.hour, clock.minute,
                                          clock.second, clock.millisecond);
}

std::string localIso(Instant at, const Zone& zone)
{
    return isoWall(zone.toLocal(at)) + offsetText(zone.offsetAt(at));
}

std::string localText(Instant at, const Zone& zone)
{
    return dateText(zone.localDate(at)) + " " + localClockText(at, zone);
}

std::string localShortText(Instant at, const Zone& zone)
{
    return shortDateText(zone.localDate(at)) + " " + localClockText(at, zone);
}

std::string localClockText(Instant at, const Zone& zone)
{
    const Clock clock = clockOf(zone.toLocal(at));
    return pieced("%02d:%02d", clock.hour, clock.minute);
}

std::string isoDate(Date date)
{
    return pieced("%04d-%02u-%02u", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
}

std::string dateText(Date date)
{
    return Phrase::tr("%1 %2 %3", "day, month and year")
        .with(std::to_string(static_cast<unsigned>(date.day())), monthText(date.month()),
              std::to_string(static_cast<int>(date.year())));
}

std::string shortDateText(Date date)
{
    return Phrase::tr("%1 %2", "day and month")
        .with(std::to_string(static_cast<unsigned>(date.day())), monthText(date.month()));
}

std::string clockText(LocalTime local)
{
    const Clock clock = clockOf(local);
    std::string text = pieced("%02d:%02d", clock.hour, clock.minute);
    if (clock.second != 0 || clock.millisecond != 0)
        text += pieced(":%02d", clock.second);
    if (clock.millisecond != 0)
        text += pieced(".%03d", clock.millisecond);
    return text;
}

} // namespace holdband
