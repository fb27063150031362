// Named plans of the scenario, to begin a batch with. Common practice, no source.
#pragma once

#include <string>

namespace holdband::sample {

/// The description's "plans".
std::string plansText();

} // namespace holdband::sample
