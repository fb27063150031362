#include "core/review/verdict_words.h"

#include "core/text/durations.h"
#include "core/text/numbers.h"
#include "core/text/quantities.h"

#include <cmath>
#include <string_view>

namespace holdband::review {

using analysis::BandTotals;
using analysis::JudgedBatch;
using analysis::RunFigures;
using analysis::RunInput;
using analysis::Verdict;

namespace {

std::string duration(double ms, const VerdictManner& manner)
{
    return durationText(Hours{ms / 3.6e6}, manner.decimalSign);
}

std::string times(std::size_t count)
{
    if (count == 1)
        return "once";
    if (count == 2)
        return "twice";
    return std::to_string(count) + " times";
}

/// "±3 °F" where all stages have one tolerance, else empty.
std::string oneTolerance(const JudgedBatch& judged, const VerdictManner& manner)
{
    for (const analysis::PlacedStage& stage : judged.stages) {
        const auto apart = stage.tolerance - judged.stages.front().tolerance;
        if (std::abs(apart.kelvins()) > analysis::edgeSlack)
            return {};
    }
    if (judged.stages.empty())
        return {};
    return "±" +
           differenceText(judged.stages.front().tolerance, manner.unit, 2, manner.decimalSign);
}

std::string doubtText(const JudgedBy& by, const VerdictManner& manner)
{
    return "±" + differenceText(*by.rules.accuracy, manner.unit, 2, manner.decimalSign);
}

/// What there is must not round to nothing: "less than 0.01 °F".
std::string worstText(double kelvins, const VerdictManner& manner)
{
    const auto worst = TemperatureDifference::kelvins(kelvins);
    if (kelvins > 0.0 && valueIn(worst, manner.unit) < 0.005)
        return "less than " + fixedText(0.01, 2, manner.decimalSign) + " " +
               std::string(unitText(manner.unit));
    return differenceText(worst, manner.unit, 2, manner.decimalSign);
}

std::string outsideShareText(double share, const VerdictManner& manner)
{
    return share > 0.0 && share < 0.0005
               ? "less than " + fixedText(0.1, 1, manner.decimalSign) + " %"
               : shareText(share, 1, manner.decimalSign);
}

/// Where a grace lets some of them pass.
std::string countedText(const JudgedBy& by, const BandTotals& totals, const VerdictManner& manner)
{
    if (totals.counted == totals.excursions)
        return {};
    return "; " + times(totals.counted) + " for the grace of " +
           durationText(by.rules.grace, manner.decimalSign) + " or longer, which counts";
}

std::string leftHeadline(const JudgedBy& by, const BandTotals& totals, const VerdictManner& manner)
{
    return "left the band " + times(totals.excursions) + ": " +
           duration(totals.outsideMs(), manner) + " of " + duration(totals.coveredMs, manner) +
           " held (" + outsideShareText(totals.outsideMs() / totals.coveredMs, manner) +
           "), worst " + worstText(totals.worstPeak, manner) + " past the edge" +
           countedText(by, totals, manner);
}

std::string stayedHeadline(const JudgedBy& by, const JudgedBatch& judged,
                           const VerdictManner& manner)
{
    const BandTotals& totals = judged.asPlanned.totals;
    const std::string band = oneTolerance(judged, manner);
    const std::string within = band.empty() ? "" : " of " + band;
    if (totals.excursions > 0)
        return "stayed in the band" + within + ": " + std::to_string(totals.excursions) +
               (totals.excursions == 1 ? " excursion was" : " excursions were") +
               " shorter than the grace of " + durationText(by.rules.grace, manner.decimalSign);
    return "stayed in the band" + within + " for all of the " + duration(totals.coveredMs, manner) +
           " held and seen";
}

/// "A", "A and B", "A, B and C"
std::string listed(const std::vector<std::string>& names)
{
    std::string text;
    for (std::size_t i = 0; i < names.size(); ++i)
        text += (i == 0 ? "" : i + 1 == names.size() ? " and " : ", ") + names[i];
    return text;
}

std::string missedHeadline(const std::vector<std::string>& missed)
{
    if (missed.size() == 1)
        return "missed the target of " + missed.front() + ": the beer never came into its band";
    return "missed the targets of " + listed(missed) + ": the beer never came into their bands";
}

/// Rounded up to a minute: what is said to be enough must be enough. Coverage is compared to the
/// half millisecond, so that much is no minute.
std::string atLeast(double ms)
{
    const auto length = Milliseconds{static_cast<std::int64_t>(std::ceil(ms - 0.5))};
    return hoursText(std::chrono::ceil<std::chrono::minutes>(length));
}

/// "; 14 h more of it would do", or, while the batch is open, how much more hold time without a
/// gap.
std::string whatWouldDo(const JudgedBy& by, const BandTotals& totals)
{
    const double needed = by.settings.coverageNeeded;
    const double lacking = needed * totals.holdMs - totals.coveredMs;
    if (!by.rules.open)
        return "; " + atLeast(lacking) + " more of it would do";
    return needed < 1.0
               ? "; " + atLeast(lacking / (1.0 - needed)) + " more held without a gap would do"
               : std::string();
}

std::string noReadingsHeadline(const JudgedBy& by, const BandTotals& totals)
{
    if (by.rules.open)
        return "not enough data: there are no beer readings in this batch yet; log or import some";
    std::string text = "not enough data: there are no beer readings in this batch";
    if (totals.holdMs > 0.0)
        text += "; " + atLeast(by.settings.coverageNeeded * totals.holdMs) + " of its " +
                hoursText(Milliseconds{std::llround(totals.holdMs)}) + " must be seen";
    return text;
}

std::string noHoldHeadline(const JudgedBy& by, const JudgedBatch& judged)
{
    if (!by.rules.open)
        return "not enough data: there is no hold time to judge";
    std::string text = "not enough data: there is no hold time to judge yet";
    const auto& stages = judged.asPlanned.stages;
    if (!stages.empty() && stages.back().settles && !stages.back().arrival)
        text += "; it begins when the beer comes into the band of " + judged.stages.back().label;
    return text;
}

std::string tooLittleHeadline(const JudgedBy& by, const JudgedBatch& judged,
                              const VerdictManner& manner)
{
    const BandTotals& totals = judged.asPlanned.totals;
    if (!by.anyReading)
        return noReadingsHeadline(by, totals);
    if (!(totals.holdMs > 0.0))
        return noHoldHeadline(by, judged);
    return "not enough data: " + shareText(*totals.coverage(), 1, manner.decimalSign) + " of " +
           duration(totals.holdMs, manner) + " to be held was seen, and " +
           shareText(by.settings.coverageNeeded, 0, manner.decimalSign) + " is needed" +
           whatWouldDo(by, totals);
}

std::string headlineFor(const JudgedBy& by, const JudgedBatch& judged, const VerdictManner& manner)
{
    switch (judged.asPlanned.verdict) {
    case Verdict::left:
        return leftHeadline(by, judged.asPlanned.totals, manner);
    case Verdict::stayed:
        return stayedHeadline(by, judged, manner);
    case Verdict::missed:
        return missedHeadline(judged.asPlanned.missed);
    case Verdict::notEnoughData:
        break;
    }
    return tooLittleHeadline(by, judged, manner);
}

std::string capitalised(std::string text)
{
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
        text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

/// "would have stayed", for a judging with another band.
std::string_view wouldHave(Verdict verdict)
{
    switch (verdict) {
    case Verdict::stayed:
        return "it would have stayed";
    case Verdict::left:
        return "it would have left the band";
    case Verdict::missed:
        return "it would have missed a target";
    case Verdict::notEnoughData:
        break;
    }
    return "there would not be enough data";
}

std::string sureText(const JudgedBy& by, const JudgedBatch& judged, const VerdictManner& manner)
{
    const std::string doubt = doubtText(by, manner);
    switch (judged.asPlanned.verdict) {
    case Verdict::left:
        return "Sure: it also leaves the band widened by the sensor's " + doubt + ".";
    case Verdict::stayed:
        return "Sure: it also stays in the band narrowed by the sensor's " + doubt + ".";
    default:
        return "Sure: it also misses with the band widened by the sensor's " + doubt + ".";
    }
}

std::string unsureText(const JudgedBy& by, const JudgedBatch& judged, const VerdictManner& manner)
{
    const std::string doubt = doubtText(by, manner);
    const Verdict verdict = judged.asPlanned.verdict;
    std::string text = "Within the sensor's doubt of " + doubt + ": ";
    if (judged.wider->verdict != verdict)
        return text + "in a band wider by that " + std::string(wouldHave(judged.wider->verdict)) +
               ".";
    if (judged.tighter->verdict != verdict)
        return text + "in a band narrower by that " +
               std::string(wouldHave(judged.tighter->verdict)) + ".";
    return text + "the band is no wider than the doubt.";
}

std::string certainty(const JudgedBy& by, const JudgedBatch& judged, const VerdictManner& manner)
{
    if (judged.asPlanned.verdict == Verdict::notEnoughData)
        return {};
    if (!by.rules.accuracy)
        return "How sure is unknown: the beer sensor's accuracy is not on record.";
    return *judged.sure ? sureText(by, judged, manner) : unsureText(by, judged, manner);
}

std::string coverageText(const BandTotals& totals, const VerdictManner& manner)
{
    const auto coverage = totals.coverage();
    if (!coverage)
        return {};
    const double unseen = totals.holdMs - totals.coveredMs;
    std::string text =
        "Covered " + shareText(*coverage, 1, manner.decimalSign) + " of the hold time";
    if (unseen >= 1.0)
        text += " (" + duration(unseen, manner) + " not seen)";
    return text + ".";
}

std::string settlingText(const JudgedBatch& judged, const VerdictManner& manner)
{
    std::string parts;
    for (const analysis::BandJudgement& stage : judged.asPlanned.stages) {
        if (stage.settlingMs <= 0.0)
            continue;
        parts += (parts.empty() ? "" : " + ") + duration(stage.settlingMs, manner);
    }
    return parts.empty() ? std::string() : "Settling, " + parts + ", is not judged.";
}

std::string alsoMissed(const JudgedBatch& judged)
{
    if (judged.asPlanned.verdict == Verdict::missed || judged.asPlanned.missed.empty())
        return {};
    return "It also missed " + listed(judged.asPlanned.missed) + ".";
}

} // namespace

VerdictWords verdictWords(const JudgedBatch& judged, const JudgedBy& by,
                          const VerdictManner& manner)
{
    VerdictWords words;
    const std::string headline = headlineFor(by, judged, manner);
    words.headline = by.rules.open ? "So far: " + headline : capitalised(headline);
    for (const std::string& sentence :
         {certainty(by, judged, manner), coverageText(judged.asPlanned.totals, manner),
          settlingText(judged, manner), alsoMissed(judged)}) {
        if (!sentence.empty())
            words.detail += (words.detail.empty() ? "" : " ") + sentence;
    }
    return words;
}

VerdictWords verdictWords(const RunInput& input, const RunFigures& figures,
                          const VerdictManner& manner)
{
    return verdictWords(figures.judged,
                        {input.judging, input.settings, !input.judging.beer.empty()}, manner);
}

std::string_view verdictName(Verdict verdict)
{
    switch (verdict) {
    case Verdict::stayed:
        return "stayed";
    case Verdict::left:
        return "left";
    case Verdict::missed:
        return "missed";
    case Verdict::notEnoughData:
        break;
    }
    return "not enough data";
}

std::string verdictMark(const RunFigures& figures, bool open)
{
    const analysis::Judging& judging = figures.judged.asPlanned;
    if (judging.verdict == Verdict::left)
        return std::to_string(judging.totals.excursions);
    if (open)
        return "…";
    switch (judging.verdict) {
    case Verdict::stayed:
        return "✓";
    case Verdict::missed:
        return "↛";
    default:
        return "?";
    }
}

} // namespace holdband::review
