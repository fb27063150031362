#include "ui/charts/weather_points.h"

#include "core/text/quantities.h"
#include "ui/charts/clipping.h"
#include "ui/charts/plot_frame.h"
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
void WeatherPicture::paintModel(QPainter& painter, const PlotFrame& frame, const LiftModel& model,
                                bool first, const PictureLook& look) const
{
    if (!model.fit)
        return;
    constexpr int pieces = 24;
    QPolygonF line, upper, lower;
    for (int i = 0; i <= pieces; ++i) {
        const double lift = model.leastLift + (model.mostLift - model.leastLift) * i / pieces;
        const analysis::Interval95 mean = model.fit->meanResponse(lift);
        const double x = frame.x(inUnit(lift));
        line << QPointF(x, frame.y(mean.value));
        upper << QPointF(x, frame.y(mean.high()));
        lower << QPointF(x, frame.y(mean.low()));
    }
    std::reverse(lower.begin(), lower.end());
    QColor pale = m_sides.colour(first, look.colours());
    pale.setAlpha(50);
    painter.setPen(Qt::NoPen);
    painter.setBrush(pale);
    painter.drawPolygon(areaInside(upper + lower, frame.plot()));
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(m_sides.colour(first, look.colours()), 2.0, penStyle(first)));
    for (const QPolygonF& part : lineInside(line, frame.plot()))
        painter.drawPolyline(part);
}

/// A's points are discs, B's squares.
void WeatherPicture::paintPoints(QPainter& painter, const PlotFrame& frame, const LiftModel& model,
                                 bool first, const PictureLook& look) const
{
    painter.setPen(QPen(look.colours().card, 0.8));
    painter.setBrush(m_sides.colour(first, look.colours()));
    for (const analysis::WeatherPair& pair : model.pairs) {
        const QPointF at(frame.x(inUnit(pair.liftK)), frame.y(pair.watts));
        if (first)
            painter.drawEllipse(at, 3.4, 3.4);
        else
            painter.drawRect(QRectF(at.x() - 3.0, at.y() - 3.0, 6.0, 6.0));
    }
}

void WeatherPicture::paintReference(QPainter& painter, const PlotFrame& frame,
                                    const PictureLook& look) const
{
    if (!m_reference)
        return;
    const double x = frame.x(inUnit(*m_reference));
    painter.setPen(QPen(look.colours().muted, 1.0, Qt::DashLine));
    painter.drawLine(QPointF(x, frame.plot().top()), QPointF(x, frame.plot().bottom()));
    painter.setFont(frame.small());
    const QString words = Words::tr("compared here");
    const double width = QFontMetricsF(frame.small()).horizontalAdvance(words);
    const bool left = x + width + 6.0 > frame.plot().right();
    painter.drawText(QPointF(left ? x - width - 4.0 : x + 4.0, frame.plot().top() + 10.0), words);
}

void WeatherPicture::paint(QPainter& painter, QSizeF size, const PictureLook& look) const
{
    PlotFrame frame(painter, QRectF({}, size), powers(), look);
    frame.setAcross(lifts());
    frame.leaveBelow(2);
    frame.paintHeading(Words::tr("Mean power between readings, W"),
                       Words::tr("● A %1 · ■ B %2").arg(m_sides.a, m_sides.b));
    frame.paintValueAxis();
    frame.paintAcross(Words::tr("room warmer than the beer, %1").arg(shown(unitText(m_unit))));
    painter.setRenderHint(QPainter::Antialiasing);
    paintReference(painter, frame, look);
    paintModel(painter, frame, m_a, true, look);
    paintModel(painter, frame, m_b, false, look);
    paintPoints(painter, frame, m_a, true, look);
    paintPoints(painter, frame, m_b, false, look);
}

} // namespace holdband::ui
