#include "ui/charts/temperature_art.h"

#include "core/text/durations.h"
#include "core/text/quantities.h"
#include "core/text/times.h"
#include "ui/charts/drawing.h"
#include "ui/words/words.h"

#include <QFontMetrics>
#include <algorithm>
#include <cmath>
#include <limits>

namespace holdband::ui {

namespace {

constexpr double ringRadius = 9.0;

QColor colourOf(LineRole role, const Colours& colours)
{
    switch (role) {
    case LineRole::beer:
        return colours.beer;
    case LineRole::ambient:
        return colours.ambient;
    case LineRole::chamber:
        return colours.chamber;
    case LineRole::coolant:
        break;
    }
    return colours.coolant;
}

QString targetWords(const RunChart& chart)
{
    const double tolerance = chart.bands.front().tolerance;
    const bool same = std::all_of(chart.bands.begin(), chart.bands.end(),
                                  [&](const BandPiece& b) { return b.tolerance == tolerance; });
    if (!same)
        return Words::tr("target and band");
    const auto difference = chart.unit == TemperatureUnit::celsius
                                ? TemperatureDifference::kelvins(tolerance)
                                : TemperatureDifference::fahrenheitDegrees(tolerance);
    return Words::tr("target ± %1")
        .arg(shown(differenceText(difference, chart.unit, 2, decimalSign())));
}

} // namespace

TemperatureArt::TemperatureArt() : PanelArt(Words::tr("Temperature")) {}

ValueRange TemperatureArt::rangeOf(const RunChart& chart) const
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

bool TemperatureArt::isDrawn(const ChartLine& line) const
{
    return m_coolingShown || line.role == LineRole::beer || line.role == LineRole::ambient;
}

void TemperatureArt::setCoolingShown(bool shown)
{
    m_coolingShown = shown;
    setChart(chart());
}

void TemperatureArt::setChart(const RunChart* chart)
{
    PanelArt::setChart(chart);
    m_range = chart ? rangeOf(*chart) : ValueRange{};
}

QString TemperatureArt::emptyText() const
{
    const bool any =
        chart() && std::any_of(chart()->lines.begin(), chart()->lines.end(),
                               [](const ChartLine& line) { return !line.track.empty(); });
    return any || !chart() ? QString()
                           : Words::tr("Nothing is logged yet. Drop a log on the window, or "
                                       "import one (Ctrl+I).");
}

double TemperatureArt::headRoom(const QFont& font) const
{
    return QFontMetrics(smallFont(font)).height() + 8.0;
}

void TemperatureArt::paintBehind(PanelCanvas& canvas) const
{
    if (!chart())
        return;
    drawStretches(canvas, *chart());
    canvas.painter.setRenderHint(QPainter::Antialiasing);
    canvas.painter.setPen(Qt::NoPen);
    canvas.painter.setBrush(canvas.colours().band);
    const PlotMap& map = canvas.map;
    for (const BandPiece& band : chart()->bands) {
        const double left = map.x(chart()->instantOf(band.time.fromMs));
        const double right = map.x(chart()->instantOf(band.time.toMs));
        drawArea(canvas, {{QPointF(left, map.y(band.startTarget + band.tolerance)),
                           QPointF(right, map.y(band.endTarget + band.tolerance)),
                           QPointF(right, map.y(band.endTarget - band.tolerance)),
                           QPointF(left, map.y(band.startTarget - band.tolerance))}});
    }
}

void TemperatureArt::paintTarget(PanelCanvas& canvas) const
{
    const PlotMap& map = canvas.map;
    QPolygonF line;
    for (const BandPiece& band : chart()->bands) {
        line << QPointF(map.x(chart()->instantOf(band.time.fromMs)), map.y(band.startTarget));
        line << QPointF(map.x(chart()->instantOf(band.time.toMs)), map.y(band.endTarget));
    }
    canvas.painter.setPen(QPen(canvas.colours().target, 1.5, Qt::DashLine));
    canvas.painter.drawPolyline(line);
}

void TemperatureArt::paintData(PanelCanvas& canvas) const
{
    if (!chart())
        return;
    canvas.painter.setBrush(Qt::NoBrush);
    for (const ChartLine& line : chart()->lines) {
        if (!isDrawn(line))
            continue;
        if (line.role == LineRole::beer)
            paintTarget(canvas);
        const QPen pen(colourOf(line.role, canvas.colours()),
                       line.role == LineRole::beer ? 1.8 : 1.1);
        drawTrack(canvas, *chart(), line.track, line.pyramid, pen);
    }
}

void TemperatureArt::paintStages(PanelCanvas& canvas) const
{
    QPainter& painter = canvas.painter;
    const PlotMap& map = canvas.map;
    painter.setFont(smallFont(canvas.look.font));
    const QFontMetrics metrics(painter.font());
    const double height = metrics.height() + 3.0;
    const QRectF strip(map.plot.left(), map.plot.top() - height - 3.0, map.plot.width(), height);
    for (const StageBox& stage : chart()->stages) {
        QRectF box = columnOf(map, *chart(), stage.time);
        box.setTop(strip.top());
        box.setHeight(height);
        box = box.intersected(strip).adjusted(0.5, 0, -0.5, 0);
        if (box.width() < 1.0)
            continue;
        painter.setPen(Qt::NoPen);
        painter.setBrush(canvas.colours().button);
        painter.drawRoundedRect(box, 3, 3);
        const QString label = metrics.elidedText(shown(stage.label), Qt::ElideRight,
                                                 static_cast<int>(box.width()) - 6);
        painter.setPen(canvas.colours().text);
        if (label.size() > 1 || label == shown(stage.label))
            painter.drawText(box, Qt::AlignCenter, label);
    }
}

void TemperatureArt::paintRings(PanelCanvas& canvas) const
{
    QPainter& painter = canvas.painter;
    const QRectF& plot = canvas.map.plot;
    painter.setFont(smallFont(canvas.look.font));
    double wordsEnd = plot.left(); // of the cause before
    for (const ExcursionMark& mark : chart()->excursions) {
        const QPointF centre = ringCentre(canvas.map, mark);
        if (centre.x() < plot.left() || centre.x() > plot.right())
            continue;
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(canvas.colours().excursion, 2.0));
        painter.drawEllipse(centre, ringRadius, ringRadius);
        if (!mark.cause.empty())
            paintCause(canvas, mark, wordsEnd);
    }
}

