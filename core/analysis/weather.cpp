#include "core/analysis/weather.h"

#include <algorithm>
#include <cmath>

namespace holdband::analysis {

namespace {

constexpr double knownShareNeeded = 0.9;

/// ∫ max(0, x) over a straight piece from a to b.
double positiveArea(double ms, double a, double b)
{
    if (a <= 0.0 && b <= 0.0)
        return 0.0;
    if (a >= 0.0 && b >= 0.0)
        return (a + b) / 2.0 * ms;
    const double high = std::max(a, b);
    return high * high / (2.0 * std::abs(a - b)) * ms;
}

} // namespace

std::optional<double> Lift::mean() const
{
    return any() ? std::optional((coolingKh - heatingKh) / knownHours) : std::nullopt;
}

bool Lift::knownEnough() const
{
    return any() && knownHours + 1e-9 >= knownShareNeeded * spanHours;
}

Track liftTrack(const Series& ambient, Milliseconds ambientGap, const Series& beer,
                Milliseconds beerGap, Span span)
{
    return difference(cover(ambient, ambientGap, span), cover(beer, beerGap, span));
}

Lift liftOf(const Track& track, double spanHours)
{
    Lift lift;
    lift.spanHours = spanHours;
    forEachPiece(track, 0.0, [&](double t0, double a, double t1, double b, bool) {
        const double ms = t1 - t0;
        lift.coolingKh += positiveArea(ms, a, b) / msPerHour;
        lift.heatingKh += positiveArea(ms, -a, -b) / msPerHour;
        lift.knownHours += ms / msPerHour;
    });
    return lift;
}

namespace {

/// A track is made of a part at a time, so that the readings of years need no memory.
constexpr Milliseconds longestPart = std::chrono::hours{30 * 24};

std::vector<Span> partsOf(Span span)
{
    std::vector<Span> parts;
    while (span.end - span.start > longestPart) {
        parts.push_back({span.start, span.start + longestPart});
        span.start += longestPart;
    }
    parts.push_back(span);
    return parts;
}

} // namespace

Lift liftOver(const Series& ambient, Milliseconds ambientGap, const Series& beer,
              Milliseconds beerGap, const std::vector<Span>& spans)
{
    Lift sum;
    for (const Span& span : spans) {
        for (const Span& each : partsOf(span)) {
            const Track track = liftTrack(ambient, ambientGap, beer, beerGap, each);
            const Lift part = liftOf(track, each.hours());
            sum.coolingKh += part.coolingKh;
            sum.heatingKh += part.heatingKh;
            sum.knownHours += part.knownHours;
            sum.spanHours += part.spanHours;
        }
    }
    return sum;
}

std::optional<double> energyPerDegreeDay(double kwh, const Lift& lift)
{
    if (!lift.knownEnough() || !(lift.coolingKh > 0.0))
        return std::nullopt;
    return kwh / (lift.coolingKh / 24.0);
}

} // namespace holdband::analysis
