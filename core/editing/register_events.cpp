#include "core/editing/register_events.h"

#include <utility>

namespace holdband::intake {

namespace {

/// A register is assumed to have rolled over only from its last tenth to its first.
constexpr double lastTenth = 0.9;
constexpr double firstTenth = 0.1;

bool falls(const MeterReading* from, const MeterReading* to)
{
    return from && to && to->registerReading < from->registerReading;
}

/// The event of the next reading after a reading between them and `before` is deleted.
std::optional<MeterEvent> nextAfterDeletion(const RegisterChange& change)
{
    const auto& [before, was, now, after] = change;
    if (!after || !before)
        return after ? after->event : std::nullopt;
    const bool fallGone = falls(was, after) && !falls(before, after);
    if (after->event && !(after->event == MeterEvent::rollover && fallGone))
        return after->event;
    const bool declaredWithoutFall = !falls(before, was);
    return falls(before, after) || declaredWithoutFall ? was->event : std::nullopt;
}

/// Decides the events around a reading that is added or corrected.
class Placing {
public:
    Placing(const Meter& meter, const RegisterChange& change) : m_meter(meter), m_change(change)
    {
        const MeterReading& own = change.was ? *change.was : *change.now;
        m_events.now = own.event;
        if (change.after)
            m_events.after = change.after->event;
    }

    RegisterEvents placed()
    {
        if (falls(m_change.before, m_change.now))
            explainFall();
        else if (m_change.was && m_change.before && m_events.now)
            fallIsGone();
        if (m_change.after && m_events.unexplained == Unexplained::none)
            placeNext();
        return m_events;
    }

private:
    using Unexplained = RegisterEvents::Unexplained;

    bool nextFalls() const { return falls(m_change.now, m_change.after); }
    bool nextIsClear() const { return rolledOver(m_meter, *m_change.now, *m_change.after); }

    void explainFall()
    {
        if (m_events.now)
            return;
        m_decided = true;
        if (m_events.after && !nextFalls())
            m_events.now = m_events.after; // it happened earlier than was known
        else if (rolledOver(m_meter, *m_change.before, *m_change.now))
            m_events.now = MeterEvent::rollover;
        else
            m_events.unexplained = Unexplained::now;
    }

    /// A corrected reading is no longer below the one before.
    void fallIsGone()
    {
        if (nextFalls() && !m_events.after)
            m_events.after = std::exchange(m_events.now, std::nullopt);
        else if (m_events.now == MeterEvent::rollover && falls(m_change.before, m_change.was))
            m_events.now = std::nullopt;
    }

    void placeNext()
    {
        if (nextFalls())
            explainNext();
        else if (m_events.after && nextIsExplainedBefore())
            m_events.after = std::nullopt;
    }

    void explainNext()
    {
        // The one rollover of the stretch can't explain both falls.
        const bool twice = m_events.after == MeterEvent::rollover &&
                           m_events.now == MeterEvent::rollover && m_change.before &&
                           (m_decided || !m_change.was);
        if (m_events.after && !twice)
            return;
        if (nextIsClear())
            m_events.after = MeterEvent::rollover;
        else
            m_events.unexplained = Unexplained::after;
    }

    /// Whether the next reading's event has gone: to this reading, or with the fall to the next.
    bool nextIsExplainedBefore() const
    {
        if (m_decided && m_events.now)
            return true;
        if (m_change.was)
            return m_events.after == MeterEvent::rollover && falls(m_change.was, m_change.after);
        return m_change.before ? m_events.now.has_value() : m_events.after == MeterEvent::rollover;
    }

    const Meter& m_meter;
    const RegisterChange& m_change;
    RegisterEvents m_events;
    bool m_decided = false; ///< the reading's own event was found here
};

} // namespace

bool rolledOver(const Meter& meter, const MeterReading& before, const MeterReading& reading)
{
    if (!meter.rollsOverAt)
        return false;
    const double top = meter.rollsOverAt->kilowattHours();
    return before.registerReading.kilowattHours() >= lastTenth * top &&
           reading.registerReading.kilowattHours() <= firstTenth * top;
}

RegisterEvents eventsAfter(const Meter& meter, const RegisterChange& change)
{
    if (change.now)
        return Placing(meter, change).placed();
    RegisterEvents events;
    events.after = nextAfterDeletion(change);
    return events;
}

std::optional<MeterEvent> eventRestored(const RegisterChange& change)
{
    const auto& event = change.now->event;
    const bool isNext = change.after && change.after->event == event;
    const bool stale = event == MeterEvent::rollover && change.before &&
                       !falls(change.before, change.now) && !isNext;
    return stale ? std::nullopt : event;
}

} // namespace holdband::intake
