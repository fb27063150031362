#include "core/store/readings/readings.h"

#include "core/model/names.h"
#include "core/store/readings/block_changes.h"
#include "core/store/readings/block_checksums.h"
#include "core/store/readings/import_units.h"
#include "core/store/readings/imports.h"
#include "core/store/readings/reading_blocks.h"
#include "core/store/readings/reading_key.h"
#include "core/store/readings/reading_units.h"
#include "core/store/sqlite/rows.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <cmath>

namespace holdband::store {

namespace {

/// A value stored in one unit and read in another counts as equal within this, in the base unit.
constexpr double sameValue = 1e-9;

/// Reads the stored readings in step with the file's, both in order of time.
class StoredWalk {
public:
    static Result<StoredWalk> over(const Database& database, std::int64_t sensor, Instant from,
                                   Instant to)
    {
        auto units = ImportUnits::of(database, sensor);
        HOLDBAND_TRY(units);
        auto blocks =
            BlockWalk::over(database, sensor, blockOf(storedMs(from)), blockOf(storedMs(to)));
        HOLDBAND_TRY(blocks);
        return StoredWalk(std::move(*units), std::move(*blocks));
    }

    /// The stored value at that instant, as raw number and unit. Instants in order of time.
    Result<std::optional<std::pair<double, ReadingUnit>>> at(std::int64_t ms)
    {
        while (m_more && (m_next == m_block.size() || m_block.ms[m_next] < ms))
            HOLDBAND_TRY(next());
        if (!m_more || m_block.ms[m_next] != ms)
            return std::optional<std::pair<double, ReadingUnit>>();
        return std::optional(
            std::pair(m_block.value[m_next], m_units.unitOf(m_block.import[m_next])));
    }

private:
    StoredWalk(ImportUnits units, BlockWalk blocks)
        : m_units(std::move(units)), m_blocks(std::move(blocks))
    {
    }

    Done next()
    {
        if (m_next < m_block.size()) {
            ++m_next;
            return {};
        }
        auto block = m_blocks.next();
        HOLDBAND_TRY(block);
        m_more = *block != nullptr;
        m_next = 0;
        if (m_more)
            m_block = **block;
        return {};
    }

