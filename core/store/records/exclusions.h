// Stretches of a sensor's readings that are left out of its series, each with its reason.
#pragma once

#include "core/store/logbook_file.h"

#include <string>
#include <vector>

namespace holdband::store {

/// A stretch that is left out of a sensor's series, and why.
struct Exclusion {
    std::string sensor;
    Span span;
    std::string why;
    ExclusionId id = {}; ///< set for a stored one
};
Result<std::vector<Exclusion>> readExclusions(const LogbookFile& logbook);
Done addExclusion(const Change& change, const Exclusion& exclusion);
/// Includes the stretch in the series again.
Done removeExclusion(const Change& change, ExclusionId exclusion);

} // namespace holdband::store
