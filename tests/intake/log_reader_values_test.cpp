// Complete logs, and the most frequent feature requests about text and values: byte-order marks and
// delimiters, decimal comma, units converted and named, sentinels, columns, broken text; and
// properties of any log.
#include "tests/intake/log_files.h"

#include <rapidcheck/gtest.h>

using namespace holdband;
using holdband::test::has;
using holdband::test::Times;
using holdband::test::timesOf;
using holdband::test::Values;
using namespace std::string_literals;

namespace {

class LogValues : public test::LogFiles {};

} // namespace

TEST_F(LogValues, marksDelimitersAndLineEnds)
{
    for (const char delimiter : {',', ';', '\t', '|'}) {
        for (const std::string& end : {"\n"s, "\r\n"s, "\r"s}) {
            const std::string d(1, delimiter);
            const auto log = read("\xEF\xBB\xBFTime" + d + "Beer (°F)" + end + "2026-03-07 06:30" +
                                  d + "66.5" + end + "\"2026-03-07 06:35\"" + d + "\"67\"" + end);
            ASSERT_TRUE(log.has_value()) << log.error().sentence();
            EXPECT_EQ(log->delimiter, delimiter);
            EXPECT_EQ(log->columns[0].raw, (Values{66.5, 67}));
            EXPECT_EQ(log->columns[0].line, (std::vector<std::uint32_t>{2, 3}));
        }
    }
}

TEST_F(LogValues, utf16AndWindows1252)
{
    const std::u16string wide = u"Time;Beer (°C)\n2026-03-07 06:30;18,9\n";
    std::string bytes;
    for (const char16_t c : wide)
        bytes += {static_cast<char>(c & 0xFF), static_cast<char>(c >> 8)};
    for (const std::string& text : {bytes, "\xFF\xFE" + bytes}) {
        const auto log = read(text);
        ASSERT_TRUE(log.has_value()) << log.error().sentence();
        EXPECT_EQ(log->encoding, "UTF-16 LE");
        EXPECT_EQ(log->columns[0].header, "Beer (°C)");
        EXPECT_EQ(log->columns[0].unit, ReadingUnit::celsius);
    }
    const auto log = read("Time;Beer (\xB0"
                          "C)\n2026-03-07 06:30;18,9\n");
    EXPECT_EQ(log->encoding, "Windows-1252");
    EXPECT_EQ(log->columns[0].header, "Beer (°C)");
}

