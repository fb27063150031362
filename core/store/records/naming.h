// Names within one table: unique, also to a person who ignores case. Not for use outside
// core/store.
#pragma once

#include "core/model/text_limits.h"
#include "core/store/sqlite/database.h"

namespace holdband::store {

/// Problem (data): empty, too long, contains a control character, taken, or different from a taken
/// one only in case or white space.
Done checkNameIsFree(const Database& database, std::string_view table, std::string_view what,
                     const std::string& name, std::optional<std::int64_t> but = {});

} // namespace holdband::store
