// What the caches of lanes and of comparisons both ask of a batch's evidence. Not for use outside
// core/results.
#pragma once

#include "core/results/snapshot.h"

#include <set>
#include <string>
#include <vector>

namespace holdband::results {

/// Sensors that read the batch's beer at some time.
std::set<std::string> beerSensorsOf(const Batch& batch);

/// Stretches of the sensor that are left out.
std::vector<Span> exclusionsOf(const Snapshot& snapshot, const std::string& sensor);

} // namespace holdband::results
