#include "core/store/series_checksums.h"

#include "core/keep.h"
#include "core/store/reading_place.h"
#include "core/store/row_checksum.h"
#include "core/store/rows.h"
#include "core/text/phrase.h"

#include <algorithm>

namespace holdband::store {

namespace {

/// So many readings more are looked at for the sake of the check alone; or half as many as the
/// series has, if that is more. Measured to stay well below a tenth of what a verdict takes.
constexpr std::int64_t alwaysAffordable = 20'000;

} // namespace

Result<SeriesChecksums> SeriesChecksums::of(const Database& database, std::int64_t sensor)
{
    SeriesChecksums checksums;
    checksums.m_sensor = sensor;
    auto rows = query(
        database,
        "SELECT c.import, s.name, i.file, c.readings, c.checksum FROM import_columns c "
        "JOIN imports i ON i.id = c.import JOIN sensors s ON s.id = c.sensor "
        "WHERE c.sensor = ? AND i.taken_back_at IS NULL",
        [&](const Statement& row) {
            checksums.m_columns[row.integer(0)] = {
                row.text(1),
                row.text(2),
                {row.integer(3), static_cast<std::uint64_t>(row.integer(4))},
                {}};
            return true;
        },
        sensor);
    HOLDBAND_TRY(rows);
    return checksums;
}

void SeriesChecksums::add(std::int64_t import, std::int64_t ms, double value)
{
    ++m_added;
    if (import != m_lastImport || !m_last) {
        const auto found = m_columns.find(import);
        m_last = found == m_columns.end() ? nullptr : &found->second;
        m_lastImport = import;
    }
    if (!m_last) {
        m_stray = true;
        return;
    }
    ++m_last->seen.readings;
    m_last->seen.checksum += rowHash(ms, value);
}

Result<SeriesChecksums::Sum> SeriesChecksums::wholeSum(const Database& database,
                                                       std::int64_t import) const
{
    auto statement = database.prepare(
        "SELECT place, value FROM readings WHERE place BETWEEN ? AND ? AND import = ?");
    HOLDBAND_TRY(statement);
    statement->bindAll(placeOf(m_sensor, Instant::min()), placeOf(m_sensor, Instant::max()),
                       import);
    Sum sum;
    for (;;) {
        auto row = statement->step();
        HOLDBAND_TRY(row);
        if (!*row)
            return sum;
        ++sum.readings;
        sum.checksum += rowHash(msAt(statement->integer(0)), statement->real(1));
    }
}

Problem SeriesChecksums::damaged(const Database& database, const Column& column) const
{
    return {
        ProblemKind::file,
        Phrase::tr("the readings of \"%1\" imported from %2 no longer fit their checksum: a bit "
                   "changed, or another program wrote here")
            .with(column.sensor, column.file),
        database.path(), Phrase::tr("`holdband check` says what is damaged")};
}

Result<bool> SeriesChecksums::check(const Database& database) const
{
    const std::int64_t affordable = std::max(alwaysAffordable, m_added / 2);
    bool checked = !m_stray;
    std::int64_t more = 0;
    for (const auto& [import, column] : m_columns) {
        if (column.seen.readings == 0)
            continue;
        Sum sum = column.seen;
        if (sum.readings < column.stored.readings) {
            more += column.stored.readings;
            if (more > affordable) {
                checked = false;
                continue;
            }
            HOLDBAND_TRY(keep(wholeSum(database, import), sum));
        }
        if (sum.readings != column.stored.readings || sum.checksum != column.stored.checksum)
            return failure(damaged(database, column));
    }
    return checked;
}

} // namespace holdband::store
