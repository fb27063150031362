// The Rounds page: the expected range of the next reading, missed rounds, corrected readings. By
// hand.
#include "core/results/rounds/rounds_sheet.h"
#include "tests/results/described_logbook.h"

namespace holdband::test {
namespace {

using results::RoundCell;
using results::RoundsSheet;

/// An open batch since 1 March 06:00; meter readings, and further keys of the meters.
std::string describedRounds(const std::string& meters, const std::string& readings,
                            const std::string& ended = "")
{
    return R"({"holdband":1,"setups":[{"name":"S"}],"sensors":[{"name":"Beer","reads":"beer"}],
        "meters":[)" +
           meters + R"(],"batches":[{"name":"B","setup":"S","pitched":"2026-03-01 06:00",)" +
           ended + R"("beer_sensor":"Beer","tolerance_c":1,
        "schedule":[{"stage":"Hold","target_c":20}]}],"meter_readings":[)" +
           readings + "]}";
}

const std::string plainMeter = R"({"name":"M","setup":"S","resolution_kwh":0.01})";
/// 0.6 kWh in each of two 12 h: 50 W.
const std::string twoDays = R"({"meter":"M","at":"2026-03-01 07:00","kwh":1.00},
    {"meter":"M","at":"2026-03-01 19:00","kwh":1.60},{"meter":"M","at":"2026-03-02 07:00","kwh":2.20})";

RoundsSheet sheetOf(const std::string& description, const std::string& now)
{
    const DescribedLogbook described;
    const auto logbook = described.load(description, now);
    const auto sheet = results::reviewRounds(*logbook);
    EXPECT_TRUE(sheet) << sheet.error().sentence();
    return sheet.value_or(RoundsSheet{});
}

TEST(RoundsSheet, ExpectsHalfToTwiceOfTheLastThreeDays)
{
    const RoundsSheet sheet = sheetOf(describedRounds(plainMeter, twoDays), "2026-03-02T17:00:00Z");
    ASSERT_EQ(sheet.rows.size(), 2u);
    EXPECT_EQ(sheet.rows[1].kind, results::RoundKind::gravity) << "of the running batch";
    const results::RoundRow& row = sheet.rows[0];
    EXPECT_EQ(row.kind, results::RoundKind::meter);
    EXPECT_EQ(row.decimals, 2);
    EXPECT_DOUBLE_EQ(row.last, 2.2);
    // 50 W for 10 h are 0.5 kWh.
    ASSERT_TRUE(row.expected);
    EXPECT_NEAR(row.expected->first, 2.2 + 0.25, 1e-12);
    EXPECT_NEAR(row.expected->second, 2.2 + 1.0, 1e-12);
    EXPECT_EQ(row.expectedWhy, "The last reading plus half to twice what the last three days' mean "
                               "of 50 W makes of the 10 h since.");
}

TEST(RoundsSheet, GivesTheMeanPowerBetweenTheReadingsOfTheLastWeek)
{
    // The reading of 22 February is older than a week. Then 0.6 kWh in each of two 12 h, 0.3 kWh in
    // 6 h and 0.9 kWh in 6 h.
    const std::string readings = R"({"meter":"M","at":"2026-02-22 15:00","kwh":0.10},)" + twoDays +
                                 R"(,{"meter":"M","at":"2026-03-02 13:00","kwh":2.50},
                                     {"meter":"M","at":"2026-03-02 19:00","kwh":3.40})";
    const RoundsSheet sheet =
        sheetOf(describedRounds(plainMeter, readings), "2026-03-02T20:00:00Z");
    const results::MeterWeek& week = sheet.rows[0].week;
    ASSERT_EQ(week.rates.size(), 4u);
    EXPECT_NEAR(week.rates[0].watts, 50.0, 1e-9);
    EXPECT_NEAR(week.rates[1].watts, 50.0, 1e-9);
    EXPECT_NEAR(week.rates[2].watts, 50.0, 1e-9);
    EXPECT_NEAR(week.rates[3].watts, 150.0, 1e-9);
    EXPECT_NEAR(week.leastWatts, 50.0, 1e-9);
    EXPECT_NEAR(week.mostWatts, 150.0, 1e-9);
    EXPECT_EQ(rfc3339Utc(week.rates[0].from), "2026-03-01T07:00:00.000Z");
    EXPECT_EQ(rfc3339Utc(week.rates[3].to), "2026-03-02T19:00:00.000Z");
    EXPECT_EQ(sheet.rows[0].setupIndex, 0);
    EXPECT_TRUE(sheet.rows[1].week.rates.empty()) << "a gravity";
}

