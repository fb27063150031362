#include "core/store/sqlite/query_pool.h"

#include <QSqlQuery>
#include <QVariant>

namespace holdband::store {

namespace {

/// More than there are statements on records; a bound in case one is made of changing text.
constexpr std::size_t mostWaiting = 300;

/// SQLite runs some pragmas while it prepares them. Qt counts the columns before SQLite prepares
/// the text again for a changed schema, so a `*` must not become more of them.
bool canWait(std::string_view sql)
{
    return !sql.starts_with("PRAGMA") && !sql.starts_with("SELECT *");
}

/// Qt keeps bound values from one run to the next.
void unbind(QSqlQuery& query)
{
    const auto count = static_cast<int>(query.boundValues().size());
    for (int i = 0; i < count; ++i)
        query.bindValue(i, QVariant());
}

} // namespace

void DeleteQuery::operator()(QSqlQuery* query) const
{
    delete query;
}

QueryPool::Query QueryPool::made(std::string_view sql, std::unique_ptr<QSqlQuery> query)
{
    Queries one;
    one.emplace(sql, query.release());
    return one.extract(one.begin());
}

QueryPool::Query QueryPool::take(std::string_view sql)
{
    const auto found = m_waiting.find(sql);
    return found == m_waiting.end() ? Query() : m_waiting.extract(found);
}

void QueryPool::giveBack(Query query)
{
    if (m_waiting.size() >= mostWaiting || !canWait(query.key()))
        return;
    query.mapped()->finish();
    unbind(*query.mapped());
    m_waiting.insert(std::move(query));
}

void QueryPool::clear()
{
    m_waiting.clear();
}

} // namespace holdband::store
