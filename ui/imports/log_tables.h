// The raw rows of a log, the resulting readings, and the rows behind each count, as text for
// tables.
#pragma once

#include "core/text/zone.h"
#include "ui/imports/log_state.h"
#include "ui/tables/table_model.h"

namespace holdband::ui {

/// The first rows as they are: line, then the cells.
TableWords rawTable(const intake::LogPreview& preview);
/// The readings from the same rows: time, then each sensor's and meter's value.
TableWords resultTable(const LogState& log, const Zone& zone);

enum class Fate { added, alreadyThere, conflicting, rejected };

/// The first rows with that outcome.
TableWords fateTable(const intake::ImportReport& report, Fate fate, const Zone& zone);
std::int64_t countOf(const intake::ImportReport& report, Fate fate);
/// "2,345 new"
QString countWords(std::int64_t count, Fate fate);
/// The heading above the opened rows.
QString fateTitle(const intake::ImportReport& report, Fate fate);

} // namespace holdband::ui
