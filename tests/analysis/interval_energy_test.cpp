// The energy of intervals as a register: their edges, gaps and bounds. Section 4 of the method;
// figures by hand.
#include "core/analysis/interval_energy.h"
#include "tests/analysis/builders.h"

#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using namespace analysis;
using testing::ElementsAre;
using testing::IsEmpty;

Instant noDays(Instant at, int)
{
    ADD_FAILURE() << "these intervals are no days";
    return at;
}

std::vector<EnergyInterval> intervals(const Series& energies,
                                      IntervalTime time = IntervalTime::start)
{
    return intervalsOf(energies, time, noDays);
}

/// Hours 0, 1, 2, 4, 5: hour 3 is missing.
Series hourlyWithoutHour3()
{
    return series({{0, 0.1}, {1, 0.2}, {2, 0.3}, {4, 0.4}, {5, 0.5}});
}

MeterCurve curveOf(const Series& energies, std::optional<double> watts = {})
{
    return {registerOf(intervals(energies)),
            watts ? std::optional(Power::watts(*watts)) : std::nullopt};
}

TEST(IntervalEnergy, BeginsOrEndsAtItsTime)
{
    const Series energies = series({{0, 0.1}, {1, 0.2}, {2, 0.3}});
    EXPECT_THAT(intervals(energies), ElementsAre(EnergyInterval{hourSpan(0, 1), 0.1},
                                                 EnergyInterval{hourSpan(1, 2), 0.2},
                                                 EnergyInterval{hourSpan(2, 3), 0.3}));
    EXPECT_THAT(intervals(energies, IntervalTime::end),
                ElementsAre(EnergyInterval{hourSpan(-1, 0), 0.1},
                            EnergyInterval{hourSpan(0, 1), 0.2},
                            EnergyInterval{hourSpan(1, 2), 0.3}));
    EXPECT_THAT(intervals(series({{0, 0.1}})), IsEmpty()) << "no length follows from one reading";
}

TEST(IntervalEnergy, AMissingIntervalIsAGapAndIsNotZero)
{
    const MeterCurve curve = curveOf(hourlyWithoutHour3());
    const EnergyFigure all = curve.over(hourSpan(0, 6));
    EXPECT_THAT(all.metered, ElementsAre(hourSpan(0, 3), hourSpan(4, 6)));
    // 0.1 + 0.2 + 0.3 + 0.4 + 0.5, each rounded to 0.1: ± 5 · 0.05.
    EXPECT_NEAR(all.kwh, 1.5, 1e-9);
    EXPECT_NEAR(all.low, 1.25, 1e-9);
    EXPECT_NEAR(all.high, 1.75, 1e-9);
    EXPECT_FALSE(curve.over(hourSpan(3, 4)).any()) << "nothing is known of the missing hour";
    // Half an hour on each side of it: 0.3/2 + 0.4/2.
    const EnergyFigure around = curve.over(hourSpan(2.5, 4.5));
    EXPECT_NEAR(around.kwh, 0.35, 1e-9);
    EXPECT_NEAR(around.meteredMs(), hourMs, 1e-6);
}

TEST(IntervalEnergy, OfAMissingEndIntervalTheGapLiesBefore)
{
    const MeterCurve curve(registerOf(intervals(hourlyWithoutHour3(), IntervalTime::end)),
                           std::nullopt);
    EXPECT_THAT(curve.over(hourSpan(-1, 6)).metered, ElementsAre(hourSpan(-1, 2), hourSpan(3, 5)));
}

