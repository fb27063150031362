#include "core/intake/time/date_order.h"
#include "core/intake/time/stamps.h"
#include "core/text/times.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

using namespace holdband;

namespace {

/// "instant 2026-03-07T13:30:00.000Z", "local …", "loose a/b/c ms", or the reason.
std::string read(std::string_view text)
{
    const auto stamp = scanStamp(text);
    if (!stamp)
        return stamp.error();
    if (stamp->kind == StampKind::loose) {
        const LooseTime loose = unpacked(stamp->value);
        return "loose " + std::to_string(loose.first) + "/" + std::to_string(loose.second) + "/" +
               std::to_string(loose.third) + " " + std::to_string(loose.msOfDay);
    }
    std::string iso = rfc3339Utc(instantFromMs(stamp->value));
    if (stamp->kind == StampKind::instant)
        return "instant " + iso;
    iso.pop_back();
    return "local " + iso;
}

std::string inOrderText(std::string_view text, DateOrder order)
{
    const auto wall = inOrder(unpacked(scanStamp(text)->value), order);
    return wall ? rfc3339Utc(Instant{wall->time_since_epoch()}).substr(0, 16) : "none";
}

Result<DecidedOrder> decide(const std::vector<std::string>& texts)
{
    DateOrderVotes votes;
    std::int64_t line = 2;
    for (const std::string& text : texts)
        votes.take(unpacked(scanStamp(text)->value), line++, text);
    return votes.decide();
}

} // namespace

TEST(Stamps, iso8601)
{
    for (const char* text :
         {"2026-03-07 06:30", "2026-03-07T06:30:00", "2026-03-07 06:30:00.000", "2026/03/07 6:30",
          "2026.3.7 06:30:00", "20260307T0630", "20260307 063000", " 2026-03-07  06:30 ",
          "2026-03-07 6:30 AM", "2026-03-07, 06:30", "2026-03-07t06:30:00,0"})
        EXPECT_EQ(read(text), "local 2026-03-07T06:30:00.000") << text;
    for (const char* text :
         {"2026-03-07T06:30:00-07:00", "2026-03-07 13:30Z", "2026-03-07 13:30:00 UTC",
          "20260307T063000-0700", "2026-03-07 06:30:00 -07", "2026-03-07T13:30:00.0004Z"})
        EXPECT_EQ(read(text), "instant 2026-03-07T13:30:00.000Z") << text;
    EXPECT_EQ(read("2026-03-07 06:30:15.2496"), "local 2026-03-07T06:30:15.250");
}

TEST(Stamps, twelveHourClock)
{
    EXPECT_EQ(read("2026-03-07 12:00 AM"), "local 2026-03-07T00:00:00.000");
    EXPECT_EQ(read("2026-03-07 12:30 pm"), "local 2026-03-07T12:30:00.000");
    EXPECT_EQ(read("2026-03-07 1:05:09 p.m."), "local 2026-03-07T13:05:09.000");
    EXPECT_EQ(read("2026-03-07 13:00 PM"), "is not a time");
    EXPECT_EQ(read("2026-03-07 0:30 AM"), "is not a time");
}

TEST(Stamps, monthNames)
{
    for (const char* text : {"7 Mar 2026 06:30", "07-Mar-2026 06:30:00", "Mar 7, 2026 6:30 AM",
                             "March 7 2026 06:30", "7-MAR-26 06:30"})
        EXPECT_EQ(read(text), "local 2026-03-07T06:30:00.000") << text;
    EXPECT_EQ(read("7 Marz 2026 06:30"), "is not a time");
}

TEST(Stamps, unixTime)
{
    EXPECT_EQ(read("1772890200"), "instant 2026-03-07T13:30:00.000Z");
    EXPECT_EQ(read("1772890200.25"), "instant 2026-03-07T13:30:00.250Z");
    EXPECT_EQ(read("1772890200123"), "instant 2026-03-07T13:30:00.123Z");
    for (const char* text : {"0", "12", "-1772890200", "99999999999", "66.5"})
        EXPECT_EQ(read(text), "as Unix time is not between 1990 and 2100") << text;
}

TEST(Stamps, openOrders)
{
    EXPECT_EQ(read("03/04/2026 06:30"), "loose 3/4/2026 23400000");
    EXPECT_EQ(inOrderText("03/04/2026 06:30", DateOrder::monthDayYear), "2026-03-04T06:30");
    EXPECT_EQ(inOrderText("03/04/2026 06:30", DateOrder::dayMonthYear), "2026-04-03T06:30");
    EXPECT_EQ(inOrderText("03/04/2026 06:30", DateOrder::yearMonthDay), "none");
    EXPECT_EQ(inOrderText("25.03.2026 06:30", DateOrder::monthDayYear), "none");
}