TEST_F(LogValues, invalidUtf8FarDown)
{
    const auto textOf = [](const std::string& header, const std::string& note) {
        std::string text = "Time," + header + ",Note\n";
        for (int i = 0; i < 60'000; ++i)
            text += "2026-03-07 06:30,66," + note + "\n";
        return text + "2026-03-07 06:31,67,\xB0\n";
    };
    for (const char* note : {"quiet", "früh"}) {
        const auto log = read(textOf("Beer", note));
        ASSERT_TRUE(log.has_value()) << log.error().sentence();
        EXPECT_EQ(log->encoding, "Windows-1252");
        EXPECT_EQ(log->columns[0].raw, (Values{66, 67}));
    }
    EXPECT_TRUE(has(problem(textOf("Beer (°F)", "quiet")), "not all of it is UTF-8"));
    EXPECT_TRUE(has(problem("\xEF\xBB\xBF" + textOf("Beer (°F)", "quiet")),
                    "the byte-order mark says UTF-8, but the text isn't"));
}

TEST_F(LogValues, mixedDecimalSignsAreRefused)
{
    EXPECT_EQ(problem("Time;Beer\n2026-03-07 06:30;66,5\n2026-03-07 06:35;66.5\n"),
              "log.csv, line 2: the log mixes decimal signs: \"66,5\" here, \"66.5\" in line 3; "
              "write all numbers with one sign and without groups of thousands.");
}

TEST_F(LogValues, groupsOfThousandsAreNeverGuessed)
{
    LogRequest meter = request(write("Time;kWh\n2026-03-07 06:30;1,234\n2026-03-07 18:30;1,301\n"));
    meter.wanted = {{"Loop meter", SeriesKind::meter, "kWh", {}}};
    const auto log = readLog(meter);
    ASSERT_FALSE(log.has_value());
    EXPECT_TRUE(has(log.error().sentence(), "\"1,234\" can be read in two ways"));
    write("Time;kWh\n2026-03-07 06:30;1,234\n2026-03-07 18:30;1,30\n");
    EXPECT_EQ(readLog(meter)->columns[0].raw, (Values{1.234, 1.3}));
    EXPECT_EQ(readLog(meter)->columns[0].decimals, (std::vector<std::uint8_t>{3, 2}));
    write("Time;kWh\n2026-03-07 06:30;1.234,5\n2026-03-07 18:30;1301,30\n");
    EXPECT_EQ(readLog(meter)->columns[0].raw, (Values{1234.5, 1301.3}));
}

TEST_F(LogValues, aLongCellIsCutBetweenCharacters)
{
    // 59 letters, then two bytes of one letter: the 60th byte is half of it.
    const std::string letters(59, 'x');
    LogRequest meter = request(write("Time;kWh\n2026-03-07 06:30;1\n2026-03-07 07:30;" + letters +
                                     "\u00e4b\n2026-03-07 18:30;2\n"));
    meter.wanted = {{"Loop meter", SeriesKind::meter, "kWh", {}}};
    EXPECT_EQ(readLog(meter)->rejected.at(0).text, letters + "\u2026");
}

TEST_F(LogValues, gravityWithDecimalCommaIsClear)
{
    LogRequest gravity = request(write("Time;SG\n2026-03-07 06:30;1,050\n"));
    gravity.wanted = {{"Hydrometer", SeriesKind::gravity, "sg", {}}};
    EXPECT_EQ(readLog(gravity)->columns[0].raw, (Values{1.05}));
    EXPECT_EQ(readLog(gravity)->columns[0].unit, ReadingUnit::specificGravity);
}

TEST_F(LogValues, minusSignOfTypographyIsAMinus)
{
    EXPECT_EQ(read("Time,Beer (C)\n2026-03-07 06:30,\xE2\x88\x92"
                   "0.5\n")
                  ->columns[0]
                  .raw,
              (Values{-0.5}));
}

TEST_F(LogValues, disconnectedAndImpossibleTemperatures)
{
    // DS18B20: −127 °C = −196.6 °F when disconnected, −55 … +125 °C (datasheet).
    const auto celsius = read("Time,Beer (C)\n2026-03-07 06:30,-127\n2026-03-07 06:31,18.9\n"
                              "2026-03-07 06:32,-127.00\n2026-03-07 06:33,999\n");
    EXPECT_EQ(celsius->columns[0].raw, (Values{18.9}));
    ASSERT_EQ(celsius->rejected.size(), 3u);
    EXPECT_EQ(celsius->rejected.at(0),
              (RejectedRow{2, "Beer (C)", "-127", "is what a disconnected sensor gives"}));
    EXPECT_EQ(celsius->rejected.at(2).reason, "is no temperature that a sensor here can give");
    const auto fahrenheit = read("Time,Beer (F)\n2026-03-07 06:30,-196.6\n2026-03-07 06:31,66\n");
    EXPECT_EQ(fahrenheit->rejected.at(0).reason, "is what a disconnected sensor gives");
}

TEST_F(LogValues, powerOnValueOnlyWhereItJumps)
{
    // DS18B20: +85 °C = 185 °F after power-on.
    const auto jump = read("Time,Beer (C)\n2026-03-07 06:30,85\n2026-03-07 06:31,18.9\n"
                           "2026-03-07 06:32,85.0\n2026-03-07 06:33,85\n2026-03-07 06:34,19\n");
    EXPECT_EQ(jump->columns[0].raw, (Values{18.9, 19}));
    ASSERT_EQ(jump->rejected.size(), 3u);
    EXPECT_EQ(jump->rejected.at(1).line, 4);
    LogRequest hot = request(write("Time,Beer (F)\n2026-03-07 06:30,180\n2026-03-07 06:31,185\n"
                                   "2026-03-07 06:32,181\n2026-03-07 06:33,66\n"));
    EXPECT_EQ(readLog(hot)->columns[0].raw, (Values{180, 185, 181, 66}));
    const auto us = read("Time,Beer (F)\n2026-03-07 06:30,66\n2026-03-07 06:31,185\n"
                         "2026-03-07 06:32,66\n");
    EXPECT_EQ(us->columns[0].raw, (Values{66, 66}));
    EXPECT_EQ(read("Time,Beer (F)\n2026-03-07 06:30,85\n2026-03-07 06:31,66\n")->rejectedTotal, 0);
}

TEST_F(LogValues, unitThatTheValuesContradict)
{
    const std::string text = "Time,Beer (C)\n2026-03-07 06:30,68\n2026-03-07 06:31,67.5\n";
    const std::string sentence = problem(text);
    EXPECT_TRUE(has(sentence, "column Beer (C): the median 68 is odd for °C")) << sentence;
    EXPECT_TRUE(has(sentence, "say --unit f")) << sentence;
    LogRequest specified = request(write(text));
    specified.temperatureUnit = ReadingUnit::fahrenheit;
    const auto log = readLog(specified);
    EXPECT_EQ(log->columns[0].unit, ReadingUnit::fahrenheit);
    EXPECT_EQ(log->warnings,
              (std::vector<std::string>{"the header says °C, but the import was set to °F"}));
    EXPECT_TRUE(has(problem("Time,Beer\n2026-03-07 06:30,18.9\n"), "say --unit c"));
    EXPECT_EQ(read("Time,Beer (F)\n2026-03-07 06:30,18.9\n")->warnings.size(), 1u);
}

TEST_F(LogValues, unitOfAnotherKindIsRefused)
{
    EXPECT_TRUE(has(problem("Time,Beer (kWh)\n2026-03-07 06:30,1.5\n"),
                    "the header says kWh, but \"Beer\" reads temperature"));
}

TEST_F(LogValues, columnsByHeaderAndByName)
{
    LogRequest two = request(write("Time,Probe 1,room temp (degF)\n2026-03-07 06:30,66,70\n"));
    two.wanted = {{"Beer", SeriesKind::temperature, "probe 1", {}},
                  {"Room temp", SeriesKind::temperature, {}, {}},
                  {"Meter", SeriesKind::meter, {}, {}}};
    const auto log = readLog(two);
    ASSERT_TRUE(log.has_value()) << log.error().sentence();
    ASSERT_EQ(log->columns.size(), 2u);
    EXPECT_EQ(log->columns[0].header, "Probe 1");
    EXPECT_EQ(log->columns[0].unitReason, "the header has no unit: °F is assumed");
    EXPECT_EQ(log->columns[1].name, "Room temp");
    EXPECT_TRUE(log->ignoredColumns.empty());
}

TEST_F(LogValues, unknownColumnsListSuggestions)
{
    LogRequest wrong = request(write("Time,Probe 1,Probe 2\n2026-03-07 06:30,66,70\n"));
    wrong.wanted[0].header = "Prob 1";
    EXPECT_EQ(readLog(wrong).error().sentence(),
              "log.csv: the log has no column \"Prob 1\"; did you mean Probe 1, Probe 2?");
    wrong.wanted[0].header.reset();
    EXPECT_EQ(readLog(wrong).error().sentence(),
              "log.csv: no column is called like a sensor or meter; say which is which with "
              "--column \"SENSOR=COLUMN\"; the columns are: Time, Probe 1, Probe 2.");
    wrong.timeColumn = "Tiem";
    EXPECT_EQ(readLog(wrong).error().sentence(),
              "log.csv: the log has no column \"Tiem\"; did you mean Time?");
    wrong.timeColumn.reset();
    wrong.wanted[0].header = "Time";
    EXPECT_TRUE(has(readLog(wrong).error().sentence(), "holds the time"));
}

TEST_F(LogValues, duplicateHeaderIsRefusedIfItIsNeeded)
{
    EXPECT_TRUE(has(problem("Time,Beer,Beer\n2026-03-07 06:30,66,67\n"),
                    "the log has 2 columns with the header \"Beer\""));
    EXPECT_TRUE(read("Time,Beer,x,x\n2026-03-07 06:30,66,1,2\n").has_value());
}

TEST_F(LogValues, raggedRows)
{
    const auto log = read("Time,Beer,Room\n2026-03-07 06:30,66,70\n2026-03-07 06:31,66\n"
                          "2026-03-07 06:32,66,5,70\n2026-03-07 06:33,67,70,\n");
    EXPECT_EQ(log->columns[0].raw, (Values{66, 66, 67}));
    ASSERT_EQ(log->rejected.size(), 1u);
    EXPECT_EQ(log->rejected.at(0).reason, "has 4 fields, the header has 3");
}

TEST_F(LogValues, halfWrittenLastLine)
{
    const auto cut = read("Time,Beer,Room\n2026-03-07 06:30,66,70\n2026-03-07 06:31,6");
    EXPECT_EQ(cut->columns[0].raw, (Values{66}));
    EXPECT_EQ(cut->rejected.at(0),
              (RejectedRow{3, "", "2026-03-07 06:31", "the last line is not finished"}));
    const auto whole = read("Time,Beer,Room\n2026-03-07 06:30,66,70\n2026-03-07 06:31,67,71");
    EXPECT_EQ(whole->columns[0].raw, (Values{66, 67}));
    EXPECT_EQ(whole->rejectedTotal, 0);
}

TEST_F(LogValues, implausibleYearsAreRejectedRows)
{
    const auto log = read("Time,Beer\n1970-01-01 00:00,66\n0024-03-07 06:30,66\n"
                          "9999-03-07 06:30,66\n2026-03-07 06:30,66\n");
    EXPECT_EQ(log->columns[0].raw.size(), 1u);
    ASSERT_EQ(log->rejected.size(), 3u);
    for (const RejectedRow& row : log->rejected)
        EXPECT_EQ(row.reason, "its year is not between 1990 and 2100");
}

TEST_F(LogValues, brokenTextIsRefusedWithItsLine)
{
    EXPECT_EQ(
        problem("Time,Beer\n2026-03-07 06:30,66\n2026-03-07 06:31,\"67\n2026-03-07 06:32,68\n"),
        "log.csv, line 3: the quote that opens here is never closed; close or remove it.");
    EXPECT_TRUE(has(problem("Time,Beer\n2026-03-07 06:30,66\n2026-03-07 06:31," +
                            std::string(2 << 20, '6') + "\n"),
                    "line 3: a field is longer than 1 MiB"));
    EXPECT_TRUE(has(problem(std::string(99'999, ',') + "\n2026-03-07 06:30\n"),
                    "the row has more than 1000 fields"));
}

TEST_F(LogValues, nulCharacters)
{
    const auto log = read("Time,Beer\n2026-03-07 06:30,66\n"s + std::string(20, '\0') +
                          "2026-03-07 06:31,67\n2026-03-07 06:32,6\0"s + "8\n");
    ASSERT_TRUE(log.has_value()) << log.error().sentence();
    EXPECT_EQ(log->columns[0].raw, (Values{66}));
    EXPECT_EQ(log->rejected.at(0).reason, "holds NUL characters");
    EXPECT_EQ(log->rejectedTotal, 2);
    EXPECT_FALSE(read(std::string(10'000, '\0')).has_value());
}

TEST_F(LogValues, nothingToRead)
{
    EXPECT_EQ(problem(""), "log.csv: the file is empty.");
    EXPECT_EQ(problem("\n\n"), "log.csv: the file is empty.");
    EXPECT_EQ(problem("Time,Beer\n"), "log.csv, line 1: there are no rows below the header.");
    EXPECT_TRUE(has(problem("2026-03-07 06:30,66\n2026-03-07 06:31,67\n"), "there is no header"));
    EXPECT_TRUE(has(problem("Step,Beer\n1,66\n2,67\n"), "no column of times was found"));
    EXPECT_TRUE(has(problem("a shopping list\nmalt\nhops\n"), "no column of times was found"));
}

TEST_F(LogValues, valuesThatCannotBeReadAreNamedAndNotTheTimes)
{
    EXPECT_EQ(
        problem("Time,Beer\n2026-03-07 06:00,68.2 warm\n2026-03-07 07:00,68.4 warm\n"),
        "log.csv, line 2, column Beer: no value beside the times in \"Time\" can be read: "
        "\"68.2 warm\" is not a number; write plain numbers, and the unit into the header, such as "
        "\"Beer (°F)\".");
    const auto meter = problem("Logger 7\nTime;Meter;Lid\n2026-03-07 07:00;100 units;shut\n"
                               "2026-03-07 08:00;101 units;shut\n");
    EXPECT_TRUE(has(meter, "log.csv, line 3, column Meter: no value beside the times in \"Time\""))
        << meter;
}

TEST_F(LogValues, timesThatCannotBeReadAreNamed)
{
    const auto open = problem("When,Beer\n12/3/26 15h00,66\n12/3/26 16h00,67\n");
    EXPECT_TRUE(has(open, "log.csv, line 2, column When: the times can't be read: "
                          "\"12/3/26 15h00\" is not a time"))
        << open;
    EXPECT_TRUE(has(open, "--time \"When\" --pattern")) << open;
    const auto day = problem("Date,Meter (kWh)\n2026-03-07,1.02\n2026-03-08,0.97\n");
    EXPECT_TRUE(has(day,
                    "log.csv, line 2, column Date: the times can't be read: \"2026-03-07\" has "
                    "a date but no time of day"))
        << day;
    EXPECT_TRUE(has(day, "--time \"Date+")) << day;
    const auto words = problem("Made-up export\nBeer,Time\n66,soon\n67,later\n");
    EXPECT_TRUE(
        has(words, "log.csv, line 3, column Time: the times can't be read: \"soon\" is not"))
        << words;
    LogRequest specified = request(write("A,B\n1,2\n"));
    specified.layoutRequest.headerLine = 1;
    EXPECT_TRUE(
        has(readLog(specified).error().sentence(), "no column of times was found below it"));
    specified = request(write("When,Beer\n12/3/26 15h00,66\n"));
    specified.layoutRequest.headerLine = 1;
    EXPECT_TRUE(
        has(readLog(specified).error().sentence(), "line 2, column When: the times can't be read"));
}

TEST_F(LogValues, aMissingColumnIsNamedEvenIfTheTimesAreSet)
{
    LogRequest specified = request(write("Time,Beer\n2026-03-07 06:00,66\n"));
    specified.timeColumn = "Time";
    specified.wanted.front().header = "Bear";
    EXPECT_EQ(readLog(specified).error().sentence(),
              "log.csv: the log has no column \"Bear\"; did you mean Beer?");
}

TEST_F(LogValues, manyRejectsAreCountedAndTheFirstListed)
{
    std::string text = "Time,Beer\n2026-03-07 06:30,66\n";
    for (int i = 0; i < 120'000; ++i)
        text += "never,66\n";
    LogRequest specified = request(write(text));
    specified.timeColumn = "Time";
    const auto log = readLog(specified);
    EXPECT_EQ(log->rejectedTotal, 120'000);
    EXPECT_EQ(log->rejected.size(), maxRejectedStored);
    EXPECT_EQ(log->rejected.front().line, 3);
}

TEST_F(LogValues, theHookSeesProgressAndCanStop)
{
    std::string text = "Time,Beer\n";
    for (int i = 0; i < 100'000; ++i)
        text += "2026-03-07 06:30,66\n";
    const LogRequest large = request(write(text));
    std::vector<std::int64_t> seen;
    EXPECT_TRUE(readLog(large, [&](std::int64_t read, std::int64_t total) {
                    EXPECT_EQ(total, static_cast<std::int64_t>(text.size()));
                    seen.push_back(read);
                    return true;
                }).has_value());
    EXPECT_EQ(seen.size(), 2u);
    EXPECT_EQ(seen.back(), static_cast<std::int64_t>(text.size()));
    const auto stopped = readLog(large, [](std::int64_t, std::int64_t) { return false; });
    EXPECT_TRUE(has(stopped.error().what, "stopped"));
}

RC_GTEST_FIXTURE_PROP(LogValues, instantsInAnyLayoutReadBack, ())
{
    const auto minutes = *rc::gen::nonEmpty(rc::gen::container<std::vector<int>>(
        rc::gen::inRange(15'778'080, 68'000'000))); // minutes since 1970: 2000 … 2099
    const int layout = *rc::gen::inRange(0, 5);
    const Zone zone = Zone::utc();
    std::string text = "Time;Beer\n";
    std::vector<Instant> all;
    for (const int minute : minutes) {
        const Instant at{std::chrono::minutes{minute}};
        all.push_back(at);
        const std::string iso = rfc3339Utc(at);
        const std::string ymd = iso.substr(0, 10), y = iso.substr(0, 4), m = iso.substr(5, 2),
                          d = iso.substr(8, 2), clock = iso.substr(11, 5);
        const std::array<std::string, 5> written{
            iso, ymd + " " + clock, d + "." + m + "." + y + " " + clock,
            m + "/" + d + "/" + y.substr(2) + " " + clock, std::to_string(minute * 60LL)};
        text += written[static_cast<std::size_t>(layout)] + ";66\n";
    }
    LogRequest specified = request(write(text));
    specified.zone = zone;
    specified.dateOrder = layout == 2 ? DateOrder::dayMonthYear : DateOrder::monthDayYear;
    const auto log = readLog(specified);
    RC_ASSERT(log.has_value());
    std::sort(all.begin(), all.end());
    all.erase(std::unique(all.begin(), all.end()), all.end());
    RC_ASSERT(log->columns[0].at == all);
}

RC_GTEST_FIXTURE_PROP(LogValues, theOrderOfTheRowsDoesNotMatter, ())
{
    const int count = *rc::gen::inRange(1, 40);
    std::vector<std::string> rows;
    for (int i = 0; i < count; ++i)
        rows.push_back("2026-03-07T06:" + std::to_string(10 + i) + ":00Z," +
                       std::to_string(60 + i % 7) + "\n");
    const auto textOf = [](const std::vector<std::string>& list) {
        std::string text = "Time,Beer\n";
        for (const std::string& row : list)
            text += row;
        return text;
    };
    const auto straight = read(textOf(rows));
    for (std::size_t i = rows.size(); i > 1; --i)
        std::swap(rows[i - 1], rows[*rc::gen::inRange<std::size_t>(0, i)]);
    const auto shuffled = read(textOf(rows));
    RC_ASSERT(straight->columns[0].at == shuffled->columns[0].at);
    RC_ASSERT(straight->columns[0].raw == shuffled->columns[0].raw);
}

RC_GTEST_FIXTURE_PROP(LogValues, anyBytesGiveALogOrASentence, ())
{
    const auto parts = *rc::gen::container<std::vector<std::string>>(rc::gen::element<std::string>(
        "Time", "Beer", ",", ";", "\n", "\r", "\"", "2026-03-07 06:30", "66.5", "66,5", "\xB0",
        "°F", "\t", " ", std::string(1, '\0'), "3/4/26 1:00 AM", "1772890200", "-127"));
    std::string text = *rc::gen::element<std::string>("", "Time,Beer\n2026-03-07 06:30,66\n");
    for (const std::string& part : parts)
        text += part;
    const auto log = read(text);
    if (!log)
        RC_ASSERT(has(log.error().sentence(), "log.csv"));
    else
        RC_ASSERT(log->columns.size() == 1u);
}
