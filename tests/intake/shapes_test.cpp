// Logs of many shapes, imported as a user does: what is stored of each, and what is asked about.
#include "core/intake/csv/preview.h"
#include "core/intake/log/import.h"
#include "core/store/readings/imports.h"
#include "core/text/numbers.h"
#include "core/text/times.h"
#include "tests/store/logbooks.h"
#include "tests/store/saying.h"

#include <cmath>
#include <fstream>
#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

class LogShapes : public LogbookTest {
protected:
    void SetUp() override
    {
        m_logbook = createInDenver();
        ASSERT_TRUE(m_logbook);
        addEquipment(*m_logbook);
        auto change = store::Change::begin(*m_logbook, saying("more sensors"));
        Sensor room, draw, vessel;
        room.name = "Room";
        draw.name = "Draw";
        draw.reads = SensorKind::power;
        vessel.name = "Vessel 1 probe";
        for (const Sensor& sensor : {room, draw, vessel})
            ASSERT_TRUE(store::addSensor(*change, sensor));
        ASSERT_TRUE(change->commit());
    }

    Result<intake::ImportReport> import(const std::string& text) const
    {
        intake::ImportOptions options = m_options;
        std::ofstream(path("s.csv"), std::ios::binary) << text;
        options.path = path("s.csv");
        return intake::importLog(*m_logbook, options);
    }

    /// "2026-03-07T13:30:00.000Z 18.5" for each stored reading, in °C or W; of °F to the billionth.
    std::vector<std::string> readings(const std::string& sensor = "Beer") const
    {
        const auto series =
            store::readSeries(*m_logbook, sensor, {instantFromMs(0), instantFromMs(1LL << 42)});
        std::vector<std::string> list;
        for (std::size_t i = 0; i < series->at.size(); ++i)
            list.push_back(rfc3339Utc(series->at[i]) + " " +
                           shortestText(std::round(series->value[i] * 1e9) / 1e9));
        return list;
    }

    /// The stored readings of Beer after the import of this text; or why there are none.
    std::vector<std::string> stored(const std::string& text) const
    {
        const auto report = import(text);
        return report ? readings() : std::vector{report.error().sentence()};
    }

    std::vector<std::string> rejected(const intake::ImportReport& report) const
    {
        std::vector<std::string> list;
        for (const RejectedRow& row : report.file.rejected)
            list.push_back(std::to_string(row.line) + ": " + row.reason);
        return list;
    }

    void expectAsked(const std::string& text, Decision decision,
                     const std::vector<std::string>& options, const std::string& option) const
    {
        const auto report = import(text);
        ASSERT_FALSE(report) << text;
        EXPECT_EQ(report.error().decision, decision) << report.error().sentence();
        EXPECT_EQ(report.error().options, options) << report.error().sentence();
        EXPECT_THAT(report.error().sentence(), HasSubstr(option));
        EXPECT_THAT(readings(), IsEmpty());
    }

    std::unique_ptr<store::LogbookFile> m_logbook;
    intake::ImportOptions m_options;
};

const std::vector<std::string> twoReadings{"2026-03-07T13:30:00.000Z 18.5",
                                           "2026-03-07T13:35:00.000Z 18.75"};

/// A log of two rows with these times.
std::string logOf(const std::string& header, const std::string& first, const std::string& second)
{
    return header + ",Beer (°C)\n" + first + ",18.5\n" + second + ",18.75\n";
}

} // namespace

TEST_F(LogShapes, UnixTimesInFourUnits)
{
    EXPECT_EQ(stored(logOf("t", "1772890200", "1772890500")), twoReadings);
    const char* zeros[] = {"000", "000000", "000000000"};
    for (const std::string more : zeros) {
        const auto again = import(logOf("t", "1772890200" + more, "1772890500" + more));
        ASSERT_TRUE(again) << again.error().sentence();
        EXPECT_EQ(again->alreadyThere(), 2) << more;
    }
    EXPECT_EQ(readings(), twoReadings);
}

