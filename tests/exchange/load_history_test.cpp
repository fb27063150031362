// The history in a description: passed over, taken from older versions, refused.
#include "core/exchange/description.h"
#include "core/store/history/history.h"
#include "core/store/history/history_text.h"
#include "tests/exchange/exported_again.h"

#include <gmock/gmock.h>

namespace holdband::test {
namespace {

TEST(Load, LeavesTheHistoryOfALogbookInUseUnchanged)
{
    const DescribedLogbook files;
    files.load(plain, "2026-03-10T00:00:00Z");
    files.write("more.json", R"({"holdband":1,"setups":[{"name":"New"}],
        "history":[{"at":"2026-01-01 00:00","what":"elsewhere"}]})");
    ASSERT_TRUE(exchange::loadDescription(files.path("d.holdband"), files.path("more.json")));
    const auto logbook = store::LogbookFile::open(files.path("d.holdband"), store::Access::read);
    const auto entries = *store::readHistoryEntries(**logbook);
    ASSERT_EQ(entries.size(), 3u);
    EXPECT_EQ(store::historyText(entries[2].entry), "loaded more.json");
}

constexpr const char* oldHistory = R"({"holdband":1,"history":[
    {"at":"2026-01-01 00:00","what":"took away 2 readings of Coil","why":"slip"},
    {"at":"2026-01-01 01:00","what":"took back: took away 2 readings of Coil","kind":"undo","of":0},
    {"at":"2026-01-01 02:00","what":"moved the garage"},
    {"at":"2026-01-01 03:00","what":"round.typed"}]})";

TEST(Load, ReadsAHistoryOfSentencesAsOlderVersionsExportedIt)
{
    const DescribedLogbook files;
    const auto logbook = files.load(oldHistory, "2026-03-10T00:00:00Z");
    const auto entries = *store::readHistoryEntries(*logbook);
    ASSERT_EQ(entries.size(), 4u);
    EXPECT_EQ(entries[0].entry,
              (store::HistoryEntry{store::HistoryVerb::readingDeleted, {"Coil", "2"}, "slip"}));
    EXPECT_EQ(store::historyText(entries[1].entry), "undid: deleted 2 readings of Coil");
    EXPECT_EQ(entries[1].of, 0u);
    EXPECT_EQ(entries[2].entry.verb, store::HistoryVerb::other);
    EXPECT_EQ(store::historyText(entries[2].entry), "moved the garage");
    EXPECT_EQ(store::historyText(entries[3].entry), "round.typed"); // a sentence without arguments
    expectSameAgain(files);
}

TEST(Load, RefusesAHistoryItCannotRead)
{
    const auto refusal = [](const char* entry) {
        const DescribedLogbook files;
        files.write("d.json", std::string(R"({"holdband":1,"history":[)") + entry + "]}");
        const auto loaded =
            exchange::loadDescription(files.path("d.holdband"), files.path("d.json"));
        return loaded ? std::string() : loaded.error().sentence();
    };
    EXPECT_THAT(refusal(R"({"at":"2026-01-01 00:00","what":"tank.moved","arguments":[]})"),
                testing::HasSubstr("\"tank.moved\" is no change that this version knows"));
    EXPECT_THAT(refusal(R"({"at":"2026-01-01 00:00","what":"round.typed","arguments":["a",1]})"),
                testing::HasSubstr("expected a list of texts"));
    EXPECT_THAT(refusal(R"({"at":"2026-01-01 00:00","what":"round.typed","arguments":"5"})"),
                testing::HasSubstr("expected a list of texts"));
}

} // namespace
} // namespace holdband::test
