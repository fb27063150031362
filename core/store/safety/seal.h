// A digest over everything but the bulk readings, so that a single changed bit is noticed. (The
// readings of each import have their own checksum.)
#pragma once

#include "core/store/sqlite/database.h"

namespace holdband::store {

/// Computes the digest again and stores it. Call inside a transaction.
Done renewSeal(const Database& database);

/// True if the digest matches the tables, and their indexes match them.
Result<bool> sealHolds(const Database& database);

} // namespace holdband::store