TEST(IntervalEnergy, APartOfAnIntervalMayHaveUsedAllOfItOrNothing)
{
    // 0:30 to 1:30: half of 0.1 and of 0.2. At most 0.1 + 0.2, each up to 0.05 more.
    expectFigure(curveOf(hourlyWithoutHour3()).over(hourSpan(0.5, 1.5)), 0.15, 0.0, 0.4);
    // 250 W: half an hour takes at most 0.125, so the second interval's half used at least
    // 0.2 − 0.125 less the rounding of both, 0.1.
    const EnergyFigure rated =
        curveOf(series({{0, 0.1}, {1, 0.2}, {2, 0.3}}), 250).over(hourSpan(0.5, 1.5));
    EXPECT_NEAR(rated.kwh, 0.15, 1e-9);
    EXPECT_LE(rated.high, 0.1 + 0.125 + 0.1 + 1e-9);
    EXPECT_GE(rated.low, 0.0);
}

TEST(IntervalEnergy, LateLoggersLeaveNoGap)
{
    // Ten minutes, seven seconds late once.
    const double late = 7.0 / 3600.0, step = 1.0 / 6.0;
    const auto found = intervals(series({{0, 1}, {step + late, 2}, {2 * step, 3}, {3 * step, 4}}));
    ASSERT_EQ(found.size(), 4u);
    for (std::size_t i = 1; i < found.size(); ++i)
        EXPECT_EQ(found[i].span.start, found[i - 1].span.end);
    EXPECT_EQ(found.back().span.end - found.back().span.start, toMilliseconds(Hours{step}));
}

TEST(IntervalEnergy, WhatWasLeftOutIsAGap)
{
    Series energies = series({{0, 0.1}, {1, 0.2}, {2.4, 0.3}, {3.4, 0.4}});
    energies.breaks = {2}; // between hour 1 and 2.4
    const auto found = intervals(energies);
    ASSERT_EQ(found.size(), 4u);
    EXPECT_EQ(found[1].span, hourSpan(1, 2));
}

/// Midnights, each a day after the one before; the days may have 23 or 25 h.
std::vector<Instant> midnights(std::initializer_list<double> hoursOfDays)
{
    std::vector<Instant> all{zero};
    for (const double hours : hoursOfDays)
        all.push_back(all.back() + toMilliseconds(Hours{hours}));
    return all;
}

std::vector<EnergyInterval> daily(const std::vector<Instant>& midnights, std::size_t count,
                                  IntervalTime time = IntervalTime::start)
{
    const std::size_t first = time == IntervalTime::start ? 0 : 1;
    Series days;
    for (std::size_t i = 0; i < count; ++i) {
        days.at.push_back(midnights[first + i]);
        days.value.push_back(static_cast<double>(i + 1));
    }
    return intervalsOf(days, time, [&](Instant at, int step) {
        const auto found = std::find(midnights.begin(), midnights.end(), at);
        return *(found + step);
    });
}

TEST(IntervalEnergy, DaysLastFromLocalMidnightToLocalMidnight)
{
    // The last day has 23 h, as where clocks go forward.
    const auto spring = midnights({24, 24, 23});
    const auto found = daily(spring, 3);
    ASSERT_EQ(found.size(), 3u);
    EXPECT_EQ(found[2].span, (Span{spring[2], spring[3]}));
    // The first of those that are stamped at their end has 25 h.
    const auto autumn = midnights({25, 24, 24});
    const auto stamped = daily(autumn, 3, IntervalTime::end);
    ASSERT_EQ(stamped.size(), 3u);
    EXPECT_EQ(stamped[0].span, (Span{autumn[0], autumn[1]}));
}

TEST(IntervalEnergy, ALongDayIsNoGap)
{
    const auto found = daily(midnights({24, 25, 24, 24}), 4);
    ASSERT_EQ(found.size(), 4u);
    EXPECT_NEAR(found[1].span.hours(), 25.0, 1e-9);
    EXPECT_EQ(found[1].span.end, found[2].span.start);
}

TEST(IntervalEnergy, IsRoundedToItsOwnFinestDecimal)
{
    // 60 Wh and 110 Wh come in steps of 10 Wh: ± 5 Wh each.
    const EnergyFigure figure = curveOf(series({{0, 0.06}, {1, 0.11}})).over(hourSpan(0, 2));
    expectFigure(figure, 0.17, 0.16, 0.18);
}

} // namespace
} // namespace holdband::test
