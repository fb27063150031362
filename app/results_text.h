// The results as text and tables, in the units of the logbook.
#pragma once

#include "core/exchange/load.h"
#include "core/intake/log/import.h"
#include "core/results/overview/batch_list.h"
#include "core/results/run/run_review.h"

#include <string>

namespace holdband::app {

std::string verdictText(const results::RunReview& review);
std::string energyText(const results::RunReview& review);
std::string batchesText(const results::BatchList& list);
std::string importText(const intake::ImportReport& report, bool dryRun);
std::string loadText(const exchange::LoadReport& report);

} // namespace holdband::app
