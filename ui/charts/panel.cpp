#include "ui/charts/panel.h"

#include "ui/theme/card.h"
#include "ui/words/words.h"

#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>
#include <cmath>

namespace holdband::ui {

namespace {

constexpr double snapPixels = 4.0; ///< closer than this, the pointer snaps to a reading

} // namespace

ChartPanel::ChartPanel(TimeView& time, QWidget* parent) : QWidget(parent), m_time(&time)
{
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleDescription(Words::tr(
        "Arrow keys pan, plus and minus zoom, 0 shows all, Shift and arrows move the pointer, "
        "Ctrl and arrows lead it from reading to reading"));
    m_settle.setSingleShot(true);
    m_settle.setInterval(150);
    connect(&m_settle, &QTimer::timeout, this, &ChartPanel::dataChanged);
    connect(&time, &TimeView::shownChanged, this, &ChartPanel::shownMoved);
    connect(&time, &TimeView::pointerChanged, this, qOverload<>(&QWidget::update));
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

void ChartPanel::paintEvent(QPaintEvent*)
{
    if (m_stale || m_picture.size() != size() * devicePixelRatioF())
        renderPicture();
    QPainter painter(this);
    painter.drawPixmap(0, 0, m_picture);
    paintCrosshair(painter, map());
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
    m_dragging = true;
    m_dragX = event->position().x();
}

void ChartPanel::mouseMoveEvent(QMouseEvent* event)
{
    const PlotMap plotted = map();
    const double x = event->position().x();
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
