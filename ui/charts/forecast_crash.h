// When it would be cold: the temperature of the crash over the hours after turning down, as past
// crashes went, with the range in which nine in ten lie.
#pragma once

#include "ui/charts/forecast_sides.h"
#include "ui/charts/plot.h"

#include <algorithm>

namespace holdband::ui {

class ForecastCrashPicture : public PlotPicture {
public:
    explicit ForecastCrashPicture(const results::NextBatch& review);

    bool empty() const { return m_fans.empty(); }
    std::vector<Plot> plots(QSizeF size, const PictureLook& look) const override;
    double heightFor(double width) const override { return std::min(0.72 * width, 300.0); }

private:
    struct Fan {
        ForecastSide side;
        std::vector<double> shape; ///< share of the hours, at equal steps of temperature
        double hours = 0.0;
        double low = 0.0;
        double high = 0.0;
    };
    QPolygonF curve(const Fan& fan, double hours) const;
    void addFan(Plot& plot, const Fan& fan, std::size_t index) const;

    std::vector<Fan> m_fans;
    bool m_fahrenheit = false;
    double m_from = 0.0; ///< in the shown unit
    double m_to = 0.0;   ///< the upper edge of the band
    double m_bandLow = 0.0;
};

} // namespace holdband::ui
