#include "core/store/batches.h"

#include "core/logbook/names.h"
#include "core/store/naming.h"
#include "core/store/rows.h"

#include <algorithm>

namespace holdband::store {

namespace {

std::optional<TemperatureDifference> kelvins(const std::optional<double>& value)
{
    return quantityOf(value, [](double k) { return TemperatureDifference::kelvins(k); });
}

std::optional<double> number(const std::optional<TemperatureDifference>& difference)
{
    return difference ? std::optional(difference->kelvins()) : std::nullopt;
}

std::optional<double> number(const std::optional<Hours>& hours)
{
    return hours ? std::optional(hours->count()) : std::nullopt;
}

Result<Schedule> readSchedule(const Database& database, std::int64_t batch)
{
    return query(
        database,
        "SELECT label, kind, target_c, hours, tolerance_k, settle_hours FROM stages "
        "WHERE batch = ? ORDER BY position",
        [](const Statement& row) {
            const auto hours = [](double value) { return Hours{value}; };
            Stage stage;
            stage.label = row.text(0);
            stage.kind = choiceNamed<StageKind>(row.text(1)).value_or(StageKind::hold);
            stage.target = Temperature::celsius(row.real(2));
            stage.length = quantityOf(row.optionalReal(3), hours);
            stage.tolerance = kelvins(row.optionalReal(4));
            stage.settleAllowed = quantityOf(row.optionalReal(5), hours);
            return stage;
        },
        batch);
}

Batch batchFrom(const Statement& row)
{
    const auto gravity = [](double sg) { return Gravity::specific(sg); };
    Batch batch;
    batch.name = row.text(1);
    batch.setup = row.text(2);
    batch.volume =
        quantityOf(row.optionalReal(3), [](double litres) { return Volume::litres(litres); });
    batch.pitched = instantFromMs(row.integer(4));
    batch.ended = instantOf(row.optionalInteger(5));
    batch.beerSensor = row.text(6);
    if (!row.isNull(7))
        batch.ambientSensor = row.text(7);
    batch.tolerance = kelvins(row.optionalReal(8));
    if (!row.isNull(9))
        batch.gapLimit = Milliseconds{row.integer(9)};
    batch.grace = Milliseconds{row.integer(10)};
    batch.originalGravity = quantityOf(row.optionalReal(11), gravity);
    batch.finalGravity = quantityOf(row.optionalReal(12), gravity);
    return batch;
}

Done addStages(const Database& database, std::int64_t batch, const Schedule& schedule)
{
    for (std::size_t i = 0; i < schedule.size(); ++i) {
        const Stage& stage = schedule[i];
        HOLDBAND_TRY(execute(database, "INSERT INTO stages VALUES (?, ?, ?, ?, ?, ?, ?, ?)", batch,
                             static_cast<std::int64_t>(i), std::string_view(stage.label),
                             nameOf(stage.kind), stage.target.celsius(), number(stage.length),
                             number(stage.tolerance), number(stage.settleAllowed)));
    }
    return {};
}

} // namespace

Result<std::vector<Batch>> readBatches(const LogbookFile& logbook)
{
    const Database& database = logbook.database();
    std::vector<std::int64_t> ids;
    auto batches =
        query(database,
              "SELECT b.id, b.name, u.name, b.volume_l, b.pitched, b.ended, s.name, a.name, "
              "b.tolerance_k, b.gap_limit_ms, b.grace_ms, b.original_gravity, b.final_gravity "
              "FROM batches b JOIN setups u ON u.id = b.setup "
              "JOIN sensors s ON s.id = b.beer_sensor "
              "LEFT JOIN sensors a ON a.id = b.ambient_sensor ORDER BY b.pitched, b.id",
              [&](const Statement& row) {
                  ids.push_back(row.integer(0));
                  return batchFrom(row);
              });
    HOLDBAND_TRY(batches);
    for (std::size_t i = 0; i < batches->size(); ++i) {
        auto schedule = readSchedule(database, ids[i]);
        HOLDBAND_TRY(schedule);
        (*batches)[i].schedule = std::move(*schedule);
    }
    return batches;
}

Result<Batch> readBatch(const LogbookFile& logbook, const std::string& name)
{
    HOLDBAND_TRY(idOf(logbook.database(), "batches", "batch", name));
    auto batches = readBatches(logbook);
    HOLDBAND_TRY(batches);
    return *std::find_if(batches->begin(), batches->end(),
                         [&](const Batch& batch) { return batch.name == name; });
}

Done addBatch(const Change& change, const Batch& batch)
{
    const Database& database = change.database();
    HOLDBAND_TRY(checkNameIsFree(database, "batches", "batch", batch.name));
    auto setup = idOf(database, "setups", "setup", batch.setup);
    HOLDBAND_TRY(setup);
    auto beer = idOf(database, "sensors", "sensor", batch.beerSensor);
    HOLDBAND_TRY(beer);
    std::optional<std::int64_t> ambient;
    if (batch.ambientSensor) {
        auto id = idOf(database, "sensors", "sensor", *batch.ambientSensor);
        HOLDBAND_TRY(id);
        ambient = *id;
    }
    const auto gravity = [](const std::optional<Gravity>& value) {
        return value ? std::optional(value->specific()) : std::nullopt;
    };
    HOLDBAND_TRY(execute(
        database,
        "INSERT INTO batches (name, setup, volume_l, pitched, ended, beer_sensor, ambient_sensor, "
        "tolerance_k, gap_limit_ms, grace_ms, original_gravity, final_gravity, act) "
        "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        std::string_view(batch.name), *setup,
        batch.volume ? std::optional(batch.volume->litres()) : std::nullopt, toMs(batch.pitched),
        msOf(batch.ended), *beer, ambient, number(batch.tolerance),
        batch.gapLimit ? std::optional<std::int64_t>(batch.gapLimit->count()) : std::nullopt,
        static_cast<std::int64_t>(batch.grace.count()), gravity(batch.originalGravity),
        gravity(batch.finalGravity), change.act().value));
    return addStages(database, database.lastRowId(), batch.schedule);
}

Result<std::vector<JournalNote>> readJournal(const LogbookFile& logbook)
{
    return query(logbook.database(),
                 "SELECT j.at, b.name, j.text FROM journal j "
                 "LEFT JOIN batches b ON b.id = j.batch ORDER BY j.at, j.id",
                 [](const Statement& row) {
                     JournalNote note{instantFromMs(row.integer(0)), {}, row.text(2)};
                     if (!row.isNull(1))
                         note.batch = row.text(1);
                     return note;
                 });
}

Done addNote(const Change& change, const JournalNote& note)
{
    const Database& database = change.database();
    std::optional<std::int64_t> batch;
    if (note.batch) {
        auto id = idOf(database, "batches", "batch", *note.batch);
        HOLDBAND_TRY(id);
        batch = *id;
    }
    return execute(database, "INSERT INTO journal (at, batch, text, act) VALUES (?, ?, ?, ?)",
                   toMs(note.at), batch, std::string_view(note.text), change.act().value);
}

} // namespace holdband::store
