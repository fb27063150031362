#include "core/store/sqlite/bulk_statement.h"

#include "core/store/sqlite/database.h"

namespace holdband::store {

void BulkStatement::note(int code)
{
    if (m_bindError == SQLITE_OK)
        m_bindError = code;
}

void BulkStatement::bind(int index, std::int64_t value)
{
    note(sqlite3_bind_int64(raw(), index, value));
}

void BulkStatement::bind(int index, double value)
{
    note(sqlite3_bind_double(raw(), index, value));
}

void BulkStatement::bind(int index, std::string_view value)
{
    note(sqlite3_bind_text64(raw(), index, value.data(), value.size(), SQLITE_TRANSIENT,
                             SQLITE_UTF8));
}

void BulkStatement::bindBytes(int index, std::string_view bytes)
{
    note(sqlite3_bind_blob64(raw(), index, bytes.data(), bytes.size(), SQLITE_TRANSIENT));
}

Result<bool> BulkStatement::step()
{
    if (m_bindError != SQLITE_OK)
        return failure(m_database->problem(m_bindError));
    if (!invalidColumn().empty())
        return failure(invalidValue(invalidColumn(), m_database->path()));
    const int code = sqlite3_step(raw());
    if (code == SQLITE_ROW)
        return true;
    if (code == SQLITE_DONE)
        return false;
    return failure(m_database->problem(code));
}

Done BulkStatement::run()
{
    auto stepped = step();
    reset();
    HOLDBAND_TRY(stepped);
    return {};
}

void BulkStatement::reset()
{
    sqlite3_reset(raw());
    sqlite3_clear_bindings(raw());
    m_bindError = SQLITE_OK;
    forgetInvalid();
}

bool BulkStatement::isNull(int column) const
{
    return sqlite3_column_type(raw(), column) == SQLITE_NULL;
}

std::int64_t BulkStatement::integer(int column) const
{
    return sqlite3_column_int64(raw(), column);
}

double BulkStatement::number(int column) const
{
    return sqlite3_column_double(raw(), column);
}

std::string BulkStatement::text(int column) const
{
    const auto* bytes = reinterpret_cast<const char*>(sqlite3_column_text(raw(), column));
    return bytes ? std::string(bytes, static_cast<std::size_t>(sqlite3_column_bytes(raw(), column)))
                 : std::string();
}

std::string BulkStatement::bytes(int column) const
{
    const auto* bytes = static_cast<const char*>(sqlite3_column_blob(raw(), column));
    return bytes ? std::string(bytes, static_cast<std::size_t>(sqlite3_column_bytes(raw(), column)))
                 : std::string();
}

Result<std::string_view> BulkStatement::longText(int column) const
{
    const auto* bytes = static_cast<const char*>(sqlite3_column_blob(raw(), column));
    if (!bytes && sqlite3_errcode(sqlite3_db_handle(raw())) == SQLITE_NOMEM)
        return failure(m_database->problem(SQLITE_NOMEM));
    return bytes ? std::string_view(bytes,
                                    static_cast<std::size_t>(sqlite3_column_bytes(raw(), column)))
                 : std::string_view();
}

std::string BulkStatement::columnName(int column) const
{
    const char* name = sqlite3_column_name(raw(), column);
    return name ? name : "?";
}

} // namespace holdband::store
