// Specific gravity of wort and beer at 20 °C, dimensionless (1.050). No Qt.
#pragma once

#include <compare>

namespace holdband {

class Gravity {
public:
    constexpr Gravity() = default;
    static constexpr Gravity specific(double value) { return Gravity{value}; }

    constexpr double specific() const { return m_specific; }
    constexpr auto operator<=>(const Gravity&) const = default;

private:
    constexpr explicit Gravity(double value) : m_specific(value) {}
    double m_specific = 1.0;
};

} // namespace holdband
