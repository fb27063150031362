// A workbook (.xlsx, ECMA-376): a zip archive of XML files. One sheet is read as a table.
#pragma once

#include "core/intake/container/table_text.h"
#include "core/intake/container/zip_archive.h"
#include "core/problem.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace holdband {

/// Whether the archive is a document of an office program, a workbook or another.
bool isOfficeDocument(const std::vector<ZipEntry>& entries);

/// The names of the sheets that are not hidden; all if every one is. The first is read if none is
/// named. Problem (data): no workbook, or damaged.
Result<std::vector<std::string>> shownSheets(std::string_view archive,
                                             const std::vector<ZipEntry>& entries);

/// The sheet of that name, else the first one that is not hidden. Rows are lines of the CSV with
/// the same number; dates are local times; of formulas the stored values; hidden rows and columns
/// are read like others. `most`: bytes of the CSV after which the reading stops; absent: all is
/// read, at most mostWhole. Problem (data): no workbook, damaged, no such sheet (with their names).
Result<TableText> sheetTable(std::string_view archive, const std::vector<ZipEntry>& entries,
                             const std::optional<std::string>& sheet,
                             std::optional<std::int64_t> most);

} // namespace holdband
