// Logs with the energy of each interval: Wh or kWh, of ten minutes, of an hour, of a day.
#include "core/intake/log/import.h"
#include "core/text/numbers.h"
#include "core/text/times.h"
#include "tests/store/logbooks.h"
#include "tests/store/saying.h"

#include <fstream>
#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::SizeIs;

class IntervalLog : public LogbookTest {
protected:
    void SetUp() override
    {
        m_logbook = createInDenver();
        ASSERT_TRUE(m_logbook);
        auto change = store::Change::begin(*m_logbook, saying("equipment"));
        holdband::Setup cabinet;
        cabinet.name = "Cabinet";
        Sensor plug;
        plug.name = "Plug";
        plug.reads = SensorKind::intervalEnergy;
        plug.setup = "Cabinet";
        ASSERT_TRUE(store::addSetup(*change, cabinet));
        ASSERT_TRUE(store::addSensor(*change, plug));
        ASSERT_TRUE(change->commit());
    }

    Result<intake::ImportReport> import(const std::string& text) const
    {
        intake::ImportOptions options = m_options;
        std::ofstream(path("s.csv"), std::ios::binary) << text;
        options.path = path("s.csv");
        return intake::importLog(*m_logbook, options);
    }

    /// "2026-03-07T07:00:00.000Z 0.06 kWh" for each stored reading.
    std::vector<std::string> stored(const std::string& text) const
    {
        const auto report = import(text);
        if (!report)
            return {report.error().sentence()};
        const auto series =
            store::readSeries(*m_logbook, "Plug", {instantFromMs(0), instantFromMs(1LL << 42)});
        std::vector<std::string> list;
        for (std::size_t i = 0; i < series->at.size(); ++i)
            list.push_back(rfc3339Utc(series->at[i]) + " " + shortestText(series->value[i]) +
                           " kWh");
        return list;
    }

    std::unique_ptr<store::LogbookFile> m_logbook;
    intake::ImportOptions m_options;
};

TEST_F(IntervalLog, OfTenMinutesInWh)
{
    EXPECT_THAT(
        stored("Time,Plug (Wh)\n2026-03-07 00:00,60\n2026-03-07 00:10,50\n"),
        ElementsAre("2026-03-07T07:00:00.000Z 0.06 kWh", "2026-03-07T07:10:00.000Z 0.05 kWh"));
}

TEST_F(IntervalLog, OfADayWithADateOnly)
{
    EXPECT_THAT(stored("Day,Plug (kWh)\n2026-03-07,1.5\n2026-03-08,1.25\n2026-03-09,1\n"),
                ElementsAre("2026-03-07T07:00:00.000Z 1.5 kWh", "2026-03-08T07:00:00.000Z 1.25 kWh",
                            "2026-03-09T06:00:00.000Z 1 kWh"))
        << "9 March begins an hour earlier in UTC: clocks went forward";
}

TEST_F(IntervalLog, WithItsUnitInTheCells)
{
    EXPECT_THAT(
        stored("Time,Plug\n2026-03-07 00:00,60 Wh\n2026-03-07 01:00,0.05 kWh\n"),
        ElementsAre("2026-03-07T07:00:00.000Z 0.06 kWh", "2026-03-07T08:00:00.000Z 0.05 kWh"));
}

// Two ways: 60 may be Wh or kWh.
TEST_F(IntervalLog, WithoutAUnitItAsks)
{
    const std::string text = "Time,Plug\n2026-03-07 00:00,60\n2026-03-07 00:10,50\n";
    const auto asked = import(text);
    ASSERT_FALSE(asked);
    EXPECT_EQ(asked.error().decision, Decision::unit);
    EXPECT_THAT(asked.error().options, ElementsAre("wh", "kwh"));
    EXPECT_THAT(asked.error().sentence(), HasSubstr("column Plug"));
    m_options.energyUnit = ReadingUnit::wattHour;
    EXPECT_THAT(stored(text), ElementsAre("2026-03-07T07:00:00.000Z 0.06 kWh",
                                          "2026-03-07T07:10:00.000Z 0.05 kWh"));
}

// The other way round: a running total is no interval energy.
TEST_F(IntervalLog, ARegisterIsRefused)
{
    std::string text = "Time,Plug (kWh)\n";
    for (int hour = 0; hour < 24; ++hour)
        text += "2026-03-07 " + std::string(hour < 10 ? "0" : "") + std::to_string(hour) + ":00," +
                std::to_string(100 + hour) + "\n";
    const auto refused = import(text);
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().sentence(), HasSubstr("looks like a meter's register"));
    EXPECT_THAT(stored("Time,Plug (kWh)\n2026-03-07 00:00,1\n2026-03-07 01:00,2\n"), SizeIs(2))
        << "two rises say nothing";
}

TEST_F(IntervalLog, ANegativeEnergyIsRejected)
{
    const auto report = import("Time,Plug (Wh)\n2026-03-07 00:00,60\n2026-03-07 00:10,-5\n");
    ASSERT_TRUE(report) << report.error().sentence();
    ASSERT_THAT(report->file.rejected, SizeIs(1));
    EXPECT_THAT(report->file.rejected.front().reason, HasSubstr("below 0"));
}

} // namespace
} // namespace holdband::test
