#include "ui/plans/plan_painting.h"

#include "core/text/quantities.h"
#include "ui/charts/ticks.h"
#include "ui/theme/colours.h"
#include "ui/words/words.h"

#include <array>
#include <cmath>

namespace holdband::ui {

namespace {

/// The data for painting a stage.
struct Brush {
    QPainter& painter;
    const PlanPicture& picture;
    const Colours& colours;
    QFontMetricsF metrics;

    const PlanMap& map() const { return picture.map; }
};

double dayStep(double hours, double width, double labelWidth)
{
    constexpr std::array<double, 8> steps{1, 2, 4, 7, 14, 28, 56, 112};
    for (const double step : steps) {
        if (width * step * 24.0 / hours >= labelWidth)
            return step;
    }
    return 364;
}

void paintDays(const Brush& brush)
{
    const PlanMap& map = brush.map();
    const double step =
        dayStep(map.hours, map.plot.width(), brush.metrics.horizontalAdvance("day 000") + 14.0);
    double free = map.plot.left(); // where the last text ended
    for (double day = 0.0; day * 24.0 <= map.hours + 1e-6; day += step) {
        const double x = map.x(day * 24.0);
        brush.painter.setPen(QPen(brush.colours.grid, 1.0));
        brush.painter.drawLine(QPointF(x, map.plot.top()), QPointF(x, map.plot.bottom()));
        const QString words = day == 0.0 ? Words::tr("pitched") : Words::tr("day %1").arg(day);
        const double width = brush.metrics.horizontalAdvance(words);
        const double left = std::clamp(x - width / 2.0, map.plot.left(), map.plot.right() - width);
        if (left < free)
            continue;
        free = left + width + 8.0;
        brush.painter.setPen(brush.colours.muted);
        brush.painter.drawText(
            QRectF(left, map.plot.bottom() + 3.0, width + 2.0, brush.metrics.height()), words);
    }
}

void paintDegrees(const Brush& brush)
{
    const PlanMap& map = brush.map();
    const TemperatureUnit unit = brush.picture.format.temperature();
    const auto ticks = valueTicks(
        valueIn(Temperature::celsius(map.low), unit), valueIn(Temperature::celsius(map.high), unit),
        std::max(2, static_cast<int>(map.plot.height() / (2.0 * brush.metrics.height()))));
    for (const double tick : ticks) {
        const double y = map.y(temperatureFrom(tick, unit).celsius());
        brush.painter.setPen(QPen(brush.colours.grid, 1.0));
        brush.painter.drawLine(QPointF(map.plot.left(), y), QPointF(map.plot.right(), y));
        brush.painter.setPen(brush.colours.muted);
        brush.painter.drawText(QRectF(0.0, y - brush.metrics.height() / 2.0, map.plot.left() - 6.0,
                                      brush.metrics.height()),
                               Qt::AlignRight | Qt::AlignVCenter,
                               numberText(tick, decimalsOf(ticks)) + QLatin1Char(' ') +
                                   shown(unitText(unit)));
    }
}

QPolygonF bandOf(const PlanMap& map, const DrawnStage& drawn, double tolerance)
{
    const double first = drawn.startTarget.celsius();
    const double last = drawn.stage.target.celsius();
    return QPolygonF({{map.x(drawn.from), map.y(first + tolerance)},
                      {map.x(drawn.to), map.y(last + tolerance)},
                      {map.x(drawn.to), map.y(last - tolerance)},
                      {map.x(drawn.from), map.y(first - tolerance)}});
}

void paintGround(const Brush& brush, const DrawnStage& drawn)
{
    const PlanMap& map = brush.map();
    const QRectF column(map.x(drawn.from), map.plot.top(), map.x(drawn.to) - map.x(drawn.from),
                        map.plot.height());
    if (drawn.row == brush.picture.chosenRow) {
        QColor veil = brush.colours.focus;
        veil.setAlpha(18);
        brush.painter.fillRect(column, veil);
    }
    if (drawn.settling > 0.0) {
        const QRectF settling(column.left(), column.top(),
                              map.x(drawn.from + drawn.settling) - column.left(), column.height());
        brush.painter.fillRect(settling, QBrush(brush.colours.hatch, Qt::BDiagPattern));
    }
    if (drawn.tolerance) {
        brush.painter.setPen(Qt::NoPen);
        brush.painter.setBrush(brush.colours.band);
        brush.painter.drawPolygon(bandOf(map, drawn, drawn.tolerance->kelvins()));
    }
}

void paintLine(const Brush& brush, const DrawnStage& drawn)
{
    const PlanMap& map = brush.map();
    const QPointF first(map.x(drawn.from), map.y(drawn.startTarget.celsius()));
    const QPointF last(map.x(drawn.to), map.y(drawn.stage.target.celsius()));
    brush.painter.setPen(QPen(brush.colours.target, 2.2));
    brush.painter.drawLine(first, last);
    brush.painter.setPen(
        QPen(brush.colours.muted, 1.0, drawn.endKnown ? Qt::SolidLine : Qt::DashLine));
    brush.painter.drawLine(QPointF(last.x(), map.plot.top()), QPointF(last.x(), map.plot.bottom()));
    brush.painter.setPen(QPen(brush.colours.target, 1.6));
    brush.painter.setBrush(brush.colours.card);
    const QPointF grip = drawn.stage.kind == StageKind::ramp ? last : (first + last) / 2.0;
    brush.painter.drawEllipse(grip, 4.0, 4.0);
    if (drawn.endKnown)
        brush.painter.drawRect(QRectF(last.x() - 2.5, map.plot.center().y() - 8.0, 5.0, 16.0));
}

QString endText(const DrawnStage& drawn, const UnitFormat& format)
{
    if (drawn.stage.until == StageUntil::turnedDown)
        return Words::tr("until turned down");
    if (drawn.stage.until == StageUntil::gravity && drawn.stage.untilGravity)
        return Words::tr("until %1")
            .arg(shown(gravityText(*drawn.stage.untilGravity, format.sign)));
    return drawn.endKnown ? QString() : Words::tr("to the end");
}

void paintLabel(const Brush& brush, const DrawnStage& drawn)
{
    const PlanMap& map = brush.map();
    const double left = map.x(drawn.from) + 4.0;
    const double width = map.x(drawn.to) - left - 2.0;
    if (width < 14.0)
        return;
    const auto elided = [&](const QString& words) {
        return brush.metrics.elidedText(words, Qt::ElideRight, width);
    };
    brush.painter.setPen(brush.colours.text);
    brush.painter.drawText(QRectF(left, 2.0, width, brush.metrics.height()),
                           elided(shown(drawn.stage.label)));
    const double half = (drawn.tolerance ? drawn.tolerance->kelvins() : 0.0);
    const double below = map.y(drawn.stage.target.celsius() - half) + 3.0;
    brush.painter.setPen(brush.colours.muted);
    const QRectF place(left, std::min(below, map.plot.bottom() - brush.metrics.height()), width,
                       brush.metrics.height());
    brush.painter.drawText(place, elided(endText(drawn, brush.picture.format)));
}

} // namespace

void paintPlan(QPainter& painter, const QWidget& widget, const PlanPicture& picture)
{
    const Brush brush{painter, picture, coloursOf(widget), QFontMetricsF(widget.font())};
    painter.setRenderHint(QPainter::Antialiasing);
    if (picture.stages.empty()) {
        painter.setPen(brush.colours.muted);
        painter.drawText(widget.rect(), Qt::AlignCenter, Words::tr("No stage yet: add one below."));
        return;
    }
    painter.save();
    painter.setClipRect(picture.map.plot.adjusted(-1, -1, 1, 1));
    for (const DrawnStage& drawn : picture.stages)
        paintGround(brush, drawn);
    painter.restore();
    paintDays(brush);
    paintDegrees(brush);
    for (const DrawnStage& drawn : picture.stages) {
        paintLine(brush, drawn);
        paintLabel(brush, drawn);
    }
}

} // namespace holdband::ui
