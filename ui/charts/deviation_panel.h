// The panel of the deviation in the window; deviation_plot.h draws it.
#pragma once

#include "ui/charts/deviation_plot.h"
#include "ui/charts/panel.h"

namespace holdband::ui {

class DeviationPanel : public ChartPanel {
    Q_OBJECT
public:
    explicit DeviationPanel(TimeView& time, QWidget* parent = nullptr);

private:
    RunPlot& plot() override { return m_plot; }
    const RunPlot& plot() const override { return m_plot; }

    DeviationPlot m_plot;
};

} // namespace holdband::ui
