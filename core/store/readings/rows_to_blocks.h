// Older formats stored each reading in a row of its own: brings them into blocks. Not for use
// outside core/store.
#pragma once

#include "core/store/sqlite/database.h"

namespace holdband::store {

/// The first format with blocks of readings; the step before it makes their tables.
inline constexpr int firstWithBlocks = 12;

/// Computes the checksums of the blocks of all imports, for a file of a format that had none.
/// Readings that don't match the checksum of their import get none, so that they are still noticed
/// as damage.
Done sumRows(const Database& database);

/// Moves all rows of `readings` and `aside_readings` into blocks. A value that is no number is left
/// out; its block then no longer fits its checksum.
Done moveRowsToBlocks(const Database& database);

} // namespace holdband::store
