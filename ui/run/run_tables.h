// The tables beside the charts of a run, as words: stages, excursions, journal.
#pragma once

#include "core/results/run/run_review.h"
#include "ui/run/cause_dialog.h"
#include "ui/tables/table_model.h"

namespace holdband::ui {

TableWords stageTable(const review::RunReview& review);
TableWords excursionTable(const review::RunReview& review);
/// "28 Mar 19:15 · lid found open"
QStringList journalLines(const review::RunReview& review);

/// Which they are in the review, in the order of excursionTable.
std::vector<ExcursionPlace> excursionPlaces(const review::RunReview& review);

/// When the excursions were, in the order of excursionTable.
std::vector<Span> excursionSpans(const review::RunReview& review);

/// "None shorter than 10 min left out." and the like, beneath the excursions.
QString excursionRemark(const review::RunReview& review);

/// "Loop · pitched 26 Feb 17:30 · 5 gal · 1.052 → 1.011"
QString runSubtitle(const review::RunReview& review);

} // namespace holdband::ui
