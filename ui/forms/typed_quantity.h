// Quantities as a person types them: in the logbook's units and with the person's decimal sign,
// or with a unit of their own behind the number ("19 C", "5 d", "1.5 kW"). No widgets.
#pragma once

#include "core/problem.h"
#include "core/quantity/energy.h"
#include "core/quantity/gravity.h"
#include "core/quantity/instant.h"
#include "core/quantity/temperature.h"
#include "core/quantity/volume.h"
#include "ui/forms/unit_format.h"

#include <QString>
#include <optional>

namespace holdband::ui {

/// What is typed, with the unit in which its number is passed on.
enum class Quantity {
    temperature, ///< °C
    difference,  ///< K
    hours,       ///< h
    volume,      ///< L
    gravity,     ///< specific gravity, dimensionless
    power,       ///< W
    energy,      ///< kWh
    money,       ///< the logbook's currency
    percent,     ///< a fraction: 2 % is 0.02
    number,      ///< dimensionless
};

/// The number in the unit above. A unit may be left out; hours are then hours. Problem (data): no
/// number, a number that can be read in two ways, or a unit that does not belong here.
Result<double> readTyped(Quantity quantity, const QString& text, const UnitFormat& manner);

/// As the person would type it, at most `decimals` places, with the unit where it is not plain:
/// hours above two days are written in days, all others without a unit.
QString typedText(Quantity quantity, double value, const UnitFormat& manner);

/// The unit that a bare number has: "°F", "h", "gal", "SG"; empty for a number.
QString unitOf(Quantity quantity, const UnitFormat& manner);

/// The typed values' own numbers, in the units above.
inline double plainOf(Temperature value)
{
    return value.celsius();
}
inline double plainOf(TemperatureDifference value)
{
    return value.kelvins();
}
inline double plainOf(Hours value)
{
    return value.count();
}
inline double plainOf(Volume value)
{
    return value.litres();
}
inline double plainOf(Gravity value)
{
    return value.specific();
}
inline double plainOf(Power value)
{
    return value.watts();
}
inline double plainOf(Energy value)
{
    return value.kilowattHours();
}
inline double plainOf(double value)
{
    return value;
}

/// And back.
template <typename Value>
Value fromPlain(double number);
template <>
inline Temperature fromPlain(double number)
{
    return Temperature::celsius(number);
}
template <>
inline TemperatureDifference fromPlain(double number)
{
    return TemperatureDifference::kelvins(number);
}
template <>
inline Hours fromPlain(double number)
{
    return Hours{number};
}
template <>
inline Volume fromPlain(double number)
{
    return Volume::litres(number);
}
template <>
inline Gravity fromPlain(double number)
{
    return Gravity::specific(number);
}
template <>
inline Power fromPlain(double number)
{
    return Power::watts(number);
}
template <>
inline Energy fromPlain(double number)
{
    return Energy::kilowattHours(number);
}
template <>
inline double fromPlain(double number)
{
    return number;
}

} // namespace holdband::ui
