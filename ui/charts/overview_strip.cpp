#include "ui/charts/overview_strip.h"

#include "core/text/times.h"
#include "ui/charts/panel.h"
#include "ui/theme/card.h"
#include "ui/words/words.h"

#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace holdband::ui {

OverviewStrip::OverviewStrip(TimeView& time, QWidget* parent) : QWidget(parent), m_time(&time)
{
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(Words::tr("The whole run, with a frame around what is shown"));
    setToolTip(Words::tr("The whole run. Drag the frame, turn the wheel, or double-click for "
                         "all of it."));
    connect(&time, &TimeView::shownChanged, this, [this] {
        const Span seen = m_time->shown();
        if (m_chart)
            setAccessibleDescription(Words::tr("shown: %1 to %2")
                                         .arg(ui::shown(localShortText(seen.start, m_chart->zone)),
                                              ui::shown(localShortText(seen.end, m_chart->zone))));
        update();
    });
}

void OverviewStrip::setChart(const RunChart* chart)
{
    m_chart = chart;
    update();
}

QSize OverviewStrip::sizeHint() const
{
    return {200, fontMetrics().height() + 18};
}

QRectF OverviewStrip::plot() const
{
    return {static_cast<double>(ChartPanel::leftMargin), 5.0,
            std::max(10.0, width() - ChartPanel::leftMargin - ChartPanel::rightMargin * 1.0),
            height() - 10.0};
}

double OverviewStrip::x(Instant at) const
{
    const Span all = m_time->window().all();
    const double share = all.empty() ? 0.0 : hoursBetween(all.start, at) / all.hours();
    return plot().left() + share * plot().width();
}

Instant OverviewStrip::instantAt(double x) const
{
    const Span all = m_time->window().all();
    const double share = std::clamp((x - plot().left()) / plot().width(), 0.0, 1.0);
    return all.start + std::chrono::round<Milliseconds>((all.end - all.start) * share);
}

QRectF OverviewStrip::frame() const
{
    const Span seen = m_time->shown();
    const double left = x(seen.start);
    const double width = std::max(x(seen.end) - left, 6.0); // wide enough to be dragged
    return {std::min(left, plot().right() - width), plot().top(), width, plot().height()};
}

void OverviewStrip::paintBeer(QPainter& painter) const
{
    const ChartLine* beer = m_chart->line(LineRole::beer);
    if (!beer || beer->track.empty())
        return;
    const auto [lowest, highest] = beer->pyramid.extremes(beer->track, 0, beer->track.value.size());
    const double least = beer->track.value[lowest];
    const double spread = std::max(beer->track.value[highest] - least, 1e-9);
    const QRectF area = plot().adjusted(0, 2, 0, -2);
    const double end = m_chart->msOf(m_chart->span.end);
    painter.setPen(QPen(coloursOf(*this).beer, 1.0));
    for (const Polyline& line :
         decimate(beer->track, 0.0, end, static_cast<int>(area.width()), &beer->pyramid)) {
        QPolygonF points;
        for (const DrawnPoint& point : line)
            points << QPointF(x(m_chart->instantOf(point.ms)),
                              area.bottom() - (point.value - least) / spread * area.height());
        painter.drawPolyline(points);
    }
}

void OverviewStrip::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    paintCard(painter, *this);
    if (!m_chart)
        return;
    const Colours& colours = coloursOf(*this);
    painter.setFont(smallFont(*this));
    painter.setPen(colours.muted);
    painter.drawText(QRectF(0, 0, ChartPanel::leftMargin - 7, height()),
                     Qt::AlignRight | Qt::AlignVCenter, Words::tr("all"));
    painter.setRenderHint(QPainter::Antialiasing);
    paintBeer(painter);
    QColor veil = colours.card;
    veil.setAlpha(170);
    const QRectF seen = frame();
    painter.fillRect(QRectF(plot().topLeft(), QPointF(seen.left(), plot().bottom())), veil);
    painter.fillRect(QRectF(QPointF(seen.right(), plot().top()), plot().bottomRight()), veil);
    painter.setPen(QPen(hasFocus() ? colours.focus : colours.fieldEdge, hasFocus() ? 2.0 : 1.2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(seen, 3, 3);
}

void OverviewStrip::centreOn(double x)
{
    const Span seen = m_time->shown();
    m_time->moveBy(instantAt(x) - (seen.start + (seen.end - seen.start) / 2));
}

void OverviewStrip::mousePressEvent(QMouseEvent* event)
{
    const QRectF seen = frame();
    const double x = event->position().x();
    const bool taken = x >= seen.left() && x <= seen.right();
    m_grab = taken ? x - seen.center().x() : 0.0;
    if (!taken)
        centreOn(x);
}

void OverviewStrip::mouseMoveEvent(QMouseEvent* event)
{
    if (event->buttons().testFlag(Qt::LeftButton))
        centreOn(event->position().x() - m_grab);
}

void OverviewStrip::mouseDoubleClickEvent(QMouseEvent*)
{
    m_time->showAll();
}

void OverviewStrip::wheelEvent(QWheelEvent* event)
{
    m_time->zoomAbout(instantAt(event->position().x()),
                      std::pow(0.8, event->angleDelta().y() / 120.0));
    event->accept();
}

void OverviewStrip::keyPressEvent(QKeyEvent* event)
{
    if (!m_time->takeKey(*event))
        QWidget::keyPressEvent(event);
}

} // namespace holdband::ui
