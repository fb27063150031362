// Complete logs, and the most frequent feature requests about rows and times: day-first dates, two
// date columns, preamble and footer, numbered errors, duplicates, no shift of zone, clock changes.
#include "tests/intake/log_files.h"

#include <rapidcheck/gtest.h>

using namespace holdband;
using holdband::test::has;
using holdband::test::Times;
using holdband::test::timesOf;
using holdband::test::Values;
using namespace std::string_literals;

namespace {

class ReadLog : public test::LogFiles {};

} // namespace

TEST_F(ReadLog, aPlainLog)
{
    const auto log = read("Logged,Beer (°F),Room (°F)\n"
                          "2026-03-07 06:30,66.0,70.25\n"
                          "2026-03-07 06:35,66.5,70\n");
    ASSERT_TRUE(log.has_value()) << log.error().sentence();
    EXPECT_EQ(log->fileName, "log.csv");
    EXPECT_EQ(log->encoding, "UTF-8");
    EXPECT_EQ(log->delimiter, ',');
    EXPECT_EQ(log->decimalSign, '.');
    EXPECT_EQ(log->headerLine, 1);
    EXPECT_EQ(log->timeHeader, "Logged");
    EXPECT_EQ(log->zoneName, "America/New_York");
    EXPECT_EQ(log->rowsRead, 2);
    EXPECT_EQ(log->ignoredColumns, (std::vector<std::string>{"Room (°F)"}));
    EXPECT_EQ(log->rejectedTotal, 0);
    ASSERT_EQ(log->columns.size(), 1u);
    const LogColumn& beer = log->columns[0];
    EXPECT_EQ(beer.name, "Beer");
    EXPECT_EQ(beer.header, "Beer (°F)");
    EXPECT_EQ(beer.unit, ReadingUnit::fahrenheit);
    EXPECT_EQ(beer.unitReason, "the header says °F");
    EXPECT_EQ(timesOf(beer), (Times{"2026-03-07T11:30", "2026-03-07T11:35"}));
    EXPECT_EQ(beer.raw, (Values{66.0, 66.5}));
    EXPECT_EQ(beer.line, (std::vector<std::uint32_t>{2, 3}));
}

TEST_F(ReadLog, hashIsOfTheBytes)
{
    // `printf 'Time,Beer\n2026-03-07 06:30,66\n' | sha256sum`
    EXPECT_EQ(read("Time,Beer\n2026-03-07 06:30,66\n")->sha256,
              "d0922638a2e8271e47b660a89f4cc9917abf833553a42dd435a8f03863044864");
}

TEST_F(ReadLog, dayFirstDates)
{
    const auto log = read("Zeit;Beer (°C)\n07.03.2026 06:30;18,9\n25.03.2026 06:30;19\n");
    ASSERT_TRUE(log.has_value()) << log.error().sentence();
    EXPECT_EQ(log->dateOrder, DateOrder::dayMonthYear);
    EXPECT_EQ(log->timeReason, "day first: 25.03.2026 06:30 occurs in line 3");
    EXPECT_EQ(log->delimiter, ';');
    EXPECT_EQ(log->decimalSign, ',');
    EXPECT_EQ(timesOf(log->columns[0]), (Times{"2026-03-07T11:30", "2026-03-25T10:30"}));
    EXPECT_EQ(log->columns[0].raw, (Values{18.9, 19.0}));
}

TEST_F(ReadLog, usDatesWithAmAndPm)
{
    const auto log = read("Time,Beer\n3/7/2026 11:55 PM,66\n3/14/2026 12:05 AM,67\n");
    EXPECT_EQ(log->dateOrder, DateOrder::monthDayYear);
    EXPECT_EQ(timesOf(log->columns[0]), (Times{"2026-03-08T04:55", "2026-03-14T04:05"}));
}

TEST_F(ReadLog, datesThatFitTwoOrdersAreAsked)
{
    const std::string text = "Time,Beer\n03/04/2026 06:30,66\n03/05/2026 06:30,67\n";
    EXPECT_EQ(problem(text), "log.csv, line 2, column Time: the dates fit more than one order, "
                             "such as \"03/04/2026 06:30\"; say --date-order mdy or dmy.");
    LogRequest specified = request(write(text));
    specified.dateOrder = DateOrder::dayMonthYear;
    EXPECT_EQ(timesOf(readLog(specified)->columns[0]),
              (Times{"2026-04-03T10:30", "2026-05-03T10:30"}));
}

