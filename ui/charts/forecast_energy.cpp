#include "ui/charts/forecast_energy.h"

#include "ui/words/words.h"

#include <QFontMetricsF>
#include <algorithm>

namespace holdband::ui {

namespace {

constexpr double barHalf = 0.26;     // of a row
constexpr double whiskerBelow = 0.4; // below the row's middle
constexpr double rowHeight = 64.0;
constexpr double aroundRows = 92.0;

/// Later stages are paler.
QColor segmentFill(const QColor& side, std::size_t stage, const Colours& colours)
{
    const double share = std::max(0.3, 0.95 - 0.22 * static_cast<double>(stage));
    return mixed(side, colours.card, share);
}

QColor readableOn(const QColor& fill, const Colours& colours)
{
    return contrast(colours.text, fill) >= contrast(colours.card, fill) ? colours.text
                                                                        : colours.card;
}

int decimalsOf(double kwh)
{
    return kwh < 1.0 ? 2 : 1;
}

} // namespace

ForecastEnergyPicture::ForecastEnergyPicture(const results::NextBatch& review)
{
    const ForecastSides sides = sidesOf(review);
    for (std::size_t i = 0; i < review.setups.size(); ++i) {
        const results::SetupForecast& setup = review.setups[i];
        if (!setup.usable())
            continue;
        Bar bar;
        bar.side = sides[i];
        for (const analysis::StageForecast& stage : setup.stages)
            bar.segments.push_back({shown(stage.label), stage.energy.kwh});
        bar.kwh = setup.energy.total->kwh;
        bar.low = setup.energy.total->low();
        bar.high = setup.energy.total->high();
        m_bars.push_back(std::move(bar));
    }
}

double ForecastEnergyPicture::heightFor(double) const
{
    return aroundRows + rowHeight * static_cast<double>(m_bars.size());
}

double ForecastEnergyPicture::most() const
{
    double most = 0.0;
    for (const Bar& bar : m_bars)
        most = std::max(most, bar.high);
    return most;
}

std::vector<Plot> ForecastEnergyPicture::plots(QSizeF size, const PictureLook& look) const
{
    Plot plot(QRectF({}, size), look);
    double names = 0.0;
    for (const Bar& bar : m_bars)
        names = std::max(names, QFontMetricsF(plot.bold()).horizontalAdvance(bar.side.name));
    names = std::min(names + 14.0, 0.3 * size.width());
    plot.leaveBelow(1);
    plot.leaveRight(10.0);
    plot.setArea(plot.area().adjusted(names - Plot::leftMargin, 0.0, 0.0, 0.0));
    plot.setRanges({0.0, std::max(1.12 * most(), 0.1)},
                   {-0.62, static_cast<double>(m_bars.size()) - 0.38});
    plot.setHeading(Words::tr("Energy by stage, kWh"), Words::tr("line below: nine in ten"));
    plot.addAcrossAxis();
    for (std::size_t i = 0; i < m_bars.size(); ++i)
        addBar(plot, i);
    return {plot};
}

void ForecastEnergyPicture::addBar(Plot& plot, std::size_t index) const
{
    const Bar& bar = m_bars[index];
    const double row = static_cast<double>(m_bars.size() - 1 - index);
    addSegments(plot, bar, row, index == 0);
    addWhisker(plot, bar, row);
    const double room = plot.area().left() - 10.0;
    plot.addRowLabel(row,
                     QFontMetricsF(plot.bold()).elidedText(bar.side.name, Qt::ElideRight, room),
                     bar.side.text(plot.colours()));
}

void ForecastEnergyPicture::addSegments(Plot& plot, const Bar& bar, double row,
                                        bool withStages) const
{
    const QFontMetricsF small(plot.small());
    const double gap = plot.acrossOf(1.0);
    double from = 0.0;
    for (std::size_t i = 0; i < bar.segments.size(); ++i) {
        const Segment& segment = bar.segments[i];
        const double to = from + segment.kwh;
        const QColor fill = segmentFill(bar.side.line(plot.colours()), i, plot.colours());
        plot.addArea(
            QRectF(QPointF(from, row - barHalf), QPointF(std::max(from, to - gap), row + barHalf)),
            fill);
        const double width = plot.x(to) - plot.x(from);
        const QString number = numberText(segment.kwh, decimalsOf(segment.kwh));
        const auto centred = [&](const QString& text) {
            return plot.x(from) + (width - small.horizontalAdvance(text)) / 2.0;
        };
        if (small.horizontalAdvance(number) + 6.0 < width)
            plot.addLabel({number,
                           {centred(number), plot.y(row) + small.ascent() / 2.0 - 1.0},
                           readableOn(fill, plot.colours())});
        if (withStages && small.horizontalAdvance(segment.stage) + 4.0 < width)
            plot.addLabel({segment.stage,
                           {centred(segment.stage), plot.y(row + barHalf) - 4.0},
                           plot.colours().muted});
        from = to;
    }
}

void ForecastEnergyPicture::addWhisker(Plot& plot, const Bar& bar, double row) const
{
    const double at = row - whiskerBelow;
    const double end = plot.upOf(4.0);
    const QPen pen(plot.colours().text, 1.4);
    plot.addLine({{QPointF(bar.low, at), QPointF(bar.high, at)}}, pen);
    for (const double edge : {bar.low, bar.high})
        plot.addLine({{QPointF(edge, at - end), QPointF(edge, at + end)}}, pen);
    plot.addDots({{{QPointF(bar.kwh, at)}}, plot.colours().text, DotShape::disc, 6.0});
    const QString total = numberText(bar.kwh, decimalsOf(bar.kwh));
    const QFontMetricsF bold(plot.bold());
    const double after = plot.x(bar.high) + 8.0;
    const bool fits = after + bold.horizontalAdvance(total) < plot.area().right();
    const double before = plot.x(bar.low) - 8.0 - bold.horizontalAdvance(total);
    plot.addLabel({total,
                   {fits ? after : before, plot.y(at) + bold.ascent() / 2.0 - 1.0},
                   plot.colours().text,
                   LabelFont::bold});
}

} // namespace holdband::ui
