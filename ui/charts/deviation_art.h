// Draws how far the beer was from its target: the band, and the time outside it.
#pragma once

#include "ui/charts/panel_art.h"

namespace holdband::ui {

class DeviationArt : public PanelArt {
public:
    DeviationArt();
    void setChart(const RunChart* chart) override;

protected:
    ValueRange range(const PanelPlace&) const override { return m_range; }
    std::vector<double> ticksOf(ValueRange range, int most) const override;
    QString emptyText() const override;
    void paintBehind(PanelCanvas& canvas) const override;
    void paintData(PanelCanvas& canvas) const override;

private:
    void paintOutside(PanelCanvas& canvas, const ExcursionMark& mark) const;

    ValueRange m_range{-1.0, 1.0};
    double m_widest = 0.5; ///< the widest tolerance
};

/// The range of values that the panel shows: the band and all excursions. The change to a new
/// target is not included, because it would make everything else tiny.
ValueRange deviationRange(const RunChart& chart);

} // namespace holdband::ui
