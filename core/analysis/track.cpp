#include "core/analysis/track.h"

#include <algorithm>
#include <cmath>
#include <span>

namespace holdband::analysis {

namespace {

constexpr Milliseconds longestDefaultGap = std::chrono::hours{2};

/// True where `candidate` is the median of the intervals between at[first … last]: fewer than half
/// of them are strictly above or below it. One cheap pass that is enough for a regular log, the
/// usual case.
bool isMedian(std::span<const Instant> at, Milliseconds candidate)
{
    std::size_t below = 0;
    std::size_t above = 0;
    for (std::size_t i = 1; i < at.size(); ++i) {
        const Milliseconds interval = at[i] - at[i - 1];
        below += interval < candidate;
        above += interval > candidate;
    }
    const std::size_t count = at.size() - 1;
    return 2 * below < count && 2 * above < count;
}

/// Milliseconds as double, since an even count may halve them.
double medianInterval(std::span<const Instant> at)
{
    if (const Milliseconds guess = at[1] - at[0]; isMedian(at, guess))
        return static_cast<double>(guess.count());
    std::vector<std::int64_t> intervals(at.size() - 1);
    for (std::size_t i = 1; i < at.size(); ++i)
        intervals[i - 1] = (at[i] - at[i - 1]).count();
    const auto middle = intervals.begin() + static_cast<std::ptrdiff_t>(intervals.size() / 2);
    std::nth_element(intervals.begin(), middle, intervals.end());
    if (intervals.size() % 2 == 1)
        return static_cast<double>(*middle);
    const auto lower = *std::max_element(intervals.begin(), middle);
    return (static_cast<double>(lower) + static_cast<double>(*middle)) / 2.0;
}

std::size_t indexAtOrAfter(const Series& series, Instant at)
{
    return static_cast<std::size_t>(std::lower_bound(series.at.begin(), series.at.end(), at) -
                                    series.at.begin());
}

/// Builds a track point by point; the first piece after a hole starts a run.
class TrackBuilder {
public:
    TrackBuilder(Instant origin, std::size_t expected)
    {
        m_track.origin = origin;
        m_track.ms.reserve(expected);
        m_track.value.reserve(expected);
    }

    void piece(double t0, double v0, double t1, double v1, bool joined)
    {
        if (!joined || m_track.runs.empty()) {
            push(t0, v0);
            m_track.runs.push_back({m_track.ms.size() - 1, m_track.ms.size() - 1});
        }
        push(t1, v1);
        m_track.runs.back().last = m_track.ms.size() - 1;
    }

    Track take() { return std::move(m_track); }

private:
    void push(double ms, double value)
    {
        m_track.ms.push_back(ms);
        m_track.value.push_back(value);
    }

