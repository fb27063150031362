// What was chosen for the last file of a shape: kept in the logbook, and put in the guesses' place.
#pragma once

#include "core/intake/csv/preview.h"
#include "core/intake/log/column_map.h"
#include "core/store/logbook_file.h"

namespace holdband::intake {

std::optional<ColumnMap> rememberedMap(const store::LogbookFile& logbook, const std::string& shape);

/// For files of the preview's shape; a layout that was wished for, for files in which the same was
/// found. Best effort: an import that was kept stays kept where this fails.
void rememberMap(const store::LogbookFile& logbook, const LogPreview& preview,
                 const ColumnMap& map);

/// A log that was looked at, with the choices to begin with.
struct LookedLog {
    LogPreview preview;
    ColumnMap map;
    bool remembered = false; ///< the choices are those of an earlier file of this shape
};

/// Problem as previewLog. `wish`: of its layout, by a person.
Result<LookedLog> lookAtLog(const store::LogbookFile& logbook, const LogSource& source,
                            const LayoutWish& wish = {});
/// The same with these choices in the place of what is remembered.
Result<LookedLog> lookAtLogWith(const store::LogbookFile& logbook, const LogSource& source,
                                const ColumnMap& chosen);
/// A file that changed after it was looked at: with what was chosen where its shape is the same as
/// before, else as any other file.
Result<LookedLog> lookAtChangedLog(const store::LogbookFile& logbook, const LogSource& source,
                                   const ColumnMap& chosen, const std::string& shape);
/// Guesses alone.
Result<LookedLog> lookAtLogAnew(const store::LogbookFile& logbook, const LogSource& source);

} // namespace holdband::intake
