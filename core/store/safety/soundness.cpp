#include "core/store/safety/soundness.h"

#include "core/store/history/entry_changes.h"
#include "core/store/readings/reading_blocks.h"
#include "core/store/readings/row_checksum.h"
#include "core/store/safety/integrity.h"
#include "core/store/safety/seal.h"
#include "core/store/sqlite/rows.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <map>

namespace holdband::store {

namespace {

using Key = std::pair<std::int64_t, std::int64_t>; ///< import, sensor

/// Adds up the sums of the blocks that are in force, or of those that are aside.
Done addSums(const Database& database, bool aside, std::map<Key, ReadingSum>& sums)
{
    auto stored = blockSumsIn(database, aside);
    HOLDBAND_TRY(stored);
    for (const StoredBlockSum& block : *stored) {
        ReadingSum& sum = sums[{block.import, block.sensor}];
        sum.readings += block.sum.readings;
        sum.checksum += block.sum.checksum;
    }
    return {};
}

/// Readings of withdrawn imports are in `aside_blocks`, and none of them may be in both tables.
/// Those of an undone import have no record to be checked against.
Done addWithdrawn(const Database& database, std::map<Key, ReadingSum>& sums,
                  std::vector<std::string>& damage)
{
    std::map<Key, ReadingSum> aside;
    HOLDBAND_TRY(addSums(database, true, aside));
    auto withdrawn =
        query<BulkStatement>(database, "SELECT id FROM imports WHERE taken_back_at IS NOT NULL",
                             [](const BulkStatement& row) { return row.integer(0); });
    HOLDBAND_TRY(withdrawn);
    for (const auto& [key, sum] : aside) {
        if (std::find(withdrawn->begin(), withdrawn->end(), key.first) == withdrawn->end())
            continue;
        if (!sums.emplace(key, sum).second)
            damage.emplace_back(
                Phrase::tr("readings of a withdrawn import are stored in two places"));
    }
    return {};
}

Done checkRecord(const Database& database, std::vector<std::string>& damage)
{
    auto damaged = damagedChanges(database);
    HOLDBAND_TRY(damaged);
    if (!damaged->empty())
        damage.push_back(Phrase::counted(
            "the record of %n changes no longer fits its digest: they can't be undone",
            "the record of %n changes no longer fits its digest: they can't be undone",
            damaged->size()));
    return {};
}

/// By import and sensor, the total of the checksums of its blocks.
Result<std::map<Key, ReadingSum>> blockTotals(const Database& database)
{
    std::map<Key, ReadingSum> totals;
    auto rows = query<BulkStatement>(
        database, "SELECT import, sensor, readings, checksum FROM block_checksums",
        [&](const BulkStatement& row) {
            ReadingSum& total = totals[{row.integer(0), row.integer(1)}];
            total.readings += row.integer(2);
            total.checksum += static_cast<std::uint64_t>(row.integer(3));
            return true;
        });
    HOLDBAND_TRY(rows);
    return totals;
}

Done checkImports(const Database& database, std::vector<std::string>& damage)
{
    auto blocks = blockTotals(database);
    HOLDBAND_TRY(blocks);
    std::map<Key, ReadingSum> sums;
    HOLDBAND_TRY(addSums(database, false, sums));
    HOLDBAND_TRY(addWithdrawn(database, sums, damage));
    auto columns = query<BulkStatement>(
        database,
        "SELECT c.import, c.sensor, i.file, s.name, c.readings, c.checksum "
        "FROM import_columns c JOIN imports i ON i.id = c.import "
        "JOIN sensors s ON s.id = c.sensor",
        [&](const BulkStatement& row) {
            const Key key{row.integer(0), row.integer(1)};
            const ReadingSum stored{row.integer(4), static_cast<std::uint64_t>(row.integer(5))};
            const auto found = sums.find(key);
            const bool whole = found != sums.end() && found->second == stored;
            if (found != sums.end())
                sums.erase(found);
            const bool sound = whole && (*blocks)[key] == stored;
            return sound ? std::string()
                         : Phrase::tr("the readings of \"%1\" imported from %2 no longer fit "
                                      "their checksum")
                               .with(row.text(3), row.text(2));
        });
    HOLDBAND_TRY(columns);
    for (std::string& sentence : *columns) {
        if (!sentence.empty())
            damage.push_back(std::move(sentence));
    }
    if (!sums.empty())
        damage.push_back(Phrase::tr("there are readings that belong to no import"));
    return {};
}

Phrase brokenSeal()
{
    return Phrase::tr("equipment, batches, meter readings or the journal no longer fit their seal: "
                      "a bit changed, or another program wrote here");
}

Done checkSqlite(const Database& database, std::vector<std::string>& damage)
{
    auto lines = integrityFindings(database);
    HOLDBAND_TRY(lines);
    for (const std::string& line : *lines)
        damage.push_back(Phrase::tr("SQLite reports: %1").with(line));
    auto orphans =
        query<BulkStatement>(database, "PRAGMA foreign_key_check", [](const BulkStatement& row) {
            return Phrase::tr("a row of %1 refers to one of %2 that is not there")
                .with(row.text(0), row.text(2));
        });
    HOLDBAND_TRY(orphans);
    damage.insert(damage.end(), orphans->begin(), orphans->end());
    return {};
}

} // namespace

Done checkSeal(const Database& database)
{
    auto seal = sealHolds(database);
    HOLDBAND_TRY(seal);
    if (*seal)
        return {};
    return fileProblem(brokenSeal(), database.path(),
                       Phrase::tr("`holdband check` says what is damaged"));
}

Result<std::vector<std::string>> findDamage(const Database& database)
{
    auto steady = Transaction::beginReading(database);
    HOLDBAND_TRY(steady);
    std::vector<std::string> damage;
    HOLDBAND_TRY(checkSqlite(database, damage));
    auto seal = sealHolds(database);
    HOLDBAND_TRY(seal);
    if (!*seal)
        damage.emplace_back(brokenSeal());
    HOLDBAND_TRY(checkImports(database, damage));
    HOLDBAND_TRY(checkRecord(database, damage));
    return damage;
}

} // namespace holdband::store
