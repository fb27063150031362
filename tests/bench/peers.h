// What the program is measured beside: sqlite3's shell and library, and DuckDB, with the same log.
#pragma once

#include "tests/bench/table.h"

#include <filesystem>
#include <optional>

namespace holdband::bench {

/// Works in a folder that has "log.csv", a log from writeLog().
class Peers {
public:
    Peers(std::filesystem::path folder, int runs) : m_folder(std::move(folder)), m_runs(runs) {}

    /// The shell's .import alone.
    Times sqliteParse() const;
    /// The shell's .import and an INSERT … SELECT for each sensor, saved as durably as ours is.
    Times sqliteImport() const;
    /// The time outside the band and the mean deviation of a sensor, asked in SQL. After
    /// sqliteImport().
    Times sqliteVerdict() const;
    /// All rows of readings by sqlite3_step, summed. After sqliteImport().
    Times sqliteStep() const;

    /// read_csv and unpivot into a file, one thread. Absent: the package is not there.
    std::optional<Times> duckdbImport() const;
    /// The question of sqliteVerdict(), without the start and the reading of the data: one thread,
    /// the data in memory. After duckdbImport().
    std::optional<Times> duckdbVerdict() const;

private:
    std::string in(const char* name) const { return (m_folder / name).string(); }
    bool hasDuckdb() const;

    std::filesystem::path m_folder;
    int m_runs;
};

} // namespace holdband::bench
