// What was chosen for the last file of a shape: kept in the logbook.
#pragma once

#include "core/intake/column_map.h"
#include "core/store/logbook_file.h"

namespace holdband::intake {

std::optional<ColumnMap> rememberedMap(const store::LogbookFile& logbook, const std::string& shape);
/// Best effort: an import that was kept stays kept where this fails.
void rememberMap(const store::LogbookFile& logbook, const std::string& shape, const ColumnMap& map);

} // namespace holdband::intake
