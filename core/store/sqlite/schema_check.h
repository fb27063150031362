// Whether a file has the tables and indexes of its format, as the schema steps make them. Not for
// use outside core/store.
#pragma once

#include "core/store/sqlite/database.h"

namespace holdband::store {

/// For a file that passed checkIdentity. Problem (file): a table, index, trigger or view is
/// missing, is different (a column's name, a generated column) or is one that Holdband never makes;
/// it is named. Tables of SQLite's own, such as the statistics of ANALYZE, may be there.
Done checkSchema(const Database& database);

} // namespace holdband::store
