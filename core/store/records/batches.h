// Batches with their plans, and named plans, in the store. plan_check.h checks whether a plan makes
// sense.
#pragma once

#include "core/model/batch.h"
#include "core/store/logbook_file.h"
#include "core/store/records/ids.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::store {

/// In order of pitching.
Result<std::vector<Batch>> readBatches(const LogbookFile& logbook);
/// Problem (data): unknown; the message has suggestions.
Result<Batch> readBatch(const LogbookFile& logbook, const std::string& name);
/// Identifies a batch even if it is renamed later. Problem (data): as readBatch.
Result<BatchId> batchIdOf(const LogbookFile& logbook, const std::string& name);
/// Its name now; absent: it was removed.
Result<std::optional<std::string>> batchNameOf(const LogbookFile& logbook, BatchId batch);
Done addBatch(const Change& change, const Batch& batch);

/// Replaces the batch called `name`; the value may have a new name.
Done updateBatch(const Change& change, const std::string& name, const Batch& batch);
/// Problem (data): it has readings or notes of its own, or another batch was split from it.
Done removeBatch(const Change& change, const std::string& name);

Result<std::vector<NamedPlan>> readPlans(const LogbookFile& logbook);
/// Replaces a plan of that name.
Done savePlan(const Change& change, const NamedPlan& plan);
Done removePlan(const Change& change, const std::string& name);

} // namespace holdband::store
