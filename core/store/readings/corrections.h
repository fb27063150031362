// Applies corrections to their readings. Not for use outside core/store.
#pragma once

#include <algorithm>
#include <vector>

namespace holdband::store {

/// `corrections` in the order in which they were made; each has the id of its `reading`. A
/// correction whose reading is not in the list is skipped.
template <typename Kept, typename Correction, typename Apply>
void applyCorrections(std::vector<Kept>& readings, const std::vector<Correction>& corrections,
                      Apply apply)
{
    for (const Correction& correction : corrections) {
        const auto found = std::find_if(readings.begin(), readings.end(), [&](const Kept& kept) {
            return kept.id.value == correction.reading;
        });
        if (found != readings.end())
            apply(*found, correction);
    }
}

} // namespace holdband::store
