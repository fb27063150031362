#include "ui/charts/season_picture.h"

#include "ui/words/words.h"

#include <QFontMetrics>
#include <algorithm>
#include <cmath>

namespace holdband::ui {

namespace {

constexpr double leastLabel = 34.0; ///< narrower bars share a label
constexpr double mostWidth = 64.0;  ///< of a bar

} // namespace

SeasonPicture::Bar SeasonPicture::barOf(const results::SeasonLine& line)
{
    Bar bar;
    bar.name = shown(line.batch);
    bar.mark = shown(line.mark);
    bar.metered = line.energy.any();
    bar.kwh = line.energy.kwh;
    bar.bounded = bar.metered && line.energy.lowKnown() && line.energy.highKnown();
    bar.low = bar.bounded ? line.energy.low : bar.kwh;
    bar.high = bar.bounded ? line.energy.high : bar.kwh;
    return bar;
}

SeasonPicture::SeasonPicture(const results::Season& season) : m_setup(season.setupIndex)
{
    for (const results::SeasonLine& line : season.batches)
        m_bars.push_back(barOf(line));
}

bool SeasonPicture::empty() const
{
    return std::none_of(m_bars.begin(), m_bars.end(), [](const Bar& bar) { return bar.metered; });
}

void SeasonPicture::addBars(Plot& plot) const
{
    const double half = std::min(0.62, plot.acrossOf(mostWidth)) / 2.0;
    PlotBars bars{{}, mixed(setupLine(m_setup, plot.colours()), plot.colours().card, 0.5)};
    for (std::size_t i = 0; i < m_bars.size(); ++i) {
        const double middle = static_cast<double>(i) + 0.5;
        if (m_bars[i].metered)
            bars.bars.push_back({middle - half, middle + half, m_bars[i].kwh});
    }
    plot.addBars(std::move(bars));
}

void SeasonPicture::addWhisker(Plot& plot, const Bar& bar, double middle, double top) const
{
    const QPen pen(plot.colours().text, 1.2);
    const double half = plot.acrossOf(4.0);
    plot.addLine({{QPointF(middle, bar.low), QPointF(middle, top)}}, pen);
    for (const double end : {top, bar.low})
        plot.addLine({{QPointF(middle - half, end), QPointF(middle + half, end)}}, pen);
}

/// The figure above the bar, and below it the batch's name and mark.
void SeasonPicture::addTexts(Plot& plot, const Bar& bar, double middle, double top) const
{
    const QFontMetrics metrics(plot.small());
    const double foot = plot.area().bottom() + 4.0 + metrics.ascent();
    const double slot = plot.area().width() / static_cast<double>(m_bars.size());
    const int width = static_cast<int>(std::max(slot, leastLabel)) - 4;
    const auto add = [&](const QString& text, double base, const QColor& colour) {
        const double left = plot.x(middle) - metrics.horizontalAdvance(text) / 2.0;
        plot.addLabel({text, {left, base}, colour});
    };
    const auto fit = [&](const QString& text) {
        return metrics.elidedText(text, Qt::ElideRight, width);
    };
    add(bar.metered ? numberText(bar.kwh, 1) : QStringLiteral("–"), plot.y(top) - 4.0,
        plot.colours().text);
    add(fit(bar.name), foot, plot.colours().text);
    add(fit(bar.mark), foot + metrics.height(), plot.colours().muted);
}

std::vector<Plot> SeasonPicture::plots(QSizeF size, const PictureLook& look) const
{
    double most = 0.0;
    for (const Bar& bar : m_bars)
        most = std::max({most, bar.kwh, std::min(bar.high, 1.5 * bar.kwh)});
    const auto count = static_cast<double>(m_bars.size());
    Plot plot(QRectF({}, size), look);
    plot.leaveBelow(2);
    plot.setRanges({0.0, count}, {0.0, most > 0.0 ? most * 1.14 : 1.0});
    plot.setHeading(Words::tr("Energy of each batch, kWh"),
                    Words::tr("whisker: the bounds of reading"));
    plot.addUpAxis();
    addBars(plot);
    const double slot = plot.area().width() / count;
    const auto every = static_cast<std::size_t>(std::ceil(leastLabel / std::max(slot, 0.1)));
    const double highest = plot.up().high - plot.upOf(14.0); // leaves space for the figure
    for (std::size_t i = 0; i < m_bars.size(); ++i) {
        const double middle = static_cast<double>(i) + 0.5;
        const double top = std::min(highest, m_bars[i].high);
        if (m_bars[i].bounded)
            addWhisker(plot, m_bars[i], middle, top);
        if (i % every == 0)
            addTexts(plot, m_bars[i], middle, top);
    }
    return {plot};
}

} // namespace holdband::ui
