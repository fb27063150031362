// A log with one value per row and a column with its unit: every row is read in its own unit.
#include "core/intake/csv/preview.h"
#include "core/intake/log/import.h"
#include "core/store/readings/meter_readings.h"
#include "tests/store/logbooks.h"

#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using intake::Meaning;
using testing::ElementsAre;
using testing::HasSubstr;

class UnitColumn : public LogbookTest {
protected:
    void SetUp() override
    {
        m_logbook = create();
        addEquipment(*m_logbook);
    }

    intake::LogPreview look(const std::string& text) const
    {
        auto seen =
            intake::previewLog(*m_logbook, {"l.csv", std::make_shared<const std::string>(text)});
        EXPECT_TRUE(seen);
        return *seen;
    }
    Result<intake::ImportReport> import(const std::string& text) const
    {
        intake::ImportOptions options;
        options.path = "l.csv";
        options.text = std::make_shared<const std::string>(text);
        options.longColumns = {"Name", "Value", "Unit"};
        options.unit = m_said;
        return intake::importLog(*m_logbook, options);
    }
    /// In °C.
    std::vector<double> values() const
    {
        return store::readSeries(*m_logbook, "Beer", {instantFromMs(0), instantFromMs(1LL << 42)})
            ->value;
    }

    std::unique_ptr<store::LogbookFile> m_logbook;
    std::optional<TemperatureUnit> m_said;
};

const std::string head = "Time,Name,Value,Unit\n";

TEST_F(UnitColumn, eachRowIsReadInItsUnit)
{
    // 68 °F = 20 °C, 69.8 °F = 21 °C (NIST SP 811: t/°C = (t/°F − 32) / 1.8).
    const auto report = import(head + "2026-03-07 06:00,Beer,68,°F\n2026-03-07 07:00,Beer,21,°C\n"
                                      "2026-03-07 08:00,Beer,71.6,degF\n"
                                      "2026-03-07 06:00,Meter,5.25,kWh\n"
                                      "2026-03-07 07:00,Meter,5310,Wh\n");
    ASSERT_TRUE(report) << report.error().sentence();
    ASSERT_EQ(values().size(), 3u);
    EXPECT_NEAR(values()[0], 20.0, 1e-9);
    EXPECT_NEAR(values()[1], 21.0, 1e-9);
    EXPECT_NEAR(values()[2], 22.0, 1e-9);
    const auto register_ = *store::readMeterReadings(*m_logbook, "Meter");
    ASSERT_EQ(register_.size(), 2u);
    EXPECT_EQ(register_[1].inForce.registerReading.kilowattHours(), 5.31);
    EXPECT_EQ(register_[1].inForce.decimals, 3);
}

TEST_F(UnitColumn, theFirstRowsUnitIsStoredAndTheConversionReported)
{
    const auto report = import(head + "2026-03-07 06:00,Beer,66.2,F\n2026-03-07 07:00,Beer,19,C\n");
    ASSERT_TRUE(report) << report.error().sentence();
    ASSERT_EQ(report->columns.size(), 1u);
    EXPECT_EQ(report->columns.front().unit, ReadingUnit::fahrenheit);
    EXPECT_EQ(report->columns.front().unitReason, "its rows say °F");
    EXPECT_THAT(report->file.warnings,
                ElementsAre("Beer: 1 value in another unit converted to °F"));
    ASSERT_EQ(report->rows.added.size(), 2u);
    EXPECT_EQ(report->rows.added[0].value, 66.2) << "as in the file";
    EXPECT_EQ(report->rows.added[1].value, 66.2); // 19 °C
    EXPECT_TRUE(report->file.ignoredColumns.empty());
}

TEST_F(UnitColumn, rowsWithAnUnknownUnitAreRejectedWithTheirLine)
{
    const auto report = import(head + "2026-03-07 06:00,Beer,20,°C\n2026-03-07 07:00,Beer,528,°R\n"
                                      "2026-03-07 08:00,Beer,20,\n2026-03-07 09:00,Beer,20,kWh\n"
                                      "2026-03-07 10:00,Beer,,\n2026-03-07 11:00,Beer,900,°F\n");
    ASSERT_TRUE(report) << report.error().sentence();
    EXPECT_EQ(values(), (std::vector<double>{20.0}));
    std::vector<std::string> rejected;
    for (const RejectedRow& row : report->file.rejected)
        rejected.push_back(std::to_string(row.line) + " " + row.column + ": " + row.reason);
    ASSERT_EQ(rejected.size(), 4u);
    EXPECT_EQ(rejected[0], "3 Beer: its unit \"°R\" is not known here");
    EXPECT_EQ(rejected[1], "4 Beer: its row has no unit");
    EXPECT_EQ(rejected[2], "5 Beer: its unit kWh is none of temperature");
    EXPECT_THAT(rejected[3], HasSubstr("7 Beer: ")); // outside the range of a probe
}

TEST_F(UnitColumn, aUnitSetForTheImportApplies)
{
    m_said = TemperatureUnit::celsius;
    const auto report = import(head + "2026-03-07 06:00,Beer,20,°F\n2026-03-07 07:00,Beer,21,K\n");
    ASSERT_TRUE(report) << report.error().sentence();
    EXPECT_EQ(values(), (std::vector<double>{20.0, 21.0}));
}

TEST_F(UnitColumn, isFoundByItsContent)
{
    const auto seen = look("Time,Unit,Name,Value\n2026-03-07 06:00,°F,Beer,68\n"
                           "2026-03-07 06:00,kWh,Meter,5.2\n2026-03-07 07:00,°F,Beer,69\n"
                           "2026-03-07 07:00,kWh,Meter,5.3\n");
    EXPECT_EQ(seen.columns[1].choice.meaning, Meaning::unit);
    EXPECT_EQ(seen.columns[1].reason, "its rows are units");
    EXPECT_EQ(seen.columns[2].choice.meaning, Meaning::name);
    EXPECT_EQ(seen.columns[3].choice.meaning, Meaning::value);
}

TEST_F(UnitColumn, vesselsNamedLikeUnitsAreNames)
{
    const auto seen = look("Time,Vessel,Value\n2026-03-07 06:00,C,20\n2026-03-07 06:00,F,21\n"
                           "2026-03-07 07:00,C,20\n2026-03-07 07:00,F,21\n");
    EXPECT_EQ(seen.columns[1].choice.meaning, Meaning::name);
}

TEST_F(UnitColumn, withoutNamesAndValuesIsRefused)
{
    const std::string text = "Time,Beer,Unit\n2026-03-07 06:00,20,°C\n2026-03-07 07:00,21,°C\n";
    const auto seen = look(text);
    intake::ImportOptions options;
    options.path = "l.csv";
    options.text = std::make_shared<const std::string>(text);
    options.map = seen.map();
    options.map->columns[2].meaning = Meaning::unit;
    options.layout = seen.layout;
    const auto report = intake::importLog(*m_logbook, options);
    ASSERT_FALSE(report);
    EXPECT_EQ(report.error().decision, Decision::columns);
    EXPECT_THAT(report.error().what, HasSubstr("a column of units"));
}

} // namespace
} // namespace holdband::test
