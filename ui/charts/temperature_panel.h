// Beer, target and band, room, chamber and coolant; stages as a strip on top; gaps shaded, settling
// hatched, excursions ringed.
#pragma once

#include "ui/charts/panel.h"
#include "ui/charts/run_chart.h"

namespace holdband::ui {

class TemperaturePanel : public ChartPanel {
    Q_OBJECT
public:
    explicit TemperaturePanel(TimeView& time, QWidget* parent = nullptr);
    /// `chart` must outlive the panel or the next call.
    void setChart(const RunChart* chart);
    /// Chamber and coolant swing widely and hide the band: they are drawn only when asked for.
    void setCoolingShown(bool shown);
    bool isDrawn(const ChartLine& line) const;

protected:
    ValueRange range() const override { return m_range; }
    QString emptyWords() const override;
    int headRoom() const override;
    void paintBehind(QPainter& painter, const PlotMap& map) override;
    void paintData(QPainter& painter, const PlotMap& map) override;
    void paintOver(QPainter& painter, const PlotMap& map) override;
    bool event(QEvent* event) override;

private:
    void paintBand(QPainter& painter, const PlotMap& map);
    void paintTarget(QPainter& painter, const PlotMap& map);
    void paintStages(QPainter& painter, const PlotMap& map);
    void paintRings(QPainter& painter, const PlotMap& map);
    void paintCause(QPainter& painter, const PlotMap& map, const ExcursionMark& mark,
                    double& wordsEnd);
    QPointF ringCentre(const PlotMap& map, const ExcursionMark& mark) const;
    void paintNotes(QPainter& painter, const PlotMap& map);
    void paintKey(QPainter& painter, const PlotMap& map);
    QRectF noteBox(const PlotMap& map, std::size_t note) const;
    QColor colourOf(LineRole role) const;

    ValueRange rangeOf(const RunChart& chart) const;

    const RunChart* m_chart = nullptr;
    ValueRange m_range;
    bool m_coolingShown = false;
};

/// "4 Apr 01:20 · lid opened"
QString noteWords(const RunChart& chart, std::size_t note);

/// "Outside from 4 Apr 01:20, 3 h 27 min, up to 3.1 °F above the band · lid open"
QString excursionWords(const RunChart& chart, const ExcursionMark& mark);

} // namespace holdband::ui
