// How often the 90 % interval of a crash's arrival holds the truth. The crashes are simulated: a
// cooler with limited power cools a chamber, a controller switches it with hysteresis, the beer
// follows by Newton's cooling, batches differ by 5 % in insulation and performance, and a
// thermometer with noise is read each 10 or 15 min. method.md 8.3 has, of 300 answered or not:
// alone without past crashes 97 to 100 % at 50 and at 75 % of the way; alone with 1 to 4 past
// crashes 96 to 100 % and 95 to 100 %; high over low at 75 % 2.3 to 2.6 and 1.6 to 2.5.
#include "core/analysis/arrival_forecast.h"
#include "sample-data/maker/noise.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <gtest/gtest.h>
#include <string>
#include <utility>
#include <vector>

namespace holdband::test {
namespace {

using namespace analysis;
using sample::Noise;

constexpr int crashesInAll = 300;
constexpr double simulatedH = 150.0;
constexpr double stepH = 1.0 / 30.0;

double spread(Noise& noise, double low, double high)
{
    return low + (high - low) * noise.uniform();
}

enum class Probe { inBeer, inAir };

/// A setup, before its batches differ.
struct SimulatedCooler {
    Probe probe;             ///< of the controller
    double chamberWattsPerK; ///< insulation, to the room
    double beerWattsPerK;    ///< beer to chamber air
    double watts;            ///< heat that it moves while it runs, from a warm chamber
    double evaporatorC;      ///< the coldest it could get
    double chamberWhPerK;
    double hysteresisK; ///< either way
    double noiseSd;     ///< K, of a reading
    double resolutionK; ///< of the thermometer
    double readingH;
    double roomSwingK; ///< either way, each day
};

SimulatedCooler someCooler(Probe probe, Noise& noise)
{
    SimulatedCooler cooler{};
    cooler.probe = probe;
    cooler.chamberWattsPerK = spread(noise, 0.8, 2.5);
    cooler.beerWattsPerK = spread(noise, 1.5, 6.0);
    cooler.watts = spread(noise, 60.0, 200.0);
    cooler.evaporatorC = spread(noise, -15.0, -6.0);
    cooler.chamberWhPerK = spread(noise, 1.5, 4.0);
    cooler.hysteresisK = spread(noise, 0.3, 1.0);
    cooler.noiseSd = spread(noise, 0.02, 0.1);
    cooler.resolutionK = noise.uniform() < 0.5 ? 0.1 : 0.0625;
    cooler.readingH = noise.uniform() < 0.5 ? 1.0 / 6.0 : 0.25;
    cooler.roomSwingK = 2.0;
    return cooler;
}

struct CrashPlan {
    double beginC;
    double targetC;
    double toleranceK;
    double litres;
    double roomC;
};

struct SimulatedCrash {
    std::vector<TemperatureAt> readings;
    double arrivalH = -1.0; ///< the beer's own first entry, without noise; −1: never
    double litres = 0.0;
};

class Cellar {
public:
    Cellar(const SimulatedCooler& cooler, const CrashPlan& plan, Noise& noise)
        : m_cooler(cooler), m_plan(plan), m_insulation(1.0 + 0.05 * noise.normal()),
          m_performance(1.0 + 0.05 * noise.normal()), m_phase(24.0 * noise.uniform()),
          m_beer(plan.beginC), m_air(plan.beginC - 1.0)
    {
    }

    double beer() const { return m_beer; }

