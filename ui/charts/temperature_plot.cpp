#include "ui/charts/temperature_plot.h"

#include "core/text/durations.h"
#include "core/text/quantities.h"
#include "core/text/times.h"
#include "ui/charts/track_series.h"
#include "ui/words/words.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>
#include <limits>

namespace holdband::ui {

namespace {

QColor colourOf(LineRole role, int setup, const Colours& colours)
{
    constexpr double pale = 0.6; // the room is not what matters
    switch (role) {
    case LineRole::beer:
        return setupLine(setup, colours);
    case LineRole::ambient:
        return mixed(colours.ambient, colours.card, pale);
    case LineRole::chamber:
        return colours.chamber;
    case LineRole::coolant:
        break;
    }
    return colours.coolant;
}

QPen penOf(LineRole role, int setup, const Colours& colours)
{
    return {colourOf(role, setup, colours), role == LineRole::beer ? 1.8 : 1.1};
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

/// The least and the greatest of some values.
class Extent {
public:
    void add(double value)
    {
        m_low = std::min(m_low, value);
        m_high = std::max(m_high, value);
    }
    bool isEmpty() const { return !(m_low < m_high); }
    ValueRange widenedBy(double share) const
    {
        const double margin = (m_high - m_low) * share;
        return {m_low - margin, m_high + margin};
    }

private:
    double m_low = std::numeric_limits<double>::infinity();
    double m_high = -std::numeric_limits<double>::infinity();
};

/// The indices of the readings in the shown part, and one before and after it.
std::pair<std::size_t, std::size_t> indicesIn(const analysis::Track& track, ValueRange ms)
{
    const auto begin = track.ms.begin();
    auto first = std::lower_bound(begin, track.ms.end(), ms.low);
    auto last = std::upper_bound(first, track.ms.end(), ms.high);
    first = first == begin ? first : first - 1;
    last = last == track.ms.end() ? last : last + 1;
    return {static_cast<std::size_t>(first - begin), static_cast<std::size_t>(last - begin)};
}

void addLine(const ChartLine& line, ValueRange ms, Extent& extent)
{
    const auto [from, to] = indicesIn(line.track, ms);
    if (from >= to)
        return;
    const auto [least, greatest] = line.pyramid.extremes(line.track, from, to);
    extent.add(line.track.value[least]);
    extent.add(line.track.value[greatest]);
}

void addBand(const BandPiece& band, ValueRange ms, Extent& extent)
{
    const double from = std::max(band.time.fromMs, ms.low);
    const double to = std::min(band.time.toMs, ms.high);
    if (from > to)
        return;
    for (const double at : {from, to}) {
        extent.add(band.targetAt(at) - band.tolerance);
        extent.add(band.targetAt(at) + band.tolerance);
    }
}

void addFanRange(const ArrivalFan& fan, ValueRange ms, Extent& extent)
{
    if (fan.nowMs > ms.high || fan.endMs < ms.low)
        return;
    for (const double value : {fan.beer, fan.target - fan.tolerance, fan.target + fan.tolerance})
        extent.add(value);
}

/// Target and band as they go on for the forecast, after the stages; absent without one.
std::optional<BandPiece> bandAhead(const RunChart& chart)
{
    if (!chart.fan || chart.bands.empty())
        return std::nullopt;
    const ArrivalFan& fan = *chart.fan;
    const double from = std::max(fan.nowMs, chart.bands.back().time.toMs);
    if (from >= fan.endMs)
        return std::nullopt;
    return BandPiece{{from, fan.endMs}, fan.target, fan.target, fan.tolerance};
}

QPolygonF bandOutline(const BandPiece& band)
{
    return {{QPointF(band.time.fromMs, band.startTarget + band.tolerance),
             QPointF(band.time.toMs, band.endTarget + band.tolerance),
             QPointF(band.time.toMs, band.endTarget - band.tolerance),
             QPointF(band.time.fromMs, band.startTarget - band.tolerance)}};
}

/// The last reading in the shown part; absent where there is none.
std::optional<QPointF> endOf(const ChartLine& line, ValueRange ms)
{
    const auto end = std::upper_bound(line.track.ms.begin(), line.track.ms.end(), ms.high);
    if (end == line.track.ms.begin() || *(end - 1) < ms.low)
        return std::nullopt;
    const auto i = static_cast<std::size_t>(end - line.track.ms.begin()) - 1;
    return QPointF(line.track.ms[i], line.track.value[i]);
}

} // namespace

TemperaturePlot::TemperaturePlot() : RunPlot(Words::tr("Temperature")) {}

/// Fits the shown part.
ValueRange TemperaturePlot::range(const PanelPlace& place) const
{
    const ValueRange ms = shownMs(*chart(), place.shown);
    Extent extent;
    for (const BandPiece& band : chart()->bands)
        addBand(band, ms, extent);
    for (const ChartLine& line : chart()->lines) {
        if (isDrawn(line))
            addLine(line, ms, extent);
    }
    if (chart()->fan)
        addFanRange(*chart()->fan, ms, extent);
    return extent.isEmpty() ? ValueRange{0.0, 100.0} : extent.widenedBy(0.05);
}

bool TemperaturePlot::isDrawn(const ChartLine& line) const
{
    return m_coolingShown || line.role == LineRole::beer || line.role == LineRole::ambient;
}

QString TemperaturePlot::emptyText() const
{
    return !chart() || chart()->hasReadings()
               ? QString()
               : Words::tr("Nothing is logged yet. Drop a log on the window, or "
                           "import one (Ctrl+I).");
}

double TemperaturePlot::headRoom(const QFont& font) const
{
    return stageHeight(smallFont(font));
}

/// Whether it goes on to the right edge, and there is space for its name.
bool TemperaturePlot::isNamedAtEnd(const ChartLine& line, const PanelPlace& place,
                                   const QFont& font) const
{
    constexpr double near = 0.02; // of the width
    const double room = endRoom(chart(), font, place.size.width());
    if (room < QFontMetricsF(smallFont(font)).horizontalAdvance(shown(line.name)) + 8.0)
        return false;
    const ValueRange ms = shownMs(*chart(), place.shown);
    const std::optional<QPointF> end = endOf(line, ms);
    return end && ms.high - end->x() <= near * (ms.high - ms.low);
}

std::vector<PlotKey> TemperaturePlot::key(const PanelPlace& place, const PictureLook& look) const
{
    std::vector<PlotKey> entries;
    if (!chart()->bands.empty())
        entries.push_back({targetWords(*chart()), QPen(look.colours().target, 1.6, Qt::DashLine)});
    for (auto line = chart()->lines.rbegin(); line != chart()->lines.rend(); ++line) {
        if (isDrawn(*line) && !isNamedAtEnd(*line, place, look.font))
            entries.push_back(
                {shown(line->name), QPen(colourOf(line->role, chart()->setup, look.colours()),
                                         line->role == LineRole::beer ? 2.4 : 1.4)});
    }
    if (chart()->fan)
        entries.push_back({Words::tr("forecast"), fanKeyPen(*chart()->fan, look.colours())});
    if (!chart()->settling.empty())
        entries.push_back({Words::tr("hatched: settling, not judged"), {}});
    if (!chart()->notes.empty())
        entries.push_back({Words::tr("numbers: notes in the journal"), {}});
    return entries;
}

/// The names of the lines at their ends, moved apart where they would touch.
void TemperaturePlot::addEndNames(Plot& plot, const PanelPlace& place) const
{
    const QFontMetricsF metrics(plot.small());
    struct Name {
        const ChartLine* line;
        double middle;
    };
    std::vector<Name> names;
    for (const ChartLine& line : chart()->lines) {
        if (isDrawn(line) && isNamedAtEnd(line, place, plot.look().font))
            names.push_back({&line, plot.y(endOf(line, plot.across())->y())});
    }
    std::sort(names.begin(), names.end(),
              [](const Name& a, const Name& b) { return a.middle < b.middle; });
    for (std::size_t i = 1; i < names.size(); ++i)
        separateLabels(names[i - 1].middle, names[i].middle, metrics.height());
    for (const Name& name : names) {
        const bool beer = name.line->role == LineRole::beer;
        plot.addLabel(
            {shown(name.line->name),
             {plot.area().right() + 6.0, name.middle - metrics.height() / 2.0 + metrics.ascent()},
             beer ? setupText(chart()->setup, plot.colours()) : plot.colours().muted,
             beer ? LabelFont::bold : LabelFont::small});
    }
}

void TemperaturePlot::addMarks(Plot& plot, const PanelPlace& place) const
{
    addStretches(plot, *chart(), true);
    for (const StageBox& stage : chart()->stages)
        plot.marks().stages.push_back({stage.time.fromMs, stage.time.toMs, shown(stage.label)});
    for (const ExcursionMark& mark : chart()->excursions)
        plot.marks().rings.push_back({{mark.peakMs, mark.peakTemperature}, shown(mark.cause)});
    for (std::size_t i = 0; i < chart()->notes.size(); ++i)
        plot.marks().notes.push_back({chart()->notes[i].ms, QString::number(i + 1)});
    addEndNames(plot, place);
}

void TemperaturePlot::addTarget(Plot& plot) const
{
    QPolygonF line;
    for (const BandPiece& band : chart()->bands)
        line << QPointF(band.time.fromMs, band.startTarget)
             << QPointF(band.time.toMs, band.endTarget);
    if (const auto ahead = bandAhead(*chart()))
        line << QPointF(ahead->time.fromMs, ahead->startTarget)
             << QPointF(ahead->time.toMs, ahead->endTarget);
    plot.addLine(std::move(line), QPen(plot.colours().target, 1.5, Qt::DashLine));
}

void TemperaturePlot::addData(Plot& plot) const
{
    std::vector<QPolygonF> bands;
    for (const BandPiece& band : chart()->bands)
        bands.push_back(bandOutline(band));
    if (const auto ahead = bandAhead(*chart()))
        bands.push_back(bandOutline(*ahead));
    if (!bands.empty())
        plot.addArea(joinedAreas(bands), plot.colours().band);
    if (chart()->fan)
        addFan(plot, *chart()->fan);
    for (const ChartLine& line : chart()->lines) {
        if (!isDrawn(line))
            continue;
        if (line.role == LineRole::beer)
            addTarget(plot);
        addTrack(plot, line.track, line.pyramid, penOf(line.role, chart()->setup, plot.colours()));
    }
}

void addStretches(Plot& plot, const RunChart& chart, bool named)
{
    const auto add = [&](const Stretch& time, Shading shading, const QString& name) {
        plot.marks().stretches.push_back(
            {time.fromMs, time.toMs, shading, named ? name : QString()});
    };
    for (const Stretch& stretch : chart.settling)
        add(stretch, Shading::slanted, {});
    for (const Stretch& gap : chart.gaps)
        add(gap, Shading::plain, Words::tr("no data"));
    for (const LeftOutStretch& each : chart.leftOut)
        add(each.time, Shading::upright, Words::tr("left out"));
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
    const Milliseconds length = wholeMs(mark.outsideMs);
    QString words =
        Words::tr("Outside from %1, %2, up to %3 %4 %5 the band")
            .arg(shown(localShortText(chart.instantOf(mark.time.fromMs), chart.zone)),
                 shown(durationText(length, decimalSign())), numberText(past, 1),
                 shown(unitText(chart.unit)), mark.above ? Words::tr("above") : Words::tr("below"));
    return mark.cause.empty() ? words : words + QStringLiteral(" · ") + shown(mark.cause);
}

} // namespace holdband::ui
