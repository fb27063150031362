#include "core/analysis/hold_need.h"

#include "core/analysis/hold_band.h"
#include "core/analysis/moving_mean.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace holdband::analysis {

namespace {

constexpr double holdWindowMs = 12.0 * msPerHour;
constexpr std::chrono::hours quietAfterPitching{96};
constexpr double edgeShare = 0.9;

/// Appends a stage's track; it joins the one before where they touch. The value may jump there.
void append(Track& plan, const Track& stage)
{
    const auto shift = static_cast<double>((stage.origin - plan.origin).count());
    for (const Run& run : stage.runs) {
        const std::size_t first = plan.ms.size();
        for (std::size_t i = run.first; i <= run.last; ++i) {
            plan.ms.push_back(stage.ms[i] + shift);
            plan.value.push_back(stage.value[i]);
        }
        const std::size_t last = plan.ms.size() - 1;
        if (first > 0 && plan.ms[first] <= plan.ms[first - 1])
            plan.runs.back().last = last;
        else
            plan.runs.push_back({first, last});
    }
}

Track aboveTargets(const std::vector<PlacedStage>& stages, const PlannedRoom& room)
{
    Track plan{stages.front().span.start, {}, {}, {}};
    for (const PlacedStage& stage : stages)
        append(plan, aboveTarget(stage, room));
    return plan;
}

} // namespace

std::optional<double> neededLift(const std::vector<PlacedStage>& stages, const PlannedRoom& room)
{
    if (stages.empty())
        return std::nullopt;
    const auto length =
        static_cast<double>((stages.back().span.end - stages.front().span.start).count());
    const std::optional<double> mean =
        greatestMean(aboveTargets(stages, room), std::min(holdWindowMs, length));
    const auto* typed = std::get_if<TypedRoom>(&room);
    return mean && typed ? *mean + typed->swingK / std::numbers::pi : mean;
}

std::vector<Span> timesInBand(const Track& deviation, double tolerance)
{
    const double edge = tolerance + edgeSlack;
    std::vector<Span> times;
    forEachPiece(deviation, 0.0, [&](double t0, double v0, double t1, double v1, bool) {
        double from = t0;
        double to = t1;
        for (const double side : {edge, -edge}) {
            // Beyond this edge the side's sign and the deviation's excess have the same sign.
            const bool startsOut = side > 0.0 ? v0 > side : v0 < side;
            const bool endsOut = side > 0.0 ? v1 > side : v1 < side;
            if (startsOut && endsOut)
                return;
            if (startsOut)
                from = std::max(from, along(v0, t0, v1, t1, side));
            if (endsOut)
                to = std::min(to, along(v0, t0, v1, t1, side));
        }
        if (from <= to)
            times.push_back({plusMs(deviation.origin, from), plusMs(deviation.origin, to)});
    });
    return unite(std::move(times));
}

std::optional<double> seenLift(const Track& lift, const std::vector<Span>& inBand, Instant pitched)
{
    std::optional<double> seen;
    const Instant quiet = pitched + quietAfterPitching;
    for (const Span& span : unite(inBand)) {
        const Instant start = std::max(span.start, quiet);
        const Track part = clip(lift, static_cast<double>((start - lift.origin).count()),
                                static_cast<double>((span.end - lift.origin).count()));
        if (const std::optional<double> mean = greatestMean(part, holdWindowMs))
            seen = std::max(seen.value_or(*mean), *mean);
    }
    return seen;
}

HoldOutlook holdOutlook(std::optional<double> needed, std::optional<double> seen)
{
    if (!needed || !seen)
        return HoldOutlook::unknown;
    if (*needed <= edgeShare * *seen)
        return HoldOutlook::heldMore;
    return *needed <= *seen ? HoldOutlook::atEdge : HoldOutlook::beyondSeen;
}

} // namespace holdband::analysis
