// The panels of a run as a picture: those with data, on one time axis.
#pragma once

#include "ui/charts/plot.h"
#include "ui/charts/run_plot.h"

#include <memory>

namespace holdband::ui {

class RunPicture : public PlotPicture {
public:
    explicit RunPicture(RunChart chart);
    ~RunPicture() override;

    /// Nothing was logged or metered, so there is nothing to paint.
    bool empty() const { return m_panels.empty(); }
    std::vector<Plot> plots(QSizeF size, const PictureLook& look) const override;
    double heightFor(double width) const override;

private:
    struct Panel {
        std::unique_ptr<RunPlot> plot;
        double share; ///< of the height, relative to the others
    };
    void add(std::unique_ptr<RunPlot> plot, double share);

    RunChart m_chart;
    std::vector<Panel> m_panels;
};

} // namespace holdband::ui
