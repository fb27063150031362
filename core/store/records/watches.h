// Files and folders that are polled automatically for new rows.
#pragma once

#include "core/store/logbook_file.h"

#include <string>
#include <vector>

namespace holdband::store {

struct Watch {
    std::int64_t id = 0;
    std::string path; ///< of a file or a folder
    /// The meaning of its columns; empty: by the remembered choices, or by names.
    std::string spec;
    std::string state; ///< how far its files were read
};

Result<std::vector<Watch>> readWatches(const LogbookFile& logbook);
/// Problem (data): the path is already watched.
Done addWatch(const Change& change, const std::string& path, const std::string& spec);
/// Not recorded for undo: the file has been read that far, whatever is undone.
Done setWatchState(const Change& change, std::int64_t id, const std::string& state);
Done removeWatch(const Change& change, std::int64_t id);

} // namespace holdband::store
