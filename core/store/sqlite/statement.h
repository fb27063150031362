// One prepared statement for records: equipment, batches, plans, journal, settings, imports. It is
// a QSqlQuery that only moves forward. Not for use outside core/store.
#pragma once

#include "core/model/text_limits.h"
#include "core/problem.h"
#include "core/store/sqlite/query_pool.h"
#include "core/store/sqlite/statement_base.h"

#include <optional>
#include <string_view>

namespace holdband::store {

class Database;

/// A text as a person typed it, for `bind`.
struct FreeText {
    std::string_view text;
    std::size_t mostBytes = longestText;
};

/// Bind all parameters, step, read columns. Errors while binding and invalid values are remembered
/// and returned by the next step.
class Statement : public StatementBase<Statement> {
public:
    Statement(Statement&&) noexcept;
    Statement& operator=(Statement&&) = delete;
    ~Statement();

    /// Indexes start at 1.
    void bind(int index, std::int64_t value);
    void bind(int index, int value) { bind(index, static_cast<std::int64_t>(value)); }
    void bind(int index, double value);
    /// Problem (data) at the next step: the text is not UTF-8.
    void bind(int index, std::string_view value);
    /// Problem (data) at the next step: it is too long.
    void bind(int index, FreeText value);
    void bindNull(int index);
    template <typename T>
    void bind(int index, const std::optional<T>& value)
    {
        if (value)
            bind(index, *value);
        else
            bindNull(index);
    }

    /// True: there is a row. False: done.
    Result<bool> step();
    /// For statements without rows: steps and resets.
    Done run();
    /// Before it is stepped again from the start. Bound values stay until they are bound again.
    void reset();

    bool isNull(int column) const;
    std::int64_t integer(int column) const;
    std::string text(int column) const;

    // For StatementBase.
    double number(int column) const;
    std::string columnName(int column) const;

private:
    friend class Database;
    Statement(QueryPool::Query query, const Database* database);
    Problem failed();

    QueryPool::Query m_prepared; ///< goes back to the database's pool; empty once moved from
    QSqlQuery* m_query;          ///< in m_prepared
    const Database* m_database;
    bool m_started = false;
    bool m_failed = false;
    bool m_notUtf8 = false;           ///< a text that was bound
    std::optional<Problem> m_tooLong; ///< likewise
};

} // namespace holdband::store
