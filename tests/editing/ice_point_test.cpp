// The ice point compared with figures computed by hand.
#include "core/editing/ice_point.h"

#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace holdband::results {

namespace {

std::vector<Temperature> celsiusReadings(std::initializer_list<double> values)
{
    std::vector<Temperature> readings;
    for (const double value : values)
        readings.push_back(Temperature::celsius(value));
    return readings;
}

} // namespace

TEST(IcePoint, GivesOffsetAndUncertainty)
{
    const auto point =
        icePoint(celsiusReadings({0.3, 0.4, 0.2, 0.4, 0.2}), TemperatureDifference::kelvins(0.1));
    ASSERT_TRUE(point);
    EXPECT_NEAR(point->offset.kelvins(), -0.3, 1e-12);
    // s = 0.1; t(0.975; 4) = 2.776 (tables of Student's t); 2.776 · 0.1 / √5 = 0.12415
    EXPECT_NEAR(point->scatter.kelvins(), 0.12415, 1e-4);
    EXPECT_NEAR(point->rounding.kelvins(), 2.0 * 0.1 / std::sqrt(12.0), 1e-12);
    EXPECT_NEAR(point->bath.kelvins(), 0.115470, 1e-6); // 2 · 0.1 / √3
    // √(0.12415² + 0.05774² + 0.11547²)
    EXPECT_NEAR(point->doubt.kelvins(), 0.17912, 1e-4);
}

TEST(IcePoint, NamesEachTerm)
{
    const auto point =
        icePoint(celsiusReadings({0.3, 0.4, 0.2, 0.4, 0.2}), TemperatureDifference::kelvins(0.1));
    ASSERT_TRUE(point);
    EXPECT_THAT(
        icePointText(*point, TemperatureUnit::celsius),
        testing::ElementsAre(
            "The mean of 5 readings is 0.30 °C; ice melts at 0 °C: the offset is "
            "-0.3 °C.",
            "The remaining uncertainty is ± 0.18 °C (95 %), from three parts:",
            "scatter of the readings ± 0.12 °C (Student's t);",
            "rounding to the last digit ± 0.06 °C;",
            "the bath itself ± 0.12 °C, assumed within 0.1 K.",
            "It is measured at the ice point: far from it, the sensor may be off by more."));
    EXPECT_THAT(icePointText(*point, TemperatureUnit::fahrenheit, ',').front(),
                testing::HasSubstr("32,54 °F; ice melts at 32 °F: the offset is -0,54 °F"));
}

TEST(IcePoint, EqualReadingsLeaveRoundingAndBath)
{
    const auto point =
        icePoint(celsiusReadings({-0.5, -0.5, -0.5}), TemperatureDifference::kelvins(0.5));
    ASSERT_TRUE(point);
    EXPECT_DOUBLE_EQ(point->offset.kelvins(), 0.5);
    EXPECT_DOUBLE_EQ(point->scatter.kelvins(), 0.0);
    EXPECT_GT(point->doubt, point->rounding);
}

TEST(IcePoint, RefusesWhatIsNoIcePoint)
{
    const auto step = TemperatureDifference::kelvins(0.1);
    EXPECT_FALSE(icePoint(celsiusReadings({0.1, 0.2}), step));
    EXPECT_FALSE(icePoint({}, step));
    EXPECT_FALSE(icePoint(celsiusReadings({19.8, 20.1, 20.0}), step));
    EXPECT_FALSE(icePoint(celsiusReadings({0.1, 0.2, 0.1}), TemperatureDifference::kelvins(-0.1)));
    EXPECT_FALSE(icePoint(celsiusReadings({0.1, NAN, 0.1}), step));
}

} // namespace holdband::results
