#include "core/analysis/meter_curve.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace holdband::analysis {

namespace {

double powerTimes(Power power, Instant from, Instant to)
{
    return power.over(Hours{to - from}).kilowattHours();
}

/// Where the load ran at full power, the straight line may rise faster than the rated power by up
/// to the resolution; the bounds then reach as far as the estimate, so that they always include it.
void holdEstimate(EnergyFigure& figure)
{
    figure.low = std::min(figure.low, figure.kwh);
    figure.high = std::max(figure.high, figure.kwh);
}

/// Registers are sums of decimals in binary, so a difference below this (kWh) counts as 0.
constexpr double sameEnergy = 1e-9;

} // namespace

Energy finestDecimal(const std::vector<MeterReading>& readings)
{
    int decimals = 0;
    for (const MeterReading& reading : readings)
        decimals = std::max(decimals, reading.decimals);
    return Energy::kilowattHours(std::pow(10.0, -decimals));
}

MeterCurve::MeterCurve(const MeterRegister& meter, std::optional<Power> ratedPower)
    : m_resolution(meter.resolution.value_or(finestDecimal(meter.readings)).kilowattHours()),
      m_roundedEach(meter.roundedEach), m_power(ratedPower)
{
    for (std::size_t i = 0; i < meter.readings.size(); ++i)
        place(meter, i);
}

void MeterCurve::place(const MeterRegister& meter, std::size_t i)
{
    const MeterReading& reading = meter.readings[i];
    const Milliseconds doubt = reading.timeDoubt.value_or(meter.timeDoubt);
    const double now = reading.registerReading.kilowattHours();
    double used = 0.0;
    Pair pair = Pair::plain;
    if (i > 0) {
        used = now - meter.readings[i - 1].registerReading.kilowattHours();
        if (reading.event == MeterEvent::rollover && meter.rollsOverAt)
            used += meter.rollsOverAt->kilowattHours();
        if (std::binary_search(meter.gapsBefore.begin(), meter.gapsBefore.end(), i))
            pair = Pair::unknown;
        else if (reading.event == MeterEvent::reset)
            pair = Pair::reset;
        else if (used < 0.0)
            pair = Pair::unknown;
    }
    const double step = pair == Pair::plain ? used : pair == Pair::reset ? now : 0.0;
    const double before = i > 0 ? m_kwh.back() : 0.0;
    bool holds = false;
    if (m_power && i > 0) {
        const double most =
            powerTimes(*m_power, m_at.back() - m_doubt.back(), reading.at + doubt) + m_resolution;
        holds = step <= most + sameEnergy;
        m_aboveRated += !holds;
    }
    m_at.push_back(reading.at);
    m_doubt.push_back(doubt);
    m_kwh.push_back(before + step);
    m_pairs.push_back(pair);
    m_reset.push_back(pair == Pair::reset ? now : 0.0);
    m_powerHolds.push_back(holds);
}

std::size_t MeterCurve::pairHolding(Instant at) const
{
    const auto after = std::upper_bound(m_at.begin(), m_at.end(), at);
    const auto index = static_cast<std::size_t>(after - m_at.begin());
    return std::clamp<std::size_t>(index, 1, m_at.size() - 1);
}

bool MeterCurve::powerHolds(std::size_t pair) const
{
    return m_powerHolds[pair];
}

double MeterCurve::estimateAt(Instant at) const
{
    const std::size_t i = pairHolding(at);
    const double share = hoursBetween(m_at[i - 1], at) / hoursBetween(m_at[i - 1], m_at[i]);
    return m_kwh[i - 1] + (m_kwh[i] - m_kwh[i - 1]) * share;
}

std::optional<std::size_t> MeterCurve::readingAt(Instant at) const
{
    const auto found = std::lower_bound(m_at.begin(), m_at.end(), at);
    if (found == m_at.end() || *found != at)
        return std::nullopt;
    return static_cast<std::size_t>(found - m_at.begin());
}

MeterCurve::Bounds MeterCurve::boundsOfRead(std::size_t i) const
{
    const double half = m_roundedEach ? 0.0 : m_resolution / 2.0;
    return {m_kwh[i] - half, m_kwh[i] + half};
}

