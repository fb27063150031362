// Setups of known standby power and known watts per kelvin of lift, simulated minute by minute
// through fourteen days of weather like the sample's, then logged, read twice a day, and analysed
// with the same-weather model. Their true power must be inside the 95 % intervals at least about as
// often as 95 % implies.
#include "core/analysis/same_weather.h"
#include "sample-data/maker/noise.h"
#include "tests/analysis/builders.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace holdband::test {
namespace {

using namespace analysis;
using sample::Noise;

struct Truth {
    double standingW;
    double wattsPerKelvin;
    double compressorW;
};

constexpr int days = 14;
constexpr int minutesPerDay = 1440;
constexpr double beerC = 12.0;

/// Like the sample's room without seasons: a daily wave and three slow ones with random phases.
class Weather {
public:
    explicit Weather(Noise& noise)
    {
        for (double& phase : m_phases)
            phase = noise.uniform();
    }
    double roomC(double hours) const
    {
        double air = 20.0 + 0.9 * wave(hours / 24.0 + m_phases[3]);
        air += 1.8 * wave(hours / 79.0 + m_phases[0]) + 2.2 * wave(hours / 137.0 + m_phases[1]);
        return air + 2.4 * wave(hours / 218.0 + m_phases[2]);
    }

private:
    static double wave(double turns) { return std::sin(2.0 * std::numbers::pi * turns); }
    std::array<double, 4> m_phases{};
};

/// The records of the logger and the register at the end.
struct Records {
    Series beer;
    Series room;
    std::vector<MeterReading> readings;
};

/// A compressor that switches on and off, so that it removes the heat that leaks in; a lid opened
/// at random, in some half days more than in others; a thermometer with noise.
Records simulate(const Truth& truth, std::uint64_t seed)
{
    Noise noise(seed);
    const Weather weather(noise);
    Records records;
    double joulesOwed = 0.0;
    double kwh = 100.0;
    bool running = false;
    double lidW = 0.0;
    int nextRound = 0;
    for (int minute = 0; minute <= days * minutesPerDay; ++minute) {
        const double room = weather.roomC(minute / 60.0);
        if (minute >= nextRound) {
            const double shown = std::round(kwh * 1000.0) / 1000.0;
            records.readings.push_back(meterReading(minute / 60.0, shown, 3));
            nextRound = minute + 720 + static_cast<int>(20.0 * noise.normal());
            lidW = 1.2 * noise.normal();
        }
        if (minute % 5 == 0) {
            records.beer.at.push_back(hour(minute / 60.0));
            records.beer.value.push_back(beerC + 0.03 * noise.normal());
            records.room.value.push_back(room + 0.03 * noise.normal());
        }
        joulesOwed += (truth.wattsPerKelvin * (room - beerC) + lidW) * 60.0;
        if (joulesOwed > 5.0 * 60.0 * truth.compressorW)
            running = true;
        if (joulesOwed < 0.0)
            running = false;
        const double drawn = truth.standingW + (running ? truth.compressorW : 0.0);
        joulesOwed -= running ? truth.compressorW * 60.0 : 0.0;
        kwh += drawn / 60.0 / 1000.0;
    }
    records.room.at = records.beer.at;
    return records;
}

std::vector<WeatherPair> pairsOf(const Records& records, const std::string& batch = "Trial")
{
    RunInput input = runInput(batchOf({hold("Hold", beerC)}, days * 24.0), records.beer, 30);
    input.ambient = records.room;
    input.ambientGap = std::chrono::minutes{30};
    input.setup = oneMeter(records.readings, 0.001);
    const std::vector<Span> between = timesBetweenReadings(input.setup);
    const JudgedBatch judged = judgeBatch(judgedStages(input), input.judging, input.settings);
    SetupRun run{batch, input.span, true, {}};
    run.quiet = quietPairs(input, judged, between, std::chrono::hours{72});
    return weatherPairs(input.setup, between, {run});
}

LiftModel modelled(const Records& records)
{
    return liftModel(pairsOf(records));
}

/// The model of three batches, one after the other, each with its own weather and lid openings.
LiftModel modelledOfThree(const Truth& truth, std::uint64_t seed)
{
    std::vector<WeatherPair> all;
    for (std::uint64_t batch = 0; batch < 3; ++batch) {
        const auto pairs =
            pairsOf(simulate(truth, seed + 100 * batch), "Trial " + std::to_string(batch));
        all.insert(all.end(), pairs.begin(), pairs.end());
    }
    return liftModel(std::move(all));
}

bool holds(const Interval95& interval, double truth)
{
    return interval.low() <= truth && truth <= interval.high();
}

class SimulatedSetup : public ::testing::TestWithParam<Truth> {};

// With a chance of 0.95 each, the count of 100 is below 88 in 0.15 % of sets of runs with correct
// intervals (binomial). One batch's interval is partly assumed and wide on purpose (method, section
// 8.2), so there is no upper limit. The seeds are fixed: it fails always or never.
constexpr int fewestHeld = 88;

TEST_P(SimulatedSetup, IsInItsIntervalsInNinetyFiveOfAHundredRunsOrMore)
{
    const Truth truth = GetParam();
    constexpr double lift = 9.0;
    int standing = 0;
    int perKelvin = 0;
    int power = 0;
    for (std::uint64_t seed = 1; seed <= 100; ++seed) {
        const LiftModel model = modelled(simulate(truth, seed));
        ASSERT_TRUE(model.fit()) << "seed " << seed;
        ASSERT_GE(model.pairs.size(), 20u);
        standing += holds(model.interval->intercept(), truth.standingW) ? 1 : 0;
        perKelvin += holds(model.interval->slope(), truth.wattsPerKelvin) ? 1 : 0;
        power += holds(atReference(model, {lift, 168.0})->watts,
                       truth.standingW + truth.wattsPerKelvin * lift)
                     ? 1
                     : 0;
    }
    for (const int held : {standing, perKelvin, power})
        EXPECT_GE(held, fewestHeld);
    RecordProperty("standing", standing);
    RecordProperty("perKelvin", perKelvin);
    RecordProperty("power", power);
}

INSTANTIATE_TEST_SUITE_P(Kinds, SimulatedSetup,
                         ::testing::Values(Truth{24.0, 1.5, 150.0}, // like the loop
                                           Truth{6.0, 2.4, 70.0},   // like the cabinet
                                           Truth{0.0, 4.0, 120.0}));

TEST(SimulatedSetups, TheBetterOneInTheSameWeatherIsFound)
{
    int found = 0;
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const LiftModel loop = modelledOfThree({24.0, 1.5, 150.0}, seed);
        const LiftModel cabinet = modelledOfThree({6.0, 2.4, 70.0}, seed + 1000);
        // 24 + 1.5 × 9 = 37.5 W against 6 + 2.4 × 9 = 27.6 W.
        const auto ahead = aheadInSameWeather(loop, atReference(loop, {9.0, 168.0}), cabinet,
                                              atReference(cabinet, {9.0, 168.0}));
        EXPECT_NE(ahead, Ahead::a) << "seed " << seed;
        found += ahead == Ahead::b ? 1 : 0;
    }
    EXPECT_EQ(found, 20);
}

TEST(SimulatedSetups, OneBatchASideDecidesNothing)
{
    const LiftModel loop = modelled(simulate({24.0, 1.5, 150.0}, 1));
    const LiftModel cabinet = modelled(simulate({6.0, 2.4, 70.0}, 1001));
    EXPECT_FALSE(aheadInSameWeather(loop, atReference(loop, {9.0, 168.0}), cabinet,
                                    atReference(cabinet, {9.0, 168.0})));
}

} // namespace
} // namespace holdband::test
