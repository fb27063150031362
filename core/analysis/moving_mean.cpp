#include "core/analysis/moving_mean.h"

#include <algorithm>
#include <vector>

namespace holdband::analysis {

namespace {

/// One run's points with the integral up to each.
class RunIntegral {
public:
    RunIntegral(const Track& track, Run run) : m_track(track), m_run(run), m_sums{0.0}
    {
        for (std::size_t i = run.first; i < run.last; ++i)
            m_sums.push_back(m_sums.back() + (track.value[i] + track.value[i + 1]) / 2.0 *
                                                 (track.ms[i + 1] - track.ms[i]));
    }

    double start() const { return m_track.ms[m_run.first]; }
    double end() const { return m_track.ms[m_run.last]; }

    double valueAt(double ms) const
    {
        const std::size_t i = pieceAt(ms);
        return along(m_track.ms[i], m_track.value[i], m_track.ms[i + 1], m_track.value[i + 1], ms);
    }
    double upTo(double ms) const
    {
        const std::size_t i = pieceAt(ms);
        return m_sums[i - m_run.first] +
               (m_track.value[i] + valueAt(ms)) / 2.0 * (ms - m_track.ms[i]);
    }
    /// The starts of windows at which one of the window's edges passes a point.
    std::vector<double> turns(double windowMs) const
    {
        std::vector<double> starts;
        for (std::size_t i = m_run.first; i <= m_run.last; ++i) {
            starts.push_back(m_track.ms[i]);
            starts.push_back(m_track.ms[i] - windowMs);
        }
        std::erase_if(starts, [&](double ms) { return ms < start() || ms > end() - windowMs; });
        std::sort(starts.begin(), starts.end());
        return starts;
    }

private:
    std::size_t pieceAt(double ms) const
    {
        const auto first = m_track.ms.begin() + static_cast<std::ptrdiff_t>(m_run.first);
        const auto last = m_track.ms.begin() + static_cast<std::ptrdiff_t>(m_run.last);
        const auto after = std::upper_bound(first + 1, last, ms);
        return static_cast<std::size_t>(after - m_track.ms.begin()) - 1;
    }

    const Track& m_track;
    Run m_run;
    std::vector<double> m_sums;
};

double greatestOfRun(const RunIntegral& run, double windowMs)
{
    const auto meanFrom = [&](double ms) {
        const double to = std::min(ms + windowMs, run.end());
        return (run.upTo(to) - run.upTo(ms)) / windowMs;
    };
    // While both edges of the window are on straight pieces, its mean is a parabola: the greatest
    // is at a turn, or between two where the edges have the same value. The value may jump at a
    // turn, so the difference of the edges is taken inside.
    const auto edgeDifference = [&](double ms) {
        return run.valueAt(ms + windowMs) - run.valueAt(ms);
    };
    const std::vector<double> turns = run.turns(windowMs);
    double greatest = meanFrom(run.start());
    for (std::size_t i = 0; i < turns.size(); ++i) {
        greatest = std::max(greatest, meanFrom(turns[i]));
        if (i == 0)
            continue;
        const double early = along(0.0, turns[i - 1], 4.0, turns[i], 1.0);
        const double late = along(0.0, turns[i - 1], 4.0, turns[i], 3.0);
        const double before = edgeDifference(early);
        const double after = edgeDifference(late);
        if (before <= after)
            continue;
        const double level = along(before, early, after, late, 0.0);
        if (level > turns[i - 1] && level < turns[i])
            greatest = std::max(greatest, meanFrom(level));
    }
    return greatest;
}

} // namespace

std::optional<double> greatestMean(const Track& track, double windowMs)
{
    std::optional<double> greatest;
    for (const Run& each : track.runs) {
        const RunIntegral run(track, each);
        if (run.end() - run.start() < windowMs || !(windowMs > 0.0))
            continue;
        const double mean = greatestOfRun(run, windowMs);
        greatest = std::max(greatest.value_or(mean), mean);
    }
    return greatest;
}

} // namespace holdband::analysis
