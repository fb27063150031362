// Every fairness note, triggered alone. Section 6 of the method.
#include "core/analysis/fairness.h"
#include "tests/analysis/comparison_sides.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace holdband::test {
namespace {

using namespace analysis;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

struct Pair {
    TrialSide a = steadySide("Loop meter", 10.0);
    TrialSide b = steadySide("Cabinet meter", 10.0);

    std::vector<FairnessNote> notes() { return compare(a, b).notes; }
    std::vector<NoteKind> kinds()
    {
        std::vector<NoteKind> found;
        for (const FairnessNote& note : notes())
            found.push_back(note.kind);
        return found;
    }
};

TEST(Fairness, NoNotesForTwoEqualRuns)
{
    EXPECT_THAT(Pair{}.kinds(), IsEmpty());
}

TEST(Fairness, Targets)
{
    Pair pair;
    pair.b.input.batch.schedule[0].target = Temperature::celsius(20.5);
    ASSERT_THAT(pair.kinds(), ElementsAre(NoteKind::targets));
    EXPECT_DOUBLE_EQ(pair.notes()[0].a, 20.0);
    EXPECT_DOUBLE_EQ(pair.notes()[0].b, 20.5);
}

TEST(Fairness, TargetsOfAStageThatOnlyOneHas)
{
    Pair pair;
    pair.b.input.batch.schedule = {hold("Hold", 20, 10), hold("Cooler", 19.5)};
    ASSERT_THAT(pair.kinds(), ElementsAre(NoteKind::targets));
    EXPECT_DOUBLE_EQ(pair.notes()[0].a, 20.0);
    EXPECT_DOUBLE_EQ(pair.notes()[0].b, 19.5);
}

TEST(Fairness, TargetsThatChangeAtAnotherTime)
{
    Pair pair;
    pair.a.input.batch.schedule = {hold("Hold", 20, 10), hold("Cooler", 19.5)};
    pair.b.input.batch.schedule = {hold("Hold", 20, 5), hold("Cooler", 19.5)};
    ASSERT_THAT(pair.kinds(), ElementsAre(NoteKind::targets));
    EXPECT_DOUBLE_EQ(pair.notes()[0].a, 20.0);
    EXPECT_DOUBLE_EQ(pair.notes()[0].b, 19.5);
}

TEST(Fairness, ARampAndAStepToTheSameTargetDiffer)
{
    Pair pair;
    pair.a.input.batch.schedule = {hold("Hold", 20, 5), ramp("Fall", 19.5, 10), hold("Cool", 19.5)};
    pair.b.input.batch.schedule = {hold("Hold", 20, 5), hold("Step", 19.5, 10), hold("Cool", 19.5)};
    EXPECT_THAT(pair.kinds(), ElementsAre(NoteKind::targets));
}

TEST(Fairness, TheSamePlanInMoreStagesIsTheSamePlan)
{
    Pair pair;
    pair.b.input.batch.schedule = {hold("Hold", 20, 10), hold("Goes on", 20)};
    EXPECT_THAT(pair.kinds(), IsEmpty());
}

TEST(Fairness, Tolerances)
{
    Pair pair;
    pair.b.input.batch.tolerance = TemperatureDifference::kelvins(1.5);
    EXPECT_THAT(pair.kinds(), ElementsAre(NoteKind::tolerances));
}

TEST(Fairness, Durations)
{
    Pair pair;
    pair.b.input.batch.ended = hour(15);
    pair.b.input.span.end = hour(15);
    pair.b.input.concurrentBatches = {{pair.b.input.span, 1.0}};
    ASSERT_THAT(pair.kinds(), ElementsAre(NoteKind::durations));
    EXPECT_DOUBLE_EQ(pair.notes()[0].a, 20.0);
    EXPECT_DOUBLE_EQ(pair.notes()[0].b, 15.0);
}

TEST(Fairness, Volumes)
{
    Pair pair;
    // 10 % more wort of the same gravity: 10 % more extract, no separate note.
    pair.b.input.batch.volume = Volume::litres(22);
    EXPECT_THAT(pair.kinds(), ElementsAre(NoteKind::volumes));
}

TEST(Fairness, Ambient)
{
    Pair pair;
    pair.b.input.ambient = levelSeries(31.0);
    EXPECT_THAT(pair.kinds(), IsEmpty()) << "1 °C apart is not more than 1 °C";
    pair.b.input.ambient = levelSeries(31.1);
    ASSERT_THAT(pair.kinds(), ElementsAre(NoteKind::ambient));
    EXPECT_NEAR(pair.notes()[0].a, 10.0, 1e-9);
    EXPECT_NEAR(pair.notes()[0].b, 11.1, 1e-9);
}

TEST(Fairness, Coverage)
{
    Pair pair;
    pair.b.input.judging.beer.breaks = {2};
    const auto notes = pair.notes();
    ASSERT_EQ(notes.size(), 1u);
    EXPECT_EQ(notes[0].kind, NoteKind::coverage);
    EXPECT_DOUBLE_EQ(notes[0].a, 1.0);
    EXPECT_DOUBLE_EQ(notes[0].b, 0.75);
}

TEST(Fairness, SensorAccuracy)
{
    Pair pair;
    pair.b.input.judging.accuracy = TemperatureDifference::kelvins(0.3);
    EXPECT_THAT(pair.kinds(), ElementsAre(NoteKind::sensorAccuracy));
    pair.b.input.judging.accuracy.reset();
    EXPECT_THAT(pair.kinds(), ElementsAre(NoteKind::sensorAccuracy));
}

TEST(Fairness, SensorPlacement)
{
    Pair pair;
    pair.b.placement = "taped to the wall";
    EXPECT_THAT(pair.kinds(), ElementsAre(NoteKind::sensorPlacement));
}

TEST(Fairness, LoggingInterval)
{
    Pair pair;
    pair.b.input.judging.beer = series({{0, 20},
                                        {2, 20},
                                        {4, 20},
                                        {6, 20},
                                        {8, 20},
                                        {10, 20},
                                        {12, 20},
                                        {14, 20},
                                        {17, 20},
                                        {20, 20}});
    ASSERT_THAT(pair.kinds(), ElementsAre(NoteKind::loggingInterval));
    EXPECT_DOUBLE_EQ(pair.notes()[0].a, 300.0);
    EXPECT_DOUBLE_EQ(pair.notes()[0].b, 120.0);
}

TEST(Fairness, FermentationHeat)
{
    Pair pair;
    pair.b.input.batch.originalGravity = Gravity::specific(1.070);
    EXPECT_THAT(pair.kinds(), ElementsAre(NoteKind::fermentationHeat));
}

TEST(Fairness, PartlyMetered)
{
    Pair pair;
    pair.b.input.setup = SetupEnergy(
        {source("Cabinet meter", {meterReading(0, 0.0), meterReading(15, 10.0)}, 0.01)});
    ASSERT_THAT(pair.kinds(), ElementsAre(NoteKind::partlyMetered));
    EXPECT_DOUBLE_EQ(pair.notes()[0].b, 0.75);
}

TEST(Fairness, NoCommonMetering)
{
    Pair pair;
    pair.b.input.setup = SetupEnergy({});
    EXPECT_THAT(pair.kinds(), ElementsAre(NoteKind::noCommonMetering));
}

TEST(Fairness, BatchesAtTheSameTime)
{
    Pair pair;
    pair.b.input.concurrentBatches.push_back({{hour(0), hour(10)}, 1.0});
    ASSERT_THAT(pair.kinds(), ElementsAre(NoteKind::batchesAtOnce));
    EXPECT_DOUBLE_EQ(pair.notes()[0].a, 1.0);
    EXPECT_DOUBLE_EQ(pair.notes()[0].b, 1.5);
}

TEST(Fairness, MeterAccuracyAssumed)
{
    Pair pair;
    pair.a.input.setup = SetupEnergy(
        {source("Loop meter", {meterReading(0, 0.0), meterReading(20, 10.0)}, std::nullopt)});
    EXPECT_THAT(pair.kinds(), ElementsAre(NoteKind::meterAccuracyAssumed));
}

TEST(Fairness, NoAccuracyIsAssumedForAMeterOutOfService)
{
    Pair pair;
    EnergySource old =
        source("Old meter", {meterReading(-90, 0.0), meterReading(-10, 10.0)}, std::nullopt);
    old.to = hour(-10);
    pair.a.input.setup = SetupEnergy(
        {old, source("Loop meter", {meterReading(0, 0.0), meterReading(20, 10.0)}, 0.01)});
    EXPECT_THAT(pair.kinds(), IsEmpty());
}

TEST(Fairness, MissedStage)
{
    Pair pair;
    pair.a.input.judging.beer = levelSeries(25);
    pair.a.input.ambient = levelSeries(35);
    const auto kinds = pair.kinds();
    EXPECT_THAT(kinds, ::testing::Contains(NoteKind::missedStage));
}

TEST(Fairness, OneMeterAtDifferentTimes)
{
    Pair pair;
    pair.b.input.setup =
        SetupEnergy({source("Loop meter", {meterReading(0, 0.0), meterReading(48, 24.0)}, 0.01)});
    pair.b.input.span = {hour(20), hour(40)};
    pair.b.input.batch.pitched = hour(20);
    pair.b.input.batch.ended = hour(40);
    pair.b.input.concurrentBatches = {{pair.b.input.span, 1.0}};
    for (Series* series : {&pair.b.input.judging.beer, &pair.b.input.ambient}) {
        for (Instant& at : series->at)
            at += std::chrono::hours{20};
    }
    EXPECT_THAT(pair.kinds(), ElementsAre(NoteKind::oneMeter));
}

TEST(Fairness, OneMeterAtTheSameTime)
{
    Pair pair;
    pair.b = steadySide("Loop meter", 10.0);
    ASSERT_THAT(pair.kinds(), ElementsAre(NoteKind::sharedMeter));
    EXPECT_DOUBLE_EQ(pair.notes()[0].a, 20.0);
}

TEST(Fairness, FermentationHeatByTheLastMeasuredGravity)
{
    Pair pair;
    pair.b.input.batch.finalGravity.reset();
    EXPECT_THAT(pair.kinds(), IsEmpty()) << "the fermented extract is unknown";
    pair.b.input.gravities = {{hour(5), Gravity::specific(1.045), {}},
                              {hour(15), Gravity::specific(1.030), {}}};
    ASSERT_THAT(pair.kinds(), ElementsAre(NoteKind::fermentationHeat));
    EXPECT_FALSE(pair.notes()[0].measuredA);
    EXPECT_TRUE(pair.notes()[0].measuredB);
    pair.b.input.gravities.push_back({hour(18), Gravity::specific(1.010), {}});
    EXPECT_THAT(pair.kinds(), IsEmpty());
}

/// Two setups of three batches each, equal except for what a test changes.
struct SetupPair {
    FairnessFacts a = meanFacts(std::vector(3, facts()));
    FairnessFacts b = a;

