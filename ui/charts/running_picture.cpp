#include "ui/charts/running_picture.h"

#include "core/text/times.h"
#include "ui/charts/ticks.h"
#include "ui/words/words.h"

#include <QFontMetrics>
#include <algorithm>
#include <numeric>

namespace holdband::ui {

namespace {

constexpr double nameGap = 8.0;    ///< from the end of a line to its name
constexpr double tickRoom = 78.0;  ///< the width of a time's label
constexpr double mostNames = 0.25; ///< the share of the width that names may take

} // namespace

void spreadLabels(std::vector<double>& heights, double least, double bottom)
{
    std::vector<std::size_t> order(heights.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return heights[a] < heights[b]; });
    for (std::size_t i = 1; i < order.size(); ++i)
        heights[order[i]] = std::max(heights[order[i]], heights[order[i - 1]] + least);
    double lowest = bottom;
    for (auto i = order.rbegin(); i != order.rend(); ++i) {
        heights[*i] = std::min(heights[*i], lowest);
        lowest = heights[*i] - least;
    }
}

QString RunningPicture::summary() const
{
    QStringList parts;
    for (const results::RunningBatch& batch : m_energy.batches)
        parts << Words::tr("%1: %2 kWh since %3")
                     .arg(ui::shown(batch.batch), numberText(batch.curve.back().kwh, 1),
                          ui::shown(localShortText(batch.curve.front().at, m_energy.zone)));
    return parts.join(QStringLiteral(" · "));
}

Span RunningPicture::shown() const
{
    Span span{m_energy.batches.front().curve.front().at, m_energy.now};
    for (const results::RunningBatch& batch : m_energy.batches) {
        span.start = std::min(span.start, batch.curve.front().at);
        span.end = std::max(span.end, batch.curve.back().at);
    }
    return span;
}

double RunningPicture::mostKwh() const
{
    double most = 0.0;
    for (const results::RunningBatch& batch : m_energy.batches)
        most = std::max(most, batch.curve.back().kwh);
    return most > 0.0 ? most * 1.08 : 1.0;
}

double RunningPicture::msOf(Instant at) const
{
    return static_cast<double>((at - shown().start).count());
}

void RunningPicture::addTimes(Plot& plot) const
{
    const int most = std::max(2, static_cast<int>(plot.area().width() / tickRoom));
    std::vector<PlotTick> ticks;
    for (const TimeTick& tick : timeTicks(shown(), m_energy.zone, most))
        ticks.push_back({msOf(tick.at), ui::shown(tick.label), tick.midnight});
    plot.addTimes(std::move(ticks), {});
}

void RunningPicture::addLine(Plot& plot, const results::RunningBatch& batch) const
{
    const QColor colour = setupLine(batch.setupIndex, plot.colours());
    QPolygonF line;
    PlotDots dots{{}, colour, DotShape::disc, 5.2};
    for (const results::EnergyPoint& point : batch.curve) {
        if (point.afterHole)
            line << lineGap();
        line << QPointF(msOf(point.at), point.kwh);
        if (point.read)
            dots.points << line.back();
    }
    plot.addLine(std::move(line), QPen(colour, 2.0));
    plot.addDots(std::move(dots));
}

void RunningPicture::addNames(Plot& plot, const QStringList& names) const
{
    const QFontMetrics metrics(plot.bold());
    const double middle = metrics.ascent() / 2.0 - 1.0;
    std::vector<double> bases;
    for (const results::RunningBatch& batch : m_energy.batches)
        bases.push_back(plot.y(batch.curve.back().kwh) + middle);
    spreadLabels(bases, metrics.height(), plot.area().bottom());
    for (std::size_t i = 0; i < bases.size(); ++i)
        plot.addLabel({names[static_cast<qsizetype>(i)],
                       {plot.area().right() + nameGap, bases[i]},
                       setupText(m_energy.batches[i].setupIndex, plot.colours()),
                       LabelFont::bold});
}

std::vector<Plot> RunningPicture::plots(QSizeF size, const PictureLook& look) const
{
    Plot plot(QRectF({}, size), look);
    const QFontMetrics metrics(plot.bold());
    QStringList names;
    int widest = 0;
    for (const results::RunningBatch& batch : m_energy.batches) {
        names << metrics.elidedText(
            Words::tr("%1, %2 kWh", "a batch and its energy")
                .arg(ui::shown(batch.batch), numberText(batch.curve.back().kwh, 1)),
            Qt::ElideMiddle, static_cast<int>(mostNames * size.width()));
        widest = std::max(widest, metrics.horizontalAdvance(names.back()));
    }
    plot.leaveRight(widest + 2.0 * nameGap);
    plot.leaveBelow(1);
    plot.setRanges({0.0, std::max(msOf(shown().end), 1.0)}, {0.0, mostKwh()});
    plot.setHeading(Words::tr("Energy of the running batches since pitching, kWh"),
                    Words::tr("dots: readings"));
    plot.addUpAxis();
    addTimes(plot);
    for (const results::RunningBatch& batch : m_energy.batches)
        addLine(plot, batch);
    addNames(plot, names);
    return {plot};
}

} // namespace holdband::ui
