// The panel of the deviation in the window; deviation_art.h draws it.
#pragma once

#include "ui/charts/deviation_art.h"
#include "ui/charts/panel.h"

namespace holdband::ui {

class DeviationPanel : public ChartPanel {
    Q_OBJECT
public:
    explicit DeviationPanel(TimeView& time, QWidget* parent = nullptr);

private:
    PanelArt& art() override { return m_art; }
    const PanelArt& art() const override { return m_art; }

    DeviationArt m_art;
};

} // namespace holdband::ui
