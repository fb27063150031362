#include "ui/run/deviation_card.h"

#include "core/results/run/explain.h"
#include "core/text/quantities.h"
#include "ui/charts/panel.h"
#include "ui/words/words.h"

#include <QHelpEvent>
#include <QPainter>
#include <QToolTip>
#include <QVBoxLayout>
#include <algorithm>

namespace holdband::ui {

namespace {

double inUnit(double kelvins, TemperatureUnit unit)
{
    return valueIn(TemperatureDifference::kelvins(kelvins), unit);
}

QString degrees(double kelvins, TemperatureUnit unit)
{
    return signedText(inUnit(kelvins, unit), 2) + QLatin1Char(' ') + shown(unitText(unit));
}

} // namespace

TableText deviationTable(const results::RunReview& review)
{
    TableText table;
    table.header = {{}, {}};
    table.numeric = {false, true};
    const analysis::TimeMoments& deviation = review.figures.judged.deviation;
    if (deviation.empty())
        return table;
    const TemperatureUnit unit = review.settings.temperatureUnit();
    const auto add = [&](const QString& what, const QString& figure, results::Figure how) {
        const QString why = shown(results::explain(review, how, decimalSign()));
        table.rows.push_back({{what, why, false}, {figure, why, true}});
    };
    const auto size = [&](double kelvins) {
        return numberText(inUnit(kelvins, unit), 2) + QLatin1Char(' ') + shown(unitText(unit));
    };
    add(Words::tr("mean"), degrees(deviation.mean(), unit), results::Figure::meanDeviation);
    add(Words::tr("spread (standard deviation)"), size(deviation.standardDeviation()),
        results::Figure::spread);
    add(Words::tr("size (root mean square)"), size(deviation.rootMeanSquare()),
        results::Figure::rmsDeviation);
    return table;
}

DeviationBars deviationBars(const results::RunReview& review)
{
    DeviationBars bars;
    bars.unit = review.settings.temperatureUnit();
    const analysis::JudgedBatch& judged = review.figures.judged;
    for (const analysis::PlacedStage& stage : judged.stages)
        bars.tolerance = std::max(bars.tolerance, stage.tolerance.kelvins());
    const auto extent = analysis::extentOf(judged);
    if (extent && bars.tolerance > 0.0)
        bars.distribution =
            analysis::distributionOf(judged, analysis::bandEdges(bars.tolerance, *extent, 6, 3));
    return bars;
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
    return {200, 84 + QFontMetrics(smallFont(*this)).height()};
}

QRectF DeviationHistogram::plot() const
{
    return QRectF(rect()).adjusted(6.0, 4.0, -6.0, -QFontMetrics(smallFont(*this)).height() - 5.0);
}

double DeviationHistogram::x(double kelvins) const
{
    const double low = m_bars.distribution.edges.front();
    const double high = m_bars.distribution.edges.back();
    return plot().left() + (kelvins - low) / (high - low) * plot().width();
}

void DeviationHistogram::paintBars(QPainter& painter) const
{
    const Colours& colours = coloursOf(*this);
    const analysis::Distribution& all = m_bars.distribution;
    const double most = *std::max_element(all.binMs.begin(), all.binMs.end());
    painter.fillRect(QRectF(QPointF(x(-m_bars.tolerance), plot().top()),
                            QPointF(x(m_bars.tolerance), plot().bottom())),
                     colours.band);
    for (std::size_t bin = 0; bin < all.binMs.size() && most > 0.0; ++bin) {
        if (all.binMs[bin] <= 0.0)
            continue;
        const double height = std::max(1.0, all.binMs[bin] / most * plot().height());
        const QRectF bar(QPointF(x(all.edges[bin]) + 0.5, plot().bottom() - height),
                         QPointF(x(all.edges[bin + 1]) - 0.5, plot().bottom()));
        const double middle = (all.edges[bin] + all.edges[bin + 1]) / 2.0;
        painter.fillRect(bar,
                         std::abs(middle) <= m_bars.tolerance ? colours.beer : colours.excursion);
    }
}

void DeviationHistogram::paintAxis(QPainter& painter) const
{
    const Colours& colours = coloursOf(*this);
    painter.setFont(smallFont(*this));
    const QFontMetrics metrics(painter.font());
    painter.setPen(colours.fieldEdge);
    painter.drawLine(plot().bottomLeft(), plot().bottomRight());
    for (const double at : {-m_bars.tolerance, 0.0, m_bars.tolerance}) {
        painter.setPen(QPen(colours.target, 1.0, Qt::DashLine));
        painter.drawLine(QPointF(x(at), plot().top()), QPointF(x(at), plot().bottom()));
        const QString label =
            at == 0.0 ? Words::tr("target") : signedText(inUnit(at, m_bars.unit), 1);
        const double half = metrics.horizontalAdvance(label) / 2.0;
        painter.setPen(colours.muted);
        painter.drawText(QPointF(std::clamp(x(at) - half, 0.0, width() - 2.0 * half),
                                 plot().bottom() + 3.0 + metrics.ascent()),
                         label);
    }
}

void DeviationHistogram::paintEvent(QPaintEvent*)
{
    if (m_bars.distribution.binMs.empty())
        return;
    QPainter painter(this);
    paintBars(painter);
    paintAxis(painter);
}

QString DeviationHistogram::wordsOf(std::size_t bin) const
{
    const analysis::Distribution& all = m_bars.distribution;
    return Words::tr("%1 to %2: %3")
        .arg(degrees(all.edges[bin], m_bars.unit), degrees(all.edges[bin + 1], m_bars.unit),
             shown(shareText(all.share(bin), 1, decimalSign())));
}

bool DeviationHistogram::event(QEvent* event)
{
    if (event->type() != QEvent::ToolTip)
        return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const analysis::Distribution& all = m_bars.distribution;
    for (std::size_t bin = 0; bin < all.binMs.size(); ++bin) {
        if (help->pos().x() >= x(all.edges[bin]) && help->pos().x() < x(all.edges[bin + 1]))
            QToolTip::showText(help->globalPos(),
                               Words::tr("%1 of the held time").arg(wordsOf(bin)), this);
    }
    return true;
}

DeviationCard::DeviationCard(QWidget* parent)
    : TableCard(Words::tr("How far from target"), 0, parent),
      m_histogram(new DeviationHistogram(this))
{
    contents()->insertWidget(0, m_histogram);
    setHeaderShown(false);
}

void DeviationCard::setReview(const results::RunReview& review)
{
    m_histogram->setBars(deviationBars(review));
    setWords(deviationTable(review));
    setVisible(!review.figures.judged.deviation.empty());
}

} // namespace holdband::ui
