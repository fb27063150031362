#include "core/store/readings.h"

#include "core/logbook/names.h"
#include "core/store/reading_place.h"
#include "core/store/reading_units.h"
#include "core/store/row_checksum.h"
#include "core/store/rows.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace holdband::store {

namespace {

constexpr std::size_t rowsPerInsert = 200;

/// Values that were the same number in two units count as the same below this, in the base unit.
constexpr double sameValue = 1e-9;

std::string insertSql(std::size_t rows)
{
    std::string sql = "INSERT INTO readings (place, value, import) VALUES ";
    // Numbered in the first tuple, so that the bare ones that follow count on from there.
    for (std::size_t i = 0; i < rows; ++i)
        sql += i == 0 ? "(?2,?3,?1)" : ",(?,?,?1)";
    return sql;
}

/// Inserts rows that are known to be new, many to a statement.
class BulkInsert {
public:
    static Result<BulkInsert> make(const Database& database, std::int64_t sensor, ImportId import)
    {
        auto many = database.prepare(insertSql(rowsPerInsert));
        HOLDBAND_TRY(many);
        return BulkInsert(database, std::move(*many), sensor, import.value);
    }

    Done add(Instant at, double value)
    {
        m_places.push_back(placeOf(m_sensor, at));
        m_values.push_back(value);
        return m_places.size() == rowsPerInsert ? flush(m_many) : Done{};
    }

    Done finish()
    {
        if (m_places.empty())
            return {};
        auto rest = m_database->prepare(insertSql(m_places.size()));
        HOLDBAND_TRY(rest);
        return flush(*rest);
    }

private:
    BulkInsert(const Database& database, Statement many, std::int64_t sensor, std::int64_t import)
        : m_database(&database), m_many(std::move(many)), m_sensor(sensor), m_import(import)
    {
    }

    Done flush(Statement& statement)
    {
        statement.bind(1, m_import);
        for (std::size_t i = 0; i < m_places.size(); ++i) {
            const int index = 2 + static_cast<int>(2 * i);
            statement.bind(index, m_places[i]);
            statement.bind(index + 1, m_values[i]);
        }
        m_places.clear();
        m_values.clear();
        auto stepped = statement.step();
        sqlite3_reset(statement.raw());
        HOLDBAND_TRY(stepped);
        return {};
    }

    const Database* m_database;
    Statement m_many;
    std::int64_t m_sensor;
    std::int64_t m_import;
    std::vector<std::int64_t> m_places;
    std::vector<double> m_values;
};

/// The unit of each import's column for one sensor; imports come in long runs, so the last one
/// asked is kept at hand.
class ImportUnits {
public:
    static Result<ImportUnits> of(const Database& database, std::int64_t sensor)
    {
        ImportUnits units;
        auto rows = query(
            database, "SELECT import, unit FROM import_columns WHERE sensor = ?",
            [](const Statement& row) { return std::pair(row.integer(0), row.text(1)); }, sensor);
        HOLDBAND_TRY(rows);
        for (const auto& [import, name] : *rows)
            units.m_units[import] = choiceNamed<ReadingUnit>(name).value_or(ReadingUnit::celsius);
        return units;
    }

    ReadingUnit unitOf(std::int64_t import)
    {
        if (import != m_last) {
            const auto found = m_units.find(import);
            m_unit = found == m_units.end() ? ReadingUnit::celsius : found->second;
            m_last = import;
        }
        return m_unit;
    }

private:
    std::map<std::int64_t, ReadingUnit> m_units;
    std::int64_t m_last = -1;
    ReadingUnit m_unit = ReadingUnit::celsius;
};

/// Walks the stored readings alongside the file's, both in order of time.
class StoredWalk {
public:
    static Result<StoredWalk> over(const Database& database, std::int64_t sensor, Instant from,
                                   Instant to)
    {
        auto units = ImportUnits::of(database, sensor);
        HOLDBAND_TRY(units);
        auto statement = database.prepare("SELECT place, value, import FROM readings "
                                          "WHERE place BETWEEN ? AND ?");
        HOLDBAND_TRY(statement);
        statement->bindAll(placeOf(sensor, from), placeOf(sensor, to));
        StoredWalk walk(std::move(*units), std::move(*statement));
        HOLDBAND_TRY(walk.next());
        return walk;
    }

