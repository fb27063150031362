// Limits tried without changing the record, and saved on request.
#include "core/results/run/limits_trial.h"
#include "core/store/history/undo.h"
#include "core/store/records/batches.h"
#include "tests/properties/random_runs.h"
#include "tests/results/described_logbook.h"
#include "tests/store/saying.h"

#include <rapidcheck/gtest.h>

namespace holdband::test {
namespace {

using results::Limits;
using results::LimitsTrial;
using results::RunReview;
using results::tryLimits;

constexpr double ms = 1.0;

RunReview reviewOf(const Batch& batch, Series beer, double gapMinutes,
                   std::optional<double> accuracy = {})
{
    RunReview review;
    review.input = runInput(batch, std::move(beer), gapMinutes, accuracy);
    review.figures = analysis::analyseRun(review.input);
    review.words =
        results::verdictWords(review.input, review.figures, review.settings.temperatureUnit());
    return review;
}

RunReview workedReview()
{
    return reviewOf(batchOf({hold("Hold", 20.0)}, 10.0), workedSeries(), 90.0, 0.5);
}

Limits withTolerance(Limits limits, double kelvins)
{
    limits.tolerance = TemperatureDifference::kelvins(kelvins);
    return limits;
}

void expectSame(const analysis::Judging& a, const analysis::Judging& b)
{
    EXPECT_EQ(a.verdict, b.verdict);
    EXPECT_EQ(a.totals.insideMs, b.totals.insideMs);
    EXPECT_EQ(a.totals.aboveMs, b.totals.aboveMs);
    EXPECT_EQ(a.totals.belowMs, b.totals.belowMs);
    EXPECT_EQ(a.totals.holdMs, b.totals.holdMs);
    EXPECT_EQ(a.totals.excursions, b.totals.excursions);
    EXPECT_EQ(a.totals.worstPeak(), b.totals.worstPeak());
    EXPECT_EQ(a.missed, b.missed);
}

TEST(LimitsTrial, TheBatchsOwnLimitsGiveTheReview)
{
    const RunReview review = workedReview();
    const LimitsTrial trial = tryLimits(review, results::limitsOf(review));
    EXPECT_EQ(trial.words.headline, review.words.headline);
    EXPECT_EQ(trial.words.detail, review.words.detail);
    expectSame(trial.judged.asPlanned, review.figures.judged.asPlanned);
    expectSame(*trial.judged.tighter, *review.figures.judged.tighter);
    expectSame(*trial.judged.wider, *review.figures.judged.wider);
    EXPECT_EQ(trial.judged.sure, review.figures.judged.sure);
    EXPECT_EQ(trial.judged.deviation.mean(), review.figures.judged.deviation.mean());
}

TEST(LimitsTrial, AWiderBandAShortestExcursionAndAGapLimitByHand)
{
    const RunReview review = workedReview();
    const Limits own = results::limitsOf(review);
    // Beyond 21.5 only from 2:00 to 3:15, beyond 18.5 never.
    const LimitsTrial wider = tryLimits(review, withTolerance(own, 1.5));
    EXPECT_DOUBLE_EQ(wider.judged.asPlanned.totals.aboveMs, 1.25 * hourMs);
    EXPECT_DOUBLE_EQ(wider.judged.asPlanned.totals.belowMs, 0.0);
    EXPECT_EQ(wider.words.headline,
              "Left the band once: 1 h 15 min of 8 h held (15.6 %), worst 0.5 °C past the edge");
    const LimitsTrial widest = tryLimits(review, withTolerance(own, 2.0));
    EXPECT_EQ(widest.judged.asPlanned.verdict, analysis::Verdict::notEnoughData);
    Limits limits = withTolerance(own, 2.0);
    limits.gapLimit = std::chrono::hours{2};
    EXPECT_EQ(tryLimits(review, limits).judged.asPlanned.verdict, analysis::Verdict::stayed);
    limits = own;
    limits.gapLimit = std::chrono::hours{2};
    limits.ignoreShorterThan = std::chrono::hours{3};
    EXPECT_EQ(tryLimits(review, limits).words.headline,
              "Stayed in the band of ±1 °C: 2 excursions were ignored as shorter than 3 h");
    EXPECT_EQ(tryLimits(review, own).words.headline, review.words.headline)
        << "a trial has no lasting effect";
}

TEST(LimitsTrial, ADwellAndAReturnByHand)
{
    // 20 ± 1 from 23: inside from 2/3 h on for half an hour, out 1:10–1:30, in for good. Above
    // 5:15–5:45 and 6:15–6:45.
    const RunReview review = reviewOf(batchOf({hold("Hold", 20.0)}, 10.0),
                                      series({{0, 23},
                                              {1, 20},
                                              {4 / 3.0, 22},
                                              {5 / 3.0, 20},
                                              {5, 20},
                                              {5.5, 22},
                                              {6, 20},
                                              {6.5, 22},
                                              {7, 20},
                                              {10, 20}}),
                                      240.0);
    const Limits own = results::limitsOf(review);
    EXPECT_EQ(own.bandTimes, BandTimes{});
    EXPECT_EQ(review.figures.judged.asPlanned.totals.excursions, 2u);
    EXPECT_NEAR(review.figures.judged.asPlanned.totals.settlingMs, 1.5 * hourMs, 1e-3);
    Limits limits = own;
    limits.bandTimes = {std::chrono::minutes{30}, std::chrono::minutes{31}};
    const analysis::BandTotals tried = tryLimits(review, limits).judged.asPlanned.totals;
    EXPECT_NEAR(tried.settlingMs, 2 / 3.0 * hourMs, 1e-3);
    EXPECT_EQ(tried.excursions, 2u) << "1:10–1:30, and both of the afternoon as one";
    EXPECT_NEAR(tried.aboveMs, 4 / 3.0 * hourMs, 1e-3);
}

TEST(LimitsTrial, StagesHaveTheirOwnToleranceUntilOneIsTried)
{
    Batch batch = batchOf({hold("A", 20.0, 2.0), hold("B", 20.0)}, 4.0);
    batch.schedule[1].tolerance = TemperatureDifference::kelvins(2.0);
    const RunReview review =
        reviewOf(batch, series({{0, 21.5}, {1, 20}, {2, 21.5}, {3, 21.5}, {4, 21.5}}), 90.0);
    const Limits own = results::limitsOf(review);
    EXPECT_FALSE(own.tolerance);
    expectSame(tryLimits(review, own).judged.asPlanned, review.figures.judged.asPlanned);
    const LimitsTrial one = tryLimits(review, withTolerance(own, 1.0));
    EXPECT_EQ(one.judged.stages[1].tolerance, TemperatureDifference::kelvins(1.0));
    EXPECT_GT(one.judged.asPlanned.totals.outsideMs(),
              review.figures.judged.asPlanned.totals.outsideMs());
}

RC_GTEST_PROP(LimitsTrialProperties, OwnLimitsGiveTheReviewWhateverTheRun, ())
{
    const RunReview review = reviewOf(randomBatch(), randomBeer(), 45.0, 0.25);
    const LimitsTrial trial = tryLimits(review, results::limitsOf(review));
    RC_ASSERT(trial.words.headline == review.words.headline);
    RC_ASSERT(trial.words.detail == review.words.detail);
    const analysis::BandTotals& a = trial.judged.asPlanned.totals;
    const analysis::BandTotals& b = review.figures.judged.asPlanned.totals;
    RC_ASSERT(a.insideMs == b.insideMs && a.aboveMs == b.aboveMs && a.belowMs == b.belowMs);
}

RC_GTEST_PROP(LimitsTrialProperties, WithoutSettlingAWiderBandIsNeverLeftForLonger, ())
{
    Batch batch = randomBatch();
    for (Stage& stage : batch.schedule) {
        stage.settleAllowed = Hours{0};
        stage.tolerance.reset();
    }
    const RunReview review = reviewOf(batch, randomBeer(), 45.0);
    const Limits own = results::limitsOf(review);
    double before = -1.0;
    for (int step = 10; step >= 1; --step) {
        const double outside =
            tryLimits(review, withTolerance(own, step / 4.0)).judged.asPlanned.totals.outsideMs();
        RC_ASSERT(outside >= before - ms);
        before = outside;
    }
}

RC_GTEST_PROP(LimitsTrialProperties, AWiderGapLimitNeverCoversLessAndIgnoringMoreNeverLeavesMore,
              ())
{
    const RunReview review = reviewOf(randomBatch(), randomBeer(), 45.0);
    Limits limits = results::limitsOf(review);
    double seen = -1.0;
    for (const int minutes : {5, 20, 60, 240}) {
        limits.gapLimit = std::chrono::minutes{minutes};
        const analysis::BandTotals totals = tryLimits(review, limits).judged.asPlanned.totals;
        RC_ASSERT(totals.coveredMs + totals.settlingMs >= seen - ms);
        seen = totals.coveredMs + totals.settlingMs;
    }
    limits = results::limitsOf(review);
    bool left = true;
    for (const int minutes : {0, 10, 60, 600}) {
        limits.ignoreShorterThan = std::chrono::minutes{minutes};
        const bool now =
            tryLimits(review, limits).judged.asPlanned.verdict == analysis::Verdict::left;
        RC_ASSERT(left || !now);
        left = now;
    }
}

class SavedLimits : public ::testing::Test {
protected:
    void SetUp() override
    {
        m_files.load(R"json({"holdband":1,"setups":[{"name":"S"}],
            "sensors":[{"name":"Beer","reads":"beer"}],
            "batches":[{"name":"Ale 2","setup":"S","pitched":"2026-03-01 00:00",
              "ended":"2026-03-02 00:00","beer_sensor":"Beer","tolerance_c":1,"grace_min":5,
              "schedule":[{"stage":"A","target_c":20,"hours":6,"tolerance_c":0.5},
                {"stage":"B","target_c":20}],
              "plan_changes":[{"from":"2026-03-01 12:00","why":"colder",
                "schedule":[{"stage":"A","target_c":20,"hours":6},
                  {"stage":"B","target_c":19,"tolerance_c":2}]}]}]})json",
                     "2026-03-10T00:00:00Z");
        auto opened =
            store::LogbookFile::open(m_files.path("d.holdband"), store::Access::write,
                                     [] { return *parseRfc3339("2026-03-10T00:00:00Z"); });
        ASSERT_TRUE(opened) << opened.error().sentence();
        m_logbook = std::move(*opened);
    }

