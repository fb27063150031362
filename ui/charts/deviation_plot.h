// How far the beer was from its target: the band, and the time outside it.
#pragma once

#include "ui/charts/run_plot.h"

namespace holdband::ui {

class DeviationPlot : public RunPlot {
public:
    DeviationPlot();

protected:
    ValueRange range(const PanelPlace& place) const override;
    void addUpAxis(Plot& plot) const override;
    QString emptyText() const override;
    void addMarks(Plot& plot, const PanelPlace& place) const override;
    void addData(Plot& plot) const override;

private:
    void addOutside(Plot& plot, const ExcursionMark& mark) const;
};

/// The range of values of the shown part: the band and the excursions in it. The change to a new
/// target is not included, because it would make everything else tiny.
ValueRange deviationRange(const RunChart& chart, Span shown);

} // namespace holdband::ui
