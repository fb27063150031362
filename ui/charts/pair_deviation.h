// Deviation from target of two batches over the same elapsed time, with the band behind them.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "ui/charts/decimate.h"
#include "ui/charts/pair_sides.h"
#include "ui/charts/plot.h"

namespace holdband::ui {

class PairDeviationPicture : public PlotPicture {
public:
    PairDeviationPicture(const results::DeviationCharts& charts, TemperatureUnit unit,
                         PairSides sides);

    bool empty() const { return !(m_endMs > 0.0); }
    std::vector<Plot> plots(QSizeF size, const PictureLook& look) const override;
    double heightFor(double width) const override { return 0.24 * width; }

private:
    struct Line {
        analysis::Track track; ///< in the display's unit
        TrackPyramid pyramid;
        std::vector<std::pair<double, double>> settling;
    };
    Line lineOf(const std::optional<results::DeviationLine>& line) const;
    ValueRange range() const;
    void addLine(Plot& plot, const Line& line, bool first) const;

    TemperatureUnit m_unit;
    PairSides m_sides;
    double m_toleranceA = 0.0; ///< in the display's unit
    double m_toleranceB = 0.0;
    Line m_a;
    Line m_b;
    double m_endMs = 0.0;
};

} // namespace holdband::ui
