// The description that `holdband load` reads: equipment, batches, files, meter readings, journal.
#pragma once

#include "sample-data/maker/rounds.h"
#include "sample-data/maker/scenario.h"

#include <string>
#include <vector>

namespace holdband::sample {

std::string description(const Scenario& scenario, const std::vector<MeterReading>& readings);

} // namespace holdband::sample
