// The raw rows of a log, what they become, and the rows behind each count, as words for tables.
#pragma once

#include "core/text/zone.h"
#include "ui/imports/log_state.h"
#include "ui/tables/table_model.h"

namespace holdband::ui {

/// The first rows as they are: line, then the cells.
TableWords rawTable(const intake::LogPreview& preview);
/// What the same rows become: time, then each sensor's and meter's value.
TableWords resultTable(const LogState& log, const Zone& zone);

enum class Fate { added, alreadyThere, conflicting, rejected };

/// The first rows of that fate.
TableWords fateTable(const intake::ImportReport& report, Fate fate, const Zone& zone);
std::int64_t countOf(const intake::ImportReport& report, Fate fate);
/// "2,345 new"
QString countWords(std::int64_t count, Fate fate);
/// What stands above the opened rows.
QString fateTitle(const intake::ImportReport& report, Fate fate);

} // namespace holdband::ui
