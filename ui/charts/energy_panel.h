// Cumulative energy since pitching: readings as dots, the line between them an estimate, the bounds
// as a pale ribbon.
#pragma once

#include "ui/charts/panel.h"
#include "ui/charts/run_chart.h"

namespace holdband::ui {

class EnergyPanel : public ChartPanel {
    Q_OBJECT
public:
    explicit EnergyPanel(TimeView& time, QWidget* parent = nullptr);
    /// `chart` must outlive the panel or the next call.
    void setChart(const RunChart* chart);

protected:
    ValueRange range() const override;
    QString emptyWords() const override;
    void paintBehind(QPainter& painter, const PlotMap& map) override;
    void paintData(QPainter& painter, const PlotMap& map) override;
    void paintOver(QPainter& painter, const PlotMap& map) override;

private:
    QPointF place(const PlotMap& map, double ms, double kwh) const;
    void paintReset(QPainter& painter, QPointF at);
    void paintRibbon(QPainter& painter, const PlotMap& map);

    const RunChart* m_chart = nullptr;
    ValueRange m_range;
};

} // namespace holdband::ui
