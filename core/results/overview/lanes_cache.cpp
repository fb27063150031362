#include "core/results/overview/lanes_cache.h"

#include "core/results/overview/batch_line.h"
#include "core/text/phrase.h"

namespace holdband::results {

void LanesCache::begin(const store::LogbookFile& logbook, const Snapshot& snapshot)
{
    if (m_of.changed(logbook, snapshot))
        m_entries.clear();
    std::erase_if(m_entries, [&](const auto& entry) { return !snapshot.batch(entry.first); });
    m_judged = 0;
}

Result<BatchKey> LanesCache::keyOf(const Snapshot& snapshot, const Batch& batch,
                                   store::SeriesFingerprints& fingerprints)
{
    BatchKey key(snapshot, batch);
    for (const std::string& name : beerSensorsOf(batch)) {
        const Sensor* sensor = snapshot.sensor(name);
        if (!sensor)
            return dataProblem(Phrase::tr("the beer sensor \"%1\" is not on record").with(name));
        HOLDBAND_TRY(key.add(snapshot, *sensor, fingerprints));
    }
    return key;
}

Result<BatchLine> LanesCache::lineOf(const store::LogbookFile& logbook, const Snapshot& snapshot,
                                     const Batch& batch, store::SeriesFingerprints& fingerprints)
{
    auto key = keyOf(snapshot, batch, fingerprints);
    HOLDBAND_TRY(key);
    const auto known = m_entries.find(batch.name);
    if (known != m_entries.end()) {
        auto unchanged = known->second.key.isSame(*key, fingerprints);
        HOLDBAND_TRY(unchanged);
        if (*unchanged) {
            known->second.key = std::move(*key); // what the next review is compared with
            return known->second.line;
        }
    }
    auto line = batchLineOf(logbook, snapshot, batch);
    HOLDBAND_TRY(line);
    ++m_judged;
    m_entries.insert_or_assign(batch.name, Entry{std::move(*key), *line});
    return line;
}

} // namespace holdband::results
