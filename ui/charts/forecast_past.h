// How well past batches would have been forecast: a row for each with the range and the figure that
// the others give, and what it used.
#pragma once

#include "ui/charts/forecast_sides.h"
#include "ui/charts/plot.h"

namespace holdband::ui {

class ForecastPastPicture : public PlotPicture {
public:
    explicit ForecastPastPicture(const results::NextBatch& review);

    bool empty() const { return m_rows.empty(); }
    std::vector<Plot> plots(QSizeF size, const PictureLook& look) const override;
    double heightFor(double width) const override;

private:
    struct Row {
        QString batch;
        ForecastSide side;
        double forecast = 0.0; ///< kWh
        double low = 0.0;
        double high = 0.0;
        double came = 0.0;
    };
    ValueRange range() const;
    void addRow(Plot& plot, std::size_t index) const;

    std::vector<Row> m_rows; ///< the latest ones of each setup that could be judged
};

} // namespace holdband::ui
