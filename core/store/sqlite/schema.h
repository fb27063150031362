// The shape of a logbook file and its history: numbered steps, applied in order, each in its own
// transaction with the raised user_version.
#pragma once

#include "core/store/sqlite/sqlite.h"

#include <span>
#include <string>
#include <vector>

namespace holdband::store {

/// "HLDB", in the file's header.
inline constexpr std::int64_t applicationId = 0x484c4442;

struct SchemaStep {
    int version; ///< what user_version is afterwards
    std::string script;
};

/// All steps that this program knows, 1, 2, 3 …
const std::vector<SchemaStep>& schemaSteps();

/// Brings the file from its version to the last of the steps, in a transaction of the caller's.
Done applySteps(const Database& database, std::span<const SchemaStep> steps);

/// applySteps in a transaction of its own: on failure the file keeps its version.
Done migrate(const Database& database, std::span<const SchemaStep> steps);

/// Refuses what is no logbook of a version up to `newest`: an empty file, another program's file,
/// a newer logbook, one with triggers or views in it.
Done checkIdentity(const Database& database, int newest);

} // namespace holdband::store
