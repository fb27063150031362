#include "ui/charts/overview_strip.h"

#include "core/text/times.h"
#include "ui/charts/run_plot.h"
#include "ui/charts/track_series.h"
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
    m_stale = true;
    update();
}

QSize OverviewStrip::sizeHint() const
{
    return {200, fontMetrics().height() + 18};
}

QRectF OverviewStrip::plot() const
{
    const double right = endRoom(m_chart, font(), width());
    return {static_cast<double>(Plot::leftMargin), 5.0,
            std::max(10.0, width() - Plot::leftMargin - right), height() - 10.0};
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

/// The beer over the whole run.
Plot OverviewStrip::beerPlot() const
{
    PictureLook look;
    look.scheme = schemeOf(palette());
    look.font = font();
    look.columns = devicePixelRatioF();
    Plot drawn(rect(), look);
    const ChartLine* beer = m_chart->line(LineRole::beer);
    if (!beer || beer->track.empty() || m_time->window().all().empty())
        return drawn;
    const auto [lowest, highest] = beer->pyramid.extremes(beer->track, 0, beer->track.value.size());
    const double least = beer->track.value[lowest];
    const double greatest = std::max(beer->track.value[highest], least + 1e-9);
    drawn.setArea(plot().adjusted(0, 2, 0, -2));
    drawn.setRanges(shownMs(*m_chart, m_time->window().all()), {least, greatest});
    addTrack(drawn, beer->track, beer->pyramid,
             QPen(setupLine(m_chart->setup, look.colours()), 1.0));
    return drawn;
}

/// Drawn once for each change; while the axis moves only the frame is drawn again.
void OverviewStrip::renderPicture()
{
    m_picture = cardPicture(*this);
    if (!m_chart)
        return;
    QPainter painter(&m_picture);
    painter.setFont(smallFont(font()));
    painter.setPen(coloursOf(*this).muted);
    painter.drawText(QRectF(0, 0, Plot::leftMargin - 7, height()),
                     Qt::AlignRight | Qt::AlignVCenter, Words::tr("all"));
    beerPlot().draw(painter);
}

void OverviewStrip::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange)
        setChart(m_chart);
}

void OverviewStrip::paintEvent(QPaintEvent*)
{
    if (m_stale || m_picture.size() != size() * devicePixelRatioF())
        renderPicture();
    m_stale = false;
    QPainter painter(this);
    painter.drawPixmap(0, 0, m_picture);
    if (!m_chart)
        return;
    const Colours& colours = coloursOf(*this);
    painter.setRenderHint(QPainter::Antialiasing);
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
