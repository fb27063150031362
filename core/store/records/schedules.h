// Schedules in the store: a batch's plan, its changes, and named plans have their stages in tables
// with the same columns. Not for use outside core/store.
#pragma once

#include "core/model/batch.h"
#include "core/store/sqlite/rows.h"

namespace holdband::store {

/// A table of stages, and the column with their owner's id.
struct StageTable {
    std::string_view table;
    std::string_view owner;
};

inline constexpr StageTable batchStages{"stages", "batch"};
inline constexpr StageTable changedStages{"changed_stages", "plan_change"};
inline constexpr StageTable planStages{"plan_stages", "plan"};

/// All of the table.
Result<ByOwner<Stage>> readSchedules(const Database& database, StageTable table);
/// Replaces the stored schedule.
Done writeSchedule(const Database& database, StageTable table, std::int64_t owner,
                   const Schedule& schedule);
Done removeSchedule(const Database& database, StageTable table, std::int64_t owner);

} // namespace holdband::store
