// Every verb has a code and a text, and no part of a name is ever treated as text.
#include "core/store/history/history_text.h"

#include "core/store/history/history.h"
#include "tests/store/logbooks.h"

#include <QCoreApplication>
#include <QTranslator>
#include <set>

namespace holdband::test {
namespace {

using store::HistoryEntry;
using store::HistoryKind;
using store::historyText;
using store::HistoryVerb;

/// A language whose texts are the English ones in brackets.
class Brackets : public QTranslator {
public:
    Brackets() { QCoreApplication::installTranslator(this); }
    ~Brackets() override { QCoreApplication::removeTranslator(this); }

    bool isEmpty() const override { return false; }
    QString translate(const char*, const char* source, const char*, int) const override
    {
        return QLatin1Char('[') + QString::fromUtf8(source) + QLatin1Char(']');
    }
};

TEST(HistoryVerbs, HaveDifferentCodes)
{
    std::set<std::string_view> codes;
    for (const HistoryVerb verb : store::allHistoryVerbs()) {
        EXPECT_TRUE(codes.insert(store::codeOf(verb)).second) << store::codeOf(verb);
        EXPECT_EQ(store::historyVerbOf(store::codeOf(verb)), verb);
    }
    EXPECT_FALSE(store::historyVerbOf("made by hand"));
}

TEST(HistoryText, ExistsForEveryVerb)
{
    std::set<std::string> texts;
    for (const HistoryVerb verb : store::allHistoryVerbs()) {
        const std::string words = historyText({verb, {"Coil", "7"}});
        EXPECT_GE(words.size(), 4u) << store::codeOf(verb);
        EXPECT_TRUE(texts.insert(words).second) << words;
        EXPECT_EQ(words.find('%'), words.npos) << words;
    }
}

TEST(HistoryText, IsInTheCataloguesForEveryVerb)
{
    const Brackets language;
    for (const HistoryVerb verb : store::allHistoryVerbs()) {
        const std::string words = historyText({verb, {"Coil", "7"}});
        EXPECT_EQ(words.starts_with('['), verb != HistoryVerb::other) << words;
    }
}

TEST(HistoryText, CountsInTheFormsOfTheLanguage)
{
    EXPECT_EQ(historyText({HistoryVerb::roundTyped, {"1"}}), "saved a round of 1 reading");
    EXPECT_EQ(historyText({HistoryVerb::roundTyped, {"5"}}), "saved a round of 5 readings");
    EXPECT_EQ(historyText({HistoryVerb::readingDeleted, {"Coil", "1"}}),
              "deleted a reading of Coil");
    EXPECT_EQ(historyText({HistoryVerb::readingRestored, {"Coil", "12"}}),
              "restored 12 readings of Coil");
}

TEST(HistoryText, NamesUndoAndRedoOfTheSameVerb)
{
    HistoryEntry entry{HistoryVerb::batchPitched, {"Pale 3"}};
    EXPECT_EQ(historyText(entry), "pitched Pale 3");
    entry.kind = HistoryKind::undo;
    EXPECT_EQ(historyText(entry), "undid: pitched Pale 3");
    entry.kind = HistoryKind::redo;
    EXPECT_EQ(historyText(entry), "redid: pitched Pale 3");
    const Brackets language;
    EXPECT_EQ(historyText(entry), "[redid: [pitched Pale 3]]");
}

TEST(HistoryText, ShowsTheSentenceOfOtherAsItIs)
{
    const Brackets language;
    EXPECT_EQ(historyText({HistoryVerb::other, {"made by hand: %1"}}), "made by hand: %1");
    EXPECT_EQ(historyText({HistoryVerb::other}), "");
}

TEST(HistoryText, NeverTranslatesANameAsText)
{
    EXPECT_EQ(historyText({HistoryVerb::sensorAdded, {"took back %1"}}),
              "added sensor took back %1");
    EXPECT_EQ(historyText({HistoryVerb::meterReplaced, {"%2", "%1 took the place of %n"}}),
              "replaced %1 took the place of %n with %2");
    EXPECT_EQ(historyText({HistoryVerb::readingDeleted, {"%n readings of %1", "3"}}),
              "deleted 3 readings of %n readings of %1");
}

TEST(HistoryText, ShowsTheTimeOfACauseAsLocalTime)
{
    EXPECT_EQ(historyText({HistoryVerb::causeGiven, {"Pale 3", "2026-03-07T18:30"}}),
              "set the cause of the excursion of Pale 3 on 7 Mar 18:30");
    EXPECT_EQ(historyText({HistoryVerb::causeGiven, {"Pale 3", "7 Mar 06:30"}}),
              "set the cause of the excursion of Pale 3 on 7 Mar 06:30");
}

class StoredHistory : public LogbookTest {};

TEST_F(StoredHistory, ReturnsNamesUnchanged)
{
    const std::vector<std::string> names{"took back %1", "a \"b\", [c]", "", "zwei\nZeilen", "Süß"};
    const auto logbook = create();
    const HistoryEntry entry{HistoryVerb::sensorChanged, names, "did again: why"};
    auto change = store::Change::begin(*logbook, entry);
    ASSERT_TRUE(change);
    holdband::Setup setup;
    setup.name = "Loop";
    ASSERT_TRUE(store::addSetup(*change, setup));
    ASSERT_TRUE(change->commit());
    EXPECT_EQ(store::readHistory(*logbook, 1)->front().entry, entry);
    EXPECT_EQ(store::readHistoryEntries(*logbook)->back().entry, entry);
}

TEST(HistoryArguments, ThatAreDamagedAreReadAsNone)
{
    EXPECT_EQ(store::argumentsFrom("[\"Coil\""), std::vector<std::string>{});
    EXPECT_EQ(store::argumentsFrom("[1, 2]"), std::vector<std::string>{});
    EXPECT_EQ(store::argumentsFrom(""), std::vector<std::string>{});
    EXPECT_EQ(store::argumentsFrom(store::argumentsText(std::vector<std::string>{"a\xff"})),
              std::vector<std::string>{"a\xef\xbf\xbd"});
}

} // namespace
} // namespace holdband::test