TEST_F(LogShapes, NanosecondsAreRoundedToTheMillisecond)
{
    EXPECT_THAT(stored(logOf("Time", "1772890200123456789", "1772890500000400000")),
                ElementsAre("2026-03-07T13:30:00.123Z 18.5", "2026-03-07T13:35:00.000Z 18.75"));
}

TEST_F(LogShapes, SpreadsheetDaysUnderAHeaderOfTimes)
{
    EXPECT_EQ(stored(logOf("Date", "46088.270833", "46088.274306")), twoReadings);
}

TEST_F(LogShapes, SpreadsheetDaysWithADecimalComma)
{
    EXPECT_EQ(stored("Datum;Beer (°C)\n46088,2708333333;18,5\n46088,2743055556;18,75\n"),
              twoReadings);
}

TEST_F(LogShapes, SpreadsheetDaysWithoutAHintAreAsked)
{
    const std::string text = logOf("A", "46088.270833", "46088.274306");
    expectAsked(text, Decision::timeUnit, {"days", "seconds", "minutes", "hours"},
                "--time-unit days");
    m_options.timeUnit = TimeUnit::days;
    EXPECT_EQ(stored(text), twoReadings);
}

TEST_F(LogShapes, WholeSpreadsheetDaysHaveNoTimeOfDay)
{
    EXPECT_THAT(stored(logOf("Date", "46088", "46089")),
                ElementsAre(HasSubstr("no column of times was found")));
    m_options.timeUnit = TimeUnit::days;
    EXPECT_THAT(stored(logOf("Date", "46088.5", "46089")),
                ElementsAre("2026-03-07T19:00:00.000Z 18.5", "2026-03-08T07:00:00.000Z 18.75"));
}

TEST_F(LogShapes, AMinuteCountBesideTimesThatCannotBeReadIsNotTheTime)
{
    EXPECT_THAT(stored("When,Run time (min),Beer\n12/3/26 15h00,0,18.5\n12/3/26 16h00,5,18.6\n"),
                ElementsAre(HasSubstr("the times can't be read")));
}

TEST_F(LogShapes, TimesSinceAStartNeedTheStart)
{
    const std::string text = logOf("Elapsed (s)", "0", "300");
    expectAsked(text, Decision::start, {}, "--start \"2026-03-07 06:30\"");
    m_options.start = "2026-03-07 06:30";
    EXPECT_EQ(stored(text), twoReadings);
}

TEST_F(LogShapes, MinutesAndHoursSinceAStartByTheHeader)
{
    m_options.start = "2026-03-07T06:30-07:00";
    EXPECT_EQ(stored(logOf("t/min", "0", "5")), twoReadings);
    m_options.start = "2026-03-07 05:00";
    EXPECT_EQ(import(logOf("Hours", "1.5", "1.583333333333"))->alreadyThere(), 2);
    EXPECT_EQ(import(logOf("Laufzeit [min]", "90", "95"))->alreadyThere(), 2);
}

TEST_F(LogShapes, AColumnThatBeginsAt0AsksForItsUnit)
{
    m_options.start = "2026-03-07 06:30";
    const std::string text = logOf("x", "0", "5");
    expectAsked(text, Decision::timeUnit, {"seconds", "minutes", "hours"}, "--time-unit seconds");
    m_options.timeUnit = TimeUnit::minutes;
    EXPECT_EQ(stored(text), twoReadings);
}

TEST_F(LogShapes, ThePreviewsChoicesHaveUnitAndStart)
{
    const std::string text = logOf("x", "0", "5");
    std::ofstream(path("s.csv"), std::ios::binary) << text;
    const auto preview = intake::previewLog(*m_logbook, {path("s.csv")});
    ASSERT_TRUE(preview) << preview.error().sentence();
    m_options.map = preview->map();
    m_options.layout = preview->layout;
    EXPECT_EQ(m_options.map->columns[0].meaning, intake::Meaning::time);
    EXPECT_EQ(import(text).error().decision, Decision::timeUnit);
    m_options.map->timeUnit = TimeUnit::minutes;
    EXPECT_EQ(import(text).error().decision, Decision::start);
    m_options.map->start = "2026-03-07 06:30";
    const auto again = intake::columnMapFrom(intake::columnMapText(*m_options.map));
    EXPECT_EQ(again->timeUnit, TimeUnit::minutes);
    EXPECT_EQ(again->start, std::nullopt) << "the next file has its own";
    EXPECT_EQ(stored(text), twoReadings);
}

