#include "core/store/readings/series_checksums.h"

#include "core/store/sqlite/rows.h"
#include "core/text/phrase.h"

#include <algorithm>

namespace holdband::store {

void SeriesChecksums::add(const BlockReadings& readings)
{
    for (const auto& [import, sum] : readings.sums)
        m_seen[{readings.block, import}] = sum;
}

Problem SeriesChecksums::damaged(const Database& database, std::int64_t import) const
{
    const auto names = query<BulkStatement>(
        database, "SELECT s.name, i.file FROM imports i, sensors s WHERE i.id = ? AND s.id = ?",
        [](const BulkStatement& row) { return std::pair(row.text(0), row.text(1)); }, import,
        m_sensor);
    const Phrase how = Phrase::tr("`holdband check` says what is damaged");
    if (!names || names->empty())
        return {ProblemKind::file, Phrase::tr("there are readings that belong to no import"),
                database.path(), how};
    return {
        ProblemKind::file,
        Phrase::tr("the readings of \"%1\" imported from %2 no longer fit their checksum: a bit "
                   "changed, or another program wrote here")
            .with(names->front().first, names->front().second),
        database.path(), how};
}

Done SeriesChecksums::check(const Database& database, std::int64_t first, std::int64_t last) const
{
    auto stored = readBlockSums(database, m_sensor, first, last);
    HOLDBAND_TRY(stored);
    const auto [seen, expected] =
        std::mismatch(m_seen.begin(), m_seen.end(), stored->begin(), stored->end());
    if (seen != m_seen.end() && (expected == stored->end() || seen->first <= expected->first))
        return failure(damaged(database, seen->first.import));
    if (expected != stored->end())
        return failure(damaged(database, expected->first.import));
    return {};
}

} // namespace holdband::store
