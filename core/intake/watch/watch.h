// Watches a file that a logger appends to, or a folder of such files, and imports the rows
// that are new since the last poll. Only complete lines are read; an unfinished last line waits. A
// packed file or a workbook is read as a whole whenever it has changed.
#pragma once

#include "core/intake/log/column_map.h"
#include "core/intake/watch/watch_memory.h"
#include "core/store/logbook_file.h"
#include "core/store/records/ids.h"
#include "core/store/records/watches.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace holdband::intake {

/// How far a file was read, and with which result.
struct FileSeen {
    std::int64_t bytes = 0; ///< up to the end of its last complete line
    std::int64_t lines = 0; ///< number of those lines
    std::string digest;     ///< of the first and last 4 KiB of those bytes
    ColumnMap map;
    LogLayout layout;
    std::int64_t import = 0; ///< the import with its rows; 0: none
    std::string day;         ///< the local day of that import

    bool operator==(const FileSeen&) const = default;
};

enum class FileNews {
    nothing,
    first,    ///< never read before
    grown,    ///< new complete lines after those already read, or another content of a packed file
    shrunk,   ///< shorter than the part already read
    replaced, ///< the part already read has changed
};

struct FileState {
    FileNews news = FileNews::nothing;
    std::int64_t bytes = 0; ///< up to the end of the last complete line
    std::int64_t lines = 0;
    std::string digest;
    /// Lines end in a line feed of one byte, and stand for themselves: new ones can be read alone.
    bool bytewise = true;
};

/// Of a watched folder: as many logs are read, the first ones by name. A poll says if there are
/// more.
inline constexpr std::size_t mostWatchedFiles = 1'000;

/// Problem (file): it can't be read.
Result<FileState> inspectFile(const std::string& path, const std::optional<FileSeen>& seen);

/// Whether the lines that were there at that look are still there.
bool stillHas(const std::string& path, const FileState& look);

/// The result of one poll of a watched path.
struct WatchReport {
    std::string path;
    std::int64_t added = 0;
    /// Sentences such as "loop.csv was replaced by another file: …".
    std::vector<std::string> remarks;
    std::vector<std::string> problems; ///< sentences about files that need the user's attention
};

/// Polls all watched files, stores the new rows (each file in its own change, which undo skips; one
/// import for each file and local day), and records how far it read. `memory`: from earlier polls;
/// open problems are reported again from it.
Result<std::vector<WatchReport>> pollWatches(const store::LogbookFile& logbook,
                                             WatchMemory& memory);

/// How far the files of a watch were read, by file name; converted to text (JSON) and back.
using WatchState = std::vector<std::pair<std::string, FileSeen>>;
std::string watchStateText(const WatchState& state);
WatchState watchStateFrom(const std::string& text);

} // namespace holdband::intake
