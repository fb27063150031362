// Watched files that need a person, remembered between two looks: such a file is not read again
// until it changes, or somebody changes the logbook, which may have settled what it asks.
// For one thread at a time.
#pragma once

#include "core/store/logbook_file.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <utility>

namespace holdband::intake {

/// By what a file on disk is told from another, without reading it.
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
    /// Before the files are looked at. Forgets all if the logbook is another, or was changed by
    /// anything but the last look itself.
    Done begin(const store::LogbookFile& logbook);
    /// After it.
    Done end(const store::LogbookFile& logbook);

    /// The sentence that was said of the file, if it is still that file.
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
