// The connection of a logbook: Qt's for records, SQLite's own handle for rows in bulk, both one.
#include "core/store/sqlite/rows.h"
#include "tests/store/logbooks.h"
#include "tests/store/saying.h"

#include <QSqlDatabase>
#include <QThread>
#include <filesystem>
#include <limits>

namespace holdband::test {
namespace {

using store::Access;
using store::BulkStatement;
using store::Database;
using store::Statement;

class Connection : public LogbookTest {
protected:
    std::unique_ptr<Database> opened(Access access = Access::write)
    {
        auto database = Database::open(path(), access, access == Access::write);
        EXPECT_TRUE(database) << database.error().sentence();
        return std::move(*database);
    }

    std::unique_ptr<Database> withTable()
    {
        auto database = opened();
        EXPECT_TRUE(database->execute("CREATE TABLE t (id INTEGER PRIMARY KEY, text TEXT, number "
                                      "REAL, whole INTEGER) STRICT"));
        return database;
    }

    /// Stores the text through Qt's query and reads it back as both statements do.
    void expectStored(const Database& database, const std::string& text)
    {
        ASSERT_TRUE(
            store::execute(database, "INSERT INTO t (text) VALUES (?)", std::string_view(text)));
        const std::int64_t id = database.lastRowId();
        const auto records = store::query(
            database, "SELECT text FROM t WHERE id = ?",
            [](const Statement& row) { return row.text(0); }, id);
        const auto bulk = store::query<BulkStatement>(
            database, "SELECT text FROM t WHERE id = ?",
            [](const BulkStatement& row) { return row.text(0); }, id);
        ASSERT_TRUE(records && bulk);
        EXPECT_EQ(records->at(0), text);
        EXPECT_EQ(bulk->at(0), text);
    }
};

TEST_F(Connection, TextsComeBackAsTheyWere)
{
    const auto database = withTable();
    for (const std::string& text :
         {std::string("Märzen ±3 °F"), std::string(), std::string("a\0b", 3), std::string("🍺"),
          std::string(" two  spaces "), std::string("line\nend")})
        expectStored(*database, text);
}

TEST_F(Connection, AnEmptyTextIsNotNull)
{
    const auto database = withTable();
    ASSERT_TRUE(store::execute(*database, "INSERT INTO t (text) VALUES (?)", std::string_view()));
    EXPECT_EQ(*database->integer("SELECT text IS NULL FROM t"), 0);
    ASSERT_TRUE(
        store::execute(*database, "UPDATE t SET text = ?", std::optional<std::string_view>()));
    EXPECT_EQ(*database->integer("SELECT text IS NULL FROM t"), 1);
}

TEST_F(Connection, ATextThatIsNotUtf8IsRefusedAndNotChanged)
{
    const auto database = withTable();
    const Done stored =
        store::execute(*database, "INSERT INTO t (text) VALUES (?)", std::string_view("caf\xe9"));
    ASSERT_FALSE(stored);
    EXPECT_EQ(stored.error().kind, ProblemKind::data);
    EXPECT_EQ(stored.error().sentence(), "a text is not in UTF-8; write it in UTF-8.");
    EXPECT_EQ(*database->integer("SELECT count(*) FROM t"), 0);
}

TEST_F(Connection, NumbersComeBackToTheLastBit)
{
    const auto database = withTable();
    const std::int64_t wholes[] = {std::numeric_limits<std::int64_t>::min(), -1, 0,
                                   std::numeric_limits<std::int64_t>::max()};
    const double numbers[] = {0.1, -1.0 / 3.0, 5e-324, std::numeric_limits<double>::max()};
    for (std::size_t i = 0; i < 4; ++i) {
        ASSERT_TRUE(store::execute(*database, "INSERT INTO t (whole, number) VALUES (?, ?)",
                                   wholes[i], numbers[i]));
        const auto rows = store::query(
            *database, "SELECT whole, number FROM t WHERE id = ?",
            [](const Statement& row) { return std::pair(row.integer(0), row.real(1)); },
            database->lastRowId());
        ASSERT_TRUE(rows);
        EXPECT_EQ(rows->at(0), std::pair(wholes[i], numbers[i]));
    }
}

TEST_F(Connection, BothStatementsAreOfOneConnection)
{
    const auto database = withTable();
    auto transaction = store::Transaction::begin(*database);
    ASSERT_TRUE(transaction);
    ASSERT_TRUE(store::execute(*database, "INSERT INTO t (whole) VALUES (?)", 7));
    const auto seen = store::query<BulkStatement>(
        *database, "SELECT whole FROM t", [](const BulkStatement& row) { return row.integer(0); });
    ASSERT_TRUE(seen);
    EXPECT_EQ(*seen, std::vector<std::int64_t>{7}) << "before the commit";
}

TEST_F(Connection, AStatementCanRunManyTimes)
{
    const auto database = withTable();
    auto statement = database->prepare("INSERT INTO t (whole, text) VALUES (?, ?)");
    ASSERT_TRUE(statement);
    for (int i = 0; i < 3; ++i) {
        statement->bindAll(i, i == 1 ? std::nullopt : std::optional<std::string_view>("text"));
        ASSERT_TRUE(statement->run());
    }
    EXPECT_EQ(*database->text("SELECT group_concat(whole || coalesce(text, '-')) FROM t"),
              "0text,1-,2text");
}

TEST_F(Connection, ErrorsKeepSqlitesExtendedCode)
{
    const auto database = withTable();
    auto statement = database->prepare("INSERT INTO t (id) VALUES (1)");
    ASSERT_TRUE(statement && statement->run());
    const Done again = statement->run();
    ASSERT_FALSE(again);
    EXPECT_EQ(sqlite3_extended_errcode(database->raw()), SQLITE_CONSTRAINT_PRIMARYKEY);
    EXPECT_THAT(again.error().what, ::testing::HasSubstr("UNIQUE constraint failed: t.id"));
    const auto reader = opened(Access::read);
    const Done written = store::execute(*reader, "INSERT INTO t (whole) VALUES (?)", 1);
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().what, "the file can't be written");
    const auto wrong = database->prepare("SELECT x FROM nowhere");
    ASSERT_FALSE(wrong);
    EXPECT_THAT(wrong.error().what, ::testing::HasSubstr("no such table: nowhere"));
}

TEST_F(Connection, NoFileIsMadeWhereNoneIsAskedFor)
{
    const auto database = Database::open(path(), Access::write, false);
    ASSERT_FALSE(database);
    EXPECT_EQ(database.error().what, "the file can't be opened");
    EXPECT_FALSE(std::filesystem::exists(path()));
}

TEST_F(Connection, ItsNameIsGoneWithItsOwner)
{
    ASSERT_TRUE(QSqlDatabase::connectionNames().isEmpty());
    {
        const auto first = withTable();
        const auto second = opened(Access::read);
        EXPECT_EQ(QSqlDatabase::connectionNames().size(), 2);
        const auto refused = Database::open(path() + "/none", Access::write, true);
        EXPECT_FALSE(refused);
        EXPECT_EQ(QSqlDatabase::connectionNames().size(), 2) << "of what could not be opened, too";
    }
    EXPECT_TRUE(QSqlDatabase::connectionNames().isEmpty());
}

TEST_F(Connection, IsHandedFromThreadToThread)
{
    const auto logbook = create();
    logbook->leaveThread();
    std::optional<std::int64_t> format;
    std::unique_ptr<QThread> other(QThread::create([&] {
        logbook->takeIntoThread();
        if (const auto read = logbook->database().integer("PRAGMA user_version"))
            format = *read;
        logbook->leaveThread();
    }));
    other->start();
    ASSERT_TRUE(other->wait());
    logbook->takeIntoThread();
    ASSERT_TRUE(format);
    EXPECT_EQ(logbook->database().integer("PRAGMA user_version"), *format);
}

} // namespace
} // namespace holdband::test
