#include "core/store/records/schedules.h"

#include "core/model/names.h"

namespace holdband::store {

namespace {

Stage stageFrom(const Statement& row)
{
    const auto hours = [](double value) { return Hours{value}; };
    Stage stage;
    stage.label = row.text(1);
    stage.kind = choiceNamed<StageKind>(row.text(2)).value_or(StageKind::hold);
    stage.target = Temperature::celsius(row.real(3));
    stage.length = quantityOf(row.optionalReal(4), hours);
    stage.tolerance = quantityOf(row.optionalReal(5), asKelvins);
    stage.settleAllowed = quantityOf(row.optionalReal(6), hours);
    stage.until = choiceNamed<StageUntil>(row.text(7)).value_or(StageUntil::hours);
    stage.untilGravity = quantityOf(row.optionalReal(8), asGravity);
    return stage;
}

} // namespace

Result<ByOwner<Stage>> readSchedules(const Database& database, StageTable table)
{
    const std::string owner(table.owner);
    return queryByOwner(database,
                        "SELECT " + owner +
                            ", label, kind, target_c, hours, tolerance_k, settle_hours, ends_by, "
                            "until_gravity FROM " +
                            std::string(table.table) + " ORDER BY " + owner + ", position",
                        stageFrom);
}

Done removeSchedule(const Database& database, StageTable table, std::int64_t owner)
{
    return execute(database,
                   "DELETE FROM " + std::string(table.table) + " WHERE " +
                       std::string(table.owner) + " = ?",
                   owner);
}

Done writeSchedule(const Database& database, StageTable table, std::int64_t owner,
                   const Schedule& schedule)
{
    HOLDBAND_TRY(removeSchedule(database, table, owner));
    const std::string sql = "INSERT INTO " + std::string(table.table) + " (" +
                            std::string(table.owner) +
                            ", position, label, kind, target_c, hours, tolerance_k, settle_hours, "
                            "ends_by, until_gravity) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";
    for (std::size_t i = 0; i < schedule.size(); ++i) {
        const Stage& stage = schedule[i];
        HOLDBAND_TRY(execute(
            database, sql, owner, static_cast<std::int64_t>(i), FreeText{stage.label, longestName},
            nameOf(stage.kind), stage.target.celsius(), storedNumber(stage.length),
            stage.tolerance ? std::optional(stage.tolerance->kelvins()) : std::nullopt,
            storedNumber(stage.settleAllowed), nameOf(stage.until),
            stage.untilGravity ? std::optional(stage.untilGravity->specific()) : std::nullopt));
    }
    return {};
}

} // namespace holdband::store
