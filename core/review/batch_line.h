// One batch judged for a list, without its energy. Not for use outside core/review.
#pragma once

#include "core/review/batch_list.h"
#include "core/review/snapshot.h"

namespace holdband::review {

Result<BatchLine> batchLineOf(const store::LogbookFile& logbook, const Snapshot& snapshot,
                              const Batch& batch);

} // namespace holdband::review
