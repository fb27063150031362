// The temperature of the room with both arrangements: seasons, days, weather
// and warm spells. In spring it is a cool room, from June on a garage.
#pragma once

#include "sample-data/maker/scenario.h"

#include <array>

namespace holdband::sample {

class Room {
public:
    explicit Room(const Weather& weather);

    /// The room's air, °C.
    double temperatureC(Instant at) const;

private:
    double spellsC(Instant at) const;

    Weather m_weather;
    std::array<double, 3> m_phases;
};

} // namespace holdband::sample
