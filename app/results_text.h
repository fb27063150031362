// The results as text and tables, in the units of the logbook.
#pragma once

#include "core/exchange/load.h"
#include "core/intake/log/import.h"
#include "core/results/overview/batch_list.h"
#include "core/results/run/run_review.h"

#include <cstdint>
#include <string>

namespace holdband::app {

/// Text from a file, which may contain line ends, as one line.
std::string oneLine(const std::string& text);
/// "1 file", "2 files"
std::string countLine(std::int64_t count, const std::string& one, const std::string& more);

std::string verdictText(const results::RunReview& review);
std::string energyText(const results::RunReview& review);
std::string batchesText(const results::BatchList& list);
std::string importText(const intake::ImportReport& report, bool dryRun);
std::string loadText(const exchange::LoadReport& report);

} // namespace holdband::app