TEST(RoundsSheet, TwoReadingsInAWeekMakeNoCourse)
{
    const std::string two = R"({"meter":"M","at":"2026-02-20 07:00","kwh":0.10},
        {"meter":"M","at":"2026-03-01 07:00","kwh":1.00},
        {"meter":"M","at":"2026-03-01 19:00","kwh":1.60})";
    EXPECT_TRUE(sheetOf(describedRounds(plainMeter, two), "2026-03-02T20:00:00Z")
                    .rows[0]
                    .week.rates.empty());
}

TEST(RoundsSheet, AResetIsNoRate)
{
    const std::string reset = twoDays + R"(,{"meter":"M","at":"2026-03-02 19:00","kwh":0.40,
                                             "event":"reset"},
                                            {"meter":"M","at":"2026-03-03 07:00","kwh":1.00})";
    const RoundsSheet sheet = sheetOf(describedRounds(plainMeter, reset), "2026-03-03T08:00:00Z");
    ASSERT_EQ(sheet.rows[0].week.rates.size(), 3u);
    EXPECT_EQ(rfc3339Utc(sheet.rows[0].week.rates[2].from), "2026-03-02T19:00:00.000Z");
    EXPECT_NEAR(sheet.rows[0].week.rates[2].watts, 50.0, 1e-9);
}

TEST(RoundsSheet, SaysWhatATypedReadingUsedSinceTheLast)
{
    const RoundsSheet sheet = sheetOf(describedRounds(plainMeter, twoDays), "2026-03-02T17:00:00Z");
    const auto used = results::usedSince(sheet.rows[0], 2.6);
    ASSERT_TRUE(used);
    EXPECT_NEAR(used->kwh, 0.4, 1e-9);
    EXPECT_NEAR(used->watts, 40.0, 1e-6); // 0.4 kWh in 10 h
    EXPECT_EQ(results::usedSince(sheet.rows[0], 2.2)->kwh, 0.0);
    EXPECT_FALSE(results::usedSince(sheet.rows[0], 2.1)) << "below the last one";
    EXPECT_FALSE(results::usedSince(sheet.rows[1], 1.01)) << "a gravity";
}

TEST(RoundsSheet, OnlyThermometersAreReadByEye)
{
    std::string text = describedRounds(plainMeter, twoDays);
    const std::string beer = R"({"name":"Beer","reads":"beer"})";
    text.insert(text.find(beer) + beer.size(),
                R"(,{"name":"Glass","reads":"ambient","read_by_hand":true})"
                R"(,{"name":"Hydrometer","reads":"gravity","read_by_hand":true})"
                R"(,{"name":"Plug","reads":"power_w","read_by_hand":true})");
    const RoundsSheet sheet = sheetOf(text, "2026-03-02T17:00:00Z");
    std::vector<std::string> names;
    for (const results::RoundRow& row : sheet.rows)
        names.push_back(row.name);
    EXPECT_EQ(names, (std::vector<std::string>{"M", "Glass", "B"}))
        << "a row named after a hydrometer would save its gravity to a batch of that name";
}

TEST(RoundsSheet, ExpectsNothingAfterOneReadingOrNone)
{
    const std::string one = R"({"meter":"M","at":"2026-03-01 07:00","kwh":1.00})";
    EXPECT_FALSE(
        sheetOf(describedRounds(plainMeter, one), "2026-03-02T17:00:00Z").rows[0].expected);
    const RoundsSheet none = sheetOf(describedRounds(plainMeter, ""), "2026-03-02T17:00:00Z");
    EXPECT_FALSE(none.rows[0].expected);
    EXPECT_FALSE(none.rows[0].lastAt);
    EXPECT_EQ(none.rows[0].decimals, 2) << "by the resolution";
}

TEST(RoundsSheet, ShowsTheLastFourteenRoundsAndWhichWereMissed)
{
    const RoundsSheet sheet = sheetOf(describedRounds(plainMeter, twoDays), "2026-03-03T20:00:00Z");
    ASSERT_EQ(sheet.columns.size(), 14u);
    EXPECT_EQ(sheet.columns.back().slot, 1);
    EXPECT_EQ(isoDate(sheet.columns.back().date), "2026-03-03");
    EXPECT_EQ(isoDate(sheet.columns.front().date), "2026-02-25");
    const std::vector<RoundCell>& cells = sheet.cells[0];
    // 1 March evening, 2 March morning read; 2 March evening and 3 March morning missed; the
    // current round may still come.
    EXPECT_EQ(cells[9].value, 1.6);
    EXPECT_EQ(cells[10].value, 2.2);
    EXPECT_TRUE(cells[11].missed);
    EXPECT_TRUE(cells[12].missed);
    EXPECT_FALSE(cells[13].missed);
    EXPECT_FALSE(cells[7].missed) << "28 February evening: nothing was running";
}

