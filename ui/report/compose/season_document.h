// The report of a season: all batches of a setup.
#pragma once

#include "core/results/overview/season.h"
#include "ui/report/compose/document.h"
#include "ui/report/compose/origin.h"

namespace holdband::report {

Document seasonDocument(const results::Season& season, const Origin& origin);

} // namespace holdband::report
