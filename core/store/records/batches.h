// Batches with their plans, and named plans, in the store. Whether a plan makes sense is checked by
// plan_check.h.
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
/// Problem (data): unknown; near names are listed.
Result<Batch> readBatch(const LogbookFile& logbook, const std::string& name);
/// Which batch it is, whatever it is called later. Problem (data): as readBatch.
Result<BatchId> batchIdOf(const LogbookFile& logbook, const std::string& name);
/// Its name now; absent: it was removed.
Result<std::optional<std::string>> batchNameOf(const LogbookFile& logbook, BatchId batch);
Done addBatch(const Change& change, const Batch& batch);

/// The value takes the place of what stood under `name`; it may bear another name.
Done updateBatch(const Change& change, const std::string& name, const Batch& batch);
/// Problem (data): it has readings or notes of its own, or another batch was split from it.
Done removeBatch(const Change& change, const std::string& name);

Result<std::vector<NamedPlan>> readPlans(const LogbookFile& logbook);
/// Takes the place of a plan of that name.
Done savePlan(const Change& change, const NamedPlan& plan);
Done removePlan(const Change& change, const std::string& name);

} // namespace holdband::store
