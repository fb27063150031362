// The format of values for this logbook and user: units, currency, zone, decimal sign.
#pragma once

#include "core/model/equipment.h"
#include "core/text/zone.h"

namespace holdband::ui {

struct UnitFormat {
    UnitSystem units = UnitSystem::metric;
    std::string currency; ///< ISO 4217, or empty
    Zone zone;
    char sign = '.'; ///< the user's decimal sign

    TemperatureUnit temperature() const
    {
        return units == UnitSystem::us ? TemperatureUnit::fahrenheit : TemperatureUnit::celsius;
    }
};

/// With the decimal sign of the user's locale.
UnitFormat unitFormatOf(const LogbookSettings& settings, const Zone& zone);

} // namespace holdband::ui
