// Two setups side by side as text: every batch's figure, idle energy, the same weather, money and
// judgement. The garage's figures by hand.
#include "core/results/comparison/side_by_side.h"
#include "core/store/records/weighing.h"
#include "tests/results/garage.h"

#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using analysis::Ahead;
using analysis::MeasureId;
using results::SideBySide;
using results::SideBySideRequest;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

SideBySide reviewOfGarage(const Garage& garage, SideBySideRequest request = {})
{
    const DescribedLogbook files;
    const auto logbook = loadGarage(files, garage);
    if (request.a.empty()) {
        request.a = garage.a.setup;
        request.b = garage.b.setup;
    }
    const auto compared = results::reviewSideBySide(*logbook, request);
    EXPECT_TRUE(compared) << compared.error().sentence();
    return compared.value_or(SideBySide{});
}

std::string whyNot(const Garage& garage, SideBySideRequest request)
{
    const DescribedLogbook files;
    const auto logbook = loadGarage(files, garage);
    const auto compared = results::reviewSideBySide(*logbook, request);
    return compared ? std::string() : compared.error().sentence();
}

SideBySideRequest setups(std::vector<std::string> only)
{
    SideBySideRequest request;
    request.a = "Loop";
    request.b = "Cabinet";
    request.only = std::move(only);
    return request;
}

TEST(SetupsSideBySide, ListEveryBatchsFigureWithTheMean)
{
    const SideBySide review = reviewOfGarage({});
    ASSERT_EQ(review.batchFigures.size(), review.measures.size());
    const results::SetupFigures& energy = review.batchFigures[0].a;
    // 144 h at 20 + 4 × 6.32 W, the register to 0.001.
    ASSERT_EQ(energy.batches.size(), 3u);
    EXPECT_EQ(energy.batches[1].batch, "L2");
    EXPECT_EQ(review.text.measures[0].batchesA[1], "6.52");
    EXPECT_NEAR(energy.batches[1].value, 6.52032, 0.0011);
    EXPECT_NEAR(*energy.mean, 6.52032, 0.001);
    EXPECT_EQ(review.measures[0].ahead, Ahead::b);
    EXPECT_EQ(review.batchesA, (std::vector<std::string>{"L1", "L2", "L3"}));
    EXPECT_EQ(review.offeredB, (std::vector<std::string>{"C1", "C2", "C3"}));
    EXPECT_THAT(review.text.energySentence,
                HasSubstr("For each batch Loop used 2.57 times Cabinet's energy (2.57 – 2.57): "
                          "6.52 kWh against 2.54 kWh."));
}

TEST(SetupsSideBySide, UseOnlyTheTickedBatches)
{
    const SideBySide review = reviewOfGarage({}, setups({"L1", "L3"}));
    EXPECT_EQ(review.batchesA, (std::vector<std::string>{"L1", "L3"}));
    EXPECT_EQ(review.batchesB, (std::vector<std::string>{"C1", "C2", "C3"}));
    EXPECT_EQ(review.batchFigures[0].a.batches.size(), 2u);
    EXPECT_FALSE(review.batchFigures[0].a.low) << "two batches have no interval";
    EXPECT_FALSE(review.measures[0].ahead);
    EXPECT_EQ(review.text.measures[0].remark,
              "fewer than three batches have it, so there is no interval");
    EXPECT_EQ(review.text.notes.at(0).note, "fewer than three batches: 2 for Loop, 3 for Cabinet");
    EXPECT_EQ(review.weather.a.model.pairs.size(), 12u) << "six of each ticked batch";
}

TEST(SetupsSideBySide, IdleEnergyIsSeparate)
{
    const SideBySide review = reviewOfGarage({});
    ASSERT_EQ(review.idle.size(), 2u);
    EXPECT_EQ(review.idle[0].setup, "Loop");
    EXPECT_DOUBLE_EQ(review.idle[0].hours, 72.0);
    EXPECT_DOUBLE_EQ(review.idle[0].meteredHours, 72.0);
    EXPECT_NEAR(review.idle[0].kwh->value, 0.216, 0.0031);
    EXPECT_NEAR(*review.idle[0].meanWatts, 3.0, 0.05);
    EXPECT_THAT(review.text.idle[1],
                HasSubstr("Without a batch Cabinet used 0.07 kWh (0.07 – 0.08) in 3 days: 1.0 W"));
}

