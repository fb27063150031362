// The settings for weighing two arrangements, in the store.
#pragma once

#include "core/model/weighing.h"
#include "core/store/logbook_file.h"

namespace holdband::store {

Result<Weighing> readWeighing(const LogbookFile& logbook);

/// Replaces the stored settings. Problem (data): a weight beyond 0 … mostWeight, a criterion
/// without a name, hours, batches or a wait that are not positive, a lift below 0.
Done writeWeighing(const Change& change, const Weighing& weighing);

} // namespace holdband::store
