#include "core/store/sqlite/schema_check.h"

#include "core/store/sqlite/rows.h"
#include "core/store/sqlite/schema.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <map>
#include <memory>
#include <mutex>
#include <sqlite3.h>

namespace holdband::store {

namespace {

/// By "table NAME" or "index NAME": the statement that made it.
using SchemaEntries = std::map<std::string, std::string>;

constexpr const char* entriesSql =
    "SELECT type, name, tbl_name, coalesce(sql, '') FROM sqlite_schema "
    "WHERE name NOT LIKE 'sqlite_stat%'";

/// Without quotes and spaces, which versions of SQLite write differently when a table is altered.
std::string withoutSpelling(std::string sql)
{
    std::erase_if(sql, [](char c) { return c == ' ' || c == '\n' || c == '"'; });
    return sql;
}

void addEntry(SchemaEntries& entries, const std::string& type, const std::string& name,
              const std::string& table, const std::string& sql)
{
    entries[type + " " + name] = table + " " + withoutSpelling(sql);
}

/// What the steps up to this version make of an empty database. Empty if there is no memory.
SchemaEntries entriesMadeBy(std::int64_t version)
{
    SchemaEntries entries;
    sqlite3* handle = nullptr;
    const int opened = sqlite3_open(":memory:", &handle);
    const std::unique_ptr<sqlite3, int (*)(sqlite3*)> memory(handle, sqlite3_close);
    if (opened != SQLITE_OK)
        return {};
    for (const SchemaStep& step : schemaSteps()) {
        if (step.version <= version &&
            sqlite3_exec(memory.get(), step.script.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK)
            return {};
    }
    const auto take = [](void* to, int, char** values, char**) {
        addEntry(*static_cast<SchemaEntries*>(to), values[0], values[1], values[2], values[3]);
        return 0;
    };
    sqlite3_exec(memory.get(), entriesSql, take, &entries, nullptr);
    return entries;
}

/// Made once for each version. Any thread.
SchemaEntries expectedEntries(std::int64_t version)
{
    static std::mutex guard;
    static std::map<std::int64_t, SchemaEntries> known;
    const std::lock_guard<std::mutex> lock(guard);
    SchemaEntries& entries = known[version];
    if (entries.empty())
        entries = entriesMadeBy(version);
    return entries;
}

Result<SchemaEntries> entriesIn(const Database& database)
{
    SchemaEntries entries;
    auto rows = query<BulkStatement>(database, entriesSql, [&](const BulkStatement& row) {
        addEntry(entries, row.text(0), row.text(1), row.text(2), row.text(3));
        return true;
    });
    HOLDBAND_TRY(rows);
    return entries;
}

tl::unexpected<Problem> changedSchema(const Database& database, std::string what)
{
    return fileProblem(std::move(what), database.path(),
                       Phrase::tr("the file is damaged, or another program changed it: use a "
                                  "backup"));
}

} // namespace

Done checkSchema(const Database& database)
{
    auto version = database.integer("PRAGMA user_version");
    HOLDBAND_TRY(version);
    const SchemaEntries expected = expectedEntries(*version);
    if (expected.empty())
        return fileProblem(Phrase::tr("there is not enough memory to check the file"),
                           database.path(), Phrase::tr("close other programs, then try again"));
    auto found = entriesIn(database);
    HOLDBAND_TRY(found);
    for (const auto& [name, sql] : expected) {
        const auto same = found->find(name);
        if (same == found->end())
            return changedSchema(database, Phrase::tr("missing in the file: %1").with(name));
        if (same->second != sql)
            return changedSchema(database, Phrase::tr("not as Holdband makes it: %1").with(name));
    }
    const auto strange = std::find_if(found->begin(), found->end(), [&](const auto& entry) {
        return !expected.contains(entry.first);
    });
    if (strange != found->end())
        return changedSchema(
            database,
            Phrase::tr("in the file, but never made by Holdband: %1").with(strange->first));
    return {};
}

} // namespace holdband::store