TEST(SetupsSideBySide, ShareAMeterAmongTheBatchesThatRunAtTheSameTime)
{
    Garage garage;
    garage.a.batchMore = R"(,"volume_l":20)";
    std::string description = garageDescription(garage);
    // A second batch at the same time as L1, with the same beer.
    const std::string twin = R"({"name":"Twin","setup":"Loop","beer_sensor":"Loop beer",
        "ambient_sensor":"Room","tolerance_c":1,"gap_limit_min":90,
        "pitched":"2026-03-01T00:00:00Z","ended":"2026-03-07T00:00:00Z",
        "schedule":[{"stage":"Hold","target_c":20}]},)";
    description.replace(description.find(R"({"name":"L1")"), 0, twin);
    const DescribedLogbook files;
    loadGarage(files, garage); // writes the logs
    const auto logbook = [&] {
        std::filesystem::remove(files.path("d.holdband"));
        return files.load(description, "2026-06-01T00:00:00Z");
    }();
    const auto review = results::reviewSideBySide(*logbook, "Loop", "Cabinet");
    ASSERT_TRUE(review) << review.error().sentence();
    const auto& energies = review->batchFigures[0].a.batches;
    ASSERT_EQ(energies.size(), 4u);
    EXPECT_NEAR(energies[0].value, 3.260, 0.001);
    EXPECT_NEAR(energies[1].value, 3.260, 0.001);
    EXPECT_NEAR(energies[2].value, 6.520, 0.0011);
    // Six times of L1 and its twin together at half the power, six of L2 and six of L3.
    EXPECT_EQ(review->weather.a.model.pairs.size(), 18u);
    EXPECT_THAT(review->weather.a.model.pairs[0].of, ElementsAre("Twin", "L1"));
    EXPECT_THAT(review->text.weather.a.remarks.at(0),
                HasSubstr("up to 2 batches ran at once on that setup"));
    const auto shared =
        std::find_if(review->text.notes.begin(), review->text.notes.end(),
                     [](auto& note) { return note.note.starts_with("batches at once"); });
    ASSERT_NE(shared, review->text.notes.end());
    EXPECT_EQ(shared->note,
              "batches at once on the setup, in the mean: 1.5 for Loop, 1.0 for Cabinet");
    EXPECT_THAT(shared->effect, HasSubstr("favours Loop"));
}

TEST(SetupsSideBySide, GiveThePowerInTheSameWeather)
{
    const SideBySide review = reviewOfGarage({});
    const results::SameWeather& weather = review.weather;
    const results::SameWeatherText& text = review.text.weather;
    ASSERT_TRUE(weather.any);
    EXPECT_EQ(weather.a.model.pairs.size(), 18u);
    // Lifts of 78, 90 … 138 h after pitching: 6.68 … 10.28 K, in the mean 8.48.
    EXPECT_NEAR(weather.hold->liftK, 8.48, 1e-6);
    EXPECT_NEAR(weather.hold->hours, 144.0, 1e-9);
    EXPECT_NEAR(weather.a.model.fit()->intercept, 20.0, 0.5);
    EXPECT_NEAR(weather.a.model.fit()->slope, 4.0, 0.05);
    EXPECT_NEAR(weather.a.atReference->watts.value, 53.92, 0.03);
    EXPECT_NEAR(weather.b.atReference->watts.value, 21.96, 0.03);
    EXPECT_NEAR(weather.a.atReference->kwh.value, 7.764, 0.005);
    EXPECT_EQ(weather.ahead, Ahead::b);
    EXPECT_EQ(text.sentence,
              "In the same weather (the room 8.5 °C warmer than the beer) Loop would draw 54 W "
              "(54 – 54) and Cabinet 22 W (22 – 22): Cabinet needs less.");
    EXPECT_EQ(text.energySentence, "A hold of 6 days in that weather would take 7.76 kWh (7.76 "
                                   "– 7.77) with Loop and 3.16 kWh (3.16 – 3.16) with "
                                   "Cabinet.");
    EXPECT_EQ(text.hold, "6 days (the mean of both) with the room 8.5 °C warmer than the "
                         "beer (the mean of both)");
    EXPECT_THAT(text.a.cautions, IsEmpty());
    EXPECT_THAT(text.remarks.at(0), HasSubstr("so the ranges are computed by batch"));
    EXPECT_THAT(text.remarks.at(1), HasSubstr("the first 3 days after pitching are left out"));
}

