// What the next batch would use, in a garage whose power is known exactly. The expected figures are
// computed by hand from method section 8.1: the formulas stand beside them.
#include "core/results/forecast/next_batch.h"
#include "core/results/forecast/setup_history.h"
#include "tests/results/forecast_garage.h"

#include <cmath>
#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using analysis::Ahead;
using analysis::BatchPart;
using analysis::ForecastLack;
using analysis::HoldOutlook;
using analysis::TypedRoom;
using results::NextBatch;
using results::NextBatchRequest;
using results::SetupForecast;
using ::testing::HasSubstr;

constexpr double toOneWatthour = 0.001; // kWh: the registers are read to 0.001

class NextBatchForecast : public ::testing::Test {
protected:
    void make(const ForecastGarage& garage)
    {
        m_logbook = garage.loadInto(m_folder);
        ASSERT_TRUE(m_logbook);
        m_request.plan = *results::planLike(*m_logbook, garage.setups.front().name + " 1");
        m_request.room = TypedRoom{23.0, 0.0};
    }
    NextBatch review()
    {
        auto made = results::reviewNextBatch(*m_logbook, m_request);
        EXPECT_TRUE(made) << made.error().sentence();
        return made ? std::move(*made) : NextBatch{};
    }
    std::string refusal()
    {
        auto made = results::reviewNextBatch(*m_logbook, m_request);
        return made ? "" : made.error().sentence();
    }

    DescribedLogbook m_folder;
    std::unique_ptr<store::LogbookFile> m_logbook;
    NextBatchRequest m_request;
};

TEST_F(NextBatchForecast, IsTheLineAndTheHeatOfPastBatches)
{
    make({});
    const NextBatch made = review();
    ASSERT_EQ(made.setups.size(), 1u);
    const SetupForecast& loop = made.setups.front();
    ASSERT_TRUE(loop.usable());
    EXPECT_EQ(loop.batches, 2u);
    // The room is 5 K above 18 °C and 21 K above 2 °C.
    EXPECT_NEAR(partEnergy(loop, BatchPart::beforeCrash)->kwh, 0.020 * 216 + 0.6, toOneWatthour);
    EXPECT_NEAR(partEnergy(loop, BatchPart::crash)->kwh, 0.052 * 72 + 0.5, toOneWatthour);
    EXPECT_NEAR(loop.energy.total->kwh, 9.164, toOneWatthour);
    // Both past batches are forecast exactly, so Q = 0 and s² = 4·0.05²/5; u = 1 K of a typed room
    // at 2 W/K over 288 h; t(0.95, 5) = 2.015048 (a table of Student's t).
    const double e2 = std::pow(0.002 * 288 / 9.164, 2);
    const double half = 2.015048 * std::sqrt(0.002 * 1.5 + e2);
    EXPECT_NEAR(loop.energy.total->low(), 9.164 * std::exp(-half), 0.01);
    EXPECT_NEAR(loop.energy.total->high(), 9.164 * std::exp(half), 0.01);
    ASSERT_TRUE(loop.cost);
    EXPECT_NEAR(loop.cost->amount, 0.2 * 9.164, 0.001);
    ASSERT_EQ(loop.stages.size(), 2u);
    EXPECT_NEAR(loop.stages[0].energy.kwh + loop.stages[1].energy.kwh, 9.164, toOneWatthour);
}

TEST_F(NextBatchForecast, TheCrashTakesAsLongAsPastOnes)
{
    make({});
    const NextBatch made = review();
    // 15 of the 16 K that fall in 8 h; c = 0.15, so s² = 4·0.0225/5.
    const auto& crash = made.setups.front().crash;
    ASSERT_TRUE(crash);
    const double half = 2.015048 * std::sqrt(0.018 * 1.5);
    EXPECT_NEAR(crash->hours, 7.5, 1e-6);
    EXPECT_NEAR(crash->low, 7.5 * std::exp(-half), 1e-4);
    EXPECT_NEAR(crash->high, 7.5 * std::exp(half), 1e-4);
    const auto& shape = made.setups.front().crashShape;
    ASSERT_EQ(shape.size(), 25u);
    EXPECT_NEAR(shape[12], 0.5, 1e-6) << "a straight fall";
}

