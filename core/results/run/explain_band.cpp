#include "core/results/run/explain_band.h"

#include "core/results/run/sampling_text.h"
#include "core/text/durations.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <cmath>

namespace holdband::results {

using analysis::Side;

std::string whyNoHoldTime(const Held& held)
{
    if (held.coveredMs > 0.0)
        return {};
    if (held.holdMs > 0.0)
        return Phrase::
            tr("There is no data for any of the %1 of hold time, so this figure can't be computed.")
                .with(spanText(held.holdMs));
    return Phrase::tr("There is no hold time yet, so there is nothing to take the figure from.");
}

std::string insideText(const ExplainText& words, const Held& held)
{
    if (const std::string why = whyNoHoldTime(held); !why.empty())
        return why;
    return Phrase::tr("Time inside the band ÷ covered hold time: %1 of %2 = %3.")
        .with(spanText(held.insideMs), spanText(held.coveredMs), words.share(*held.insideShare()));
}

namespace {

/// The numbers of the sum that outsideText explains.
std::string outsideSum(const Held& held)
{
    const std::string sum = spanText(held.outsideMs());
    const std::string seen = spanText(held.coveredMs);
    if (held.aboveMs <= 0.0 && held.belowMs <= 0.0)
        return Phrase::tr("none of %1.", "of the hold time").with(seen);
    if (held.belowMs <= 0.0)
        return Phrase::tr("%1, all of it above, of %2.").with(sum, seen);
    if (held.aboveMs <= 0.0)
        return Phrase::tr("%1, all of it below, of %2.").with(sum, seen);
    return Phrase::tr("%1 above + %2 below = %3 of %4.")
        .with(spanText(held.aboveMs), spanText(held.belowMs), sum, seen);
}

} // namespace

std::string outsideText(const Held& held)
{
    if (const std::string why = whyNoHoldTime(held); !why.empty())
        return why;
    return Phrase::tr("Covered hold time beyond an edge of the band, with straight lines between "
                      "the readings: %1")
        .with(outsideSum(held));
}

std::string coverageWords(const ExplainText& words, const Held& held)
{
    const RunReview& review = words.review();
    if (!(held.holdMs > 0.0))
        return Phrase::tr("There is no hold time yet, so there is no coverage either.");
    const Phrase rule =
        review.batch().gapLimit
            ? Phrase::tr("Hold time between readings at most %1 apart (the batch's own gap "
                         "limit), over all hold time: %2 of %3 = %4.")
            : Phrase::tr("Hold time between readings at most %1 apart (three times the usual "
                         "interval, 2 h at most), over all hold time: %2 of %3 = %4.");
    return rule.with(durationText(review.input.judging.gapLimit), spanText(held.coveredMs),
                     spanText(held.holdMs), words.share(*held.coverage()));
}

namespace {

/// When an excursion is over, with the batch's own return.
std::string endRule(const ExplainText& words)
{
    const Milliseconds back = words.review().input.judging.bandTimes.returnTime;
    if (back <= Milliseconds{0})
        return Phrase::tr("Each ends as soon as the beer is back inside.");
    return Phrase::tr("Each ends once the beer has been back inside for %1; shorter returns are "
                      "part of it, though their time is not counted as outside.")
        .with(durationText(back, words.sign()));
}

} // namespace

std::string excursionText(const ExplainText& words, const Held& held,
                          const std::vector<PlacedExcursion>& excursions)
{
    if (const std::string why = whyNoHoldTime(held); !why.empty())
        return why;
    const auto above =
        std::count_if(excursions.begin(), excursions.end(), [](const PlacedExcursion& placed) {
            return placed.excursion->side == Side::above;
        });
    const std::string count = std::to_string(excursions.size());
    const std::string text =
        excursions.empty()
            ? Phrase::tr("How often the beer left the band in covered hold time: %1.").with(count)
            : Phrase::tr("How often the beer left the band in covered hold time: %1 (%2 above, %3 "
                         "below).")
                      .with(count, std::to_string(above),
                            std::to_string(excursions.size() - static_cast<std::size_t>(above))) +
                  " " + endRule(words);
    const Milliseconds ignoreShorterThan = words.review().input.judging.ignoreShorterThan;
    if (ignoreShorterThan > Milliseconds{0})
        return text + " " +
               Phrase::tr("Those shorter than %1 are ignored in the verdict.")
                   .with(durationText(ignoreShorterThan));
    return text + " " + Phrase::tr("Each counts, however short.").text();
}

std::string worstWords(const ExplainText& words, const Held& held, const PlacedExcursion& worst)
{
    if (const std::string why = whyNoHoldTime(held); !why.empty())
        return why;
    if (!worst.excursion)
        return Phrase::tr(
            "Worst past the edge of the band: no reading of the hold time is outside.");
    const Phrase phrase =
        worst.excursion->side == Side::above
            ? Phrase::tr("The furthest past an edge of the band: %1 above in %2, between %3 and "
                         "%4.")
            : Phrase::tr("The furthest past an edge of the band: %1 below in %2, between %3 and "
                         "%4.");
    const analysis::JudgedBatch& judged = words.review().figures.judged;
    const analysis::PlacedStage& stage = judged.stages[worst.stage];
    const Span span = analysis::spanOf(stage, *worst.excursion);
    const std::string text = phrase.with(words.difference(worst.excursion->peak), stage.label,
                                         words.time(span.start), words.time(span.end));
    const std::string hidden =
        samplingText(judged, worst.stage, *worst.excursion, words.verdictFormat());
    return hidden.empty() ? text : text + " " + hidden;
}

namespace {

std::string heldTime(const Held& held)
{
    return spanText(held.deviation->weightMs());
}

std::string whyNoDeviation(const Held& held)
{
    if (const std::string why = whyNoHoldTime(held); !why.empty())
        return why;
    return held.deviation->empty() ? Phrase::tr("There is no data for the hold time.").text()
                                   : std::string();
}

} // namespace

std::string meanText(const ExplainText& words, const Held& held)
{
    if (const std::string why = whyNoDeviation(held); !why.empty())
        return why;
    return Phrase::tr("Beer minus target, averaged over the %1 of covered hold time, each moment "
                      "counting alike: %2.")
        .with(heldTime(held), words.deviation(held.deviation->mean()));
}

std::string spreadText(const ExplainText& words, const Held& held)
{
    if (const std::string why = whyNoDeviation(held); !why.empty())
        return why;
    return Phrase::tr(
               "How far beer minus target strays from its own mean of %1 (standard deviation) over "
               "the %2 of covered hold time, each moment counting alike: %3.")
        .with(words.deviation(held.deviation->mean()), heldTime(held),
              words.difference(held.deviation->standardDeviation()));
}

std::string rmsText(const ExplainText& words, const Held& held)
{
    if (const std::string why = whyNoDeviation(held); !why.empty())
        return why;
    return Phrase::
        tr("Root of the mean square of beer minus target over the %1 of covered hold time, each "
           "moment counting alike: √(mean² + spread²), with a mean of %2 and a spread of %3, = %4.")
            .with(heldTime(held), words.deviation(held.deviation->mean()),
                  words.difference(held.deviation->standardDeviation()),
                  words.difference(held.deviation->rootMeanSquare()));
}

std::string meanAbsoluteText(const ExplainText& words, const Held& held)
{
    if (const std::string why = whyNoDeviation(held); !why.empty())
        return why;
    return Phrase::tr("The distance from the target, above or below alike, averaged over the %1 of "
                      "covered hold time, each moment counting alike: %2.")
        .with(heldTime(held), words.difference(held.deviation->meanAbsolute()));
}

} // namespace holdband::results
