// A bar for the energy of each batch of a setup, with the bounds as a whisker.
#pragma once

#include "core/results/overview/season.h"
#include "ui/charts/plot.h"

#include <vector>

namespace holdband::ui {

class SeasonPicture : public PlotPicture {
public:
    explicit SeasonPicture(const results::Season& season);

    /// Nothing was metered.
    bool empty() const;
    std::vector<Plot> plots(QSizeF size, const PictureLook& look) const override;
    double heightFor(double width) const override { return 0.42 * width; }

private:
    struct Bar {
        QString name;
        QString mark;
        double kwh = 0.0;
        double low = 0.0;
        double high = 0.0;
        bool bounded = false;
        bool metered = false;
    };
    static Bar barOf(const results::SeasonLine& line);
    void addBars(Plot& plot) const;
    void addWhisker(Plot& plot, const Bar& bar, double middle, double top) const;
    void addTexts(Plot& plot, const Bar& bar, double middle, double top) const;

    std::vector<Bar> m_bars;
    int m_setup = 0; ///< of setupColour
};

} // namespace holdband::ui
