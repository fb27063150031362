// The worked example at the end of the method in DEVELOPERS.md, where it is computed by hand.
#include "tests/analysis/builders.h"

#include <gtest/gtest.h>

namespace holdband::test {
namespace {

using namespace analysis;

RunFigures workedRun()
{
    RunInput input = runInput(batchOf({hold("Hold", 20.0)}, 10.0), workedSeries(), 90.0);
    input.setup =
        oneMeter({meterReading(0, 5.00), meterReading(8, 5.80), meterReading(20, 6.40)}, 0.01);
    return analyseRun(input);
}

TEST(WorkedExample, TimesAndCoverage)
{
    const RunFigures run = workedRun();
    const BandJudgement& stage = run.judged.asPlanned.stages.at(0);
    EXPECT_DOUBLE_EQ(stage.holdMs, 10 * hourMs);
    EXPECT_DOUBLE_EQ(stage.coveredMs, 8 * hourMs);
    EXPECT_DOUBLE_EQ(stage.insideMs, 5 * hourMs);
    EXPECT_DOUBLE_EQ(stage.aboveMs, 2 * hourMs);
    EXPECT_DOUBLE_EQ(stage.belowMs, 1 * hourMs);
    EXPECT_DOUBLE_EQ(*run.judged.asPlanned.totals.coverage(), 0.8);
    EXPECT_DOUBLE_EQ(stage.settlingMs, 0.0);
    ASSERT_TRUE(stage.arrival);
    EXPECT_DOUBLE_EQ(stage.arrival->ms, 0.0);
    EXPECT_FALSE(stage.arrival->seen);
}

TEST(WorkedExample, Excursions)
{
    const RunFigures run = workedRun();
    const auto& excursions = run.judged.asPlanned.stages.at(0).excursions;
    ASSERT_EQ(excursions.size(), 2u);
    EXPECT_EQ(excursions[0].side, Side::above);
    EXPECT_DOUBLE_EQ(excursions[0].startMs, 1.5 * hourMs);
    EXPECT_DOUBLE_EQ(excursions[0].endMs, 3.5 * hourMs);
    EXPECT_DOUBLE_EQ(excursions[0].peak, 1.0);
    EXPECT_DOUBLE_EQ(excursions[0].areaMs, 1.125 * hourMs);
    EXPECT_EQ(excursions[0].cut, Cut::cameBack);
    EXPECT_EQ(excursions[1].side, Side::below);
    EXPECT_DOUBLE_EQ(excursions[1].startMs, 5.5 * hourMs);
    EXPECT_DOUBLE_EQ(excursions[1].endMs, 6.5 * hourMs);
    EXPECT_DOUBLE_EQ(excursions[1].peak, 0.5);
    EXPECT_DOUBLE_EQ(excursions[1].areaMs, 0.25 * hourMs);
}

TEST(WorkedExample, VerdictAndMean)
{
    const RunFigures run = workedRun();
    EXPECT_EQ(run.judged.asPlanned.verdict, Verdict::left);
    EXPECT_FALSE(run.judged.sure.has_value()) << "the sensor's accuracy is unknown";
    EXPECT_DOUBLE_EQ(run.judged.deviation.mean(), 0.21875);
}

TEST(WorkedExample, WithoutItsExcursionsThereIsNotEnoughData)
{
    RunInput input = runInput(batchOf({hold("Hold", 20.0)}, 10.0), workedSeries(), 90.0);
    input.batch.tolerance = TemperatureDifference::kelvins(3.0);
    EXPECT_EQ(analyseRun(input).judged.asPlanned.verdict, Verdict::notEnoughData);
}

TEST(WorkedExample, Energy)
{
    const RunFigures run = workedRun();
    EXPECT_NEAR(run.energy.whole.kwh, 0.90, 1e-12);
    EXPECT_NEAR(run.energy.whole.low, 0.79, 1e-12);
    EXPECT_NEAR(run.energy.whole.high, 1.41, 1e-12);
    EXPECT_DOUBLE_EQ(run.energy.whole.meteredMs(), 10 * hourMs);
    EXPECT_FALSE(run.energy.partlyMetered());
}

} // namespace
} // namespace holdband::test
