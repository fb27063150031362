// Judges one batch for a list, without its energy. Not for use outside core/results.
#pragma once

#include "core/results/overview/batch_list.h"
#include "core/results/snapshot.h"

namespace holdband::results {

Result<BatchLine> batchLineOf(const store::LogbookFile& logbook, const Snapshot& snapshot,
                              const Batch& batch);

} // namespace holdband::results
