// The schema of a logbook file and its history: numbered steps, applied in order, each in its own
// transaction with the new user_version.
#pragma once

#include "core/store/sqlite/database.h"

#include <span>
#include <string>
#include <vector>

namespace holdband::store {

/// "HLDB", in the file's header.
inline constexpr std::int64_t applicationId = 0x484c4442;

struct SchemaStep {
    int version; ///< the user_version after this step
    std::string script;
};

/// All steps that this program knows, 1, 2, 3 …
const std::vector<SchemaStep>& schemaSteps();

/// Migrates the file from its version to the last of the steps, in the caller's transaction.
Done applySteps(const Database& database, std::span<const SchemaStep> steps);

/// applySteps in its own transaction: on failure the file's version is unchanged.
Done migrate(const Database& database, std::span<const SchemaStep> steps);

/// Refuses any file that is not a logbook of a version up to `newest`: an empty file, another
/// program's file, a newer logbook. Foreign triggers and views are for checkSchema().
Done checkIdentity(const Database& database, int newest);

} // namespace holdband::store
