#include "sample-data/maker/clock.h"

#include "sample-data/maker/text.h"

#include <algorithm>
#include <charconv>

namespace holdband::sample {

namespace {

using namespace std::chrono;

constexpr Instant clockChange = sys_days{2026y / March / 8} + 9h;

seconds offsetAt(Instant at)
{
    return at < clockChange ? -7h : -6h;
}

int numberAt(std::string_view text, std::size_t start, std::size_t length)
{
    int value = 0;
    const char* first = text.data() + start;
    std::from_chars(first, first + length, value);
    return value;
}

} // namespace

Instant denverWall(Instant at)
{
    return at + offsetAt(at);
}

Instant denver(std::string_view wallTime)
{
    const sys_days day = year{numberAt(wallTime, 0, 4)} /
                         month{static_cast<unsigned>(numberAt(wallTime, 5, 2))} /
                         std::chrono::day{static_cast<unsigned>(numberAt(wallTime, 8, 2))};
    const Instant wall =
        day + hours{numberAt(wallTime, 11, 2)} + minutes{numberAt(wallTime, 14, 2)};
    const Instant standard = wall + 7h;
    return standard < clockChange ? standard : wall + 6h;
}

std::string denverText(Instant at)
{
    const WallParts p = parts(denverWall(at));
    return format("%04d-%02d-%02d %02d:%02d", p.year, p.month, p.day, p.hour, p.minute);
}

WallParts parts(Instant wall)
{
    const sys_days day = floor<days>(wall);
    const year_month_day date{day};
    const hh_mm_ss time{wall - day};
    return {int{date.year()},
            static_cast<int>(unsigned{date.month()}),
            static_cast<int>(unsigned{date.day()}),
            static_cast<int>(time.hours().count()),
            static_cast<int>(time.minutes().count()),
            static_cast<int>(time.seconds().count())};
}

bool within(const std::vector<Span>& spans, Instant at)
{
    return std::any_of(spans.begin(), spans.end(),
                       [at](const Span& span) { return span.contains(at); });
}

Span denverSpan(std::string_view from, std::string_view to)
{
    return {denver(from), denver(to)};
}

double hoursBetween(Instant from, Instant to)
{
    return static_cast<double>((to - from).count()) / 3600.0;
}

double hourOfDay(Instant at)
{
    const Instant wall = denverWall(at);
    return hoursBetween(floor<days>(wall), wall);
}

} // namespace holdband::sample
