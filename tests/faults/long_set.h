// Whether the long set of tests is wanted: HOLDBAND_FAULTS=long.
#pragma once

#include <cstdlib>
#include <string_view>

namespace holdband::faults {

inline bool wantsLongSet()
{
    const char* set = std::getenv("HOLDBAND_FAULTS");
    return set && std::string_view(set) == "long";
}

} // namespace holdband::faults
