// A thin, typed wrapper around the system's SQLite: connection, statement, transaction. Every
// result code is checked; a failure is returned as a Problem that names the file. Not for use
// outside core/store. A Database belongs to one thread.
#pragma once

#include "core/problem.h"
#include "core/quantity/instant.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <sqlite3.h>
#include <string>
#include <string_view>

namespace holdband::store {

class Database;

/// One prepared statement. Bind, step, read columns. Errors while binding, and invalid values
/// (infinite, a time outside the years 1 to 9999), are remembered and returned by the next step.
class Statement {
public:
    void bind(int index, std::int64_t value);
    void bind(int index, int value) { bind(index, static_cast<std::int64_t>(value)); }
    void bind(int index, double value);
    void bind(int index, std::string_view value);
    void bindBytes(int index, std::string_view bytes);
    template <typename T>
    void bind(int index, const std::optional<T>& value)
    {
        if (value)
            bind(index, *value);
    }
    /// Binds all values from index 1 on.
    template <typename... Values>
    void bindAll(const Values&... values)
    {
        int index = 0;
        (bind(++index, values), ...);
    }

    /// True: there is a row. False: done.
    Result<bool> step();
    /// For statements without rows: steps, resets, clears the bindings.
    Done run();
    void reset();

    bool isNull(int column) const;
    std::int64_t integer(int column) const;
    /// Finite, or a Problem at the next step.
    double real(int column) const;
    /// Within the years 1 to 9999, or a Problem at the next step.
    Instant instant(int column) const;
    std::string text(int column) const;
    std::string bytes(int column) const;
    std::optional<std::int64_t> optionalInteger(int column) const;
    std::optional<double> optionalReal(int column) const;
    std::optional<Instant> optionalInstant(int column) const;

    sqlite3_stmt* raw() const { return m_statement.get(); }

private:
    friend class Database;
    struct Finalize {
        void operator()(sqlite3_stmt* statement) const { sqlite3_finalize(statement); }
    };
    Statement(sqlite3_stmt* statement, const Database* database)
        : m_statement(statement), m_database(database)
    {
    }
    void note(int code);
    void noteImpossible(int column) const;

    std::unique_ptr<sqlite3_stmt, Finalize> m_statement;
    const Database* m_database;
    int m_bindError = SQLITE_OK;
    /// The name of the first column with an invalid value. Mutable because reading a column is
    /// const to its callers.
    mutable std::string m_impossible;
};

enum class Access { read, write };

class Database {
public:
    /// Opens an existing file, or creates one if `create` is set. Applies the settings of every
    /// logbook: defensive, no trusted schema, foreign keys, rollback journal, full durability.
    static Result<std::unique_ptr<Database>> open(const std::string& path, Access access,
                                                  bool create);
    ~Database();
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;

    const std::string& path() const { return m_path; }
    sqlite3* raw() const { return m_handle; }

    Result<Statement> prepare(std::string_view sql) const;
    /// Runs a script of several statements.
    Done execute(const std::string& script) const;
    /// The first column of the first row.
    Result<std::int64_t> integer(std::string_view sql) const;
    Result<std::string> text(std::string_view sql) const;
    std::int64_t lastRowId() const { return sqlite3_last_insert_rowid(m_handle); }
    std::int64_t changes() const { return sqlite3_changes64(m_handle); }

    /// The Problem of the last failed call.
    Problem problem(int code) const;

private:
    Database(std::string path, sqlite3* handle) : m_path(std::move(path)), m_handle(handle) {}
    Done guard(Access access) const;

    std::string m_path;
    sqlite3* m_handle;
};

/// Rolls back unless committed. Nested ones are not used.
class Transaction {
public:
    static Result<Transaction> begin(const Database& database);
    /// For several reads that must see the same state of the file, whatever others save meanwhile.
    /// Does nothing if a transaction is already open.
    static Result<Transaction> beginReading(const Database& database);
    Transaction(Transaction&& other) noexcept : m_database(std::exchange(other.m_database, nullptr))
    {
    }
    Transaction& operator=(Transaction&&) = delete;
    ~Transaction();

    Done commit();

private:
    explicit Transaction(const Database* database) : m_database(database) {}
    const Database* m_database;
};

} // namespace holdband::store
