#include "core/editing/register_check.h"

#include "core/model/meter_service.h"
#include "core/text/numbers.h"
#include "core/text/phrase.h"
#include "core/text/places.h"
#include "core/text/quantities.h"
#include "core/text/times.h"

#include <algorithm>
#include <cmath>

namespace holdband::intake {

namespace {

/// A register is assumed to have rolled over only from its last tenth to its first.
constexpr double lastTenth = 0.9;
constexpr double firstTenth = 0.1;

double kwhOf(const MeterReading& reading)
{
    return reading.registerReading.kilowattHours();
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

bool RegisterCheck::rolledOver(const MeterReading& reading, const MeterReading& before) const
{
    if (!m_meter.rollsOverAt)
        return false;
    const double top = m_meter.rollsOverAt->kilowattHours();
    return kwhOf(before) >= lastTenth * top && kwhOf(reading) <= firstTenth * top;
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

std::optional<DoubtfulReading> RegisterCheck::doubtBefore(const MeterReading& reading,
                                                          const MeterReading& before) const
{
    if (reading.event || kwhOf(reading) >= kwhOf(before) || rolledOver(reading, before))
        return std::nullopt;
    return doubtful(ReadingDoubt::belowBefore,
                    Phrase::tr("%1 is below %2").with(text(reading), text(before)),
                    Phrase::tr("is it mistyped? Else say the event: rollover (it passed its top) "
                               "or reset (it restarted at 0); another meter is entered as one of "
                               "its own"));
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

std::string RegisterCheck::unusual(const MeterReading& reading, std::size_t next,
                                   bool rollover) const
{
    MeterReading taken = reading;
    if (rollover)
        taken.event = MeterEvent::rollover;
    std::string why;
    if (next > 0)
        why = aboveRatedPower(m_stored[next - 1], taken);
    if (why.empty() && next < m_stored.size())
        why = aboveRatedPower(taken, m_stored[next]);
    return why;
}

ReadingCheck RegisterCheck::check(const MeterReading& reading) const
{
    ReadingCheck result;
    if (auto doubt = ownDoubt(reading)) {
        result.doubt = std::move(doubt);
        return result;
    }
    const auto next = std::lower_bound(m_stored.begin(), m_stored.end(), reading.at,
                                       [](const MeterReading& a, Instant at) { return a.at < at; });
    if (next != m_stored.end() && next->at == reading.at) {
        result.alreadyThere = kwhOf(*next) == kwhOf(reading);
        if (!result.alreadyThere)
            result.doubt = doubtful(
                ReadingDoubt::sameInstant,
                Phrase::tr("%1 is already stored, not %2")
                    .with(text(*next), fixedText(kwhOf(reading), reading.decimals, m_decimalSign)),
                Phrase::tr("correct that reading instead"));
        return result;
    }
    if (next != m_stored.begin()) {
        result.doubt = doubtBefore(reading, *std::prev(next));
        result.takenAsRollover =
            !result.doubt && !reading.event && kwhOf(reading) < kwhOf(*std::prev(next));
    }
    if (!result.doubt && next != m_stored.end() && !next->event && kwhOf(reading) > kwhOf(*next) &&
        !rolledOver(*next, reading))
        result.doubt =
            doubtful(ReadingDoubt::aboveAfter,
                     Phrase::tr("%1 is above the later %2").with(text(reading), text(*next)),
                     Phrase::tr("check the number and its time"));
    if (!result.doubt)
        result.unusual = unusual(reading, static_cast<std::size_t>(next - m_stored.begin()),
                                 result.takenAsRollover);
    return result;
}

void RegisterCheck::accept(const MeterReading& reading)
{
    const auto next = std::upper_bound(m_stored.begin(), m_stored.end(), reading.at,
                                       [](Instant at, const MeterReading& a) { return at < a.at; });
    m_stored.insert(next, reading);
}

std::optional<MeterEvent> eventOf(const MeterReading& reading, const ReadingCheck& check)
{
    return check.takenAsRollover ? MeterEvent::rollover : reading.event;
}

} // namespace holdband::intake
