#include "core/text/times.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

using namespace holdband;

namespace {

const Zone& denver()
{
    static const Zone zone = *Zone::named("America/Denver");
    return zone;
}

const Zone& newYork()
{
    static const Zone zone = *Zone::named("America/New_York");
    return zone;
}

} // namespace

TEST(Rfc3339, examplesOfSection58)
{
    // RFC 3339 §5.8; the seconds since 1970 are computed from them (check-values, Time).
    EXPECT_EQ(toMs(*parseRfc3339("1985-04-12T23:20:50.52Z")), 482196050520);
    EXPECT_EQ(toMs(*parseRfc3339("1996-12-19T16:39:57-08:00")), 851042397000);
    EXPECT_EQ(toMs(*parseRfc3339("1937-01-01T12:00:27.87+00:20")), -1041337172130);
}

TEST(Rfc3339, leapSecondOfSection58)
{
    // RFC 3339 §5.8: 1990-12-31T23:59:60Z, and the same by -08:00.
    const Instant newYear = *parseRfc3339("1991-01-01T00:00:00Z");
    EXPECT_EQ(*parseRfc3339("1990-12-31T23:59:60Z"), newYear);
    EXPECT_EQ(*parseRfc3339("1990-12-31T15:59:60-08:00"), newYear);
    EXPECT_FALSE(parseRfc3339("1990-12-31T12:30:60Z").has_value());
}

TEST(Rfc3339, refusesTextsThatAreNoTime)
{
    // The first two: check-values, Time.
    for (const char* text :
         {"1985-04-31T00:00:00Z", "2100-02-29T00:00:00Z", "2026-03-07T24:00:00Z",
          "2026-03-07T06:60:00Z", "2026-03-07T06:30:61Z", "2026-13-01T00:00:00Z",
          "2026-03-07T06:30:00", "2026-03-07T06:30Z", "2026-03-07T06:30:00+24:00",
          "2026-03-07T06:30:00.Z", "2026-03-07T06:30:00Zx", "2026-3-7T06:30:00Z", ""})
        EXPECT_FALSE(parseRfc3339(text).has_value()) << text;
    EXPECT_TRUE(parseRfc3339("2000-02-29T00:00:00Z").has_value());
}

TEST(ParseTime, withOffsetOrInTheZone)
{
    const Instant at = *parseRfc3339("2026-03-07T13:30:00Z");
    for (const char* text : {"2026-03-07 06:30", "2026-03-07T06:30:00", "2026-03-07T06:30:00-07:00",
                             "2026-03-07 13:30Z", " 2026-03-07 06:30:00.000 "})
        EXPECT_EQ(parseTime(text, denver()), at) << text;
    EXPECT_EQ(toMs(*parseTime("2026-03-07 06:30:15.250", denver())), toMs(at) + 15250);
    EXPECT_EQ(toMs(*parseTime("2026-03-07 06:30:15.2496", denver())), toMs(at) + 15250);
}

TEST(ParseTime, missingHourIsRefusedWithBothRemedies)
{
    const auto time = parseTime("2026-03-08 02:30", newYork());
    ASSERT_FALSE(time.has_value());
    EXPECT_EQ(time.error().sentence(),
              "02:30 on 8 Mar 2026 does not exist in America/New_York: clocks went forward over "
              "it; write its offset: 2026-03-08T01:30:00-05:00 or 2026-03-08T03:30:00-04:00.");
}

TEST(ParseTime, doubledHourIsRefusedWithBothRemedies)
{
    const auto time = parseTime("2026-11-01 01:30", newYork());
    ASSERT_FALSE(time.has_value());
    EXPECT_EQ(time.error().sentence(),
              "01:30 on 1 Nov 2026 exists twice in America/New_York: clocks went back over it; "
              "write its offset: 2026-11-01T01:30:00-04:00 or 2026-11-01T01:30:00-05:00.");
    EXPECT_EQ(toMs(*parseTime("2026-11-01T01:30:00-05:00", newYork())), 1793514600000);
}

TEST(ParseTime, implausibleYearsAreRefused)
{
    for (const char* text : {"1970-01-01 00:00", "0024-03-07 06:30", "9999-01-01T00:00:00Z",
                             "1989-12-31 23:59", "2101-01-01 00:00"})
        EXPECT_NE(parseTime(text, denver()).error().what.find("is not between"), std::string::npos)
            << text;
    EXPECT_TRUE(parseTime("1990-01-01 00:00", denver()).has_value());
    EXPECT_TRUE(parseTime("2100-12-31 23:59", denver()).has_value());
}

TEST(ParseTime, refusesTheRest)
{
    for (const char* text : {"", "yesterday", "06:30", "2026-03-07", "2026-02-30 06:30",
                             "07.03.2026 06:30", "2026-03-07 6:30"})
        EXPECT_FALSE(parseTime(text, denver()).has_value()) << text;
}

TEST(TypedTime, acceptsTheClockAloneAndAnHourOfOneDigit)
{
    const Zone denver = *Zone::named("America/Denver");
    const Instant now = *parseRfc3339("2026-03-13T00:12:00Z"); // 12 March, 18:12 there
    const auto read = [&](const char* text) { return parseTypedTime(text, denver, now); };
    const Instant seven = *parseRfc3339("2026-03-12T13:05:00Z");
    for (const char* text : {"7:05", "07:05", " 7:05 ", "2026-03-12 7:05", "2026-03-12 07:05"})
        EXPECT_EQ(read(text), seven) << text;
    for (const char* text : {"25:00", "7:5", "7", "2026-03-12 7", "yesterday", ""})
        EXPECT_FALSE(read(text)) << text;
}

TEST(TimeText, forPeopleAndForPrograms)
{
    const Instant at = *parseRfc3339("2026-03-07T13:30:00Z");
    EXPECT_EQ(rfc3339Utc(at), "2026-03-07T13:30:00.000Z");
    EXPECT_EQ(localIso(at, denver()), "2026-03-07T06:30:00-07:00");
    EXPECT_EQ(localIso(at + Milliseconds{5}, Zone::utc()), "2026-03-07T13:30:00.005+00:00");
    EXPECT_EQ(localText(at, denver()), "7 Mar 2026 06:30");
    EXPECT_EQ(localShortText(at, denver()), "7 Mar 06:30");
    EXPECT_EQ(shortDateText(denver().localDate(at)), "7 Mar");
    EXPECT_EQ(localClockText(at, denver()), "06:30");
    EXPECT_EQ(rfc3339Utc(instantFromMs(-1)), "1969-12-31T23:59:59.999Z");
}

RC_GTEST_PROP(TimeProperty, textsReadBack, ())
{
    const Instant at =
        instantFromMs(*rc::gen::inRange<std::int64_t>(700'000'000'000, 4'000'000'000'000));
    RC_ASSERT(*parseRfc3339(rfc3339Utc(at)) == at);
    RC_ASSERT(*parseTime(localIso(at, denver()), newYork()) == at);
}
