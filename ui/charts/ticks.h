// The ticks of an axis: at full local hours and local midnights, and at round values.
#pragma once

#include "core/quantity/instant.h"
#include "core/text/zone.h"

#include <string>
#include <vector>

namespace holdband::ui {

struct TimeTick {
    Instant at;
    /// "7 Mar" at a midnight, else "06:00"; "7 Mar 06:00" if there is no midnight.
    std::string label;
    bool midnight = false;

    bool operator==(const TimeTick&) const = default;
};

/// Ticks inside the span, at most about `most`, at local times whose hour (or day) is a multiple of
/// a round step. An hour that a clock change skips has no tick; a doubled hour has one, at its
/// first pass.
std::vector<TimeTick> timeTicks(Span shown, const Zone& zone, int most);

struct AgeTick {
    double hours = 0.0;
    std::string label;

    bool operator==(const AgeTick&) const = default;
};

/// "day 3" at 72 h of age; between full days "+6 h", and "day 3 +6 h" at the first tick if no full
/// day is in the range. At most about `most`.
std::vector<AgeTick> ageTicks(double fromHours, double toHours, int most);

/// The same from `origin` on: real elapsed time, without regard to clock changes.
std::vector<TimeTick> elapsedTicks(Span shown, Instant origin, int most);

/// Round values (1, 2 or 5 times a power of ten apart) inside [low, high], at most about `most`.
std::vector<double> valueTicks(double low, double high, int most);

/// Such values for an axis of a chart: as many as fit, and at least three.
std::vector<double> axisTicks(double low, double high, int most);

/// The number of decimals that such ticks need.
int decimalsOf(const std::vector<double>& ticks);

} // namespace holdband::ui
