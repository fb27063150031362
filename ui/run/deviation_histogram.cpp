#include "ui/run/deviation_histogram.h"

#include "core/text/quantities.h"
#include "ui/words/words.h"

#include <QHelpEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <cmath>

namespace holdband::ui {

namespace {

QString deviationText(double kelvins, TemperatureUnit unit)
{
    return signedText(valueIn(TemperatureDifference::kelvins(kelvins), unit), 2) +
           QLatin1Char(' ') + shown(unitText(unit));
}

/// The bars of the bins inside the band, or of those outside.
PlotBars barsOf(const Plot& plot, const DeviationBars& bars, bool inside)
{
    const analysis::Distribution& all = bars.distribution;
    const double gap = plot.acrossOf(0.5);
    const double least = plot.upOf(1.0); // so that a short time is visible
    PlotBars found{{}, inside ? setupLine(bars.setup, plot.colours()) : plot.colours().excursion};
    for (std::size_t bin = 0; bin < all.binMs.size(); ++bin) {
        const double middle = (all.edges[bin] + all.edges[bin + 1]) / 2.0;
        if (all.binMs[bin] > 0.0 && (std::abs(middle) <= bars.tolerance) == inside)
            found.bars.push_back(
                {all.edges[bin] + gap, all.edges[bin + 1] - gap, std::max(least, all.share(bin))});
    }
    return found;
}

std::vector<PlotTick> bandTicks(const DeviationBars& bars)
{
    std::vector<PlotTick> ticks;
    for (const double at : {-bars.tolerance, 0.0, bars.tolerance})
        ticks.push_back(
            {at, at == 0.0
                     ? Words::tr("target")
                     : signedText(valueIn(TemperatureDifference::kelvins(at), bars.unit), 1)});
    return ticks;
}

} // namespace

DeviationBars deviationBars(const results::RunReview& review)
{
    DeviationBars bars;
    bars.unit = review.settings.temperatureUnit();
    bars.setup = review.setupIndex;
    const analysis::JudgedBatch& judged = review.figures.judged;
    for (const analysis::PlacedStage& stage : judged.stages)
        bars.tolerance = std::max(bars.tolerance, stage.tolerance.kelvins());
    const auto extent = analysis::extentOf(judged);
    if (extent && bars.tolerance > 0.0)
        bars.distribution =
            analysis::distributionOf(judged, analysis::bandEdges(bars.tolerance, *extent, 6, 3));
    return bars;
}

Plot deviationPlot(const DeviationBars& bars, const QRectF& box, const PictureLook& look)
{
    const analysis::Distribution& all = bars.distribution;
    Plot plot(box, look);
    plot.setArea(box.adjusted(6.0, 4.0, -6.0, -QFontMetricsF(plot.small()).height() - 5.0));
    double most = 0.0;
    for (std::size_t bin = 0; bin < all.binMs.size(); ++bin)
        most = std::max(most, all.share(bin));
    plot.setRanges({all.edges.front(), all.edges.back()}, {0.0, most > 0.0 ? most : 1.0});
    plot.addArea(QRectF(QPointF(-bars.tolerance, 0.0), QPointF(bars.tolerance, plot.up().high)),
                 look.colours().band);
    for (const bool inside : {true, false}) {
        if (PlotBars found = barsOf(plot, bars, inside); !found.bars.empty())
            plot.addBars(std::move(found));
    }
    plot.addLevel(0.0, QPen(look.colours().fieldEdge, 1.0));
    for (const double at : {-bars.tolerance, 0.0, bars.tolerance})
        plot.addUpright(at, QPen(look.colours().target, 1.0, Qt::DashLine));
    plot.addAcrossTicks(bandTicks(bars));
    return plot;
}

DeviationHistogram::DeviationHistogram(QWidget* parent) : QWidget(parent)
{
    setAccessibleName(Words::tr("Distribution of the deviation"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void DeviationHistogram::setBars(DeviationBars bars)
{
    m_bars = std::move(bars);
    const analysis::Distribution& all = m_bars.distribution;
    setVisible(!all.binMs.empty());
    QStringList words;
    for (std::size_t bin = 0; bin < all.binMs.size(); ++bin) {
        if (all.share(bin) >= 0.005)
            words << wordsOf(bin);
    }
    setAccessibleDescription(words.join(QStringLiteral("; ")));
    update();
}

QSize DeviationHistogram::sizeHint() const
{
    return {200, 84 + QFontMetrics(smallFont(font())).height()};
}

Plot DeviationHistogram::plot() const
{
    PictureLook look;
    look.scheme = schemeOf(palette());
    look.font = font();
    look.columns = devicePixelRatioF();
    return deviationPlot(m_bars, rect(), look);
}

void DeviationHistogram::paintEvent(QPaintEvent*)
{
    if (m_bars.distribution.binMs.empty())
        return;
    QPainter painter(this);
    plot().draw(painter);
}

QString DeviationHistogram::wordsOf(std::size_t bin) const
{
    const analysis::Distribution& all = m_bars.distribution;
    return Words::tr("%1 to %2: %3")
        .arg(deviationText(all.edges[bin], m_bars.unit),
             deviationText(all.edges[bin + 1], m_bars.unit),
             shown(shareText(all.share(bin), 1, decimalSign())));
}

bool DeviationHistogram::event(QEvent* event)
{
    if (event->type() != QEvent::ToolTip)
        return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const analysis::Distribution& all = m_bars.distribution;
    const Plot drawn = plot();
    for (std::size_t bin = 0; bin < all.binMs.size(); ++bin) {
        if (help->pos().x() >= drawn.x(all.edges[bin]) &&
            help->pos().x() < drawn.x(all.edges[bin + 1]))
            QToolTip::showText(help->globalPos(),
                               Words::tr("%1 of the held time").arg(wordsOf(bin)), this);
    }
    return true;
}

} // namespace holdband::ui
