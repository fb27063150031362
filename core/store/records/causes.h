// The causes of excursions, each a separate record that belongs to a batch.
#pragma once

#include "core/model/cause.h"
#include "core/store/logbook_file.h"

#include <string>
#include <vector>

namespace holdband::store {

struct StoredCause {
    CauseId id;
    ExcursionCause cause;
};

/// In order of time. Problem (data): unknown batch.
Result<std::vector<StoredCause>> readCauses(const LogbookFile& logbook, const std::string& batch);

/// Problem (data): unknown batch, a span that ends before it begins, or neither a cause nor a note.
Done addCause(const Change& change, const std::string& batch, const ExcursionCause& cause);

Done removeCause(const Change& change, CauseId cause);

} // namespace holdband::store