TEST_F(LogShapes, AStartIsRefusedWhereTheTimesNeedNone)
{
    m_options.start = "2026-03-07 06:30";
    EXPECT_THAT(stored(logOf("Time", "2026-03-07 06:30", "2026-03-07 06:35")),
                ElementsAre("s.csv, column Time: the times don't count from a start; leave out "
                            "--start."));
}

TEST_F(LogShapes, TimesThatStartAgainAreRefused)
{
    m_options.start = "2026-03-07 06:30";
    EXPECT_THAT(
        stored("Elapsed (s),Beer\n0,18.5\n300,18.75\n0,18\n"),
        ElementsAre(HasSubstr("line 4, column Elapsed (s): the times since the start fall")));
}

TEST_F(LogShapes, AStartInADoubledHourIsAsked)
{
    m_options.start = "2026-11-01 01:30";
    expectAsked(logOf("Elapsed (s)", "0", "300"), Decision::start, {}, "2026-11-01");
}

TEST_F(LogShapes, OffsetsInTheCells)
{
    EXPECT_EQ(stored(logOf("Time", "2026-03-07 13:30 UTC", "2026-03-07 13:35 UTC")), twoReadings);
    for (const auto& [first, second] : std::initializer_list<std::pair<const char*, const char*>>{
             {"2026-03-07 06:30 -07:00", "2026-03-07 06:35 -07:00"},
             {"2026-03-07 14:30 UTC+1", "2026-03-07 14:35 UTC+1"},
             {"2026-03-07 14:30:00 GMT+01:00", "2026-03-07 14:35:00 GMT+01:00"},
             {"7 Mar 2026 6:30 AM -07:00", "7 Mar 2026 6:35 AM -07:00"},
             {"2026-03-07T06:30:00-07:00[America/Denver]",
              "2026-03-07T06:35:00-07:00[America/Denver]"}}) {
        const auto report = import(logOf("Time", first, second));
        ASSERT_TRUE(report) << report.error().sentence();
        EXPECT_EQ(report->alreadyThere(), 2) << first;
        EXPECT_EQ(report->file.rejectedTotal, 0) << first;
    }
}

TEST_F(LogShapes, AnOffsetBehindADateOfOpenOrder)
{
    EXPECT_THAT(stored(logOf("Time", "3/17/2026 6:30 PM -06:00", "3/17/2026 6:35 PM -06:00")),
                ElementsAre("2026-03-18T00:30:00.000Z 18.5", "2026-03-18T00:35:00.000Z 18.75"));
    const auto asked = import(logOf("Time", "3/7/2026 6:30 PM UTC", "3/8/2026 6:35 PM UTC"));
    ASSERT_FALSE(asked);
    EXPECT_EQ(asked.error().decision, Decision::dateOrder);
}

TEST_F(LogShapes, AZonesNameInTheCells)
{
    EXPECT_EQ(stored(logOf("Time", "2026-03-07 08:30 America/New_York",
                           "2026-03-07 08:35 America/New_York")),
              twoReadings);
}

TEST_F(LogShapes, AnotherZoneInTheCellsIsRejectedByRow)
{
    const auto report = import("Time,Beer\n2026-03-07 08:30 America/New_York,18.5\n"
                               "2026-03-07 06:35 America/Denver,18\n2026-03-07 06:35,18\n");
    ASSERT_TRUE(report) << report.error().sentence();
    EXPECT_THAT(readings(), ElementsAre("2026-03-07T13:30:00.000Z 18.5"));
    EXPECT_THAT(rejected(*report),
                ElementsAre("3: its zone is not that of the rows above, America/New_York",
                            "4: names no zone, but the rows above name America/New_York"));
}

