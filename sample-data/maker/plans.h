// Named plans of the scenario, from which batches can be started. Common practice, no source.
#pragma once

#include <string>

namespace holdband::sample {

/// The description's "plans".
std::string plansText();

} // namespace holdband::sample
