// A point on the UTC time line, to the millisecond. Local time and zones exist only in intake and
// where times are shown; nothing in between uses them. No Qt.
#pragma once

#include <chrono>
#include <cstdint>

namespace holdband {

using Milliseconds = std::chrono::milliseconds;
using Instant = std::chrono::sys_time<Milliseconds>;

/// A length of time in hours, fractional. Used where a figure is shown or typed in hours.
using Hours = std::chrono::duration<double, std::ratio<3600>>;
inline constexpr double msPerHour = 3.6e6;

inline constexpr Instant instantFromMs(std::int64_t msSinceEpoch)
{
    return Instant{Milliseconds{msSinceEpoch}};
}

inline constexpr std::int64_t toMs(Instant at)
{
    return at.time_since_epoch().count();
}

/// The first and the last instant of the years 1 to 9999, the years that people and RFC 3339 can
/// write.
inline constexpr Instant earliestInstant{std::chrono::sys_days{std::chrono::year{1} / 1 / 1}};
inline constexpr Instant latestInstant{std::chrono::sys_days{std::chrono::year{10000} / 1 / 1} -
                                       Milliseconds{1}};

inline constexpr double hoursBetween(Instant from, Instant to)
{
    return Hours{to - from}.count();
}

/// A million years: longer than any length used here, and short enough to compute with.
inline constexpr Milliseconds longestLength{31'557'600'000'000'000};

/// The nearest millisecond; lengths beyond longestLength, infinite ones too, are cut to it, and NaN
/// gives 0.
inline Milliseconds toMilliseconds(Hours length)
{
    constexpr Hours most = longestLength;
    if (length != length)
        return Milliseconds{0};
    return std::chrono::round<Milliseconds>(length < -most ? -most : length > most ? most : length);
}

/// A length in fractional milliseconds, as the analysis computes with, to the nearest whole one.
inline Milliseconds wholeMs(double ms)
{
    return toMilliseconds(Hours{std::chrono::duration<double, std::milli>{ms}});
}

/// The instant that lies so many milliseconds after `start`.
inline Instant plusMs(Instant start, double ms)
{
    return start + wholeMs(ms);
}

/// The instants [start, end). Empty where end is not after start.
struct Span {
    Instant start;
    Instant end;

    constexpr bool empty() const { return end <= start; }
    constexpr double hours() const { return empty() ? 0.0 : hoursBetween(start, end); }
    constexpr bool operator==(const Span&) const = default;
};

inline constexpr Span intersection(Span a, Span b)
{
    return {std::max(a.start, b.start), std::min(a.end, b.end)};
}

} // namespace holdband