TEST(SetupsSideBySide, TheReferenceHoldMayBeChosen)
{
    Garage garage;
    garage.units = "us";
    garage.top += R"("weighing":{"reference_lift_f":18,"reference_hours":240},)";
    const SideBySide review = reviewOfGarage(garage);
    const results::SameWeather& weather = review.weather;
    const results::SameWeatherText& text = review.text.weather;
    EXPECT_NEAR(weather.a.atReference->watts.value, 60.0, 0.05);
    EXPECT_NEAR(weather.b.atReference->kwh.value, 6.0, 0.01);
    EXPECT_THAT(text.sentence, HasSubstr("(the room 18 °F warmer than the beer)"));
    EXPECT_EQ(text.hold, "10 days (chosen) with the room 18 °F warmer than the beer (chosen)");
    EXPECT_FALSE(weather.a.atReference->outside);
    garage.top = R"("weighing":{"reference_lift_c":15},)";
    const SideBySide further = reviewOfGarage(garage);
    EXPECT_TRUE(further.weather.a.atReference->outside);
    EXPECT_THAT(
        further.text.weather.a.remarks.at(0),
        HasSubstr("Loop was only recorded with the room 12.0 – 18.5 °F warmer than the beer"));
}

TEST(SetupsSideBySide, TheAnswerIsFromTheSameWeatherIfThatDecides)
{
    const SideBySide review = reviewOfGarage(Garage{});
    ASSERT_TRUE(review.weather.ahead);
    EXPECT_EQ(review.text.headline, review.text.weather.sentence);
    EXPECT_EQ(review.text.belowHeadline,
              "As brewed, each in its own weather: " + review.text.energySentence + " " +
                  review.text.temperatureSentence);
}

TEST(SetupsSideBySide, TwoBatchesASideDecideNothingAnywhere)
{
    Garage garage;
    garage.batches = 2;
    const SideBySide review = reviewOfGarage(garage);
    EXPECT_FALSE(review.weather.ahead);
    EXPECT_THAT(review.text.weather.sentence, Not(HasSubstr("needs less")));
    EXPECT_EQ(review.text.headline, review.text.energySentence);
    EXPECT_THAT(review.text.headline, HasSubstr("from too few batches to say how sure"));
    EXPECT_EQ(review.text.belowHeadline, review.text.temperatureSentence);
    for (const analysis::Measure& measure : review.measures) {
        if (measure.rule.id == analysis::MeasureId::energy) {
            EXPECT_FALSE(measure.ahead);
        }
    }
    for (const results::Criterion& criterion : review.judgement.criteria) {
        if (criterion.name == "energy" && criterion.scores) {
            EXPECT_EQ(criterion.scores->a, criterion.scores->b);
        }
    }
}

