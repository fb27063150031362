// Whether the person was told that the batches of an older logbook are judged by other rules now
// (schema step 7).
#pragma once

#include "core/store/logbook_file.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::store {

/// The batches that were judged by the rules before, in order of their pitching. Absent once the
/// person was told, and in a logbook that was made with the present rules.
Result<std::optional<std::vector<std::string>>> batchesJudgedBefore(const LogbookFile& logbook);

/// Notes that the person was told. Not a change of the record: the history has no entry of it.
Done noteJudgingTold(const LogbookFile& logbook);

} // namespace holdband::store
