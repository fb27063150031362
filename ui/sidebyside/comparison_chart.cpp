#include "ui/sidebyside/comparison_chart.h"

#include "ui/charts/panel.h"
#include "ui/charts/ticks.h"
#include "ui/theme/card.h"
#include "ui/words/words.h"

#include <QPainter>
#include <cmath>

namespace holdband::ui {

ComparisonChart::ComparisonChart(QWidget* parent) : QWidget(parent)
{
    setMinimumHeight(240);
    setAccessibleName(QStringLiteral("Energy of both over the same elapsed time, kWh"));
}

void ComparisonChart::setCurve(std::vector<analysis::RatioPoint> curve, int setupA, int setupB)
{
    m_curve = std::move(curve);
    m_setupA = setupA;
    m_setupB = setupB;
    m_most = 0.0;
    for (const analysis::RatioPoint& point : m_curve)
        m_most = std::max({m_most, point.a.value, point.b.value});
    const double values = m_most;
    for (const analysis::RatioPoint& point : m_curve) {
        for (const Which which : {Which::a, Which::b})
            m_most =
                std::max(m_most, std::min(figure(point, which).high.value_or(0.0), 1.4 * values));
    }
    m_most = m_most > 0.0 ? m_most * 1.06 : 1.0;
    setVisible(m_curve.size() > 1);
    update();
}

const analysis::Bounded& ComparisonChart::figure(const analysis::RatioPoint& point,
                                                 Which which) const
{
    return which == Which::a ? point.a : point.b;
}

QRectF ComparisonChart::plot() const
{
    const int line = fontMetrics().height();
    return QRectF(rect()).adjusted(
        ChartPanel::leftMargin, line + 16.0,
        -(fontMetrics().horizontalAdvance(QStringLiteral("A 000.0")) + 16.0), -(line + 8.0));
}

QPointF ComparisonChart::place(double hours, double kwh) const
{
    const QRectF area = plot();
    const double all = m_curve.empty() ? 1.0 : m_curve.back().elapsedHours;
    return {area.left() + hours / all * area.width(), area.bottom() - kwh / m_most * area.height()};
}

void ComparisonChart::paintAxes(QPainter& painter)
{
    const Colours& colours = coloursOf(*this);
    const QRectF area = plot();
    painter.setFont(smallFont(*this));
    const QFontMetrics metrics(painter.font());
    const auto values = valueTicks(0.0, m_most, std::max(2, static_cast<int>(area.height() / 34)));
    for (const double value : values) {
        const double y = std::round(place(0.0, value).y()) + 0.5;
        painter.setPen(colours.grid);
        painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y));
        painter.setPen(colours.muted);
        painter.drawText(QRectF(0, y - 10, area.left() - 7, 20), Qt::AlignRight | Qt::AlignVCenter,
                         numberText(value, decimalsOf(values)));
    }
    const double days = m_curve.back().elapsedHours / 24.0;
    for (const double day :
         valueTicks(0.0, days, std::max(2, static_cast<int>(area.width() / 70)))) {
        const QString label = QStringLiteral("day %1").arg(numberText(day, days < 3.0 ? 1 : 0));
        const double x = place(day * 24.0, 0.0).x();
        painter.drawText(QPointF(x - metrics.horizontalAdvance(label) / 2.0,
                                 area.bottom() + 4 + metrics.ascent()),
                         label);
    }
}

void ComparisonChart::paintSide(QPainter& painter, Which which, int setup, const QString& name)
{
    QPolygonF line;
    QPolygonF ribbon;
    for (const analysis::RatioPoint& point : m_curve) {
        line << place(point.elapsedHours, figure(point, which).value);
        if (const auto high = figure(point, which).high; high && std::isfinite(*high))
            ribbon << place(point.elapsedHours, *high);
    }
    for (auto point = m_curve.rbegin(); point != m_curve.rend(); ++point) {
        if (const auto low = figure(*point, which).low; low && std::isfinite(*low))
            ribbon << place(point->elapsedHours, *low);
    }
    QColor pale = setupColour(setup);
    pale.setAlpha(60);
    painter.setPen(Qt::NoPen);
    painter.setBrush(pale);
    painter.save();
    painter.setClipRect(plot());
    painter.drawPolygon(ribbon);
    painter.restore();
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(setupColour(setup), 2.0, which == Which::a ? Qt::SolidLine : Qt::DashLine));
    painter.drawPolyline(line);
    QFont bold = font();
    bold.setWeight(QFont::DemiBold);
    painter.setFont(bold);
    painter.setPen(setupText(setup, coloursOf(*this)));
    painter.drawText(
        line.last() + QPointF(7, 4),
        QStringLiteral("%1 %2").arg(name, numberText(figure(m_curve.back(), which).value, 1)));
}

void ComparisonChart::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setFont(font());
    paintCard(painter, *this);
    QFont bold = font();
    bold.setWeight(QFont::DemiBold);
    painter.setFont(bold);
    painter.setPen(coloursOf(*this).text);
    painter.drawText(QPointF(spacing::card, 8 + fontMetrics().ascent()),
                     QStringLiteral("Energy since pitching, kWh"));
    if (m_curve.size() < 2)
        return;
    paintAxes(painter);
    painter.setRenderHint(QPainter::Antialiasing);
    paintSide(painter, Which::a, m_setupA, QStringLiteral("A"));
    paintSide(painter, Which::b, m_setupB, QStringLiteral("B"));
}

} // namespace holdband::ui
