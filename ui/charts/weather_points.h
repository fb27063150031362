// The same-weather model of two setups: mean power between readings over the lift, the fitted line,
// and its interval.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "ui/charts/pair_sides.h"
#include "ui/charts/panel_art.h"
#include "ui/charts/picture.h"

namespace holdband::ui {

class PlotFrame;

class WeatherPicture : public Picture {
public:
    WeatherPicture(const results::SameWeather& weather, TemperatureUnit unit, PairSides sides);

    bool empty() const { return m_a.pairs.empty() && m_b.pairs.empty(); }
    void paint(QPainter& painter, QSizeF size, const PictureLook& look) const override;
    double heightFor(double width) const override { return 0.42 * width; }

private:
    double inUnit(double kelvins) const;
    ValueRange lifts() const; ///< in the display's unit
    ValueRange powers() const;
    void paintModel(QPainter& painter, const PlotFrame& frame, const analysis::LiftModel& model,
                    bool first, const PictureLook& look) const;
    void paintPoints(QPainter& painter, const PlotFrame& frame, const analysis::LiftModel& model,
                     bool first, const PictureLook& look) const;
    void paintReference(QPainter& painter, const PlotFrame& frame, const PictureLook& look) const;

    analysis::LiftModel m_a;
    analysis::LiftModel m_b;
    std::optional<double> m_reference; ///< K
    TemperatureUnit m_unit;
    PairSides m_sides;
};

} // namespace holdband::ui
