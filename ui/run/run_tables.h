// The tables beside the charts of a run, as text: stages, excursions, journal.
#pragma once

#include "core/results/run/run_review.h"
#include "ui/run/cause_dialog.h"
#include "ui/tables/table_model.h"

namespace holdband::ui {

TableText stageTable(const results::RunReview& review);
TableText excursionTable(const results::RunReview& review);
/// "28 Mar 19:15 · lid found open"
QStringList journalLines(const results::RunReview& review);

/// The place of each excursion in the review, in the order of excursionTable.
std::vector<ExcursionPlace> excursionPlaces(const results::RunReview& review);

/// The span of each excursion, in the order of excursionTable.
std::vector<Span> excursionSpans(const results::RunReview& review);

/// A remark below the excursions, such as "None shorter than 10 min left out.".
QString excursionRemark(const results::RunReview& review);

/// "Loop · pitched 26 Feb 17:30 · 5 gal · 1.052 → 1.011"
QString runSubtitle(const results::RunReview& review);

} // namespace holdband::ui
