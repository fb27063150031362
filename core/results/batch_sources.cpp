#include "core/results/batch_cache.h"

#include "core/analysis/meter_curve.h"
#include "core/assign_result.h"
#include "core/model/meter_service.h"

#include <algorithm>

namespace holdband::results {

namespace {

/// Sensors whose readings a summary of the batch uses.
std::set<std::string> sensorsOf(const Snapshot& snapshot, const Batch& batch, bool hasMeter)
{
    std::set<std::string> names = beerSensorsOf(batch);
    if (batch.ambientSensor)
        names.insert(*batch.ambientSensor);
    for (const Sensor& sensor : snapshot.sensors) {
        if (!hasMeter && sensor.reads == SensorKind::power && sensor.setup == batch.setup)
            names.insert(sensor.name);
    }
    return names;
}

bool countsFor(const Meter& meter, const std::string& setup)
{
    const std::vector<MeterService> services = servicesOf(meter);
    return std::any_of(services.begin(), services.end(),
                       [&](const MeterService& service) { return service.setup == setup; });
}

/// From the last reading at or before the span to the first at or after it.
std::vector<MeterReading> readingsAround(const std::vector<store::StoredReading>& stored, Span span)
{
    std::vector<MeterReading> readings;
    for (const store::StoredReading& reading : stored) {
        if (reading.inForce.at <= span.start)
            readings.clear();
        readings.push_back(reading.inForce);
        if (reading.inForce.at >= span.end)
            break;
    }
    return readings;
}

/// The meter's resolution; if not set, it follows from all of its readings.
std::optional<double> resolutionOf(const Meter& meter,
                                   const std::vector<store::StoredReading>& stored)
{
    if (meter.resolution)
        return meter.resolution->kilowattHours();
    std::vector<MeterReading> readings;
    for (const store::StoredReading& reading : stored)
        readings.push_back(reading.inForce);
    return analysis::finestDecimal(readings).kilowattHours();
}

} // namespace

void ComparisonCache::begin(const store::LogbookFile& logbook, const Snapshot& snapshot)
{
    if (m_of.changed(logbook, snapshot))
        m_entries.clear();
    std::erase_if(m_entries, [&](const auto& entry) { return !snapshot.batch(entry.first.first); });
    m_summed = 0;
}

Result<ComparisonCache::Key> ComparisonCache::keyOf(const store::LogbookFile& logbook,
                                                    const Snapshot& snapshot, const Batch& batch,
                                                    const LoadedSetup& setup,
                                                    const SummaryRules& rules,
                                                    store::SeriesFingerprints& fingerprints)
{
    Key key{BatchKey(snapshot, batch), {}};
    const Span span = key.batch.span();
    Surroundings& around = key.surroundings;
    around.setup = *setup.setup;
    around.rules = rules;
    for (const analysis::ConcurrentBatch& other : setup.concurrentBatches(snapshot)) {
        if (!intersection(other.span, span).empty())
            around.concurrentBatches.push_back(other.span);
    }
    for (const Meter& meter : snapshot.meters) {
        const auto& stored = snapshot.meterReadings.at(meter.name);
        if (countsFor(meter, batch.setup))
            around.meters.push_back(
                {meter, resolutionOf(meter, stored), readingsAround(stored, span)});
    }
    HOLDBAND_TRY(assignResult(gravitiesOf(logbook, batch), around.gravities));
    for (const std::string& name : sensorsOf(snapshot, batch, !around.meters.empty())) {
        if (const Sensor* sensor = snapshot.sensor(name)) // loading reports a missing sensor
            HOLDBAND_TRY(key.batch.add(snapshot, *sensor, fingerprints));
    }
    return key;
}

Result<std::optional<analysis::BatchSummary>>
ComparisonCache::known(const store::LogbookFile& logbook, const Snapshot& snapshot,
                       const Batch& batch, const LoadedSetup& setup, const SummaryRules& rules,
                       store::SeriesFingerprints& fingerprints)
{
    auto key = keyOf(logbook, snapshot, batch, setup, rules, fingerprints);
    HOLDBAND_TRY(key);
    Entry& entry = m_entries[{batch.name, rules.edges.size()}];
    if (entry.summary) {
        auto sameBatch = entry.key.batch.isSame(key->batch, fingerprints);
        HOLDBAND_TRY(sameBatch);
        if (!*sameBatch || entry.key.surroundings != key->surroundings)
            entry.summary.reset();
    }
    entry.key = std::move(*key); // what the next comparison is compared with
    return entry.summary;
}

void ComparisonCache::remember(const Batch& batch, const SummaryRules& rules,
                               analysis::BatchSummary summary)
{
    ++m_summed;
    m_entries[{batch.name, rules.edges.size()}].summary = std::move(summary);
}

} // namespace holdband::results