/// By the rated power, from the readings that surround the instant. A pair among them that used
/// more than it allows shows it to be wrong.
void MeterCurve::tighten(Bounds& bounds, Instant at, const Chain& between) const
{
    for (std::size_t k = between.first + 1; k <= between.last; ++k) {
        if (!powerHolds(k))
            return;
    }
    if (between.first == between.last)
        return;
    for (std::size_t k = between.first; k <= between.last; ++k) {
        const Bounds read = boundsOfRead(k);
        const Instant latest = std::max(at, m_at[k] + m_doubt[k]);
        const Instant earliest = std::min(at, m_at[k] - m_doubt[k]);
        bounds.low = std::max(bounds.low, read.low - powerTimes(*m_power, at, latest));
        bounds.high = std::min(bounds.high, read.high + powerTimes(*m_power, earliest, at));
    }
}

MeterCurve::Bounds MeterCurve::boundsAt(Instant at, const Chain& chain) const
{
    if (const auto read = readingAt(at))
        return boundsOfRead(*read);
    const Instant first = m_at[chain.first] + m_doubt[chain.first];
    const Instant last = m_at[chain.last] - m_doubt[chain.last];
    const Instant inside = std::max(first, std::min(at, last));
    const std::size_t pair = pairHolding(inside);
    Chain between{std::max(pair - 1, chain.first), std::min(pair, chain.last)};
    while (between.first > chain.first && m_at[between.first] + m_doubt[between.first] > inside)
        --between.first;
    while (between.last < chain.last && m_at[between.last] - m_doubt[between.last] < inside)
        ++between.last;
    Bounds bounds{boundsOfRead(between.first).low, boundsOfRead(between.last).high};
    tighten(bounds, inside, between);
    return bounds;
}

/// How far the sum of the steps inside the span may be off if each was rounded by itself (kWh).
double MeterCurve::roundingOver(Span span) const
{
    if (!m_roundedEach)
        return 0.0;
    const auto after = std::upper_bound(m_at.begin(), m_at.end(), span.start);
    const auto end = std::lower_bound(after, m_at.end(), span.end);
    return static_cast<double>(end - after + 1) * m_resolution / 2.0;
}

EnergyFigure MeterCurve::overChain(const Chain& chain, Span span) const
{
    const Bounds start = boundsAt(span.start, chain);
    const Bounds end = boundsAt(span.end, chain);
    EnergyFigure figure;
    figure.kwh = estimateAt(span.end) - estimateAt(span.start);
    const double rounding = roundingOver(span);
    figure.low = std::max(0.0, end.low - start.high - rounding);
    figure.high = std::max(figure.low, end.high - start.low + rounding);
    holdEstimate(figure);
    figure.metered = {span};
    return figure;
}

/// Whether the register's restart lies in the span for certain.
bool MeterCurve::isWhole(std::size_t pair, Span span) const
{
    const auto reaches = [&](Instant edge, std::size_t reading, bool isBefore) {
        if (edge == m_at[reading])
            return true;
        return isBefore ? edge <= m_at[reading] - m_doubt[reading]
                        : edge >= m_at[reading] + m_doubt[reading];
    };
    return reaches(span.start, pair - 1, true) && reaches(span.end, pair, false);
}

/// `part`: of the pair; `span`: all that is asked for.
EnergyFigure MeterCurve::overReset(std::size_t pair, Span part, Span span) const
{
    const double whole = hoursBetween(m_at[pair - 1], m_at[pair]);
    EnergyFigure figure;
    figure.kwh = m_reset[pair] * (part.hours() / whole);
    figure.low = isWhole(pair, span) ? std::max(0.0, m_reset[pair] - m_resolution / 2.0) : 0.0;
    figure.high = powerHolds(pair) ? powerTimes(*m_power, part.start, part.end) : unbounded;
    holdEstimate(figure);
    figure.metered = {part};
    return figure;
}

EnergyFigure MeterCurve::over(Span span) const
{
    EnergyFigure sum;
    if (empty())
        return sum;
    const Span read = intersection(span, {m_at.front(), m_at.back()});
    std::size_t first = 0;
    // A chain of plain pairs is handled together; a reset pair separately.
    while (first + 1 < m_at.size()) {
        std::size_t last = first + 1;
        const Pair kind = m_pairs[last];
        while (kind == Pair::plain && last + 1 < m_at.size() && m_pairs[last + 1] == Pair::plain)
            ++last;
        const Span part = intersection(read, {m_at[first], m_at[last]});
        if (!part.empty() && kind == Pair::plain)
            sum.append(overChain({first, last}, part));
        else if (!part.empty() && kind == Pair::reset)
            sum.append(overReset(last, part, read));
        first = last;
    }
    return sum;
}

} // namespace holdband::analysis