TEST_F(LogShapes, AnAbbreviationInTheCellsIsAsked)
{
    const std::string text = logOf("Time", "2026-03-07 08:30 EST", "2026-03-07 08:35 EST");
    expectAsked(text, Decision::zone, {"America/Denver", "-07:00"}, "--zone");
    expectAsked(logOf("Time", "2026-03-07 08:30 (EST)", "2026-03-07 08:35 (EST)"), Decision::zone,
                {"America/Denver", "-07:00"}, "\"EST\" behind the times");
    m_options.zone = "America/New_York";
    EXPECT_EQ(stored(text), twoReadings);
}

TEST_F(LogShapes, TwelveHourClocksWithSeconds)
{
    EXPECT_THAT(stored(logOf("Time", "3/17/2026 6:30:15 PM", "3/17/26 6:35:15 p. m.")),
                ElementsAre("2026-03-18T00:30:15.000Z 18.5", "2026-03-18T00:35:15.000Z 18.75"));
    const auto report = import("Date,Time,Beer\n2026-03-17,06:30:15 p.m.,18.5\n");
    ASSERT_TRUE(report) << report.error().sentence();
    EXPECT_EQ(report->alreadyThere(), 1);
}

TEST_F(LogShapes, AUnitInTheCells)
{
    const auto report =
        import("Time,Beer,Draw,Meter\n2026-03-07 06:30,65.3 °F,\"1,234.5 W\",100 kWh\n"
               "2026-03-07 06:35,65.75°F,1.5 kW,101 kWh\n");
    ASSERT_TRUE(report) << report.error().sentence();
    EXPECT_EQ(report->columns[0].unit, ReadingUnit::fahrenheit);
    EXPECT_EQ(report->columns[0].unitReason, "its rows say °F");
    EXPECT_EQ(report->rows.added.at(0).value, 65.3) << "as in the file";
    EXPECT_THAT(readings(),
                ElementsAre("2026-03-07T13:30:00.000Z 18.5", "2026-03-07T13:35:00.000Z 18.75"));
    EXPECT_THAT(readings("Draw"),
                ElementsAre("2026-03-07T13:30:00.000Z 1234.5", "2026-03-07T13:35:00.000Z 1500"));
    EXPECT_THAT(report->file.warnings, ElementsAre("Draw: 1 value in another unit converted to W"));
    EXPECT_EQ(report->file.rejectedTotal, 0);
}

TEST_F(LogShapes, MixedUnitsInOneColumnAreConverted)
{
    const auto report = import("Time,Beer (°C)\n2026-03-07 06:30,65.3 °F\n"
                               "2026-03-07 06:35,18.75 °C\n2026-03-07 06:40,291.15 K\n"
                               "2026-03-07 06:45,17\n2026-03-07 06:50,17 kWh\n");
    ASSERT_TRUE(report) << report.error().sentence();
    EXPECT_THAT(readings(),
                ElementsAre("2026-03-07T13:30:00.000Z 18.5", "2026-03-07T13:35:00.000Z 18.75",
                            "2026-03-07T13:40:00.000Z 18", "2026-03-07T13:45:00.000Z 17"));
    EXPECT_THAT(rejected(*report), ElementsAre("6: its unit kWh is none of temperature"));
}

TEST_F(LogShapes, CellsWithoutAUnitBesideOthersAreAsked)
{
    const std::string text = "Time,Beer\n2026-03-07 06:30,65.3 °F\n2026-03-07 06:35,18.75\n";
    expectAsked(text, Decision::unit, {"c", "f"}, "--unit c");
    m_options.unit = TemperatureUnit::celsius;
    const auto report = import(text);
    ASSERT_TRUE(report) << report.error().sentence();
    EXPECT_THAT(readings(), ElementsAre("2026-03-07T13:35:00.000Z 18.75"));
    EXPECT_THAT(rejected(*report), ElementsAre("2: says °F, but the import was set to °C"));
}

