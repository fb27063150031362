#include "core/store/sqlite/statement.h"

#include "core/store/sqlite/database.h"
#include "core/text/phrase.h"

#include <QSqlError>
#include <QSqlQuery>
#include <QSqlRecord>
#include <QVariant>
#include <algorithm>
#include <sqlite3.h>

namespace holdband::store {

namespace {

/// The first words of a text, so that people recognise it.
std::string startOf(std::string_view text)
{
    constexpr qsizetype shown = 30;
    const QString start = QString::fromUtf8(
        text.data(), std::min<qsizetype>(200, static_cast<qsizetype>(text.size())));
    return "\"" + start.left(shown).simplified().toStdString() + " …\"";
}

} // namespace

Statement::Statement(QueryPool::Query query, const Database* database)
    : m_prepared(std::move(query)), m_query(m_prepared.mapped().get()), m_database(database)
{
}

Statement::Statement(Statement&&) noexcept = default;

Statement::~Statement()
{
    if (!m_prepared.empty() && !m_failed)
        m_database->giveBack(std::move(m_prepared));
}

void Statement::bind(int index, std::int64_t value)
{
    m_query->bindValue(index - 1, QVariant(static_cast<qlonglong>(value)));
}

void Statement::bind(int index, double value)
{
    m_query->bindValue(index - 1, value);
}

void Statement::bind(int index, std::string_view value)
{
    const QUtf8StringView utf8(value.data(), static_cast<qsizetype>(value.size()));
    m_notUtf8 = m_notUtf8 || !utf8.isValidUtf8();
    // A null string would be bound as NULL.
    m_query->bindValue(index - 1, value.empty() ? QStringLiteral("") : utf8.toString());
}

void Statement::bind(int index, FreeText value)
{
    if (value.text.size() > value.mostBytes && !m_tooLong)
        m_tooLong =
            Problem{ProblemKind::data,
                    Phrase::tr("a text is too long: it has %1 bytes, and at most %2 are stored")
                        .with(std::to_string(value.text.size()), std::to_string(value.mostBytes)),
                    startOf(value.text), Phrase::tr("shorten it, or split it")};
    bind(index, value.text);
}

void Statement::bindNull(int index)
{
    m_query->bindValue(index - 1, QVariant());
}

Result<bool> Statement::step()
{
    if (m_notUtf8)
        return dataProblem(Phrase::tr("a text is not in UTF-8"), {},
                           Phrase::tr("write it in UTF-8"));
    if (m_tooLong)
        return failure(*m_tooLong);
    if (!invalidColumn().empty())
        return failure(invalidValue(invalidColumn(), m_database->path()));
    if (!m_started) {
        m_started = true;
        if (!m_query->exec())
            return failure(failed());
        if (!m_query->isSelect())
            return false;
    }
    if (m_query->next()) {
        // Qt takes a text that could not be converted for lack of memory as an empty one.
        if (sqlite3_errcode(m_database->raw()) == SQLITE_NOMEM)
            return failure(m_database->problem(SQLITE_NOMEM));
        return true;
    }
    if (m_query->lastError().isValid())
        return failure(failed());
    return false;
}

Done Statement::run()
{
    auto stepped = step();
    reset();
    HOLDBAND_TRY(stepped);
    return {};
}

void Statement::reset()
{
    m_query->finish();
    m_started = false;
    m_notUtf8 = false;
    m_tooLong.reset();
    forgetInvalid();
}

bool Statement::isNull(int column) const
{
    return m_query->isNull(column);
}

std::int64_t Statement::integer(int column) const
{
    return m_query->value(column).toLongLong();
}

double Statement::number(int column) const
{
    return m_query->value(column).toDouble();
}

std::string Statement::text(int column) const
{
    return m_query->value(column).toString().toStdString();
}

std::string Statement::columnName(int column) const
{
    return m_query->record().fieldName(column).toStdString();
}

Problem Statement::failed()
{
    m_failed = true;
    return m_database->problem(m_query->lastError());
}

} // namespace holdband::store
