// A file that a logger goes on writing, or a folder of them: what is new since it was looked at
// last, and that into the logbook. Only whole lines are read; a last line without its end waits.
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

/// How far a file was read, and how.
struct FileSeen {
    std::int64_t bytes = 0; ///< up to the end of its last whole line
    std::int64_t lines = 0; ///< in them
    std::string digest;     ///< of their first and last 4 KiB
    ColumnMap map;
    LogLayout layout;
    std::int64_t import = 0; ///< that got its rows; 0: none
    std::string day;         ///< the local day of that import

    bool operator==(const FileSeen&) const = default;
};

enum class FileNews {
    nothing,
    first,    ///< never read before
    grown,    ///< new whole lines behind those that were read
    shrunk,   ///< shorter than what was read
    replaced, ///< what was read is not there any more
};

struct FileLook {
    FileNews news = FileNews::nothing;
    std::int64_t bytes = 0; ///< up to the end of the last whole line
    std::int64_t lines = 0;
    std::string digest;
    bool bytewise = true; ///< lines end in a line feed of one byte: new ones can be read alone
};

/// Problem (file): it can't be read.
Result<FileLook> lookAtFile(const std::string& path, const std::optional<FileSeen>& seen);

/// What one look at a watched path brought.
struct WatchReport {
    std::string path;
    std::int64_t added = 0;
    std::vector<std::string> remarks;  ///< "loop.csv was replaced by another file: read anew"
    std::vector<std::string> problems; ///< sentences: what needs a person
};

/// Looks at all watched files, keeps what is new (each file in a change of its own that undo passes
/// over; one import for each file and local day), and remembers how far it came. `memory`: of the
/// looks before; what needs a person is said again from there.
Result<std::vector<WatchReport>> pollWatches(const store::LogbookFile& logbook,
                                             WatchMemory& memory);

/// How far the files of a watch were read, by file name; as text (JSON) and back.
using WatchState = std::vector<std::pair<std::string, FileSeen>>;
std::string watchStateText(const WatchState& state);
WatchState watchStateFrom(const std::string& text);

} // namespace holdband::intake
