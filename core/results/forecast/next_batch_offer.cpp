#include "core/results/forecast/next_batch_offer.h"

#include "core/assign_result.h"
#include "core/store/records/batches.h"

namespace holdband::results {

namespace {

/// A brewer's next batch is most likely as big and as strong as the last one.
void takeFromLast(NextPlan& plan, const std::vector<NextPlan>& batches)
{
    if (batches.empty())
        return;
    plan.volume = batches.front().volume;
    plan.originalGravity = batches.front().originalGravity;
    plan.finalGravity = batches.front().finalGravity;
}

Done addRoomNow(const store::LogbookFile& logbook, const Snapshot& snapshot, NextBatchOffer& offer)
{
    if (offer.months.empty())
        return {};
    std::optional<Instant> last;
    for (const Sensor& sensor : snapshot.sensors) {
        if (sensor.reads != SensorKind::ambient)
            continue;
        auto read = store::lastReadingAt(logbook, sensor.name);
        HOLDBAND_TRY(read);
        last = std::max(last, *read);
    }
    if (!last)
        return {};
    auto record = roomRecord(logbook, snapshot, {}, {*last - std::chrono::hours{24}, *last});
    if (record)
        offer.roomNow = Temperature::celsius(record->meanCelsius);
    return {};
}

} // namespace

Result<NextBatchOffer> readNextBatchOffer(const store::LogbookFile& logbook)
{
    auto snapshot = readSnapshot(logbook);
    HOLDBAND_TRY(snapshot);
    NextBatchOffer offer;
    offer.settings = snapshot->settings;
    offer.zone = snapshot->zone;
    for (auto batch = snapshot->batches.rbegin(); batch != snapshot->batches.rend(); ++batch) {
        if (!batch->schedule.empty())
            offer.batches.push_back(planOf(*batch));
    }
    auto plans = store::readPlans(logbook);
    HOLDBAND_TRY(plans);
    for (const NamedPlan& named : *plans) {
        NextPlan plan{named.name, named.schedule, named.tolerance, {}, {}, {}};
        takeFromLast(plan, offer.batches);
        offer.plans.push_back(std::move(plan));
    }
    for (const Setup& setup : snapshot->setups) {
        if (!setup.retired)
            offer.setups.push_back(setup.name);
    }
    HOLDBAND_TRY(assignResult(roomMonths(logbook, *snapshot), offer.months));
    HOLDBAND_TRY(addRoomNow(logbook, *snapshot, offer));
    return offer;
}

} // namespace holdband::results
