// Features that people request of a CSV import, one test for each.
#include "core/exchange/file_writer.h"
#include "core/intake/csv/preview.h"
#include "core/intake/log/import.h"
#include "core/intake/log/remembered.h"
#include "core/store/readings/imports.h"
#include "core/text/times.h"
#include "tests/store/logbooks.h"
#include "tests/store/saying.h"

#include <fstream>
#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using intake::ColumnMap;
using intake::Meaning;
using testing::HasSubstr;
using Times = std::vector<std::string>;
using Values = std::vector<double>;

class CsvRequirements : public LogbookTest {
protected:
    void SetUp() override
    {
        m_logbook = createInDenver();
        ASSERT_TRUE(m_logbook);
        addEquipment(*m_logbook);
    }

    std::string write(const std::string& text) const
    {
        std::ofstream(path("w.csv"), std::ios::binary) << text;
        return path("w.csv");
    }
    /// What the window would do with only the guesses.
    Result<intake::ImportReport> import(const std::string& text, bool dryRun = false) const
    {
        intake::ImportOptions options;
        options.path = write(text);
        options.dryRun = dryRun;
        return intake::importLog(*m_logbook, options);
    }
    Result<intake::ImportReport> importAs(const std::string& text, const ColumnMap& map) const
    {
        intake::ImportOptions options;
        options.path = write(text);
        options.map = map;
        options.layout = preview(text).layout;
        return intake::importLog(*m_logbook, options);
    }
    intake::LogPreview preview(const std::string& text) const
    {
        auto seen = intake::previewLog(*m_logbook, {write(text)});
        EXPECT_TRUE(seen) << seen.error().sentence();
        return seen ? std::move(*seen) : intake::LogPreview{};
    }
    std::vector<std::string> times() const
    {
        std::vector<std::string> list;
        const auto series =
            store::readSeries(*m_logbook, "Beer", {instantFromMs(0), instantFromMs(1LL << 42)});
        for (const Instant at : series->at)
            list.push_back(rfc3339Utc(at).substr(0, 16));
        return list;
    }
    std::vector<double> values() const
    {
        return store::readSeries(*m_logbook, "Beer", {instantFromMs(0), instantFromMs(1LL << 42)})
            ->value;
    }

    std::unique_ptr<store::LogbookFile> m_logbook;
};

TEST_F(CsvRequirements, dayFirstDatesAreDetectedWithTheReason)
{
    const std::string text = "Time,Beer\n03.04.2026 06:00,20\n25.04.2026 06:00,20\n";
    EXPECT_EQ(preview(text).orderReason, "day first: 25.04.2026 06:00 occurs in line 3");
    ASSERT_TRUE(import(text));
    EXPECT_EQ(times(), (Times{"2026-04-03T12:00", "2026-04-25T12:00"})); // Denver: UTC−6 in April
    const auto open = import("Time,Beer\n03.04.2026 06:00,20\n");
    ASSERT_FALSE(open);
    EXPECT_EQ(open.error().decision, Decision::dateOrder);
}

TEST_F(CsvRequirements, dateAndTimeMayBeInTwoColumns)
{
    const std::string text = "Day,Clock,Beer\n2026-03-07,06:00,20\n2026-03-07,07:00,21\n";
    const auto map = preview(text).map();
    EXPECT_EQ(map.columnOf(Meaning::time), 0u);
    EXPECT_EQ(map.columnOf(Meaning::clock), 1u);
    ASSERT_TRUE(importAs(text, map));
    EXPECT_EQ(times(), (Times{"2026-03-07T13:00", "2026-03-07T14:00"}));
}

TEST_F(CsvRequirements, ofTwoColumnsOfTimesEitherCanBeChosen)
{
    const std::string text = "Logged,Sent,Beer\n2026-03-07 06:00,2026-03-07 06:05,20\n";
    ColumnMap map = preview(text).map();
    EXPECT_EQ(map.columnOf(Meaning::time), 0u);
    map.columns[0].meaning = Meaning::ignored;
    map.columns[1].meaning = Meaning::time;
    ASSERT_TRUE(importAs(text, map));
    EXPECT_EQ(times(), (Times{"2026-03-07T13:05"}));
}