    Done save(const Limits& limits)
    {
        auto change = store::Change::begin(*m_logbook, results::limitsEntry("Ale 2"));
        HOLDBAND_TRY(change);
        HOLDBAND_TRY(results::saveLimits(*change, "Ale 2", limits));
        return change->commit();
    }

    DescribedLogbook m_files;
    std::unique_ptr<store::LogbookFile> m_logbook;
};

TEST_F(SavedLimits, ApplyToTheBatchAndAreUndoneAsOneChange)
{
    const Batch before = *store::readBatch(*m_logbook, "Ale 2");
    const Limits limits{TemperatureDifference::kelvins(1.5),
                        std::chrono::minutes{20},
                        std::chrono::minutes{45},
                        {std::chrono::minutes{90}, std::chrono::minutes{5}}};
    const Done stored = save(limits);
    ASSERT_TRUE(stored) << stored.error().sentence();
    const auto run = results::reviewRun(*m_logbook, "Ale 2");
    ASSERT_TRUE(run);
    EXPECT_EQ(results::limitsOf(*run), limits);
    EXPECT_EQ(undoText(*m_logbook), "changed the limits of Ale 2");
    ASSERT_TRUE(store::undoLast(*m_logbook));
    EXPECT_EQ(*store::readBatch(*m_logbook, "Ale 2"), before);
}

