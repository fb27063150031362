#include "ui/charts/temperature_panel.h"

#include "core/text/durations.h"
#include "core/text/quantities.h"
#include "core/text/times.h"
#include "ui/charts/drawing.h"
#include "ui/words/words.h"

#include <QHelpEvent>
#include <QToolTip>
#include <cmath>
#include <limits>

namespace holdband::ui {

namespace {

constexpr double ringRadius = 9.0;

} // namespace

TemperaturePanel::TemperaturePanel(TimeView& time, QWidget* parent)
    : ChartPanel(time, QStringLiteral("Temperature"), parent)
{
    setMinimumHeight(118);
}

ValueRange TemperaturePanel::rangeOf(const RunChart& chart) const
{
    double low = std::numeric_limits<double>::infinity();
    double high = -low;
    const auto take = [&](double value) {
        low = std::min(low, value);
        high = std::max(high, value);
    };
    for (const BandPiece& band : chart.bands) {
        for (const double target : {band.startTarget, band.endTarget}) {
            take(target - band.tolerance);
            take(target + band.tolerance);
        }
    }
    for (const ChartLine& line : chart.lines) {
        if (isDrawn(line) && !line.track.value.empty()) {
            const auto [least, most] =
                std::minmax_element(line.track.value.begin(), line.track.value.end());
            take(*least);
            take(*most);
        }
    }
    if (!(low < high))
        return {0.0, 100.0};
    const double margin = (high - low) * 0.05;
    return {low - margin, high + margin};
}

bool TemperaturePanel::isDrawn(const ChartLine& line) const
{
    return m_coolingShown || line.role == LineRole::beer || line.role == LineRole::ambient;
}

void TemperaturePanel::setCoolingShown(bool shown)
{
    m_coolingShown = shown;
    setChart(m_chart);
}

void TemperaturePanel::setChart(const RunChart* chart)
{
    m_chart = chart;
    m_range = chart ? rangeOf(*chart) : ValueRange{};
    if (chart)
        setZone(chart->zone);
    dataChanged();
}

QString TemperaturePanel::emptyWords() const
{
    const bool any =
        m_chart && std::any_of(m_chart->lines.begin(), m_chart->lines.end(),
                               [](const ChartLine& line) { return !line.track.empty(); });
    return any || !m_chart ? QString()
                           : QStringLiteral("Nothing is logged yet. Drop a log on the window, or "
                                            "import one (Ctrl+I).");
}

int TemperaturePanel::headRoom() const
{
    return QFontMetrics(smallFont(*this)).height() + 8;
}

QColor TemperaturePanel::colourOf(LineRole role) const
{
    switch (role) {
    case LineRole::beer:
        return colours().beer;
    case LineRole::ambient:
        return colours().ambient;
    case LineRole::chamber:
        return colours().chamber;
    case LineRole::coolant:
        break;
    }
    return colours().coolant;
}

void TemperaturePanel::paintBand(QPainter& painter, const PlotMap& map)
{
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colours().band);
    for (const BandPiece& band : m_chart->bands) {
        const double left = map.x(m_chart->instantOf(band.time.fromMs));
        const double right = map.x(m_chart->instantOf(band.time.toMs));
        painter.drawPolygon(QPolygonF{{QPointF(left, map.y(band.startTarget + band.tolerance)),
                                       QPointF(right, map.y(band.endTarget + band.tolerance)),
                                       QPointF(right, map.y(band.endTarget - band.tolerance)),
                                       QPointF(left, map.y(band.startTarget - band.tolerance))}});
    }
}

void TemperaturePanel::paintBehind(QPainter& painter, const PlotMap& map)
{
    if (!m_chart)
        return;
    drawStretches(painter, map, *m_chart, colours());
    paintBand(painter, map);
}

void TemperaturePanel::paintTarget(QPainter& painter, const PlotMap& map)
{
    QPolygonF line;
    for (const BandPiece& band : m_chart->bands) {
        line << QPointF(map.x(m_chart->instantOf(band.time.fromMs)), map.y(band.startTarget));
        line << QPointF(map.x(m_chart->instantOf(band.time.toMs)), map.y(band.endTarget));
    }
    painter.setPen(QPen(colours().target, 1.5, Qt::DashLine));
    painter.drawPolyline(line);
}

