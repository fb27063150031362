#include "core/store/records/batches.h"

#include "core/assign_result.h"
#include "core/store/records/naming.h"
#include "core/store/records/schedules.h"
#include "core/store/sqlite/rows.h"
#include "core/text/phrase.h"
#include "core/text/places.h"

#include <algorithm>

namespace holdband::store {

namespace {

/// From eight columns that begin at `first`.
std::optional<BatchForecast> forecastFrom(const Statement& row, int first)
{
    if (row.isNull(first) || row.isNull(first + 1))
        return std::nullopt;
    const auto figureAt = [&](int column) {
        return ForecastFigure{row.optionalReal(column).value_or(0.0),
                              row.optionalReal(column + 1).value_or(0.0),
                              row.optionalReal(column + 2).value_or(0.0)};
    };
    BatchForecast forecast;
    forecast.made = row.instant(first);
    forecast.energy = figureAt(first + 1);
    if (!row.isNull(first + 4))
        forecast.crashHours = figureAt(first + 4);
    if (const auto room = row.optionalReal(first + 7))
        forecast.room = Temperature::celsius(*room);
    return forecast;
}

Batch batchFrom(const Statement& row)
{
    Batch batch;
    batch.name = row.text(1);
    batch.setup = row.text(2);
    batch.volume = quantityOf(row.optionalReal(3), asLitres);
    batch.pitched = row.instant(4);
    batch.ended = row.optionalInstant(5);
    batch.beerSensor = row.text(6);
    if (!row.isNull(7))
        batch.ambientSensor = row.text(7);
    batch.tolerance = quantityOf(row.optionalReal(8), asKelvins);
    if (!row.isNull(9))
        batch.gapLimit = Milliseconds{row.integer(9)};
    batch.ignoreShorterThan = Milliseconds{row.integer(10)};
    batch.originalGravity = quantityOf(row.optionalReal(11), asGravity);
    batch.finalGravity = quantityOf(row.optionalReal(12), asGravity);
    batch.vessel = row.text(13);
    if (!row.isNull(14))
        batch.splitFrom = row.text(14);
    batch.bandTimes = {Milliseconds{row.integer(15)}, Milliseconds{row.integer(16)}};
    batch.forecast = forecastFrom(row, 17);
    return batch;
}

Result<ByOwner<PlanChange>> readPlanChanges(const Database& database)
{
    auto schedules = readSchedules(database, changedStages);
    HOLDBAND_TRY(schedules);
    return queryByOwner(
        database, "SELECT batch, id, from_at, why FROM plan_changes ORDER BY from_at, id",
        [&](const Statement& row) {
            return PlanChange{row.instant(2), row.text(3), std::move((*schedules)[row.integer(1)])};
        });
}

/// The parts of the batches that are in other tables.
struct Details {
    ByOwner<Stage> schedules;
    ByOwner<PlanChange> planChanges;
    ByOwner<Instant> stageEnds;
    ByOwner<BeerUse> beerUses;

