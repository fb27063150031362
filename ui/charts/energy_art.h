// Draws the cumulative energy since pitching: readings as dots, the line between them as an
// estimate, the bounds as a pale ribbon.
#pragma once

#include "ui/charts/panel_art.h"

namespace holdband::ui {

class EnergyArt : public PanelArt {
public:
    EnergyArt();
    void setChart(const RunChart* chart) override;

protected:
    ValueRange range(const PanelPlace& place) const override;
    QString emptyText() const override;
    std::vector<KeyEntry> key(const Colours&) const override;
    void paintBehind(PanelCanvas& canvas) const override;
    void paintData(PanelCanvas& canvas) const override;
    void paintOver(PanelCanvas& canvas) const override;

private:
    QPointF place(const PlotMap& map, double ms, double kwh) const;
    void paintReset(PanelCanvas& canvas, QPointF at) const;
    void paintRibbon(PanelCanvas& canvas) const;

    ValueRange m_range;
};

} // namespace holdband::ui
