// SQLite's own check of a file or of one table with its indexes. Not for use outside core/store.
#pragma once

#include "core/store/sqlite/database.h"

#include <string>
#include <vector>

namespace holdband::store {

/// What SQLite finds in the whole file, at most 20 lines; empty: nothing. Problem (file): the disk
/// failed to read a page, which says nothing about the file.
Result<std::vector<std::string>> integrityFindings(const Database& database);

/// The same of one table and its indexes.
Result<std::vector<std::string>> integrityFindings(const Database& database,
                                                   const std::string& table);

} // namespace holdband::store
