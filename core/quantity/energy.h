// Energy, power and money. No Qt.
// Conversions: 1 kWh = 3,600,000 J exactly; 1 Btu(IT) = 1055.05585262 J (NIST SP 811).
#pragma once

#include "core/quantity/instant.h"

#include <compare>

namespace holdband {

/// An amount of energy. Stored in kilowatt-hours.
class Energy {
public:
    constexpr Energy() = default;
    static constexpr Energy kilowattHours(double value) { return Energy{value}; }
    static constexpr Energy joules(double value) { return Energy{value / 3.6e6}; }

    constexpr double kilowattHours() const { return m_kwh; }
    constexpr double joules() const { return m_kwh * 3.6e6; }
    constexpr double btu() const { return joules() / 1055.05585262; }

    constexpr auto operator<=>(const Energy&) const = default;
    constexpr Energy operator+(Energy other) const { return Energy{m_kwh + other.m_kwh}; }
    constexpr Energy operator-(Energy other) const { return Energy{m_kwh - other.m_kwh}; }
    constexpr Energy operator*(double factor) const { return Energy{m_kwh * factor}; }

private:
    constexpr explicit Energy(double kwh) : m_kwh(kwh) {}
    double m_kwh = 0.0;
};

/// Electrical power. Stored in watts.
class Power {
public:
    constexpr Power() = default;
    static constexpr Power watts(double value) { return Power{value}; }

    constexpr double watts() const { return m_watts; }
    constexpr auto operator<=>(const Power&) const = default;
    constexpr Energy over(Hours length) const
    {
        return Energy::kilowattHours(m_watts / 1000.0 * length.count());
    }

private:
    constexpr explicit Power(double watts) : m_watts(watts) {}
    double m_watts = 0.0;
};

} // namespace holdband