void TemperaturePanel::paintData(QPainter& painter, const PlotMap& map)
{
    if (!m_chart)
        return;
    painter.setBrush(Qt::NoBrush);
    for (const ChartLine& line : m_chart->lines) {
        if (!isDrawn(line))
            continue;
        if (line.role == LineRole::beer)
            paintTarget(painter, map);
        const QPen pen(colourOf(line.role), line.role == LineRole::beer ? 1.8 : 1.1);
        drawTrack(painter, map, *m_chart, line.track, line.pyramid, pen, moving());
    }
}

void TemperaturePanel::paintStages(QPainter& painter, const PlotMap& map)
{
    painter.setFont(smallFont(*this));
    const QFontMetrics metrics(painter.font());
    const double height = metrics.height() + 3.0;
    const QRectF strip(map.plot.left(), map.plot.top() - height - 3.0, map.plot.width(), height);
    for (const StageBox& stage : m_chart->stages) {
        QRectF box = columnOf(map, *m_chart, stage.time);
        box.setTop(strip.top());
        box.setHeight(height);
        box = box.intersected(strip).adjusted(0.5, 0, -0.5, 0);
        if (box.width() < 1.0)
            continue;
        painter.setPen(Qt::NoPen);
        painter.setBrush(colours().button);
        painter.drawRoundedRect(box, 3, 3);
        const QString label = metrics.elidedText(shown(stage.label), Qt::ElideRight,
                                                 static_cast<int>(box.width()) - 6);
        painter.setPen(colours().text);
        if (label.size() > 1 || label == shown(stage.label))
            painter.drawText(box, Qt::AlignCenter, label);
    }
}

void TemperaturePanel::paintRings(QPainter& painter, const PlotMap& map)
{
    painter.setFont(smallFont(*this));
    double wordsEnd = map.plot.left(); // of the cause before
    for (const ExcursionMark& mark : m_chart->excursions) {
        const QPointF centre = ringCentre(map, mark);
        if (centre.x() < map.plot.left() || centre.x() > map.plot.right())
            continue;
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(colours().excursion, 2.0));
        painter.drawEllipse(centre, ringRadius, ringRadius);
        if (!mark.cause.empty())
            paintCause(painter, map, mark, wordsEnd);
    }
}

QPointF TemperaturePanel::ringCentre(const PlotMap& map, const ExcursionMark& mark) const
{
    return {map.x(m_chart->instantOf(mark.peakMs)), map.y(mark.peakTemperature)};
}

/// What is said to have caused it, right of its ring, where the cause before leaves room.
void TemperaturePanel::paintCause(QPainter& painter, const PlotMap& map, const ExcursionMark& mark,
                                  double& wordsEnd)
{
    constexpr int most = 180;
    const QFontMetrics metrics(painter.font());
    const QPointF centre = ringCentre(map, mark);
    const QString words = metrics.elidedText(shown(mark.cause), Qt::ElideRight, most);
    const double width = metrics.horizontalAdvance(words) + 6.0;
    const bool left = centre.x() + ringRadius + width > map.plot.right();
    const double start = left ? centre.x() - ringRadius - width : centre.x() + ringRadius;
    if (start < wordsEnd)
        return;
    QRectF box(start, centre.y() - metrics.height() / 2.0, width, metrics.height());
    box.moveBottom(std::min(box.bottom(), map.plot.bottom()));
    QColor back = colours().card;
    back.setAlphaF(0.8F);
    painter.fillRect(box, back);
    painter.setPen(colours().text);
    painter.drawText(box, Qt::AlignCenter, words);
    wordsEnd = box.right();
}

/// A numbered square for each remark of the journal, at the foot of the plot.
void TemperaturePanel::paintNotes(QPainter& painter, const PlotMap& map)
{
    painter.setFont(smallFont(*this));
    for (std::size_t i = 0; i < m_chart->notes.size(); ++i) {
        const QRectF box = noteBox(map, i);
        if (box.center().x() < map.plot.left() || box.center().x() > map.plot.right())
            continue;
        painter.setPen(QPen(colours().careEdge, 1.0));
        painter.drawLine(QPointF(box.center().x(), map.plot.top()),
                         QPointF(box.center().x(), box.top()));
        painter.setPen(QPen(colours().careText, 1.0));
        painter.setBrush(colours().careBack);
        painter.drawRoundedRect(box, 2.0, 2.0);
        painter.drawText(box, Qt::AlignCenter, QString::number(i + 1));
    }
}

QRectF TemperaturePanel::noteBox(const PlotMap& map, std::size_t note) const
{
    const QFontMetrics metrics(smallFont(*this));
    const double width = metrics.horizontalAdvance(QString::number(m_chart->notes.size())) + 8.0;
    const double x = map.x(m_chart->instantOf(m_chart->notes[note].ms));
    return {x - width / 2.0, map.plot.bottom() - metrics.height() - 2.0, width,
            static_cast<double>(metrics.height())};
}

