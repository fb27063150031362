#include "core/results/batch_sources.h"

#include "core/analysis/meter_curve.h"
#include "core/assign_result.h"
#include "core/model/meter_service.h"

#include <algorithm>

namespace holdband::results {

namespace {

/// Sensors whose readings a figure of the batch uses.
std::set<std::string> sensorsOf(const Snapshot& snapshot, const Batch& batch, bool hasMeter)
{
    std::set<std::string> names = beerSensorsOf(batch);
    if (batch.ambientSensor)
        names.insert(*batch.ambientSensor);
    for (const Sensor& sensor : snapshot.sensors) {
        if (!hasMeter && readsElectricity(sensor.reads) && sensor.setup == batch.setup)
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

Result<BatchSources> BatchSources::of(const store::LogbookFile& logbook, const Snapshot& snapshot,
                                      const Batch& batch, const LoadedSetup& setup,
                                      store::SeriesFingerprints& fingerprints)
{
    BatchSources sources;
    sources.m_batch = BatchKey(snapshot, batch);
    sources.m_setup = *setup.setup;
    const Span span = sources.m_batch.span();
    for (const analysis::ConcurrentBatch& other : setup.concurrentBatches(snapshot)) {
        if (!intersection(other.span, span).empty())
            sources.m_concurrentBatches.push_back(other.span);
    }
    for (const Meter& meter : snapshot.meters) {
        const auto& stored = snapshot.meterReadings.at(meter.name);
        if (countsFor(meter, batch.setup))
            sources.m_meters.push_back(
                {meter, resolutionOf(meter, stored), readingsAround(stored, span)});
    }
    HOLDBAND_TRY(assignResult(gravitiesOf(logbook, batch), sources.m_gravities));
    for (const std::string& name : sensorsOf(snapshot, batch, !sources.m_meters.empty())) {
        if (const Sensor* sensor = snapshot.sensor(name)) // loading reports a missing sensor
            HOLDBAND_TRY(sources.m_batch.add(snapshot, *sensor, fingerprints));
    }
    return sources;
}

Result<bool> BatchSources::isSame(const BatchSources& now,
                                  store::SeriesFingerprints& fingerprints) const
{
    auto sameBatch = m_batch.isSame(now.m_batch, fingerprints);
    HOLDBAND_TRY(sameBatch);
    return *sameBatch && m_gravities == now.m_gravities && m_setup == now.m_setup &&
           m_concurrentBatches == now.m_concurrentBatches && m_meters == now.m_meters;
}

} // namespace holdband::results