TEST(RoundsSheet, AsksForNoReadingsOfAMeterBeforeItsService)
{
    const std::string late = R"({"name":"M","setup":"S","from":"2026-03-02 12:00"})";
    const std::string reading = R"({"meter":"M","at":"2026-03-02 19:00","kwh":1.00})";
    const RoundsSheet sheet = sheetOf(describedRounds(late, reading), "2026-03-03T08:00:00Z");
    // The last column is 3 March morning; 2 March evening was read.
    EXPECT_EQ(sheet.cells[0][12].value, 1.0);
    EXPECT_FALSE(sheet.cells[0][11].missed) << "2 March morning: before its service";
    EXPECT_FALSE(sheet.cells[0][10].missed);
}

TEST(RoundsSheet, ARemovedMeterStaysInTheGridWhileItsReadingsDo)
{
    const std::string gone = R"({"name":"M","setup":"S","to":"2026-03-02 12:00"})";
    const auto meterRow = [](const RoundsSheet& sheet) {
        return std::find_if(sheet.rows.begin(), sheet.rows.end(), [](const results::RoundRow& row) {
            return row.kind == results::RoundKind::meter;
        });
    };
    const RoundsSheet soon = sheetOf(describedRounds(gone, twoDays), "2026-03-03T08:00:00Z");
    ASSERT_NE(meterRow(soon), soon.rows.end());
    EXPECT_FALSE(meterRow(soon)->toRead);
    const auto& cells = soon.cells[static_cast<std::size_t>(meterRow(soon) - soon.rows.begin())];
    EXPECT_EQ(cells[11].value, 2.2);
    const RoundsSheet later = sheetOf(describedRounds(gone, twoDays), "2026-03-20T08:00:00Z");
    EXPECT_EQ(meterRow(later), later.rows.end());
}

TEST(RoundsSheet, TheGravityOfAnEndedBatchCanStillBeCorrected)
{
    const auto sheet = [](const std::string& now) {
        const std::string description =
            R"({"holdband":1,"setups":[{"name":"S"}],"sensors":[{"name":"Beer","reads":"beer"}],
            "batches":[{"name":"B","setup":"S","pitched":"2026-03-01 06:00",
                "ended":"2026-03-03 06:00","beer_sensor":"Beer","tolerance_c":1,
                "schedule":[{"stage":"Hold","target_c":20}]}],
            "hand_readings":[{"batch":"B","at":"2026-03-02 07:00","value":1.012,"unit":"SG"}]})";
        return sheetOf(description, now);
    };
    const RoundsSheet soon = sheet("2026-03-03T08:00:00Z");
    ASSERT_EQ(soon.rows.size(), 1u);
    EXPECT_FALSE(soon.rows[0].toRead);
    EXPECT_TRUE(std::any_of(soon.cells[0].begin(), soon.cells[0].end(),
                            [](const RoundCell& cell) { return cell.value == 1.012; }));
    EXPECT_TRUE(sheet("2026-04-03T08:00:00Z").rows.empty());
}

TEST(RoundsSheet, ShowsEarlierRounds)
{
    const DescribedLogbook folder;
    const auto logbook = folder.load(describedRounds(plainMeter, twoDays), "2026-03-12T08:00:00Z");
    const auto last = results::reviewRounds(*logbook);
    ASSERT_TRUE(last) << last.error().sentence();
    EXPECT_TRUE(last->hasEarlier);
    EXPECT_EQ(last->columns.front().date, Date(std::chrono::year{2026} / 3 / 5));
    const auto before = results::reviewRounds(*logbook, {std::nullopt, 1});
    ASSERT_TRUE(before) << before.error().sentence();
    EXPECT_FALSE(before->hasEarlier);
    ASSERT_EQ(before->columns.size(), last->columns.size());
    EXPECT_EQ(before->columns.front().date, Date(std::chrono::year{2026} / 2 / 26));
    EXPECT_EQ(before->columns.back().date, Date(std::chrono::year{2026} / 3 / 5));
    std::vector<double> values;
    for (const RoundCell& cell : before->cells[0]) {
        if (cell.value)
            values.push_back(*cell.value);
    }
    EXPECT_EQ(values, (std::vector{1.0, 1.6, 2.2}));
    EXPECT_FALSE(before->cells[0][0].missed) << "nothing ran yet";
    EXPECT_TRUE(before->cells[0].back().missed) << "the morning of the 5th, long over";
}

