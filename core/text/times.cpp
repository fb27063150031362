#include "core/text/times.h"

#include "core/text/iso_time.h"
#include "core/text/trimmed.h"

#include <array>
#include <cstdio>

namespace holdband {

using std::chrono::days;
using std::chrono::local_days;

namespace {

constexpr std::array<const char*, 12> months{"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                             "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};

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
    return "write its offset: " + localIso(resolved.earlier, zone) + " or " +
           localIso(resolved.later, zone);
}

tl::unexpected<Problem> unreadable(std::string_view text)
{
    return dataProblem(text.empty() ? "a time is missing"
                                    : "\"" + std::string(text) + "\" is not a time",
                       {}, "write it as 2026-03-07 06:30 or 2026-03-07T06:30:00-07:00");
}

tl::unexpected<Problem> implausibleYear(const IsoTime& time)
{
    return dataProblem("the year " + std::to_string(time.year()) + " is not between " +
                           std::to_string(firstPlausibleYear) + " and " +
                           std::to_string(lastPlausibleYear),
                       {}, "check it for a typing slip");
}

} // namespace

Result<Instant> parseRfc3339(std::string_view text)
{
    const auto time = scanIsoTime(text);
    if (!time || !time->offset || !time->hasSeconds)
        return dataProblem("\"" + std::string(text) + "\" is not an RFC 3339 time");
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

/// "6:30" or "16:30" with the hour in two digits; empty where it is no clock.
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
    const std::string when = clockText(local) + " on " + dateText(dateOf(local));
    if (resolved.kind == LocalKind::missing)
        return dataProblem(when + " does not exist in " + zone.name() +
                               ": clocks went forward over it",
                           {}, bothWays(resolved, zone));
    return dataProblem(when + " exists twice in " + zone.name() + ": clocks went back over it", {},
                       bothWays(resolved, zone));
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
    const Date date = zone.localDate(at);
    return pieced("%u %s ", static_cast<unsigned>(date.day()),
                  months[static_cast<unsigned>(date.month()) - 1]) +
           localClockText(at, zone);
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
    return pieced("%u %s %d", static_cast<unsigned>(date.day()),
                  months[static_cast<unsigned>(date.month()) - 1], static_cast<int>(date.year()));
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
