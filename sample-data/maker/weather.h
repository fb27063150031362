// The temperature of the room with both arrangements: seasons, days, weather, and one warm spell.
#pragma once

#include "sample-data/maker/scenario.h"

#include <array>

namespace holdband::sample {

class Room {
public:
    explicit Room(const Scenario& scenario);

    /// The room's air, °C.
    double temperatureC(Instant at) const;

private:
    double spellC(Instant at) const;

    Span m_whole;
    Span m_spell;
    std::array<double, 3> m_phases;
};

} // namespace holdband::sample