TEST_F(NextBatchForecast, TellsWhetherTheSetupWasSeenHoldingSoMuch)
{
    make({});
    // Seen: 24 − 2 = 22 K, since 96 h after pitching. Asked: 23 − 2 = 21, over 0.9 · 22.
    NextBatch made = review();
    EXPECT_NEAR(*made.neededLiftK, 21.0, 1e-6);
    EXPECT_NEAR(*made.setups.front().seenLiftK, 22.0, 1e-6);
    EXPECT_EQ(made.setups.front().hold, HoldOutlook::atEdge);
    m_request.room = TypedRoom{21.0, 0.0};
    EXPECT_EQ(review().setups.front().hold, HoldOutlook::heldMore);
    m_request.room = TypedRoom{23.0, 4.0}; // 21 + 4/π
    made = review();
    EXPECT_NEAR(*made.neededLiftK, 22.2732, 1e-4);
    EXPECT_EQ(made.setups.front().hold, HoldOutlook::beyondSeen);
}

TEST_F(NextBatchForecast, PastBatchesAreForecastFromTheOthers)
{
    make({});
    const NextBatch made = review();
    const analysis::Backtest& backtest = made.setups.front().backtest;
    EXPECT_EQ(backtest.hits, 2u);
    EXPECT_EQ(backtest.judged, 2u);
    EXPECT_NEAR(*backtest.typicalError, 0.0, 0.001) << "the power is known exactly";
    // (10 W + 2·4)·216 h + 0.6, and 10 W·72 h + 2 W/K·(20 K·72 h − 64 K·h) + 0.5.
    EXPECT_NEAR(backtest.batches.front().cameKwh, 3.888 + 0.6 + 0.720 + 2.752 + 0.5, toOneWatthour);
    EXPECT_EQ(made.text.setups.front().backtest, "2 of 2 inside; typically off by 0 %.");
}

TEST_F(NextBatchForecast, ARecordedRoomHasNoDoubtOfItsOwn)
{
    make({});
    const Instant start = ForecastGarage::start();
    m_request.room = results::RoomStretch{{start, start + std::chrono::hours{288}}, "Loop room"};
    const NextBatch made = review();
    EXPECT_NEAR(made.room.meanCelsius, 22.0, 1e-9);
    EXPECT_NEAR(made.room.swingK, 0.0, 1e-9);
    EXPECT_EQ(made.room.starts, 1u);
    // Batch 1's own room: 4 K and 20 K of lift.
    EXPECT_NEAR(made.setups.front().energy.total->kwh, 0.018 * 216 + 0.6 + 0.050 * 72 + 0.5,
                toOneWatthour);
    const double half = 2.015048 * std::sqrt(0.002 * 1.5);
    EXPECT_NEAR(made.setups.front().energy.total->halfWidth, half, 0.001);
}

TEST_F(NextBatchForecast, AShortStretchIsRepeatedAndALongOneAveraged)
{
    make({});
    const Instant start = ForecastGarage::start();
    m_request.room = results::RoomStretch{{start, start + std::chrono::hours{60}}, ""};
    NextBatch made = review();
    EXPECT_TRUE(made.room.repeated);
    EXPECT_NEAR(made.setups.front().energy.total->kwh, 8.588, toOneWatthour) << "as above";
    // Days of pitching 0 to 2; the second batch's room is 24 °C, but begins later.
    m_request.room = results::RoomStretch{{start, start + std::chrono::hours{288 + 48}}, ""};
    made = review();
    EXPECT_FALSE(made.room.repeated);
    EXPECT_EQ(made.room.starts, 3u);
}

TEST_F(NextBatchForecast, LessIsWhereTheRangesDoNotOverlap)
{
    ForecastGarage garage;
    garage.setups = {{"Loop", {22.0, 24.0}}, {"Cabinet", {22.0, 24.0}, 2.0}};
    make(garage);
    NextBatch made = review();
    ASSERT_TRUE(made.less);
    EXPECT_EQ(*made.less, Ahead::a);
    EXPECT_THAT(made.text.headline, HasSubstr("Loop would use less: 9.2 kWh ("));
    EXPECT_THAT(made.text.headline, HasSubstr("), Cabinet 18.3 kWh ("));
    EXPECT_THAT(made.text.also, HasSubstr("Which is cold sooner is too close to call"));
    m_request.setups = {"Cabinet", "Loop"};
    made = review();
    EXPECT_EQ(*made.less, Ahead::b) << "in the order named";
    m_request.setups = {"Cabinet"};
    EXPECT_FALSE(review().less);
}

TEST_F(NextBatchForecast, OverlappingRangesAreTooCloseToCall)
{
    ForecastGarage garage;
    garage.setups = {{"Loop", {22.0, 24.0}}, {"Cabinet", {22.0, 24.0}, 1.1}};
    make(garage);
    const NextBatch made = review();
    EXPECT_EQ(*made.less, Ahead::tooClose);
    EXPECT_THAT(made.text.headline, HasSubstr("Too close to call"));
}