TEST_F(SavedLimits, WithoutAToleranceTheStagesHaveTheirOwn)
{
    const Batch before = *store::readBatch(*m_logbook, "Ale 2");
    ASSERT_TRUE(save({std::nullopt, std::chrono::minutes{7}, std::nullopt}));
    const Batch after = *store::readBatch(*m_logbook, "Ale 2");
    EXPECT_EQ(after.schedule, before.schedule);
    EXPECT_EQ(after.planChanges, before.planChanges);
    EXPECT_EQ(after.ignoreShorterThan, std::chrono::minutes{7});
}

TEST_F(SavedLimits, RefusesInvalidLimits)
{
    const Limits own{TemperatureDifference::kelvins(1.0), Milliseconds{0}, std::nullopt};
    EXPECT_EQ(save(withTolerance(own, 0.0)).error().what, "a tolerance must be above 0");
    EXPECT_EQ(save({{}, std::chrono::minutes{-1}, {}}).error().what,
              "the time below which excursions are ignored can't be negative");
    EXPECT_EQ(save({{}, {}, Milliseconds{0}}).error().what, "a gap limit must be above 0");
    EXPECT_EQ(save({{}, {}, {}, {std::chrono::minutes{-1}, Milliseconds{0}}}).error().what,
              "the time inside after which the beer is settled, or an excursion ends, can't be "
              "negative");
    EXPECT_EQ(undoText(*m_logbook), "loaded d.json");
}

} // namespace
} // namespace holdband::test
