// The resolver. Changes of US clocks from the tz database (2026: New York Mar 8 07:00Z and
// Nov 1 06:00Z, Denver 09:00Z / 08:00Z, Phoenix none). Only US zones: others differ by release.
#include "core/text/zone.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

using namespace holdband;
using namespace std::chrono;

namespace {

Zone zoneOf(const char* name)
{
    const auto zone = Zone::named(name);
    EXPECT_TRUE(zone.has_value()) << name;
    return *zone;
}

LocalTime wall(int y, unsigned m, unsigned d, int h, int min)
{
    return local_days{year{y} / static_cast<int>(m) / static_cast<int>(d)} + hours{h} +
           minutes{min};
}

Instant utc(int y, unsigned m, unsigned d, int h, int min = 0)
{
    return Instant{wall(y, m, d, h, min).time_since_epoch()};
}

} // namespace

TEST(Zone, defaultIsUtc)
{
    EXPECT_EQ(Zone().name(), "UTC");
    EXPECT_EQ(Zone().offsetAt(utc(2026, 7, 1, 0)), Milliseconds{0});
}

TEST(Zone, changesOf2026)
{
    const Zone newYork = zoneOf("America/New_York");
    const Zone denver = zoneOf("America/Denver");
    const Milliseconds ms{1};
    EXPECT_EQ(newYork.offsetAt(utc(2026, 3, 8, 7) - ms), hours{-5});
    EXPECT_EQ(newYork.offsetAt(utc(2026, 3, 8, 7)), hours{-4});
    EXPECT_EQ(newYork.offsetAt(utc(2026, 11, 1, 6) - ms), hours{-4});
    EXPECT_EQ(newYork.offsetAt(utc(2026, 11, 1, 6)), hours{-5});
    EXPECT_EQ(denver.offsetAt(utc(2026, 3, 8, 9) - ms), hours{-7});
    EXPECT_EQ(denver.offsetAt(utc(2026, 3, 8, 9)), hours{-6});
    EXPECT_EQ(denver.offsetAt(utc(2026, 11, 1, 8) - ms), hours{-6});
    EXPECT_EQ(denver.offsetAt(utc(2026, 11, 1, 8)), hours{-7});
}

TEST(Zone, phoenixNeverChanges)
{
    const Zone phoenix = zoneOf("America/Phoenix");
    for (int month = 1; month <= 12; ++month)
        EXPECT_EQ(phoenix.offsetAt(utc(2026, static_cast<unsigned>(month), 15, 0)), hours{-7});
}

TEST(Zone, doubledHourHasTwoInstants)
{
    // check-values: 2026-11-01 01:30 New York is 1793511000 or 1793514600.
    const Resolved both = zoneOf("America/New_York").resolve(wall(2026, 11, 1, 1, 30));
    EXPECT_EQ(both.kind, LocalKind::doubled);
    EXPECT_EQ(both.one(), std::nullopt);
    EXPECT_EQ(toMs(both.earlier), 1793511000000);
    EXPECT_EQ(toMs(both.later), 1793514600000);
}

TEST(Zone, doubledHourEdges)
{
    const Zone zone = zoneOf("America/New_York");
    EXPECT_EQ(zone.resolve(wall(2026, 11, 1, 0, 59)).kind, LocalKind::unique);
    EXPECT_EQ(zone.resolve(wall(2026, 11, 1, 1, 0)).kind, LocalKind::doubled);
    EXPECT_EQ(zone.resolve(wall(2026, 11, 1, 1, 59)).kind, LocalKind::doubled);
    EXPECT_EQ(zone.resolve(wall(2026, 11, 1, 2, 0)).one(), utc(2026, 11, 1, 7));
}

TEST(Zone, missingHour)
{
    const Zone zone = zoneOf("America/New_York");
    const Resolved gap = zone.resolve(wall(2026, 3, 8, 2, 30));
    EXPECT_EQ(gap.kind, LocalKind::missing);
    EXPECT_EQ(gap.one(), std::nullopt);
    EXPECT_EQ(gap.change, utc(2026, 3, 8, 7));
    EXPECT_EQ(gap.earlier, utc(2026, 3, 8, 6, 30));
    EXPECT_EQ(gap.later, utc(2026, 3, 8, 7, 30));
    EXPECT_EQ(zone.resolve(wall(2026, 3, 8, 1, 59)).one(), utc(2026, 3, 8, 6, 59));
    EXPECT_EQ(zone.resolve(wall(2026, 3, 8, 3, 0)).one(), utc(2026, 3, 8, 7));
}

