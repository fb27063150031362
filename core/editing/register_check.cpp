#include "core/editing/register_check.h"

#include "core/model/meter_service.h"
#include "core/text/numbers.h"
#include "core/text/phrase.h"
#include "core/text/places.h"
#include "core/text/quantities.h"
#include "core/text/times.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <utility>

namespace holdband::intake {

namespace {

double kwhOf(const MeterReading& reading)
{
    return reading.registerReading.kilowattHours();
}

bool isBefore(const MeterReading& reading, Instant at)
{
    return reading.at < at;
}

} // namespace

RegisterCheck::RegisterCheck(Meter meter, std::vector<MeterReading> stored, Zone zone,
                             char decimalSign)
    : m_meter(std::move(meter)), m_stored(std::move(stored)), m_zone(std::move(zone)),
      m_decimalSign(decimalSign)
{
}

std::string RegisterCheck::text(const MeterReading& reading) const
{
    return Phrase::tr("%1 kWh of %2")
        .with(fixedText(kwhOf(reading), reading.decimals, m_decimalSign),
              localText(reading.at, m_zone));
}

DoubtfulReading RegisterCheck::doubtful(ReadingDoubt doubt, std::string what,
                                        std::string remedy) const
{
    return {doubt,
            {ProblemKind::data, std::move(what), meterPlace(m_meter.name), std::move(remedy)}};
}

std::optional<DoubtfulReading> RegisterCheck::ownDoubt(const MeterReading& reading) const
{
    const double kwh = kwhOf(reading);
    if (!(kwh >= 0.0))
        return doubtful(ReadingDoubt::negative,
                        Phrase::tr("a register can't read %1").with(text(reading)),
                        Phrase::tr("check the number"));
    if (reading.registerReading > mostOfARegister)
        return doubtful(ReadingDoubt::tooManyDigits,
                        Phrase::tr("%1 is more than a register here can show").with(text(reading)),
                        Phrase::tr("check the number"));
    if (m_meter.rollsOverAt && kwh >= m_meter.rollsOverAt->kilowattHours())
        return doubtful(ReadingDoubt::tooManyDigits,
                        Phrase::tr("%1 is at or above the register's top of %2 kWh")
                            .with(text(reading), shortestText(m_meter.rollsOverAt->kilowattHours(),
                                                              m_decimalSign)),
                        Phrase::tr("check the number"));
    if ((m_meter.from && reading.at < *m_meter.from) || (m_meter.to && reading.at > *m_meter.to))
        return doubtful(
            ReadingDoubt::outOfService,
            Phrase::tr("the meter was not in service at %1").with(localText(reading.at, m_zone)),
            Phrase::tr("check the time, or read the meter that was"));
    if (reading.event == MeterEvent::rollover && !m_meter.rollsOverAt)
        return doubtful(ReadingDoubt::rolloverWithoutTop,
                        Phrase::tr("the register's top is not on record, so a rollover can't be "
                                   "counted"),
                        Phrase::tr("give the meter rolls_over_at_kwh"));
    return std::nullopt;
}

std::optional<DoubtfulReading> RegisterCheck::sameInstant(const MeterReading& reading,
                                                          const MeterReading& stored) const
{
    if (kwhOf(stored) == kwhOf(reading))
        return std::nullopt;
    return doubtful(
        ReadingDoubt::sameInstant,
        Phrase::tr("%1 is already stored, not %2")
            .with(text(stored), fixedText(kwhOf(reading), reading.decimals, m_decimalSign)),
        Phrase::tr("correct that reading instead"));
}

std::optional<DoubtfulReading> RegisterCheck::unexplained(const RegisterChange& change,
                                                          RegisterEvents::Unexplained which) const
{
    switch (which) {
    case RegisterEvents::Unexplained::none:
        break;
    case RegisterEvents::Unexplained::now:
        return doubtful(
            ReadingDoubt::belowBefore,
            Phrase::tr("%1 is below %2").with(text(*change.now), text(*change.before)),
            Phrase::tr("is it mistyped? Else say the event: rollover (it passed its top) "
                       "or reset (it restarted at 0); another meter is entered as one of "
                       "its own"));
    case RegisterEvents::Unexplained::after:
        return doubtful(
            ReadingDoubt::aboveAfter,
            Phrase::tr("%1 is above the later %2").with(text(*change.now), text(*change.after)),
            Phrase::tr("check the number and its time"));
    }
    return std::nullopt;
}

void RegisterCheck::setRatedPower(std::map<std::string, Power> ratedPower)
{
    m_ratedPower = std::move(ratedPower);
}

/// Compares the energy of the pair with what the rated power allows in that time: P·Δt plus one
/// resolution.
std::string RegisterCheck::aboveRatedPower(const MeterReading& from, const MeterReading& to) const
{
    const auto setup = setupAt(m_meter, to.at);
    const auto rated = setup ? m_ratedPower.find(*setup) : m_ratedPower.end();
    if (rated == m_ratedPower.end())
        return {};
    double kwh = kwhOf(to) - kwhOf(from);
    if (to.event == MeterEvent::reset)
        kwh = kwhOf(to);
    else if (kwh < 0.0 && m_meter.rollsOverAt)
        kwh += m_meter.rollsOverAt->kilowattHours();
    const double resolution = m_meter.resolution
                                  ? m_meter.resolution->kilowattHours()
                                  : std::pow(10.0, -std::min(from.decimals, to.decimals));
    const double hours = hoursBetween(from.at, to.at);
    if (kwh <= rated->second.watts() * hours / 1000.0 + resolution * (1.0 + 1e-9))
        return {};
    return Phrase::tr("%1 kWh from %2 to %3 are %4 in the mean, and %5 is rated %6")
        .with(fixedText(kwh, to.decimals, m_decimalSign), localText(from.at, m_zone),
              localText(to.at, m_zone),
              powerText(Power::watts(kwh * 1000.0 / hours), 0, m_decimalSign), *setup,
              powerText(rated->second, 0, m_decimalSign));
}

std::string RegisterCheck::unusual(const RegisterChange& change, const RegisterEvents& events) const
{
    MeterReading now = *change.now;
    now.event = events.now;
    std::string why;
    if (change.before)
        why = aboveRatedPower(*change.before, now);
    if (!why.empty() || !change.after)
        return why;
    MeterReading after = *change.after;
    after.event = events.after;
    return aboveRatedPower(now, after);
}

ReadingCheck RegisterCheck::judge(const RegisterChange& change) const
{
    ReadingCheck result;
    result.doubt = ownDoubt(*change.now);
    if (result.doubt)
        return result;
    const RegisterEvents events = eventsAfter(m_meter, change);
    result.doubt = unexplained(change, events.unexplained);
    if (result.doubt)
        return result;
    result.event = events.now;
    result.nextEvent = events.after;
    result.takenAsRollover = events.now == MeterEvent::rollover && !change.now->event;
    result.unusual = unusual(change, events);
    return result;
}

RegisterChange RegisterCheck::around(const MeterReading& reading) const
{
    RegisterChange change;
    change.now = &reading;
    auto next = std::lower_bound(m_stored.begin(), m_stored.end(), reading.at, isBefore);
    if (next != m_stored.begin())
        change.before = &*std::prev(next);
    if (next != m_stored.end() && next->at == reading.at)
        change.was = &*next++;
    if (next != m_stored.end())
        change.after = &*next;
    return change;
}

ReadingCheck RegisterCheck::check(const MeterReading& reading) const
{
    const RegisterChange change = around(reading);
    if (!change.was)
        return judge(change);
    ReadingCheck result;
    result.doubt = ownDoubt(reading);
    if (result.doubt)
        return result;
    result.doubt = sameInstant(reading, *change.was);
    result.alreadyThere = !result.doubt;
    return result;
}

ReadingCheck RegisterCheck::checkCorrection(const MeterReading& corrected) const
{
    return judge(around(corrected));
}

void RegisterCheck::setEvent(MeterReading& reading, const std::optional<MeterEvent>& event)
{
    if (reading.event == event)
        return;
    reading.event = event;
    m_moved.insert(reading.at);
}

void RegisterCheck::accept(const MeterReading& reading, const ReadingCheck& check)
{
    const auto next = std::lower_bound(m_stored.begin(), m_stored.end(), reading.at, isBefore);
    if (next != m_stored.end())
        setEvent(*next, check.nextEvent);
    m_stored.insert(next, reading)->event = check.event;
}

void RegisterCheck::correct(const MeterReading& corrected, const ReadingCheck& check)
{
    const auto here = std::lower_bound(m_stored.begin(), m_stored.end(), corrected.at, isBefore);
    if (here == m_stored.end() || here->at != corrected.at)
        return;
    const auto event = here->event;
    *here = corrected;
    here->event = event;
    setEvent(*here, check.event);
    if (const auto next = std::next(here); next != m_stored.end())
        setEvent(*next, check.nextEvent);
}

void RegisterCheck::remove(const std::set<Instant>& instants)
{
    std::vector<MeterReading> remaining;
    for (std::size_t i = 0; i < m_stored.size(); ++i) {
        if (!instants.contains(m_stored[i].at)) {
            remaining.push_back(std::move(m_stored[i]));
            continue;
        }
        RegisterChange change;
        change.before = remaining.empty() ? nullptr : &remaining.back();
        change.was = &m_stored[i];
        change.after = i + 1 < m_stored.size() ? &m_stored[i + 1] : nullptr;
        if (change.after)
            setEvent(m_stored[i + 1], eventsAfter(m_meter, change).after);
    }
    m_stored = std::move(remaining);
}

std::optional<DoubtfulReading> RegisterCheck::restore(const std::vector<MeterReading>& readings)
{
    std::vector<MeterReading> all;
    auto later = m_stored.begin();
    for (const MeterReading& stored : readings) {
        while (later != m_stored.end() && later->at < stored.at)
            all.push_back(std::move(*later++));
        if (later != m_stored.end() && later->at == stored.at) {
            if (auto doubt = sameInstant(stored, *later))
                return doubt;
            continue;
        }
        MeterReading restored = stored;
        RegisterChange change;
        change.before = all.empty() ? nullptr : &all.back();
        change.now = &restored;
        change.after = later != m_stored.end() ? &*later : nullptr;
        restored.event = eventRestored(change);
        ReadingCheck result = judge(change);
        if (result.doubt)
            return std::move(result.doubt);
        if (change.after)
            setEvent(*later, result.nextEvent);
        restored.event = stored.event;
        setEvent(restored, result.event);
        all.push_back(std::move(restored));
    }
    std::move(later, m_stored.end(), std::back_inserter(all));
    m_stored = std::move(all);
    return std::nullopt;
}

std::vector<MeterReading> RegisterCheck::takeMovedEvents()
{
    std::vector<MeterReading> moved;
    for (const Instant at : std::exchange(m_moved, {})) {
        const auto here = std::lower_bound(m_stored.begin(), m_stored.end(), at, isBefore);
        if (here != m_stored.end() && here->at == at)
            moved.push_back(*here);
    }
    return moved;
}

Done saveMovedEvents(const store::Change& change, RegisterCheck& check)
{
    for (const MeterReading& reading : check.takeMovedEvents())
        HOLDBAND_TRY(
            store::setMeterReadingEvent(change, check.meter().name, reading.at, reading.event));
    return {};
}

} // namespace holdband::intake
