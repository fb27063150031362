#include "core/store/history/changeset.h"

#include "core/store/sqlite/rows.h"
#include "core/text/phrase.h"

#include <array>

namespace holdband::store {

namespace {

/// Tables with their own record, or without data that a person entered.
constexpr std::array<std::string_view, 8> unrecorded{
    "acts",         "act_changes",     "seal",     "reading_blocks",
    "aside_blocks", "block_checksums", "log_maps", "read_logs"};

struct FreeMemory {
    void operator()(void* memory) const { sqlite3_free(memory); }
};
using Memory = std::unique_ptr<void, FreeMemory>;

Result<std::vector<std::string>> recordedTables(const Database& database)
{
    auto names =
        query(database,
              "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'",
              [](const Statement& row) { return row.text(0); });
    HOLDBAND_TRY(names);
    std::erase_if(*names, [](const std::string& name) {
        return std::find(unrecorded.begin(), unrecorded.end(), name) != unrecorded.end();
    });
    return names;
}

Done checked(const Database& database, int code)
{
    return code == SQLITE_OK ? Done{} : Done(failure(database.problem(code)));
}

Changeset bytesOf(const void* bytes, int size)
{
    return size > 0 ? Changeset(static_cast<const char*>(bytes), static_cast<std::size_t>(size))
                    : Changeset();
}

std::string textOf(sqlite3_value* value)
{
    const auto* text = value ? sqlite3_value_text(value) : nullptr;
    return text ? std::string(reinterpret_cast<const char*>(text)) : std::string();
}

} // namespace

struct Recording::Session {
    sqlite3_session* handle = nullptr;
    ~Session() { sqlite3session_delete(handle); }
};

Recording::Recording(const Database& database) : m_database(&database) {}
Recording::Recording(Recording&&) noexcept = default;
Recording::~Recording() = default;

Result<Recording> Recording::begin(const Database& database)
{
    Recording recording(database);
    HOLDBAND_TRY(recording.start());
    return recording;
}

Done Recording::start()
{
    auto tables = recordedTables(*m_database);
    HOLDBAND_TRY(tables);
    m_session = std::make_unique<Session>();
    HOLDBAND_TRY(
        checked(*m_database, sqlite3session_create(m_database->raw(), "main", &m_session->handle)));
    for (const std::string& table : *tables)
        HOLDBAND_TRY(checked(*m_database, sqlite3session_attach(m_session->handle, table.c_str())));
    return {};
}

Done Recording::collect()
{
    if (!m_session)
        return {};
    int size = 0;
    void* bytes = nullptr;
    HOLDBAND_TRY(checked(*m_database, sqlite3session_changeset(m_session->handle, &size, &bytes)));
    const Memory owned(bytes);
    if (size == 0)
        return {};
    if (m_taken.empty()) {
        m_taken = bytesOf(bytes, size);
        return {};
    }
    int joinedSize = 0;
    void* joined = nullptr;
    const int code = sqlite3changeset_concat(static_cast<int>(m_taken.size()), m_taken.data(), size,
                                             bytes, &joinedSize, &joined);
    const Memory ownedJoined(joined);
    HOLDBAND_TRY(checked(*m_database, code));
    m_taken = bytesOf(joined, joinedSize);
    return {};
}

Done Recording::pause()
{
    HOLDBAND_TRY(collect());
    m_session.reset();
    m_wasPaused = true;
    return {};
}

Done Recording::resume()
{
    return m_session ? Done{} : start();
}

Result<Changeset> Recording::take()
{
    HOLDBAND_TRY(collect());
    m_session.reset();
    HOLDBAND_TRY(start());
    return std::exchange(m_taken, {});
}

namespace {

/// Columns by table, in the order of the table.
Result<std::vector<std::string>> columnsOf(const Database& database, const std::string& table)
{
    return query(
        database, "SELECT name FROM pragma_table_info(?) ORDER BY cid",
        [](const Statement& row) { return row.text(0); }, std::string_view(table));
}

struct EndIteration {
    void operator()(sqlite3_changeset_iter* iterator) const { sqlite3changeset_finalize(iterator); }
};
using Iterator = std::unique_ptr<sqlite3_changeset_iter, EndIteration>;

ChangedRow::How howOf(int operation)
{
    if (operation == SQLITE_INSERT)
        return ChangedRow::How::added;
    return operation == SQLITE_DELETE ? ChangedRow::How::removed : ChangedRow::How::changed;
}

ChangedRow rowAt(sqlite3_changeset_iter* iterator, const char* table, int operation,
                 const std::vector<std::string>& columns)
{
    ChangedRow row{table, howOf(operation), {}};
    for (std::size_t i = 0; i < columns.size(); ++i) {
        sqlite3_value* before = nullptr;
        sqlite3_value* after = nullptr;
        if (operation != SQLITE_INSERT)
            sqlite3changeset_old(iterator, static_cast<int>(i), &before);
        if (operation != SQLITE_DELETE)
            sqlite3changeset_new(iterator, static_cast<int>(i), &after);
        if (before || after)
            row.values.push_back({columns[i], textOf(before), textOf(after)});
    }
    return row;
}

} // namespace

Result<std::vector<ChangedRow>> rowsOf(const Database& database, const Changeset& changes)
{
    std::vector<ChangedRow> rows;
    if (changes.empty())
        return rows;
    sqlite3_changeset_iter* started = nullptr;
    HOLDBAND_TRY(
        checked(database, sqlite3changeset_start(&started, static_cast<int>(changes.size()),
                                                 const_cast<char*>(changes.data()))));
    const Iterator iterator(started);
    std::string known;
    std::vector<std::string> columns;
    for (int code = sqlite3changeset_next(started); code != SQLITE_DONE;
         code = sqlite3changeset_next(started)) {
        if (code != SQLITE_ROW)
            return failure(database.problem(code));
        const char* table = nullptr;
        int count = 0;
        int operation = 0;
        sqlite3changeset_op(started, &table, &count, &operation, nullptr);
        if (known != table) {
            known = table;
            auto found = columnsOf(database, known);
            HOLDBAND_TRY(found);
            columns = std::move(*found);
            columns.resize(static_cast<std::size_t>(count));
        }
        rows.push_back(rowAt(started, table, operation, columns));
    }
    return rows;
}

Result<Changeset> inverted(const Database& database, const Changeset& changes)
{
    if (changes.empty())
        return Changeset();
    int size = 0;
    void* bytes = nullptr;
    const int code =
        sqlite3changeset_invert(static_cast<int>(changes.size()), changes.data(), &size, &bytes);
    const Memory owned(bytes);
    HOLDBAND_TRY(checked(database, code));
    return bytesOf(bytes, size);
}

namespace {

/// Decides about a row that differs from the record. The position in a watched file advances
/// without a record (setWatchState), so such a row is replaced all the same.
int onConflict(void*, int conflict, sqlite3_changeset_iter* iterator)
{
    const char* table = nullptr;
    int count = 0;
    int operation = 0;
    sqlite3changeset_op(iterator, &table, &count, &operation, nullptr);
    const bool moved = conflict == SQLITE_CHANGESET_DATA && std::string_view(table) == "watches";
    return moved ? SQLITE_CHANGESET_REPLACE : SQLITE_CHANGESET_ABORT;
}

} // namespace

Done applyChanges(const Database& database, const Changeset& changes)
{
    if (changes.empty())
        return {};
    const int code =
        sqlite3changeset_apply(database.raw(), static_cast<int>(changes.size()),
                               const_cast<char*>(changes.data()), nullptr, onConflict, nullptr);
    if (code == SQLITE_ABORT || (code & 0xff) == SQLITE_CONSTRAINT)
        return dataProblem(Phrase::tr("a later change depends on this; nothing was changed"), {},
                           Phrase::tr("undo the later change first"));
    return checked(database, code);
}

} // namespace holdband::store
