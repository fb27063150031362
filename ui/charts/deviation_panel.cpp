#include "ui/charts/deviation_panel.h"

namespace holdband::ui {

DeviationPanel::DeviationPanel(TimeView& time, QWidget* parent) : ChartPanel(time, parent)
{
    setMinimumHeight(70);
    setHeading(m_plot.heading());
}

} // namespace holdband::ui
