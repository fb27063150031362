// The second arrangement: an insulated cabinet for one vessel, its air cooled by a small compressor
// and stirred by a fan, with a heat belt. One meter measures all of it.
#pragma once

#include "sample-data/maker/control.h"
#include "sample-data/maker/scenario.h"

namespace holdband::sample {

class Cabinet {
public:
    explicit Cabinet(const Scenario& scenario) : m_scenario(scenario) {}

    /// Advances by `seconds` from `at` with the room at `roomC`.
    void step(Instant at, double roomC, double seconds);

    double beerC() const { return m_beerC; }
    double airC() const { return m_airC; }
    double joulesUsed() const { return m_joules; } ///< electrical, since the start

private:
    void fill(const Batch* now, double roomC);
    void stepHeat(Instant at, double roomC, double seconds, double beltW, double takenW);

    const Scenario& m_scenario;
    const Batch* m_batch = nullptr;
    Switch m_compressor{Switch::Drives::down, 0.45, 0.15, std::chrono::minutes{5}};
    Switch m_belt{Switch::Drives::up, 0.7, 0.4};
    double m_beerC = 17.0;
    double m_airC = 17.0;
    double m_joules = 0.0;
};

} // namespace holdband::sample
