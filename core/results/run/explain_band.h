// Explanations that a stage and the full run share: time inside and outside, coverage, the
// deviation. Not for use outside core/results.
#pragma once

#include "core/results/run/explain_text.h"

#include <cstddef>
#include <vector>

namespace holdband::results {

/// Hold time of a stage or of the run, and the deviation over the covered part of it.
struct Held : analysis::HeldTime {
    const analysis::TimeMoments* deviation = nullptr;
};

struct PlacedExcursion {
    std::size_t stage = 0; ///< index of the judged stage
    const analysis::Excursion* excursion = nullptr;
};

std::string insideText(const ExplainText& words, const Held& held);
std::string outsideText(const Held& held);
std::string coverageWords(const ExplainText& words, const Held& held);
std::string excursionText(const ExplainText& words, const Held& held,
                          const std::vector<PlacedExcursion>& excursions);
/// `worst` has no excursion where there was none.
std::string worstWords(const ExplainText& words, const Held& held, const PlacedExcursion& worst);
std::string meanText(const ExplainText& words, const Held& held);
std::string spreadText(const ExplainText& words, const Held& held);
std::string rmsText(const ExplainText& words, const Held& held);
std::string meanAbsoluteText(const ExplainText& words, const Held& held);

/// The reason why there is no figure over the hold time; empty if some of it is covered.
std::string whyNoHoldTime(const Held& held);

} // namespace holdband::results
