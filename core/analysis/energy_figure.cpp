#include "core/analysis/energy_figure.h"

#include <algorithm>

namespace holdband::analysis {

double totalMs(const std::vector<Span>& spans)
{
    double sum = 0.0;
    for (const Span& span : spans)
        sum += static_cast<double>((span.end - span.start).count());
    return sum;
}

double EnergyFigure::meteredMs() const
{
    return totalMs(metered);
}

void EnergyFigure::append(const EnergyFigure& next)
{
    kwh += next.kwh;
    low += next.low;
    high += next.high;
    metered.insert(metered.end(), next.metered.begin(), next.metered.end());
    metered = unite(std::move(metered));
}

EnergyFigure EnergyFigure::times(double share) const
{
    if (share == 0.0)
        return {0.0, 0.0, 0.0, metered};
    return {kwh * share, low * share, high * share, metered};
}

std::vector<Span> unite(std::vector<Span> spans)
{
    std::erase_if(spans, [](const Span& span) { return span.empty(); });
    std::sort(spans.begin(), spans.end(),
              [](const Span& a, const Span& b) { return a.start < b.start; });
    std::vector<Span> united;
    for (const Span& span : spans) {
        if (!united.empty() && span.start <= united.back().end)
            united.back().end = std::max(united.back().end, span.end);
        else
            united.push_back(span);
    }
    return united;
}

std::vector<Span> intersect(const std::vector<Span>& a, const std::vector<Span>& b)
{
    std::vector<Span> common;
    for (std::size_t i = 0, k = 0; i < a.size() && k < b.size();) {
        const Span both = intersection(a[i], b[k]);
        if (!both.empty())
            common.push_back(both);
        a[i].end < b[k].end ? ++i : ++k;
    }
    return common;
}

} // namespace holdband::analysis
