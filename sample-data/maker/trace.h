// The true temperatures and energies, minute by minute: the model run through the whole scenario.
#pragma once

#include "sample-data/maker/scenario.h"

#include <vector>

namespace holdband::sample {

struct Moment {
    double roomC;
    double loopBeer1C;
    double loopBeer2C;
    double bathC;
    double cabinetBeerC;
    double cabinetAirC;
    double loopJoules;
    double cabinetJoules;
};

class Trace {
public:
    explicit Trace(const Scenario& scenario);

    /// The state at the start of the minute that the instant lies in.
    const Moment& at(Instant instant) const;

private:
    Instant m_start;
    std::vector<Moment> m_minutes;
};

} // namespace holdband::sample