TEST_F(CsvRequirements, aCustomPatternIsCheckedAsItIsTyped)
{
    const std::string text = "When,Beer\n07|03|26 06h00,20\n07|03|26 07h30,21\n";
    const auto seen = preview(text);
    ColumnMap map = seen.map();
    EXPECT_FALSE(map.columnOf(Meaning::time)); // the layout is unknown
    map.columns[0].meaning = Meaning::time;
    map.columns[1] = {Meaning::reading, "Beer"};
    const auto half = intake::tryPattern(seen, map, "dd|MM|yy");
    ASSERT_FALSE(half);
    EXPECT_THAT(half.error().what, HasSubstr("lacks the hour"));
    EXPECT_THAT(intake::tryPattern(seen, map, "dd|MM|yy HH:mm")->front().result,
                HasSubstr("does not fit"));
    const auto tries = intake::tryPattern(seen, map, "dd|MM|yy HH'h'mm");
    ASSERT_TRUE(tries) << tries.error().sentence();
    EXPECT_TRUE(tries->front().fits);
    EXPECT_EQ(tries->front().result, "7 Mar 2026 06:00");
    map.timePattern = "dd|MM|yy HH'h'mm";
    ASSERT_TRUE(importAs(text, map));
    EXPECT_EQ(times(), (Times{"2026-03-07T13:00", "2026-03-07T14:30"}));
}

TEST_F(CsvRequirements, aDecimalCommaIsReadAndAnAmbiguousOneAskedAbout)
{
    ASSERT_TRUE(import("Time;Beer\n2026-03-07 06:00;20,5\n"));
    EXPECT_EQ(values(), (Values{20.5}));
    const std::string text = "Time;Meter\n2026-03-07 06:00;1,234\n2026-03-07 18:00;1,301\n";
    const auto open = import(text);
    ASSERT_FALSE(open);
    EXPECT_EQ(open.error().decision, Decision::decimalSign);
    ColumnMap map = preview(text).map();
    map.decimalSign = '.';
    const auto grouped = importAs(text, map);
    ASSERT_TRUE(grouped) << grouped.error().sentence();
    EXPECT_EQ(grouped->rows.added.front().value, 1234.0);
}

TEST_F(CsvRequirements, duplicatesAreReadingsOfTheSameInstantOnly)
{
    const std::string text = "Time,Beer\n2026-03-07 06:00,20\n2026-03-07 06:01,20\n"
                             "2026-03-07 06:01,20\n2026-03-07 06:02,20\n";
    const auto first = import(text);
    ASSERT_TRUE(first);
    EXPECT_EQ(first->added(), 3); // equal values a minute apart are three readings
    EXPECT_EQ(first->alreadyThere(), 1);
    const auto again = import(text);
    EXPECT_EQ(again->added(), 0);
    EXPECT_EQ(again->alreadyThere(), 4);
    const auto other = import("Time,Beer\n2026-03-07 06:00,21\n");
    ASSERT_EQ(other->conflicting(), 1);
    EXPECT_EQ(other->rows.conflicting.front().stored, 20.0);
}

TEST_F(CsvRequirements, anImportIsWithdrawnCompletelyAndRestored)
{
    ASSERT_TRUE(import("Time,Beer\n2026-03-07 06:00,20\n"));
    const auto id = store::listImports(*m_logbook)->front().id;
    const auto change = [&](auto work) {
        auto begun = store::Change::begin(*m_logbook, saying("test"));
        ASSERT_TRUE(begun);
        ASSERT_TRUE(work(*begun, id));
        ASSERT_TRUE(begun->commit());
    };
    change(store::withdraw);
    EXPECT_TRUE(times().empty());
    change(store::restoreImport);
    EXPECT_EQ(times().size(), 1u);
}

TEST_F(CsvRequirements, choicesAreRememberedForFilesOfTheSameFormat)
{
    const std::string text = "Stamp,Probe 1 (F)\n2026-03-07 06:00,68\n";
    const auto seen = preview(text);
    ColumnMap map = seen.map();
    map.columns[1] = {Meaning::reading, "Beer", ReadingUnit::fahrenheit};
    map.zone = "UTC";
    intake::rememberMap(*m_logbook, seen, map);
    const auto other = preview("stamp, PROBE 1 (f)\n2026-03-09 06:00,70\n");
    EXPECT_EQ(other.shape, seen.shape);
    EXPECT_EQ(intake::rememberedMap(*m_logbook, other.shape), map);
    EXPECT_NE(preview("Stamp,Probe 2 (F)\n2026-03-07 06:00,68\n").shape, seen.shape);
}