/// What each line is, in the heading's line, right-aligned, each word beside a stroke of its line.
void TemperaturePanel::paintKey(QPainter& painter, const PlotMap& map)
{
    painter.setFont(smallFont(*this));
    const QFontMetrics metrics(painter.font());
    double right = map.plot.right();
    const double y = 7 + fontMetrics().ascent();
    const auto entry = [&](const QString& name, const QPen& pen) {
        right -= metrics.horizontalAdvance(name);
        painter.setPen(colours().muted);
        painter.drawText(QPointF(right, y), name);
        painter.setPen(pen);
        const double middle = std::round(y - metrics.xHeight() / 2.0) + 0.5;
        painter.drawLine(QPointF(right - 24, middle), QPointF(right - 5, middle));
        right -= 38;
    };
    for (const ChartLine& line : m_chart->lines) {
        if (isDrawn(line))
            entry(shown(line.name),
                  QPen(colourOf(line.role), line.role == LineRole::beer ? 2.4 : 1.4));
    }
    if (m_chart->bands.empty())
        return;
    const auto tolerance = m_chart->bands.front().tolerance;
    const bool same = std::all_of(m_chart->bands.begin(), m_chart->bands.end(),
                                  [&](const BandPiece& b) { return b.tolerance == tolerance; });
    const QString words = same ? QStringLiteral("target ± %1")
                                     .arg(shown(differenceText(
                                         m_chart->unit == TemperatureUnit::celsius
                                             ? TemperatureDifference::kelvins(tolerance)
                                             : TemperatureDifference::fahrenheitDegrees(tolerance),
                                         m_chart->unit, 2, decimalSign())))
                               : QStringLiteral("target and band");
    entry(words, QPen(colours().target, 1.6, Qt::DashLine));
}

void TemperaturePanel::paintOver(QPainter& painter, const PlotMap& map)
{
    if (!m_chart)
        return;
    paintStages(painter, map);
    painter.setFont(smallFont(*this));
    nameStretches(painter, map, *m_chart, m_chart->gaps, QStringLiteral("not seen"), colours());
    paintNotes(painter, map);
    paintRings(painter, map);
    paintKey(painter, map);
}

QString noteWords(const RunChart& chart, std::size_t note)
{
    const NoteMark& mark = chart.notes[note];
    return QStringLiteral("%1 · %2").arg(
        shown(localShortText(chart.instantOf(mark.ms), chart.zone)), shown(mark.text));
}

QString excursionWords(const RunChart& chart, const ExcursionMark& mark)
{
    const double past = std::abs(mark.peakDeviation) - std::abs(mark.edgeDeviation);
    QString words =
        QStringLiteral("Outside from %1, %2, up to %3 %4 %5 the band")
            .arg(shown(localShortText(chart.instantOf(mark.time.fromMs), chart.zone)),
                 shown(durationText(Milliseconds{std::llround(mark.time.toMs - mark.time.fromMs)},
                                    decimalSign())),
                 numberText(past, 1), shown(unitText(chart.unit)),
                 mark.above ? QStringLiteral("above") : QStringLiteral("below"));
    return mark.cause.empty() ? words : words + QStringLiteral(" · ") + shown(mark.cause);
}

bool TemperaturePanel::event(QEvent* event)
{
    if (event->type() != QEvent::ToolTip || !m_chart)
        return ChartPanel::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const PlotMap plotted = map();
    for (std::size_t i = m_chart->notes.size(); i-- > 0;) {
        if (noteBox(plotted, i).contains(help->pos()))
            QToolTip::showText(help->globalPos(), noteWords(*m_chart, i), this);
    }
    for (const ExcursionMark& mark : m_chart->excursions) {
        const QPointF away = ringCentre(plotted, mark) - QPointF(help->pos());
        if (std::hypot(away.x(), away.y()) <= ringRadius + 2.0)
            QToolTip::showText(help->globalPos(), excursionWords(*m_chart, mark), this);
    }
    if (help->pos().y() >= plotted.plot.top())
        return true;
    const double ms = m_chart->msOf(plotted.instantAt(help->pos().x()));
    for (const StageBox& stage : m_chart->stages) {
        if (ms >= stage.time.fromMs && ms < stage.time.toMs)
            QToolTip::showText(help->globalPos(), shown(stage.words), this);
    }
    return true;
}

} // namespace holdband::ui
