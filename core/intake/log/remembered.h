// The choices made for the last file of a shape: stored in the logbook, and used instead of the
// guesses.
#pragma once

#include "core/intake/csv/preview.h"
#include "core/intake/log/column_map.h"
#include "core/store/logbook_file.h"

namespace holdband::intake {

std::optional<ColumnMap> rememberedMap(const store::LogbookFile& logbook, const std::string& shape);

/// Stores the choices for files of the preview's shape; with a requested layout, for files in which
/// the same layout was found. Best effort: if this fails, the import remains stored.
void rememberMap(const store::LogbookFile& logbook, const LogPreview& preview,
                 const ColumnMap& map);

/// A previewed log with its initial choices.
struct PreviewedLog {
    LogPreview preview;
    ColumnMap map;
    bool remembered = false; ///< whether the choices come from an earlier file of this shape
};

/// Problems as for previewLog. `layoutRequest`: the layout that the user requested.
Result<PreviewedLog> openPreview(const store::LogbookFile& logbook, const LogSource& source,
                                 const LayoutRequest& layoutRequest = {});
/// As openPreview, with these choices instead of the remembered ones.
Result<PreviewedLog> openPreviewWith(const store::LogbookFile& logbook, const LogSource& source,
                                     const ColumnMap& chosen);
/// For a file that changed after its preview: uses the earlier choices if its shape is unchanged,
/// else treats it as a new file.
Result<PreviewedLog> openChangedPreview(const store::LogbookFile& logbook, const LogSource& source,
                                        const ColumnMap& chosen, const std::string& shape);
/// Uses guesses only, not the remembered choices.
Result<PreviewedLog> detectAgain(const store::LogbookFile& logbook, const LogSource& source);

} // namespace holdband::intake
