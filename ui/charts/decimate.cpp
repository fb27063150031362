#include "ui/charts/decimate.h"

#include <algorithm>
#include <array>

namespace holdband::ui {

namespace {

using Index = std::size_t;

/// The first index in [first, last] at or after `ms`; last + 1 where there is none.
Index atOrAfter(const analysis::Track& track, Index first, Index last, double ms)
{
    const auto begin = track.ms.begin() + static_cast<std::ptrdiff_t>(first);
    const auto end = track.ms.begin() + static_cast<std::ptrdiff_t>(last) + 1;
    return static_cast<Index>(std::lower_bound(begin, end, ms) - track.ms.begin());
}

void push(const analysis::Track& track, Index i, Polyline& line)
{
    line.push_back({track.ms[i], track.value[i]});
}

/// First, least, greatest and last of [from, to), in order of time, each once.
void pushColumn(const analysis::Track& track, Index from, Index to, Polyline& line)
{
    const auto begin = track.value.begin() + static_cast<std::ptrdiff_t>(from);
    const auto end = track.value.begin() + static_cast<std::ptrdiff_t>(to);
    const auto [least, greatest] = std::minmax_element(begin, end);
    std::array<Index, 4> chosen{from, static_cast<Index>(least - track.value.begin()),
                                static_cast<Index>(greatest - track.value.begin()), to - 1};
    std::sort(chosen.begin(), chosen.end());
    const auto last = std::unique(chosen.begin(), chosen.end());
    for (auto i = chosen.begin(); i != last; ++i)
        push(track, *i, line);
}

Polyline runPart(const analysis::Track& track, analysis::Run run, double fromMs, double toMs,
                 int columns)
{
    Index first = atOrAfter(track, run.first, run.last, fromMs);
    Index last = atOrAfter(track, run.first, run.last, toMs);
    first = first > run.first ? first - 1 : first;
    last = std::min(last, run.last);
    Polyline line;
    if (last - first < 4 * static_cast<Index>(columns)) {
        for (Index i = first; i <= last; ++i)
            push(track, i, line);
        return line;
    }
    push(track, first, line);
    const double width = (toMs - fromMs) / columns;
    Index from = first + 1;
    for (int column = 0; column < columns && from < last; ++column) {
        const Index to = atOrAfter(track, from, last, fromMs + (column + 1) * width);
        if (to > from)
            pushColumn(track, from, std::min(to, last), line);
        from = to;
    }
    push(track, last, line);
    return line;
}

} // namespace

std::vector<Polyline> decimate(const analysis::Track& track, double fromMs, double toMs,
                               int columns)
{
    std::vector<Polyline> lines;
    if (columns < 1 || !(toMs > fromMs))
        return lines;
    for (const analysis::Run& run : track.runs) {
        if (track.ms[run.last] < fromMs || track.ms[run.first] > toMs)
            continue;
        lines.push_back(runPart(track, run, fromMs, toMs, columns));
    }
    return lines;
}

} // namespace holdband::ui