TEST_F(ReadLog, aSetOrderRejectsRowsThatDoNotFit)
{
    LogRequest specified = request(write("Time,Beer\n03/04/2026 06:30,66\n03/25/2026 06:30,67\n"));
    specified.dateOrder = DateOrder::dayMonthYear;
    const auto log = readLog(specified);
    ASSERT_EQ(log->rejected.size(), 1u);
    EXPECT_EQ(log->rejected.at(0),
              (RejectedRow{3, "Time", "03/25/2026 06:30", "is no date with the day first"}));
}

TEST_F(ReadLog, dateAndTimeInTwoColumns)
{
    const std::string text = "Date,Clock,Beer\n2026-03-07,06:30:00,66\n2026-03-07,06:35:00,67\n";
    const auto log = read(text);
    EXPECT_EQ(log->timeHeader, "Date+Clock");
    EXPECT_EQ(timesOf(log->columns[0]), (Times{"2026-03-07T11:30", "2026-03-07T11:35"}));
    LogRequest specified = request(write(text));
    specified.timeColumn = "date+CLOCK";
    EXPECT_EQ(readLog(specified)->columns[0].at, log->columns[0].at);
}

TEST_F(ReadLog, twoTimeColumnsAndOneIsChosen)
{
    const std::string text = "Sent,Logged,Beer\n2026-03-07 07:00,2026-03-07 06:30,66\n";
    EXPECT_EQ(read(text)->timeHeader, "Sent");
    LogRequest specified = request(write(text));
    specified.timeColumn = "Logged";
    EXPECT_EQ(timesOf(readLog(specified)->columns[0]), (Times{"2026-03-07T11:30"}));
}

TEST_F(ReadLog, unixSecondsAndMilliseconds)
{
    EXPECT_EQ(timesOf(read("t,Beer\n1772890200,66\n")->columns[0]), (Times{"2026-03-07T13:30"}));
    const auto log = read("Beer,t\n66,1772890200000\n67,1772890500000\n");
    EXPECT_EQ(timesOf(log->columns[0]), (Times{"2026-03-07T13:30", "2026-03-07T13:35"}));
    EXPECT_EQ(log->zoneName, "");
}

TEST_F(ReadLog, offsetsInTheRowsWinOverTheZone)
{
    const auto log = read("Time,Beer\n2026-03-07T06:30:00-07:00,66\n2026-03-07T13:35:00Z,67\n");
    EXPECT_EQ(timesOf(log->columns[0]), (Times{"2026-03-07T13:30", "2026-03-07T13:35"}));
    EXPECT_EQ(log->zoneName, "");
}

TEST_F(ReadLog, headerThatNamesUtc)
{
    const auto log = read("Time (UTC),Beer\n2026-03-07 13:30,66\n");
    EXPECT_EQ(timesOf(log->columns[0]), (Times{"2026-03-07T13:30"}));
    EXPECT_EQ(log->zoneName, "UTC");
}

TEST_F(ReadLog, preambleAndFooter)
{
    const auto log = read("Made-up export\n"
                          "Started,2026-03-07 06:00,every,5 min\n"
                          "\n"
                          "Time,Beer (F)\n"
                          "2026-03-07 06:30,66\n"
                          "\n"
                          "2026-03-07 06:35,67\n"
                          "End of log\n");
    ASSERT_TRUE(log.has_value()) << log.error().sentence();
    EXPECT_EQ(log->headerLine, 4);
    EXPECT_EQ(log->rowsRead, 3);
    EXPECT_EQ(log->columns[0].line, (std::vector<std::uint32_t>{5, 7}));
    EXPECT_EQ(log->rejected,
              (std::vector<RejectedRow>{{8, "", "End of log", "has 1 field, the header has 2"}}));
}

