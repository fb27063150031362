#include "ui/plans/plan_layout.h"

#include <algorithm>
#include <cmath>

namespace holdband::ui {

namespace {

constexpr double usualSettling = 48.0; ///< hours, as the analysis allows
constexpr double leastOpenLength = 24.0;

/// The length drawn for a stage without one.
double openLength(const Schedule& schedule)
{
    double known = 0.0;
    for (const Stage& stage : schedule)
        known += stage.length ? stage.length->count() : 0.0;
    return std::max(leastOpenLength, 0.2 * known);
}

double settlingOf(const Stage& stage, bool jumps, double length)
{
    if (stage.kind == StageKind::ramp || !jumps)
        return 0.0;
    const double allowed = stage.settleAllowed ? stage.settleAllowed->count() : usualSettling;
    return std::clamp(allowed, 0.0, length);
}

} // namespace

std::vector<DrawnStage> drawnStages(const Schedule& schedule, const std::vector<int>& rows,
                                    const std::optional<TemperatureDifference>& tolerance)
{
    const double open = openLength(schedule);
    std::vector<DrawnStage> drawn;
    double at = 0.0;
    for (std::size_t i = 0; i < schedule.size(); ++i) {
        const Stage& stage = schedule[i];
        const bool jumps = i == 0 || schedule[i - 1].target != stage.target;
        DrawnStage next;
        next.row = i < rows.size() ? rows[i] : static_cast<int>(i);
        next.stage = stage;
        next.from = at;
        next.to = at + (stage.length && stage.length->count() > 0.0 ? stage.length->count() : open);
        next.endKnown = stage.length && stage.until == StageUntil::hours;
        const bool ramps = stage.kind == StageKind::ramp && i > 0;
        next.startTarget = ramps ? schedule[i - 1].target : stage.target;
        next.tolerance = stage.tolerance ? stage.tolerance : tolerance;
        next.settling = settlingOf(stage, jumps, next.to - next.from);
        at = next.to;
        drawn.push_back(std::move(next));
    }
    return drawn;
}

PlanMap mapFor(const std::vector<DrawnStage>& stages, const QRectF& plot)
{
    PlanMap map;
    map.plot = plot;
    if (stages.empty())
        return map;
    map.hours = std::max(stages.back().to, 1.0);
    double low = stages.front().stage.target.celsius();
    double high = low;
    for (const DrawnStage& drawn : stages) {
        const double band = drawn.tolerance ? std::abs(drawn.tolerance->kelvins()) : 0.0;
        for (const Temperature target : {drawn.startTarget, drawn.stage.target}) {
            low = std::min(low, target.celsius() - band);
            high = std::max(high, target.celsius() + band);
        }
    }
    const double air = std::max(1.5, 0.12 * (high - low));
    map.low = low - air;
    map.high = high + air;
    return map;
}

std::optional<PlanHandle> handleAt(const std::vector<DrawnStage>& stages, const PlanMap& map,
                                   QPointF place)
{
    if (!map.plot.adjusted(-6, -6, 6, 6).contains(place))
        return std::nullopt;
    for (std::size_t i = 0; i < stages.size(); ++i) {
        if (stages[i].endKnown && std::abs(map.x(stages[i].to) - place.x()) <= 5.0)
            return PlanHandle{PlanHandle::Part::end, static_cast<int>(i)};
    }
    for (std::size_t i = 0; i < stages.size(); ++i) {
        const DrawnStage& drawn = stages[i];
        const double left = map.x(drawn.from);
        const double right = map.x(drawn.to);
        if (place.x() < left || place.x() > right)
            continue;
        const double share = right > left ? (place.x() - left) / (right - left) : 1.0;
        const double y0 = map.y(drawn.startTarget.celsius());
        const double y = y0 + share * (map.y(drawn.stage.target.celsius()) - y0);
        if (std::abs(y - place.y()) <= 8.0)
            return PlanHandle{PlanHandle::Part::target, static_cast<int>(i)};
    }
    return std::nullopt;
}

Temperature snappedTarget(double celsius, TemperatureUnit unit)
{
    const double value = valueIn(Temperature::celsius(celsius), unit);
    return temperatureFrom(std::round(value * 2.0) / 2.0, unit);
}

Hours snappedLength(double hours, double pixelsPerHour)
{
    const double step = pixelsPerHour >= 3.0 ? 1.0 : pixelsPerHour >= 0.5 ? 6.0 : 12.0;
    return Hours{std::max(step, std::round(hours / step) * step)};
}

} // namespace holdband::ui
