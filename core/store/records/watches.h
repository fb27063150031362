// Files and folders that are looked at by themselves for new rows.
#pragma once

#include "core/store/logbook_file.h"

#include <string>
#include <vector>

namespace holdband::store {

struct Watch {
    std::int64_t id = 0;
    std::string path;  ///< of a file or a folder
    std::string spec;  ///< what its columns mean; empty: by what is remembered, or by names
    std::string state; ///< how far its files were read
};

Result<std::vector<Watch>> readWatches(const LogbookFile& logbook);
/// Problem (data): that path is watched already.
Done addWatch(const Change& change, const std::string& path, const std::string& spec);
/// Not recorded for undo: the file is as far as it is, whatever is taken back.
Done setWatchState(const Change& change, std::int64_t id, const std::string& state);
Done removeWatch(const Change& change, std::int64_t id);

} // namespace holdband::store
