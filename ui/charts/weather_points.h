// The same-weather model of two setups: mean power between readings over the lift, the fitted line,
// and its interval.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "ui/charts/pair_sides.h"
#include "ui/charts/plot.h"

namespace holdband::ui {

class WeatherPicture : public PlotPicture {
public:
    WeatherPicture(const results::SameWeather& weather, TemperatureUnit unit, PairSides sides);

    bool empty() const { return m_a.pairs.empty() && m_b.pairs.empty(); }
    std::vector<Plot> plots(QSizeF size, const PictureLook& look) const override;
    double heightFor(double width) const override { return 0.42 * width; }

private:
    double inUnit(double kelvins) const;
    ValueRange lifts() const; ///< in the display's unit
    ValueRange powers() const;
    void addModel(Plot& plot, const analysis::LiftModel& model, bool first) const;
    void addPoints(Plot& plot, const analysis::LiftModel& model, bool first) const;
    void addBatchNames(Plot& plot) const;
    void addReference(Plot& plot) const;

    analysis::LiftModel m_a;
    analysis::LiftModel m_b;
    std::optional<double> m_reference; ///< K
    TemperatureUnit m_unit;
    PairSides m_sides;
};

} // namespace holdband::ui
