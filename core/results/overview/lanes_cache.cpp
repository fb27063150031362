#include "core/results/overview/lanes_cache.h"

#include "core/results/cache_key.h"
#include "core/results/overview/batch_line.h"
#include "core/text/phrase.h"

namespace holdband::results {

void LanesCache::begin(const store::LogbookFile& logbook, const Snapshot& snapshot)
{
    if (m_path != logbook.path() || m_settings != snapshot.settings)
        m_entries.clear();
    m_path = logbook.path();
    m_settings = snapshot.settings;
    std::set<std::string> names;
    for (const Batch& batch : snapshot.batches)
        names.insert(batch.name);
    std::erase_if(m_entries, [&](const auto& entry) { return !names.contains(entry.first); });
    m_judged = 0;
}

Result<LanesCache::Basis> LanesCache::basisOf(const Snapshot& snapshot, const Batch& batch,
                                              store::SeriesFingerprints& prints)
{
    Basis basis{batch, snapshot.batchSpans.at(batch.name), {}, {}};
    if (!batch.ended)
        basis.knownTo = snapshot.beerKnownTo.at(batch.name);
    for (const std::string& name : beerSensorsOf(batch)) {
        const Sensor* sensor = snapshot.sensor(name);
        if (!sensor)
            return dataProblem(Phrase::tr("the beer sensor \"%1\" is not on record").with(name));
        auto readings = prints.of(name, basis.span);
        HOLDBAND_TRY(readings);
        basis.sensors.push_back({*sensor, exclusionsOf(snapshot, name), std::move(*readings)});
    }
    return basis;
}

Result<bool> LanesCache::same(const Basis& before, const Basis& now,
                              store::SeriesFingerprints& prints)
{
    if (before.batch != now.batch || before.span != now.span || before.knownTo != now.knownTo ||
        before.sensors.size() != now.sensors.size())
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

Result<BatchLine> LanesCache::lineOf(const store::LogbookFile& logbook, const Snapshot& snapshot,
                                     const Batch& batch, store::SeriesFingerprints& prints)
{
    auto basis = basisOf(snapshot, batch, prints);
    HOLDBAND_TRY(basis);
    const auto known = m_entries.find(batch.name);
    if (known != m_entries.end()) {
        auto unchanged = same(known->second.basis, *basis, prints);
        HOLDBAND_TRY(unchanged);
        if (*unchanged) {
            known->second.basis = std::move(*basis); // compared with next time
            return known->second.line;
        }
    }
    auto line = batchLineOf(logbook, snapshot, batch);
    HOLDBAND_TRY(line);
    ++m_judged;
    m_entries.insert_or_assign(batch.name, Entry{std::move(*basis), *line});
    return line;
}

} // namespace holdband::results
