#include "core/store/readings/reading_units.h"

#include "core/quantity/plato.h"
#include "core/quantity/temperature.h"

namespace holdband::store {

double baseValue(double raw, ReadingUnit unit)
{
    switch (unit) {
    case ReadingUnit::fahrenheit:
        return Temperature::fahrenheit(raw).celsius();
    case ReadingUnit::kilowatt:
        return raw * 1000.0;
    case ReadingUnit::wattHour:
        return raw / 1000.0;
    case ReadingUnit::degreePlato:
        return gravityOfPlato(raw).specific();
    default:
        return raw;
    }
}

double rawValue(double base, ReadingUnit unit)
{
    switch (unit) {
    case ReadingUnit::fahrenheit:
        return Temperature::celsius(base).fahrenheit();
    case ReadingUnit::kilowatt:
        return base / 1000.0;
    case ReadingUnit::wattHour:
        return base * 1000.0;
    case ReadingUnit::degreePlato:
        return platoOf(Gravity::specific(base));
    default:
        return base;
    }
}

} // namespace holdband::store
