// A column with the energy of each interval is not a register; a register with faults is.
#include "core/intake/log/import.h"
#include "core/store/readings/imports.h"
#include "tests/store/logbooks.h"
#include "tests/store/saying.h"

#include <fstream>
#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using testing::HasSubstr;

class RegisterColumn : public LogbookTest {
protected:
    void SetUp() override
    {
        m_logbook = create();
        addEquipment(*m_logbook);
    }

    /// One row per hour.
    std::string write(const std::vector<std::string>& values, const std::string& unit) const
    {
        std::ofstream file(path("w.csv"), std::ios::binary);
        file << "Time,Meter (" << unit << ")\n";
        for (std::size_t i = 0; i < values.size(); ++i)
            file << 1'772'000'000 + 3'600 * i << "," << values[i] << "\n";
        return path("w.csv");
    }
    Result<intake::ImportReport> import(const std::vector<std::string>& values,
                                        const std::string& unit = "kWh",
                                        std::optional<MeterEvent> drop = std::nullopt) const
    {
        intake::ImportOptions options;
        options.path = write(values, unit);
        options.registerDrop = drop;
        return intake::importLog(*m_logbook, options);
    }
    std::size_t stored() const { return store::readMeterReadings(*m_logbook, "Meter")->size(); }

    std::unique_ptr<store::LogbookFile> m_logbook;
};

TEST_F(RegisterColumn, wattHoursOfEachSlotAreRefusedAndNothingIsStored)
{
    // A compressor that runs in every fourth interval: 25 times 125 Wh are 3.125 kWh.
    std::vector<std::string> intervals;
    for (int i = 0; i < 100; ++i)
        intervals.push_back(i % 4 == 1 ? "125" : "0");
    for (const auto drop : {std::optional<MeterEvent>(), std::optional(MeterEvent::reset)}) {
        const auto report = import(intervals, "Wh", drop);
        ASSERT_FALSE(report);
        EXPECT_THAT(report.error().sentence(), HasSubstr("energy of each interval"));
        EXPECT_THAT(report.error().sentence(), HasSubstr("fall in 25 of the 50 rows"));
        EXPECT_THAT(report.error().place, HasSubstr("w.csv, line 4, column Meter (Wh)"));
        EXPECT_THAT(report.error().remedy, Not(HasSubstr("--event")));
        EXPECT_EQ(stored(), 0u);
        EXPECT_TRUE(store::listImports(*m_logbook)->empty());
    }
}

TEST_F(RegisterColumn, aKilowattHourADayIsRefused)
{
    const auto report = import({"1.02", "0.97", "1.05", "0.99", "1.01", "0.96", "1.00"});
    ASSERT_FALSE(report);
    EXPECT_THAT(report.error().sentence(), HasSubstr("energy of each interval"));
    EXPECT_THAT(report.error().sentence(), HasSubstr("first from 1.02 to 0.97"));
}

TEST_F(RegisterColumn, aRegisterThatRisesByOneADayIsOne)
{
    const auto report = import({"411", "412", "413", "413", "414", "415", "416"});
    ASSERT_TRUE(report) << report.error().sentence();
    EXPECT_EQ(report->added(), 7);
}

TEST_F(RegisterColumn, aFewFallsAreAskedAboutAsBefore)
{
    // Two resets in a short log; one mistyped row.
    for (const auto& values :
         {std::vector<std::string>{"8.0", "8.5", "0.2", "0.9", "0.1", "0.4"},
          std::vector<std::string>{"8.0", "85.0", "9.0", "9.5", "10.0", "10.5"}}) {
        const auto asked = import(values);
        ASSERT_FALSE(asked);
        EXPECT_EQ(asked.error().decision, Decision::registerDrop);
        EXPECT_THAT(asked.error().remedy, HasSubstr("--event reset"));
    }
    const auto decided =
        import({"8.0", "8.5", "0.2", "0.9", "0.1", "0.4"}, "kWh", MeterEvent::reset);
    ASSERT_TRUE(decided) << decided.error().sentence();
    EXPECT_EQ(stored(), 6u);
}

TEST_F(RegisterColumn, aCounterThatIsResetEachDayIsAskedAboutAsBefore)
{
    std::vector<std::string> values;
    for (int day = 0; day < 10; ++day)
        for (const char* value : {"0.3", "0.6", "0.9", "1.2"})
            values.push_back(value);
    EXPECT_EQ(import(values).error().decision, Decision::registerDrop);
    EXPECT_TRUE(import(values, "kWh", MeterEvent::reset));
}

TEST_F(RegisterColumn, aRegisterThatRollsOverOftenIsOne)
{
    auto change = store::Change::begin(*m_logbook, saying("a meter of three digits"));
    ASSERT_TRUE(change);
    Meter meter;
    meter.name = "Short";
    meter.setup = "Loop";
    meter.rollsOverAt = Energy::kilowattHours(10);
    ASSERT_TRUE(store::addMeter(*change, meter));
    ASSERT_TRUE(change->commit());
    std::ofstream(path("s.csv")) << "Time,Short\n1772000000,9.5\n1772003600,0.5\n1772007200,9.6\n"
                                    "1772010800,0.2\n1772014400,9.4\n1772018000,0.1\n";
    intake::ImportOptions options;
    options.path = path("s.csv");
    const auto report = intake::importLog(*m_logbook, options);
    ASSERT_TRUE(report) << report.error().sentence();
    EXPECT_EQ(report->added(), 6);
}

} // namespace
} // namespace holdband::test
