#include "ui/charts/decimate.h"

#include <algorithm>
#include <array>

namespace holdband::ui {

namespace {

using Index = std::size_t;

struct Extremes {
    Index least;
    Index greatest;
};

/// The first index in [first, last] at or after `ms`; last + 1 if there is none.
Index atOrAfter(const analysis::Track& track, Index first, Index last, double ms)
{
    const auto begin = track.ms.begin() + static_cast<std::ptrdiff_t>(first);
    const auto end = track.ms.begin() + static_cast<std::ptrdiff_t>(last) + 1;
    return static_cast<Index>(std::lower_bound(begin, end, ms) - track.ms.begin());
}

Extremes scanned(const analysis::Track& track, Index from, Index to)
{
    const auto begin = track.value.begin() + static_cast<std::ptrdiff_t>(from);
    const auto end = track.value.begin() + static_cast<std::ptrdiff_t>(to);
    const auto [least, greatest] = std::minmax_element(begin, end);
    return {static_cast<Index>(least - track.value.begin()),
            static_cast<Index>(greatest - track.value.begin())};
}

/// The extremes of two stretches together; the first is the earlier one.
Extremes merged(const analysis::Track& track, Extremes a, Extremes b)
{
    return {track.value[b.least] < track.value[a.least] ? b.least : a.least,
            track.value[b.greatest] >= track.value[a.greatest] ? b.greatest : a.greatest};
}

void push(const analysis::Track& track, Index i, Polyline& line)
{
    line.push_back({track.ms[i], track.value[i]});
}

/// Draws one run of the track.
class RunPart {
public:
    RunPart(const analysis::Track& track, const TrackPyramid* pyramid)
        : m_track(track), m_pyramid(pyramid)
    {
    }

    Polyline line(analysis::Run run, double fromMs, double toMs, int columns) const
    {
        Index first = atOrAfter(m_track, run.first, run.last, fromMs);
        Index last = atOrAfter(m_track, run.first, run.last, toMs);
        first = first > run.first ? first - 1 : first;
        last = std::min(last, run.last);
        Polyline line;
        const double width = (toMs - fromMs) / columns;
        // The run may be one of hundreds that share the columns.
        const double begin = std::max(fromMs, m_track.ms[first]);
        const double end = std::min(toMs, m_track.ms[last]);
        const int own = std::min(columns, static_cast<int>((end - begin) / width) + 1);
        if (last - first < 4 * static_cast<Index>(own)) {
            for (Index i = first; i <= last; ++i)
                push(m_track, i, line);
            return line;
        }
        line.reserve(4 * static_cast<Index>(own) + 6);
        push(m_track, first, line);
        Index from = first + 1;
        for (int column = static_cast<int>((begin - fromMs) / width);
             column < columns && from < last; ++column) {
            const Index to = atOrAfter(m_track, from, last, fromMs + (column + 1) * width);
            if (to > from)
                pushColumn(from, std::min(to, last), line);
            from = to;
        }
        push(m_track, last, line);
        return line;
    }

private:
    /// Adds the first, lowest, highest and last point of [from, to), in order of time, each once.
    void pushColumn(Index from, Index to, Polyline& line) const
    {
        const auto [least, greatest] =
            m_pyramid ? m_pyramid->extremes(m_track, from, to) : pairOf(scanned(m_track, from, to));
        std::array<Index, 4> chosen{from, least, greatest, to - 1};
        std::sort(chosen.begin(), chosen.end());
        const auto last = std::unique(chosen.begin(), chosen.end());
        for (auto i = chosen.begin(); i != last; ++i)
            push(m_track, *i, line);
    }

    static std::pair<Index, Index> pairOf(Extremes extremes)
    {
        return {extremes.least, extremes.greatest};
    }

    const analysis::Track& m_track;
    const TrackPyramid* m_pyramid;
};

} // namespace

TrackPyramid::TrackPyramid(const analysis::Track& track)
{
    for (Index from = 0; from < track.value.size(); from += blockLength) {
        const Extremes found =
            scanned(track, from, std::min(from + blockLength, track.value.size()));
        m_least.push_back(found.least);
        m_greatest.push_back(found.greatest);
    }
}

std::pair<std::size_t, std::size_t> TrackPyramid::extremes(const analysis::Track& track,
                                                           std::size_t from, std::size_t to) const
{
    const Index firstBlock = (from + blockLength - 1) / blockLength;
    const Index lastBlock = to / blockLength;
    if (firstBlock >= lastBlock) {
        const Extremes all = scanned(track, from, to);
        return {all.least, all.greatest};
    }
    Extremes all{m_least[firstBlock], m_greatest[firstBlock]};
    if (from < firstBlock * blockLength)
        all = merged(track, scanned(track, from, firstBlock * blockLength), all);
    for (Index block = firstBlock + 1; block < lastBlock; ++block)
        all = merged(track, all, {m_least[block], m_greatest[block]});
    if (lastBlock * blockLength < to)
        all = merged(track, all, scanned(track, lastBlock * blockLength, to));
    return {all.least, all.greatest};
}

std::vector<Polyline> decimate(const analysis::Track& track, double fromMs, double toMs,
                               int columns, const TrackPyramid* pyramid)
{
    std::vector<Polyline> lines;
    if (columns < 1 || !(toMs > fromMs))
        return lines;
    const RunPart part(track, pyramid);
    for (const analysis::Run& run : track.runs) {
        if (track.ms[run.last] < fromMs || track.ms[run.first] > toMs)
            continue;
        lines.push_back(part.line(run, fromMs, toMs, columns));
    }
    return lines;
}

} // namespace holdband::ui
