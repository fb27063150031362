// Every figure has an explanation: the numbers in the sentence are those of the figure. The worked
// example of the method by hand, and the sentences for absent figures.
#include "core/results/run/explain.h"
#include "tests/analysis/builders.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace holdband::test {
namespace {

using results::explain;
using results::explainExcursion;
using results::explainStage;
using results::Figure;
using results::RunReview;
using results::StageFigure;
using ::testing::HasSubstr;
using ::testing::StartsWith;

/// The review of an input, without a logbook.
RunReview reviewOf(analysis::RunInput input, UnitSystem units = UnitSystem::metric)
{
    RunReview review;
    review.settings.units = units;
    review.settings.currency = "USD";
    review.setup.name = "Loop";
    review.beerSensor.name = "Beer";
    review.input = std::move(input);
    review.figures = analysis::analyseRun(review.input);
    review.dailyEnergy = results::dailyEnergyOf(review.figures.energy, review.zone);
    return review;
}

/// With its meter at $0.16 per kWh, and a room at 25 °C throughout.
analysis::RunInput workedInput(std::optional<double> accuracy = {})
{
    analysis::RunInput input =
        runInput(batchOf({hold("Hold", 20.0)}, 10.0), workedSeries(), 90.0, accuracy);
    input.setup =
        oneMeter({meterReading(0, 5.00), meterReading(8, 5.80), meterReading(20, 6.40)}, 0.01);
    input.prices = {{input.span, 0.16}};
    input.batch.ambientSensor = "Room";
    input.ambient = series({{0, 25.0}, {5, 25.0}, {10, 25.0}});
    input.ambientGap = std::chrono::hours{5};
    return input;
}

/// 20 °C for 4 h, then a crash to 5 °C whose band the beer enters at 6 °C after 2 h 48 min: 20, 15,
/// 10,
/// 5. 19 L. The meter counts 0.1 kWh an hour.
analysis::RunInput crashInput()
{
    Batch batch = batchOf({hold("Primary", 20.0, 4.0), hold("Crash", 5.0)}, 8.0);
    batch.volume = Volume::litres(19.0);
    batch.originalGravity = Gravity::specific(1.050);
    batch.finalGravity = Gravity::specific(1.010);
    analysis::RunInput input = runInput(
        batch,
        series({{0, 20}, {1, 20}, {2, 20}, {3, 20}, {4, 20}, {5, 15}, {6, 10}, {7, 5}, {8, 5}}),
        90.0);
    input.setup =
        oneMeter({meterReading(0, 1.0), meterReading(4, 1.4), meterReading(8, 1.8)}, 0.01);
    return input;
}

std::string worked(Figure figure, UnitSystem units = UnitSystem::metric)
{
    return explain(reviewOf(workedInput(0.5), units), figure);
}

TEST(Explain, TimesOfTheWorkedExample)
{
    EXPECT_EQ(worked(Figure::insideShare),
              "Time inside the band ÷ covered hold time: 5 h of 8 h = 62.5 %.");
    EXPECT_EQ(worked(Figure::outsideTime),
              "Covered hold time beyond an edge of the band, with straight lines between the "
              "readings: 2 h above + 1 h below = 3 h of 8 h.");
    EXPECT_EQ(worked(Figure::coverage),
              "Hold time between readings at most 1 h 30 min apart (three times the usual "
              "interval, 2 h at most), over all hold time: 8 h of 10 h = 80.0 %.");
    EXPECT_EQ(worked(Figure::excursions),
              "How often the beer left the band in covered hold time: 2 (1 above, 1 below). Each "
              "ends once the beer has been back inside for 15 min; shorter returns are part of it, "
              "though their time is not counted as outside. Each counts, however short.");
    // hour(0) is 2026-02-25 06:13:20 UTC; the excursion lasts from 1:30 to 3:30.
    // At the peak, 22 °C at 3:00, the hour after it falls by 2 K, half of which the log can hide.
    // The edge is passed between 1:00 and 2:00 and between 3:00 and 4:00, known to half an hour
    // each.
    EXPECT_EQ(worked(Figure::worst),
              "The furthest past an edge of the band: 1 °C above in Hold, between 25 Feb 07:43 and "
              "25 Feb 09:43. The log's 1 h between readings can hide up to 1 °C more at the "
              "peak, and the length is only known to ±1 h.");
    EXPECT_THAT(worked(Figure::worst, UnitSystem::us),
                StartsWith("The furthest past an edge of the band: 1.8 °F above in Hold, between "
                           "25 Feb 07:43 and 25 Feb 09:43. The log's 1 h between readings can hide "
                           "up to 1.8 °F more"));
}

TEST(Explain, DeviationsOfTheWorkedExample)
{
    EXPECT_EQ(worked(Figure::meanDeviation), "Beer minus target, averaged over the 8 h of covered "
                                             "hold time, each moment counting alike: +0.22 °C.");
    EXPECT_EQ(worked(Figure::meanDeviation, UnitSystem::us),
              "Beer minus target, averaged over the 8 h of covered hold time, each moment counting "
              "alike: +0.39 °F.");
    // Mean squares by hand, (a² + ab + b²)/3 of each hour: 1/12, 13/12, 37/12, 4/3, 1/12, 13/12,
    // 13/12, and from 9:00 on 0: 7.8333/8 = 0.97917, its root 0.98953. Less 0.21875²: 0.96505.
    EXPECT_THAT(worked(Figure::rmsDeviation), HasSubstr("= 0.99 °C."));
    EXPECT_THAT(worked(Figure::spread), HasSubstr(": 0.97 °C."));
    // Of the hours: 0.25, 1, 1.75, 1, 0.25, 1, 1, 0: 6.25/8.
    EXPECT_THAT(worked(Figure::meanAbsoluteDeviation), HasSubstr(": 0.78 °C."));
}

TEST(Explain, EnergyOfTheWorkedExample)
{
    EXPECT_EQ(worked(Figure::wholeEnergy),
              "The meter at the end minus the meter at the start, with straight lines between its "
              "readings; in brackets the range that they allow: 0.90 kWh (0.79 – 1.41) in 10 h.");
    EXPECT_EQ(worked(Figure::meanPower),
              "Energy over the time that was metered: 0.90 kWh in 10 h = 90.0 W.");
    EXPECT_EQ(worked(Figure::cost), "Metered energy times its price: 0.90 kWh × $0.16 = $0.14 "
                                    "($0.13 – $0.23).");
    // Room − beer is 5 − d over the 8 covered hours, d on average 0.21875: 38.25 K·h.
    EXPECT_EQ(worked(Figure::lift),
              "Room minus beer, summed over the 8 h in which both were recorded: 38.25 °C·h with "
              "the room warmer, 0.00 °C·h with the beer warmer; in the mean +4.78 °C.");
    EXPECT_EQ(worked(Figure::perDegreeDay),
              "The lift must be known for 90 % of the metered time: it is for 8 h of 10 h.");
}

TEST(Explain, EnergyForEachDegreeDay)
{
    analysis::RunInput input = workedInput();
    input.judging.gapLimit = std::chrono::hours{2};
    // The gap of 2 h now counts: 19.5 → 20 is −0.25 on average, 5.25 × 2 h more: 48.75 K·h. 0.9 kWh
    // ÷ (48.75/24 = 2.03125 K·d) = 0.44308; a °F·day is 1/1.8 of it.
    EXPECT_EQ(explain(reviewOf(input), Figure::perDegreeDay),
              "Metered energy over the lift of the same time, with the room warmer: 0.90 kWh ÷ "
              "(48.75 °C·h ÷ 24) = 0.443 kWh for each °C·day.");
    EXPECT_EQ(explain(reviewOf(input, UnitSystem::us), Figure::perDegreeDay),
              "Metered energy over the lift of the same time, with the room warmer: 0.90 kWh ÷ "
              "(87.75 °F·h ÷ 24) = 0.246 kWh for each °F·day.");
}

TEST(Explain, CertaintyNamesTheThreeJudgings)
{
    EXPECT_EQ(worked(Figure::certainty),
              "The batch is judged with its band as planned, and narrower and wider by the "
              "sensor's ±0.5 °C, and is sure where all agree: as planned left, narrower left, "
              "wider left.");
    EXPECT_EQ(explain(reviewOf(workedInput()), Figure::certainty),
              "How sure the verdict is rests on the beer sensor's accuracy, and that of Beer is "
              "not on record.");
    const auto steady = [](double accuracy) {
        return reviewOf(runInput(batchOf({hold("Hold", 20.0)}, 2.0),
                                 series({{0, 20}, {1, 20}, {2, 20}}), 90.0, accuracy));
    };
    EXPECT_THAT(explain(steady(1.0), Figure::certainty),
                HasSubstr("wider stayed. The band is no wider than that uncertainty"));
    EXPECT_THAT(explain(steady(0.5), Figure::certainty), ::testing::EndsWith("wider stayed."));
}

TEST(Explain, SettlingAndTheCrash)
{
    const RunReview review = reviewOf(crashInput());
    EXPECT_EQ(explain(review, Figure::settling),
              "Recorded time from a stage's start until the beer came into its band and stayed for "
              "1 h, where the target jumped; it is not judged: Crash 2 h 48 min.");
    EXPECT_THAT(explain(review, Figure::beforeCrash),
                ::testing::AllOf(StartsWith("The crash begins with Crash, 25 Feb 10:13. "),
                                 HasSubstr("0.40 kWh (0.39 – 0.41) in 4 h.")));
    EXPECT_THAT(explain(review, Figure::crash), HasSubstr("0.40 kWh (0.39 – 0.41) in 4 h."));
    // 19 L × 4.04 kJ/(L·K) × 14 K = 1074.64 kJ = 0.29851 kWh; 0.28 kWh in 2.8 h.
    EXPECT_EQ(explain(review, Figure::heatMoved),
              "An estimate, within a few percent: volume × density × specific heat of beer × the "
              "fall to the arrival, 19 L × 1.010 kg/L × 4.0 kJ/(kg·K) × 20.0 °C to 6.0 °C (14.0 K) "
              "= 1075 kJ = 0.299 kWh.");
    EXPECT_EQ(explain(review, Figure::effectivePerformance),
              "An estimate: heat removed ÷ electricity of the same time, from 25 Feb 10:13 to 25 "
              "Feb 13:01: 0.299 kWh ÷ 0.280 kWh = 1.07.");
}

TEST(Explain, StagesHaveExplanations)
{
    const RunReview review = reviewOf(crashInput());
    EXPECT_EQ(explainStage(review, 1, StageFigure::settledIn),
              "From the stage's start, 25 Feb 10:13, until the beer came into the band and stayed "
              "for 1 h: 2 h 48 min on the clock. 2 h 48 min of it are covered and not judged; time "
              "without data counts as hold time.");
    EXPECT_EQ(explainStage(review, 1, StageFigure::settlingRate),
              "How fast the beer came to the band: from +15 °C to +1 °C off the target in 2 h 48 "
              "min = 5 °C an hour.");
    EXPECT_THAT(explainStage(review, 1, StageFigure::overshoot), HasSubstr("ended: 0 °C."));
    EXPECT_EQ(explainStage(review, 0, StageFigure::settledIn),
              "Nothing to settle: the beer was in the band at the first reading of Primary.");
    EXPECT_EQ(explainStage(review, 0, StageFigure::range),
              "The coldest and the warmest beer of the covered hold time, with straight lines "
              "between the readings: 20.0 °C and 20.0 °C.");
    EXPECT_THAT(explainStage(review, 0, StageFigure::energy), HasSubstr("0.40 kWh"));
    EXPECT_THAT(explainStage(review, 0, StageFigure::meanPower), HasSubstr("= 100.0 W."));
    EXPECT_EQ(explainStage(review, 1, StageFigure::insideShare),
              "Time inside the band ÷ covered hold time: 1 h 12 min of 1 h 12 min = 100.0 %.");
    const RunReview out = reviewOf(workedInput());
    EXPECT_THAT(explainExcursion(out, 0, 0),
                StartsWith("Above the band of Hold from 25 Feb 07:43 to 25 Feb 09:43, 2 h: at most "
                           "1 °C past the edge, "));
    EXPECT_EQ(explainExcursion(out, 0, 1),
              "Below the band of Hold from 25 Feb 11:43 to 25 Feb 12:43, 1 h: at most 0.5 °C past "
              "the edge, 0.25 °C·h beyond it in all. It ended when the beer came back. The log's 1 "
              "h between readings can hide up to 0.5 °C more at the peak, and the length is only "
              "known to ±1 h.");
}

/// 23 °C, in the band from 0:40 to 1:10 and from 1:30 on; above again from 5:30 to 6:30 and, 10 min
/// later, from 6:40 to 7:00.
analysis::RunInput arrivingInput(BandTimes times)
{
    Batch batch = batchOf({hold("Hold", 20.0)}, 10.0);
    batch.bandTimes = times;
    const auto at = [](int minutes) { return minutes / 60.0; };
    return runInput(batch,
                    series({{0, 23},
                            {1, 20},
                            {at(80), 22},
                            {at(100), 20},
                            {5, 20},
                            {6, 22},
                            {at(390), 21},
                            {at(395), 20.5},
                            {at(400), 21},
                            {at(410), 22},
                            {at(420), 21},
                            {at(430), 20},
                            {10, 20}}),
                    240.0);
}

TEST(Explain, TheDwellAndTheReturnAreThoseOfTheBatch)
{
    const RunReview usual = reviewOf(arrivingInput({}));
    EXPECT_THAT(explainStage(usual, 0, StageFigure::settledIn),
                StartsWith("From the stage's start, 25 Feb 06:13, until the beer came into the "
                           "band and stayed for 1 h: 1 h 30 min on the clock. Before that it was "
                           "inside once for less. "));
    // Above 5:30–6:30 and 6:40–7:00: 1 h 20 min of 1 h 30 min.
    EXPECT_THAT(explainExcursion(usual, 0, 0),
                StartsWith("Above the band of Hold from 25 Feb 11:43 to 25 Feb 13:13, outside for "
                           "1 h 20 min of it: at most 1 °C past the edge, "));
    EXPECT_THAT(explain(usual, Figure::excursions), StartsWith("How often the beer left the band "
                                                               "in covered hold time: 1 (1 above, "
                                                               "0 below). Each ends once the beer "
                                                               "has been back inside for 15 min;"));
    const RunReview without = reviewOf(arrivingInput({Milliseconds{0}, Milliseconds{0}}));
    EXPECT_THAT(explainStage(without, 0, StageFigure::settledIn),
                StartsWith("From the stage's start, 25 Feb 06:13, until the beer first came into "
                           "the band: 40 min on the clock. "));
    EXPECT_EQ(explain(without, Figure::settling),
              "Recorded time from a stage's start until the beer first came into its band, where "
              "the target jumped; it is not judged: Hold 40 min.");
    EXPECT_THAT(explain(without, Figure::excursions),
                HasSubstr("3 (3 above, 0 below). Each ends as soon as the beer is back inside. "));
}

TEST(Explain, AMissedStageThatWasVisitedSaysHowOften)
{
    // Inside from 0:40 to 1:10 only.
    const RunReview review = reviewOf(
        runInput(batchOf({hold("Hold", 20.0)}, 2.0), series({{0, 23}, {1, 20}, {2, 26}}), 240.0));
    EXPECT_EQ(explainStage(review, 0, StageFigure::settledIn),
              "The beer came into the band of Hold once, but did not stay for 1 h: its target was "
              "missed.");
}

TEST(Explain, GravitiesNameTheirFormula)
{
    // 1.050 → 1.010 of the check values: 80.000 %, 64.98 %, 5.250 %, 5.294 %.
    const RunReview review = reviewOf(crashInput());
    EXPECT_EQ(explain(review, Figure::apparentAttenuation),
              "Fall in gravity over the original gravity's excess over water: (1.050 − 1.010) ÷ "
              "(1.050 − 1) = 80.0 %.");
    EXPECT_THAT(explain(review, Figure::realAttenuation), HasSubstr(": 65.0 %."));
    EXPECT_THAT(explain(review, Figure::alcoholSimple),
                HasSubstr("131.25 × (1.050 − 1.010) = 5.25 % by volume"));
    EXPECT_THAT(explain(review, Figure::alcoholBalling), HasSubstr("÷ 0.794 = 5.29 % by volume"));
}

TEST(Explain, AbsentFiguresGiveTheReason)
{
    analysis::RunInput bare = runInput(batchOf({hold("Hold", 20.0)}, 10.0), {}, 90.0);
    const RunReview review = reviewOf(bare);
    const std::string nothing =
        "There is no data for any of the 10 h of hold time, so this figure can't be computed.";
    for (const Figure figure : {Figure::insideShare, Figure::outsideTime, Figure::excursions,
                                Figure::worst, Figure::meanDeviation, Figure::spread,
                                Figure::rmsDeviation, Figure::meanAbsoluteDeviation})
        EXPECT_EQ(explain(review, figure), nothing);
    for (const Figure figure : {Figure::wholeEnergy, Figure::meanPower, Figure::perDay,
                                Figure::cost, Figure::perDegreeDay})
        EXPECT_EQ(explain(review, figure), "The setup Loop has no meter and no power log.");
    EXPECT_THAT(explain(review, Figure::certainty), StartsWith("Too little of the hold time"));
    EXPECT_THAT(explain(review, Figure::crash), StartsWith("There is no crash"));
    EXPECT_THAT(explain(review, Figure::heatMoved), StartsWith("There is no crash"));
    EXPECT_THAT(explain(review, Figure::lift), HasSubstr("no sensor of the room is named"));
    EXPECT_THAT(explain(review, Figure::alcoholSimple), HasSubstr("needs the original gravity"));
    EXPECT_THAT(explain(review, Figure::coverage), HasSubstr("0 s of 10 h = 0.0 %."));
    EXPECT_THAT(explainStage(review, 0, StageFigure::settledIn), HasSubstr("no arrival is known"));
    EXPECT_EQ(explainStage(review, 0, StageFigure::quantiles), nothing);
    EXPECT_EQ(explainStage(review, 0, StageFigure::range), nothing);
}

TEST(Explain, TheReasonsOfAMissingHeatDiffer)
{
    analysis::RunInput input = crashInput();
    input.batch.volume.reset();
    EXPECT_THAT(explain(reviewOf(input), Figure::heatMoved), HasSubstr("the batch's volume"));
    input = crashInput();
    input.judging.beer = series({{0, 20}, {1, 20}, {2, 20}, {3, 20}, {4, 20}, {5, 20}});
    EXPECT_THAT(explain(reviewOf(input), Figure::effectivePerformance),
                HasSubstr("no reading shows the beer arriving"));
    input = crashInput();
    input.setup = analysis::SetupEnergy({});
    EXPECT_THAT(explain(reviewOf(input), Figure::effectivePerformance),
                HasSubstr("none is metered from 25 Feb 10:13"));
}

TEST(Explain, PartlyMeteredAndSharedEnergyIsNoted)
{
    analysis::RunInput input = workedInput();
    input.setup = oneMeter({meterReading(2, 5.00), meterReading(8, 5.60)}, 0.01);
    input.concurrentBatches.push_back({{hour(5), hour(30)}, 1.0, "Ale 2"});
    const std::string text = explain(reviewOf(input), Figure::wholeEnergy);
    // 0.3 kWh alone, half of 0.3 with the other.
    EXPECT_THAT(text, HasSubstr("0.45 kWh"));
    EXPECT_THAT(text, HasSubstr("in the 6 h that were metered, of 10 h; nothing is added"));
    EXPECT_THAT(text, HasSubstr(" For 5 h the batch shared Loop with Ale 2, "));
}

TEST(Explain, WholeDaysOnlyMakeTheDailyMean)
{
    // From 18:00 UTC on for 3 days; read at the start, the midnights and the end.
    analysis::RunInput input = runInput(batchOf({hold("Hold", 20.0)}, std::nullopt), {}, 90.0);
    const Zone zone;
    const Instant midnight = zone.startOfDay(zone.localDate(zero));
    const auto at = [&](int hours) { return midnight + std::chrono::hours{hours}; };
    input.span = {at(18), at(78)};
    input.concurrentBatches = {{input.span, 1.0}};
    analysis::MeterRegister meter;
    for (const auto& [hours, kwh] :
         {std::pair{18, 1.0}, {24, 2.0}, {48, 4.5}, {72, 6.0}, {78, 9.0}})
        meter.readings.push_back({at(hours), Energy::kilowattHours(kwh), 1, {}, {}});
    input.setup = analysis::SetupEnergy({{"Meter", analysis::MeterCurve(meter, {}), {}, {}, {}}});
    for (const LocalDay& day : zone.localDays(input.span))
        input.days.push_back({"", day.span});
    const RunReview review = reviewOf(input);
    ASSERT_TRUE(review.dailyEnergy);
    EXPECT_EQ(review.dailyEnergy->wholeDays, (std::vector<std::size_t>{1, 2}));
    EXPECT_DOUBLE_EQ(review.dailyEnergy->meanKwh, 2.0);
    EXPECT_EQ(explain(review, Figure::perDay),
              "The mean of the 2 calendar days that were metered from midnight to midnight: 2.00 "
              "kWh; minimum 1.50 kWh on 27 Feb 2026, maximum 2.50 kWh on 26 Feb 2026.");
}

TEST(Explain, ADecimalCommaIfRequested)
{
    EXPECT_EQ(explain(reviewOf(workedInput()), Figure::insideShare, ','),
              "Time inside the band ÷ covered hold time: 5 h of 8 h = 62,5 %.");
    EXPECT_THAT(explain(reviewOf(workedInput()), Figure::wholeEnergy, ','),
                HasSubstr("0,90 kWh (0,79 – 1,41)"));
}

TEST(Explain, LongTimesStayInHoursSoThatTheyCanBeAddedUp)
{
    Series beer;
    for (int at = 0; at <= 300; ++at) {
        beer.at.push_back(hour(at));
        beer.value.push_back(at >= 100 && at <= 102 ? 21.5 : 20.0);
    }
    const RunReview review =
        reviewOf(runInput(batchOf({hold("Hold", 20.0)}, 300.0), std::move(beer), 90.0));
    // Outside from 99:40 to 102:20.
    EXPECT_EQ(explain(review, Figure::insideShare),
              "Time inside the band ÷ covered hold time: 297 h 20 min of 300 h = 99.1 %.");
    EXPECT_THAT(explain(review, Figure::outsideTime),
                HasSubstr("2 h 40 min, all of it above, of 300 h."));
}

} // namespace
} // namespace holdband::test
