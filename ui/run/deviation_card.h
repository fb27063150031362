// The distribution of the hold time over the deviation from target: a histogram with the band's
// edges, and a few summary figures.
#pragma once

#include "core/analysis/distribution.h"
#include "core/results/run/run_review.h"
#include "ui/tables/table_card.h"

namespace holdband::ui {

/// Mean, spread, RMS and the middle 90 % of the deviation.
TableText deviationTable(const results::RunReview& review);

/// The histogram as values in the logbook's unit.
struct DeviationBars {
    analysis::Distribution distribution; ///< K
    double tolerance = 0.0;              ///< K; the widest of the stages
    TemperatureUnit unit = TemperatureUnit::celsius;
};
DeviationBars deviationBars(const results::RunReview& review);

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
    QRectF plot() const;
    double x(double kelvins) const;
    void paintBars(QPainter& painter) const;
    void paintAxis(QPainter& painter) const;
    QString wordsOf(std::size_t bin) const;

    DeviationBars m_bars;
};

class DeviationCard : public TableCard {
    Q_OBJECT
public:
    explicit DeviationCard(QWidget* parent = nullptr);
    void setReview(const results::RunReview& review);
    DeviationHistogram* histogram() const { return m_histogram; }

private:
    DeviationHistogram* m_histogram;
};

} // namespace holdband::ui
