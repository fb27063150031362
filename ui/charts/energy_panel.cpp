#include "ui/charts/energy_panel.h"

namespace holdband::ui {

EnergyPanel::EnergyPanel(TimeView& time, QWidget* parent) : ChartPanel(time, parent)
{
    setMinimumHeight(7 * fontMetrics().height());
    setHeading(m_plot.heading());
}

} // namespace holdband::ui