    Track m_track;
};

double pieceMsBefore(double t0, double t1, double until)
{
    return std::max(0.0, std::min(t1, until) - t0);
}

} // namespace

double Track::coveredMs() const
{
    double sum = 0.0;
    for (const Run& run : runs)
        sum += ms[run.last] - ms[run.first];
    return sum;
}

double Track::coveredMsBefore(double untilMs) const
{
    double sum = 0.0;
    for (const Run& run : runs)
        sum += pieceMsBefore(ms[run.first], ms[run.last], untilMs);
    return sum;
}

double medianIntervalMs(const Series& series)
{
    return series.size() < 2 ? 0.0 : medianInterval(series.at);
}

Milliseconds defaultGapLimit(const Series& series, Span inside)
{
    const auto first = std::lower_bound(series.at.begin(), series.at.end(), inside.start);
    const auto last = std::upper_bound(first, series.at.end(), inside.end);
    if (last - first < 2)
        return longestDefaultGap;
    const double limit = 3.0 * medianInterval(std::span<const Instant>(first, last));
    return std::min(longestDefaultGap, wholeMs(limit));
}

Track cover(const Series& series, Milliseconds gapLimit, Span span)
{
    if (span.empty() || series.size() < 2) {
        Track none;
        none.origin = span.start;
        return none;
    }
    const std::size_t begin = std::max<std::size_t>(1, indexAtOrAfter(series, span.start));
    const std::size_t end = std::min(series.size(), indexAtOrAfter(series, span.end) + 1);
    TrackBuilder builder(span.start, end > begin ? end - begin + 2 : 0);
    auto nextBreak = std::lower_bound(series.breaks.begin(), series.breaks.end(), begin);
    const double length = static_cast<double>((span.end - span.start).count());
    bool joined = false;
    for (std::size_t i = begin; i < end; ++i) {
        const bool broken = nextBreak != series.breaks.end() && *nextBreak == i;
        if (broken)
            ++nextBreak;
        double t0 = static_cast<double>((series.at[i - 1] - span.start).count());
        double t1 = static_cast<double>((series.at[i] - span.start).count());
        if (broken || series.at[i] - series.at[i - 1] > gapLimit || t1 <= 0.0 || t0 >= length) {
            joined = false;
            continue;
        }
        double v0 = series.value[i - 1];
        double v1 = series.value[i];
        if (t1 > length) {
            v1 = along(t0, v0, t1, v1, length);
            t1 = length;
        }
        if (t0 < 0.0) {
            v0 = along(t0, v0, t1, v1, 0.0);
            t0 = 0.0;
        }
        builder.piece(t0, v0, t1, v1, joined);
        joined = true;
    }
    return builder.take();
}

Track clip(const Track& track, double fromMs, double toMs)
{
    TrackBuilder builder(track.origin, 0);
    bool cut = false;
    forEachPiece(track, fromMs, [&](double t0, double v0, double t1, double v1, bool joined) {
        if (t0 >= toMs || cut)
            return;
        if (t1 > toMs) {
            v1 = along(t0, v0, t1, v1, toMs);
            t1 = toMs;
            cut = true;
        }
        builder.piece(t0, v0, t1, v1, joined);
    });
    return builder.take();
}

namespace {

/// The value at `ms` on the piece that starts at point `i`.
double valueOnPiece(const Track& track, std::size_t i, double ms)
{
    return along(track.ms[i], track.value[i], track.ms[i + 1], track.value[i + 1], ms);
}

/// Walks two overlapping runs together and adds the pieces of their difference.
void addDifferenceOfRuns(TrackBuilder& builder, const Track& a, Run runA, const Track& b, Run runB)
{
    double t = std::max(a.ms[runA.first], b.ms[runB.first]);
    const double end = std::min(a.ms[runA.last], b.ms[runB.last]);
    if (!(t < end))
        return;
    const auto pieceAt = [](const Track& track, Run run, double ms) {
        const auto first = track.ms.begin() + static_cast<std::ptrdiff_t>(run.first);
        const auto last = track.ms.begin() + static_cast<std::ptrdiff_t>(run.last);
        return static_cast<std::size_t>(std::upper_bound(first, last, ms) - track.ms.begin()) - 1;
    };
    std::size_t i = pieceAt(a, runA, t);
    std::size_t k = pieceAt(b, runB, t);
    bool joined = false;
    while (t < end) {
        const double next = std::min({a.ms[i + 1], b.ms[k + 1], end});
        builder.piece(t, valueOnPiece(a, i, t) - valueOnPiece(b, k, t), next,
                      valueOnPiece(a, i, next) - valueOnPiece(b, k, next), joined);
        joined = true;
        i += a.ms[i + 1] <= next && i + 1 < runA.last;
        k += b.ms[k + 1] <= next && k + 1 < runB.last;
        t = next;
    }
}

} // namespace

Track difference(const Track& a, const Track& b)
{
    TrackBuilder builder(a.origin, a.ms.size() + b.ms.size());
    std::size_t k = 0;
    for (const Run& runA : a.runs) {
        while (k < b.runs.size() && b.ms[b.runs[k].last] <= a.ms[runA.first])
            ++k;
        for (std::size_t j = k; j < b.runs.size() && b.ms[b.runs[j].first] < a.ms[runA.last]; ++j)
            addDifferenceOfRuns(builder, a, runA, b, b.runs[j]);
    }
    return builder.take();
}

std::optional<double> firstAtOrBelow(const Track& track, double level, double fromMs)
{
    std::optional<double> found;
    bool first = true;
    bool lost = false;
    forEachPiece(track, fromMs, [&](double t0, double v0, double t1, double v1, bool joined) {
        if (found || lost)
            return;
        if (v0 <= level) {
            lost = !first && !joined;
            if (!lost)
                found = t0;
        } else if (v1 <= level) {
            found = along(v0, t0, v1, t1, level);
        }
        first = false;
    });
    return found;
}

} // namespace holdband::analysis
