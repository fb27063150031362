// How far the beer was from its target: the histogram, and a few summary figures.
#pragma once

#include "core/results/run/run_review.h"
#include "ui/run/deviation_histogram.h"
#include "ui/tables/table_card.h"

namespace holdband::ui {

/// Mean, spread, RMS and the middle 90 % of the deviation.
TableText deviationTable(const results::RunReview& review);

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
