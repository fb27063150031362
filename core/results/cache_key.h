// What the caches of lanes and of comparisons both need to know about a batch's data. Not for use
// outside core/results.
#pragma once

#include "core/results/snapshot.h"

#include <set>
#include <string>
#include <vector>

namespace holdband::results {

/// Sensors that read the batch's beer at some time.
std::set<std::string> beerSensorsOf(const Batch& batch);

/// Stretches of the sensor's readings that are left out.
std::vector<Span> exclusionsOf(const Snapshot& snapshot, const std::string& sensor);

} // namespace holdband::results
