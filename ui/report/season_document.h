// The report of a season: all batches of a setup.
#pragma once

#include "core/review/season.h"
#include "ui/report/document.h"
#include "ui/report/origin.h"

namespace holdband::report {

Document seasonDocument(const review::Season& season, const Origin& origin);

} // namespace holdband::report
