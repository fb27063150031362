// The summer of the scenario: six more batches, in the garage.
#pragma once

#include "sample-data/maker/scenario.h"

namespace holdband::sample {

/// February to September: the spring's scenario, followed by June to September in the garage.
Scenario springAndSummer();

} // namespace holdband::sample