TEST(RoundsSheet, ALateReadingIsExpectedBetweenItsNeighbours)
{
    const std::string readings = R"({"meter":"M","at":"2026-03-01 07:00","kwh":1.00},
                                    {"meter":"M","at":"2026-03-03 07:00","kwh":4.00})";
    const DescribedLogbook folder;
    const auto logbook = folder.load(describedRounds(plainMeter, readings), "2026-03-03T08:00:00Z");
    const auto sheet = results::reviewRounds(*logbook, {*parseRfc3339("2026-03-02T07:00:00Z")});
    ASSERT_TRUE(sheet) << sheet.error().sentence();
    ASSERT_TRUE(sheet->rows[0].expected);
    EXPECT_EQ(sheet->rows[0].expected->first, 1.0);
    EXPECT_EQ(sheet->rows[0].expected->second, 4.0);
}

TEST(RoundsSheet, TheOpenRoundIsDueUntilItsMetersAreRead)
{
    // The evening window of the default ones is 16:00 to 20:00.
    const std::string before = R"({"meter":"M","at":"2026-03-02 07:00","kwh":1.00})";
    const RoundsSheet open = sheetOf(describedRounds(plainMeter, before), "2026-03-02T19:10:00Z");
    EXPECT_TRUE(open.dueNow);
    const std::string read = before + R"(,{"meter":"M","at":"2026-03-02 19:05","kwh":2.00})";
    const RoundsSheet done = sheetOf(describedRounds(plainMeter, read), "2026-03-02T19:10:00Z");
    EXPECT_FALSE(done.dueNow);
    EXPECT_EQ(rfc3339Utc(done.nextDue), "2026-03-03T07:00:00.000Z");
}

TEST(RoundsSheet, TheNextRoundIsDueInItsWindowAndWhileItIsMissed)
{
    // The windows are 05:00 to 09:00 and 16:00 to 20:00, so the time of the evening's round begins
    // at 12:30.
    using State = results::NextRound::State;
    const std::string read = R"({"meter":"M","at":"2026-03-02 07:00","kwh":1.00})";
    const auto next = [&](const std::string& now, const std::string& readings) {
        return sheetOf(describedRounds(plainMeter, readings), now).next;
    };
    const auto opens = [&](const std::string& now, const std::string& readings) {
        return rfc3339Utc(next(now, readings).opens);
    };
    EXPECT_EQ(next("2026-03-02T13:10:00Z", read).state, State::later);
    EXPECT_EQ(opens("2026-03-02T13:10:00Z", read), "2026-03-02T16:00:00.000Z");
    EXPECT_EQ(next("2026-03-02T13:10:00Z", read).round.slot, 1);
    EXPECT_EQ(next("2026-03-02T16:00:00Z", read).state, State::due);
    EXPECT_EQ(next("2026-03-02T21:00:00Z", read).state, State::due) << "missed today";
    EXPECT_EQ(next("2026-03-02T21:00:00Z", read).round.slot, 1);
    const std::string both = read + R"(,{"meter":"M","at":"2026-03-02 16:30","kwh":2.00})";
    EXPECT_EQ(next("2026-03-02T16:40:00Z", both).state, State::later) << "read before its middle";
    EXPECT_EQ(opens("2026-03-02T16:40:00Z", both), "2026-03-03T05:00:00.000Z");
    EXPECT_EQ(
        rfc3339Utc(sheetOf(describedRounds(plainMeter, both), "2026-03-02T16:40:00Z").nextDue),
        "2026-03-03T07:00:00.000Z");
    const std::string first = R"({"meter":"M","at":"2026-03-01 07:00","kwh":1.00})";
    EXPECT_EQ(next("2026-03-02T11:00:00Z", first).state, State::due) << "the morning was missed";
    EXPECT_EQ(next("2026-03-02T11:00:00Z", first).round.slot, 0);
    const std::string ended = R"("ended":"2026-03-02 06:00",)";
    EXPECT_EQ(sheetOf(describedRounds(plainMeter, first, ended), "2026-03-02T17:00:00Z").next.state,
              State::none);
}

