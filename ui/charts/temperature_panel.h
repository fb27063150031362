// The panel of the temperatures in the window, with tooltips for stages and remarks;
// temperature_plot.h draws it.
#pragma once

#include "ui/charts/panel.h"
#include "ui/charts/temperature_plot.h"

namespace holdband::ui {

class TemperaturePanel : public ChartPanel {
    Q_OBJECT
public:
    explicit TemperaturePanel(TimeView& time, QWidget* parent = nullptr);
    /// See TemperaturePlot.
    void setCoolingShown(bool shown);
    bool isDrawn(const ChartLine& line) const { return m_plot.isDrawn(line); }

protected:
    bool event(QEvent* event) override;

private:
    RunPlot& plot() override { return m_plot; }
    const RunPlot& plot() const override { return m_plot; }

    TemperaturePlot m_plot;
};

} // namespace holdband::ui