TEST(SetupsSideBySide, CautionsDecideNothing)
{
    Garage garage;
    garage.batches = 1;
    garage.top += R"("weighing":{"quiet_after_hours":90},)";
    const SideBySide review = reviewOfGarage(garage);
    // 96 … 144 h: four times, lifts 8.12 … 10.28.
    EXPECT_FALSE(review.weather.ahead);
    EXPECT_THAT(review.text.weather.sentence,
                HasSubstr("; with the cautions below that decides nothing."));
    EXPECT_THAT(review.text.weather.a.cautions,
                ElementsAre("Loop: only 4 times between readings can be used, and 6 are needed, so "
                            "this decides nothing",
                            "Loop: fewer than 3 batches took part, so this decides nothing",
                            "Loop: the weather hardly changed (2.2 °C of 3 °C needed), so this "
                            "decides nothing"));
    EXPECT_THAT(review.money.scenarios.size(), 1u) << "no total for the same weather";
}

TEST(SetupsSideBySide, WithoutARoomSensorThereIsNoSameWeather)
{
    Garage garage;
    garage.room = false;
    const SideBySide review = reviewOfGarage(garage);
    const results::SameWeather& weather = review.weather;
    const results::SameWeatherText& text = review.text.weather;
    EXPECT_FALSE(weather.any);
    EXPECT_EQ(text.sentence, "What they would draw in the same weather can't be said: Loop: the "
                             "room was not measured, so there is no line.");
}

TEST(SetupsSideBySide, TotalCostOverTheBatches)
{
    const SideBySide review = reviewOfGarage({});
    const results::Money& money = review.money;
    const results::MoneyText& text = review.text.money;
    EXPECT_EQ(text.partsA, "$300.00");
    ASSERT_EQ(money.scenarios.size(), 2u);
    EXPECT_EQ(text.scenarios[0].name, "at the logbook's price of $0.20 for a kWh");
    EXPECT_NEAR(money.scenarios[0].a.perBatch.value, 1.304, 0.001);
    EXPECT_EQ(money.scenarios[0].crossing.kind, analysis::CrossingKind::never);
    EXPECT_EQ(text.scenarios[0].sentence,
              "Cabinet is cheaper from the first batch on: the lines never cross.");
    EXPECT_EQ(text.scenarios[1].name, "of 6 days in the same weather, at $0.20 for a kWh");
    EXPECT_NEAR(money.scenarios[1].a.perBatch.value, 1.553, 0.001);
    EXPECT_EQ(money.lastBatch, 20);
}

TEST(SetupsSideBySide, TheTotalsCrossWhereTheMoreExpensiveOneSaves)
{
    Garage garage;
    garage.a.parts = 100.0;
    garage.b.parts = 110.0;
    garage.top += R"("weighing":{"batches_per_year":5,"other_price_per_kwh":0.4},)";
    const SideBySide review = reviewOfGarage(garage);
    const results::Money& money = review.money;
    const results::MoneyText& text = review.text.money;
    ASSERT_EQ(money.scenarios.size(), 3u);
    // 10 / (0.2 × 3.980) = 12.56, and half of that at twice the price.
    EXPECT_NEAR(money.scenarios[0].crossing.batches, 12.56, 0.01);
    EXPECT_EQ(text.scenarios[0].sentence,
              "Cabinet costs $10.00 more at first and saves $0.80 with each batch: it is the "
              "cheaper one from batch 13 on, after 2.5 years.");
    EXPECT_EQ(text.scenarios[1].name, "at $0.40 for a kWh");
    EXPECT_NEAR(money.scenarios[1].crossing.batches, 6.28, 0.01);
    EXPECT_EQ(text.scenarios.front().yearSentence,
              "At 5 batches a year the energy costs $6.52 a year with Loop and "
              "$2.54 with Cabinet.");
    EXPECT_EQ(money.lastBatch, 25);
}

TEST(SetupsSideBySide, TimeOfUseChangesWhatAKilowattHourCosts)
{
    Garage garage;
    garage.top = R"("currency":"EUR","price_per_kwh":0.2,
        "time_of_use":[{"from":"00:00","to":"12:00","price_per_kwh":0.4}],)";
    const results::MoneyText text = reviewOfGarage(garage).text.money;
    EXPECT_THAT(text.timeOfUse, HasSubstr("The price changes with the time of day: Loop paid "));
    EXPECT_EQ(text.scenarios.at(0).name, "at the logbook's prices");
}

