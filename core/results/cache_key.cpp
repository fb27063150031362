#include "core/results/cache_key.h"

namespace holdband::results {

std::set<std::string> beerSensorsOf(const Batch& batch)
{
    std::set<std::string> names{batch.beerSensor};
    for (const BeerUse& use : batch.beerUses)
        names.insert(use.sensor);
    return names;
}

std::vector<Span> exclusionsOf(const Snapshot& snapshot, const std::string& sensor)
{
    std::vector<Span> spans;
    for (const store::Exclusion& exclusion : snapshot.exclusions) {
        if (exclusion.sensor == sensor)
            spans.push_back(exclusion.span);
    }
    return spans;
}

BatchKey::BatchKey(const Snapshot& snapshot, const Batch& batch)
    : m_batch(batch), m_span(snapshot.batchSpans.at(batch.name))
{
    if (!batch.ended)
        m_knownTo = snapshot.beerKnownTo.at(batch.name);
}

Done BatchKey::add(const Snapshot& snapshot, const Sensor& sensor,
                   store::SeriesFingerprints& fingerprints)
{
    auto readings = fingerprints.of(sensor.name, m_span);
    HOLDBAND_TRY(readings);
    m_sensors.push_back({sensor, exclusionsOf(snapshot, sensor.name), std::move(*readings)});
    return {};
}

Result<bool> BatchKey::isSame(const BatchKey& now, store::SeriesFingerprints& fingerprints) const
{
    if (m_batch != now.m_batch || m_span != now.m_span || m_knownTo != now.m_knownTo ||
        m_sensors.size() != now.m_sensors.size())
        return false;
    for (std::size_t i = 0; i < m_sensors.size(); ++i) {
        const SensorKey& was = m_sensors[i];
        const SensorKey& is = now.m_sensors[i];
        if (was.sensor != is.sensor || was.excluded != is.excluded)
            return false;
        auto readings = fingerprints.same(was.readings, is.readings, now.m_span);
        HOLDBAND_TRY(readings);
        if (!*readings)
            return false;
    }
    return true;
}

bool CachedLogbook::changed(const store::LogbookFile& logbook, const Snapshot& snapshot)
{
    const bool other = m_path != logbook.path() || m_settings != snapshot.settings;
    m_path = logbook.path();
    m_settings = snapshot.settings;
    return other;
}

} // namespace holdband::results
