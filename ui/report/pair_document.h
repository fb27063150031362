// The report of two batches, or two setups, side by side.
#pragma once

#include "core/review/side_by_side.h"
#include "ui/report/document.h"
#include "ui/report/origin.h"

namespace holdband::report {

/// Problem: the logbook's zone is unknown.
Result<Document> pairDocument(const review::SideBySide& pair, const Origin& origin);

} // namespace holdband::report
