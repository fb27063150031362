#include "core/review/explain_band.h"

#include "core/text/durations.h"

#include <algorithm>
#include <cmath>

namespace holdband::review {

using analysis::Side;

Span PlacedExcursion::span() const
{
    const auto at = [&](double ms) { return stage->span.start + Milliseconds{std::llround(ms)}; };
    return {at(excursion->startMs), at(excursion->endMs)};
}

std::string whyNothingHeld(const Held& held)
{
    if (held.coveredMs > 0.0)
        return {};
    return held.holdMs > 0.0
               ? "None of the " + spanWords(held.holdMs) +
                     " of hold time was seen, so there is nothing to take the figure from."
               : "There is no hold time yet, so there is nothing to take the figure from.";
}

std::string insideWords(const ExplainWords& words, const Held& held)
{
    if (const std::string why = whyNothingHeld(held); !why.empty())
        return why;
    return "Time inside the band over the hold time that was seen: " + spanWords(held.insideMs) +
           " of " + spanWords(held.coveredMs) + " = " +
           words.share(held.insideMs / held.coveredMs) + ".";
}

std::string outsideWords(const Held& held)
{
    if (const std::string why = whyNothingHeld(held); !why.empty())
        return why;
    const std::string rule = "Seen hold time beyond an edge of the band, with straight lines "
                             "between the readings: ";
    const std::string of = " of " + spanWords(held.coveredMs) + ".";
    if (held.aboveMs <= 0.0 && held.belowMs <= 0.0)
        return rule + "none" + of;
    if (held.aboveMs <= 0.0 || held.belowMs <= 0.0)
        return rule + spanWords(held.aboveMs + held.belowMs) + ", all of it " +
               (held.aboveMs > 0.0 ? "above," : "below,") + of;
    return rule + spanWords(held.aboveMs) + " above + " + spanWords(held.belowMs) +
           " below = " + spanWords(held.aboveMs + held.belowMs) + of;
}

std::string coverageWords(const ExplainWords& words, const Held& held)
{
    const RunReview& review = words.review();
    if (!(held.holdMs > 0.0))
        return "There is no hold time yet, so no share of it can have been seen.";
    return "Hold time between readings at most " + durationText(review.input.judging.gapLimit) +
           " apart (" +
           (review.batch().gapLimit ? "the batch's own gap limit"
                                    : "three times the usual interval, 2 h at most") +
           "), over all hold time: " + spanWords(held.coveredMs) + " of " + spanWords(held.holdMs) +
           " = " + words.share(held.coveredMs / held.holdMs) + ".";
}

std::string excursionWords(const ExplainWords& words, const Held& held,
                           const std::vector<PlacedExcursion>& excursions)
{
    if (const std::string why = whyNothingHeld(held); !why.empty())
        return why;
    const auto above =
        std::count_if(excursions.begin(), excursions.end(), [](const PlacedExcursion& placed) {
            return placed.excursion->side == Side::above;
        });
    std::string text = "Unbroken stretches of seen hold time beyond one edge of the band: " +
                       std::to_string(excursions.size());
    if (!excursions.empty())
        text += " (" + std::to_string(above) + " above, " +
                std::to_string(excursions.size() - static_cast<std::size_t>(above)) + " below)";
    const Milliseconds grace = words.review().input.judging.grace;
    return text + (grace > Milliseconds{0}
                       ? ". Those shorter than the grace of " + durationText(grace) +
                             " do not count for the verdict."
                       : ". Each counts, however short.");
}

std::string worstWords(const ExplainWords& words, const Held& held,
                       const std::vector<PlacedExcursion>& excursions)
{
    if (const std::string why = whyNothingHeld(held); !why.empty())
        return why;
    const auto worst = std::max_element(excursions.begin(), excursions.end(),
                                        [](const PlacedExcursion& a, const PlacedExcursion& b) {
                                            return a.excursion->peak < b.excursion->peak;
                                        });
    if (worst == excursions.end())
        return "The furthest past an edge of the band: the beer was never seen outside it while "
               "it was held.";
    const bool above = worst->excursion->side == Side::above;
    const Span span = worst->span();
    return "The furthest past an edge of the band: " + words.difference(worst->excursion->peak) +
           (above ? " above" : " below") + " in " + worst->stage->label + ", between " +
           words.time(span.start) + " and " + words.time(span.end) + ".";
}

namespace {

/// " over the 8 h that were held and seen, each moment counting alike: "
std::string overHeld(const Held& held)
{
    return " over the " + spanWords(held.deviation->weightMs()) +
           " that were held and seen, each moment counting alike: ";
}

std::string whyNoDeviation(const Held& held)
{
    if (const std::string why = whyNothingHeld(held); !why.empty())
        return why;
    return held.deviation->empty() ? "Nothing of the hold time was seen." : "";
}

} // namespace

std::string meanWords(const ExplainWords& words, const Held& held)
{
    if (const std::string why = whyNoDeviation(held); !why.empty())
        return why;
    return "Beer minus target, averaged" + overHeld(held) +
           words.deviation(held.deviation->mean()) + ".";
}

std::string spreadWords(const ExplainWords& words, const Held& held)
{
    if (const std::string why = whyNoDeviation(held); !why.empty())
        return why;
    return "How far beer minus target strays from its own mean of " +
           words.deviation(held.deviation->mean()) + " (standard deviation)" + overHeld(held) +
           words.difference(held.deviation->standardDeviation()) + ".";
}

std::string rmsWords(const ExplainWords& words, const Held& held)
{
    if (const std::string why = whyNoDeviation(held); !why.empty())
        return why;
    return "Root of the mean square of beer minus target" + overHeld(held) +
           "√(mean² + spread²), "
           "with a mean of " +
           words.deviation(held.deviation->mean()) + " and a spread of " +
           words.difference(held.deviation->standardDeviation()) +
           ", = " + words.difference(held.deviation->rootMeanSquare()) + ".";
}

std::string meanAbsoluteWords(const ExplainWords& words, const Held& held)
{
    if (const std::string why = whyNoDeviation(held); !why.empty())
        return why;
    return "The distance from the target, above or below alike, averaged" + overHeld(held) +
           words.difference(held.deviation->meanAbsolute()) + ".";
}

} // namespace holdband::review
