// What the next batch would use: a bar for each setup, stacked by stage, with the range in which
// nine such batches in ten lie.
#pragma once

#include "ui/charts/forecast_sides.h"
#include "ui/charts/plot.h"

namespace holdband::ui {

class ForecastEnergyPicture : public PlotPicture {
public:
    explicit ForecastEnergyPicture(const results::NextBatch& review);

    bool empty() const { return m_bars.empty(); }
    std::vector<Plot> plots(QSizeF size, const PictureLook& look) const override;
    double heightFor(double width) const override;

private:
    struct Segment {
        QString stage;
        double kwh = 0.0;
    };
    struct Bar {
        ForecastSide side;
        std::vector<Segment> segments;
        double kwh = 0.0;
        double low = 0.0;
        double high = 0.0;
    };
    double most() const;
    void addBar(Plot& plot, std::size_t index) const;
    void addSegments(Plot& plot, const Bar& bar, double row, bool withStages) const;
    void addWhisker(Plot& plot, const Bar& bar, double row) const;

    std::vector<Bar> m_bars; ///< of the setups that have a forecast
};

} // namespace holdband::ui