TEST_F(CsvRequirements, linesBeforeTheHeaderAndAfterTheRowsDoNoHarm)
{
    const std::string text = "Logger 7\nserial,1234\n\nTime,Beer\n2026-03-07 06:00,20\n"
                             "2026-03-07 07:00,21\nrows: 2\n";
    EXPECT_EQ(preview(text).layout.headerLine, 4);
    const auto report = import(text);
    ASSERT_TRUE(report) << report.error().sentence();
    EXPECT_EQ(report->added(), 2);
    ASSERT_EQ(report->file.rejected.size(), 1u);
    EXPECT_EQ(report->file.rejected.front().line, 7);
}

TEST_F(CsvRequirements, rejectedRowsHaveLinesAndGoIntoAFile)
{
    const auto report =
        import("Time,Beer\n2026-03-07 06:00,20\n2026-03-07 07:00,\"warm, \"\"ish\"\"\"\n"
               "soon,20\n");
    ASSERT_TRUE(report) << report.error().sentence();
    const std::string csv = intake::rejectsCsv(*report);
    EXPECT_EQ(csv, "line,column,text,reason\n"
                   "3,Beer,\"warm, \"\"ish\"\"\",is not a number\n"
                   "4,Time,soon,is not a time\n");
    ASSERT_TRUE(exchange::writeNewFile(path("rejects.csv"), csv));
    EXPECT_EQ(*exchange::readWholeFile(path("rejects.csv"), 1'000), csv);
}

TEST_F(CsvRequirements, rejectedFormulasAreHarmlessAndNumbersStayNumbers)
{
    const auto report = import("Time,Beer\n2026-03-07 06:00,=HYPERLINK(1)\n2026-03-07 07:00,-127\n"
                               "2026-03-07 08:00,@SUM(A1)\n2026-03-07 09:00,+1+2\n"
                               "2026-03-07 10:00,-2+3\n2026-03-07 11:00,+999.5\n"
                               "2026-03-07 12:00,20\n");
    ASSERT_TRUE(report) << report.error().sentence();
    const std::string csv = intake::rejectsCsv(*report);
    for (const char* line : {"2,Beer,'=HYPERLINK(1),", "3,Beer,-127,", "4,Beer,'@SUM(A1),",
                             "5,Beer,'+1+2,", "6,Beer,'-2+3,", "7,Beer,+999.5,"})
        EXPECT_THAT(csv, HasSubstr(line));
}

TEST_F(CsvRequirements, noZoneIsShifted)
{
    ASSERT_TRUE(import("Time,Beer\n2026-03-07T06:00:00Z,20\n2026-03-07T06:00:00-02:00,21\n"));
    EXPECT_EQ(times(), (Times{"2026-03-07T06:00", "2026-03-07T08:00"}));
    ASSERT_TRUE(import("Time (UTC),Beer\n2026-03-07 09:00,22\n"));
    EXPECT_EQ(times().back(), "2026-03-07T09:00");
    ASSERT_TRUE(import("Time,Beer\n2026-03-07 09:00,23\n"));
    EXPECT_EQ(times().back(), "2026-03-07T16:00"); // read in the logbook's zone, UTC−7
}

TEST_F(CsvRequirements, anOffsetInTheHeaderOfTheTimesIsRead)
{
    ASSERT_TRUE(import("\"Date Time, GMT-05:00\",Beer\n03/17/26 06:00:00 AM,20\n"));
    ASSERT_TRUE(import("Time (UTC+1),Beer\n2026-03-18 06:00,20\n"));
    ASSERT_TRUE(import("Day,Clock (GMT+01:00),Beer\n2026-03-19,06:00,20\n"));
    ASSERT_TRUE(import("Time (UTC+05:30),Beer\n2026-03-20T06:00:00Z,20\n2026-03-20 12:00,21\n"));
    EXPECT_EQ(times(), (Times{"2026-03-17T11:00", "2026-03-18T05:00", "2026-03-19T05:00",
                              "2026-03-20T06:00", "2026-03-20T06:30"}));
}

TEST_F(CsvRequirements, anAbbreviatedZoneInTheHeaderIsAskedAbout)
{
    const std::string text = "Time (EST),Beer\n2026-03-07 06:00,20\n";
    const auto asked = import(text);
    ASSERT_FALSE(asked);
    EXPECT_EQ(asked.error().decision, Decision::zone);
    EXPECT_THAT(asked.error().place, HasSubstr("column Time (EST)"));
    EXPECT_THAT(asked.error().what, HasSubstr("EST"));
    EXPECT_THAT(asked.error().remedy, HasSubstr("--zone"));
    EXPECT_TRUE(times().empty());
    ASSERT_TRUE(import("Time (EST),Beer\n2026-03-06T06:00:00Z,20\n")) << "each row says its own";
    ColumnMap map = preview(text).map();
    map.zone = "-05:00";
    ASSERT_TRUE(importAs(text, map));
    EXPECT_EQ(times(), (Times{"2026-03-06T06:00", "2026-03-07T11:00"}));
    // Once remembered, it is used for the next log of that shape.
    intake::rememberMap(*m_logbook, preview(text), map);
    const auto next =
        intake::openPreview(*m_logbook, {write("Time (EST),Beer\n2026-03-08 06:00,20\n")});
    ASSERT_TRUE(next && next->remembered);
    ASSERT_TRUE(importAs("Time (EST),Beer\n2026-03-08 06:00,20\n", next->map));
    EXPECT_EQ(times().back(), "2026-03-08T11:00");
}

TEST_F(CsvRequirements, aZoneThatWasSetOverridesTheHeader)
{
    const std::string text = "Time (GMT-05:00),Beer\n2026-03-07 06:00,20\n";
    intake::ImportOptions options;
    options.path = write(text);
    options.zone = "America/Denver";
    const auto report = intake::importLog(*m_logbook, options);
    ASSERT_TRUE(report) << report.error().sentence();
    EXPECT_EQ(times(), (Times{"2026-03-07T13:00"}));
    EXPECT_EQ(intake::zoneSentence(*report), "times read as America/Denver (as set; the header "
                                             "\"Time (GMT-05:00)\" says UTC−05:00)");
}

TEST_F(CsvRequirements, theReportNamesTheZone)
{
    const auto said = [this](const std::string& text) {
        const auto report = import(text, true);
        return report ? intake::zoneSentence(*report) : report.error().sentence();
    };
    EXPECT_EQ(said("Time,Beer\n2026-03-07 06:00,20\n"),
              "times read as America/Denver (the logbook's zone)");
    EXPECT_EQ(said("\"Date Time, GMT-05:00\",Beer\n2026-03-07 06:00,20\n"),
              "times read as UTC−05:00 (from the header \"Date Time, GMT-05:00\")");
    EXPECT_EQ(said("Time,Beer\n2026-03-07T06:00:00Z,20\n"),
              "times need no zone: each says its offset or is Unix time");
    EXPECT_EQ(said("Time,Beer\n2026-03-07T06:00:00Z,20\n2026-03-07 06:00,20\n"),
              "times read as America/Denver (the logbook's zone), but for those that say their "
              "own offset");
}

TEST_F(CsvRequirements, hoursOfAClockChangeAreNamedAndNotInvented)
{
    // 8 March 2026: 02:00–03:00 does not exist in Denver. 1 November: 01:00–02:00 exists twice.
    const auto spring = import("Time,Beer\n2026-03-08 01:30,20\n2026-03-08 02:30,20\n"
                               "2026-03-08 03:30,20\n");
    ASSERT_TRUE(spring);
    EXPECT_EQ(times(), (Times{"2026-03-08T08:30", "2026-03-08T09:30"}));
    EXPECT_THAT(spring->file.rejected.at(0).reason, HasSubstr("does not exist in America/Denver"));
    const auto open = import("Time,Beer\n2026-11-01 00:30,20\n2026-11-01 01:30,20\n"
                             "2026-11-01 02:30,20\n");
    ASSERT_FALSE(open);
    EXPECT_EQ(open.error().decision, Decision::zone);
}

TEST_F(CsvRequirements, byteOrderMarkAndDelimiterAreFound)
{
    for (const char delimiter : {',', ';', '\t', '|'}) {
        const std::string d(1, delimiter);
        const std::string text = "\xEF\xBB\xBFTime" + d + "Beer\n2026-03-07 06:00" + d + "20\n";
        const auto seen = preview(text);
        EXPECT_EQ(seen.layout.delimiter, delimiter);
        EXPECT_EQ(seen.columns.front().header, "Time");
        EXPECT_TRUE(import(text)) << d;
    }
    EXPECT_EQ(times().size(), 1u);
}

TEST_F(CsvRequirements, aSwappedMeterIsAskedAboutAndNeverNegative)
{
    const std::string text = "Time,Meter\n2026-03-07 06:00,900\n2026-03-08 06:00,905\n"
                             "2026-03-09 06:00,2\n2026-03-10 06:00,6\n";
    const auto asked = import(text);
    ASSERT_FALSE(asked);
    EXPECT_EQ(asked.error().decision, Decision::registerDrop);
    EXPECT_THAT(asked.error().place, HasSubstr("line 4"));
    intake::ImportOptions options;
    options.path = path("w.csv");
    options.registerDrop = MeterEvent::reset;
    const auto decided = intake::importLog(*m_logbook, options);
    ASSERT_TRUE(decided) << decided.error().sentence();
    EXPECT_EQ(decided->added(), 4);
    const auto readings = store::readMeterReadings(*m_logbook, "Meter");
    ASSERT_TRUE(readings);
    EXPECT_EQ(readings->at(2).inForce.event, MeterEvent::reset);
}

TEST_F(CsvRequirements, progressIsReportedAndCancelLeavesNothing)
{
    std::string text = "Time,Beer\n";
    for (int i = 0; i < 100'000; ++i)
        text += std::to_string(1'772'000'000 + 60 * i) + ",20\n";
    intake::ImportOptions options;
    options.path = write(text);
    for (const double stopAt : {0.2, 0.9}) {
        double last = 0.0;
        const auto stopped = intake::importLog(*m_logbook, options, [&](double share) {
            EXPECT_GE(share, last);
            last = share;
            return share < stopAt;
        });
        EXPECT_FALSE(stopped);
        EXPECT_TRUE(times().empty());
        EXPECT_TRUE(store::listImports(*m_logbook)->empty());
    }
    double last = 0.0;
    ASSERT_TRUE(intake::importLog(*m_logbook, options, [&](double share) {
        last = share;
        return true;
    }));
    EXPECT_EQ(last, 1.0);
    EXPECT_EQ(times().size(), 100'000u);
}

TEST_F(CsvRequirements, unitsAreConvertedAndNamed)
{
    const auto report = import("Time,Beer (°F)\n2026-03-07 06:00,68\n");
    ASSERT_TRUE(report);
    EXPECT_EQ(report->columns.front().unitReason, "the header says °F");
    EXPECT_NEAR(values().front(), 20.0, 1e-12); // (68 − 32) / 1.8
    ASSERT_TRUE(import("Time,Meter (Wh)\n2026-03-07 06:00,1500\n"));
    const auto readings = store::readMeterReadings(*m_logbook, "Meter");
    EXPECT_EQ(readings->front().inForce.registerReading.kilowattHours(), 1.5);
}

TEST_F(CsvRequirements, longLogsGoToSensorsByTheirNames)
{
    const std::string text = "Time,Name,Value\n2026-03-07 06:00,Beer,20\n"
                             "2026-03-07 06:00,Cellar,12\n2026-03-07 06:00,Meter,5.5\n"
                             "2026-03-07 07:00,Beer,21\n";
    const auto seen = preview(text);
    EXPECT_EQ(seen.columns[1].choice.meaning, Meaning::name);
    EXPECT_EQ(seen.columns[2].choice.meaning, Meaning::value);
    const auto report = importAs(text, seen.map());
    ASSERT_TRUE(report) << report.error().sentence();
    EXPECT_EQ(report->added(), 3);
    EXPECT_EQ(report->file.ignoredNames, (std::vector<std::string>{"Cellar"}));
    EXPECT_EQ(values(), (Values{20, 21}));
}

TEST_F(CsvRequirements, pastedRowsWithoutAHeaderAreReadToo)
{
    intake::LogSource pasted{"pasted rows", std::make_shared<const std::string>(
                                                "2026-03-07 06:00\t20\n2026-03-07 07:00\t21\n")};
    const auto seen = intake::previewLog(*m_logbook, pasted);
    ASSERT_TRUE(seen) << seen.error().sentence();
    EXPECT_EQ(seen->layout.headerLine, 0);
    EXPECT_EQ(seen->columns[0].choice.meaning, Meaning::time);
    intake::ImportOptions options;
    options.path = pasted.path;
    options.text = pasted.text;
    options.map = seen->map();
    options.map->columns[1] = {Meaning::reading, "Beer"};
    options.layout = seen->layout;
    const auto report = intake::importLog(*m_logbook, options);
    ASSERT_TRUE(report) << report.error().sentence();
    EXPECT_EQ(report->added(), 2);
}

} // namespace
} // namespace holdband::test