TEST(SetupsSideBySide, WithoutAPriceNoTotalIsDrawn)
{
    Garage garage;
    garage.top = R"("currency":"USD",)";
    const results::MoneyText text = reviewOfGarage(garage).text.money;
    EXPECT_THAT(text.scenarios, IsEmpty());
    EXPECT_EQ(text.why, "The total can't be drawn: the logbook knows no price for a kWh.");
}

std::size_t indexOf(const SideBySide& review, const std::string& name)
{
    const auto& all = review.judgement.criteria;
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const auto& each) { return each.name == name; });
    EXPECT_NE(found, all.end()) << name;
    return found == all.end() ? 0 : static_cast<std::size_t>(found - all.begin());
}

const results::Criterion& criterion(const SideBySide& review, const std::string& name)
{
    return review.judgement.criteria.at(indexOf(review, name));
}

const results::CriterionText& textOf(const SideBySide& review, const std::string& name)
{
    return review.text.judgement.criteria.at(indexOf(review, name));
}

TEST(SetupsSideBySide, TheSheetScoresMeasuredCriteriaAndUsesTheRatings)
{
    Garage garage;
    garage.a.ratings = R"({"noise":2,"looks":5})";
    garage.b.ratings = R"({"noise":4,"looks":1,"cleaning":3})";
    garage.top += R"("weighing":{"weights":{"noise":2,"energy cost":0,"smell":1}},)";
    const SideBySide review = reviewOfGarage(garage);
    EXPECT_DOUBLE_EQ(criterion(review, "temperature").scores->a, 3.0);
    EXPECT_EQ(textOf(review, "temperature").how,
              "from \"Typical deviation, °C\": too close to call, so 3 each");
    // 21.96 W against 53.92 W.
    EXPECT_NEAR(criterion(review, "energy").scores->a, 5.0 * 21.96 / 53.92, 0.005);
    EXPECT_DOUBLE_EQ(criterion(review, "energy").scores->b, 5.0);
    // Its cost is scored by the same figure, so that they don't contradict each other.
    EXPECT_NEAR(criterion(review, "energy cost").scores->a, criterion(review, "energy").scores->a,
                1e-9);
    EXPECT_DOUBLE_EQ(criterion(review, "energy cost").scores->b, 5.0);
    EXPECT_THAT(textOf(review, "energy cost").how,
                HasSubstr("the cost of the power drawn in the same weather"));
    EXPECT_DOUBLE_EQ(criterion(review, "parts").scores->a, 5.0 / 3.0);
    EXPECT_DOUBLE_EQ(criterion(review, "noise").weight, 2.0);
    EXPECT_TRUE(criterion(review, "looks").own);
    EXPECT_FALSE(criterion(review, "noise").own);
    EXPECT_FALSE(criterion(review, "cleaning").scores);
    EXPECT_EQ(textOf(review, "cleaning").how, "not scored: only Cabinet is rated");
    EXPECT_EQ(textOf(review, "smell").how, "not scored: nobody rated it");
    EXPECT_EQ(criterion(review, "energy cost").weight, 0.0);
}

TEST(SetupsSideBySide, TheSheetNamesWhatWouldChangeTheLead)
{
    Garage garage;
    garage.b.parts = 300.0;
    garage.a.ratings = R"({"looks":5})";
    garage.b.ratings = R"({"looks":1})";
    // Weights of 0 for energy and its cost: only the looks differ.
    garage.top += R"("weighing":{"weights":{"energy":0,"energy cost":0}},)";
    const SideBySide review = reviewOfGarage(garage);
    EXPECT_EQ(textOf(review, "parts").how, "from \"Parts, USD\": the same, so 3 each");
    EXPECT_EQ(review.judgement.sheet.lead, Ahead::a);
    EXPECT_EQ(review.text.judgement.sentence, "Loop leads 3.4 to 2.6 (of 5).");
    EXPECT_EQ(textOf(review, "looks").turn, "Without looks they would be level.");
    // 4 of looks against 5 − 2.036 of energy: level at 1.35.
    EXPECT_EQ(textOf(review, "energy").turn,
              "With a weight above 1.3 for energy (now 0.0) Cabinet would lead.");
    EXPECT_EQ(review.text.judgement.turning.size(), 3u) << "looks, energy and its cost";
}

