// Two runs side by side: section 6 of the method. Figures by hand.
#include "core/analysis/setup_comparison.h"
#include "tests/analysis/comparison_sides.h"

#include <cmath>
#include <gtest/gtest.h>

namespace holdband::test {
namespace {

using namespace analysis;

void expectBounds(const std::optional<Bounded>& figure, double value, double low, double high)
{
    ASSERT_TRUE(figure);
    ASSERT_TRUE(figure->bounded());
    EXPECT_NEAR(figure->value, value, 1e-9);
    EXPECT_NEAR(*figure->low, low, 1e-9);
    EXPECT_NEAR(*figure->high, high, 1e-9);
}

TEST(Comparison, WidensEnergyByEachMetersAccuracy)
{
    TrialSide a = steadySide("Loop meter", 10.0);
    TrialSide b = steadySide("Cabinet meter", 5.0);
    const RunComparison comparison = compare(a, b);
    const Measure& energy = measureOf(comparison, MeasureId::energy);
    // Reading ± 0.01 at both ends, × 0.99 and 1.01.
    expectBounds(energy.a, 10.0, 9.99 * 0.99, 10.01 * 1.01);
    expectBounds(energy.b, 5.0, 4.99 * 0.99, 5.01 * 1.01);
    expectBounds(energy.difference, 5.0, 9.99 * 0.99 - 5.01 * 1.01, 10.01 * 1.01 - 4.99 * 0.99);
    expectBounds(energy.ratio, 2.0, 9.99 * 0.99 / (5.01 * 1.01), 10.01 * 1.01 / (4.99 * 0.99));
    EXPECT_EQ(energy.ahead, Ahead::b);
    EXPECT_DOUBLE_EQ(comparison.commonHours, 20.0);
}

TEST(Comparison, DoesNotWidenWhereOneMeterMeasuredBoth)
{
    TrialSide a = steadySide("Meter", 10.0);
    TrialSide b = steadySide("Meter", 9.9);
    const RunComparison shared = compare(a, b);
    expectBounds(measureOf(shared, MeasureId::energy).a, 10.0, 9.99, 10.01);
    EXPECT_EQ(measureOf(shared, MeasureId::energy).ahead, Ahead::b);
    TrialSide c = steadySide("Other meter", 9.9);
    EXPECT_EQ(measureOf(compare(a, c), MeasureId::energy).ahead, Ahead::tooClose);
}

TEST(Comparison, AssumesTwoPercentForAnUnknownMeterAndNotesIt)
{
    TrialSide a = steadySide("Loop meter", 10.0);
    a.input.setup = SetupEnergy(
        {source("Loop meter", {meterReading(0, 0.0), meterReading(20, 10.0)}, std::nullopt)});
    TrialSide b = steadySide("Cabinet meter", 5.0);
    const RunComparison comparison = compare(a, b);
    expectBounds(measureOf(comparison, MeasureId::energy).a, 10.0, 9.99 * 0.98, 10.01 * 1.02);
    const auto note = std::find_if(comparison.notes.begin(), comparison.notes.end(), [](auto& n) {
        return n.kind == NoteKind::meterAccuracyAssumed;
    });
    ASSERT_NE(note, comparison.notes.end());
    EXPECT_EQ(note->a, 1.0);
    EXPECT_EQ(note->b, 0.0);
}

TEST(Comparison, UsesTheElapsedTimeThatIsMeteredInBoth)
{
    TrialSide a = steadySide("Loop meter", 10.0);
    TrialSide b = steadySide("Cabinet meter", 5.0);
    b.input.setup =
        SetupEnergy({source("Cabinet meter", {meterReading(4, 1.0), meterReading(12, 3.0)}, 0.01)});
    const RunComparison comparison = compare(a, b);
    // Elapsed 4–12 h: A 0.5 kWh an hour.
    EXPECT_DOUBLE_EQ(comparison.commonHours, 8.0);
    EXPECT_NEAR(measureOf(comparison, MeasureId::energy).a->value, 4.0, 1e-9);
    EXPECT_NEAR(measureOf(comparison, MeasureId::energy).b->value, 2.0, 1e-9);
    EXPECT_NEAR(measureOf(comparison, MeasureId::meanPower).a->value, 500.0, 1e-6);
    // 10 K for 8 h are 80/24 K·d.
    EXPECT_NEAR(measureOf(comparison, MeasureId::energyPerDegreeDay).b->value, 2.0 * 24 / 80, 1e-9);
}

TEST(Comparison, AlignsFromPitchingWhateverTheDate)
{
    TrialSide a = steadySide("Loop meter", 10.0);
    TrialSide b = steadySide("Cabinet meter", 5.0);
    const Milliseconds month = std::chrono::hours{720};
    b.input.batch.pitched += month;
    b.input.batch.ended = *b.input.batch.ended + month;
    b.input.span = {b.input.span.start + month, b.input.span.end + month};
    b.input.concurrentBatches = {{b.input.span, 1.0}};
    for (Instant& at : b.input.judging.beer.at)
        at += month;
    for (Instant& at : b.input.ambient.at)
        at += month;
    b.input.setup = SetupEnergy(
        {source("Cabinet meter", {meterReading(720, 0.0), meterReading(740, 5.0)}, 0.01)});
    const RunComparison comparison = compare(a, b);
    EXPECT_DOUBLE_EQ(comparison.commonHours, 20.0);
    EXPECT_NEAR(measureOf(comparison, MeasureId::energy).b->value, 5.0, 1e-9);
    EXPECT_NEAR(measureOf(comparison, MeasureId::energyPerDegreeDay).b->value, 0.6, 1e-9);
}

TEST(Comparison, WithoutCommonMeteringThereIsNoEnergy)
{
    TrialSide a = steadySide("Loop meter", 10.0);
    TrialSide b = steadySide("Cabinet meter", 5.0);
    a.input.setup =
        SetupEnergy({source("Loop meter", {meterReading(0, 0.0), meterReading(8, 4.0)}, 0.01)});
    b.input.setup =
        SetupEnergy({source("Cabinet meter", {meterReading(9, 0.0), meterReading(20, 4.0)}, 0.01)});
    const RunComparison comparison = compare(a, b);
    EXPECT_EQ(comparison.commonHours, 0.0);
    EXPECT_FALSE(measureOf(comparison, MeasureId::energy).a);
    EXPECT_FALSE(measureOf(comparison, MeasureId::energy).ahead);
    EXPECT_TRUE(comparison.ratioCurve.empty());
    EXPECT_TRUE(std::any_of(comparison.notes.begin(), comparison.notes.end(),
                            [](auto& note) { return note.kind == NoteKind::noCommonMetering; }));
}

/// 20 for 4 h, up to `peak` at 5 h and back at 6 h, 20 to 20 h.
Series oneHump(double peak)
{
    return series({{0, 20}, {4, 20}, {5, peak}, {6, 20}, {11, 20}, {16, 20}, {20, 20}});
}

TEST(Comparison, TimesRangeFromTheLowestToTheHighestOfThreeJudgings)
{
    TrialSide a = steadySide("Loop meter", 10.0);
    a.input.judging.beer = oneHump(22);
    TrialSide b = steadySide("Cabinet meter", 5.0);
    const RunComparison comparison = compare(a, b);
    // The hump is 2 K high and 2 h wide: past ± 1 for 1 h, ± 0.5 for 1.5 h, ± 1.5 for 0.5 h.
    expectBounds(measureOf(comparison, MeasureId::outsideHours).a, 1.0, 0.5, 1.5);
    expectBounds(measureOf(comparison, MeasureId::insideShare).a, 0.95, 0.925, 0.975);
    expectBounds(measureOf(comparison, MeasureId::excursions).a, 1.0, 1.0, 1.0);
    expectBounds(measureOf(comparison, MeasureId::outsideHours).b, 0.0, 0.0, 0.0);
    EXPECT_EQ(measureOf(comparison, MeasureId::outsideHours).ahead, Ahead::b);
    EXPECT_EQ(measureOf(comparison, MeasureId::insideShare).ahead, Ahead::b);
}

TEST(Comparison, DeviationsHaveTheSensorsAccuracyAndAFloor)
{
    TrialSide a = steadySide("Loop meter", 10.0);
    a.input.judging.beer = oneHump(22);
    TrialSide b = steadySide("Cabinet meter", 5.0);
    const RunComparison comparison = compare(a, b);
    expectBounds(measureOf(comparison, MeasureId::worstPastEdge).a, 1.0, 0.5, 1.5);
    // ∫ |d| = 2 K·h over 20 h; mean square 2 × (4/3) / 20.
    expectBounds(measureOf(comparison, MeasureId::meanAbsoluteDeviation).a, 0.1, 0.0, 0.6);
    const double rms = std::sqrt(2.0 * 4.0 / 3.0 / 20.0);
    expectBounds(measureOf(comparison, MeasureId::rmsDeviation).a, rms, 0.0, rms + 0.5);
    expectBounds(measureOf(comparison, MeasureId::meanDeviation).a, 0.1, -0.4, 0.6);
}

TEST(Comparison, MeanDeviationsAreComparedByAbsoluteValue)
{
    TrialSide a = steadySide("Loop meter", 10.0);
    a.input.judging.beer = levelSeries(19.2);
    a.input.judging.accuracy = TemperatureDifference::kelvins(0.1);
    TrialSide b = steadySide("Cabinet meter", 5.0);
    b.input.judging.beer = levelSeries(20.4);
    b.input.judging.accuracy = TemperatureDifference::kelvins(0.1);
    const RunComparison comparison = compare(a, b);
    const Measure& mean = measureOf(comparison, MeasureId::meanDeviation);
    // −0.8 ± 0.1 and 0.4 ± 0.1: by size 0.7 … 0.9 and 0.3 … 0.5.
    expectBounds(mean.a, -0.8, -0.9, -0.7);
    EXPECT_EQ(mean.ahead, Ahead::b);
    expectBounds(mean.ratio, 2.0, 0.7 / 0.5, 0.9 / 0.3);
}

TEST(Comparison, UnknownAccuracyPutsNobodyAheadOnTemperature)
{
    TrialSide a = steadySide("Loop meter", 10.0);
    a.input.judging.beer = oneHump(25);
    a.input.judging.accuracy.reset();
    TrialSide b = steadySide("Cabinet meter", 5.0);
    const RunComparison comparison = compare(a, b);
    for (const Measure& measure : comparison.measures) {
        if (measure.rule.ofTemperature) {
            EXPECT_FALSE(measure.ahead) << measure.rule.name;
        }
    }
    EXPECT_EQ(measureOf(comparison, MeasureId::energy).ahead, Ahead::b);
}

Batch withCrash(double crashHours)
{
    Batch batch = twentyHours();
    batch.schedule = {hold("Hold", 20.0, 20.0 - crashHours), hold("Crash", 2.0)};
    return batch;
}

TrialSide crashing(std::string meter, double kwh, double coldAt)
{
    TrialSide side = steadySide(std::move(meter), kwh);
    side.input.batch = withCrash(10);
    side.input.judging.beer = series({{0, 20}, {5, 20}, {10, 20}, {coldAt, 2}, {20, 2}});
    side.input.judging.gapLimit = std::chrono::hours{12};
    return side;
}

TEST(Comparison, SplitsEnergyAtTheCrash)
{
    TrialSide a = crashing("Loop meter", 10.0, 16);
    TrialSide b = crashing("Cabinet meter", 5.0, 14);
    const RunComparison comparison = compare(a, b);
    EXPECT_NEAR(measureOf(comparison, MeasureId::energyBeforeCrash).a->value, 5.0, 1e-9);
    EXPECT_NEAR(measureOf(comparison, MeasureId::energyCrash).b->value, 2.5, 1e-9);
    // 17 of 18 K to the edge at 3 °C: A in 6 h × 17/18, B in 4 h × 17/18; with ± 0.5 K 17.5 and
    // 16.5 of 18.
    expectBounds(measureOf(comparison, MeasureId::settlingCrash).a, 6 * 17.0 / 18, 6 * 16.5 / 18,
                 6 * 17.5 / 18);
    EXPECT_EQ(measureOf(comparison, MeasureId::settlingCrash).ahead, Ahead::b);
    EXPECT_FALSE(measureOf(comparison, MeasureId::effectivePerformance).ahead);
}

TEST(Comparison, NobodyIsAheadOnTemperatureInAStageThatEitherMissed)
{
    TrialSide a = crashing("Loop meter", 10.0, 16);
    a.input.judging.beer = series({{0, 20}, {5, 20}, {10, 20}, {20, 8}});
    TrialSide b = crashing("Cabinet meter", 5.0, 14);
    const RunComparison comparison = compare(a, b);
    EXPECT_FALSE(measureOf(comparison, MeasureId::settlingCrash).ahead);
    EXPECT_FALSE(measureOf(comparison, MeasureId::insideShare).ahead);
    EXPECT_EQ(measureOf(comparison, MeasureId::settlingFirst).ahead, Ahead::tooClose)
        << "the first stage was held by both";
    EXPECT_EQ(measureOf(comparison, MeasureId::energy).ahead, Ahead::b);
    EXPECT_EQ(measureOf(comparison, MeasureId::energyCrash).ahead, Ahead::tooClose)
        << "no reading was taken at the crash";
}

TEST(Comparison, OfMoney)
{
    TrialSide a = steadySide("Loop meter", 10.0);
    a.parts = 120.0;
    a.input.prices = {{a.input.span, 0.2}};
    TrialSide b = steadySide("Cabinet meter", 5.0);
    b.parts = 90.0;
    b.input.prices = {{b.input.span, 0.2}};
    const RunComparison comparison = compare(a, b);
    EXPECT_EQ(measureOf(comparison, MeasureId::parts).ahead, Ahead::b);
    expectBounds(measureOf(comparison, MeasureId::cost).a, 2.0, 0.2 * 9.99 * 0.99,
                 0.2 * 10.01 * 1.01);
    b.input.prices.clear();
    EXPECT_FALSE(measureOf(compare(a, b), MeasureId::cost).b);
}

TEST(Comparison, HasARatioCurveAtEqualElapsedHours)
{
    TrialSide a = steadySide("Loop meter", 10.0);
    TrialSide b = steadySide("Cabinet meter", 5.0);
    b.input.setup = SetupEnergy(
        {source("Cabinet meter",
                {meterReading(0, 0.0), meterReading(8, 1.0), meterReading(20, 5.0)}, 0.01)});
    const RunComparison comparison = compare(a, b);
    ASSERT_EQ(comparison.ratioCurve.size(), 2u);
    const RatioPoint& first = comparison.ratioCurve[0];
    EXPECT_DOUBLE_EQ(first.elapsedHours, 8.0);
    EXPECT_NEAR(first.a.value, 4.0, 1e-9);
    EXPECT_NEAR(first.b.value, 1.0, 1e-9);
    // A between its readings: 0 … 10.01 × 1.01; B: 0.99 × 0.99 … 1.01 × 1.01.
    expectBounds(first.ratio, 4.0, 0.0, 10.01 * 1.01 / (0.99 * 0.99));
    EXPECT_DOUBLE_EQ(comparison.ratioCurve[1].elapsedHours, 20.0);
    EXPECT_NEAR(comparison.ratioCurve[1].ratio->value, 2.0, 1e-9);
}

BatchSummary only(MeasureId id, double value)
{
    BatchSummary batch;
    batch.measures.resize(measureRules().size());
    batch.missed.resize(measureRules().size());
    batch.sensorUncertainty.resize(measureRules().size());
    batch.measures[static_cast<std::size_t>(id)] = value;
    return batch;
}

std::vector<BatchSummary> onlyEnergies(std::initializer_list<double> values)
{
    std::vector<BatchSummary> batches;
    for (const double kwh : values)
        batches.push_back(only(MeasureId::energy, kwh));
    return batches;
}

TEST(SetupComparison, HasAnIntervalFromThreeBatchesOn)
{
    // 1, 2, 3: 2 ± 4.302652729911275/√3 (Student t, 2 degrees of freedom): from −0.48, but no
    // energy can be negative.
    const double half = 4.302652729911275 / std::sqrt(3.0);
    const auto a = onlyEnergies({1, 2, 3});
    const auto measures = compareSetups(a, onlyEnergies({9, 9}));
    expectBounds(plainMean(a, 0), 2.0, 2.0 - half, 2.0 + half);
    expectBounds(measures.at(0).a, 2.0, 0.0, 2.0 + half);
    EXPECT_EQ(measures[0].b, (Bounded{9.0, std::nullopt, std::nullopt}));
    EXPECT_FALSE(measures[0].ahead);
    EXPECT_FALSE(measures.at(1).a) << "no batch has the measure";
}

TEST(SetupComparison, NobodyIsAheadByLessThanTheInstrumentsMayBeWrong)
{
    // Equal batches: the intervals have no width.
    auto a = onlyEnergies({10, 10, 10});
    auto b = onlyEnergies({9.5, 9.5, 9.5});
    EXPECT_EQ(compareSetups(a, b)[0].ahead, Ahead::b) << "as if the meters were perfect";
    for (auto* side : {&a, &b}) {
        for (BatchSummary& batch : *side)
            batch.meterUncertainty = 0.03; // 9.7 – 10.3 and 9.215 – 9.785
    }
    EXPECT_EQ(compareSetups(a, b)[0].ahead, Ahead::tooClose);
    expectBounds(compareSetups(a, b)[0].a, 10.0, 10.0, 10.0);
    for (auto* side : {&a, &b}) {
        for (BatchSummary& batch : *side)
            batch.facts.meters = {"Meter"};
    }
    EXPECT_EQ(compareSetups(a, b)[0].ahead, Ahead::b) << "one meter measured both";
}

TEST(SetupComparison, TheSensorsUncertaintyIsTheSameInEveryBatch)
{
    const auto batches = [](double kelvins, std::optional<double> doubt) {
        BatchSummary batch = only(MeasureId::rmsDeviation, kelvins);
        if (doubt)
            batch.sensorUncertainty[static_cast<std::size_t>(MeasureId::rmsDeviation)] = {*doubt,
                                                                                          *doubt};
        return std::vector(3, batch);
    };
    const auto ahead = [&](double a, double b, std::optional<double> doubt) {
        const auto measures = compareSetups(batches(a, doubt), batches(b, doubt));
        return measures[static_cast<std::size_t>(MeasureId::rmsDeviation)].ahead;
    };
    EXPECT_EQ(ahead(0.3, 0.8, 0.2), Ahead::a);
    EXPECT_EQ(ahead(0.3, 0.8, 0.3), Ahead::tooClose);
    EXPECT_EQ(ahead(0.3, 0.8, std::nullopt), std::nullopt) << "the bounds are unknown";
}

TEST(SetupComparison, NobodyIsAheadOnTemperatureWhereABatchMissedAStage)
{
    const std::size_t id = static_cast<std::size_t>(MeasureId::insideShare);
    std::vector<BatchSummary> a(3, only(MeasureId::insideShare, 1.0));
    std::vector<BatchSummary> b(3, only(MeasureId::insideShare, 0.5));
    for (auto* side : {&a, &b}) {
        for (BatchSummary& batch : *side)
            batch.sensorUncertainty[id] = {0.0, 0.0};
    }
    EXPECT_EQ(compareSetups(a, b)[id].ahead, Ahead::a);
    b[1].missed[id] = true;
    EXPECT_EQ(compareSetups(a, b)[id].ahead, std::nullopt);
}

TEST(SetupComparison, CutsIntervalsToWhatIsPossible)
{
    const Bounded around{0.5, -0.5, 1.5};
    EXPECT_EQ(possible(around, MeasureId::insideShare), (Bounded{0.5, 0.0, 1.0}));
    EXPECT_EQ(possible(around, MeasureId::energy), (Bounded{0.5, 0.0, 1.5}));
    EXPECT_EQ(possible(around, MeasureId::meanDeviation), around) << "it may well be below 0";
}

TEST(SetupComparison, AnEstimatePutsNobodyAheadHoweverManyBatches)
{
    const std::vector<BatchSummary> a(3, only(MeasureId::effectivePerformance, 2.0));
    const std::vector<BatchSummary> b(3, only(MeasureId::effectivePerformance, 1.0));
    const auto measures = compareSetups(a, b);
    const Measure& performance =
        measures[static_cast<std::size_t>(MeasureId::effectivePerformance)];
    EXPECT_TRUE(performance.a->bounded());
    EXPECT_FALSE(performance.ahead);
}

TEST(SetupComparison, TakesEachBatchsPlainFigures)
{
    TrialSide a = crashing("Loop meter", 10.0, 16);
    a.parts = 120.0;
    a.analyse();
    const auto values = plainMeasures(a.side());
    ASSERT_EQ(values.size(), measureRules().size());
    for (std::size_t i = 0; i < values.size(); ++i) {
        const MeasureId id = measureRules()[i].id;
        EXPECT_EQ(values[i].has_value(), id != MeasureId::cost) << measureRules()[i].name;
    }
    EXPECT_NEAR(*values[0], 10.0, 1e-9);
    EXPECT_NEAR(*values[1], 5.0, 1e-9);
}

TEST(Comparison, AMissedStageHasNoSettlingTime)
{
    TrialSide missed = steadySide("Loop meter", 10.0);
    missed.input.judging.beer = levelSeries(25.0); // never comes within 20 ± 1
    missed.analyse();
    ASSERT_EQ(missed.figures.judged.asPlanned.missed, std::vector<std::string>{"Hold"});
    TrialSide settled = steadySide("Cabinet meter", 5.0);
    settled.input.judging.beer = series({{0, 26}, {5, 21}, {10, 20}, {15, 20}, {20, 20}});
    settled.analyse();
    const auto settling = [](const TrialSide& side) {
        const auto& rules = measureRules();
        const auto found = std::find_if(rules.begin(), rules.end(), [](const MeasureRule& rule) {
            return rule.id == MeasureId::settlingFirst;
        });
        return plainMeasures(side.side()).at(static_cast<std::size_t>(found - rules.begin()));
    };
    EXPECT_FALSE(settling(missed));
    ASSERT_TRUE(settling(settled));
    EXPECT_NEAR(*settling(settled), 5.0, 1e-9); // 26 → 21 over 5 h
    const RunComparison comparison = compare(missed, settled);
    EXPECT_FALSE(measureOf(comparison, MeasureId::settlingFirst).a);
    EXPECT_FALSE(measureOf(comparison, MeasureId::settlingFirst).ahead);
}

} // namespace
} // namespace holdband::test
