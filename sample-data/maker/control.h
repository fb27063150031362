// On/off control with a differential, and for compressors a minimum time off between two runs.
#pragma once

#include "sample-data/maker/clock.h"

namespace holdband::sample {

class Switch {
public:
    /// The switched device drives the value down (cooling) or up (heating).
    enum class Drives { down, up };

    /// Switches on when the value is more than `onAt` kelvin past the target on the wrong side, and
    /// off when it is less than `offAt` past it.
    Switch(Drives drives, double onAt, double offAt, std::chrono::seconds leastOff = {})
        : m_drives(drives), m_onAt(onAt), m_offAt(offAt), m_leastOff(leastOff)
    {
    }

    bool update(Instant at, double value, double target);
    void cut(Instant at);
    bool on() const { return m_on; }

private:
    Drives m_drives;
    double m_onAt;
    double m_offAt;
    std::chrono::seconds m_leastOff;
    bool m_on = false;
    Instant m_offSince{};
};

} // namespace holdband::sample
