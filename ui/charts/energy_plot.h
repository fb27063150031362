// The cumulative energy since pitching: readings as dots, the line between them as an estimate, the
// bounds as a pale ribbon.
#pragma once

#include "ui/charts/run_plot.h"

namespace holdband::ui {

class EnergyPlot : public RunPlot {
public:
    EnergyPlot();
    void setChart(const RunChart* chart) override;

protected:
    ValueRange range(const PanelPlace& place) const override;
    QString emptyText() const override;
    std::vector<PlotKey> key(const PanelPlace& place, const PictureLook& look) const override;
    void addMarks(Plot& plot, const PanelPlace& place) const override;
    void addData(Plot& plot) const override;

private:
    void addRibbons(Plot& plot) const;
    void addEstimate(Plot& plot) const;
    void addReadings(Plot& plot) const;
    /// Of the setup.
    QColor energyColour(const Plot& plot) const;
    QColor energyFill(const Plot& plot) const;

    ValueRange m_range;
};

} // namespace holdband::ui