TEST_F(NextBatchForecast, SaysWhatIsMissing)
{
    ForecastGarage garage;
    garage.setups = {{"Loop", {22.0}}, {"Cabinet", {22.0}, 1.0, false}, {"Shed", {}, 1.0, false}};
    make(garage);
    const NextBatch made = review();
    EXPECT_TRUE(made.setups[0].usable());
    EXPECT_THAT(made.text.basis, HasSubstr("that batches differ by 5 % is assumed"));
    EXPECT_FALSE(made.setups[1].usable());
    EXPECT_THAT(made.text.setups[1].missing, HasSubstr("No meter of Cabinet was read"));
    EXPECT_THAT(made.text.setups[2].missing, HasSubstr("No meter of Shed was read"));
    EXPECT_FALSE(made.less);
}

TEST_F(NextBatchForecast, OnlyBatchesOfThePlansKindCount)
{
    ForecastGarage garage;
    garage.moreBatches = R"(,{"name":"Beside","setup":"Loop","beer_sensor":"Loop beer",)"
                         R"("tolerance_c":1,"pitched":"2026-03-02 00:00","ended":)"
                         R"("2026-04-02 00:00","schedule":[{"stage":"Hold","target_c":18}]})";
    make(garage);
    NextBatch made = review();
    EXPECT_EQ(made.setups.front().batches, 0u);
    EXPECT_EQ(made.setups.front().otherKind, 3u);
    EXPECT_EQ(made.setups.front().energy.lack, ForecastLack::noBatch);
    EXPECT_THAT(made.text.setups.front().missing, HasSubstr("ran beside another one"));
    m_request.plan.shared = true;
    made = review();
    EXPECT_EQ(made.setups.front().batches, 3u);
}

TEST_F(NextBatchForecast, RefusesWhatMakesNoSense)
{
    make({});
    m_request.setups = {"Loup"};
    EXPECT_THAT(refusal(), HasSubstr("did you mean Loop?"));
    m_request.setups.clear();
    m_request.plan.schedule.front().length.reset();
    EXPECT_THAT(refusal(), HasSubstr("\"Primary\" doesn't say how long it is"));
    m_request.plan.schedule.front().length = Hours{216};
    m_request.room = TypedRoom{120.0, 0.0};
    EXPECT_THAT(refusal(), HasSubstr("no room is"));
    m_request.room = TypedRoom{20.0, -3.0};
    EXPECT_THAT(refusal(), HasSubstr("not negative"));
    const Instant start = ForecastGarage::start();
    m_request.room = results::RoomStretch{{start, start + std::chrono::hours{3}}, ""};
    EXPECT_THAT(refusal(), HasSubstr("shorter than a day"));
    const Instant before = start - std::chrono::hours{4000};
    m_request.room = results::RoomStretch{{before, before + std::chrono::hours{100}}, ""};
    EXPECT_THAT(refusal(), HasSubstr("no readings in that time"));
    m_request.room = results::RoomStretch{{start, start + std::chrono::hours{336}}, "Attic"};
    EXPECT_THAT(refusal(), HasSubstr("no sensor of the room is called \"Attic\""));
}

TEST_F(NextBatchForecast, ALastStageWithoutALengthIsTakenAsThreeDays)
{
    make({});
    m_request.plan.schedule.back().length.reset();
    const NextBatch made = review();
    EXPECT_TRUE(made.placed.lastLengthAssumed);
    EXPECT_NEAR(made.setups.front().energy.total->kwh, 9.164, toOneWatthour);
    EXPECT_THAT(made.text.setups.front().assumed,
                ::testing::Contains(HasSubstr("the last stage lasts 3 days")));
}

TEST_F(NextBatchForecast, MonthsOfTheRoomsRecordAreOffered)
{
    make({});
    const auto snapshot = results::readSnapshot(*m_logbook);
    const auto months = results::roomMonths(*m_logbook, *snapshot);
    ASSERT_TRUE(months);
    ASSERT_EQ(months->size(), 1u) << "both batches are in March";
    EXPECT_EQ(months->front().month, std::chrono::year{2026} / 3);
    EXPECT_EQ(rfc3339Utc(months->front().span.end), "2026-04-01T00:00:00.000Z");
}

TEST_F(NextBatchForecast, ACacheComputesNoBatchAgain)
{
    make({});
    results::ForecastCache cache;
    const auto first = results::reviewNextBatch(*m_logbook, m_request, &cache);
    EXPECT_EQ(cache.computed(), 2);
    const auto second = results::reviewNextBatch(*m_logbook, m_request, &cache);
    EXPECT_EQ(cache.computed(), 0);
    ASSERT_TRUE(first && second);
    EXPECT_EQ(first->text.headline, second->text.headline);
}

} // namespace
} // namespace holdband::test
