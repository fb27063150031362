// How the numbers of a forecast are written. Not for use outside core/results.
#pragma once

#include "core/results/comparison/side_format.h"

#include <cmath>
#include <string>

namespace holdband::results {

struct ForecastFormat : SideFormat {
    /// One place, two below 1.
    static int places(double value) { return std::abs(value) < 1.0 ? 2 : 1; }
    std::string kwh(double value) const
    {
        return energyText(Energy::kilowattHours(value), places(value), decimalSign);
    }
    /// "8.5 (7.5 – 9.6)"
    std::string withRange(double value, double low, double high, int decimals) const
    {
        return fixed(value, decimals) + " (" + range(low, high, decimals) + ")";
    }
    /// "8.5 kWh (7.5 – 9.6)"
    std::string kwh(double value, double low, double high) const
    {
        return kwh(value) + " (" + range(low, high, places(value)) + ")";
    }
    static int hourPlaces(double hours) { return hours < 10.0 ? 1 : 0; }
    /// "14 h", below 10 h "3.5 h"
    std::string hours(double value) const { return fixed(value, hourPlaces(value)) + " h"; }
    std::string hours(double value, double low, double high) const
    {
        return hours(value) + " (" + range(low, high, hourPlaces(value)) + ")";
    }
    /// "19 °F of lift" without its words
    std::string lift(double kelvins) const { return difference(kelvins, 1); }
    std::string percent(double fraction) const { return share(fraction, 0); }

    using SideFormat::share;
    std::string share(double fraction, int decimals) const
    {
        return shareText(fraction, decimals, decimalSign);
    }
};

} // namespace holdband::results
