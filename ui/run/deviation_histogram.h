// The distribution of the hold time over the deviation from target, with the band's edges.
#pragma once

#include "core/analysis/distribution.h"
#include "core/results/run/run_review.h"
#include "ui/charts/plot.h"

#include <QWidget>

namespace holdband::ui {

/// The histogram as values in the logbook's unit.
struct DeviationBars {
    analysis::Distribution distribution; ///< K
    double tolerance = 0.0;              ///< K; the widest of the stages
    TemperatureUnit unit = TemperatureUnit::celsius;
    int setup = 0; ///< of setupColour
};
DeviationBars deviationBars(const results::RunReview& review);

/// The plot in a box; the axis across is in K. `bars` must not be empty.
Plot deviationPlot(const DeviationBars& bars, const QRectF& box, const PictureLook& look);

class DeviationHistogram : public QWidget {
    Q_OBJECT
public:
    explicit DeviationHistogram(QWidget* parent = nullptr);
    void setBars(DeviationBars bars);
    const DeviationBars& bars() const { return m_bars; }
    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override;

private:
    Plot plot() const;
    QString wordsOf(std::size_t bin) const;

    DeviationBars m_bars;
};

} // namespace holdband::ui