TEST(SetupsSideBySide, PossiblyNoCriterionChangesTheLead)
{
    const SideBySide review = reviewOfGarage({});
    EXPECT_EQ(review.judgement.sheet.lead, Ahead::b);
    EXPECT_THAT(
        review.text.judgement.turning,
        ElementsAre("No single criterion changes that: neither leaving it out nor any weight up "
                    "to 5."));
}

TEST(SetupsSideBySide, TheSpreadAddsUpTheBatches)
{
    const SideBySide review = reviewOfGarage({});
    ASSERT_TRUE(review.deviations.spreadA);
    EXPECT_EQ(review.deviations.spreadA->edges, review.deviations.spreadB->edges);
    EXPECT_NEAR(review.deviations.spreadA->totalMs(), 3 * garageHours * 3.6e6, 1.0);
    EXPECT_DOUBLE_EQ(review.deviations.toleranceA, 1.0);
}

TEST(SetupsSideBySide, WriteNumbersWithTheReadersDecimalSign)
{
    SideBySideRequest request;
    request.a = "Loop";
    request.b = "Cabinet";
    request.decimalSign = ',';
    const SideBySide review = reviewOfGarage({}, request);
    EXPECT_THAT(review.text.energySentence, HasSubstr("used 2,57 times"));
    EXPECT_THAT(review.text.measures[0].a, HasSubstr("6,52"));
    EXPECT_THAT(review.text.weather.sentence, HasSubstr("the room 8,5 °C warmer"));
    EXPECT_EQ(review.text.money.partsA, "$300,00");
    EXPECT_THAT(review.text.judgement.sentence, HasSubstr(","));
}

TEST(SetupsSideBySide, RefuseBatchesThatCantBeCompared)
{
    EXPECT_EQ(whyNot({}, setups({"L9"})), "there is no batch \"L9\"; did you mean L1, L2, L3?");
    SideBySideRequest request = setups({"L1"});
    request.fromStage = "Hold";
    EXPECT_EQ(whyNot({}, request), "two setups are compared over whole batches; align two batches "
                                   "from a stage, or leave the stage out.");
    request = setups({"L2"});
    request.a = "L1";
    request.b = "C1";
    EXPECT_EQ(whyNot({}, request),
              "two batches are compared, there are no others to take; choose among batches only "
              "where two setups are compared.");
}

TEST(SetupsSideBySide, OneWithoutAMeterIsReported)
{
    Garage garage;
    std::string description = garageDescription(garage);
    // The cabinet's meter counts for the loop.
    const DescribedLogbook files;
    loadGarage(files, garage);
    std::filesystem::remove(files.path("d.holdband"));
    const std::string inUse = R"("name":"Cabinet meter","setup":"Cabinet")";
    description.replace(description.find(inUse), inUse.size(),
                        R"("name":"Cabinet meter","setup":"Loop")");
    const auto logbook = files.load(description, "2026-06-01T00:00:00Z");
    const auto review = results::reviewSideBySide(*logbook, "Loop", "Cabinet");
    ASSERT_TRUE(review) << review.error().sentence();
    EXPECT_EQ(review->text.energySentence,
              "Their energies can't be compared: Cabinet has no meter and no power log.");
    EXPECT_FALSE(review->weather.any);
    EXPECT_THAT(review->text.weather.sentence, HasSubstr("Cabinet: no meter was read twice"));
    EXPECT_EQ(review->text.idle[1],
              "Nothing is known of Cabinet without a batch: no meter of it was read.");
}

} // namespace
} // namespace holdband::test
