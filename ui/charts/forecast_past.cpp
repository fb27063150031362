#include "ui/charts/forecast_past.h"

#include "ui/words/words.h"

#include <QFontMetricsF>
#include <algorithm>

namespace holdband::ui {

namespace {

constexpr std::size_t mostOfASetup = 8; // more rows than can be read say no more
constexpr double pastRowHeight = 24.0;
constexpr double aroundPastRows = 74.0;

} // namespace

ForecastPastPicture::ForecastPastPicture(const results::NextBatch& review)
{
    const ForecastSides sides = sidesOf(review);
    for (std::size_t i = 0; i < review.setups.size(); ++i) {
        std::vector<Row> rows;
        for (const analysis::BacktestedBatch& batch : review.setups[i].backtest.batches) {
            const auto& total = batch.forecast.total;
            if (total && batch.judged())
                rows.push_back({shown(batch.batch), sides[i], total->kwh, total->low(),
                                total->high(), batch.cameKwh});
        }
        const std::size_t skipped = rows.size() - std::min(rows.size(), mostOfASetup);
        m_rows.insert(m_rows.end(), rows.begin() + static_cast<std::ptrdiff_t>(skipped),
                      rows.end());
    }
}

double ForecastPastPicture::heightFor(double) const
{
    return aroundPastRows + pastRowHeight * static_cast<double>(m_rows.size());
}

ValueRange ForecastPastPicture::range() const
{
    double low = m_rows.empty() ? 0.0 : m_rows.front().low;
    double high = 0.0;
    for (const Row& row : m_rows) {
        low = std::min({low, row.low, row.came});
        high = std::max({high, row.high, row.came});
    }
    const double margin = 0.06 * std::max(high - low, 0.1);
    return {std::max(0.0, low - margin), high + margin};
}

std::vector<Plot> ForecastPastPicture::plots(QSizeF size, const PictureLook& look) const
{
    Plot plot(QRectF({}, size), look);
    double names = 0.0;
    for (const Row& row : m_rows)
        names = std::max(names, QFontMetricsF(plot.bold()).horizontalAdvance(row.batch));
    names = std::min(names + 14.0, 0.3 * size.width());
    plot.leaveBelow(1);
    plot.leaveRight(10.0);
    plot.setArea(plot.area().adjusted(names - Plot::leftMargin, 0.0, 0.0, 0.0));
    plot.setRanges(range(), {-0.6, static_cast<double>(m_rows.size()) - 0.4});
    plot.setHeading(Words::tr("How well would it have known? (kWh)"),
                    Words::tr("pale: nine in ten · line: forecast · dot: what came"));
    plot.addAcrossAxis();
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        addRow(plot, i);
    return {plot};
}

void ForecastPastPicture::addRow(Plot& plot, std::size_t index) const
{
    const Row& row = m_rows[index];
    const double up = static_cast<double>(m_rows.size() - 1 - index);
    const double half = plot.upOf(6.0);
    const QColor colour = row.side.line(plot.colours());
    plot.addArea(QRectF(QPointF(row.low, up - half), QPointF(row.high, up + half)),
                 paleOf(colour, 70));
    const double mark = plot.upOf(8.0);
    plot.addLine({{QPointF(row.forecast, up - mark), QPointF(row.forecast, up + mark)}},
                 QPen(colour, 2.0));
    plot.addDots({{{QPointF(row.came, up)}},
                  plot.colours().text,
                  DotShape::disc,
                  8.0,
                  QPen(plot.colours().card, 1.0)});
    const double room = plot.area().left() - 10.0;
    plot.addRowLabel(up, QFontMetricsF(plot.bold()).elidedText(row.batch, Qt::ElideRight, room),
                     row.side.text(plot.colours()));
}

} // namespace holdband::ui
