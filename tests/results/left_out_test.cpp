// Readings left out by hand: every verdict states how much, where, why, and what the verdict would
// be with them. Section 1 of the method.
#include "core/results/overview/batch_list.h"
#include "core/results/run/limits_trial.h"
#include "core/results/run/run_review.h"
#include "tests/results/described_logbook.h"

#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using ::testing::EndsWith;
using ::testing::HasSubstr;
using ::testing::Not;

/// Hourly for 40 h at 20 °C, but 22 °C at 02:00; the band is 20 ± 1 °C, gaps begin above 90 min.
class LeftOutReadings : public ::testing::Test {
protected:
    std::unique_ptr<store::LogbookFile> load(const std::string& exclusions)
    {
        std::string log = "Time,Beer (C)\n";
        for (int hour = 0; hour <= 40; ++hour)
            log += (hour < 24 ? "2026-03-01 " : "2026-03-02 ") +
                   std::string(hour % 24 < 10 ? "0" : "") + std::to_string(hour % 24) + ":00," +
                   (hour == 2 ? "22.0" : "20.0") + "\n";
        m_files.write("beer.csv", log);
        return m_files.load(
            R"json({"holdband":1,"setups":[{"name":"S"}],
            "sensors":[{"name":"Beer","reads":"beer","accuracy_c":0.1}],
            "batches":[{"name":"B","setup":"S","pitched":"2026-03-01 00:00",
                "ended":"2026-03-02 16:00","beer_sensor":"Beer","tolerance_c":1,
                "gap_limit_min":90,"schedule":[{"stage":"Hold","target_c":20}]}],
            "files":[{"file":"beer.csv","columns":{"Beer":"Beer (C)"}}],"exclusions":[)json" +
                exclusions + "]}",
            "2026-03-10T00:00:00Z");
    }

    results::RunReview run(const std::string& exclusions)
    {
        m_logbook = load(exclusions);
        auto review = results::reviewRun(*m_logbook, "B");
        EXPECT_TRUE(review) << review.error().sentence();
        return *review;
    }

    DescribedLogbook m_files;
    std::unique_ptr<store::LogbookFile> m_logbook;
};

TEST_F(LeftOutReadings, WithoutAnyNothingIsReported)
{
    const auto review = run("");
    EXPECT_EQ(review.figures.judged.asPlanned.verdict, analysis::Verdict::left);
    EXPECT_FALSE(review.figures.leftOut);
    EXPECT_THAT(review.words.headline, Not(HasSubstr("left out")));
    EXPECT_THAT(review.words.detail, Not(HasSubstr("Left out")));
}

TEST_F(LeftOutReadings, ThatChangeTheVerdictAreNamedInTheSentence)
{
    const auto review = run(
        R"({"sensor":"Beer","from":"2026-03-01 01:30","to":"2026-03-01 02:30","why":"lid open"})");
    EXPECT_EQ(review.figures.judged.asPlanned.verdict, analysis::Verdict::stayed);
    ASSERT_TRUE(review.figures.leftOut);
    EXPECT_EQ(review.figures.leftOut->ms, 3'600'000.0);
    EXPECT_EQ(review.figures.leftOut->readings, 1U);
    EXPECT_EQ(review.figures.leftOut->verdictWithThem, analysis::Verdict::left);
    EXPECT_TRUE(review.figures.leftOut->changesVerdict);
    EXPECT_THAT(review.words.headline,
                EndsWith("; with the 1 h left out by hand it left the band"));
    EXPECT_THAT(review.words.detail,
                EndsWith("Left out by hand: 1 Mar 01:30 to 1 Mar 02:30 (lid open)."));
    const auto list = results::reviewBatches(*m_logbook);
    ASSERT_TRUE(list);
    EXPECT_EQ(list->batches.front().headline, review.words.headline) << "the lanes say it too";
}

TEST_F(LeftOutReadings, OneReadingAloneIsReportedAlthoughItHasNoLength)
{
    const auto review =
        run(R"({"sensor":"Beer","from":"2026-03-01 02:00","to":"2026-03-01 02:00","why":"typo"})");
    ASSERT_TRUE(review.figures.leftOut);
    EXPECT_TRUE(review.figures.leftOut->changesVerdict);
    EXPECT_THAT(review.words.headline,
                EndsWith("; with the 1 reading left out by hand it left the band"));
    EXPECT_THAT(review.words.detail, EndsWith("Left out by hand: 1 Mar 02:00 (typo)."));
}

TEST_F(LeftOutReadings, ThatChangeNothingAreStillReported)
{
    const auto review = run(
        R"({"sensor":"Beer","from":"2026-03-01 04:30","to":"2026-03-01 05:30","why":"a"},
           {"sensor":"Beer","from":"2026-03-01 05:00","to":"2026-03-01 06:30","why":"b"})");
    ASSERT_TRUE(review.figures.leftOut);
    EXPECT_EQ(review.figures.leftOut->ms, 2.0 * 3'600'000.0) << "what overlaps counts once";
    EXPECT_FALSE(review.figures.leftOut->changesVerdict);
    EXPECT_THAT(review.words.headline, EndsWith("; 2 h left out by hand"));
}

TEST_F(LeftOutReadings, OutsideTheBatchDoNotCount)
{
    EXPECT_FALSE(
        run(R"({"sensor":"Beer","from":"2026-03-03 00:00","to":"2026-03-03 02:00","why":"a"})")
            .figures.leftOut);
}

TEST_F(LeftOutReadings, OtherLimitsAreTriedWithThemToo)
{
    const auto review = run(
        R"({"sensor":"Beer","from":"2026-03-01 01:30","to":"2026-03-01 02:30","why":"lid open"})");
    results::Limits wide = results::limitsOf(review);
    wide.tolerance = TemperatureDifference::kelvins(3.0);
    EXPECT_THAT(results::tryLimits(review, wide).words.headline, EndsWith("; 1 h left out by hand"))
        << "22 °C is inside 20 ± 3 °C";
    wide.tolerance = TemperatureDifference::kelvins(1.5);
    EXPECT_THAT(results::tryLimits(review, wide).words.headline,
                EndsWith("; with the 1 h left out by hand it left the band"));
}

} // namespace
} // namespace holdband::test