    /// The stored value at that instant, as raw number and unit.
    Result<std::optional<std::pair<double, ReadingUnit>>> at(std::int64_t place)
    {
        while (m_more && m_statement.integer(0) < place)
            HOLDBAND_TRY(next());
        if (!m_more || m_statement.integer(0) != place)
            return std::optional<std::pair<double, ReadingUnit>>();
        return std::optional(
            std::pair(m_statement.real(1), m_units.unitOf(m_statement.integer(2))));
    }

private:
    StoredWalk(ImportUnits units, Statement statement)
        : m_units(std::move(units)), m_statement(std::move(statement))
    {
    }

    Done next()
    {
        auto row = m_statement.step();
        HOLDBAND_TRY(row);
        m_more = *row;
        return {};
    }

    ImportUnits m_units;
    Statement m_statement;
    bool m_more = false;
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
        auto stored = walk->at(placeOf(sensor, at[i]));
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

/// Notes where each run of successive lines begins.
Done addSourceLines(const Database& database, ImportId import, std::int64_t sensor,
                    const SensorRows& rows, const std::vector<std::uint32_t>& indices)
{
    auto statement = database.prepare("INSERT INTO source_lines VALUES (?, ?, ?, ?)");
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

Done insertNew(const Database& database, ImportId import, std::int64_t sensor,
               const SensorRows& rows, const std::vector<std::uint32_t>& indices)
{
    auto insert = BulkInsert::make(database, sensor, import);
    HOLDBAND_TRY(insert);
    std::uint64_t checksum = 0;
    for (const std::uint32_t i : indices) {
        const Instant at = (*rows.at)[i];
        const double value = (*rows.raw)[i];
        checksum += rowHash(toMs(at), value);
        HOLDBAND_TRY(insert->add(at, value));
    }
    HOLDBAND_TRY(insert->finish());
    return execute(database, "INSERT INTO import_columns VALUES (?, ?, ?, ?, ?, ?)", import.value,
                   sensor, std::string_view(rows.header), nameOf(rows.unit),
                   static_cast<std::int64_t>(indices.size()), static_cast<std::int64_t>(checksum));
}

} // namespace

Result<ImportId> addImport(const Change& change, const ImportedFile& file)
{
    HOLDBAND_TRY(execute(change.database(),
                         "INSERT INTO imports (file, sha256, rows_read, act) VALUES (?, ?, ?, ?)",
                         std::string_view(file.file), std::string_view(file.sha256), file.rowsRead,
                         change.act().value));
    return ImportId{change.database().lastRowId()};
}

Result<ImportId> extendImport(const Change& change, ImportId import, const ImportedFile& file)
{
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
        HOLDBAND_TRY(insertNew(database, import, *sensor, rows, found->indices));
        HOLDBAND_TRY(addSourceLines(database, import, *sensor, rows, found->indices));
    }
    return found->counts;
}

Done dropEmptyImport(const Change& change, ImportId import)
{
    return execute(change.database(),
                   "DELETE FROM imports WHERE id = ?1 "
                   "AND NOT EXISTS (SELECT 1 FROM import_columns WHERE import = ?1) "
                   "AND NOT EXISTS (SELECT 1 FROM meter_readings WHERE import = ?1)",
                   import.value);
}

Result<analysis::Series> readSeries(const LogbookFile& logbook, const std::string& sensor,
                                    Span span)
{
    const Database& database = logbook.database();
    auto id = idOf(database, "sensors", "sensor", sensor);
    HOLDBAND_TRY(id);
    auto units = ImportUnits::of(database, *id);
    HOLDBAND_TRY(units);
    // ?1 … ?2 hold all of the sensor's places, ?3 … ?4 those of the span.
    auto statement = database.prepare("SELECT place, value, import FROM readings WHERE "
                                      "place >= coalesce((SELECT max(place) FROM readings WHERE "
                                      "place BETWEEN ?1 AND ?3 - 1), ?3) "
                                      "AND "
                                      "place <= coalesce((SELECT min(place) FROM readings WHERE "
                                      "place BETWEEN ?4 + 1 AND ?2), ?4)");
    HOLDBAND_TRY(statement);
    statement->bindAll(placeOf(*id, Instant::min()), placeOf(*id, Instant::max()),
                       placeOf(*id, span.start), placeOf(*id, span.end));
    analysis::Series series;
    sqlite3_stmt* raw = statement->raw();
    for (;;) {
        auto row = statement->step();
        HOLDBAND_TRY(row);
        if (!*row)
            return series;
        series.at.push_back(instantFromMs(msAt(sqlite3_column_int64(raw, 0))));
        series.value.push_back(
            baseValue(sqlite3_column_double(raw, 1), units->unitOf(sqlite3_column_int64(raw, 2))));
    }
}

Result<std::optional<Instant>> lastReadingAt(const LogbookFile& logbook, const std::string& sensor)
{
    const Database& database = logbook.database();
    auto id = idOf(database, "sensors", "sensor", sensor);
    HOLDBAND_TRY(id);
    auto last = query(
        database, "SELECT max(place) FROM readings WHERE place BETWEEN ? AND ?",
        [](const Statement& row) {
            const auto place = row.optionalInteger(0);
            return place ? std::optional(instantFromMs(msAt(*place))) : std::nullopt;
        },
        placeOf(*id, Instant::min()), placeOf(*id, Instant::max()));
    HOLDBAND_TRY(last);
    return last->empty() ? std::nullopt : last->front();
}

namespace {

Done fillColumn(const Database& database, ImportId import, RawColumn& column)
{
    auto sensor = idOf(database, "sensors", "sensor", column.sensor);
    HOLDBAND_TRY(sensor);
    auto lines = query(
        database,
        "SELECT first_at, first_line FROM source_lines WHERE import = ? AND sensor = ? "
        "ORDER BY first_at",
        [](const Statement& row) {
            return std::pair(instantFromMs(row.integer(0)), row.integer(1));
        },
        import.value, *sensor);
    HOLDBAND_TRY(lines);
    column.lines = std::move(*lines);
    auto statement = database.prepare("SELECT place, value FROM readings "
                                      "WHERE place BETWEEN ? AND ? AND import = ?");
    HOLDBAND_TRY(statement);
    statement->bindAll(placeOf(*sensor, Instant::min()), placeOf(*sensor, Instant::max()),
                       import.value);
    for (;;) {
        auto row = statement->step();
        HOLDBAND_TRY(row);
        if (!*row)
            return {};
        column.at.push_back(instantFromMs(msAt(statement->integer(0))));
        column.raw.push_back(statement->real(1));
    }
}

} // namespace

Result<std::vector<RawImport>> readImports(const LogbookFile& logbook)
{
    const Database& database = logbook.database();
    std::vector<RawImport> imports;
    auto rows =
        query(database,
              "SELECT i.id, i.file, i.sha256, i.rows_read, s.name, c.header, c.unit "
              "FROM import_columns c JOIN imports i ON i.id = c.import "
              "JOIN sensors s ON s.id = c.sensor ORDER BY c.import, c.sensor",
              [&](const Statement& row) {
                  const ImportId id{row.integer(0)};
                  if (imports.empty() || imports.back().id != id)
                      imports.push_back({id, {row.text(1), row.text(2), row.integer(3)}, {}});
                  RawColumn column;
                  column.sensor = row.text(4);
                  column.header = row.text(5);
                  column.unit =
                      choiceNamed<ReadingUnit>(row.text(6)).value_or(ReadingUnit::celsius);
                  imports.back().columns.push_back(std::move(column));
                  return true;
              });
    HOLDBAND_TRY(rows);
    return imports;
}

Done readRawColumns(const LogbookFile& logbook, RawImport& import)
{
    for (RawColumn& column : import.columns)
        HOLDBAND_TRY(fillColumn(logbook.database(), import.id, column));
    return {};
}

Result<std::vector<Exclusion>> readExclusions(const LogbookFile& logbook)
{
    return query(logbook.database(),
                 "SELECT s.name, e.from_at, e.to_at, e.why FROM exclusions e "
                 "JOIN sensors s ON s.id = e.sensor ORDER BY e.from_at, e.id",
                 [](const Statement& row) {
                     return Exclusion{
                         row.text(0),
                         {instantFromMs(row.integer(1)), instantFromMs(row.integer(2))},
                         row.text(3)};
                 });
}

Done addExclusion(const Change& change, const Exclusion& exclusion)
{
    const Database& database = change.database();
    auto sensor = idOf(database, "sensors", "sensor", exclusion.sensor);
    HOLDBAND_TRY(sensor);
    return execute(database,
                   "INSERT INTO exclusions (sensor, from_at, to_at, why, act) "
                   "VALUES (?, ?, ?, ?, ?)",
                   *sensor, toMs(exclusion.span.start), toMs(exclusion.span.end),
                   std::string_view(exclusion.why), change.act().value);
}

} // namespace holdband::store