    static FairnessFacts facts()
    {
        TrialSide side = steadySide("Loop meter", 10.0);
        side.analyse();
        return factsOf(side.side());
    }
    std::vector<FairnessNote> notes()
    {
        a.meters = {"Loop meter"};
        b.meters = {"Cabinet meter"};
        return fairnessNotes(a, b);
    }
    std::vector<NoteKind> kinds()
    {
        std::vector<NoteKind> found;
        for (const FairnessNote& note : notes())
            found.push_back(note.kind);
        return found;
    }
};

TEST(FairnessOfSetups, EveryNoteIsProvoked)
{
    EXPECT_THAT(SetupPair{}.kinds(), IsEmpty());
    const auto only = [](auto change) {
        SetupPair pair;
        change(pair.b);
        return pair.kinds();
    };
    using Facts = FairnessFacts;
    EXPECT_THAT(only([](Facts& b) { b.runs = 2; }), ElementsAre(NoteKind::fewBatches));
    EXPECT_THAT(only([](Facts& b) { b.target -= 4; }), ElementsAre(NoteKind::targets));
    EXPECT_THAT(only([](Facts& b) { b.tolerance += 0.5; }), ElementsAre(NoteKind::tolerances));
    EXPECT_THAT(only([](Facts& b) { b.hours += 30; }), ElementsAre(NoteKind::durations));
    EXPECT_THAT(only([](Facts& b) { b.litres = 25; }), ElementsAre(NoteKind::volumes));
    EXPECT_THAT(only([](Facts& b) { *b.extractKg *= 2; }), ElementsAre(NoteKind::fermentationHeat));
    EXPECT_THAT(only([](Facts& b) { *b.lift += 3; }), ElementsAre(NoteKind::ambient));
    EXPECT_THAT(only([](Facts& b) { b.coverage = 0.9; }), ElementsAre(NoteKind::coverage));
    EXPECT_THAT(only([](Facts& b) { b.accuracy = 0.2; }), ElementsAre(NoteKind::sensorAccuracy));
    EXPECT_THAT(only([](Facts& b) { b.accuracy.reset(); }), ElementsAre(NoteKind::sensorAccuracy));
    EXPECT_THAT(only([](Facts& b) { b.placements = {"on the wall"}; }),
                ElementsAre(NoteKind::sensorPlacement));
    EXPECT_THAT(only([](Facts& b) { b.intervalMinutes *= 3; }),
                ElementsAre(NoteKind::loggingInterval));
    EXPECT_THAT(only([](Facts& b) { b.meteredShare = 0.8; }), ElementsAre(NoteKind::partlyMetered));
    EXPECT_THAT(only([](Facts& b) { b.meteredShare = 0.0; }),
                ElementsAre(NoteKind::noCommonMetering));
    EXPECT_THAT(only([](Facts& b) { b.atOnce = 2; }), ElementsAre(NoteKind::batchesAtOnce));
    EXPECT_THAT(only([](Facts& b) { b.missed = 1; }), ElementsAre(NoteKind::missedStage));
    EXPECT_THAT(only([](Facts& b) { b.unclassedMeters = {"Cabinet meter"}; }),
                ElementsAre(NoteKind::meterAccuracyAssumed));
    SetupPair pair;
    pair.a.meters = pair.b.meters = {"Both"};
    std::vector<NoteKind> kinds;
    for (const FairnessNote& note : fairnessNotes(pair.a, pair.b))
        kinds.push_back(note.kind);
    EXPECT_THAT(kinds, ElementsAre(NoteKind::oneMeter));
}

TEST(FairnessOfSetups, AreTheMeansOfTheirBatches)
{
    FairnessFacts one = SetupPair::facts();
    FairnessFacts two = one;
    two.hours = 40;
    two.lift = 14;
    two.extractKg.reset();
    two.accuracy = 0.8;
    two.missed = 1;
    const FairnessFacts mean = meanFacts({one, two});
    EXPECT_DOUBLE_EQ(mean.hours, 30.0);
    EXPECT_NEAR(*mean.lift, 12.0, 1e-9);
    EXPECT_DOUBLE_EQ(*mean.extractKg, *one.extractKg) << "of those that have it";
    EXPECT_DOUBLE_EQ(*mean.accuracy, 0.8) << "the largest";
    EXPECT_DOUBLE_EQ(mean.missed, 1.0) << "all together";
    two.accuracy.reset();
    EXPECT_FALSE(meanFacts({one, two}).accuracy);
    EXPECT_FALSE(meanFacts({two, one}).accuracy);
}

} // namespace
} // namespace holdband::test
