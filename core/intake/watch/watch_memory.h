// Watched files that need the user's attention, remembered between two polls: such a file is not
// read again until it changes, or the logbook changes, which may have solved its problem. For one
// thread at a time.
#pragma once

#include "core/store/logbook_file.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <utility>

namespace holdband::intake {

/// Detects a change of a file on disk without reading it.
struct FileStamp {
    std::int64_t size = 0;
    std::int64_t changedNs = 0; ///< since 1970
    std::uint64_t node = 0;

    bool operator==(const FileStamp&) const = default;
};

/// Absent: there is no such file.
std::optional<FileStamp> stampOf(const std::string& path);

class WatchMemory {
public:
    /// Call before the files are polled. Forgets everything if the logbook is a different one, or
    /// was changed by anything but the last poll itself.
    Done begin(const store::LogbookFile& logbook);
    /// Call after the files were polled.
    Done end(const store::LogbookFile& logbook);

    /// The problem reported for the file, if the file has not changed.
    std::optional<std::string> problemOf(std::int64_t watch, const std::string& path,
                                         const std::optional<FileStamp>& stamp) const;
    void note(std::int64_t watch, const std::string& path, const std::optional<FileStamp>& stamp,
              const std::string& problem);
    void forget(std::int64_t watch, const std::string& path);

private:
    struct Noted {
        FileStamp stamp;
        std::string problem;
    };
    std::string m_logbook;
    std::string m_revision;
    std::map<std::pair<std::int64_t, std::string>, Noted> m_noted; ///< by watch and path
};

} // namespace holdband::intake
