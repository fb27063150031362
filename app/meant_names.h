// Names on the command line, in whatever letters: "pale 1" means "Pale 1" where only one fits. An
// unknown name stays as it is, so that the command refuses it with suggestions.
#pragma once

#include "core/store/logbook_file.h"

#include <string>
#include <vector>

namespace holdband::app {

Result<std::string> meantBatch(const store::LogbookFile& logbook, const std::string& typed);
Result<std::string> meantSetup(const store::LogbookFile& logbook, const std::string& typed);
Result<std::string> meantMeter(const store::LogbookFile& logbook, const std::string& typed);
Result<std::string> meantSensor(const store::LogbookFile& logbook, const std::string& typed);
Result<std::string> meantPlan(const store::LogbookFile& logbook, const std::string& typed);
/// The exact names come first, then those of batches before those of setups.
Result<std::string> meantBatchOrSetup(const store::LogbookFile& logbook, const std::string& typed);
Result<std::string> meantSensorOrMeter(const store::LogbookFile& logbook, const std::string& typed);

/// Each of them.
Result<std::vector<std::string>>
allMeant(const store::LogbookFile& logbook, const std::vector<std::string>& typed,
         Result<std::string> (*meant)(const store::LogbookFile&, const std::string&));

} // namespace holdband::app
