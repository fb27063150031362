#include "ui/charts/season_picture.h"

#include "ui/charts/plot_frame.h"
#include "ui/words/words.h"

#include <QFontMetrics>
#include <algorithm>
#include <cmath>

namespace holdband::ui {

namespace {

constexpr double leastLabel = 34.0; ///< narrower bars share a label

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

SeasonPicture::SeasonPicture(const results::Season& season)
{
    for (const results::SeasonLine& line : season.batches)
        m_bars.push_back(barOf(line));
}

bool SeasonPicture::empty() const
{
    return std::none_of(m_bars.begin(), m_bars.end(), [](const Bar& bar) { return bar.metered; });
}

void SeasonPicture::paintBar(QPainter& painter, const Bar& bar, QRectF slot, double top,
                             double foot, bool labelled, const PictureLook& look) const
{
    const QFont small = smallFont(look.font);
    const QFontMetrics metrics(small);
    const double wide = std::min(0.62 * slot.width(), 64.0);
    const double middle = slot.center().x();
    painter.setFont(small);
    if (bar.metered) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(mixed(look.colours().energy, look.colours().card, 0.5));
        painter.drawRect(QRectF(middle - wide / 2.0, top, wide, foot - top));
    }
    if (!labelled)
        return;
    const QString figure = bar.metered ? numberText(bar.kwh, 1) : QStringLiteral("–");
    painter.setPen(look.colours().text);
    painter.drawText(QPointF(middle - metrics.horizontalAdvance(figure) / 2.0, slot.top() - 4.0),
                     figure);
    const auto below = [&](const QString& words, int line) {
        const QString fit = metrics.elidedText(
            words, Qt::ElideRight, static_cast<int>(std::max(slot.width(), leastLabel)) - 4);
        painter.drawText(QPointF(middle - metrics.horizontalAdvance(fit) / 2.0,
                                 foot + 4.0 + line * metrics.height() + metrics.ascent()),
                         fit);
    };
    below(bar.name, 0);
    painter.setPen(look.colours().muted);
    below(bar.mark, 1);
}

void SeasonPicture::paint(QPainter& painter, QSizeF size, const PictureLook& look) const
{
    double most = 0.0;
    for (const Bar& bar : m_bars)
        most = std::max({most, bar.kwh, std::min(bar.high, 1.5 * bar.kwh)});
    PlotFrame frame(painter, QRectF({}, size), {0.0, most > 0.0 ? most * 1.14 : 1.0}, look);
    frame.leaveBelow(2);
    frame.paintHeading(Words::tr("Energy of each batch, kWh"),
                       Words::tr("whisker: the bounds of reading"));
    frame.paintValueAxis();
    painter.setRenderHint(QPainter::Antialiasing);
    const double slot = frame.plot().width() / static_cast<double>(m_bars.size());
    const auto every = static_cast<std::size_t>(std::ceil(leastLabel / std::max(slot, 0.1)));
    for (std::size_t i = 0; i < m_bars.size(); ++i) {
        const Bar& bar = m_bars[i];
        const double left = frame.plot().left() + static_cast<double>(i) * slot;
        const double upper = std::max(frame.plot().top() + 14.0, frame.y(bar.high));
        const bool labelled = i % every == 0;
        paintBar(painter, bar, {left, upper, slot, 1.0}, frame.y(bar.kwh), frame.plot().bottom(),
                 labelled, look);
        if (!bar.bounded)
            continue;
        const double middle = left + slot / 2.0;
        painter.setPen(QPen(look.colours().text, 1.2));
        painter.drawLine(QPointF(middle, upper), QPointF(middle, frame.y(bar.low)));
        for (const double end : {upper, frame.y(bar.low)})
            painter.drawLine(QPointF(middle - 4.0, end), QPointF(middle + 4.0, end));
    }
}

} // namespace holdband::ui
