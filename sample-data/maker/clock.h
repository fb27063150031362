// Time in the sample's scenario: instants are UTC seconds; local times are those of America/Denver
// from January to October 2026 (UTC-7, from 8 March 2026 09:00 UTC on UTC-6).
#pragma once

#include <chrono>
#include <string>
#include <string_view>
#include <vector>

namespace holdband::sample {

using Instant = std::chrono::sys_seconds;

/// Denver's wall clock at an instant, stored as if it were UTC.
Instant denverWall(Instant at);

/// The instant of a Denver wall time "2026-03-07 18:00". The scenario doesn't use the hour that the
/// clock change skips.
Instant denver(std::string_view wallTime);

/// "2026-03-07 18:00", Denver.
std::string denverText(Instant at);

struct WallParts {
    int year;
    int month;
    int day;
    int hour;
    int minute;
    int second;
};
WallParts parts(Instant wall);

/// From one instant to another, excluding the end.
struct Span {
    Instant from;
    Instant to;

    bool contains(Instant at) const { return at >= from && at < to; }
};

/// Whether one of the spans contains the instant.
bool within(const std::vector<Span>& spans, Instant at);

Span denverSpan(std::string_view from, std::string_view to);

/// Hours between two instants, negative when the second is earlier.
double hoursBetween(Instant from, Instant to);

/// An hour of at least 0 and below 24 on Denver's wall clock.
double hourOfDay(Instant at);

} // namespace holdband::sample