TEST_F(ReadLog, whatSpreadsheetsAdd)
{
    const auto log = read("sep=;\r\n\"Time\";\"Beer (°F)\";\"Note\";\r\n"
                          "\"2026-03-07 06:30\";\"66,5\";\"a; \"\"b\"\"\";\r\n;;;\r\n"
                          "\"2026-03-07 06:35\";\"67,0\";;\r\n");
    ASSERT_TRUE(log.has_value()) << log.error().sentence();
    EXPECT_EQ(log->headerLine, 2);
    EXPECT_EQ(log->rowsRead, 2);
    EXPECT_EQ(log->columns[0].raw, (Values{66.5, 67}));
    EXPECT_EQ(log->columns[0].line, (std::vector<std::uint32_t>{3, 5}));
    EXPECT_EQ(log->ignoredColumns, (std::vector<std::string>{"Note"}));
}

TEST_F(ReadLog, aNamelessFirstColumnMayBeTheTime)
{
    const auto log = read(",Beer (F)\n2026-03-07 06:30,66\n2026-03-07 06:35,67\n");
    ASSERT_TRUE(log.has_value()) << log.error().sentence();
    EXPECT_EQ(log->timeHeader, "");
    EXPECT_EQ(log->columns[0].raw, (Values{66, 67}));
}

TEST_F(ReadLog, decimalCommaInACommaLogIsRejectedAndNotShifted)
{
    LogRequest two = request(write("Time,Beer (C),Room (C)\n2026-03-07 06:30,18,9,20,1\n"
                                   "2026-03-07 06:35,18.9,20\n"));
    two.wanted.push_back({"Room", SeriesKind::temperature, {}, {}});
    const auto log = readLog(two);
    ASSERT_TRUE(log.has_value()) << log.error().sentence();
    EXPECT_EQ(log->columns[0].raw, (Values{18.9}));
    EXPECT_EQ(log->rejected.at(0).reason, "has 5 fields, the header has 3");
}

TEST_F(ReadLog, firstRowsMayBeBroken)
{
    LogRequest specified = request(write("Time,Beer\nnever,66\n2026-03-07 06:35,67\n"));
    specified.timeColumn = "Time";
    const auto log = readLog(specified);
    ASSERT_TRUE(log.has_value()) << log.error().sentence();
    EXPECT_EQ(log->rejected, (std::vector<RejectedRow>{{2, "Time", "never", "is not a time"}}));
}

TEST_F(ReadLog, badValuesAreRejectedAndTheRestOfTheRowIsStored)
{
    LogRequest two = request(write("Time,Beer,Room\n"
                                   "2026-03-07 06:30,66,70\n"
                                   "2026-03-07 06:35,oops,71\n"
                                   "2026-03-07 06:40,\"a\nb\",72\n"
                                   "2026-03-07 06:45,1e400,inf\n"
                                   "yesterday,66,70\n"));
    two.wanted.push_back({"Room", SeriesKind::temperature, {}, {}});
    const auto log = readLog(two);
    ASSERT_TRUE(log.has_value()) << log.error().sentence();
    const std::string no = "is not a number";
    EXPECT_EQ(log->rejected, (std::vector<RejectedRow>{{3, "Beer", "oops", no},
                                                       {4, "Beer", "a b", no},
                                                       {6, "Beer", "1e400", no},
                                                       {6, "Room", "inf", no},
                                                       {7, "Time", "yesterday", "is not a time"}}));
    EXPECT_EQ(log->columns[0].raw, (Values{66}));
    EXPECT_EQ(log->columns[1].raw, (Values{70, 71, 72}));
}

TEST_F(ReadLog, missingValuesAreNoRejects)
{
    const auto log = read("Time,Beer\n2026-03-07 06:30,66\n2026-03-07 06:31,\n"
                          "2026-03-07 06:32,-\n2026-03-07 06:33,--\n2026-03-07 06:34,NA\n"
                          "2026-03-07 06:35,NaN\n2026-03-07 06:36,null\n2026-03-07 06:37, 67 \n");
    EXPECT_EQ(log->rejectedTotal, 0);
    EXPECT_EQ(log->rowsRead, 8);
    EXPECT_EQ(log->columns[0].raw, (Values{66, 67}));
}

