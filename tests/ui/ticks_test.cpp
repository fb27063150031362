// Ticks over the clock change of 8 March 2026 in Denver: 02:00 MST is 09:00Z, which becomes 03:00
// MDT (tz database).
#include "ui/charts/ticks.h"

#include "core/text/times.h"

#include <gmock/gmock.h>

namespace holdband::ui {

namespace {

Zone denver()
{
    return *Zone::named("America/Denver");
}

Instant utcTime(const char* text)
{
    return *parseRfc3339(text);
}

std::vector<std::string> labels(const std::vector<TimeTick>& ticks)
{
    std::vector<std::string> all;
    for (const TimeTick& tick : ticks)
        all.push_back(tick.label);
    return all;
}

} // namespace

TEST(TimeTicks, TheHourThatIsSkippedHasNone)
{
    const Span night{utcTime("2026-03-08T07:00:00Z"), utcTime("2026-03-08T12:00:00Z")};
    const auto ticks = timeTicks(night, denver(), 6);
    EXPECT_THAT(labels(ticks),
                ::testing::ElementsAre("8 Mar", "01:00", "03:00", "04:00", "05:00", "06:00"));
    EXPECT_EQ(ticks[2].at, utcTime("2026-03-08T09:00:00Z"));
    EXPECT_TRUE(ticks[0].midnight);
    EXPECT_FALSE(ticks[1].midnight);
}

TEST(TimeTicks, TheDoubledHourHasOne)
{
    // 1 November 2026: 02:00 MDT (08:00Z) becomes 01:00 MST.
    const Span night{utcTime("2026-11-01T06:00:00Z"), utcTime("2026-11-01T10:00:00Z")};
    EXPECT_THAT(labels(timeTicks(night, denver(), 6)),
                ::testing::ElementsAre("1 Nov", "01:00", "02:00", "03:00"));
}

TEST(TimeTicks, DaysBeginAtLocalMidnightOnBothSides)
{
    const Span days{utcTime("2026-03-07T00:00:00Z"), utcTime("2026-03-11T00:00:00Z")};
    const auto ticks = timeTicks(days, denver(), 5);
    ASSERT_THAT(labels(ticks), ::testing::ElementsAre("7 Mar", "8 Mar", "9 Mar", "10 Mar"));
    EXPECT_EQ(ticks[1].at, utcTime("2026-03-08T07:00:00Z"));
    EXPECT_EQ(ticks[2].at, utcTime("2026-03-09T06:00:00Z")); // the 8th had 23 hours
}

TEST(TimeTicks, StepsGrowWithTheSpan)
{
    const Span months{utcTime("2026-02-01T00:00:00Z"), utcTime("2026-06-01T00:00:00Z")};
    const auto ticks = timeTicks(months, denver(), 8);
    EXPECT_GE(ticks.size(), 3u);
    EXPECT_LE(ticks.size(), 9u);
    for (const TimeTick& tick : ticks)
        EXPECT_TRUE(tick.midnight);
}

TEST(TimeTicks, WithoutAMidnightTheFirstHasTheDate)
{
    const Span afternoon{utcTime("2026-04-01T19:00:00Z"), utcTime("2026-04-01T21:00:00Z")};
    EXPECT_THAT(labels(timeTicks(afternoon, denver(), 3)),
                ::testing::ElementsAre("1 Apr 13:00", "14:00", "15:00"));
}

TEST(TimeTicks, AnEmptySpanHasNone)
{
    EXPECT_TRUE(timeTicks({}, denver(), 8).empty());
}

TEST(ValueTicks, AreRoundAndInside)
{
    EXPECT_THAT(valueTicks(31.2, 71.9, 6), ::testing::ElementsAre(40.0, 50.0, 60.0, 70.0));
    EXPECT_THAT(valueTicks(-3.4, 3.4, 4), ::testing::ElementsAre(-2.0, 0.0, 2.0));
    EXPECT_TRUE(valueTicks(1.0, 1.0, 4).empty());
}

TEST(AxisTicks, AreAtLeastThreeHoweverLittleSpaceThereIs)
{
    for (const double high : {0.37, 1.0, 1.9, 2.3, 4.9, 9.9, 19.0, 1234.0}) {
        for (const int most : {0, 1, 2, 3, 5, 8})
            EXPECT_GE(axisTicks(0.0, high, most).size(), 3U) << high << ' ' << most;
    }
    EXPECT_THAT(axisTicks(31.2, 71.9, 6), ::testing::ElementsAre(40.0, 50.0, 60.0, 70.0));
}

TEST(ValueTicks, KnowTheirPlaces)
{
    EXPECT_EQ(decimalsOf({0.0, 0.5, 1.0}), 1);
    EXPECT_EQ(decimalsOf({0.0, 0.02, 0.04}), 2);
    EXPECT_EQ(decimalsOf({40.0, 50.0}), 0);
}

} // namespace holdband::ui
