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

/// Bounds jump at a reading and bend with the rated power: they are computed just inside both ends
/// of [from, to] and at some places in between.
std::vector<Instant> placesBetween(Instant from, Instant to)
{
    constexpr int pieces = 6;
    const double length = static_cast<double>((to - from).count());
    const double inside = std::min(1000.0, length / 20.0);
    std::vector<Instant> places{from, plusMs(from, inside)};
    for (int k = 1; k < pieces; ++k)
        places.push_back(plusMs(from, length * k / pieces));
    places.push_back(plusMs(from, length - inside));
    places.push_back(to);
    return places;
}

} // namespace

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
        for (const Instant at : placesBetween(from, curve[i].at)) {
            const EnergyFigure until =
                shareOver(input.setup, energy.shares, {input.span.start, at});
            if (!until.any() && at > from)
                continue;
            if (!until.highKnown() || !until.lowKnown()) {
                range.unbounded = true;
                continue;
            }
            range.points.push_back({at, until.low, until.high, at > from});
        }
    }
    return range;
}

} // namespace holdband::results
