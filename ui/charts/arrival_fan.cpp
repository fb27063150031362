#include "ui/charts/arrival_fan.h"

#include <algorithm>
#include <cmath>

namespace holdband::ui {

namespace {

/// How far a fan goes whose latest time is not known: twice as far as its soonest.
constexpr double openFanLength = 2.0;

double endOfFan(const ArrivalFan& fan)
{
    const double length =
        fan.highMs ? *fan.highMs - fan.nowMs : openFanLength * (fan.lowMs - fan.nowMs);
    return fan.nowMs + std::min(length, static_cast<double>(longestFan.count()));
}

QColor fanFill(const ArrivalFan& fan, const Colours& colours)
{
    QColor pale = setupLine(fan.setup, colours);
    pale.setAlpha(46);
    return pale;
}

QPen middlePen(const ArrivalFan& fan, const Colours& colours)
{
    return {setupLine(fan.setup, colours), 1.4, Qt::DashLine};
}

} // namespace

std::optional<ArrivalFan> fanOf(const results::RunReview& review, Instant origin)
{
    const auto& arrival = review.arrival;
    if (!arrival || !arrival->low)
        return std::nullopt;
    const TemperatureUnit unit = review.settings.temperatureUnit();
    const auto ms = [&](Instant at) { return static_cast<double>((at - origin).count()); };
    const auto msOf = [&](const std::optional<Instant>& at) {
        return at ? std::optional(ms(*at)) : std::nullopt;
    };
    ArrivalFan fan;
    fan.setup = review.setupIndex;
    fan.nowMs = ms(arrival->now);
    fan.beer = valueIn(arrival->beer, unit);
    fan.target = valueIn(arrival->target, unit);
    fan.edge = valueIn(arrival->edge, unit);
    fan.tolerance = std::abs(fan.edge - fan.target);
    fan.lowMs = ms(*arrival->low);
    fan.middleMs = msOf(arrival->middle);
    fan.highMs = msOf(arrival->high);
    fan.endMs = endOfFan(fan);
    return fan;
}

QPolygonF outlineOf(const ArrivalFan& fan)
{
    QPolygonF outline{{QPointF(fan.nowMs, fan.beer), QPointF(fan.lowMs, fan.edge)}};
    if (fan.highMs)
        return outline << QPointF(*fan.highMs, fan.edge);
    return outline << QPointF(fan.endMs, fan.edge) << QPointF(fan.endMs, fan.beer);
}

void addFan(Plot& plot, const ArrivalFan& fan)
{
    plot.addArea(outlineOf(fan), fanFill(fan, plot.colours()));
    if (fan.middleMs)
        plot.addLine({{QPointF(fan.nowMs, fan.beer), QPointF(*fan.middleMs, fan.edge)}},
                     middlePen(fan, plot.colours()));
}

QPen fanKeyPen(const ArrivalFan& fan, const Colours& colours)
{
    constexpr double asWideAsText = 7.0;
    return fan.middleMs ? middlePen(fan, colours)
                        : QPen(fanFill(fan, colours), asWideAsText, Qt::SolidLine, Qt::FlatCap);
}

} // namespace holdband::ui
