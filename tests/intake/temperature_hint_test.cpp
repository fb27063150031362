// Which ignored columns are pointed out as temperatures.
#include "core/intake/csv/temperature_hint.h"
#include "tests/store/logbooks.h"

#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using intake::looksLikeTemperature;
using testing::ElementsAre;
using testing::IsEmpty;

using Cells = std::vector<std::string_view>;

constexpr TemperatureUnit celsius = TemperatureUnit::celsius;
constexpr TemperatureUnit fahrenheit = TemperatureUnit::fahrenheit;

const Cells beerCells{"18.6", "18.5", "18.5", "18.7"};

TEST(TemperatureHint, AUnitOfTemperatureInTheHeaderIsEnough)
{
    for (const char* header : {"X (°F)", "x [°C]", "Kessel degC", "P7 (K)", "Setpoint (C)"})
        EXPECT_TRUE(looksLikeTemperature(header, {"3", "300"}, celsius)) << header;
    EXPECT_TRUE(looksLikeTemperature("x", {"68.2 °F", "68.4 °F"}, celsius));
}

TEST(TemperatureHint, AWordOfTheHeaderIsEnoughForPlausibleNumbers)
{
    for (const char* header : {"Temp", "T1", "t_2", "beer_temp", "Kellertemperatur", "Probe 2",
                               "Cellar", "Fühler 3", "Beer (north)", "Vessel C", "Battery temp"})
        EXPECT_TRUE(looksLikeTemperature(header, {"18", "18"}, celsius)) << header;
    EXPECT_TRUE(looksLikeTemperature("Cellar", {"55", "54"}, celsius)) << "in °F";
    EXPECT_TRUE(looksLikeTemperature("Glycol temp", {"-12", "-12"}, celsius));
    EXPECT_FALSE(looksLikeTemperature("Probe 2", {"1013", "1012"}, celsius));
    EXPECT_FALSE(looksLikeTemperature("Temp alarm", {"0", "1", "0"}, celsius));
    EXPECT_FALSE(looksLikeTemperature("Beer", {"1.048", "1.047"}, celsius)) << "a gravity";
}

TEST(TemperatureHint, AnotherQuantityIsNone)
{
    for (const char* header :
         {"Beer (SG)", "Loop (kWh)", "Room (%)", "Room RH", "Battery (V)", "Batt", "Tank (bar)",
          "Tank pressure", "pH", "Beer volume", "Probe 1 rssi", "Pump rpm", "Room (min)"})
        EXPECT_FALSE(looksLikeTemperature(header, beerCells, celsius)) << header;
    EXPECT_FALSE(looksLikeTemperature("x", {"18.5 kWh", "18.6 kWh", "18.4 kWh"}, celsius));
}

TEST(TemperatureHint, WithoutAWordTheNumbersDecide)
{
    EXPECT_TRUE(looksLikeTemperature("A", beerCells, celsius));
    EXPECT_TRUE(looksLikeTemperature("", {"18,5", "18,25", "--", "18,5"}, celsius));
    EXPECT_FALSE(looksLikeTemperature("A", beerCells, fahrenheit)) << "−7 °C";
    EXPECT_TRUE(looksLikeTemperature("A", {"68.2", "68.4", "68.3"}, fahrenheit));
    EXPECT_FALSE(looksLikeTemperature("A", {"68.2", "68.4", "68.3"}, celsius));
    EXPECT_FALSE(looksLikeTemperature("A", {"18.5", "18.6"}, celsius)) << "too few";
    EXPECT_FALSE(looksLikeTemperature("A", {"18", "19", "18"}, celsius)) << "codes";
    EXPECT_FALSE(looksLikeTemperature("A", {"18.5", "18.9", "19.2"}, celsius)) << "a register";
    EXPECT_FALSE(looksLikeTemperature("A", {"0.2", "1.0", "0.5"}, celsius)) << "a share";
    EXPECT_FALSE(looksLikeTemperature("A", {"0.5", "20", "99", "3", "80"}, celsius)) << "a duty";
}

TEST(TemperatureHint, TextsAndMissingValuesAreNone)
{
    EXPECT_FALSE(looksLikeTemperature("Temp (°C)", {}, celsius));
    EXPECT_FALSE(looksLikeTemperature("Temp (°C)", {"", "--", "N/A"}, celsius));
    EXPECT_FALSE(looksLikeTemperature("Temp", {"warm", "cold", "18"}, celsius));
}

class IgnoredTemperatures : public LogbookTest {
protected:
    void SetUp() override
    {
        m_logbook = create();
        ASSERT_TRUE(m_logbook);
        addEquipment(*m_logbook);
    }
    intake::LogPreview look(std::string text) const
    {
        auto seen = intake::previewLog(
            *m_logbook, {"u.csv", std::make_shared<const std::string>(std::move(text))});
        return seen ? *seen : intake::LogPreview{};
    }

    std::unique_ptr<store::LogbookFile> m_logbook;
};

const std::string threeProbes = "Time,Beer,Probe 2,Lid,Cellar (°F)\n"
                                "2026-03-07 06:00,18.5,18.6,1,55\n"
                                "2026-03-07 06:05,18.6,18.7,0,55\n";

TEST_F(IgnoredTemperatures, AreThoseThatNothingInTheLogbookIsCalled)
{
    const auto seen = look(threeProbes);
    EXPECT_THAT(intake::ignoredTemperatures(seen, seen.map()), ElementsAre(2u, 4u));
    auto map = seen.map();
    map.columns[2] = {intake::Meaning::reading, "Beer"};
    EXPECT_THAT(intake::ignoredTemperatures(seen, map), ElementsAre(4u));
}

TEST_F(IgnoredTemperatures, AreNotPointedOutOnceTheyWereIgnoredByChoice)
{
    auto seen = look(threeProbes);
    intake::applyMap(*m_logbook, seen.map(), seen);
    EXPECT_THAT(intake::ignoredTemperatures(seen, seen.map()), IsEmpty());
}

TEST_F(IgnoredTemperatures, AreFoundWithoutAHeader)
{
    const auto seen = look("2026-03-07 06:00,18.5,3\n2026-03-07 06:05,18.6,3\n"
                           "2026-03-07 06:10,18.4,3\n");
    EXPECT_THAT(intake::ignoredTemperatures(seen, seen.map()), ElementsAre(1u));
}

} // namespace
} // namespace holdband::test
