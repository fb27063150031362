#include "tests/bench/peers.h"

#include "tests/bench/child.h"

#include <fstream>
#include <sqlite3.h>

namespace holdband::bench {

namespace {

namespace fs = std::filesystem;

/// The pieces between two readings at most 15 min apart: how long both are in the band, and the
/// mean deviation.
constexpr const char* verdictSql = R"sql(
WITH pieces AS (
    SELECT instant, value - 66 AS d, lead(instant) OVER w AS next_instant,
           lead(value) OVER w - 66 AS next_d
    FROM long WHERE sensor = 1 WINDOW w AS (ORDER BY instant))
SELECT sum(CASE WHEN abs(d) <= 3 AND abs(next_d) <= 3 THEN next_instant - instant ELSE 0 END),
       sum(next_instant - instant), max(abs(d)), sum((d + next_d) / 2 * (next_instant - instant))
FROM pieces WHERE next_instant - instant <= 900000;
)sql";

void writeScript(const std::string& path, const std::string& text)
{
    std::ofstream(path) << text;
}

std::string importScript(const std::string& log)
{
    return ".mode csv\nPRAGMA journal_mode = DELETE;\nPRAGMA synchronous = FULL;\n.import '" + log +
           "' raw\n";
}

} // namespace

Times Peers::sqliteParse() const
{
    writeScript(in("parse.sql"), importScript(in("log.csv")));
    return measured(m_runs, [&] {
        fs::remove(in("parse.db"));
        return runCommand({"sqlite3", in("parse.db")}, in("parse.sql")).seconds;
    });
}

Times Peers::sqliteImport() const
{
    std::string script = importScript(in("log.csv")) +
                         "CREATE TABLE long (sensor INTEGER, instant INTEGER, value REAL, "
                         "PRIMARY KEY (sensor, instant)) WITHOUT ROWID;\n";
    int sensor = 0;
    for (const char* column : {"Vessel (F)", "Air (F)", "Room (F)"})
        script += "INSERT INTO long SELECT " + std::to_string(++sensor) +
                  ", unixepoch(Logged) * 1000, CAST(\"" + column + "\" AS REAL) FROM raw;\n";
    writeScript(in("long.sql"), script);
    return measured(m_runs, [&] {
        fs::remove(in("peer.db"));
        return runCommand({"sqlite3", in("peer.db")}, in("long.sql")).seconds;
    });
}

Times Peers::sqliteVerdict() const
{
    writeScript(in("verdict.sql"), verdictSql);
    return measured(m_runs, [&] {
        return runCommand({"sqlite3", in("peer.db")}, in("verdict.sql")).seconds;
    });
}

Times Peers::sqliteStep() const
{
    return measured(m_runs, [&] {
        return timed([&] {
            sqlite3* database = nullptr;
            sqlite3_stmt* statement = nullptr;
            sqlite3_open_v2(in("peer.db").c_str(), &database, SQLITE_OPEN_READONLY, nullptr);
            sqlite3_prepare_v2(database, "SELECT instant, value FROM long", -1, &statement,
                               nullptr);
            double sum = 0.0;
            while (sqlite3_step(statement) == SQLITE_ROW)
                sum += sqlite3_column_double(statement, 1) +
                       static_cast<double>(sqlite3_column_int64(statement, 0));
            if (sum == 0.0)
                std::fprintf(stderr, "nothing was read\n");
            sqlite3_finalize(statement);
            sqlite3_close(database);
        });
    });
}

bool Peers::hasDuckdb() const
{
    return fs::exists(m_folder / "node_modules" / "@duckdb" / "node-api");
}

std::optional<Times> Peers::duckdbImport() const
{
    if (!hasDuckdb())
        return std::nullopt;
    return measured(m_runs, [&] {
        fs::remove(in("peer.duckdb"));
        return runCommand({"node", in("duckdb.mjs"), "import", in("log.csv"), in("peer.duckdb")})
            .seconds;
    });
}

std::optional<Times> Peers::duckdbVerdict() const
{
    if (!hasDuckdb())
        return std::nullopt;
    runCommand({"node", in("duckdb.mjs"), "verdict", in("peer.duckdb"), in("duckdb.txt"),
                std::to_string(m_runs)});
    std::vector<double> seconds;
    std::ifstream result(in("duckdb.txt"));
    for (double each = 0.0; result >> each;)
        seconds.push_back(each);
    return seconds.empty() ? std::nullopt : std::optional(timesOf(std::move(seconds)));
}

} // namespace holdband::bench