QPointF TemperatureArt::ringCentre(const PlotMap& map, const ExcursionMark& mark) const
{
    return {map.x(chart()->instantOf(mark.peakMs)), map.y(mark.peakTemperature)};
}

const ExcursionMark* TemperatureArt::ringAt(const PlotMap& map, QPointF place) const
{
    const auto& marks = chart()->excursions;
    const auto found = std::find_if(marks.begin(), marks.end(), [&](const ExcursionMark& mark) {
        const QPointF away = ringCentre(map, mark) - place;
        return std::hypot(away.x(), away.y()) <= ringRadius + 2.0;
    });
    return found == marks.end() ? nullptr : &*found;
}

/// Draws the cause next to the excursion's ring, if the previous cause leaves enough space.
void TemperatureArt::paintCause(PanelCanvas& canvas, const ExcursionMark& mark,
                                double& wordsEnd) const
{
    constexpr double gap = 3.0;
    QPainter& painter = canvas.painter;
    const QRectF& plot = canvas.map.plot;
    const QFontMetricsF metrics(painter.font());
    const QPointF centre = ringCentre(canvas.map, mark);
    const QString words =
        metrics.elidedText(shown(mark.cause), Qt::ElideRight, 16.0 * metrics.height());
    const double width = metrics.horizontalAdvance(words) + 2.0 * gap;
    const bool left = centre.x() + ringRadius + width > plot.right();
    const double start = left ? centre.x() - ringRadius - width : centre.x() + ringRadius;
    if (start < wordsEnd)
        return;
    QRectF box(start, centre.y() - metrics.height() / 2.0, width, metrics.height());
    box.moveBottom(std::min(box.bottom(), plot.bottom()));
    QColor back = canvas.colours().card;
    back.setAlphaF(0.8F);
    painter.fillRect(box, back);
    painter.setPen(canvas.colours().text);
    painter.drawText(box, Qt::AlignCenter, words);
    wordsEnd = box.right();
}

