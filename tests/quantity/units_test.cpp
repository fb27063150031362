// Conversions checked against GNU units 2.22, which cites NIST SP 811, SP 330 and Handbook 44.
#include "core/quantity/energy.h"
#include "core/quantity/instant.h"
#include "core/quantity/temperature.h"
#include "core/quantity/volume.h"

#include <cmath>
#include <gtest/gtest.h>
#include <type_traits>

namespace holdband::test {
namespace {

/// Relative tolerance 1e-9, the number of digits in the source.
void expectSame(double actual, double published)
{
    EXPECT_NEAR(actual, published, std::abs(published) * 1e-9);
}

TEST(Temperatures, PointsOnTheScale)
{
    // GNU units 2.22: tempF(68) = tempC(20).
    expectSame(Temperature::fahrenheit(68).celsius(), 20.0);
    expectSame(Temperature::celsius(20).fahrenheit(), 68.0);
    EXPECT_NEAR(Temperature::fahrenheit(32).celsius(), 0.0, 1e-12);
    EXPECT_NEAR(Temperature::fahrenheit(-40).celsius(), -40.0, 1e-12);
}

TEST(Temperatures, DifferencesAreNotPoints)
{
    // GNU units 2.22: 3 degF of difference = 1.66666666667 K; the point formula gives −16.1.
    expectSame(TemperatureDifference::fahrenheitDegrees(3).kelvins(), 1.66666666666667);
    expectSame(TemperatureDifference::kelvins(1).fahrenheitDegrees(), 1.8);
    expectSame((Temperature::fahrenheit(71) - Temperature::fahrenheit(68)).fahrenheitDegrees(), 3);
    expectSame(valueIn(TemperatureDifference::kelvins(2), TemperatureUnit::fahrenheit), 3.6);
    expectSame(valueIn(Temperature::celsius(2), TemperatureUnit::fahrenheit), 35.6);
    expectSame(temperatureFrom(50, TemperatureUnit::fahrenheit).celsius(), 10.0);
}

template <typename A, typename B>
concept Addable = requires(A a, B b)
{
    a + b;
};

TEST(Temperatures, TwoPointsCannotBeAdded)
{
    static_assert(!Addable<Temperature, Temperature>);
    static_assert(Addable<Temperature, TemperatureDifference>);
    static_assert(std::is_same_v<decltype(Temperature{} - Temperature{}), TemperatureDifference>);
    expectSame((Temperature::celsius(20) + TemperatureDifference::kelvins(1.5)).celsius(), 21.5);
}

TEST(Volumes, Gallons)
{
    // GNU units 2.22 (NIST Handbook 44).
    expectSame(Volume::usGallons(1).litres(), 3.785411784);
    expectSame(Volume::usGallons(5).litres(), 18.92705892);
    expectSame(Volume::ukGallons(1).litres(), 4.54609);
    expectSame(Volume::litres(3.785411784).usGallons(), 1.0);
}

TEST(Energies, KilowattHours)
{
    // GNU units 2.22: 1 kWh = 3,600,000 J = 3412.14163313 Btu(IT).
    expectSame(Energy::kilowattHours(1).joules(), 3'600'000);
    expectSame(Energy::kilowattHours(1).btu(), 3412.14163313);
    expectSame(Energy::joules(1055.05585262).btu(), 1.0);
}

TEST(Energies, PowerOverTime)
{
    expectSame(Power::watts(900).over(Hours{12}).kilowattHours(), 10.8);
    expectSame(Power::watts(90).over(std::chrono::minutes{20}).kilowattHours(), 0.03);
}

TEST(Instants, SpansAreHalfOpen)
{
    const Span span{instantFromMs(0), instantFromMs(3'600'000)};
    EXPECT_DOUBLE_EQ(span.hours(), 1.0);
    EXPECT_TRUE((Span{span.end, span.start}).empty());
    EXPECT_DOUBLE_EQ((Span{span.end, span.start}).hours(), 0.0);
    EXPECT_TRUE(intersection(span, {span.end, span.end + Milliseconds{5}}).empty());
    EXPECT_EQ(toMilliseconds(Hours{1.0 / 3.0}), Milliseconds{1'200'000});
    EXPECT_EQ(toMs(instantFromMs(-1'041'337'172'130)), -1'041'337'172'130);
}

} // namespace
} // namespace holdband::test
