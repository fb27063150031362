#include "ui/charts/weather_points.h"

#include "core/text/quantities.h"
#include "ui/words/words.h"

#include <QFontMetricsF>
#include <algorithm>

namespace holdband::ui {

using analysis::LiftModel;

WeatherPicture::WeatherPicture(const results::SameWeather& weather, TemperatureUnit unit,
                               PairSides sides)
    : m_a(weather.a.model), m_b(weather.b.model), m_unit(unit), m_sides(std::move(sides))
{
    if (weather.any && weather.hold)
        m_reference = weather.hold->liftK;
}

double WeatherPicture::inUnit(double kelvins) const
{
    return valueIn(TemperatureDifference::kelvins(kelvins), m_unit);
}

ValueRange WeatherPicture::lifts() const
{
    double low = m_reference.value_or(0.0);
    double high = std::max(low, 1e-3);
    for (const LiftModel* model : {&m_a, &m_b}) {
        if (model->pairs.empty())
            continue;
        low = std::min(low, model->leastLift);
        high = std::max(high, model->mostLift);
    }
    const double margin = 0.05 * (high - std::min(low, 0.0));
    return {inUnit(std::min(low, 0.0)), inUnit(high + margin)};
}

ValueRange WeatherPicture::powers() const
{
    double most = 1.0;
    for (const LiftModel* model : {&m_a, &m_b}) {
        for (const analysis::WeatherPair& pair : model->pairs)
            most = std::max(most, pair.watts);
    }
    return {0.0, 1.1 * most};
}

/// The line over the range of recorded lifts, and the 95 % interval of the mean.
void WeatherPicture::addModel(Plot& plot, const LiftModel& model, bool first) const
{
    if (!model.interval)
        return;
    constexpr int pieces = 24;
    QPolygonF line, upper, lower;
    for (int i = 0; i <= pieces; ++i) {
        const double lift = model.leastLift + (model.mostLift - model.leastLift) * i / pieces;
        const analysis::Interval95 mean = model.interval->meanResponse(lift);
        line << QPointF(inUnit(lift), mean.value);
        upper << QPointF(inUnit(lift), mean.high());
        lower << QPointF(inUnit(lift), mean.low());
    }
    const QColor colour = m_sides.colour(first, plot.colours());
    plot.addRibbon(upper, lower, paleOf(colour, 50));
    plot.addLine(line, QPen(colour, 2.0, penStyle(first)));
}

/// A's points are discs, B's squares.
void WeatherPicture::addPoints(Plot& plot, const LiftModel& model, bool first) const
{
    PlotDots dots;
    dots.fill = m_sides.colour(first, plot.colours());
    dots.edge = QPen(plot.colours().card, 0.8);
    dots.shape = first ? DotShape::disc : DotShape::square;
    dots.size = first ? 6.8 : 6.0;
    for (const analysis::WeatherPair& pair : model.pairs)
        dots.points << QPointF(inUnit(pair.liftK), pair.watts);
    plot.addDots(std::move(dots));
}

void WeatherPicture::addReference(Plot& plot) const
{
    if (!m_reference)
        return;
    plot.addUpright(inUnit(*m_reference), QPen(plot.colours().muted, 1.0, Qt::DashLine));
    const double x = plot.x(inUnit(*m_reference));
    const QString text = Words::tr("compared here");
    const double width = QFontMetricsF(plot.small()).horizontalAdvance(text);
    const bool left = x + width + 6.0 > plot.area().right();
    plot.addLabel(
        {text, {left ? x - width - 4.0 : x + 4.0, plot.area().top() + 10.0}, plot.colours().muted});
}

std::vector<Plot> WeatherPicture::plots(QSizeF size, const PictureLook& look) const
{
    Plot plot(QRectF({}, size), look);
    plot.leaveBelow(2);
    plot.setRanges(lifts(), powers());
    plot.setHeading(Words::tr("Mean power between readings, W"),
                    Words::tr("● A %1 · ■ B %2").arg(m_sides.a, m_sides.b));
    plot.addUpAxis();
    plot.addAcrossAxis(Words::tr("room warmer than the beer, %1").arg(shown(unitText(m_unit))));
    addReference(plot);
    addModel(plot, m_a, true);
    addModel(plot, m_b, false);
    addPoints(plot, m_a, true);
    addPoints(plot, m_b, false);
    return {plot};
}

} // namespace holdband::ui