    void step(double hours)
    {
        const double probe = m_cooler.probe == Probe::inBeer ? m_beer : m_air;
        if (probe > m_plan.targetC + m_cooler.hysteresisK)
            m_runs = true;
        if (probe < m_plan.targetC - m_cooler.hysteresisK)
            m_runs = false;
        const double room =
            m_plan.roomC + m_cooler.roomSwingK * std::sin((hours + m_phase) * 0.2618);
        const double toBeer = m_cooler.beerWattsPerK * (m_beer - m_air);
        const double in = m_cooler.chamberWattsPerK * m_insulation * (room - m_air);
        const double share = std::clamp((m_air - m_cooler.evaporatorC) / 20.0, 0.0, 1.0);
        const double out = m_runs ? m_cooler.watts * m_performance * share : 0.0;
        m_beer -= toBeer * stepH / (m_plan.litres * 4.04 / 3.6);
        m_air += (toBeer + in - out) * stepH / m_cooler.chamberWhPerK;
    }

private:
    SimulatedCooler m_cooler;
    CrashPlan m_plan;
    double m_insulation;
    double m_performance;
    double m_phase; ///< hours, of the room's day
    double m_beer;  ///< °C
    double m_air;   ///< °C
    bool m_runs = true;
};

double readBy(const SimulatedCooler& cooler, double celsius, Noise& noise)
{
    const double read = celsius + cooler.noiseSd * noise.normal();
    return std::round(read / cooler.resolutionK) * cooler.resolutionK;
}

SimulatedCrash simulatedCrash(const SimulatedCooler& cooler, const CrashPlan& plan, Noise& noise)
{
    SimulatedCrash crash;
    crash.litres = plan.litres;
    Cellar cellar(cooler, plan, noise);
    double nextReading = 0.0;
    const double band = plan.targetC + plan.toleranceK;
    for (double hours = 0.0; hours < simulatedH; hours += stepH) {
        if (hours >= nextReading - 1e-9) {
            crash.readings.push_back({hours, readBy(cooler, cellar.beer(), noise)});
            nextReading += cooler.readingH;
        }
        if (cellar.beer() <= band && crash.arrivalH < 0.0)
            crash.arrivalH = hours;
        if (crash.arrivalH >= 0.0 && hours > crash.arrivalH + 4.0)
            break; // the noise has passed the band as well
        cellar.step(hours);
    }
    return crash;
}

CrashPlan someCrashPlan(Noise& noise)
{
    return {spread(noise, 12.0, 20.0), spread(noise, 1.0, 4.0), spread(noise, 0.5, 1.0),
            spread(noise, 15.0, 25.0), spread(noise, 15.0, 25.0)};
}

/// Another batch on the same setup: its own season, volume and beginning.
CrashPlan like(const CrashPlan& plan, Noise& noise)
{
    CrashPlan other = plan;
    other.beginC += 1.5 * noise.normal();
    other.litres *= 1.0 + 0.1 * noise.normal();
    other.roomC += 3.0 * noise.normal();
    return other;
}

/// The readings up to the first one that has come a share of the way.
std::vector<TemperatureAt> upToShare(const SimulatedCrash& crash, const CrashPlan& plan,
                                     double share)
{
    const double passed = plan.beginC - share * (plan.beginC - plan.targetC - plan.toleranceK);
    const auto found =
        std::find_if(crash.readings.begin(), crash.readings.end(),
                     [passed](const TemperatureAt& r) { return r.celsius <= passed; });
    return {crash.readings.begin(), found == crash.readings.end() ? found : found + 1};
}

struct Arrivals {
    int asked = 0;
    int notYet = 0;
    int held = 0;
    int openTop = 0;            ///< only the low end was said
    int never = 0;              ///< said that it will not arrive
    std::vector<double> widths; ///< high over low

    int answered() const { return asked - notYet; }
    double shareHeld() const { return static_cast<double>(held) / answered(); }
    double medianWidth() const
    {
        std::vector<double> sorted = widths;
        std::sort(sorted.begin(), sorted.end());
        return sorted.empty() ? 0.0 : sorted[sorted.size() / 2];
    }

    void add(const ArrivalForecast& forecast, double truth)
    {
        ++asked;
        notYet += forecast.answer == ArrivalAnswer::notYet ? 1 : 0;
        never += forecast.answer == ArrivalAnswer::willNotArrive ? 1 : 0;
        openTop += forecast.answer == ArrivalAnswer::openTop ? 1 : 0;
        if (forecast.highH)
            widths.push_back(*forecast.highH / *forecast.lowH);
        const bool isHeld = forecast.lowH && truth >= *forecast.lowH &&
                            (!forecast.highH || truth <= *forecast.highH);
        held += isHeld ? 1 : 0;
    }