    ImportUnits m_units;
    BlockWalk m_blocks;
    BlockReadings m_block;
    std::size_t m_next = 0;
    bool m_more = true;
};

bool same(double stored, ReadingUnit storedUnit, double raw, ReadingUnit unit)
{
    if (storedUnit == unit)
        return stored == raw;
    return std::abs(baseValue(stored, storedUnit) - baseValue(raw, unit)) <= sameValue;
}

struct NewRows {
    std::vector<std::uint32_t> indices;
    AddedRows counts;
};

Result<NewRows> compareWithStored(const Database& database, std::int64_t sensor,
                                  const SensorRows& rows)
{
    NewRows found;
    const auto& at = *rows.at;
    auto walk = StoredWalk::over(database, sensor, at.front(), at.back());
    HOLDBAND_TRY(walk);
    for (std::size_t i = 0; i < at.size(); ++i) {
        auto stored = walk->at(storedMs(at[i]));
        HOLDBAND_TRY(stored);
        if (!*stored) {
            found.indices.push_back(static_cast<std::uint32_t>(i));
            if (found.counts.firstAdded.size() < mostListed)
                found.counts.firstAdded.push_back(static_cast<std::uint32_t>(i));
            continue;
        }
        const auto [value, unit] = **stored;
        if (same(value, unit, (*rows.raw)[i], rows.unit)) {
            ++found.counts.alreadyThere;
            if (found.counts.firstThere.size() < mostListed)
                found.counts.firstThere.push_back(static_cast<std::uint32_t>(i));
        } else {
            found.counts.conflicts.push_back(
                {i, unit == rows.unit ? value : rawValue(baseValue(value, unit), rows.unit)});
        }
    }
    found.counts.added = static_cast<std::int64_t>(found.indices.size());
    return found;
}

/// Stores where each run of successive lines begins.
Done addSourceLines(const Database& database, ImportId import, std::int64_t sensor,
                    const SensorRows& rows, const std::vector<std::uint32_t>& indices)
{
    auto statement = database.prepare<BulkStatement>(
        "INSERT INTO source_lines "
        "(import, sensor, first_at, first_line) VALUES (?, ?, ?, ?)");
    HOLDBAND_TRY(statement);
    std::int64_t expected = -1;
    for (const std::uint32_t i : indices) {
        const auto line = static_cast<std::int64_t>((*rows.line)[i]);
        if (line != expected) {
            statement->bindAll(import.value, sensor, toMs((*rows.at)[i]), line);
            HOLDBAND_TRY(statement->run());
        }
        expected = line + 1;
    }
    return {};
}

std::uint64_t wholeChecksum(const SumsByBlock& sums)
{
    std::uint64_t checksum = 0;
    for (const auto& [block, sum] : sums)
        checksum += sum.checksum;
    return checksum;
}

/// Adds the import's record for one sensor, or extends it if the import is extended.
Done addColumn(const Database& database, ImportId import, std::int64_t sensor,
               const SensorRows& rows, const std::vector<std::uint32_t>& indices,
               std::uint64_t checksum)
{
    const auto count = static_cast<std::int64_t>(indices.size());
    const std::int64_t first = toMs((*rows.at)[indices.front()]);
    const std::int64_t last = toMs((*rows.at)[indices.back()]);
    auto before = query<BulkStatement>(
        database, "SELECT unit, checksum FROM import_columns WHERE import = ? AND sensor = ?",
        [](const BulkStatement& row) { return std::pair(row.text(0), row.integer(1)); },
        import.value, sensor);
    HOLDBAND_TRY(before);
    if (before->empty())
        return execute(database, "INSERT INTO import_columns VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
                       import.value, sensor, std::string_view(rows.header), nameOf(rows.unit),
                       count, static_cast<std::int64_t>(checksum), first, last);
    const auto& [unit, sum] = before->front();
    if (unit != nameOf(rows.unit))
        return dataProblem(
            Phrase::tr("the unit of \"%1\" is another than it was").with(rows.sensor));
    // Added here, because SQLite would turn a sum beyond 64 bits into a real number.
    return execute(database,
                   "UPDATE import_columns SET readings = readings + ?, checksum = ?, "
                   "first_at = min(first_at, ?), last_at = max(last_at, ?) "
                   "WHERE import = ? AND sensor = ?",
                   count, static_cast<std::int64_t>(static_cast<std::uint64_t>(sum) + checksum),
                   first, last, import.value, sensor);
}

} // namespace

Result<ImportId> addImport(const Change& change, const ImportedFile& file)
{
    auto id = nextImport(change.database());
    HOLDBAND_TRY(id);
    HOLDBAND_TRY(
        execute(change.database(),
                "INSERT INTO imports (id, file, sha256, rows_read, act) VALUES (?, ?, ?, ?, ?)",
                id->value, std::string_view(file.file), std::string_view(file.sha256),
                file.rowsRead, change.entry().value));
    // The id may have belonged to an import that was undone.
    HOLDBAND_TRY(execute(change.database(), "DELETE FROM read_logs WHERE import = ?", id->value));
    return *id;
}

bool isInForce(const Change& change, ImportId import)
{
    const auto there = query<BulkStatement>(
        change.database(), "SELECT 1 FROM imports WHERE id = ? AND taken_back_at IS NULL",
        [](const BulkStatement& row) { return row.integer(0); }, import.value);
    return there && !there->empty();
}

Result<ImportId> extendImport(const Change& change, ImportId import, const ImportedFile& file)
{
    if (!isInForce(change, import))
        return dataProblem(
            Phrase::tr("the import that these rows belong to is deleted or withdrawn"));
    HOLDBAND_TRY(execute(change.database(),
                         "UPDATE imports SET rows_read = rows_read + ? WHERE id = ?", file.rowsRead,
                         import.value));
    return import;
}

Result<AddedRows> addReadings(const Change& change, ImportId import, const SensorRows& rows)
{
    const Database& database = change.database();
    auto sensor = idOf(database, "sensors", "sensor", rows.sensor);
    HOLDBAND_TRY(sensor);
    if (rows.at->empty())
        return AddedRows{};
    auto found = compareWithStored(database, *sensor, rows);
    HOLDBAND_TRY(found);
    if (!found->indices.empty()) {
        HOLDBAND_TRY(change.pauseRecording());
        auto sums =
            addToBlocks(database, *sensor, import.value, {rows.at, rows.raw, &found->indices});
        HOLDBAND_TRY(sums);
        HOLDBAND_TRY(addBlockSums(database, *sensor, import.value, *sums));
        HOLDBAND_TRY(change.resumeRecording());
        HOLDBAND_TRY(
            addColumn(database, import, *sensor, rows, found->indices, wholeChecksum(*sums)));
        HOLDBAND_TRY(addSourceLines(database, import, *sensor, rows, found->indices));
    }
    return found->counts;
}

Result<AddedRows> compareReadings(const LogbookFile& logbook, const SensorRows& rows)
{
    auto sensor = idOf(logbook.database(), "sensors", "sensor", rows.sensor);
    HOLDBAND_TRY(sensor);
    if (rows.at->empty())
        return AddedRows{};
    auto found = compareWithStored(logbook.database(), *sensor, rows);
    HOLDBAND_TRY(found);
    return found->counts;
}

Done dropEmptyImport(const Change& change, ImportId import)
{
    return execute(change.database(),
                   "DELETE FROM imports WHERE id = ? "
                   "AND NOT EXISTS (SELECT 1 FROM import_columns WHERE import = imports.id) "
                   "AND NOT EXISTS (SELECT 1 FROM meter_readings WHERE import = imports.id)",
                   import.value);
}

namespace {

Done fillColumn(const Database& database, ImportId import, bool aside, RawColumn& column)
{
    auto sensor = idOf(database, "sensors", "sensor", column.sensor);
    HOLDBAND_TRY(sensor);
    auto lines = query<BulkStatement>(
        database,
        "SELECT first_at, first_line FROM source_lines WHERE import = ? AND sensor = ? "
        "ORDER BY first_at",
        [](const BulkStatement& row) { return std::pair(row.instant(0), row.integer(1)); },
        import.value, *sensor);
    HOLDBAND_TRY(lines);
    column.lines = std::move(*lines);
    std::vector<std::int64_t> ms;
    HOLDBAND_TRY(readBlocksOf(database, *sensor, import.value, aside, ms, column.raw));
    column.at.reserve(ms.size());
    for (const std::int64_t at : ms)
        column.at.push_back(instantFromMs(at));
    return {};
}

} // namespace

Result<std::vector<RawImport>> readImports(const LogbookFile& logbook)
{
    const Database& database = logbook.database();
    std::vector<RawImport> imports;
    auto rows = query<BulkStatement>(
        database,
        "SELECT i.id, i.file, i.sha256, i.rows_read, s.name, c.header, c.unit, "
        "i.taken_back_at "
        "FROM imports i LEFT JOIN import_columns c ON c.import = i.id "
        "LEFT JOIN sensors s ON s.id = c.sensor "
        "ORDER BY i.taken_back_at IS NULL, i.id, c.sensor",
        [&](const BulkStatement& row) {
            const ImportId id{row.integer(0)};
            if (imports.empty() || imports.back().id != id)
                imports.push_back(
                    {id, {row.text(1), row.text(2), row.integer(3)}, row.optionalInstant(7), {}});
            if (row.isNull(4))
                return true;
            RawColumn column;
            column.sensor = row.text(4);
            column.header = row.text(5);
            column.unit = choiceNamed<ReadingUnit>(row.text(6)).value_or(ReadingUnit::celsius);
            imports.back().columns.push_back(std::move(column));
            return true;
        });
    HOLDBAND_TRY(rows);
    return imports;
}

Done readRawColumns(const LogbookFile& logbook, RawImport& import)
{
    for (RawColumn& column : import.columns)
        HOLDBAND_TRY(
            fillColumn(logbook.database(), import.id, import.withdrawnAt.has_value(), column));
    return {};
}

} // namespace holdband::store
