#include "core/analysis/interval_energy.h"

#include <algorithm>
#include <cmath>

namespace holdband::analysis {

namespace {

/// Neighbours this many usual lengths apart still touch: loggers are some seconds late now and
/// then, and a day of a clock change has 25 h.
constexpr double touchingWithin = 1.5;

Milliseconds usualLength(const std::vector<Instant>& at)
{
    std::vector<Milliseconds> lengths;
    lengths.reserve(at.size());
    for (std::size_t i = 1; i < at.size(); ++i)
        lengths.push_back(at[i] - at[i - 1]);
    const auto middle = lengths.begin() + static_cast<std::ptrdiff_t>((lengths.size() - 1) / 2);
    std::nth_element(lengths.begin(), middle, lengths.end());
    return *middle;
}

class Intervals {
public:
    Intervals(const Series& energies, const DayStep& dayStep)
        : m_energies(energies), m_dayStep(dayStep), m_length(usualLength(energies.at))
    {
    }

    Span startingAt(std::size_t i) const
    {
        const Instant start = m_energies.at[i];
        const Instant end = stepFrom(start, 1);
        if (i + 1 == m_energies.size())
            return {start, end};
        const Instant next = m_energies.at[i + 1];
        return {start, touch(i) ? next : std::min(end, next)};
    }

    Span endingAt(std::size_t i) const
    {
        const Instant end = m_energies.at[i];
        const Instant start = stepFrom(end, -1);
        if (i == 0)
            return {start, end};
        const Instant before = m_energies.at[i - 1];
        return {touch(i - 1) ? before : std::max(start, before), end};
    }

private:
    /// Whether nothing is missing or left out between reading i and the next.
    bool touch(std::size_t i) const
    {
        if (std::binary_search(m_energies.breaks.begin(), m_energies.breaks.end(), i + 1))
            return false;
        const std::chrono::duration<double, std::milli> most = m_length;
        return m_energies.at[i + 1] - m_energies.at[i] <= most * touchingWithin;
    }

    Instant stepFrom(Instant at, int count) const
    {
        const Hours hours = m_length;
        if (hours >= Hours{23} && hours <= Hours{25})
            return m_dayStep(at, count);
        return at + m_length * count;
    }

    const Series& m_energies;
    const DayStep& m_dayStep;
    Milliseconds m_length;
};

/// The finest decimal place (kWh) that the energies use; registers have at most mostDecimals.
int decimalsOf(const std::vector<EnergyInterval>& intervals)
{
    int decimals = 0;
    for (const EnergyInterval& interval : intervals) {
        const auto isWhole = [&](int places) {
            const double scaled = interval.kwh * std::pow(10.0, places);
            return std::abs(scaled - std::round(scaled)) <= 1e-6;
        };
        while (decimals < mostDecimals && !isWhole(decimals))
            ++decimals;
    }
    return decimals;
}

} // namespace

std::vector<EnergyInterval> intervalsOf(const Series& energies, IntervalTime time,
                                        const DayStep& dayStep)
{
    std::vector<EnergyInterval> intervals;
    if (energies.size() < 2)
        return intervals;
    const Intervals spans(energies, dayStep);
    for (std::size_t i = 0; i < energies.size(); ++i) {
        const Span span = time == IntervalTime::start ? spans.startingAt(i) : spans.endingAt(i);
        if (!span.empty())
            intervals.push_back({span, energies.value[i]});
    }
    return intervals;
}

MeterRegister registerOf(const std::vector<EnergyInterval>& intervals)
{
    MeterRegister meter;
    meter.roundedEach = true;
    const int decimals = decimalsOf(intervals);
    double sum = 0.0;
    const auto add = [&](Instant at) {
        MeterReading reading;
        reading.at = at;
        reading.registerReading = Energy::kilowattHours(sum);
        reading.decimals = decimals;
        reading.timeDoubt = Milliseconds{0};
        meter.readings.push_back(std::move(reading));
    };
    for (const EnergyInterval& interval : intervals) {
        if (meter.readings.empty() || meter.readings.back().at < interval.span.start) {
            if (!meter.readings.empty())
                meter.gapsBefore.push_back(meter.readings.size());
            add(interval.span.start);
        }
        sum += interval.kwh;
        add(interval.span.end);
    }
    return meter;
}

} // namespace holdband::analysis
