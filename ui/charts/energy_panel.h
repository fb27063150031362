// The panel of the energy in the window; energy_art.h draws it.
#pragma once

#include "ui/charts/energy_art.h"
#include "ui/charts/panel.h"

namespace holdband::ui {

class EnergyPanel : public ChartPanel {
    Q_OBJECT
public:
    explicit EnergyPanel(TimeView& time, QWidget* parent = nullptr);

private:
    PanelArt& art() override { return m_art; }
    const PanelArt& art() const override { return m_art; }

    EnergyArt m_art;
};

} // namespace holdband::ui
