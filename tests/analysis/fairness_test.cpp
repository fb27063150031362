// Every note on what makes a comparison less than fair, provoked alone. Section 6 of the method.
#include "tests/analysis/contenders.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace holdband::test {
namespace {

using namespace analysis;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

struct Pair {
    Side a = steadySide("Loop meter", 10.0);
    Side b = steadySide("Cabinet meter", 10.0);

    std::vector<FairnessNote> notes() { return compare(a, b).notes; }
    std::vector<NoteKind> kinds()
    {
        std::vector<NoteKind> found;
        for (const FairnessNote& note : notes())
            found.push_back(note.kind);
        return found;
    }
};

TEST(Fairness, NothingToSayOfTwoRunsAlike)
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
    pair.b.input.tenants = {{pair.b.input.span, 1.0}};
    ASSERT_THAT(pair.kinds(), ElementsAre(NoteKind::durations));
    EXPECT_DOUBLE_EQ(pair.notes()[0].a, 20.0);
    EXPECT_DOUBLE_EQ(pair.notes()[0].b, 15.0);
}

TEST(Fairness, Volumes)
{
    Pair pair;
    // 10 % more wort of the same gravity: 10 % more extract, no note of its own.
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

TEST(Fairness, BatchesAtOnce)
{
    Pair pair;
    pair.b.input.tenants.push_back({{hour(0), hour(10)}, 1.0});
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

TEST(Fairness, NothingIsAssumedOfAMeterOutOfService)
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

} // namespace
} // namespace holdband::test
