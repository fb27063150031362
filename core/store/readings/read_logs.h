// Logs whose every row is in the logbook, so that the same file, or a longer one that begins with
// it, need not be read again.
#pragma once

#include "core/store/logbook_file.h"
#include "core/store/records/ids.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>

namespace holdband::store {

/// A file as it was when all of its rows were stored.
struct ReadLog {
    std::string asked; ///< digest of everything that decides how its rows are read
    std::string head;  ///< digest of its first bytes
    std::int64_t bytes = 0;
    std::int64_t lines = 0;
};

/// The same, as the logbook knows it.
struct StoredLog {
    ReadLog log;
    ImportId import; ///< the last one that added rows of it
    std::string sha256;
    std::int64_t rowsRead = 0;
    std::map<std::string, std::int64_t> readings; ///< by sensor, of all imports that added some
};

/// `before`: the import with the rows above those that `import` added; absent: it added all rows.
/// Not recorded for undo: it only counts while its imports are in force.
Done addReadLog(const Change& change, ImportId import, std::optional<ImportId> before,
                const ReadLog& log);

/// The longest one of at most `bytes` bytes that was read like that and began so, and whose imports
/// are all in force.
Result<std::optional<StoredLog>> longestStoredLog(const LogbookFile& logbook,
                                                  const std::string& asked, const std::string& head,
                                                  std::int64_t bytes);

/// Whether any log was read like that.
Result<bool> hasLogAskedAs(const LogbookFile& logbook, const std::string& asked);

} // namespace holdband::store
