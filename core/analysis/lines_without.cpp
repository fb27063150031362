#include "core/analysis/lines_without.h"

#include <string_view>
#include <unordered_map>

namespace holdband::analysis {

namespace {

FitSums emptySums(const std::vector<BatchPoint>& pairs)
{
    return pairs.empty() ? FitSums{0.0, 0.0}
                         : FitSums{pairs.front().point.x, pairs.front().point.y};
}

} // namespace

LinesWithout::LinesWithout(const std::vector<PastBatch>& batches,
                           const std::vector<BatchPoint>& pairs)
    : m_all(emptySums(pairs)), m_alone(batches.size(), emptySums(pairs))
{
    std::unordered_map<std::string_view, std::size_t> indices;
    for (std::size_t i = 0; i < batches.size(); ++i)
        indices.emplace(batches[i].batch, i);
    for (const BatchPoint& pair : pairs) {
        m_all.add(pair.point);
        std::optional<std::size_t> only;
        std::size_t ran = 0;
        for (const std::string& name : pair.of) {
            const auto found = indices.find(name);
            if (found == indices.end())
                continue;
            only = found->second;
            ++ran;
        }
        if (ran == 1)
            m_alone[*only].add(pair.point);
    }
}

std::optional<LinearFit> LinesWithout::without(std::size_t batch) const
{
    FitSums others = m_all;
    others.remove(m_alone[batch]);
    return others.fit();
}

} // namespace holdband::analysis
