// Which verdicts of an older logbook the present rules change, section 2 and 3 of the method: by
// hand.
#include "core/results/overview/judging_change.h"
#include "core/store/records/judging_notice.h"
#include "core/store/safety/seal.h"
#include "core/store/sqlite/transaction.h"
#include "tests/results/described_logbook.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace holdband::test {
namespace {

using analysis::Verdict;
using results::ChangedVerdict;

/// Every 10 min from 1 March 00:00 UTC. "Slow" falls from 23 to 20 °C and passes 21 °C three times
/// on its way; "Warm" is above 21 °C from 12:00 to 12:50.
std::string changingLog()
{
    const Instant start = *parseRfc3339("2026-03-01T00:00:00Z");
    std::string text = "time,Slow (C),Warm (C)\n";
    for (int i = 0; i < 24 * 6; ++i) {
        double slow = i < 12 ? 23.0 - i * 0.175 : 20.0; // 21.25 at 1:40, 21.075 at 1:50
        if (i >= 12 && i < 18)
            slow = i % 2 == 0 ? 20.9 : 21.1;
        const double warm = i >= 72 && i < 77 ? 21.5 : 20.0;
        text += rfc3339Utc(start + std::chrono::minutes{10 * i}) + "," + std::to_string(slow) +
                "," + std::to_string(warm) + "\n";
    }
    return text;
}

class JudgingChange : public ::testing::Test {
protected:
    void SetUp() override
    {
        m_files.write("log.csv", changingLog());
        m_files.load(R"json({"holdband":1,"setups":[{"name":"S","vessels":2}],
            "sensors":[{"name":"Slow","reads":"beer"},{"name":"Warm","reads":"beer"}],
            "batches":[{"name":"Slow one","setup":"S","pitched":"2026-03-01 00:00",
              "ended":"2026-03-01 23:00","beer_sensor":"Slow","tolerance_c":1,
              "schedule":[{"stage":"A","target_c":20}]},
             {"name":"Warm one","setup":"S","pitched":"2026-03-01 00:10",
              "ended":"2026-03-01 23:00","beer_sensor":"Warm","tolerance_c":1,
              "schedule":[{"stage":"A","target_c":20}]}],
            "files":[{"file":"log.csv","time":"time",
              "columns":{"Slow":"Slow (C)","Warm":"Warm (C)"}}]})json",
                     "2026-03-10T00:00:00Z");
        auto opened =
            store::LogbookFile::open(m_files.path("d.holdband"), store::Access::write,
                                     [] { return *parseRfc3339("2026-03-10T00:00:00Z"); });
        ASSERT_TRUE(opened) << opened.error().sentence();
        m_logbook = std::move(*opened);
    }

    /// As the schema step leaves a logbook whose batches are older.
    void markAsOlder() const
    {
        const store::Database& database = m_logbook->database();
        ASSERT_TRUE(database.execute("INSERT INTO settings SELECT 'judged_as_before_to', "
                                     "CAST(max(id) AS TEXT) FROM batches"));
        ASSERT_TRUE(store::renewSeal(database));
    }

    DescribedLogbook m_files;
    std::unique_ptr<store::LogbookFile> m_logbook;
};

TEST_F(JudgingChange, NamesTheBatchesWhoseVerdictChanged)
{
    markAsOlder();
    const auto changed = results::changedVerdicts(*m_logbook);
    ASSERT_TRUE(changed) << changed.error().sentence();
    ASSERT_TRUE(*changed);
    // "Warm one" left its band once, then as now.
    EXPECT_EQ(**changed,
              (std::vector<ChangedVerdict>{{"Slow one", Verdict::left, Verdict::stayed}}));
    EXPECT_EQ(results::changedVerdictsText(**changed),
              "The beer now has to stay in the band to have arrived, and a short return no longer "
              "ends an excursion. That changes the verdict of Slow one (was: left, now: stayed).");
}

TEST_F(JudgingChange, HasNothingToSayInANewLogbookOrOnceItWasSaid)
{
    EXPECT_EQ(*results::changedVerdicts(*m_logbook), std::nullopt);
    markAsOlder();
    ASSERT_TRUE(*results::changedVerdicts(*m_logbook));
    ASSERT_TRUE(store::noteJudgingTold(*m_logbook));
    EXPECT_EQ(*results::changedVerdicts(*m_logbook), std::nullopt);
}

TEST(JudgingChangeText, NamesTheFirstFew)
{
    const std::vector<ChangedVerdict> seven(7, {"Ale", Verdict::left, Verdict::missed});
    EXPECT_THAT(results::changedVerdictsText(seven),
                ::testing::EndsWith("Ale (was: left, now: missed) and 2 more batches."));
}

} // namespace
} // namespace holdband::test
