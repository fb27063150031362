#include "sample-data/maker/control.h"

namespace holdband::sample {

bool Switch::update(Instant at, double value, double target)
{
    const double wrong = m_drives == Drives::down ? value - target : target - value;
    if (m_on && wrong <= m_offAt)
        cut(at);
    else if (!m_on && wrong >= m_onAt && at - m_offSince >= m_leastOff)
        m_on = true;
    return m_on;
}

void Switch::cut(Instant at)
{
    if (m_on)
        m_offSince = at;
    m_on = false;
}

} // namespace holdband::sample
