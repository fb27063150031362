// The panel of the energy in the window; energy_plot.h draws it.
#pragma once

#include "ui/charts/energy_plot.h"
#include "ui/charts/panel.h"

namespace holdband::ui {

class EnergyPanel : public ChartPanel {
    Q_OBJECT
public:
    explicit EnergyPanel(TimeView& time, QWidget* parent = nullptr);

private:
    RunPlot& plot() override { return m_plot; }
    const RunPlot& plot() const override { return m_plot; }

    EnergyPlot m_plot;
};

} // namespace holdband::ui
