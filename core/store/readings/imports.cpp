#include "core/store/readings/imports.h"

#include "core/store/readings/block_changes.h"
#include "core/store/sqlite/rows.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <charconv>
#include <map>

namespace holdband::store {

namespace {

Result<std::vector<std::int64_t>> sensorsOf(const Database& database, std::int64_t import)
{
    return query(
        database, "SELECT sensor FROM import_columns WHERE import = ?",
        [](const Statement& row) { return row.integer(0); }, import);
}

/// Problem (data): another import has readings at the times of the withdrawn one.
Done checkTimesAreFree(const Database& database, std::int64_t import)
{
    auto taken = countTaken(database, import);
    HOLDBAND_TRY(taken);
    if (*taken > 0)
        return dataProblem(
            Phrase::counted("another import has since added readings for %n of the same times",
                            "another import has since added readings for %n of the same times",
                            static_cast<std::uint64_t>(*taken)),
            {}, Phrase::tr("withdraw that one first"));
    return {};
}

Done moveBack(const Database& database, std::int64_t import)
{
    HOLDBAND_TRY(checkTimesAreFree(database, import));
    return moveBlocksBack(database, import);
}

Result<bool> importIsInForce(const Database& database, std::int64_t import)
{
    auto rows = query(
        database, "SELECT 1 FROM imports WHERE id = ? AND taken_back_at IS NULL",
        [](const Statement&) { return true; }, import);
    HOLDBAND_TRY(rows);
    return !rows->empty();
}

Done settleOne(const Database& database, std::int64_t import,
               const std::vector<std::int64_t>& sensors)
{
    auto wanted = importIsInForce(database, import);
    HOLDBAND_TRY(wanted);
    if (*wanted)
        return moveBack(database, import);
    for (const std::int64_t sensor : sensors)
        HOLDBAND_TRY(moveBlocksAside(database, sensor, import));
    return {};
}

/// The readings are moved with the recording paused, because they are not part of it.
Done settleUnrecorded(const Change& change, ImportId import)
{
    auto sensors = sensorsOf(change.database(), import.value);
    HOLDBAND_TRY(sensors);
    HOLDBAND_TRY(change.pauseRecording());
    HOLDBAND_TRY(settleOne(change.database(), import.value, *sensors));
    return change.resumeRecording();
}

/// Problem (data): a meter has other readings at the times of the withdrawn import's.
Done checkMetersAreFree(const Database& database, std::int64_t import)
{
    auto taken = query(
        database,
        "SELECT 1 FROM meter_readings a JOIN meter_readings b ON b.meter = a.meter AND "
        "b.at = a.at AND b.set_aside = 0 WHERE a.import = ? AND a.set_aside = 1",
        [](const Statement&) { return true; }, import);
    HOLDBAND_TRY(taken);
    if (!taken->empty())
        return dataProblem(Phrase::tr("meter readings have since been entered for the same times"),
                           {}, Phrase::tr("delete those first"));
    return {};
}

/// Readings that were deleted on their own stay deleted.
Done setMetersWithdrawn(const Change& change, ImportId import, bool withdrawn)
{
    return execute(change.database(),
                   "UPDATE meter_readings SET set_aside = ? WHERE import = ? AND set_aside = ?",
                   withdrawn ? 1 : 0, import.value, withdrawn ? 0 : 1);
}

std::int64_t numberIn(const std::string& text)
{
    std::int64_t number = 0;
    std::from_chars(text.data(), text.data() + text.size(), number);
    return number;
}

std::optional<std::int64_t> valueOf(const ChangedRow& row, std::string_view column)
{
    for (const ChangedValue& value : row.values) {
        if (value.column == column)
            return numberIn(value.before.empty() ? value.after : value.before);
    }
    return std::nullopt;
}

} // namespace

Result<ImportId> nextImport(const Database& database)
{
    auto id = database.integer("SELECT 1 + max(coalesce((SELECT max(id) FROM imports), 0), "
                               "coalesce((SELECT max(import) FROM aside_blocks), 0))");
    HOLDBAND_TRY(id);
    return ImportId{*id};
}

Done withdraw(const Change& change, ImportId import)
{
    return withdrawAt(change, import, change.at());
}

Done withdrawAt(const Change& change, ImportId import, Instant when)
{
    auto inForce = importIsInForce(change.database(), import.value);
    HOLDBAND_TRY(inForce);
    if (!*inForce)
        return {};
    HOLDBAND_TRY(execute(change.database(), "UPDATE imports SET taken_back_at = ? WHERE id = ?",
                         toMs(when), import.value));
    HOLDBAND_TRY(setMetersWithdrawn(change, import, true));
    return settleUnrecorded(change, import);
}

Done restoreImport(const Change& change, ImportId import)
{
    HOLDBAND_TRY(checkTimesAreFree(change.database(), import.value));
    HOLDBAND_TRY(checkMetersAreFree(change.database(), import.value));
    HOLDBAND_TRY(execute(change.database(), "UPDATE imports SET taken_back_at = NULL WHERE id = ?",
                         import.value));
    HOLDBAND_TRY(setMetersWithdrawn(change, import, false));
    return settleUnrecorded(change, import);
}

Result<TouchedImports> TouchedImports::in(const Database& database, const Changeset& changes)
{
    auto rows = rowsOf(database, changes);
    HOLDBAND_TRY(rows);
    std::map<std::int64_t, std::vector<std::int64_t>> sensors;
    for (const ChangedRow& row : *rows) {
        if (row.table == "imports")
            sensors[valueOf(row, "id").value_or(0)];
        else if (row.table == "import_columns")
            sensors[valueOf(row, "import").value_or(0)].push_back(
                valueOf(row, "sensor").value_or(0));
    }
    TouchedImports touched;
    for (auto& [import, listed] : sensors) {
        auto stored = sensorsOf(database, import);
        HOLDBAND_TRY(stored);
        listed.insert(listed.end(), stored->begin(), stored->end());
        std::sort(listed.begin(), listed.end());
        listed.erase(std::unique(listed.begin(), listed.end()), listed.end());
        touched.m_sensors.emplace_back(import, std::move(listed));
    }
    return touched;
}

Done TouchedImports::settle(const Database& database) const
{
    for (const auto& [import, sensors] : m_sensors)
        HOLDBAND_TRY(settleOne(database, import, sensors));
    return {};
}

namespace {

ImportLine lineFrom(const Statement& row)
{
    ImportLine line;
    line.id = {row.integer(0)};
    line.file = row.text(1);
    line.at = row.instant(2);
    line.rowsRead = row.integer(3);
    line.withdrawnAt = row.optionalInstant(4);
    return line;
}

struct Brought {
    std::int64_t import;
    std::string into;
    std::int64_t readings;
    std::optional<Span> span;
};

Brought broughtFrom(const Statement& row)
{
    Brought brought{row.integer(0), row.text(1), row.integer(2), {}};
    if (!row.isNull(3) && !row.isNull(4))
        brought.span = Span{row.instant(3), row.instant(4)};
    return brought;
}

void add(std::vector<ImportLine>& lines, const std::vector<Brought>& all)
{
    for (const Brought& brought : all) {
        const auto line =
            std::find_if(lines.begin(), lines.end(), [&](const ImportLine& candidate) {
                return candidate.id.value == brought.import;
            });
        if (line == lines.end())
            continue;
        line->into.push_back(brought.into);
        line->readings += brought.readings;
        if (brought.span)
            line->span = line->span ? Span{std::min(line->span->start, brought.span->start),
                                           std::max(line->span->end, brought.span->end)}
                                    : *brought.span;
    }
}

} // namespace

Result<std::vector<ImportLine>> listImports(const LogbookFile& logbook)
{
    const Database& database = logbook.database();
    auto lines = query(database,
                       "SELECT i.id, i.file, a.at, i.rows_read, i.taken_back_at FROM imports i "
                       "JOIN acts a ON a.id = i.act ORDER BY i.id DESC",
                       lineFrom);
    HOLDBAND_TRY(lines);
    auto sensors = query(database,
                         "SELECT c.import, s.name, c.readings, c.first_at, c.last_at "
                         "FROM import_columns c JOIN sensors s ON s.id = c.sensor "
                         "ORDER BY c.import, c.sensor",
                         broughtFrom);
    HOLDBAND_TRY(sensors);
    auto meters = query(database,
                        "SELECT r.import, m.name, count(*), min(r.at), max(r.at) "
                        "FROM meter_readings r JOIN meters m ON m.id = r.meter "
                        "WHERE r.import IS NOT NULL GROUP BY r.import, r.meter",
                        broughtFrom);
    HOLDBAND_TRY(meters);
    add(*lines, *sensors);
    add(*lines, *meters);
    return lines;
}

} // namespace holdband::store
