// What a forecast can be asked for: the plans, past batches, setups and months of a logbook.
#pragma once

#include "core/results/forecast/next_plan.h"
#include "core/results/forecast/room_record.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::results {

struct NextBatchOffer {
    LogbookSettings settings;
    Zone zone;
    std::vector<NextPlan> plans;   ///< named ones, with the volume and gravities of the last batch
    std::vector<NextPlan> batches; ///< like past ones, the latest first
    std::vector<std::string> setups;    ///< those that are not retired, in the logbook's order
    std::vector<RoomMonth> months;      ///< of the room's record, in order of time
    std::optional<Temperature> roomNow; ///< the mean of the last day of the room's record
};

Result<NextBatchOffer> readNextBatchOffer(const store::LogbookFile& logbook);

} // namespace holdband::results
