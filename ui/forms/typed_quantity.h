// Quantities as a person types them: in the logbook's units and with the person's decimal sign, or
// with another unit after the number ("19 C", "5 d", "1.5 kW"). No widgets.
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

/// The quantity that is typed, with the unit of its number in code.
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

/// The number in the unit above. Without a unit the number is in the logbook's unit, or in hours.
/// Problem (data): no number, an ambiguous number, or a unit that does not belong here.
Result<double> readTyped(Quantity quantity, const QString& text, const UnitFormat& format);

/// As the user would type it, with at most `decimals` places; lengths above two days are written in
/// days with their unit, all others without a unit.
QString typedText(Quantity quantity, double value, const UnitFormat& format);

/// The unit that a bare number has: "°F", "h", "gal", "SG"; empty for a number.
QString unitOf(Quantity quantity, const UnitFormat& format);

/// The numbers of typed quantities, in the units above.
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

/// The inverse.
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
