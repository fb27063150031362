#include "ui/charts/panel.h"

#include "ui/theme/card.h"
#include "ui/words/words.h"

#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>
#include <utility>

namespace holdband::ui {

namespace {

constexpr double snapPixels = 4.0; ///< closer than this, the pointer snaps to a reading
constexpr double leastMark = 4.0;  ///< pixels; a shorter drag is a click

} // namespace

ChartPanel::ChartPanel(TimeView& time, QWidget* parent) : QWidget(parent), m_time(&time)
{
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleDescription(Words::tr(
        "Arrow keys pan, plus and minus zoom, 0 shows all, Shift and arrows move the pointer, "
        "Ctrl and arrows lead it from reading to reading, M marks a span from the pointer on, and "
        "M again ends it"));
    m_settle.setSingleShot(true);
    m_settle.setInterval(150);
    connect(&m_settle, &QTimer::timeout, this, &ChartPanel::dataChanged);
    connect(&time, &TimeView::shownChanged, this, &ChartPanel::shownMoved);
    connect(&time, &TimeView::pointerChanged, this, qOverload<>(&QWidget::update));
    connect(&time.mark(), &SpanMark::changed, this, qOverload<>(&QWidget::update));
    connect(&time.mark(), &SpanMark::wantedChanged, this,
            [this](bool wanted) { setCursor(wanted ? Qt::IBeamCursor : Qt::ArrowCursor); });
}

void ChartPanel::setChart(const RunChart* chart)
{
    plot().setChart(chart);
    dataChanged();
}

void ChartPanel::setHeading(const QString& heading)
{
    plot().setHeading(heading);
    setAccessibleName(heading);
    dataChanged();
}

void ChartPanel::setTimeLabels(bool wanted)
{
    plot().setTimeLabels(wanted);
    dataChanged();
}

void ChartPanel::dataChanged()
{
    m_stale = true;
    update();
}

void ChartPanel::shownMoved()
{
    m_settle.start();
    dataChanged();
}

PanelPlace ChartPanel::place() const
{
    return {QSizeF(size()), m_time->shown(), m_time->window().all()};
}

PlotMap ChartPanel::map() const
{
    return plot().map(place(), font());
}

PictureLook ChartPanel::look() const
{
    PictureLook look;
    look.scheme = schemeOf(palette());
    look.font = font();
    look.moving = m_settle.isActive();
    look.columns = devicePixelRatioF();
    return look;
}

void ChartPanel::renderPicture()
{
    m_picture = cardPicture(*this);
    QPainter painter(&m_picture);
    plot().plot(place(), look()).draw(painter);
    m_stale = false;
}

void ChartPanel::paintCrosshair(QPainter& painter, const PlotMap& map)
{
    const std::optional<Instant> pointer = m_time->pointer();
    if (!pointer || *pointer < map.shown.start || *pointer > map.shown.end)
        return;
    painter.setPen(QPen(coloursOf(*this).text, 1.0, Qt::DashLine));
    const double x = std::round(map.x(*pointer)) + 0.5;
    painter.drawLine(QPointF(x, map.plot.top()), QPointF(x, map.plot.bottom()));
}

void ChartPanel::paintMark(QPainter& painter, const PlotMap& map)
{
    const std::optional<Span> marked = m_time->mark().span();
    if (!marked)
        return;
    const double left = std::round(std::max(map.x(marked->start), map.plot.left())) + 0.5;
    const double right = std::round(std::min(map.x(marked->end), map.plot.right())) + 0.5;
    if (right < left)
        return; // not in the shown part
    QColor ink = coloursOf(*this).text;
    const QRectF band(QPointF(left, map.plot.top()), QPointF(right, map.plot.bottom()));
    painter.setPen(QPen(ink, 1.0));
    painter.drawLine(band.topLeft(), band.bottomLeft());
    painter.drawLine(band.topRight(), band.bottomRight());
    ink.setAlphaF(0.16f);
    painter.fillRect(band, ink);
}

Instant ChartPanel::instantInside(double x) const
{
    const PlotMap plotted = map();
    return plotted.instantAt(std::clamp(x, plotted.plot.left(), plotted.plot.right()));
}

void ChartPanel::paintEvent(QPaintEvent*)
{
    if (m_stale || m_picture.size() != size() * devicePixelRatioF())
        renderPicture();
    QPainter painter(this);
    painter.drawPixmap(0, 0, m_picture);
    const PlotMap plotted = map();
    paintMark(painter, plotted);
    paintCrosshair(painter, plotted);
    if (!hasFocus())
        return;
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(coloursOf(*this).focus, 2.0));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), spacing::radius,
                            spacing::radius);
}

void ChartPanel::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange)
        dataChanged();
}

void ChartPanel::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    m_stale = true;
}

void ChartPanel::wheelEvent(QWheelEvent* event)
{
    const QPoint delta = event->angleDelta();
    if (event->modifiers().testFlag(Qt::ShiftModifier) || (delta.y() == 0 && delta.x() != 0))
        m_time->moveByShare(-(delta.y() + delta.x()) / 120.0 * 0.1);
    else
        m_time->zoomAbout(map().instantAt(event->position().x()), std::pow(0.8, delta.y() / 120.0));
    event->accept();
}

void ChartPanel::mousePressEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton)
        return;
    if (m_time->mark().isWanted() || event->modifiers().testFlag(Qt::ShiftModifier)) {
        m_markDragging = true;
        return m_time->mark().begin(instantInside(event->position().x()));
    }
    m_dragging = true;
    m_dragX = event->position().x();
}

void ChartPanel::mouseMoveEvent(QMouseEvent* event)
{
    const PlotMap plotted = map();
    const double x = event->position().x();
    if (m_markDragging)
        return m_time->mark().follow(instantInside(x));
    if (m_dragging) {
        m_time->moveBy(plotted.instantAt(m_dragX) - plotted.instantAt(x));
        m_dragX = x;
        return;
    }
    const bool inside = x >= plotted.plot.left() && x <= plotted.plot.right();
    if (inside)
        m_time->pointAt(plotted.instantAt(x),
                        plotted.instantAt(x + snapPixels) - plotted.instantAt(x));
    else
        m_time->setPointer(std::nullopt);
}

void ChartPanel::mouseReleaseEvent(QMouseEvent*)
{
    m_dragging = false;
    if (std::exchange(m_markDragging, false)) {
        const double left = map().plot.left();
        return m_time->mark().finish(instantInside(left + leastMark) - instantInside(left));
    }
    dataChanged();
}

void ChartPanel::mouseDoubleClickEvent(QMouseEvent*)
{
    m_dragging = false;
    m_time->showAll();
}

void ChartPanel::leaveEvent(QEvent*)
{
    m_time->setPointer(std::nullopt);
}

void ChartPanel::keyPressEvent(QKeyEvent* event)
{
    if (!m_time->takeKey(*event))
        QWidget::keyPressEvent(event);
}

} // namespace holdband::ui
