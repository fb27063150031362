// The connection of a logbook: Qt's for records, SQLite's own handle for rows in bulk, both one.
#include "core/store/sqlite/rows.h"
#include "tests/store/logbooks.h"
#include "tests/store/saying.h"

#include <QSqlDatabase>
#include <QThread>
#include <filesystem>
#include <gmock/gmock.h>
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

TEST_F(Connection, TwoStatementsOfOneTextDontDisturbEachOther)
{
    const auto database = withTable();
    ASSERT_TRUE(database->execute("INSERT INTO t (whole) VALUES (1), (2), (3)"));
    constexpr std::string_view sql = "SELECT whole FROM t WHERE whole >= ? ORDER BY whole";
    for (int round = 0; round < 2; ++round) {
        auto outer = database->prepare(sql);
        auto inner = database->prepare(sql);
        ASSERT_TRUE(outer && inner);
        outer->bindAll(1);
        inner->bindAll(3);
        EXPECT_EQ(outer->step(), true);
        EXPECT_EQ(inner->step(), true);
        EXPECT_EQ(inner->integer(0), 3);
        EXPECT_EQ(inner->step(), false);
        EXPECT_EQ(outer->step(), true);
        EXPECT_EQ(outer->integer(0), 2);
    }
}

TEST_F(Connection, AStatementUsedAgainHasNothingOfItsLastUse)
{
    const auto database = withTable();
    constexpr std::string_view sql = "SELECT ?, ?";
    const auto twoValues = [](const Statement& row) {
        return std::pair(row.optionalInteger(0), row.optionalInteger(1));
    };
    ASSERT_TRUE(store::query(*database, sql, twoValues, 7, 8));
    auto again = database->prepare(sql);
    ASSERT_TRUE(again);
    again->bind(2, 9);
    EXPECT_EQ(again->step(), true);
    EXPECT_EQ(twoValues(*again), std::pair(std::optional<std::int64_t>(), std::optional(9L)));
}

TEST_F(Connection, AStatementUsedAgainSeesANewSchema)
{
    const auto database = withTable();
    const auto texts = [&] {
        return store::query(*database, "SELECT text FROM t",
                            [](const Statement& row) { return row.text(0); });
    };
    const auto columns = [&] {
        auto all = database->prepare("SELECT * FROM t");
        return all && all->step() == true ? all->text(all->isNull(1) ? 2 : 1) : std::string();
    };
    ASSERT_TRUE(database->execute("INSERT INTO t (text) VALUES ('first')"));
    ASSERT_EQ(texts(), std::vector<std::string>{"first"});
    ASSERT_EQ(columns(), "first");
    ASSERT_TRUE(database->execute("DROP TABLE t; CREATE TABLE t (a, b, text TEXT, d, e, f, g, h);"
                                  "INSERT INTO t (text) VALUES ('second')"));
    EXPECT_EQ(texts(), std::vector<std::string>{"second"});
    EXPECT_EQ(columns(), "second");
    ASSERT_TRUE(database->execute("DROP TABLE t"));
    const auto gone = texts();
    ASSERT_FALSE(gone);
    EXPECT_THAT(gone.error().what, ::testing::HasSubstr("no such table: t"));
    EXPECT_EQ(sqlite3_extended_errcode(database->raw()), SQLITE_ERROR);
}

TEST_F(Connection, APragmaIsReadAgain)
{
    // SQLite reads some of them while it prepares them: sqlite.org/pragma.html, at the top.
    const auto database = opened();
    ASSERT_EQ(database->integer("PRAGMA cache_size"), -2000) << "SQLite's own";
    ASSERT_TRUE(database->execute("PRAGMA cache_size = 100"));
    EXPECT_EQ(database->integer("PRAGMA cache_size"), 100);
    ASSERT_TRUE(database->execute("PRAGMA synchronous = OFF"));
    EXPECT_EQ(database->integer("PRAGMA synchronous"), 0);
}

TEST_F(Connection, AStatementLeftBeforeItsEndKeepsNoLock)
{
    const auto writer = withTable();
    ASSERT_TRUE(writer->execute("INSERT INTO t (whole) VALUES (1), (2)"));
    const auto reader = opened(Access::read);
    EXPECT_EQ(reader->integer("SELECT whole FROM t"), 1) << "the first of two rows";
    ASSERT_TRUE(writer->execute("PRAGMA busy_timeout = 0"));
    EXPECT_TRUE(writer->execute("UPDATE t SET whole = 3"));
    EXPECT_EQ(reader->integer("SELECT whole FROM t"), 3);
}

TEST_F(Connection, AfterAnErrorTheSameTextRunsAgain)
{
    const auto database = withTable();
    const auto insert = [&](int id) {
        return store::execute(*database, "INSERT INTO t (id) VALUES (?)", id);
    };
    ASSERT_TRUE(insert(1));
    const Done twice = insert(1);
    ASSERT_FALSE(twice);
    EXPECT_EQ(sqlite3_extended_errcode(database->raw()), SQLITE_CONSTRAINT_PRIMARYKEY);
    EXPECT_TRUE(insert(2));
    EXPECT_EQ(database->integer("SELECT sum(id) FROM t"), 3);
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
        EXPECT_EQ(second->integer("SELECT count(*) FROM t"), 0) << "leaves a prepared query";
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
