// The raw rows of a log, the resulting readings, and the rows behind each count, as text for
// tables.
#pragma once

#include "core/text/zone.h"
#include "ui/imports/log_state.h"
#include "ui/tables/table_model.h"

namespace holdband::ui {

/// The first rows as they are: line, then the cells.
TableText rawTable(const intake::LogPreview& preview);
/// The readings from the same rows: time, then each sensor's and meter's value.
TableText resultTable(const LogState& log, const Zone& zone);

enum class RowOutcome { added, alreadyThere, conflicting, rejected };

/// The first rows with that outcome.
TableText outcomeTable(const intake::ImportReport& report, RowOutcome outcome, const Zone& zone);
std::int64_t countOf(const intake::ImportReport& report, RowOutcome outcome);
/// "2,345 new"
QString countWords(std::int64_t count, RowOutcome outcome);
/// The heading above the opened rows.
QString outcomeTitle(const intake::ImportReport& report, RowOutcome outcome);

} // namespace holdband::ui
