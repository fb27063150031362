// Volumes of wort and beer. No Qt.
// 1 US gal = 3.785411784 L exactly (NIST Handbook 44).
#pragma once

#include <compare>

namespace holdband {

/// A volume of liquid. Stored in litres.
class Volume {
public:
    constexpr Volume() = default;
    static constexpr Volume litres(double value) { return Volume{value}; }
    static constexpr Volume usGallons(double value) { return Volume{value * litresPerUsGallon}; }
    static constexpr Volume ukGallons(double value) { return Volume{value * litresPerUkGallon}; }

    constexpr double litres() const { return m_litres; }
    constexpr double usGallons() const { return m_litres / litresPerUsGallon; }
    constexpr auto operator<=>(const Volume&) const = default;

    static constexpr double litresPerUsGallon = 3.785411784;
    static constexpr double litresPerUkGallon = 4.54609;

private:
    constexpr explicit Volume(double litres) : m_litres(litres) {}
    double m_litres = 0.0;
};

} // namespace holdband
