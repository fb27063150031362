#include "core/results/comparison/comparison_cache.h"

#include "core/analysis/meter_curve.h"
#include "core/assign_result.h"
#include "core/model/meter_service.h"
#include "core/results/cache_key.h"

#include <algorithm>

namespace holdband::results {

namespace {

/// Sensors whose readings a summary of the batch rests on.
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
std::vector<MeterReading> readingsAround(const std::vector<store::StoredReading>& kept, Span span)
{
    std::vector<MeterReading> readings;
    for (const store::StoredReading& reading : kept) {
        if (reading.inForce.at <= span.start)
            readings.clear();
        readings.push_back(reading.inForce);
        if (reading.inForce.at >= span.end)
            break;
    }
    return readings;
}

/// Where the meter's resolution is not given it follows from all of its readings.
std::optional<double> resolutionOf(const Meter& meter,
                                   const std::vector<store::StoredReading>& kept)
{
    if (meter.resolution)
        return meter.resolution->kilowattHours();
    std::vector<MeterReading> readings;
    for (const store::StoredReading& reading : kept)
        readings.push_back(reading.inForce);
    return analysis::finestDecimal(readings).kilowattHours();
}

} // namespace

void ComparisonCache::begin(const store::LogbookFile& logbook, const Snapshot& snapshot)
{
    if (m_path != logbook.path() || m_settings != snapshot.settings)
        m_entries.clear();
    m_path = logbook.path();
    m_settings = snapshot.settings;
    std::erase_if(m_entries, [&](const auto& entry) { return !snapshot.batch(entry.first.first); });
    m_summed = 0;
}

Result<ComparisonCache::Basis>
ComparisonCache::basisOf(const store::LogbookFile& logbook, const Snapshot& snapshot,
                         const Batch& batch, const LoadedSetup& setup, const SummaryRules& rules,
                         store::SeriesFingerprints& prints)
{
    Basis basis;
    basis.batch = batch;
    basis.span = snapshot.batchSpans.at(batch.name);
    basis.setup = *setup.setup;
    basis.rules = rules;
    if (!batch.ended)
        basis.knownTo = snapshot.beerKnownTo.at(batch.name);
    for (const analysis::ConcurrentBatch& tenant : setup.concurrentBatches(snapshot)) {
        if (!intersection(tenant.span, basis.span).empty())
            basis.concurrentBatches.push_back(tenant.span);
    }
    for (const Meter& meter : snapshot.meters) {
        const auto& kept = snapshot.meterReadings.at(meter.name);
        if (countsFor(meter, batch.setup))
            basis.meters.push_back(
                {meter, resolutionOf(meter, kept), readingsAround(kept, basis.span)});
    }
    HOLDBAND_TRY(assignResult(gravitiesOf(logbook, batch), basis.gravities));
    for (const std::string& name : sensorsOf(snapshot, batch, !basis.meters.empty())) {
        const Sensor* sensor = snapshot.sensor(name);
        if (!sensor)
            continue; // loading says what is missing
        auto readings = prints.of(name, basis.span);
        HOLDBAND_TRY(readings);
        basis.sensors.push_back({*sensor, exclusionsOf(snapshot, name), std::move(*readings)});
    }
    return basis;
}

Result<bool> ComparisonCache::same(const Basis& before, const Basis& now,
                                   store::SeriesFingerprints& prints)
{
    if (before.batch != now.batch || before.span != now.span || before.knownTo != now.knownTo ||
        before.gravities != now.gravities || before.setup != now.setup ||
        before.concurrentBatches != now.concurrentBatches || before.meters != now.meters ||
        before.rules != now.rules || before.sensors.size() != now.sensors.size())
        return false;
    for (std::size_t i = 0; i < now.sensors.size(); ++i) {
        const SensorBasis& was = before.sensors[i];
        const SensorBasis& is = now.sensors[i];
        if (was.sensor != is.sensor || was.excluded != is.excluded)
            return false;
        auto readings = prints.same(was.readings, is.readings, now.span);
        HOLDBAND_TRY(readings);
        if (!*readings)
            return false;
    }
    return true;
}

Result<std::optional<analysis::BatchSummary>>
ComparisonCache::known(const store::LogbookFile& logbook, const Snapshot& snapshot,
                       const Batch& batch, const LoadedSetup& setup, const SummaryRules& rules,
                       store::SeriesFingerprints& prints)
{
    auto basis = basisOf(logbook, snapshot, batch, setup, rules, prints);
    HOLDBAND_TRY(basis);
    Entry& entry = m_entries[{batch.name, rules.edges.size()}];
    if (entry.summary) {
        auto unchanged = same(entry.basis, *basis, prints);
        HOLDBAND_TRY(unchanged);
        if (!*unchanged)
            entry.summary.reset();
    }
    entry.basis = std::move(*basis); // the next look begins from here
    return entry.summary;
}

void ComparisonCache::remember(const Batch& batch, const SummaryRules& rules,
                               analysis::BatchSummary summary)
{
    ++m_summed;
    m_entries[{batch.name, rules.edges.size()}].summary = std::move(summary);
}

} // namespace holdband::results
