// Properties of energies and shares, whatever the registers.
#include "tests/properties/random_runs.h"

#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace holdband::test {
namespace {

using namespace analysis;

SetupEnergy randomSetup()
{
    std::vector<EnergySource> sources{{"First", randomCurve(true), {}, {}, {}}};
    if (below(3) == 0) {
        sources.push_back({"Second", randomCurve(true), {}, {}, 0.01});
        if (below(2) == 0)
            sources.back().from = minutesFromZero(between(-300, 900));
    }
    return SetupEnergy(std::move(sources));
}

RC_GTEST_PROP(EnergyProperties, TheEstimateIsWithinItsBounds, ())
{
    const EnergyFigure figure = randomSetup().over(randomSpan());
    RC_ASSERT(figure.low >= 0.0);
    RC_ASSERT(figure.low <= figure.kwh + tiny);
    RC_ASSERT(figure.kwh <= figure.high + tiny);
}

RC_GTEST_PROP(EnergyProperties, SplittingASpanAddsUp, ())
{
    const SetupEnergy setup = randomSetup();
    const Span span = randomSpan();
    const Instant cut = span.start + (span.end - span.start) / between(2, 5);
    const EnergyFigure whole = setup.over(span);
    EnergyFigure parts = setup.over({span.start, cut});
    parts.append(setup.over({cut, span.end}));
    RC_ASSERT(std::abs(whole.kwh - parts.kwh) < tiny);
    RC_ASSERT(whole.metered == parts.metered);
    // The bounds of a total are never wider than those of its parts together.
    RC_ASSERT(whole.low + tiny >= parts.low);
    RC_ASSERT(whole.high <= parts.high + tiny);
}

std::vector<ConcurrentBatch> randomConcurrentBatches()
{
    std::vector<ConcurrentBatch> concurrentBatches(static_cast<std::size_t>(between(1, 4)));
    for (ConcurrentBatch& concurrent : concurrentBatches)
        concurrent = {randomSpan(), between(1, 4) * 10.0};
    return concurrentBatches;
}

RC_GTEST_PROP(ShareProperties, SharesAndIdleAddUpToTheMeter, ())
{
    const SetupEnergy setup = randomSetup();
    const std::vector<ConcurrentBatch> concurrentBatches = randomConcurrentBatches();
    const Span span = randomSpan();
    double sum = 0.0;
    double time = 0.0;
    for (std::size_t i = 0; i < concurrentBatches.size(); ++i) {
        const auto shares = sharesOf(concurrentBatches, i);
        sum += shareOver(setup, shares, span).kwh;
        for (const WeightedSpan& share : shares)
            time += share.weight * intersection(share.span, span).hours();
    }
    for (const Span& idle : idleSpans(concurrentBatches, span)) {
        sum += setup.over(idle).kwh;
        time += idle.hours();
    }
    RC_ASSERT(std::abs(sum - setup.over(span).kwh) < 1e-8);
    RC_ASSERT(std::abs(time - span.hours()) < 1e-8);
}

RC_GTEST_PROP(MeterProperties, RatedPowerOnlyTightens, ())
{
    MeterRegister meter;
    meter.readings = randomReadings(false);
    const Span span = randomSpan();
    const EnergyFigure plain = MeterCurve(meter, {}).over(span);
    const EnergyFigure rated = MeterCurve(meter, Power::watts(between(50, 900))).over(span);
    RC_ASSERT(plain.kwh == rated.kwh);
    RC_ASSERT(plain.low <= rated.low + tiny);
    RC_ASSERT(rated.high <= plain.high + tiny);
}

RC_GTEST_PROP(MeterProperties, BoundsContainTheEnergyOfAnyLoadWithinItsPower, ())
{
    // A load that is on or off, 600 W; the register is read to 0.01 with correct rounding.
    std::vector<double> truth{0.0};
    for (int minute = 0; minute < 1200; ++minute)
        truth.push_back(truth.back() + (below(2) == 0 ? 0.01 : 0.0));
    MeterRegister meter;
    for (int minute = 0; minute <= 1200; minute += between(60, 400)) {
        const double shown = std::round(truth[static_cast<std::size_t>(minute)] * 100.0) / 100.0;
        meter.readings.push_back(
            {minutesFromZero(minute), Energy::kilowattHours(shown), 2, {}, {}});
    }
    RC_PRE(meter.readings.size() > 1);
    const int last = static_cast<int>((meter.readings.back().at - zero) / std::chrono::minutes{1});
    const int from = between(0, last - 1);
    const int to = between(from + 1, last);
    const EnergyFigure figure =
        MeterCurve(meter, Power::watts(600)).over({minutesFromZero(from), minutesFromZero(to)});
    const double used = truth[static_cast<std::size_t>(to)] - truth[static_cast<std::size_t>(from)];
    RC_ASSERT(figure.low <= used + tiny);
    RC_ASSERT(used <= figure.high + tiny);
}

RC_GTEST_PROP(MeterProperties, BoundsWithDoubtContainThoseWithout, ())
{
    MeterRegister meter;
    meter.readings = randomReadings(below(2) == 0);
    const std::optional<Power> power = randomPower();
    const Span span = randomSpan();
    const MeterCurve sure(meter, power);
    for (MeterReading& reading : meter.readings)
        reading.timeDoubt = std::chrono::minutes{between(0, 40)};
    const MeterCurve doubted(meter, power);
    RC_ASSERT(doubted.over(span).kwh == sure.over(span).kwh);
    // A pair that refutes the rated power may not do so within its doubt, and that tightens.
    if (sure.pairsAboveRatedPower() > 0)
        return;
    RC_ASSERT(doubted.over(span).low <= sure.over(span).low + tiny);
    RC_ASSERT(sure.over(span).high <= doubted.over(span).high + tiny);
}

RC_GTEST_PROP(MeterProperties, BoundsContainTheEnergyOfAnyLoadReadAWhileBeforeOrAfter, ())
{
    // As above, and each reading was made up to 20 min before or after the time that is written.
    std::vector<double> truth{0.0};
    for (int minute = 0; minute < 1400; ++minute)
        truth.push_back(truth.back() + (below(3) == 0 ? 0.01 : 0.0));
    MeterRegister meter;
    for (int minute = 40; minute <= 1200; minute += between(60, 400)) {
        const int doubt = between(0, 20);
        const int truly = minute + between(-doubt, doubt);
        const double shown = std::round(truth[static_cast<std::size_t>(truly)] * 100.0) / 100.0;
        meter.readings.push_back(
            {minutesFromZero(minute), Energy::kilowattHours(shown), 2, {}, {}});
        meter.readings.back().timeDoubt = std::chrono::minutes{doubt};
    }
    RC_PRE(meter.readings.size() > 1);
    // Not an edge at or near the first and the last reading: those mean the moment of the reading.
    const auto minuteOf = [](Instant at) {
        return static_cast<int>((at - zero) / std::chrono::minutes{1});
    };
    const int first = minuteOf(meter.readings.front().at) + 21;
    const int last = minuteOf(meter.readings.back().at) - 21;
    RC_PRE(first < last);
    const int from = between(first, last - 1);
    const int to = between(from + 1, last);
    for (const MeterReading& reading : meter.readings)
        RC_PRE(minuteOf(reading.at) != from && minuteOf(reading.at) != to);
    const std::optional<Power> power =
        below(2) == 0 ? std::optional(Power::watts(600)) : std::nullopt;
    const EnergyFigure figure =
        MeterCurve(meter, power).over({minutesFromZero(from), minutesFromZero(to)});
    const double used = truth[static_cast<std::size_t>(to)] - truth[static_cast<std::size_t>(from)];
    RC_ASSERT(figure.low <= used + tiny);
    RC_ASSERT(used <= figure.high + tiny);
}

} // namespace
} // namespace holdband::test
