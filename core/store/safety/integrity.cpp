#include "core/store/safety/integrity.h"

#include "core/store/sqlite/rows.h"
#include "core/store/sqlite/sqlite_error.h"

#include <algorithm>
#include <cstdlib>
#include <optional>
#include <sqlite3.h>
#include <string_view>

namespace holdband::store {

namespace {

/// SQLite lists a page that it could not read, because the disk failed or memory was short, like a
/// damaged one, but with the error's code ("error code=10", "returns error code 7"; see
/// https://www.sqlite.org/rescode.html), and a page of a long text without one ("failed to get page
/// 23").
std::optional<int> failedRead(const std::string& line)
{
    if (line.find("failed to get page") != std::string::npos)
        return SQLITE_IOERR_READ;
    constexpr std::string_view mark = "error code";
    const std::size_t at = line.find(mark);
    if (at == std::string::npos)
        return std::nullopt;
    const int code = std::atoi(line.c_str() + std::min(at + mark.size() + 1, line.size()));
    const int kind = code & 0xff;
    return kind == SQLITE_IOERR || kind == SQLITE_NOMEM ? std::optional(code) : std::nullopt;
}

Result<std::vector<std::string>> findingsOf(const Database& database, const std::string& pragma)
{
    auto lines = query<BulkStatement>(database, pragma,
                                      [](const BulkStatement& row) { return row.text(0); });
    HOLDBAND_TRY(lines);
    for (const std::string& line : *lines) {
        if (const auto code = failedRead(line))
            return fileProblem(sqliteErrorText(*code, sqlite3_errstr(*code)), database.path(),
                               sqliteErrorRemedy(*code));
    }
    std::erase(*lines, "ok");
    return lines;
}

} // namespace

Result<std::vector<std::string>> integrityFindings(const Database& database)
{
    return findingsOf(database, "PRAGMA integrity_check(20)");
}

Result<std::vector<std::string>> integrityFindings(const Database& database,
                                                   const std::string& table)
{
    return findingsOf(database, "PRAGMA integrity_check(\"" + table + "\")");
}

} // namespace holdband::store
