// A digest over everything but the bulk readings, so that a changed bit anywhere is noticed.
// (The readings of each import carry a checksum of their own.)
#pragma once

#include "core/store/sqlite/sqlite.h"

namespace holdband::store {

/// Computes the digest anew and keeps it. Inside a transaction.
Done renewSeal(const Database& database);

/// True where the digest fits the tables.
Result<bool> sealHolds(const Database& database);

} // namespace holdband::store