TEST_F(LogShapes, KelvinInTheHeaderAndInTheCells)
{
    const auto report = import("Time,Beer (K),Room\n2026-03-07 06:30,291.65,293.15 K\n"
                               "2026-03-07 06:35,291.9,0 K\n");
    ASSERT_TRUE(report) << report.error().sentence();
    EXPECT_EQ(readings(), twoReadings);
    EXPECT_THAT(readings("Room"), ElementsAre("2026-03-07T13:30:00.000Z 20"));
    EXPECT_EQ(report->columns[0].unitReason, "the header says K: converted to °C");
    EXPECT_EQ(report->file.rejectedTotal, 1);
}

TEST_F(LogShapes, MarksOfMissingValues)
{
    const auto report = import("Time,Beer\n2026-03-07 06:30,18.5\n2026-03-07 06:31,---\n"
                               "2026-03-07 06:32,ERR\n2026-03-07 06:33,unavailable\n"
                               "2026-03-07 06:34,N/A\n2026-03-07 06:35,18.75\n");
    ASSERT_TRUE(report) << report.error().sentence();
    EXPECT_EQ(readings(), twoReadings);
    EXPECT_EQ(report->file.rejectedTotal, 0);
}

TEST_F(LogShapes, ASecondHeaderLineOfUnits)
{
    const std::string text = "Logger 7\nTime,Beer,Lid,Room\ndd.mm.yyyy hh:mm,°F,%,K\n"
                             "17.03.2026 06:30,65.3,20,293.15\n17.03.2026 06:35,65.75,20,293.15\n";
    const auto report = import(text);
    ASSERT_TRUE(report) << report.error().sentence();
    EXPECT_THAT(readings(),
                ElementsAre("2026-03-17T12:30:00.000Z 18.5", "2026-03-17T12:35:00.000Z 18.75"));
    EXPECT_THAT(readings("Room"),
                ElementsAre("2026-03-17T12:30:00.000Z 20", "2026-03-17T12:35:00.000Z 20"));
    EXPECT_EQ(report->file.rowsRead, 2);
    EXPECT_EQ(report->file.rejectedTotal, 0);

    const auto preview = intake::previewLog(*m_logbook, {path("s.csv")});
    ASSERT_TRUE(preview) << preview.error().sentence();
    EXPECT_EQ(preview->layout.unitsLine, 3);
    intake::ImportOptions options;
    options.path = path("s.csv");
    options.map = preview->map();
    options.layout = preview->layout;
    const auto mapped = intake::importLog(*m_logbook, options);
    ASSERT_TRUE(mapped) << mapped.error().sentence();
    EXPECT_EQ(mapped->alreadyThere(), 4);
    EXPECT_EQ(mapped->added(), 0);
}

TEST_F(LogShapes, ShortRowsHaveNoValueInTheirMissingCells)
{
    const auto report = import("Time,Beer,Room\n2026-03-07 06:30,18.5,20\n2026-03-07 06:35,18.75\n"
                               "2026-03-07 06:40\nend of the log\n");
    ASSERT_TRUE(report) << report.error().sentence();
    EXPECT_EQ(readings(), twoReadings);
    EXPECT_THAT(readings("Room"), ElementsAre("2026-03-07T13:30:00.000Z 20"));
    EXPECT_THAT(report->file.warnings,
                ElementsAre("2 rows are shorter than the header: their missing last cells count as "
                            "no value"));
    EXPECT_THAT(rejected(*report), ElementsAre("5: has 1 field, the header has 3"));
}

TEST_F(LogShapes, GroupsOfThousandsWhereTheColumnShowsTheDecimalSign)
{
    const std::string time = "2026-03-07 06:3";
    for (const auto& [first, second] :
         std::initializer_list<std::pair<const char*, const char*>>{{"1.234,00", "999,5"},
                                                                    {"1,234.00", "999.5"},
                                                                    {"1,234", "999.5"},
                                                                    {"1.234", "999,5"}}) {
        const auto report =
            import("Time;Draw\n" + time + "0;" + first + "\n" + time + "5;" + second + "\n");
        ASSERT_TRUE(report) << first << ": " << report.error().sentence();
        EXPECT_EQ(report->conflicting(), 0) << first;
        EXPECT_EQ(report->file.rejectedTotal, 0) << first;
        EXPECT_THAT(readings("Draw"),
                    ElementsAre("2026-03-07T13:30:00.000Z 1234", "2026-03-07T13:35:00.000Z 999.5"))
            << first;
    }
}

