#include "core/results/run/explain.h"

#include "core/results/run/explain_band.h"
#include "core/text/durations.h"
#include "core/text/phrase.h"

#include <algorithm>

namespace holdband::results {

using analysis::BandJudgement;
using analysis::JudgedBatch;
using analysis::Verdict;

namespace {

Held heldOf(const JudgedBatch& judged)
{
    return {judged.asPlanned.totals, &judged.deviation};
}

PlacedExcursion worstOf(const JudgedBatch& judged)
{
    const auto& worst = judged.asPlanned.totals.worst;
    return worst ? PlacedExcursion{worst->stage, &worst->excursion} : PlacedExcursion{};
}

std::vector<PlacedExcursion> excursionsOf(const JudgedBatch& judged)
{
    std::vector<PlacedExcursion> all;
    for (std::size_t i = 0; i < judged.stages.size(); ++i) {
        for (const analysis::Excursion& excursion : judged.asPlanned.stages[i].excursions)
            all.push_back({i, &excursion});
    }
    return all;
}

/// The rule, and the sum over the stages.
std::string settlingSum(const ExplainText& words, const std::string& parts)
{
    const Milliseconds dwell = words.review().input.judging.bandTimes.dwell;
    if (dwell <= Milliseconds{0})
        return Phrase::tr("Recorded time from a stage's start until the beer first came into its "
                          "band, where the target jumped; it is not judged: %1.")
            .with(parts);
    return Phrase::tr("Recorded time from a stage's start until the beer came into its band and "
                      "stayed for %1, where the target jumped; it is not judged: %2.")
        .with(durationText(dwell, words.sign()), parts);
}

std::string settling(const ExplainText& words)
{
    const JudgedBatch& judged = words.review().figures.judged;
    std::string parts;
    std::size_t count = 0;
    for (std::size_t i = 0; i < judged.stages.size(); ++i) {
        const double ms = judged.asPlanned.stages[i].settlingMs;
        if (ms <= 0.0)
            continue;
        parts += (parts.empty() ? "" : " + ") + judged.stages[i].label + " " + spanText(ms);
        ++count;
    }
    if (count == 0)
        return Phrase::tr("No stage settled: wherever the target jumped, the beer was in the band "
                          "already or there is no data.");
    if (count > 1)
        parts += " = " + spanText(judged.asPlanned.totals.settlingMs);
    return settlingSum(words, parts);
}

std::string certainty(const ExplainText& words)
{
    const JudgedBatch& judged = words.review().figures.judged;
    if (judged.asPlanned.verdict == Verdict::notEnoughData)
        return Phrase::tr("Too little of the hold time is covered for a verdict, so there is "
                          "nothing to be sure of.");
    const auto& accuracy = words.review().input.judging.accuracy;
    if (!accuracy || !judged.sure)
        return Phrase::tr("How sure the verdict is rests on the beer sensor's accuracy, and that "
                          "of %1 is not on record.")
            .with(words.review().beerSensor.name);
    const Verdict verdict = judged.asPlanned.verdict;
    std::string text =
        Phrase::tr("The batch is judged with its band as planned, and narrower and wider by the "
                   "sensor's ±%1, and is sure where all agree: as planned %2, narrower %3, wider "
                   "%4.")
            .with(words.difference(accuracy->kelvins()), verdictWord(verdict),
                  verdictWord(judged.tighter->verdict), verdictWord(judged.wider->verdict));
    if (!*judged.sure && judged.tighter->verdict == verdict && judged.wider->verdict == verdict)
        text += " " + Phrase::tr("The band is no wider than that uncertainty, and then only \"left "
                                 "the band\" can be sure.")
                          .text();
    return text;
}

} // namespace

std::string explain(const RunReview& review, Figure figure, char decimalSign)
{
    const ExplainText words(review, decimalSign);
    const JudgedBatch& judged = review.figures.judged;
    const Held held = heldOf(judged);
    switch (figure) {
    case Figure::insideShare:
        return insideText(words, held);
    case Figure::outsideTime:
        return outsideText(held);
    case Figure::excursions:
        return excursionText(words, held, excursionsOf(judged));
    case Figure::worst:
        return worstWords(words, held, worstOf(judged));
    case Figure::settling:
        return settling(words);
    case Figure::coverage:
        return coverageWords(words, held);
    case Figure::certainty:
        return certainty(words);
    case Figure::meanDeviation:
        return meanText(words, held);
    case Figure::spread:
        return spreadText(words, held);
    case Figure::rmsDeviation:
        return rmsText(words, held);
    case Figure::meanAbsoluteDeviation:
        return meanAbsoluteText(words, held);
    case Figure::apparentAttenuation:
    case Figure::realAttenuation:
    case Figure::alcoholSimple:
    case Figure::alcoholBalling:
        return explainBeer(words, figure);
    case Figure::arrival:
        return explainArrival(words);
    default:
        return explainEnergy(words, figure);
    }
}

} // namespace holdband::results
