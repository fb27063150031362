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
      m_power(ratedPower)
{
    for (std::size_t i = 0; i < meter.readings.size(); ++i)
        place(meter, i);
}

void MeterCurve::place(const MeterRegister& meter, std::size_t i)
{
    const MeterReading& reading = meter.readings[i];
    const double now = reading.registerReading.kilowattHours();
    double used = 0.0;
    Pair pair = Pair::plain;
    if (i > 0) {
        used = now - meter.readings[i - 1].registerReading.kilowattHours();
        if (reading.event == MeterEvent::rollover && meter.rollsOverAt)
            used += meter.rollsOverAt->kilowattHours();
        if (reading.event == MeterEvent::reset)
            pair = Pair::reset;
        else if (used < 0.0)
            pair = Pair::unexplained;
    }
    const double step = pair == Pair::plain ? used : pair == Pair::reset ? now : 0.0;
    const double before = i > 0 ? m_kwh.back() : 0.0;
    bool holds = false;
    if (m_power && i > 0) {
        const double most = powerTimes(*m_power, m_at.back(), reading.at) + m_resolution;
        holds = step <= most + sameEnergy;
        m_aboveRated += !holds;
    }
    m_at.push_back(reading.at);
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

double MeterCurve::lowAt(Instant at) const
{
    const std::size_t i = pairHolding(at);
    const double half = m_resolution / 2.0;
    if (at == m_at[i])
        return m_kwh[i] - half;
    double low = m_kwh[i - 1] - half;
    if (powerHolds(i) && at != m_at[i - 1])
        low = std::max(low, m_kwh[i] - half - powerTimes(*m_power, at, m_at[i]));
    return low;
}

double MeterCurve::highAt(Instant at) const
{
    const std::size_t i = pairHolding(at);
    const double half = m_resolution / 2.0;
    if (at == m_at[i - 1])
        return m_kwh[i - 1] + half;
    double high = m_kwh[i] + half;
    if (powerHolds(i) && at != m_at[i])
        high = std::min(high, m_kwh[i - 1] + half + powerTimes(*m_power, m_at[i - 1], at));
    return high;
}

EnergyFigure MeterCurve::overChain(Span span) const
{
    EnergyFigure figure;
    figure.kwh = estimateAt(span.end) - estimateAt(span.start);
    figure.low = std::max(0.0, lowAt(span.end) - highAt(span.start));
    figure.high = highAt(span.end) - lowAt(span.start);
    holdEstimate(figure);
    figure.metered = {span};
    return figure;
}

EnergyFigure MeterCurve::overReset(std::size_t pair, Span span) const
{
    const double whole = hoursBetween(m_at[pair - 1], m_at[pair]);
    const bool isWhole = span.start == m_at[pair - 1] && span.end == m_at[pair];
    EnergyFigure figure;
    figure.kwh = m_reset[pair] * (span.hours() / whole);
    figure.low = isWhole ? std::max(0.0, m_reset[pair] - m_resolution / 2.0) : 0.0;
    figure.high = powerHolds(pair) ? powerTimes(*m_power, span.start, span.end) : unbounded;
    holdEstimate(figure);
    figure.metered = {span};
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
            sum.append(overChain(part));
        else if (!part.empty() && kind == Pair::reset)
            sum.append(overReset(last, part));
        first = last;
    }
    return sum;
}

} // namespace holdband::analysis
