#include "core/results/run/energy_curve.h"

#include <algorithm>
#include <set>

namespace holdband::results {

using analysis::EnergyFigure;
using analysis::MeterCurve;
using analysis::RunInput;

namespace {

struct CurveInstants {
    std::set<Instant> all;
    std::set<Instant> read;
    std::set<Instant> afterReset;
};

CurveInstants curveInstants(const RunInput& input)
{
    CurveInstants instants;
    for (const analysis::EnergySource& source : input.setup.sources()) {
        const auto* curve = std::get_if<MeterCurve>(&source.curve);
        for (std::size_t i = 0; curve && i < curve->size(); ++i) {
            const Instant at = curve->at(i);
            if (at < input.span.start || at > input.span.end)
                continue;
            instants.read.insert(at);
            if (i > 0 && curve->pairBefore(i) == MeterCurve::Pair::reset)
                instants.afterReset.insert(at);
        }
    }
    instants.all = instants.read;
    instants.all.insert(input.span.start);
    instants.all.insert(input.span.end);
    return instants;
}

/// The doubt of a reading's time at that instant; 0 without one.
Milliseconds doubtAt(const RunInput& input, Instant at)
{
    Milliseconds doubt{0};
    for (const analysis::EnergySource& source : input.setup.sources()) {
        const auto* curve = std::get_if<MeterCurve>(&source.curve);
        if (const auto reading = curve ? curve->readingAt(at) : std::nullopt)
            doubt = std::max(doubt, curve->timeDoubt(*reading));
    }
    return doubt;
}

/// Bounds jump at a reading, or where its doubt ends, and bend with the rated power: they are
/// computed just inside both ends of [from, to], on both sides of these jumps, and at some places
/// in between. Where a reading's time is in doubt its own moment is left out: there the bounds are
/// as narrow as the reading, but nobody knows when that was.
std::vector<Instant> placesBetween(const RunInput& input, Instant from, Instant to)
{
    constexpr int pieces = 6;
    const double length = static_cast<double>((to - from).count());
    const double inside = std::min(1000.0, length / 20.0);
    std::set<Instant> places{plusMs(from, inside), plusMs(from, length - inside)};
    const auto addEnd = [&](Instant end, double sign) {
        const Milliseconds doubt = doubtAt(input, end);
        if (doubt == Milliseconds{0}) {
            places.insert(end);
            return;
        }
        for (const double off : {-inside, inside})
            places.insert(plusMs(end, sign * (static_cast<double>(doubt.count()) + off)));
    };
    addEnd(from, 1.0);
    addEnd(to, -1.0);
    for (int k = 1; k < pieces; ++k)
        places.insert(plusMs(from, length * k / pieces));
    std::erase_if(places, [&](Instant at) { return at < from || at > to; });
    return {places.begin(), places.end()};
}

} // namespace

bool registerRestarts(const RunInput& input)
{
    return !curveInstants(input).afterReset.empty();
}

std::vector<EnergyPoint> energyCurveOf(const RunInput& input, const analysis::RunEnergy& energy)
{
    std::vector<EnergyPoint> points;
    if (!energy.whole.any())
        return points;
    const CurveInstants instants = curveInstants(input);
    const auto& metered = energy.whole.metered;
    std::set<Instant> all = instants.all;
    for (const Span& span : metered) {
        all.insert(span.start);
        all.insert(span.end);
    }
    for (const Instant at : all) {
        const auto holds = std::find_if(metered.begin(), metered.end(), [&](const Span& span) {
            return at >= span.start && at <= span.end;
        });
        if (holds == metered.end())
            continue;
        const EnergyFigure until = shareOver(input.setup, energy.shares, {input.span.start, at});
        EnergyPoint point{at, until.kwh, std::nullopt, std::nullopt};
        if (until.lowKnown())
            point.low = until.low;
        if (until.highKnown())
            point.high = until.high;
        point.read = instants.read.contains(at);
        point.afterReset = instants.afterReset.contains(at);
        point.afterHole = at == holds->start && holds != metered.begin();
        points.push_back(point);
    }
    return points;
}

EnergyRange energyRangeOf(const RunInput& input, const analysis::RunEnergy& energy,
                          const std::vector<EnergyPoint>& curve)
{
    EnergyRange range;
    for (std::size_t i = 1; i < curve.size(); ++i) {
        if (curve[i].afterHole)
            continue;
        const Instant from = curve[i - 1].at;
        bool joined = i > 1 && !curve[i - 1].afterHole && !range.points.empty();
        for (const Instant at : placesBetween(input, from, curve[i].at)) {
            const EnergyFigure until =
                shareOver(input.setup, energy.shares, {input.span.start, at});
            if (!until.any() && at > from)
                continue;
            if (!until.highKnown() || !until.lowKnown()) {
                range.unbounded = true;
                continue;
            }
            // Without doubt there is a point at the reading itself, and the bounds jump there.
            range.points.push_back({at, until.low, until.high, joined && at > from});
            joined = true;
        }
    }
    return range;
}

} // namespace holdband::results
