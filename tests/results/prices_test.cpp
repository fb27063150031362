// Prices by local time: windows past midnight, weekdays, and both clock changes.
// tz database: Denver changes on 8 March 2026 at 09:00Z (02:00 → 03:00) and on 1 November 2026 at
// 08:00Z (02:00 → 01:00).
#include "core/results/prices.h"
#include "core/text/times.h"

#include <gtest/gtest.h>

namespace holdband::test {
namespace {

using analysis::PricedSpan;

Zone denver()
{
    const auto zone = Zone::named("America/Denver");
    EXPECT_TRUE(zone);
    return zone.value_or(Zone::utc());
}

Instant utc(const char* text)
{
    const auto at = parseRfc3339(text);
    EXPECT_TRUE(at) << text;
    return at.value_or(Instant{});
}

TariffWindow window(int fromMinute, int toMinute, double price)
{
    TariffWindow result;
    result.fromMinute = fromMinute;
    result.toMinute = toMinute;
    result.pricePerKwh = price;
    return result;
}

/// "04:00Z–08:00Z 0.1" and so on, for one day.
std::vector<std::string> shown(const Tariff& tariff, const char* from, const char* to)
{
    std::vector<std::string> lines;
    const auto clock = [](Instant at) { return rfc3339Utc(at).substr(8, 8); };
    for (const PricedSpan& part : results::pricesOver(tariff, denver(), {utc(from), utc(to)}))
        lines.push_back(clock(part.span.start) + " " + clock(part.span.end) + " " +
                        std::to_string(part.pricePerKwh).substr(0, 4));
    return lines;
}

using Lines = std::vector<std::string>;

TEST(Prices, AFlatPriceIsOneSpanAndNoPriceIsNone)
{
    Tariff flat;
    EXPECT_TRUE(shown(flat, "2026-03-02T00:00:00Z", "2026-03-03T00:00:00Z").empty());
    flat.pricePerKwh = 0.12;
    EXPECT_EQ(shown(flat, "2026-03-02T00:00:00Z", "2026-03-03T00:00:00Z"),
              Lines{"02T00:00 03T00:00 0.12"});
}

TEST(Prices, TimeOutsideAllWindowsWithoutAFlatPriceIsLeftOut)
{
    Tariff tariff;
    tariff.windows = {window(16 * 60, 21 * 60, 0.3)};
    // Monday, 2 March: 16:00 … 21:00 Denver (−07:00).
    EXPECT_EQ(shown(tariff, "2026-03-02T07:00:00Z", "2026-03-03T07:00:00Z"),
              Lines{"02T23:00 03T04:00 0.30"});
}

TEST(Prices, AWindowPastMidnightBelongsToTheDayOnWhichItBegan)
{
    Tariff tariff;
    tariff.pricePerKwh = 0.2;
    tariff.windows = {window(22 * 60, 6 * 60, 0.1)};
    tariff.windows[0].days = {false, false, false, false, false, true, false}; // Saturday
    // Saturday 28 February 22:00 to Sunday 06:00, and no other night.
    EXPECT_EQ(
        shown(tariff, "2026-02-28T07:00:00Z", "2026-03-03T07:00:00Z"),
        (Lines{"28T07:00 01T05:00 0.20", "01T05:00 01T13:00 0.10", "01T13:00 03T07:00 0.20"}));
    // A span that begins in the middle of the night.
    EXPECT_EQ(shown(tariff, "2026-03-01T10:00:00Z", "2026-03-01T14:00:00Z"),
              (Lines{"01T10:00 01T13:00 0.10", "01T13:00 01T14:00 0.20"}));
}

TEST(Prices, TheFirstWindowThatFitsDecides)
{
    Tariff tariff;
    tariff.windows = {window(6 * 60, 8 * 60, 0.3), window(0, 24 * 60, 0.1)};
    EXPECT_EQ(
        shown(tariff, "2026-03-02T07:00:00Z", "2026-03-03T07:00:00Z"),
        (Lines{"02T07:00 02T13:00 0.10", "02T13:00 02T15:00 0.30", "02T15:00 03T07:00 0.10"}));
}

TEST(Prices, AnEdgeInTheSkippedHourIsAtTheChange)
{
    Tariff tariff;
    tariff.pricePerKwh = 0.2;
    tariff.windows = {window(150, 300, 0.1)}; // 02:30 … 05:00
    // The local day has 23 h; the window runs from 03:00 to 05:00 summer time.
    EXPECT_EQ(
        shown(tariff, "2026-03-08T07:00:00Z", "2026-03-09T06:00:00Z"),
        (Lines{"08T07:00 08T09:00 0.20", "08T09:00 08T11:00 0.10", "08T11:00 09T06:00 0.20"}));
}

TEST(Prices, AnEdgeInTheDoubledHourIsAtTheFirstOfTheTwo)
{
    Tariff tariff;
    tariff.pricePerKwh = 0.2;
    tariff.windows = {window(0, 90, 0.1)}; // 00:00 … 01:30
    EXPECT_EQ(shown(tariff, "2026-11-01T06:00:00Z", "2026-11-02T07:00:00Z"),
              (Lines{"01T06:00 01T07:30 0.10", "01T07:30 02T07:00 0.20"}));
}

TEST(Prices, ASpanThatBeginsInTheDoubledHourIsPricedAsTheWholeDayIs)
{
    Tariff tariff;
    tariff.pricePerKwh = 0.2;
    tariff.windows = {window(0, 90, 0.1)};
    // 08:10Z is the second 01:10: the window ended before, at the first 01:30.
    EXPECT_EQ(shown(tariff, "2026-11-01T08:10:00Z", "2026-11-01T20:00:00Z"),
              Lines{"01T08:10 01T20:00 0.20"});
}

} // namespace
} // namespace holdband::test
