// A transaction of one connection. Not for use outside core/store.
#pragma once

#include "core/problem.h"

#include <utility>

namespace holdband::store {

class Database;

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
