#include "ui/charts/deviation_panel.h"

namespace holdband::ui {

DeviationPanel::DeviationPanel(TimeView& time, QWidget* parent) : ChartPanel(time, parent)
{
    setMinimumHeight(6 * fontMetrics().height());
    setHeading(m_plot.heading());
}

} // namespace holdband::ui
