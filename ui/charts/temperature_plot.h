// Beer, target and band, room, chamber and coolant; stages as a strip on top; gaps shaded, settling
// hatched, excursions ringed.
#pragma once

#include "ui/charts/run_plot.h"

namespace holdband::ui {

class TemperaturePlot : public RunPlot {
public:
    TemperaturePlot();
    /// Chamber and coolant vary widely and hide the band, so they are drawn only on request.
    void setCoolingShown(bool shown) { m_coolingShown = shown; }
    bool isDrawn(const ChartLine& line) const;

protected:
    ValueRange range(const PanelPlace& place) const override;
    QString emptyText() const override;
    std::vector<PlotKey> key(const PanelPlace& place, const PictureLook& look) const override;
    double headRoom(const QFont& font) const override;
    void addMarks(Plot& plot, const PanelPlace& place) const override;
    void addData(Plot& plot) const override;

private:
    bool isNamedAtEnd(const ChartLine& line, const PanelPlace& place, const QFont& font) const;
    void addEndNames(Plot& plot, const PanelPlace& place) const;
    void addTarget(Plot& plot) const;

    bool m_coolingShown = false;
};

/// Gaps, settling and what was left out by hand.
void addStretches(Plot& plot, const RunChart& chart, bool named);

/// "4 Apr 01:20 · lid opened"
QString noteWords(const RunChart& chart, std::size_t note);

/// "Outside from 4 Apr 01:20, 3 h 27 min, up to 3.1 °F above the band · lid open"
QString excursionText(const RunChart& chart, const ExcursionMark& mark);

} // namespace holdband::ui
