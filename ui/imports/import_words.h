// The result of looking at a log, or of importing it, as words and tables.
#pragma once

#include "core/intake/import.h"
#include "core/store/readings.h"
#include "ui/imports/decision.h"
#include "ui/tables/table_model.h"

namespace holdband::ui {

/// A row for each column: what it becomes, its unit, new, already there, conflicting.
TableWords countsTable(const intake::ImportReport& report);
/// The first rows that were left out, with line and reason.
TableWords rejectedTable(const intake::ImportReport& report);
/// What was guessed, each with its reason.
QStringList reasonsOf(const intake::ImportReport& report);
/// "loop.csv: 10,185 rows read, 30,555 readings new, …"
QString countsSentence(const intake::ImportReport& report);

/// What the Problem asks to be decided.
Decision decisionIn(const Problem& problem);
/// The Problem with the way out that this page offers.
QString problemWords(const Problem& problem);

/// The imports that were kept, the latest first.
TableWords pastTable(const std::vector<store::RawImport>& imports);

QString countText(std::int64_t count);

} // namespace holdband::ui
