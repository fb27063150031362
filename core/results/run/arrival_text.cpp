#include "core/results/run/arrival_text.h"

#include "core/text/numbers.h"
#include "core/text/phrase.h"
#include "core/text/quantities.h"
#include "core/text/times.h"

#include <algorithm>
#include <cmath>

namespace holdband::results {

using analysis::ArrivalAnswer;
using analysis::NotYet;

namespace {

/// In halves, "3½"; whole numbers as they are.
std::string halvesText(double value)
{
    const auto halves = static_cast<std::int64_t>(std::lround(value * 2.0));
    const std::string whole = halves < 2 ? std::string() : std::to_string(halves / 2);
    return halves % 2 == 0 ? std::to_string(halves / 2) : whole + "½";
}

class ArrivalWords {
public:
    ArrivalWords(const ArrivalReview& arrival, const VerdictFormat& format, const Zone& zone,
                 bool dated)
        : m_arrival(arrival), m_format(format), m_zone(zone), m_dated(dated)
    {
    }

    std::string sentence() const
    {
        const std::string text = answer();
        return m_dated
                   ? text + " " +
                         Phrase::tr("Last reading %1.").with(localShortText(m_arrival.now, m_zone))
                   : text;
    }

private:
    std::string answer() const
    {
        switch (m_arrival.forecast.answer) {
        case ArrivalAnswer::hours:
            return hours();
        case ArrivalAnswer::openTop:
            return openTop();
        case ArrivalAnswer::willNotArrive:
            return willNotArrive();
        default:
            return notYet();
        }
    }

    std::string target() const { return shortTemperatureText(m_arrival.target, m_format); }

    /// Whether all times are so near that the time of day is enough.
    bool isSoon() const
    {
        constexpr std::chrono::hours near{20};
        const auto within = [&](const std::optional<Instant>& at) {
            return !at || *at - m_arrival.now <= near;
        };
        return !m_dated && within(m_arrival.low) && within(m_arrival.middle) &&
               within(m_arrival.high);
    }

    /// To ten minutes.
    std::string time(Instant at) const
    {
        const Instant rounded{
            std::chrono::round<std::chrono::duration<std::int64_t, std::ratio<600>>>(
                at.time_since_epoch())};
        return isSoon() ? localClockText(rounded, m_zone) : localShortText(rounded, m_zone);
    }

    std::string hours() const
    {
        const std::string middle = time(*m_arrival.middle);
        const std::string low = time(*m_arrival.low);
        const std::string high = time(*m_arrival.high);
        if (m_dated)
            return m_arrival.crash
                       ? Phrase::tr("Cold at about %1 (%2 – %3).").with(middle, low, high)
                       : Phrase::tr("At %1 at about %2 (%3 – %4).")
                             .with(target(), middle, low, high);
        const std::string length = roughLengthText(*m_arrival.forecast.middleH);
        if (m_arrival.crash)
            return Phrase::tr("Cold in about %1, at about %2 (%3 – %4).")
                .with(length, middle, low, high);
        return Phrase::tr("At %1 in about %2, at about %3 (%4 – %5).")
            .with(target(), length, middle, low, high);
    }

    std::string openTop() const
    {
        if (!m_arrival.low)
            return Phrase::tr("Not moving towards %1 now: may not get there.").with(target());
        if (m_arrival.crash)
            return Phrase::tr("Not cold before about %1, and may not get there.")
                .with(time(*m_arrival.low));
        return Phrase::tr("Not at %1 before about %2, and may not get there.")
            .with(target(), time(*m_arrival.low));
    }

    /// Whole degrees, unless that looks as if it were in the band.
    std::string levelsOff() const
    {
        const auto at = Temperature::celsius(*m_arrival.forecast.levelsOffC);
        const double rounded = std::round(valueIn(at, m_format.unit));
        const double edge = valueIn(m_arrival.edge, m_format.unit);
        const bool outside =
            m_arrival.turned == analysis::Turned::down ? rounded > edge : rounded < edge;
        return temperatureText(at, m_format.unit, outside ? 0 : 1, m_format.decimalSign);
    }

    std::string willNotArrive() const
    {
        return Phrase::tr("Will not come to %1 at this rate: levels off near %2.")
            .with(target(), levelsOff());
    }

    std::string notYet() const
    {
        switch (m_arrival.forecast.notYet) {
        case NotYet::fewBlocks:
            return Phrase::tr("Too few readings yet to say when the beer will be at %1.")
                .with(target());
        case NotYet::hardlyFallen:
            return Phrase::tr("Too early to say when the beer will be at %1: it has hardly moved.")
                .with(target());
        default:
            return Phrase::tr("Too early to say when the beer will be at %1.").with(target());
        }
    }

    const ArrivalReview& m_arrival;
    const VerdictFormat& m_format;
    const Zone& m_zone;
    bool m_dated;
};

} // namespace

std::string arrivalSentence(const ArrivalReview& arrival, const VerdictFormat& format,
                            const Zone& zone)
{
    return ArrivalWords(arrival, format, zone, arrival.logSilent).sentence();
}

std::string datedArrivalSentence(const ArrivalReview& arrival, const VerdictFormat& format,
                                 const Zone& zone)
{
    return ArrivalWords(arrival, format, zone, true).sentence();
}

std::string_view arrivalAnswerName(ArrivalAnswer answer)
{
    switch (answer) {
    case ArrivalAnswer::hours:
        return "hours";
    case ArrivalAnswer::openTop:
        return "open top";
    case ArrivalAnswer::willNotArrive:
        return "will not arrive";
    default:
        return "not yet";
    }
}

std::string shortTemperatureText(Temperature temperature, const VerdictFormat& format)
{
    const double value = valueIn(temperature, format.unit);
    const bool whole = std::abs(value - std::round(value)) < 0.05;
    return temperatureText(temperature, format.unit, whole ? 0 : 1, format.decimalSign);
}

std::string roughLengthText(double hours)
{
    constexpr double wholeHoursFrom = 4.75;
    if (hours < 0.75)
        return std::to_string(std::max(5L, 5 * std::lround(hours * 12.0))) + " min";
    if (hours < wholeHoursFrom)
        return halvesText(hours) + " h";
    if (hours < 47.5)
        return std::to_string(std::lround(hours)) + " h";
    return Phrase::tr("%1 days").with(halvesText(hours / 24.0));
}

} // namespace holdband::results