    void moveInto(Batch& batch, std::int64_t id)
    {
        batch.schedule = std::move(schedules[id]);
        batch.planChanges = std::move(planChanges[id]);
        batch.stageEnds = std::move(stageEnds[id]);
        batch.beerUses = std::move(beerUses[id]);
    }
};

Result<Details> readDetails(const Database& database)
{
    Details details;
    HOLDBAND_TRY(assignResult(readSchedules(database, batchStages), details.schedules));
    HOLDBAND_TRY(assignResult(readPlanChanges(database), details.planChanges));
    HOLDBAND_TRY(
        assignResult(queryByOwner(database, "SELECT batch, at FROM stage_ends ORDER BY batch, at",
                                  [](const Statement& row) { return row.instant(1); }),
                     details.stageEnds));
    HOLDBAND_TRY(
        assignResult(queryByOwner(database,
                                  "SELECT u.batch, u.from_at, s.name, u.vessel FROM beer_uses u "
                                  "JOIN sensors s ON s.id = u.sensor ORDER BY u.batch, u.from_at",
                                  [](const Statement& row) {
                                      return BeerUse{row.instant(1), row.text(2), row.text(3)};
                                  }),
                     details.beerUses));
    return details;
}

Done removePlanChanges(const Database& database, std::int64_t batch)
{
    HOLDBAND_TRY(execute(database,
                         "DELETE FROM changed_stages WHERE plan_change IN "
                         "(SELECT id FROM plan_changes WHERE batch = ?)",
                         batch));
    return execute(database, "DELETE FROM plan_changes WHERE batch = ?", batch);
}

Done removeDetails(const Database& database, std::int64_t id)
{
    HOLDBAND_TRY(removeSchedule(database, batchStages, id));
    HOLDBAND_TRY(removePlanChanges(database, id));
    HOLDBAND_TRY(execute(database, "DELETE FROM stage_ends WHERE batch = ?", id));
    return execute(database, "DELETE FROM beer_uses WHERE batch = ?", id);
}

Done writeDetails(const Database& database, std::int64_t id, const Batch& batch)
{
    HOLDBAND_TRY(removeDetails(database, id));
    HOLDBAND_TRY(writeSchedule(database, batchStages, id, batch.schedule));
    for (const PlanChange& change : batch.planChanges) {
        HOLDBAND_TRY(execute(database,
                             "INSERT INTO plan_changes (batch, from_at, why) VALUES (?, ?, ?)", id,
                             toMs(change.from), FreeText{change.why}));
        HOLDBAND_TRY(writeSchedule(database, changedStages, database.lastRowId(), change.schedule));
    }
    for (const Instant at : batch.stageEnds)
        HOLDBAND_TRY(execute(database, "INSERT INTO stage_ends VALUES (?, ?)", id, toMs(at)));
    for (const BeerUse& use : batch.beerUses) {
        auto sensor = idOf(database, "sensors", "sensor", use.sensor);
        HOLDBAND_TRY(sensor);
        HOLDBAND_TRY(execute(database, "INSERT INTO beer_uses VALUES (?, ?, ?, ?)", id,
                             toMs(use.from), *sensor, FreeText{use.vessel, longestName}));
    }
    return {};
}

/// The ids of the records that a batch names.
struct Named {
    std::int64_t setup = 0;
    std::int64_t beer = 0;
    std::optional<std::int64_t> ambient;
    std::optional<std::int64_t> splitFrom;
};

Result<std::optional<std::int64_t>> optionalId(const Database& database, std::string_view table,
                                               std::string_view what,
                                               const std::optional<std::string>& name)
{
    if (!name)
        return std::optional<std::int64_t>();
    auto id = idOf(database, table, what, *name);
    HOLDBAND_TRY(id);
    return std::optional(*id);
}

Result<Named> namedBy(const Database& database, const Batch& batch)
{
    auto setup = idOf(database, "setups", "setup", batch.setup);
    HOLDBAND_TRY(setup);
    if (batch.beerSensor.empty())
        return dataProblem(Phrase::tr("the batch has no sensor in its beer"),
                           batchPlace(batch.name), Phrase::tr("name the one that reads it"));
    auto beer = idOf(database, "sensors", "sensor", batch.beerSensor);
    HOLDBAND_TRY(beer);
    auto ambient = optionalId(database, "sensors", "sensor", batch.ambientSensor);
    HOLDBAND_TRY(ambient);
    auto split = optionalId(database, "batches", "batch", batch.splitFrom);
    HOLDBAND_TRY(split);
    return Named{*setup, *beer, *ambient, *split};
}

/// Overwrites the batch's own row with that id.
Done writeRow(const Database& database, std::int64_t id, const Batch& batch)
{
    auto named = namedBy(database, batch);
    HOLDBAND_TRY(named);
    return execute(
        database,
        "UPDATE batches SET name = ?, setup = ?, volume_l = ?, pitched = ?, ended = ?, "
        "beer_sensor = ?, ambient_sensor = ?, tolerance_k = ?, gap_limit_ms = ?, grace_ms = ?, "
        "original_gravity = ?, final_gravity = ?, vessel = ?, split_from = ?, dwell_ms = ?, "
        "return_ms = ? WHERE id = ?",
        std::string_view(batch.name), named->setup,
        batch.volume ? std::optional(batch.volume->litres()) : std::nullopt, toMs(batch.pitched),
        msOf(batch.ended), named->beer, named->ambient, storedNumber(batch.tolerance),
        batch.gapLimit ? std::optional<std::int64_t>(batch.gapLimit->count()) : std::nullopt,
        static_cast<std::int64_t>(batch.ignoreShorterThan.count()),
        storedNumber(batch.originalGravity), storedNumber(batch.finalGravity),
        FreeText{batch.vessel, longestName}, named->splitFrom,
        static_cast<std::int64_t>(batch.bandTimes.dwell.count()),
        static_cast<std::int64_t>(batch.bandTimes.returnTime.count()), id);
}

/// The columns of the batch's forecast; all NULL without one.
Done writeForecast(const Database& database, std::int64_t id,
                   const std::optional<BatchForecast>& forecast)
{
    if (!forecast)
        return execute(database,
                       "UPDATE batches SET forecast_at = NULL, forecast_kwh = NULL, "
                       "forecast_low_kwh = NULL, forecast_high_kwh = NULL, forecast_crash_h = "
                       "NULL, forecast_crash_low_h = NULL, forecast_crash_high_h = NULL, "
                       "forecast_room_c = NULL WHERE id = ?",
                       id);
    const auto& crash = forecast->crashHours;
    const auto ofCrash = [&](double ForecastFigure::*part) {
        return crash ? std::optional(*crash.*part) : std::nullopt;
    };
    return execute(database,
                   "UPDATE batches SET forecast_at = ?, forecast_kwh = ?, forecast_low_kwh = ?, "
                   "forecast_high_kwh = ?, forecast_crash_h = ?, forecast_crash_low_h = ?, "
                   "forecast_crash_high_h = ?, forecast_room_c = ? WHERE id = ?",
                   toMs(forecast->made), forecast->energy.value, forecast->energy.low,
                   forecast->energy.high, ofCrash(&ForecastFigure::value),
                   ofCrash(&ForecastFigure::low), ofCrash(&ForecastFigure::high),
                   forecast->room ? std::optional(forecast->room->celsius()) : std::nullopt, id);
}

} // namespace

Result<std::vector<Batch>> readBatches(const LogbookFile& logbook)
{
    const Database& database = logbook.database();
    std::vector<std::int64_t> ids;
    auto batches =
        query(database,
              "SELECT b.id, b.name, u.name, b.volume_l, b.pitched, b.ended, s.name, a.name, "
              "b.tolerance_k, b.gap_limit_ms, b.grace_ms, b.original_gravity, b.final_gravity, "
              "b.vessel, o.name, b.dwell_ms, b.return_ms, b.forecast_at, b.forecast_kwh, "
              "b.forecast_low_kwh, b.forecast_high_kwh, b.forecast_crash_h, "
              "b.forecast_crash_low_h, b.forecast_crash_high_h, b.forecast_room_c "
              "FROM batches b JOIN setups u ON u.id = b.setup "
              "JOIN sensors s ON s.id = b.beer_sensor "
              "LEFT JOIN sensors a ON a.id = b.ambient_sensor "
              "LEFT JOIN batches o ON o.id = b.split_from ORDER BY b.pitched, b.id",
              [&](const Statement& row) {
                  ids.push_back(row.integer(0));
                  return batchFrom(row);
              });
    HOLDBAND_TRY(batches);
    auto details = readDetails(database);
    HOLDBAND_TRY(details);
    for (std::size_t i = 0; i < batches->size(); ++i)
        details->moveInto((*batches)[i], ids[i]);
    return batches;
}

Result<Batch> readBatch(const LogbookFile& logbook, const std::string& name)
{
    HOLDBAND_TRY(idOf(logbook.database(), "batches", "batch", name));
    auto batches = readBatches(logbook);
    HOLDBAND_TRY(batches);
    const auto found = std::find_if(batches->begin(), batches->end(),
                                    [&](const Batch& batch) { return batch.name == name; });
    if (found == batches->end()) // its setup or its sensor is gone
        return fileProblem(
            Phrase::tr(
                "the file is damaged: the batch \"%1\" refers to equipment that is not in it")
                .with(name),
            logbook.database().path(), Phrase::tr("use a backup"));
    return std::move(*found);
}

Result<BatchId> batchIdOf(const LogbookFile& logbook, const std::string& name)
{
    auto id = idOf(logbook.database(), "batches", "batch", name);
    HOLDBAND_TRY(id);
    return BatchId{*id};
}

Result<std::optional<std::string>> batchNameOf(const LogbookFile& logbook, BatchId batch)
{
    auto names = query(
        logbook.database(), "SELECT name FROM batches WHERE id = ?",
        [](Statement& row) { return row.text(0); }, batch.value);
    HOLDBAND_TRY(names);
    return names->empty() ? std::nullopt : std::optional(names->front());
}

Done addBatch(const Change& change, const Batch& batch)
{
    const Database& database = change.database();
    HOLDBAND_TRY(checkNameIsFree(database, "batches", "batch", batch.name));
    auto named = namedBy(database, batch);
    HOLDBAND_TRY(named);
    HOLDBAND_TRY(execute(database,
                         "INSERT INTO batches (name, setup, pitched, beer_sensor, grace_ms, act) "
                         "VALUES (?, ?, ?, ?, 0, ?)",
                         std::string_view(batch.name), named->setup, toMs(batch.pitched),
                         named->beer, change.entry().value));
    const std::int64_t id = database.lastRowId();
    HOLDBAND_TRY(writeRow(database, id, batch));
    HOLDBAND_TRY(writeForecast(database, id, batch.forecast));
    return writeDetails(database, id, batch);
}

Done updateBatch(const Change& change, const std::string& name, const Batch& batch)
{
    const Database& database = change.database();
    auto id = idOf(database, "batches", "batch", name);
    HOLDBAND_TRY(id);
    HOLDBAND_TRY(checkNameIsFree(database, "batches", "batch", batch.name, *id));
    HOLDBAND_TRY(writeRow(database, *id, batch));
    HOLDBAND_TRY(writeForecast(database, *id, batch.forecast));
    return writeDetails(database, *id, batch);
}

namespace {

/// The reason why a batch can't be removed, by the number from the query in removeBatch().
std::string whatHolds(std::int64_t user, const std::string& batch)
{
    if (user == 0)
        return Phrase::tr("the batch \"%1\" has notes").with(batch);
    if (user == 1)
        return Phrase::tr("the batch \"%1\" has readings of its own").with(batch);
    return Phrase::tr("the batch \"%1\" has a batch that was split from it").with(batch);
}

} // namespace

Done removeBatch(const Change& change, const std::string& name)
{
    const Database& database = change.database();
    auto id = idOf(database, "batches", "batch", name);
    HOLDBAND_TRY(id);
    auto users = query(
        database,
        "SELECT 0 FROM journal WHERE batch = ? UNION ALL SELECT 1 "
        "FROM hand_readings WHERE batch = ? UNION ALL SELECT 2 "
        "FROM batches WHERE split_from = ? LIMIT 1",
        [](const Statement& row) { return row.integer(0); }, *id, *id, *id);
    HOLDBAND_TRY(users);
    if (!users->empty())
        return dataProblem(whatHolds(users->front(), name), {},
                           Phrase::tr("delete those first, or end the batch"));
    HOLDBAND_TRY(removeDetails(database, *id));
    HOLDBAND_TRY(execute(database, "DELETE FROM causes WHERE batch = ?", *id));
    return execute(database, "DELETE FROM batches WHERE id = ?", *id);
}

Result<std::vector<NamedPlan>> readPlans(const LogbookFile& logbook)
{
    const Database& database = logbook.database();
    std::vector<std::int64_t> ids;
    auto plans =
        query(database, "SELECT id, name, note, tolerance_k FROM plans ORDER BY name",
              [&](const Statement& row) {
                  ids.push_back(row.integer(0));
                  return NamedPlan{
                      row.text(1), row.text(2), quantityOf(row.optionalReal(3), asKelvins), {}};
              });
    HOLDBAND_TRY(plans);
    auto schedules = readSchedules(database, planStages);
    HOLDBAND_TRY(schedules);
    for (std::size_t i = 0; i < plans->size(); ++i)
        (*plans)[i].schedule = std::move((*schedules)[ids[i]]);
    return plans;
}

Done savePlan(const Change& change, const NamedPlan& plan)
{
    const Database& database = change.database();
    auto existing = query(
        database, "SELECT id FROM plans WHERE name = ?",
        [](const Statement& row) { return row.integer(0); }, std::string_view(plan.name));
    HOLDBAND_TRY(existing);
    if (existing->empty()) {
        HOLDBAND_TRY(checkNameIsFree(database, "plans", "plan", plan.name));
        HOLDBAND_TRY(execute(database, "INSERT INTO plans (name, note) VALUES (?, '')",
                             std::string_view(plan.name)));
        existing->push_back(database.lastRowId());
    }
    HOLDBAND_TRY(execute(database, "UPDATE plans SET note = ?, tolerance_k = ? WHERE id = ?",
                         FreeText{plan.note}, storedNumber(plan.tolerance), existing->front()));
    return writeSchedule(database, planStages, existing->front(), plan.schedule);
}

Done removePlan(const Change& change, const std::string& name)
{
    const Database& database = change.database();
    auto id = idOf(database, "plans", "plan", name);
    HOLDBAND_TRY(id);
    HOLDBAND_TRY(removeSchedule(database, planStages, *id));
    return execute(database, "DELETE FROM plans WHERE id = ?", *id);
}

} // namespace holdband::store
