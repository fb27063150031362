// Draws beer, target and band, room, chamber and coolant; stages as a strip on top; gaps shaded,
// settling hatched, excursions ringed.
#pragma once

#include "ui/charts/panel_art.h"

namespace holdband::ui {

class TemperatureArt : public PanelArt {
public:
    TemperatureArt();
    void setChart(const RunChart* chart) override;
    /// Chamber and coolant vary widely and hide the band, so they are drawn only on request.
    void setCoolingShown(bool shown);
    bool isDrawn(const ChartLine& line) const;
    /// The numbered square of a remark of the journal.
    QRectF noteBox(const PlotMap& map, const QFont& font, std::size_t note) const;

    /// The excursion whose ring is at that place; null if there is none.
    const ExcursionMark* ringAt(const PlotMap& map, QPointF place) const;

protected:
    ValueRange range(const PanelPlace&) const override { return m_range; }
    QString emptyText() const override;
    std::vector<KeyEntry> key(const Colours& colours) const override;
    double headRoom(const QFont& font) const override;
    void paintBehind(PanelCanvas& canvas) const override;
    void paintData(PanelCanvas& canvas) const override;
    void paintOver(PanelCanvas& canvas) const override;

private:
    void paintTarget(PanelCanvas& canvas) const;
    void paintStages(PanelCanvas& canvas) const;
    void paintRings(PanelCanvas& canvas) const;
    void paintCause(PanelCanvas& canvas, const ExcursionMark& mark, double& wordsEnd) const;
    QPointF ringCentre(const PlotMap& map, const ExcursionMark& mark) const;
    void paintNotes(PanelCanvas& canvas) const;
    ValueRange rangeOf(const RunChart& chart) const;

    ValueRange m_range;
    bool m_coolingShown = false;
};

/// "4 Apr 01:20 · lid opened"
QString noteWords(const RunChart& chart, std::size_t note);

/// "Outside from 4 Apr 01:20, 3 h 27 min, up to 3.1 °F above the band · lid open"
QString excursionText(const RunChart& chart, const ExcursionMark& mark);

} // namespace holdband::ui