    void record() const
    {
        testing::Test::RecordProperty("notYet", notYet);
        testing::Test::RecordProperty("held", held);
        testing::Test::RecordProperty("openTop", openTop);
        testing::Test::RecordProperty("never", never);
        testing::Test::RecordProperty("width", std::to_string(medianWidth()));
    }
};

ArrivalQuestion questionOf(const CrashPlan& plan, std::vector<TemperatureAt> readings)
{
    ArrivalQuestion question;
    question.targetC = plan.targetC;
    question.toleranceK = plan.toleranceK;
    question.litres = plan.litres;
    question.readings = std::move(readings);
    return question;
}

/// Of crashes that did arrive, asked a share of the way down.
Arrivals arrivalsOf(Probe probe, double share, int past, std::uint64_t seed)
{
    Noise noise(seed);
    Arrivals counted;
    while (counted.asked < crashesInAll) {
        const SimulatedCooler cooler = someCooler(probe, noise);
        const CrashPlan plan = someCrashPlan(noise);
        const SimulatedCrash crash = simulatedCrash(cooler, plan, noise);
        if (crash.arrivalH < 0.0)
            continue; // its truth has no hours
        ArrivalQuestion question = questionOf(plan, upToShare(crash, plan, share));
        for (int i = 0; i < past; ++i) {
            SimulatedCrash before = simulatedCrash(cooler, like(plan, noise), noise);
            question.past.push_back({std::move(before.readings), before.litres, false});
        }
        counted.add(arrivalForecastOf(question), crash.arrivalH - question.readings.back().hours);
    }
    return counted;
}

struct ArrivalCase {
    double share; ///< of the way
    int past;     ///< crashes
    double leastHeld;
    double mostWidth; ///< median of high over low
};

class ArrivalCoverage : public testing::TestWithParam<ArrivalCase> {};

// Seeds are fixed: a case fails always or never.
TEST_P(ArrivalCoverage, AloneWithTheProbeInTheBeer)
{
    const ArrivalCase asked = GetParam();
    const Arrivals arrivals =
        arrivalsOf(Probe::inBeer, asked.share, asked.past, static_cast<std::uint64_t>(asked.past));
    EXPECT_GE(arrivals.shareHeld(), asked.leastHeld);
    EXPECT_LE(arrivals.medianWidth(), asked.mostWidth);
    EXPECT_LE(arrivals.notYet, 20) << "the table's at 50 %";
    EXPECT_LE(arrivals.openTop, crashesInAll / 10); // not in the table: our own limit
    EXPECT_LE(arrivals.never, crashesInAll / 100);  // none in the table; other seeds have up to 2
    arrivals.record();
}

INSTANTIATE_TEST_SUITE_P(
    MethodTable, ArrivalCoverage,
    testing::Values(ArrivalCase{0.50, 0, 0.97, 3.6}, // no width in the table
                    ArrivalCase{0.75, 0, 0.97, 2.75}, ArrivalCase{0.50, 1, 0.96, 2.5},
                    ArrivalCase{0.75, 1, 0.95, 2.5}, ArrivalCase{0.50, 2, 0.96, 2.5},
                    ArrivalCase{0.75, 2, 0.95, 2.5}, ArrivalCase{0.50, 3, 0.96, 2.5},
                    ArrivalCase{0.75, 3, 0.95, 2.5}, ArrivalCase{0.50, 4, 0.96, 2.5},
                    ArrivalCase{0.75, 4, 0.95, 2.5}));

/// Harder than the table's: the chamber's air is held at the target itself, so that the beer only
/// creeps towards it. The nominal 90 % still hold.
TEST(ArrivalCoverageInAir, HoldsTheNominalShare)
{
    for (const double share : {0.5, 0.75}) {
        const Arrivals arrivals = arrivalsOf(Probe::inAir, share, 0, 1);
        EXPECT_GE(arrivals.shareHeld(), 0.90) << share;
        RecordProperty(share < 0.6 ? "heldAtHalf" : "heldAtThreeQuarters", arrivals.held);
    }
}

/// A cooler that is too weak for its room, which keeps its temperature.
SimulatedCooler weakCooler(Noise& noise)
{
    SimulatedCooler cooler = someCooler(Probe::inBeer, noise);
    cooler.watts = spread(noise, 25.0, 60.0);
    cooler.evaporatorC = spread(noise, -6.0, 4.0);
    cooler.beerWattsPerK = spread(noise, 5.0, 10.0);
    cooler.roomSwingK = 0.0;
    return cooler;
}

/// Of crashes that did not arrive within 150 h, asked after some hours.
Arrivals neverArrived(double hours, std::uint64_t seed)
{
    Noise noise(seed);
    Arrivals counted;
    while (counted.asked < crashesInAll) {
        const SimulatedCooler cooler = weakCooler(noise);
        const CrashPlan plan = someCrashPlan(noise);
        SimulatedCrash crash = simulatedCrash(cooler, plan, noise);
        if (crash.arrivalH >= 0.0)
            continue;
        std::erase_if(crash.readings,
                      [hours](const TemperatureAt& reading) { return reading.hours > hours; });
        counted.add(arrivalForecastOf(questionOf(plan, std::move(crash.readings))), simulatedH);
    }
    return counted;
}

// method.md 8.3 has: after 24 h it said so of 259 of 278 (93 %) and wrongly gave a top to 4, after
// 16 h to 20. How soon it can be said depends on how slowly a setup levels off, and these do so
// slowly: the lower limits are our own.
TEST(ArrivalCoverageNever, SeldomGivesATop)
{
    for (const double hours : {16.0, 24.0}) {
        const Arrivals arrivals = neverArrived(hours, 9);
        const int most = hours < 20.0 ? 300 * 20 / 278 : 300 * 4 / 278;
        EXPECT_LE(arrivals.widths.size(), static_cast<std::size_t>(most)) << hours;
        EXPECT_GE(arrivals.never, hours < 20.0 ? 120 : 200) << hours;
        RecordProperty(hours < 20.0 ? "saidAfter16" : "saidAfter24", arrivals.never);
    }
}

} // namespace
} // namespace holdband::test