TEST(RoundsSheet, ABatchPitchedAfterTheMorningHasNotMissedIt)
{
    std::string text =
        describedRounds(plainMeter, R"({"meter":"M","at":"2026-02-28 07:00","kwh":1})");
    const std::string pitched = "2026-03-01 06:00";
    text.replace(text.find(pitched), pitched.size(), "2026-03-01 10:00");
    const RoundsSheet sheet = sheetOf(text, "2026-03-01T11:00:00Z");
    EXPECT_EQ(sheet.next.state, results::NextRound::State::later);
    EXPECT_EQ(sheet.next.round.slot, 1);
}

TEST(RoundsSheet, TheCellsOfARowHaveTheDecimalsOfItsFinestReading)
{
    const std::string readings = R"({"meter":"M","at":"2026-03-01 07:00","kwh":34,"decimals":0},
        {"meter":"M","at":"2026-03-01 19:00","kwh":34.1,"decimals":1},
        {"meter":"M","at":"2026-03-02 07:00","kwh":34.15,"decimals":2})";
    std::string text = describedRounds(R"({"name":"M","setup":"S"})", readings);
    const std::string beer = R"({"name":"Beer","reads":"beer"})";
    text.insert(text.find(beer) + beer.size(),
                R"(,{"name":"Glass","reads":"ambient","read_by_hand":true})");
    text.insert(text.size() - 1, R"(,"hand_readings":[
        {"sensor":"Glass","at":"2026-03-01 07:00","value":18,"unit":"C","decimals":0},
        {"sensor":"Glass","at":"2026-03-01 19:00","value":18.25,"unit":"C","decimals":2}])");
    const RoundsSheet sheet = sheetOf(text, "2026-03-02T08:00:00Z");
    std::vector<std::pair<int, int>> shown;
    for (const auto& row : {sheet.cells[0], sheet.cells[1]}) {
        for (const RoundCell& cell : row) {
            if (cell.value)
                shown.emplace_back(cell.decimals, cell.storedDecimals);
        }
    }
    EXPECT_EQ(shown, (std::vector<std::pair<int, int>>{{2, 0}, {2, 1}, {2, 2}, {2, 0}, {2, 2}}));
}

TEST(RoundsSheet, ACorrectedCellNamesTheOldValue)
{
    const std::string corrected =
        R"({"meter":"M","at":"2026-03-02 07:00","kwh":2.20,"decimals":2,"was":[
            {"kwh":2.02,"until":"2026-03-02 19:10","why":"digits swapped"},
            {"kwh":2.21,"until":"2026-03-02 19:12"}]})";
    const RoundsSheet sheet =
        sheetOf(describedRounds(plainMeter, corrected), "2026-03-02T20:00:00Z");
    const RoundCell& cell = sheet.cells[0][12];
    EXPECT_EQ(cell.value, 2.2);
    EXPECT_EQ(cell.history, "was 2.02, corrected 2 Mar 19:10: digits swapped; was 2.21, corrected "
                            "2 Mar 19:12");
}

TEST(RoundsSheet, AnInstantBelongsToTheRoundWhoseWindowIsNearest)
{
    using namespace std::chrono_literals;
    const Zone utc = Zone::utc();
    const std::vector<RoundWindow> three{
        {"Early", 360, 480}, {"Noon", 690, 750}, {"Late", 1200, 1320}}; // middles 7, 12, 21 h
    const auto at = [&](std::chrono::minutes minute) {
        return results::roundOf(Instant{std::chrono::sys_days{2026y / 3 / 2}} + minute, utc, three);
    };
    EXPECT_EQ(at(7h).slot, 0);
    EXPECT_EQ(at(9h + 29min).slot, 0);
    EXPECT_EQ(at(9h + 30min).slot, 1);
    EXPECT_EQ(at(16h + 29min).slot, 1);
    EXPECT_EQ(at(16h + 30min).slot, 2);
    // The night is split at 02:00, in the middle between 21:00 and 07:00.
    EXPECT_EQ(at(25h + 59min).slot, 2);
    EXPECT_EQ(isoDate(at(25h + 59min).date), "2026-03-02");
    EXPECT_EQ(at(26h).slot, 0);
    EXPECT_EQ(isoDate(at(26h).date), "2026-03-03");
}

TEST(RoundsSheet, EndsAtTheLastReadingIfNoBatchRuns)
{
    const RoundsSheet sheet =
        sheetOf(describedRounds(plainMeter, twoDays, R"("ended":"2026-03-02 08:00",)"),
                "2026-03-20T20:00:00Z");
    EXPECT_EQ(isoDate(sheet.columns.back().date), "2026-03-02");
    EXPECT_EQ(sheet.columns.back().slot, 0);
    EXPECT_EQ(sheet.cells[0].back().value, 2.2);
}

} // namespace
} // namespace holdband::test
