// Absolute temperatures and differences of temperature are two types: subtracting two absolutes
// gives a difference, adding two absolutes does not compile. No Qt.
// Conversions: NIST SP 811; a difference of 1 K is 1.8 °F of difference.
#pragma once

#include <compare>

namespace holdband {

/// A difference of temperature: a tolerance, a deviation, an offset. Stored in kelvins.
class TemperatureDifference {
public:
    constexpr TemperatureDifference() = default;
    static constexpr TemperatureDifference kelvins(double value)
    {
        return TemperatureDifference{value};
    }
    /// Degrees Fahrenheit of difference (not a reading on the scale).
    static constexpr TemperatureDifference fahrenheitDegrees(double value)
    {
        return TemperatureDifference{value / 1.8};
    }

    constexpr double kelvins() const { return m_kelvins; }
    constexpr double fahrenheitDegrees() const { return m_kelvins * 1.8; }

    constexpr auto operator<=>(const TemperatureDifference&) const = default;
    constexpr TemperatureDifference operator-() const { return TemperatureDifference{-m_kelvins}; }
    constexpr TemperatureDifference operator+(TemperatureDifference other) const
    {
        return TemperatureDifference{m_kelvins + other.m_kelvins};
    }
    constexpr TemperatureDifference operator-(TemperatureDifference other) const
    {
        return TemperatureDifference{m_kelvins - other.m_kelvins};
    }
    constexpr TemperatureDifference operator*(double factor) const
    {
        return TemperatureDifference{m_kelvins * factor};
    }

private:
    constexpr explicit TemperatureDifference(double value) : m_kelvins(value) {}
    double m_kelvins = 0.0;
};

/// An absolute temperature on the Celsius or Fahrenheit scale. Stored in °C.
class Temperature {
public:
    constexpr Temperature() = default;
    static constexpr Temperature celsius(double value) { return Temperature{value}; }
    static constexpr Temperature fahrenheit(double value)
    {
        return Temperature{(value - 32.0) / 1.8};
    }

    constexpr double celsius() const { return m_celsius; }
    constexpr double fahrenheit() const { return m_celsius * 1.8 + 32.0; }

    constexpr auto operator<=>(const Temperature&) const = default;
    constexpr TemperatureDifference operator-(Temperature other) const
    {
        return TemperatureDifference::kelvins(m_celsius - other.m_celsius);
    }
    constexpr Temperature operator+(TemperatureDifference by) const
    {
        return Temperature{m_celsius + by.kelvins()};
    }
    constexpr Temperature operator-(TemperatureDifference by) const
    {
        return Temperature{m_celsius - by.kelvins()};
    }

private:
    constexpr explicit Temperature(double value) : m_celsius(value) {}
    double m_celsius = 0.0;
};

/// The scale in which a temperature was written down or is shown.
enum class TemperatureUnit { celsius, fahrenheit };

constexpr Temperature temperatureFrom(double value, TemperatureUnit unit)
{
    return unit == TemperatureUnit::celsius ? Temperature::celsius(value)
                                            : Temperature::fahrenheit(value);
}

constexpr double valueIn(Temperature temperature, TemperatureUnit unit)
{
    return unit == TemperatureUnit::celsius ? temperature.celsius() : temperature.fahrenheit();
}

/// How many degrees of `unit` a difference of 1 K is: 1 or 1.8.
constexpr double degreesPerKelvin(TemperatureUnit unit)
{
    return unit == TemperatureUnit::fahrenheit
               ? TemperatureDifference::kelvins(1.0).fahrenheitDegrees()
               : 1.0;
}

/// A quantity for each kelvin of difference as it is for each degree of `unit`: kWh/(K·d) as
/// kWh/(°F·d).
constexpr double perDegree(double perKelvin, TemperatureUnit unit)
{
    return perKelvin / degreesPerKelvin(unit);
}

constexpr double valueIn(TemperatureDifference difference, TemperatureUnit unit)
{
    return unit == TemperatureUnit::celsius ? difference.kelvins() : difference.fahrenheitDegrees();
}

} // namespace holdband