/// A numbered square for each remark of the journal, at the bottom of the plot.
void TemperatureArt::paintNotes(PanelCanvas& canvas) const
{
    QPainter& painter = canvas.painter;
    const PlotMap& map = canvas.map;
    painter.setFont(smallFont(canvas.look.font));
    for (std::size_t i = 0; i < chart()->notes.size(); ++i) {
        const QRectF box = noteBox(map, canvas.look.font, i);
        if (box.center().x() < map.plot.left() || box.center().x() > map.plot.right())
            continue;
        painter.setPen(QPen(canvas.colours().careEdge, 1.0));
        painter.drawLine(QPointF(box.center().x(), map.plot.top()),
                         QPointF(box.center().x(), box.top()));
        painter.setPen(QPen(canvas.colours().careText, 1.0));
        painter.setBrush(canvas.colours().careBack);
        painter.drawRoundedRect(box, 2.0, 2.0);
        painter.drawText(box, Qt::AlignCenter, QString::number(i + 1));
    }
}

QRectF TemperatureArt::noteBox(const PlotMap& map, const QFont& font, std::size_t note) const
{
    const QFontMetrics metrics(smallFont(font));
    const double width = metrics.horizontalAdvance(QString::number(chart()->notes.size())) + 8.0;
    const double x = map.x(chart()->instantOf(chart()->notes[note].ms));
    return {x - width / 2.0, map.plot.bottom() - metrics.height() - 2.0, width,
            static_cast<double>(metrics.height())};
}

std::vector<KeyEntry> TemperatureArt::key(const Colours& colours) const
{
    std::vector<KeyEntry> entries;
    if (!chart())
        return entries;
    if (!chart()->bands.empty())
        entries.push_back({targetWords(*chart()), QPen(colours.target, 1.6, Qt::DashLine)});
    for (auto line = chart()->lines.rbegin(); line != chart()->lines.rend(); ++line) {
        if (isDrawn(*line))
            entries.push_back({shown(line->name), QPen(colourOf(line->role, colours),
                                                       line->role == LineRole::beer ? 2.4 : 1.4)});
    }
    return entries;
}

void TemperatureArt::paintOver(PanelCanvas& canvas) const
{
    paintStages(canvas);
    nameStretches(canvas, *chart(), chart()->gaps, Words::tr("no data"));
    std::vector<Stretch> leftOut;
    for (const LeftOutStretch& each : chart()->leftOut)
        leftOut.push_back(each.time);
    nameStretches(canvas, *chart(), leftOut, Words::tr("left out"));
    paintNotes(canvas);
    paintRings(canvas);
}

QString noteWords(const RunChart& chart, std::size_t note)
{
    const NoteMark& mark = chart.notes[note];
    return QStringLiteral("%1 · %2").arg(
        shown(localShortText(chart.instantOf(mark.ms), chart.zone)), shown(mark.text));
}

QString excursionText(const RunChart& chart, const ExcursionMark& mark)
{
    const double past = std::abs(mark.peakDeviation) - std::abs(mark.edgeDeviation);
    const Milliseconds length = wholeMs(mark.time.toMs - mark.time.fromMs);
    QString words =
        Words::tr("Outside from %1, %2, up to %3 %4 %5 the band")
            .arg(shown(localShortText(chart.instantOf(mark.time.fromMs), chart.zone)),
                 shown(durationText(length, decimalSign())), numberText(past, 1),
                 shown(unitText(chart.unit)), mark.above ? Words::tr("above") : Words::tr("below"));
    return mark.cause.empty() ? words : words + QStringLiteral(" · ") + shown(mark.cause);
}

} // namespace holdband::ui
