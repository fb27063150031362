#include "core/store/readings/series_checksums.h"

#include "core/store/readings/reading_key.h"
#include "core/store/sqlite/rows.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <string>

namespace holdband::store {

void SeriesChecksums::beginBlock(BlockKey key, std::int64_t ms)
{
    m_last = &m_seen[key];
    m_lastKey = key;
    if (m_firstMs < 0)
        m_firstMs = ms;
}

Done SeriesChecksums::addBetween(const Database& database, std::int64_t first, std::int64_t last)
{
    if (first > last)
        return {};
    auto rows = query<BulkStatement>(
        database, "SELECT place, value, import FROM readings WHERE place BETWEEN ? AND ?",
        [this](const BulkStatement& row) {
            const std::int64_t ms = msOfKey(row.integer(0));
            m_seen[{blockOf(ms), row.integer(2)}].add(ms, row.real(1));
            return true;
        },
        m_sensor * instantRange + first, m_sensor * instantRange + last);
    HOLDBAND_TRY(rows);
    return {};
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

Done SeriesChecksums::check(const Database& database, Span span)
{
    const auto msIn = [](Instant at) {
        return std::clamp<std::int64_t>(toMs(at), 0, instantRange - 1);
    };
    const bool any = m_firstMs >= 0;
    const std::int64_t low = any ? std::min(m_firstMs, msIn(span.start)) : msIn(span.start);
    const std::int64_t high = any ? std::max(m_lastMs, msIn(span.end)) : msIn(span.end);
    HOLDBAND_TRY(addBetween(database, blockOf(low) << blockBits, low - 1));
    HOLDBAND_TRY(addBetween(database, high + 1, ((blockOf(high) + 1) << blockBits) - 1));
    auto stored = readBlockSums(database, m_sensor, blockOf(low), blockOf(high));
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
