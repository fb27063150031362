// Quantities as text with their units, for the window and the command line. A plain space separates
// the value from its unit.
#pragma once

#include "core/quantity/energy.h"
#include "core/quantity/gravity.h"
#include "core/quantity/temperature.h"
#include "core/quantity/unit_system.h"
#include "core/quantity/volume.h"

#include <string>
#include <string_view>

namespace holdband {

/// "°F" or "°C"
std::string_view unitText(TemperatureUnit unit);
/// "66.0 °F", "18.9 °C"
std::string temperatureText(Temperature temperature, TemperatureUnit unit, int decimals = 1,
                            char decimalSign = '.');
/// "3 °F", "1.67 °C": at most `decimals` places, without zeros at the end
std::string differenceText(TemperatureDifference difference, TemperatureUnit unit, int decimals = 2,
                           char decimalSign = '.');
/// "11.52 kWh"
std::string energyText(Energy energy, int decimals = 2, char decimalSign = '.');
/// "85 W"
std::string powerText(Power power, int decimals = 0, char decimalSign = '.');
/// "$1.73" for USD, "1.73 EUR" for any other, "1.73" where the currency is empty
std::string moneyText(double amount, std::string_view currency, char decimalSign = '.');
/// A share given as a fraction: 0.987 is "98.7 %". A share below 1 never rounds up to "100.0 %".
std::string shareText(double share, int decimals = 1, char decimalSign = '.');
/// "5 gal", "19 L": at most one place, without zeros at the end
std::string volumeText(Volume volume, UnitSystem units, char decimalSign = '.');
/// "1.050"
std::string gravityText(Gravity gravity, char decimalSign = '.');

} // namespace holdband
