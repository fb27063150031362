// How far the beer was from its target: the band, time outside it marked.
#pragma once

#include "ui/charts/panel.h"
#include "ui/charts/run_chart.h"

namespace holdband::ui {

class DeviationPanel : public ChartPanel {
    Q_OBJECT
public:
    explicit DeviationPanel(TimeView& time, QWidget* parent = nullptr);
    /// `chart` must outlive the panel or the next call.
    void setChart(const RunChart* chart);

protected:
    ValueRange range() const override { return m_range; }
    std::vector<double> ticksOf(ValueRange range, int most) const override;
    QString emptyWords() const override;
    void paintBehind(QPainter& painter, const PlotMap& map) override;
    void paintData(QPainter& painter, const PlotMap& map) override;

private:
    void paintOutside(QPainter& painter, const PlotMap& map, const ExcursionMark& mark);

    const RunChart* m_chart = nullptr;
    ValueRange m_range{-1.0, 1.0};
    double m_widest = 0.5; ///< the widest tolerance
};

/// The range of values that the panel shows: the band and all excursions, not the travel to a new
/// target, which would dwarf them.
ValueRange deviationRange(const RunChart& chart);

} // namespace holdband::ui
