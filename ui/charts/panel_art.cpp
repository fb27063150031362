#include "ui/charts/panel_art.h"

#include "ui/charts/ticks.h"
#include "ui/words/words.h"

#include <QFontMetrics>
#include <cmath>

namespace holdband::ui {

namespace {

constexpr double small = 0.88;   ///< of the heading's size
constexpr double stroke = 19.0;  ///< the sample line in the key
constexpr double beside = 5.0;   ///< from it to its text
constexpr double between = 14.0; ///< from one entry of the key to the next

double widthOf(const KeyEntry& entry, const QFontMetrics& metrics)
{
    return metrics.horizontalAdvance(entry.words) + (entry.pen ? stroke + beside : 0.0);
}

double widthOf(const std::vector<KeyEntry>& key, const QFontMetrics& metrics)
{
    double width = 0.0;
    for (const KeyEntry& entry : key)
        width += widthOf(entry, metrics) + (width > 0.0 ? between : 0.0);
    return width;
}

QFont boldOf(QFont font)
{
    font.setWeight(QFont::DemiBold);
    return font;
}

/// Centred on x, but kept inside the panel.
void drawTickLabel(QPainter& painter, double x, double y, const QString& label, double width)
{
    const double half = QFontMetrics(painter.font()).horizontalAdvance(label) / 2.0;
    const double left = std::clamp(x - half, 2.0, std::max(2.0, width - 2.0 * half - 4.0));
    painter.drawText(QPointF(left, y), label);
}

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

QFont smallFont(const QFont& font)
{
    QFont smaller = font;
    if (font.pixelSize() > 0)
        smaller.setPixelSize(std::max(1, static_cast<int>(std::lround(font.pixelSize() * small))));
    else
        smaller.setPointSizeF(font.pointSizeF() * small);
    return smaller;
}

void PanelArt::setChart(const RunChart* chart)
{
    m_chart = chart;
}

/// Whether heading and key do not fit side by side.
bool PanelArt::keyBeneath(const PanelPlace& place, const QFont& font) const
{
    const std::vector<KeyEntry> entries = key(coloursOf(Scheme::light));
    const double heading = QFontMetrics(boldOf(font)).horizontalAdvance(m_heading);
    const double room = place.size.width() - spacing::card - rightMargin - heading - 2.0 * between;
    return !entries.empty() && widthOf(entries, QFontMetrics(smallFont(font))) > room;
}

QRectF PanelArt::plotRect(const PanelPlace& place, const QFont& font) const
{
    const int line = QFontMetrics(font).height();
    const int smallLine = QFontMetrics(smallFont(font)).height();
    const double keyLine = keyBeneath(place, font) ? smallLine + 2.0 : 0.0;
    const double top = 8.0 + line + keyLine + headRoom(font);
    const double bottom = m_timeLabels ? 2.0 * smallLine + 10.0 : 9.0; // dates, and elapsed days
    return {static_cast<double>(leftMargin), top,
            std::max(10.0, place.size.width() - leftMargin - rightMargin),
            std::max(10.0, place.size.height() - top - bottom)};
}

PlotMap PanelArt::map(const PanelPlace& place, const QFont& font) const
{
    return {plotRect(place, font), place.shown, range(place)};
}

std::vector<double> PanelArt::ticksOf(ValueRange range, int most) const
{
    return valueTicks(range.low, range.high, most);
}

void PanelArt::paintHeading(QPainter& painter, const PanelLook& look) const
{
    painter.setFont(boldOf(look.font));
    painter.setPen(look.colours->text);
    painter.drawText(QPointF(look.headingLeft, 7 + QFontMetrics(look.font).ascent()), m_heading);
}

/// The key: right-aligned in the heading's line, or below it if that is too narrow.
void PanelArt::paintKey(PanelCanvas& canvas, const PanelPlace& place) const
{
    QPainter& painter = canvas.painter;
    const QFontMetrics line(canvas.look.font);
    painter.setFont(smallFont(canvas.look.font));
    const QFontMetrics metrics(painter.font());
    const std::vector<KeyEntry> entries = key(canvas.colours());
    const bool beneath = keyBeneath(place, canvas.look.font);
    double x =
        beneath ? canvas.look.headingLeft : canvas.map.plot.right() - widthOf(entries, metrics);
    const double y = beneath ? 9.0 + line.height() + metrics.ascent() : 7.0 + line.ascent();
    for (const KeyEntry& entry : entries) {
        if (entry.pen) {
            painter.setPen(*entry.pen);
            const double middle = std::round(y - metrics.xHeight() / 2.0) + 0.5;
            painter.drawLine(QPointF(x, middle), QPointF(x + stroke, middle));
            x += stroke + beside;
        }
        painter.setPen(canvas.colours().muted);
        painter.drawText(QPointF(x, y), entry.words);
        x += metrics.horizontalAdvance(entry.words) + between;
    }
}

void PanelArt::paintValueAxis(PanelCanvas& canvas) const
{
    QPainter& painter = canvas.painter;
    const PlotMap& map = canvas.map;
    painter.setFont(smallFont(canvas.look.font));
    const QFontMetrics metrics(painter.font());
    const int most = std::max(3, static_cast<int>(map.plot.height() / (metrics.height() * 1.9)));
    const std::vector<double> ticks = ticksOf(map.range, most);
    const int decimals = decimalsOf(ticks);
    double lastY = map.plot.bottom() + 2.0 * metrics.height();
    for (const double value : ticks) {
        const double y = std::round(map.y(value)) + 0.5;
        painter.setPen(canvas.colours().grid);
        painter.drawLine(QPointF(map.plot.left(), y), QPointF(map.plot.right(), y));
        if (lastY - y < 0.8 * metrics.height())
            continue;
        lastY = y;
        painter.setPen(canvas.colours().muted);
        const QRectF box(0, y - metrics.height() / 2.0, leftMargin - 7, metrics.height());
        painter.drawText(box, Qt::AlignRight | Qt::AlignVCenter, numberText(value, decimals));
    }
}

void PanelArt::paintTimeAxis(PanelCanvas& canvas, const PanelPlace& place) const
{
    QPainter& painter = canvas.painter;
    const PlotMap& map = canvas.map;
    const Colours& colours = canvas.colours();
    painter.setFont(smallFont(canvas.look.font));
    const QFontMetrics metrics(painter.font());
    const int most = std::max(2, static_cast<int>(map.plot.width() / 78.0));
    for (const TimeTick& tick : timeTicks(map.shown, m_chart ? m_chart->zone : Zone(), most)) {
        const double x = std::round(map.x(tick.at)) + 0.5;
        painter.setPen(tick.midnight ? mixed(colours.muted, colours.card, 0.22) : colours.grid);
        painter.drawLine(QPointF(x, map.plot.top()), QPointF(x, map.plot.bottom()));
        if (!m_timeLabels)
            continue;
        painter.setPen(tick.midnight ? colours.text : colours.muted);
        drawTickLabel(painter, x, map.plot.bottom() + 4 + metrics.ascent(), shown(tick.label),
                      place.size.width());
    }
    if (m_timeLabels)
        paintElapsed(canvas, place);
}

/// Days since pitching, below the dates.
void PanelArt::paintElapsed(PanelCanvas& canvas, const PanelPlace& place) const
{
    QPainter& painter = canvas.painter;
    const PlotMap& map = canvas.map;
    const QFontMetrics metrics(painter.font());
    const int most = std::max(2, static_cast<int>(map.plot.width() / 64.0));
    const double y = map.plot.bottom() + 5 + metrics.height() + metrics.ascent();
    painter.setPen(canvas.colours().muted);
    for (const TimeTick& tick : elapsedTicks(map.shown, place.all.start, most)) {
        const double x = map.x(tick.at);
        painter.drawLine(QPointF(x, map.plot.bottom()), QPointF(x, map.plot.bottom() + 3.0));
        drawTickLabel(painter, x, y, shown(tick.label), place.size.width());
    }
}

void PanelArt::paint(QPainter& painter, const PanelPlace& place, const PanelLook& look) const
{
    PanelCanvas canvas{painter, map(place, look.font), look};
    painter.setFont(look.font);
    painter.setRenderHint(QPainter::Antialiasing);
    paintHeading(painter, look);
    const QString empty = emptyText();
    if (empty.isEmpty())
        return paintPlot(canvas, place);
    painter.setFont(look.font);
    painter.setPen(look.colours->muted);
    const QRectF box = QRectF({}, place.size).adjusted(spacing::card, 0, -spacing::card, 0);
    painter.drawText(box, Qt::AlignCenter | Qt::TextWordWrap, empty);
}

void PanelArt::paintPlot(PanelCanvas& canvas, const PanelPlace& place) const
{
    QPainter& painter = canvas.painter;
    const QRectF plot = canvas.map.plot;
    painter.save();
    painter.setClipRect(plot, Qt::IntersectClip);
    paintBehind(canvas);
    painter.restore();
    painter.setRenderHint(QPainter::Antialiasing, false);
    paintValueAxis(canvas);
    paintTimeAxis(canvas, place);
    painter.setRenderHint(QPainter::Antialiasing, !canvas.look.moving);
    painter.save();
    painter.setClipRect(plot.adjusted(0, -1, 1, 1), Qt::IntersectClip);
    paintData(canvas);
    painter.restore();
    painter.setRenderHint(QPainter::Antialiasing);
    if (m_chart)
        paintOver(canvas);
    paintKey(canvas, place);
}

} // namespace holdband::ui