TEST(Zone, dayLengths)
{
    // check-values: New York Mar 8 has 23 h, Nov 1 25 h.
    const Zone zone = zoneOf("America/New_York");
    const auto length = [&](Date date) {
        return zone.startOfDay(Date{local_days{date} + days{1}}) - zone.startOfDay(date);
    };
    EXPECT_EQ(length(2026y / 3 / 8), hours{23});
    EXPECT_EQ(length(2026y / 11 / 1), hours{25});
    EXPECT_EQ(length(2026y / 6 / 1), hours{24});
}

TEST(Zone, roundFromEveningToMorning)
{
    // check-values: a round from 20:00 to 08:00 is 11 h (Mar 7–8) or 13 h (Oct 31–Nov 1).
    const Zone zone = zoneOf("America/New_York");
    EXPECT_EQ(*zone.resolve(wall(2026, 3, 8, 8, 0)).one() -
                  *zone.resolve(wall(2026, 3, 7, 20, 0)).one(),
              hours{11});
    EXPECT_EQ(*zone.resolve(wall(2026, 11, 1, 8, 0)).one() -
                  *zone.resolve(wall(2026, 10, 31, 20, 0)).one(),
              hours{13});
}

TEST(Zone, localDaysAreClippedAndAdjoin)
{
    const Zone zone = zoneOf("America/New_York");
    const Span span{utc(2026, 3, 7, 20), utc(2026, 3, 9, 12)};
    const auto list = zone.localDays(span);
    ASSERT_EQ(list.size(), 3u);
    EXPECT_EQ(list[0].date, Date{2026y / 3 / 7});
    EXPECT_EQ(list[0].span, (Span{span.start, utc(2026, 3, 8, 5)}));
    EXPECT_EQ(list[1].span, (Span{utc(2026, 3, 8, 5), utc(2026, 3, 9, 4)}));
    EXPECT_EQ(list[2].date, Date{2026y / 3 / 9});
    EXPECT_EQ(list[2].span, (Span{utc(2026, 3, 9, 4), span.end}));
    EXPECT_TRUE(zone.localDays({span.start, span.start}).empty());
}

TEST(Zone, fixedOffsets)
{
    EXPECT_EQ(zoneOf("+02:00").offsetAt(utc(2026, 1, 1, 0)), hours{2});
    EXPECT_EQ(zoneOf("-05:00").offsetAt(utc(2026, 7, 1, 0)), hours{-5});
    EXPECT_EQ(zoneOf("-09:30").offsetAt(utc(2026, 7, 1, 0)), hours{-9} - minutes{30});
    EXPECT_EQ(zoneOf("+02:00").resolve(wall(2026, 3, 29, 2, 30)).one(), utc(2026, 3, 29, 0, 30));
    EXPECT_EQ(zoneOf("UTC").name(), "UTC");
}

TEST(Zone, unknownNameListsSuggestions)
{
    const auto zone = Zone::named("America/Denvre");
    ASSERT_FALSE(zone.has_value());
    EXPECT_NE(zone.error().remedy.find("America/Denver"), std::string::npos);
    for (const char* name : {"", "Denver", "+2", "+25:00", "-07:60", "../etc/passwd"})
        EXPECT_FALSE(Zone::named(name).has_value()) << name;
}

TEST(Zone, rulesApplyInTheFarFuture)
{
    // The US rule (second Sunday of March, first of November) extended by the zone's own rule.
    const Zone denver = zoneOf("America/Denver");
    EXPECT_EQ(denver.offsetAt(utc(2090, 7, 1, 0)), hours{-6});
    EXPECT_EQ(denver.offsetAt(utc(2090, 1, 1, 0)), hours{-7});
}

RC_GTEST_PROP(ZoneProperty, everyInstantIsAmongWhatItsLocalTimeResolvesTo, ())
{
    const Zone zone = *Zone::named("America/Denver");
    const Instant at = instantFromMs(*rc::gen::inRange<std::int64_t>(0, 4'102'444'800'000));
    const Resolved back = zone.resolve(zone.toLocal(at));
    RC_ASSERT(back.kind != LocalKind::missing);
    RC_ASSERT(back.earlier == at || back.later == at);
}

RC_GTEST_PROP(ZoneProperty, localDaysTileTheSpan, ())
{
    const Zone zone = *Zone::named("America/New_York");
    const Instant start = instantFromMs(*rc::gen::inRange<std::int64_t>(0, 4'000'000'000'000));
    const Span span{start, start + Milliseconds{*rc::gen::inRange<std::int64_t>(1, 3'000'000'000)}};
    const auto list = zone.localDays(span);
    RC_ASSERT(!list.empty() && list.front().span.start == span.start);
    RC_ASSERT(list.back().span.end == span.end);
    for (std::size_t i = 0; i < list.size(); ++i) {
        RC_ASSERT(zone.localDate(list[i].span.start) == list[i].date);
        if (i > 0)
            RC_ASSERT(list[i - 1].span.end == list[i].span.start);
    }
}
