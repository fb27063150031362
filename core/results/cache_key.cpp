#include "core/results/cache_key.h"

namespace holdband::results {

std::set<std::string> beerSensorsOf(const Batch& batch)
{
    std::set<std::string> names{batch.beerSensor};
    for (const BeerUse& use : batch.beerUses)
        names.insert(use.sensor);
    return names;
}

std::vector<Span> exclusionsOf(const Snapshot& snapshot, const std::string& sensor)
{
    std::vector<Span> spans;
    for (const store::Exclusion& exclusion : snapshot.exclusions) {
        if (exclusion.sensor == sensor)
            spans.push_back(exclusion.span);
    }
    return spans;
}

} // namespace holdband::results
