// A history of sentences, as stored by older versions, becomes one of verbs and arguments.
#include "core/store/history/history_migration.h"

#include "core/store/history/history.h"
#include "core/store/history/undo.h"
#include "core/store/safety/soundness.h"
#include "tests/store/logbooks.h"
#include "tests/store/old_history.h"
#include "tests/store/older_schema.h"

#include <QTemporaryDir>

namespace holdband::test {
namespace {

using store::HistoryEntry;
using store::HistoryKind;
using store::HistoryVerb;

class HistoryMigration : public LogbookTest {
protected:
    std::vector<store::PastHistoryEntry> entries() const
    {
        const auto logbook = store::LogbookFile::open(path(), store::Access::read);
        EXPECT_TRUE(logbook) << logbook.error().sentence();
        EXPECT_EQ(*store::findDamage(**logbook), std::vector<std::string>{});
        return *store::readHistoryEntries(**logbook);
    }
};

TEST_F(HistoryMigration, KnowsEverySentenceOfTheFirstFormat)
{
    makeFirstFormat(path());
    const auto all = entries();
    ASSERT_EQ(all.size(), oldSentences.size());
    for (std::size_t i = 0; i < all.size(); ++i) {
        EXPECT_EQ(store::historyText(all[i].entry), oldSentences[i].english);
        EXPECT_NE(all[i].entry.verb, HistoryVerb::other) << oldSentences[i].stored;
    }
}

TEST_F(HistoryMigration, LeavesNoSentenceInTheFile)
{
    makeFirstFormat(path());
    (void)entries();
    const auto database = store::Database::open(path(), store::Access::read, false);
    ASSERT_TRUE(database);
    EXPECT_EQ(*(*database)->integer("SELECT count(*) FROM acts WHERE verb LIKE '% %'"), 0);
    EXPECT_EQ(*(*database)->text("SELECT arguments FROM acts WHERE verb = 'reading.deleted' "
                                 "ORDER BY id DESC LIMIT 1"),
              R"(["Coil","3"])");
}

TEST_F(HistoryMigration, LeavesUnknownSentencesUnchanged)
{
    makeOldHistory(path(), 1, "at, what",
                   "(1, 'made by hand'), (2, ''), (3, 'typed a round of five readings'), "
                   "(4, 'took back: rounds changed'), (5, 'setup Loop mended')");
    std::vector<std::string> words;
    for (const auto& each : entries()) {
        EXPECT_EQ(each.entry.verb, HistoryVerb::other);
        words.push_back(store::historyText(each.entry));
    }
    EXPECT_EQ(words, (std::vector<std::string>{"made by hand", "", "typed a round of five readings",
                                               "took back: rounds changed", "setup Loop mended"}));
}

TEST_F(HistoryMigration, NamesWhatWasUndoneAndRedone)
{
    makeOldHistory(path(), 5, "id, at, what, why, kind, of",
                   "(1, 1, 'took away a reading of Coil', 'slip', 'edit', NULL), "
                   "(2, 2, 'took back: took away a reading of Coil', '', 'undo', 1), "
                   "(3, 3, 'did again: took away a reading of Coil', '', 'redo', 1), "
                   "(4, 4, 'rows of the watched a.csv', '', 'own', NULL)");
    const auto all = entries();
    ASSERT_EQ(all.size(), 4u);
    EXPECT_EQ(all[0].entry, (HistoryEntry{HistoryVerb::readingDeleted, {"Coil", "1"}, "slip"}));
    EXPECT_EQ(store::historyText(all[1].entry), "undid: deleted a reading of Coil");
    EXPECT_EQ(store::historyText(all[2].entry), "redid: deleted a reading of Coil");
    EXPECT_EQ(all[1].of, 0u);
    EXPECT_EQ(all[2].of, 0u);
    EXPECT_EQ(all[2].entry.kind, HistoryKind::redo);
    EXPECT_EQ(all[3].entry.kind, HistoryKind::own);
}

TEST_F(HistoryMigration, IsNotConfusedByNamesThatContainSuchWords)
{
    makeOldHistory(path(), 5, "at, what, kind",
                   "(1, 'sensor took back %1 added', 'edit'), "
                   "(2, 'corrected a reading of took back %1', 'edit'), "
                   "(3, 'took back: Ale: changed', 'edit'), "
                   "(4, 'took back: took back: Ale: changed', 'undo'), "
                   "(5, 'imported took back: %1.csv', 'edit'), "
                   "(6, 'did again: imported did again: x', 'redo'), "
                   "(7, 'took away 2 readings of 3 readings of M', 'edit')");
    std::vector<std::string> words;
    for (const auto& each : entries())
        words.push_back(store::historyText(each.entry));
    EXPECT_EQ(words, (std::vector<std::string>{
                         "added sensor took back %1", "corrected a reading of took back %1",
                         "changed batch took back: Ale", "undid: changed batch took back: Ale",
                         "imported took back: %1.csv", "redid: imported did again: x",
                         "deleted 2 readings of 3 readings of M"}));
}

TEST_F(HistoryMigration, UndoStillWorksAfterTheChangeOfFormat)
{
    {
        const auto logbook = create();
        addEquipment(*logbook);
    }
    {
        // The schema of format 5.
        const auto database = store::Database::open(path(), store::Access::write, false);
        ASSERT_TRUE((*database)->execute(
            dropStepsFrom7 +
            "ALTER TABLE acts DROP COLUMN arguments; ALTER TABLE acts RENAME COLUMN verb TO "
            "what; UPDATE acts SET what = 'setup Loop added' WHERE id = 2; PRAGMA user_version = "
            "5"));
        ASSERT_TRUE(store::renewSeal(**database));
    }
    const auto logbook =
        store::LogbookFile::open(path(), store::Access::write, [] { return someday; });
    ASSERT_TRUE(logbook) << logbook.error().sentence();
    EXPECT_EQ(undoText(**logbook), "added setup Loop");
    const auto undone = store::undoLast(**logbook);
    ASSERT_TRUE(undone) << undone.error().sentence();
    EXPECT_EQ(store::historyText(*undone), "undid: added setup Loop");
    EXPECT_EQ(redoText(**logbook), "added setup Loop");
    EXPECT_EQ(*store::findDamage(**logbook), std::vector<std::string>{});
}

} // namespace
} // namespace holdband::test
