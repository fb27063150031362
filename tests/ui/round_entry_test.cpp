#include "ui/rounds/round_entry.h"

#include "core/text/times.h"
#include "ui/rounds/status_text.h"

#include <gtest/gtest.h>

namespace holdband::ui {

namespace {

const Instant noon = instantFromMs(1'772'000'000'000);

results::RoundRow row()
{
    results::RoundRow row;
    row.name = "Loop meter";
    row.lastAt = noon;
    row.last = 58.14;
    row.decimals = 3;
    row.expected = {58.19, 58.34};
    return row;
}

} // namespace

TEST(ParseReading, PreservesTheTypedDecimals)
{
    const auto reading = parseReading(" 58.310 ", noon, " warm ", '.');
    ASSERT_TRUE(reading);
    EXPECT_DOUBLE_EQ(reading->registerReading.kilowattHours(), 58.31);
    EXPECT_EQ(reading->decimals, 3);
    EXPECT_EQ(reading->note, "warm");
    EXPECT_EQ(reading->at, noon);
}

TEST(ParseReading, AcceptsTheCommaWhereItIsUsual)
{
    const auto reading = parseReading("58,31", noon, {}, ',');
    ASSERT_TRUE(reading);
    EXPECT_DOUBLE_EQ(reading->registerReading.kilowattHours(), 58.31);
}

TEST(ParseReading, RefusesTextsThatAreNoRegisterReading)
{
    for (const char* text : {"abc", "5e", "-3", "nan", "inf", "1 2", ""})
        EXPECT_FALSE(parseReading(QString::fromLatin1(text), noon, {}, '.')) << text;
}

TEST(FarOutside, AsksBeyondThreeTimesTheMaximum)
{
    EXPECT_FALSE(farOutside(row(), 58.25));
    EXPECT_FALSE(farOutside(row(), 58.70));
    EXPECT_TRUE(farOutside(row(), 58.75));
    EXPECT_FALSE(farOutside(row(), 58.14)); // no energy used is fine
    results::RoundRow unknown = row();
    unknown.expected.reset();
    EXPECT_FALSE(farOutside(unknown, 900.0));
}

TEST(RoundText, GivesLastExpectedAndRound)
{
    EXPECT_EQ(expectedText(row()), "58.190 – 58.340");
    EXPECT_EQ(lastText(row()), "58.140");
    const Zone zone = *Zone::named("America/Denver");
    const Instant evening = *parseRfc3339("2026-04-06T00:12:00Z");
    results::RoundsSheet sheet;
    sheet.zone = zone;
    sheet.now = evening;
    results::RoundRow read = row();
    read.lastAt = *parseRfc3339("2026-04-05T13:05:00Z");
    EXPECT_EQ(lastTimeText(read, evening, zone), "today 07:05");
    read.lastAt = *parseRfc3339("2026-04-05T00:05:00Z");
    EXPECT_EQ(lastTimeText(read, evening, zone), "yesterday 18:05");
    read.lastAt.reset();
    EXPECT_EQ(lastTimeText(read, evening, zone), "never read");
}

TEST(RoundText, TheTitleSaysWhatIsDueAndWhen)
{
    results::RoundsSheet sheet;
    sheet.zone = *Zone::named("America/Denver");
    sheet.now = *parseRfc3339("2026-04-06T00:12:00Z"); // 18:12 on the 5th
    using State = results::NextRound::State;
    sheet.next = {State::due, {Date(std::chrono::year{2026} / 4 / 5), 1}, sheet.now};
    EXPECT_EQ(roundTitle(sheet), "Evening round, due now · Sunday 5 April, 18:12");
    sheet.now = *parseRfc3339("2026-04-05T19:10:00Z"); // 13:10
    sheet.next.state = State::later;
    sheet.next.opens = *parseRfc3339("2026-04-05T22:00:00Z");
    EXPECT_EQ(roundTitle(sheet), "Next round: evening, from 16:00 · Sunday 5 April, 13:10");
    sheet.next = {State::later,
                  {Date(std::chrono::year{2026} / 4 / 6), 0},
                  *parseRfc3339("2026-04-06T11:00:00Z")};
    EXPECT_EQ(roundTitle(sheet),
              "Next round: morning, tomorrow from 05:00 · Sunday 5 April, 13:10");
    sheet.next.state = State::none;
    EXPECT_EQ(roundTitle(sheet), "No round is due · Sunday 5 April, 13:10");
}

TEST(RoundText, SaysWhatATypedReadingUsed)
{
    const Zone zone = *Zone::named("America/Denver");
    const Instant evening = *parseRfc3339("2026-04-06T00:05:00Z"); // 18:05 on the 5th
    results::RoundRow typed = row();
    typed.at = evening;
    typed.lastAt = *parseRfc3339("2026-04-05T13:05:00Z");
    const UsedFormat format{evening, zone, '.'};
    // 0.17 kWh in 11 h are 15.5 W.
    EXPECT_EQ(usedText(typed, " 58.310 ", format), "0.170 kWh since 07:05, 15 W");
    typed.lastAt = *parseRfc3339("2026-04-05T00:05:00Z");
    EXPECT_EQ(usedText(typed, "58.38", format), "0.240 kWh since yesterday 18:05, 10 W");
    typed.lastAt = *parseRfc3339("2026-03-31T00:05:00Z");
    EXPECT_EQ(usedText(typed, "59.58", format), "1.440 kWh since 30 Mar 18:05, 10 W");
    EXPECT_EQ(usedText(typed, "58.1", format), "") << "below the last reading";
    EXPECT_EQ(usedText(typed, "58.x", format), "");
    EXPECT_EQ(usedText(typed, "", format), "");
    typed.lastAt.reset();
    EXPECT_EQ(usedText(typed, "58.31", format), "") << "never read";
}

TEST(RoundEntry, HandReadingsMayBeBelowZeroAndGravitiesMayNotRise)
{
    const auto cold = parseHandReading("-1,5", Instant{}, " by eye ", ',', ReadingUnit::celsius);
    ASSERT_TRUE(cold);
    EXPECT_EQ(cold->value, -1.5);
    EXPECT_EQ(cold->decimals, 1);
    EXPECT_EQ(cold->note, "by eye");
    EXPECT_FALSE(parseHandReading("cold", Instant{}, "", '.', ReadingUnit::celsius));
    results::RoundRow gravity;
    gravity.kind = results::RoundKind::gravity;
    gravity.expected = {0.990, 1.020};
    EXPECT_FALSE(farOutside(gravity, 1.012));
    EXPECT_TRUE(farOutside(gravity, 1.031));
    results::RoundRow beer;
    beer.kind = results::RoundKind::thermometer;
    beer.expected = {63.0, 69.0};
    EXPECT_FALSE(farOutside(beer, 74.0)); // outside the band, but plausible
    EXPECT_TRUE(farOutside(beer, 86.0));
}

TEST(StatusText, NamesTheNextRoundAndTheMetersOfRunningSetups)
{
    results::RoundsSheet sheet;
    sheet.zone = *Zone::named("America/Denver");
    sheet.now = *parseRfc3339("2026-04-05T18:00:00Z"); // 12:00 local
    results::RoundRow loop = row();
    loop.setup = "Loop";
    loop.lastAt = sheet.now - std::chrono::hours{5};
    results::RoundRow other = row();
    other.name = "Cabinet meter";
    other.setup = "Cabinet";
    sheet.rows = {loop, other};
    sheet.nextDue = *parseRfc3339("2026-04-06T00:00:00Z"); // 18:00 local
    EXPECT_EQ(statusText(sheet, {"Loop"}), "Next round due 18:00 · Loop meter last read 5 h ago");
    sheet.now = *parseRfc3339("2026-04-06T02:00:00Z");     // 20:00 local
    sheet.nextDue = *parseRfc3339("2026-04-06T13:00:00Z"); // 07:00 local
    EXPECT_TRUE(statusText(sheet, {"Loop"}).startsWith("Next round due tomorrow 07:00"));
    EXPECT_EQ(statusText(sheet, {}), "No batch is running, so no round is due.");
}

} // namespace holdband::ui
