// The panel of the temperatures in the window, with tooltips for stages and remarks;
// temperature_art.h draws it.
#pragma once

#include "ui/charts/panel.h"
#include "ui/charts/temperature_art.h"

namespace holdband::ui {

class TemperaturePanel : public ChartPanel {
    Q_OBJECT
public:
    explicit TemperaturePanel(TimeView& time, QWidget* parent = nullptr);
    /// See TemperatureArt.
    void setCoolingShown(bool shown);
    bool isDrawn(const ChartLine& line) const { return m_art.isDrawn(line); }

protected:
    bool event(QEvent* event) override;

private:
    PanelArt& art() override { return m_art; }
    const PanelArt& art() const override { return m_art; }

    TemperatureArt m_art;
};

} // namespace holdband::ui
