// Durations, quantities, names.
#include "core/text/durations.h"
#include "core/text/name_suggestions.h"
#include "core/text/quantities.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>

using namespace holdband;
using namespace std::chrono_literals;

TEST(DurationText, picksItsUnit)
{
    EXPECT_EQ(durationText(Milliseconds{0}), "0 s");
    EXPECT_EQ(durationText(Milliseconds{59'400}), "59 s");
    EXPECT_EQ(durationText(Milliseconds{59'600}), "1 min");
    EXPECT_EQ(durationText(Milliseconds{48min}), "48 min");
    EXPECT_EQ(durationText(Milliseconds{3h + 12min}), "3 h 12 min");
    EXPECT_EQ(durationText(Milliseconds{59min + 40s}), "1 h");
    EXPECT_EQ(durationText(Milliseconds{324h}), "13.5 days");
    EXPECT_EQ(durationText(Milliseconds{324h}, ','), "13,5 days");
    EXPECT_EQ(durationText(Hours{288.0}), "12 days");
    EXPECT_EQ(durationText(Milliseconds{-90min}), "-1 h 30 min");
}

TEST(Words, HugeLengthsAreWrittenToo)
{
    constexpr double infinite = std::numeric_limits<double>::infinity();
    EXPECT_EQ(durationText(Hours{1e300}), durationText(Hours{infinite}));
    EXPECT_EQ(durationText(Hours{-1e300}), "-" + durationText(Hours{1e300}));
    EXPECT_EQ(durationText(Hours{std::nan("")}), "0 s");
    EXPECT_EQ(durationText(Milliseconds::min()), "-" + durationText(Milliseconds::max()));
}

TEST(QuantityText, temperaturesAndDifferences)
{
    // 68 °F = 20 °C; a difference of 3 °F is 1.66666666667 K (GNU units 2.22, NIST SP 811).
    EXPECT_EQ(temperatureText(Temperature::celsius(20.0), TemperatureUnit::fahrenheit), "68.0 °F");
    EXPECT_EQ(temperatureText(Temperature::fahrenheit(66.0), TemperatureUnit::celsius), "18.9 °C");
    EXPECT_EQ(
        differenceText(TemperatureDifference::fahrenheitDegrees(3.0), TemperatureUnit::fahrenheit),
        "3 °F");
    EXPECT_EQ(
        differenceText(TemperatureDifference::fahrenheitDegrees(3.0), TemperatureUnit::celsius),
        "1.67 °C");
    EXPECT_EQ(temperatureText(Temperature::celsius(-0.01), TemperatureUnit::celsius, 1, ','),
              "0,0 °C");
}

TEST(QuantityText, energyMoneyAndTheRest)
{
    EXPECT_EQ(energyText(Energy::kilowattHours(11.52)), "11.52 kWh");
    EXPECT_EQ(powerText(Power::watts(84.6)), "85 W");
    EXPECT_EQ(moneyText(1.728, "USD"), "$1.73");
    EXPECT_EQ(moneyText(1.728, "EUR", ','), "1,73 EUR");
    EXPECT_EQ(moneyText(1.728, ""), "1.73");
    EXPECT_EQ(moneyText(-2.0, "USD"), "-$2.00");
    EXPECT_EQ(moneyText(-0.001, "USD"), "$0.00");
    EXPECT_EQ(volumeText(Volume::usGallons(5.0), UnitSystem::us), "5 gal");
    EXPECT_EQ(volumeText(Volume::usGallons(5.0), UnitSystem::metric), "18.9 L");
    EXPECT_EQ(gravityText(Gravity::specific(1.05)), "1.050");
}

TEST(QuantityText, aShareShortOfTheWholeIsNeverTheWhole)
{
    EXPECT_EQ(shareText(0.987), "98.7 %");
    EXPECT_EQ(shareText(1.0), "100.0 %");
    EXPECT_EQ(shareText(0.99999), "99.9 %");
    EXPECT_EQ(shareText(0.9994), "99.9 %");
    EXPECT_EQ(shareText(0.0), "0.0 %");
}

TEST(NameSuggestions, findTyposCaseAndParts)
{
    const std::vector<std::string> known{"Trial 1", "Trial 2", "Märzen", "Cabinet beer"};
    EXPECT_EQ(suggestedNames("trial 1", known).front(), "Trial 1");
    EXPECT_EQ(suggestedNames("Tiral 2", known).front(), "Trial 2");
    EXPECT_EQ(suggestedNames("MÄRZEN", known), std::vector<std::string>{"Märzen"});
    EXPECT_EQ(suggestedNames("Cabinet", known), std::vector<std::string>{"Cabinet beer"});
    EXPECT_TRUE(suggestedNames("Zwickel", known).empty());
    EXPECT_EQ(suggestedNames(std::string(10'000, 'x'), known).size(), 0u);
}

TEST(NameSuggestions, alwaysHelp)
{
    EXPECT_EQ(suggestion("Trial 3", {"Trial 1", "Trial 2"}), "did you mean Trial 1, Trial 2?");
    EXPECT_EQ(suggestion("Zwickel", {"Trial 1"}), "there are: Trial 1");
    EXPECT_EQ(suggestion("Zwickel", {}), "there are none");
    EXPECT_EQ(joined({"A", "B", "C"}, 2), "A, B and 1 more");
}

TEST(Listed, namesAllOfThem)
{
    EXPECT_EQ(listed({}), "");
    EXPECT_EQ(listed({"A"}), "A");
    EXPECT_EQ(listed({"A", "B"}), "A and B");
    EXPECT_EQ(listed({"A", "B", "C"}), "A, B and C");
}

TEST(Folded, givesTheSameNameForConfusableOnes)
{
    EXPECT_EQ(folded("  Loop   Beer "), folded("loop beer"));
    EXPECT_EQ(folded("MÄRZEN"), folded("märzen"));
}
