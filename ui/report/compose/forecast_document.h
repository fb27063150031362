// The report of what the next batch would use.
#pragma once

#include "core/results/forecast/next_batch.h"
#include "ui/report/compose/document.h"
#include "ui/report/compose/origin.h"

namespace holdband::report {

Document forecastDocument(const results::NextBatch& review, const Origin& origin);

} // namespace holdband::report
