// A log of one JSON object per line (JSON lines): its keys are the columns.
#pragma once

#include "core/intake/container/table_text.h"
#include "core/problem.h"

#include <string_view>

namespace holdband {

/// Whether the first line is a JSON object. Problem (data): JSON that goes over several lines.
Result<bool> isJsonLines(std::string_view head);

/// Whether it may be: cheap, and true for all that are.
bool mayBeJsonLines(std::string_view head);

/// The header is line 1, and the object of line N is line N + 1. Keys of an object in an object are
/// joined by a point ("probe.beer"), those of a list count from 0. Columns are in the order in
/// which their keys first occur. A line that is no object has its text in every column, so that it
/// is rejected as a row. Problem (data): over 1000 keys, or a line over 1 MiB.
Result<TableText> jsonLinesTable(std::string_view text);

} // namespace holdband
