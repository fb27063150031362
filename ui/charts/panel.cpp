#include "ui/charts/panel.h"

#include "ui/charts/ticks.h"
#include "ui/theme/card.h"
#include "ui/words/words.h"

#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>
#include <cmath>

namespace holdband::ui {

namespace {

constexpr double snapPixels = 4.0; ///< nearer than this the pointer stands on a reading

} // namespace

double PlotMap::x(Instant at) const
{
    const double all = static_cast<double>((shown.end - shown.start).count());
    const double since = static_cast<double>((at - shown.start).count());
    return plot.left() + (all > 0.0 ? since / all : 0.0) * plot.width();
}

double PlotMap::y(double value) const
{
    return plot.bottom() - (value - range.low) / (range.high - range.low) * plot.height();
}

Instant PlotMap::instantAt(double x) const
{
    const double share = plot.width() > 0.0 ? (x - plot.left()) / plot.width() : 0.0;
    return shown.start + std::chrono::round<Milliseconds>((shown.end - shown.start) * share);
}

QFont smallFont(const QWidget& widget)
{
    QFont font = widget.font();
    font.setPointSizeF(font.pointSizeF() * 0.88);
    return font;
}

ChartPanel::ChartPanel(TimeView& time, const QString& title, QWidget* parent)
    : QWidget(parent), m_time(&time), m_heading(title)
{
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(title);
    setAccessibleDescription(QStringLiteral(
        "Arrow keys pan, plus and minus zoom, 0 shows all, Shift and arrows move the pointer, "
        "Ctrl and arrows lead it from reading to reading"));
    m_settle.setSingleShot(true);
    m_settle.setInterval(150);
    connect(&m_settle, &QTimer::timeout, this, &ChartPanel::dataChanged);
    connect(&time, &TimeView::shownChanged, this, &ChartPanel::shownMoved);
    connect(&time, &TimeView::pointerChanged, this, qOverload<>(&QWidget::update));
}

void ChartPanel::setHeading(const QString& heading)
{
    m_heading = heading;
    setAccessibleName(heading);
    dataChanged();
}

void ChartPanel::setZone(const Zone& zone)
{
    m_zone = zone;
    dataChanged();
}

void ChartPanel::setTimeLabels(bool wanted)
{
    m_timeLabels = wanted;
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

QRectF ChartPanel::plotRect() const
{
    const int line = fontMetrics().height();
    const double top = 8 + line + headRoom();
    const int small = QFontMetrics(smallFont(*this)).height();
    const double bottom = m_timeLabels ? 2 * small + 10 : 9; // dates, and days since pitching
    return {static_cast<double>(leftMargin), top,
            std::max(10.0, width() - leftMargin - rightMargin * 1.0),
            std::max(10.0, height() - top - bottom)};
}

PlotMap ChartPanel::map() const
{
    return {plotRect(), m_time->shown(), range()};
}

std::vector<double> ChartPanel::ticksOf(ValueRange range, int most) const
{
    return valueTicks(range.low, range.high, most);
}

void ChartPanel::paintOver(QPainter&, const PlotMap&) {}

void ChartPanel::paintHeading(QPainter& painter)
{
    QFont bold = font();
    bold.setWeight(QFont::DemiBold);
    painter.setFont(bold);
    painter.setPen(colours().text);
    painter.drawText(QPointF(spacing::card, 7 + fontMetrics().ascent()), m_heading);
}

void ChartPanel::paintValueAxis(QPainter& painter, const PlotMap& map)
{
    painter.setFont(smallFont(*this));
    const QFontMetrics metrics(painter.font());
    const int most = std::max(3, static_cast<int>(map.plot.height() / (metrics.height() * 1.9)));
    const std::vector<double> ticks = ticksOf(map.range, most);
    const int decimals = decimalsOf(ticks);
    double lastY = map.plot.bottom() + 2.0 * metrics.height();
    for (const double value : ticks) {
        const double y = std::round(map.y(value)) + 0.5;
        painter.setPen(colours().grid);
        painter.drawLine(QPointF(map.plot.left(), y), QPointF(map.plot.right(), y));
        if (lastY - y < 0.8 * metrics.height())
            continue;
        lastY = y;
        painter.setPen(colours().muted);
        const QRectF box(0, y - metrics.height() / 2.0, leftMargin - 7, metrics.height());
        painter.drawText(box, Qt::AlignRight | Qt::AlignVCenter, numberText(value, decimals));
    }
}

void ChartPanel::paintTimeAxis(QPainter& painter, const PlotMap& map)
{
    painter.setFont(smallFont(*this));
    const QFontMetrics metrics(painter.font());
    const int most = std::max(2, static_cast<int>(map.plot.width() / 78.0));
    for (const TimeTick& tick : timeTicks(map.shown, m_zone, most)) {
        const double x = std::round(map.x(tick.at)) + 0.5;
        painter.setPen(tick.midnight ? mixed(colours().muted, colours().card, 0.22)
                                     : colours().grid);
        painter.drawLine(QPointF(x, map.plot.top()), QPointF(x, map.plot.bottom()));
        if (!m_timeLabels)
            continue;
        painter.setPen(tick.midnight ? colours().text : colours().muted);
        const QString label = shown(tick.label);
        const double half = metrics.horizontalAdvance(label) / 2.0;
        const double left = std::clamp(x - half, 2.0, width() - 2.0 * half - 4.0);
        painter.drawText(QPointF(left, map.plot.bottom() + 4 + metrics.ascent()), label);
    }
    if (m_timeLabels)
        paintElapsed(painter, map);
}

/// Whole days since pitching, beneath the dates.
void ChartPanel::paintElapsed(QPainter& painter, const PlotMap& map)
{
    const QFontMetrics metrics(painter.font());
    const int most = std::max(2, static_cast<int>(map.plot.width() / 64.0));
    const double y = map.plot.bottom() + 5 + metrics.height() + metrics.ascent();
    painter.setPen(colours().muted);
    for (const TimeTick& tick : elapsedTicks(map.shown, m_time->window().all().start, most)) {
        const double x = map.x(tick.at);
        const QString label = shown(tick.label);
        const double half = metrics.horizontalAdvance(label) / 2.0;
        const double left = std::clamp(x - half, 2.0, width() - 2.0 * half - 4.0);
        painter.drawLine(QPointF(x, map.plot.bottom()), QPointF(x, map.plot.bottom() + 3.0));
        painter.drawText(QPointF(left, y), label);
    }
}

void ChartPanel::renderPicture()
{
    const double ratio = devicePixelRatioF();
    m_picture = QPixmap(size() * ratio);
    m_picture.setDevicePixelRatio(ratio);
    m_picture.fill(Qt::transparent);
    QPainter painter(&m_picture);
    painter.setFont(font());
    paintCard(painter, *this);
    paintHeading(painter);
    const QString empty = emptyWords();
    if (empty.isEmpty()) {
        paintPlot(painter);
    } else {
        painter.setFont(font());
        painter.setPen(colours().muted);
        painter.drawText(rect().adjusted(spacing::card, 0, -spacing::card, 0),
                         Qt::AlignCenter | Qt::TextWordWrap, empty);
    }
    m_stale = false;
}

void ChartPanel::paintPlot(QPainter& painter)
{
    const PlotMap plotted = map();
    painter.save();
    painter.setClipRect(plotted.plot);
    paintBehind(painter, plotted);
    painter.restore();
    painter.setRenderHint(QPainter::Antialiasing, false);
    paintValueAxis(painter, plotted);
    paintTimeAxis(painter, plotted);
    painter.setRenderHint(QPainter::Antialiasing, !moving());
    painter.save();
    painter.setClipRect(plotted.plot.adjusted(0, -1, 1, 1));
    paintData(painter, plotted);
    painter.restore();
    painter.setRenderHint(QPainter::Antialiasing);
    paintOver(painter, plotted);
}

void ChartPanel::paintCrosshair(QPainter& painter, const PlotMap& map)
{
    const std::optional<Instant> pointer = m_time->pointer();
    if (!pointer || *pointer < map.shown.start || *pointer > map.shown.end)
        return;
    painter.setPen(QPen(colours().text, 1.0, Qt::DashLine));
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
    painter.setPen(QPen(colours().focus, 2.0));
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