TEST_F(ReadLog, repeatsAndConflicts)
{
    const auto log = read("Time,Beer\n2026-03-07 06:30,66.0\n2026-03-07 06:35,67\n"
                          "2026-03-07 06:30,66\n2026-03-07 06:35,68\n");
    EXPECT_EQ(log->columns[0].raw, (Values{66, 67}));
    EXPECT_EQ(log->columns[0].duplicates, 1);
    ASSERT_EQ(log->columns[0].conflicts.size(), 1u);
    EXPECT_EQ(log->columns[0].conflicts.at(0),
              (ConflictingRow{5, log->columns[0].at[1], 67.0, 68.0}));
    EXPECT_EQ(log->rejectedTotal, 0);
}

TEST_F(ReadLog, equalValuesAtOtherTimesAreNoRepeats)
{
    const auto log = read("Time,Beer\n2026-03-07 06:30:00,66\n2026-03-07 06:30:01,66\n"
                          "2026-03-07 06:30:01.500,66\n");
    EXPECT_EQ(log->columns[0].raw.size(), 3u);
    EXPECT_EQ(log->columns[0].duplicates, 0);
}

TEST_F(ReadLog, rowsInReverseOrder)
{
    const auto log = read("Time,Beer\n2026-03-07 06:40,68\n2026-03-07 06:35,67\n"
                          "2026-03-07 06:30,66\n");
    EXPECT_EQ(log->columns[0].raw, (Values{66, 67, 68}));
    EXPECT_EQ(log->columns[0].line, (std::vector<std::uint32_t>{4, 3, 2}));
}

TEST_F(ReadLog, missingHourIsRejectedWithItsRow)
{
    const auto log = read("Time,Beer\n2026-03-08 01:30,66\n2026-03-08 02:30,67\n"
                          "2026-03-08 03:30,68\n");
    ASSERT_EQ(log->rejected.size(), 1u);
    EXPECT_EQ(log->rejected.at(0).line, 3);
    EXPECT_EQ(log->rejected.at(0).text, "2026-03-08 02:30");
    EXPECT_TRUE(has(log->rejected.at(0).reason, "does not exist in America/New_York"));
    EXPECT_EQ(timesOf(log->columns[0]), (Times{"2026-03-08T06:30", "2026-03-08T07:30"}));
}

TEST_F(ReadLog, doubledHourByTheOrderOfTheRows)
{
    const auto log = read("Time,Beer\n2026-11-01 00:30,66\n2026-11-01 01:00,67\n"
                          "2026-11-01 01:30,68\n2026-11-01 01:00,69\n2026-11-01 01:30,70\n"
                          "2026-11-01 02:00,71\n");
    ASSERT_TRUE(log.has_value()) << log.error().sentence();
    // check-values: 01:30 is 1793511000 (05:30Z) or 1793514600 (06:30Z).
    EXPECT_EQ(timesOf(log->columns[0]),
              (Times{"2026-11-01T04:30", "2026-11-01T05:00", "2026-11-01T05:30", "2026-11-01T06:00",
                     "2026-11-01T06:30", "2026-11-01T07:00"}));
    EXPECT_EQ(log->columns[0].raw, (Values{66, 67, 68, 69, 70, 71}));
    EXPECT_EQ(log->warnings.size(), 1u);
}

TEST_F(ReadLog, doubledHourNotShownByTheRowsIsAsked)
{
    const std::string sentence =
        problem("Time,Beer\n2026-11-01 00:30,66\n2026-11-01 01:30,67\n2026-11-01 02:30,68\n");
    EXPECT_TRUE(has(sentence, "log.csv, line 3: 01:30 on 1 Nov 2026 exists twice")) << sentence;
    EXPECT_TRUE(has(sentence, "--zone -04:00 or --zone -05:00")) << sentence;
}

TEST_F(ReadLog, fixedOffsetIsTheRemedy)
{
    LogRequest specified = request(write("Time,Beer\n2026-11-01 01:30,67\n2026-03-08 02:30,68\n"));
    specified.zone = *Zone::named("-05:00");
    EXPECT_EQ(timesOf(readLog(specified)->columns[0]),
              (Times{"2026-03-08T07:30", "2026-11-01T06:30"}));
}