TEST(Stamps, twoDigitYearsAreOfThisCentury)
{
    EXPECT_EQ(inOrderText("3/4/26 6:30 PM", DateOrder::monthDayYear), "2026-03-04T18:30");
    EXPECT_EQ(inOrderText("3/4/99 06:30", DateOrder::monthDayYear), "2099-03-04T06:30");
    EXPECT_EQ(inOrderText("26-03-07 06:30", DateOrder::yearMonthDay), "2026-03-07T06:30");
    EXPECT_EQ(inOrderText("3/4/05 06:30", DateOrder::yearMonthDay), "none");
}

TEST(Stamps, implausibleYears)
{
    // ugly.md: years 24, 1970, 9999.
    for (const char* text : {"0024-03-07 06:30", "1970-01-01 00:00:00", "9999-12-31T23:59:59Z",
                             "01/01/1970 00:00", "1989-12-31 23:59"})
        EXPECT_EQ(read(text), "its year is not between 1990 and 2100") << text;
    EXPECT_EQ(read("2100-12-31 23:59"), "local 2100-12-31T23:59:00.000");
    EXPECT_EQ(read("24-03-07"), "has a date but no time of day");
}

TEST(Stamps, textsThatAreNoTime)
{
    for (const char* text :
         {"never", "06:30", "2026-03-07 24:00", "2026-03-07 06:60", "2026-03-07 06:30:60",
          "2026-03-07 06:30 MST", "2026-03-07 6", "2026-03-07 06:30+25:00", "2026-03-07 06:30:00x",
          "2026-03-07-06:30", "1/2/3/4 06:30", "2026-03/07 06:30", "\xFF\xFE"})
        EXPECT_EQ(read(text), "is not a time") << text;
    EXPECT_EQ(read(""), "is missing");
    EXPECT_EQ(read("1985-04-31 00:00"), "its year is not between 1990 and 2100");
    // RFC 3339 §5.7: days beyond the month's length; 2100 is no leap year.
    EXPECT_EQ(read("2026-04-31 00:00"), "is no date of the calendar");
    EXPECT_EQ(read("2100-02-29T00:00:00Z"), "is no date of the calendar");
    EXPECT_EQ(read("45/99/2026 00:00"), "is no date of the calendar");
}

TEST(DateOrderVotes, oneRowDecidesForAll)
{
    const auto day = decide({"03.04.2026 06:30", "25.03.2026 06:30", "01.02.2026 06:30"});
    EXPECT_EQ(day->order, DateOrder::dayMonthYear);
    EXPECT_EQ(day->reason, "day first: 25.03.2026 06:30 occurs in line 3");
    const auto month = decide({"03/04/2026 06:30", "03/25/2026 06:30"});
    EXPECT_EQ(month->order, DateOrder::monthDayYear);
    EXPECT_EQ(month->reason, "month first: 03/25/2026 06:30 occurs in line 3");
    EXPECT_EQ(decide({"26-03-30 06:30", "26-03-31 06:30", "99-04-01 06:30"})->order,
              DateOrder::yearMonthDay);
}

TEST(DateOrderVotes, undecidedOrdersAreAskedAbout)
{
    const auto open = decide({"03/03/2026 06:30", "03/04/2026 06:30"});
    ASSERT_FALSE(open.has_value());
    EXPECT_EQ(open.error().sentence(),
              "line 3: the dates fit more than one order, such as \"03/04/2026 06:30\"; say "
              "--date-order mdy or dmy.");
    EXPECT_EQ(decide({"01-02-03 06:30"}).error().remedy, "say --date-order ymd or mdy or dmy");
    EXPECT_EQ(decide({"25-03-26 06:30"}).error().remedy, "say --date-order ymd or dmy");
}

TEST(DateOrderVotes, contradictingRowsAreNamed)
{
    const auto none = decide({"03/25/2026 06:30", "25/03/2026 06:30"});
    ASSERT_FALSE(none.has_value());
    EXPECT_NE(none.error().what.find("line 3 can't be month first"), std::string::npos);
    EXPECT_NE(none.error().what.find("line 2 can't be day first"), std::string::npos);
}

TEST(DateOrderVotes, ordersThatGiveTheSameTimesNeedNoQuestion)
{
    EXPECT_TRUE(decide({"03/03/2026 06:30", "04/04/2026 06:30"}).has_value());
}

RC_GTEST_PROP(StampProperty, packingPreservesEverything, ())
{
    const LooseTime time{*rc::gen::inRange(0, 100),   *rc::gen::inRange(0, 100),
                         *rc::gen::inRange(0, 10000), *rc::gen::arbitrary<bool>(),
                         *rc::gen::arbitrary<bool>(), *rc::gen::inRange(0, 86'400'000)};
    RC_ASSERT(unpacked(packed(time)) == time);
}

RC_GTEST_PROP(StampProperty, anyBytesAreATimeOrAReason, (const std::string& text))
{
    const auto stamp = scanStamp(text);
    RC_ASSERT(stamp.has_value() || std::string_view(stamp.error()).size() > 5);
}
