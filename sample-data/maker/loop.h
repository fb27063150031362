// The first arrangement: a bath of coolant kept cold by one compressor, and for each of two vessels
// a pump through its coil and a heat belt. One meter measures all of it.
#pragma once

#include "sample-data/maker/control.h"
#include "sample-data/maker/scenario.h"

#include <array>

namespace holdband::sample {

class CoolantLoop {
public:
    explicit CoolantLoop(const Scenario& scenario) : m_scenario(scenario) {}

    /// Advances by `seconds` from `at` with the room at `roomC`.
    void step(Instant at, double roomC, double seconds);

    double beerC(std::size_t vessel) const { return m_vessels[vessel].beerC; }
    double bathC() const { return m_bathC; }
    double joulesUsed() const { return m_joules; } ///< electrical, since the start

private:
    struct VesselState {
        double beerC = 17.0;
        const Batch* batch = nullptr;
        Switch pump{Switch::Drives::down, 0.4, 0.0};
        Switch belt{Switch::Drives::up, 0.5, 0.2};
    };

    struct Flow {
        double electricalW = 0.0;
        double intoBathW = 0.0;
    };

    Flow stepVessel(std::size_t index, Instant at, double roomC, double seconds, bool powered);
    double stepBath(Instant at, double roomC, double seconds, bool powered, double heatW);

    const Scenario& m_scenario;
    std::array<VesselState, 2> m_vessels;
    Switch m_compressor{Switch::Drives::down, 1.0, -1.0, std::chrono::minutes{4}};
    double m_bathC = 17.0;
    double m_joules = 0.0;
};

} // namespace holdband::sample
