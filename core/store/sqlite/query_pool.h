// The prepared queries of a connection that wait for their next use. Not for use outside
// core/store.
#pragma once

#include <functional>
#include <map>
#include <memory>
#include <string>
#include <string_view>

class QSqlQuery;

namespace holdband::store {

struct DeleteQuery {
    void operator()(QSqlQuery* query) const;
};

/// By their SQL. Preparing a query takes Qt and SQLite longer than running one that finds a record
/// by its name.
class QueryPool {
public:
    using Queries = std::map<std::string, std::unique_ptr<QSqlQuery, DeleteQuery>, std::less<>>;
    /// One query with its SQL, outside of the pool.
    using Query = Queries::node_type;

    static Query made(std::string_view sql, std::unique_ptr<QSqlQuery> query);
    /// A prepared one that is not in use; empty if there is none.
    Query take(std::string_view sql);
    /// Keeps the query, finished and with nothing bound, if its text gives the same result each
    /// time and none with that text waits already.
    void giveBack(Query query);
    void clear();

private:
    Queries m_waiting;
};

} // namespace holdband::store