TEST_F(LogShapes, GroupsOfThousandsThatNothingShowsAreAsked)
{
    expectAsked("Time;Draw\n2026-03-07 06:30;1,234\n2026-03-07 06:35;1,500\n",
                Decision::decimalSign, {"comma", "point"}, "--decimal comma");
    // Another column shows a point; a column of its own might still have a decimal comma.
    const std::string text = "Time;Beer;Draw\n2026-03-07 06:30;18.5;1,234\n";
    expectAsked(text, Decision::decimalSign, {"comma", "point"}, "--decimal point");
    m_options.decimalSign = '.';
    ASSERT_TRUE(import(text));
    EXPECT_THAT(readings("Draw"), ElementsAre("2026-03-07T13:30:00.000Z 1234"));
}

TEST_F(LogShapes, ATemperatureHasNoGroupsOfThousands)
{
    for (const char* text : {"Time;Beer\n2026-03-07 06:30;18,125\n",
                             "Time;Beer\n2026-03-07 06:30;18,125\n2026-03-07 06:35;18.5\n"})
        expectAsked(text, Decision::decimalSign, {"comma", "point"}, "--decimal comma");
    EXPECT_EQ(stored("Time;Beer\n2026-03-07 06:30;18,5\n2026-03-07 06:35;18,750\n"), twoReadings);
}

TEST_F(LogShapes, AUnitBehindTheHeadersNameDoesNotHideTheSensor)
{
    EXPECT_EQ(stored("Time,Beer °C\n2026-03-07 06:30,18.5\n2026-03-07 06:35,18.75\n"), twoReadings);
}

TEST_F(LogShapes, AHeaderThatBeginsASensorsNameSuggestsIt)
{
    const std::string text = "Time,Vessel 1 (F)\n2026-03-07 06:30,65.3\n";
    expectAsked(text, Decision::columns, {"Time", "Vessel 1 (F)"},
                "such as --column \"Vessel 1 probe=Vessel 1 (F)\"");
    const auto preview = intake::previewLog(*m_logbook, {path("s.csv")});
    ASSERT_TRUE(preview) << preview.error().sentence();
    EXPECT_EQ(preview->columns[1].choice.of, "Vessel 1 probe");
    EXPECT_EQ(preview->columns[1].reason, "only \"Vessel 1 probe\" begins with its header");
}

TEST_F(LogShapes, ALongLogMayNameItsTimeAndItsSensors)
{
    m_options.timeColumn = "Stamp";
    m_options.longColumns = intake::LongColumns{"Name", "Value"};
    m_options.columns = {{"Beer", "b1"}};
    EXPECT_EQ(stored("Sent,Stamp,Name,Value\n2026-03-07 07:30,2026-03-07 06:30,b1,18.5\n"
                     "2026-03-07 07:35,2026-03-07 06:35,b1,18.75\n"),
              twoReadings);
}

TEST_F(LogShapes, ALogWithoutAHeaderNamesTheWayOut)
{
    EXPECT_THAT(stored("2026-03-07 06:30,18.5\n2026-03-07 06:35,18.75\n"),
                ElementsAre(HasSubstr("say --header-line 0")));
    m_options.layoutRequest.headerLine = 0;
    m_options.columns = {{"Beer", "column 2"}};
    EXPECT_EQ(stored("2026-03-07 06:30,18.5\n2026-03-07 06:35,18.75\n"), twoReadings);
}

TEST_F(LogShapes, ValuesThatCannotBeReadAreNotCalledTimes)
{
    EXPECT_THAT(stored("Time,Beer\n1772890200,warm\n1772890500,cold\n"),
                ElementsAre(HasSubstr("no value beside the times in \"Time\" can be read")));
}

} // namespace holdband::test
