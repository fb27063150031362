// The history in German: for every verb, and for a logbook of the first version.
#include "core/store/history/history.h"
#include "core/store/history/history_text.h"
#include "tests/store/old_history.h"
#include "tests/ui/sample_window.h"
#include "tests/ui/spoken.h"

#include <QTemporaryDir>

namespace holdband::ui::test {

using store::HistoryEntry;
using store::HistoryKind;
using store::historyText;
using store::HistoryVerb;

TEST(GermanHistory, HasAGermanTextForEveryVerb)
{
    const auto wordsOf = [](HistoryVerb verb) { return historyText({verb, {"Coil", "7"}}); };
    std::vector<std::string> english;
    for (const HistoryVerb verb : store::allHistoryVerbs())
        english.push_back(wordsOf(verb));
    const German german;
    ASSERT_TRUE(german.loaded());
    for (const HistoryVerb verb : store::allHistoryVerbs()) {
        const std::string words = wordsOf(verb);
        EXPECT_EQ(words == english[static_cast<std::size_t>(verb)], verb == HistoryVerb::other)
            << words;
        EXPECT_EQ(words.find('%'), words.npos) << words;
    }
}

TEST(GermanHistory, ShowsUndoAndRedoAndTimes)
{
    const German german;
    EXPECT_EQ(historyText({HistoryVerb::batchPitched, {"Pale 3"}, {}, HistoryKind::undo}),
              "rückgängig gemacht: Pale 3 angestellt");
    EXPECT_EQ(historyText({HistoryVerb::readingDeleted, {"Coil", "2"}, {}, HistoryKind::redo}),
              "wiederholt: 2 Messwerte von Coil gelöscht");
    EXPECT_EQ(historyText({HistoryVerb::causeGiven, {"Pale 3", "2026-05-07T18:30"}}),
              "Ursache der Bandverletzung von Pale 3 am 7 Mai 18:30 angegeben");
}

TEST(GermanHistory, KnowsEverySentenceOfTheFirstVersion)
{
    const QTemporaryDir folder;
    const std::string path = folder.filePath(QStringLiteral("old.holdband")).toStdString();
    holdband::test::makeFirstFormat(path);
    const auto logbook = store::LogbookFile::open(path, store::Access::read);
    ASSERT_TRUE(logbook) << logbook.error().sentence();
    const auto entries = store::readHistoryEntries(**logbook);
    ASSERT_TRUE(entries);
    ASSERT_EQ(entries->size(), holdband::test::oldSentences.size());
    const German german;
    for (std::size_t i = 0; i < entries->size(); ++i)
        EXPECT_EQ(historyText((*entries)[i].entry), holdband::test::oldSentences[i].german);
}

} // namespace holdband::ui::test
