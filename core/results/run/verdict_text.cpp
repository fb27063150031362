#include "core/results/run/verdict_text.h"

#include "core/results/run/certainty_text.h"
#include "core/results/run/sampling_text.h"
#include "core/text/durations.h"
#include "core/text/name_suggestions.h"
#include "core/text/numbers.h"
#include "core/text/phrase.h"
#include "core/text/quantities.h"
#include "core/text/times.h"

#include <algorithm>
#include <cmath>

namespace holdband::results {

using analysis::BandTotals;
using analysis::JudgedBatch;
using analysis::RunFigures;
using analysis::RunInput;
using analysis::Verdict;

namespace {

std::string duration(double ms, const VerdictFormat& format)
{
    return durationText(Hours{ms / msPerHour}, format.decimalSign);
}

/// "±3 °F" where all stages have one tolerance, else empty.
std::string oneTolerance(const JudgedBatch& judged, const VerdictFormat& format)
{
    for (const analysis::PlacedStage& stage : judged.stages) {
        const auto apart = stage.tolerance - judged.stages.front().tolerance;
        if (std::abs(apart.kelvins()) > analysis::edgeSlack)
            return {};
    }
    if (judged.stages.empty())
        return {};
    return "±" +
           differenceText(judged.stages.front().tolerance, format.unit, 2, format.decimalSign);
}

/// A value above 0 must not round to 0: "less than 0.01 °F".
std::string worstText(double kelvins, const VerdictFormat& format)
{
    const auto worst = TemperatureDifference::kelvins(kelvins);
    if (kelvins > 0.0 && valueIn(worst, format.unit) < 0.005)
        return Phrase::tr("less than %1")
            .with(fixedText(0.01, 2, format.decimalSign) + " " +
                  std::string(unitText(format.unit)));
    return differenceText(worst, format.unit, 2, format.decimalSign);
}

std::string outsideShareText(double share, const VerdictFormat& format)
{
    return share > 0.0 && share < 0.0005
               ? Phrase::tr("less than %1").with(fixedText(0.1, 1, format.decimalSign) + " %")
               : shareText(share, 1, format.decimalSign);
}

/// Used when some excursions are ignored as too short.
std::string countedText(const JudgedBy& by, const BandTotals& totals, const VerdictFormat& format)
{
    if (totals.counted == totals.excursions)
        return {};
    const Phrase phrase =
        totals.counted == 2
            ? Phrase::tr("; twice for %1 or longer, which counts")
            : Phrase::counted("; %n times for %1 or longer, which counts",
                              "; once for %1 or longer, which counts", totals.counted);
    return phrase.with(durationText(by.rules.ignoreShorterThan, format.decimalSign));
}

std::string leftHeadline(const JudgedBy& by, const BandTotals& totals, const VerdictFormat& format)
{
    const Phrase phrase =
        totals.excursions == 2
            ? Phrase::tr("left the band twice: %1 of %2 held (%3), worst %4 past the edge")
            : Phrase::counted("left the band %n times: %1 of %2 held (%3), worst %4 past the edge",
                              "left the band once: %1 of %2 held (%3), worst %4 past the edge",
                              totals.excursions);
    return phrase.with(duration(totals.outsideMs(), format), duration(totals.coveredMs, format),
                       outsideShareText(*totals.outsideShare(), format),
                       worstText(totals.worstPeak(), format)) +
           countedText(by, totals, format);
}

/// `band` is empty where the stages have several tolerances.
std::string headlineWithIgnored(const JudgedBy& by, const BandTotals& totals,
                                const std::string& band, const VerdictFormat& format)
{
    const std::string ignoreShorterThan =
        durationText(by.rules.ignoreShorterThan, format.decimalSign);
    if (band.empty())
        return Phrase::counted("stayed in the band: %n excursions were ignored as shorter than %1",
                               "stayed in the band: %n excursion was ignored as shorter than %1",
                               totals.excursions)
            .with(ignoreShorterThan);
    return Phrase::counted(
               "stayed in the band of %1: %n excursions were ignored as shorter than %2",
               "stayed in the band of %1: %n excursion was ignored as shorter than %2",
               totals.excursions)
        .with(band, ignoreShorterThan);
}

std::string stayedHeadline(const JudgedBy& by, const JudgedBatch& judged,
                           const VerdictFormat& format)
{
    const BandTotals& totals = judged.asPlanned.totals;
    const std::string band = oneTolerance(judged, format);
    if (totals.excursions > 0)
        return headlineWithIgnored(by, totals, band, format);
    const std::string held = duration(totals.coveredMs, format);
    if (band.empty())
        return Phrase::tr("stayed in the band for all of the %1 on target and recorded").with(held);
    return Phrase::tr("stayed in the band of %1 for all of the %2 on target and recorded")
        .with(band, held);
}

/// Whether the beer was inside the band of a missed stage at all, though not for the dwell.
bool visitedMissed(const JudgedBatch& judged)
{
    const auto& stages = judged.asPlanned.stages;
    return std::any_of(stages.begin(), stages.end(), [](const analysis::BandJudgement& stage) {
        return stage.missed && stage.visits > 0;
    });
}

std::string missedHeadline(const JudgedBy& by, const JudgedBatch& judged,
                           const VerdictFormat& format)
{
    const std::vector<std::string>& missed = judged.asPlanned.missed;
    const bool visited = visitedMissed(judged);
    const std::string dwell = durationText(by.rules.bandTimes.dwell, format.decimalSign);
    if (missed.size() == 1)
        return visited
                   ? Phrase::tr("missed the target of %1: the beer never stayed in its band for %2")
                         .with(missed.front(), dwell)
                   : Phrase::tr("missed the target of %1: the beer never came into its band")
                         .with(missed.front());
    return visited
               ? Phrase::tr("missed the targets of %1: the beer never stayed in their bands for %2")
                     .with(listed(missed), dwell)
               : Phrase::tr("missed the targets of %1: the beer never came into their bands")
                     .with(listed(missed));
}

/// Rounded up to a minute, so that the length given is really enough. Coverage is compared to the
/// half millisecond, so half a millisecond more is no further minute.
std::string atLeast(double ms)
{
    const auto length = Milliseconds{static_cast<std::int64_t>(std::ceil(ms - 0.5))};
    return hoursText(std::chrono::ceil<std::chrono::minutes>(length));
}

/// "; 14 h more of it would do", or for an open batch how much more hold time without a gap is
/// needed.
std::string whatWouldDo(const JudgedBy& by, const BandTotals& totals)
{
    const double needed = by.settings.coverageNeeded;
    const double lacking = needed * totals.holdMs - totals.coveredMs;
    if (!by.rules.open)
        return Phrase::tr("; %1 more of it is enough").with(atLeast(lacking));
    if (needed >= 1.0)
        return {};
    return Phrase::tr("; %1 more held without a gap would do")
        .with(atLeast(lacking / (1.0 - needed)));
}

std::string noReadingsHeadline(const JudgedBy& by, const BandTotals& totals)
{
    if (by.rules.open)
        return Phrase::tr("not enough data: there are no beer readings in this batch yet; log or "
                          "import some");
    if (!(totals.holdMs > 0.0))
        return Phrase::tr("not enough data: there are no beer readings in this batch");
    return Phrase::tr("not enough data: there are no beer readings in this batch; %1 of its %2 "
                      "must be covered")
        .with(atLeast(by.settings.coverageNeeded * totals.holdMs),
              hoursText(wholeMs(totals.holdMs)));
}

std::string noHoldHeadline(const JudgedBy& by, const JudgedBatch& judged)
{
    if (!by.rules.open)
        return Phrase::tr("not enough data: there is no hold time to judge");
    const auto& stages = judged.asPlanned.stages;
    if (!stages.empty() && stages.back().settles && !stages.back().arrival)
        return Phrase::tr("not enough data: there is no hold time to judge yet; it begins when the "
                          "beer is settled in the band of %1")
            .with(judged.stages.back().label);
    return Phrase::tr("not enough data: there is no hold time to judge yet");
}

std::string tooLittleHeadline(const JudgedBy& by, const JudgedBatch& judged,
                              const VerdictFormat& format)
{
    const BandTotals& totals = judged.asPlanned.totals;
    if (!by.anyReading)
        return noReadingsHeadline(by, totals);
    if (!(totals.holdMs > 0.0))
        return noHoldHeadline(by, judged);
    return Phrase::tr("not enough data: %1 of %2 hold time is covered, and %3 is needed")
               .with(shareText(*totals.coverage(), 1, format.decimalSign),
                     duration(totals.holdMs, format),
                     shareText(by.settings.coverageNeeded, 0, format.decimalSign)) +
           whatWouldDo(by, totals);
}

std::string headlineFor(const JudgedBy& by, const JudgedBatch& judged, const VerdictFormat& format)
{
    switch (judged.asPlanned.verdict) {
    case Verdict::left:
        return leftHeadline(by, judged.asPlanned.totals, format);
    case Verdict::stayed:
        return stayedHeadline(by, judged, format);
    case Verdict::missed:
        return missedHeadline(by, judged, format);
    case Verdict::notEnoughData:
        break;
    }
    return tooLittleHeadline(by, judged, format);
}

std::string capitalised(std::string text)
{
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
        text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

std::string coverageText(const BandTotals& totals, const VerdictFormat& format)
{
    const auto coverage = totals.coverage();
    if (!coverage)
        return {};
    const std::string share = shareText(*coverage, 1, format.decimalSign);
    const double unseen = totals.holdMs - totals.coveredMs;
    if (unseen >= 1.0)
        return Phrase::tr("Covered %1 of the hold time (no data for %2).")
            .with(share, duration(unseen, format));
    return Phrase::tr("Covered %1 of the hold time.").with(share);
}

std::string settlingText(const JudgedBatch& judged, const VerdictFormat& format)
{
    std::string parts;
    for (const analysis::BandJudgement& stage : judged.asPlanned.stages) {
        if (stage.settlingMs <= 0.0)
            continue;
        parts += (parts.empty() ? "" : " + ") + duration(stage.settlingMs, format);
    }
    return parts.empty() ? std::string() : Phrase::tr("Settling, %1, is not judged.").with(parts);
}

Phrase withThemPhrase(Verdict verdict)
{
    switch (verdict) {
    case Verdict::stayed:
        return Phrase::tr("; with the %1 left out by hand it stayed in the band");
    case Verdict::left:
        return Phrase::tr("; with the %1 left out by hand it left the band");
    case Verdict::missed:
        return Phrase::tr("; with the %1 left out by hand it missed a target");
    case Verdict::notEnoughData:
        break;
    }
    return Phrase::tr("; with the %1 left out by hand there is not enough data");
}

/// How much was left out by hand, and what the verdict would be with it.
std::string leftOutClause(const JudgedBy& by, const VerdictFormat& format)
{
    if (!by.leftOut)
        return {};
    const std::string amount =
        by.leftOut->ms > 0.0
            ? duration(by.leftOut->ms, format)
            : Phrase::counted("%n readings", "%n reading", by.leftOut->readings).text();
    if (by.leftOut->changesVerdict)
        return withThemPhrase(by.leftOut->verdictWithThem).with(amount);
    return Phrase::tr("; %1 left out by hand").with(amount);
}

std::string alsoMissed(const JudgedBatch& judged)
{
    if (judged.asPlanned.verdict == Verdict::missed || judged.asPlanned.missed.empty())
        return {};
    return Phrase::tr("It also missed %1.").with(listed(judged.asPlanned.missed));
}

} // namespace

VerdictText verdictWords(const JudgedBatch& judged, const JudgedBy& by, const VerdictFormat& format)
{
    VerdictText words;
    const std::string headline = headlineFor(by, judged, format) + leftOutClause(by, format);
    words.headline =
        by.rules.open ? Phrase::tr("So far: %1").with(headline) : capitalised(headline);
    for (const std::string& sentence :
         {certaintyText(judged, by, format), worstSamplingText(judged, format),
          coverageText(judged.asPlanned.totals, format), settlingText(judged, format),
          alsoMissed(judged)}) {
        if (!sentence.empty())
            words.detail += (words.detail.empty() ? "" : " ") + sentence;
    }
    return words;
}

VerdictText verdictWords(const RunInput& input, const RunFigures& figures,
                         const VerdictFormat& format)
{
    return verdictWords(
        figures.judged,
        {input.judging, input.settings, !input.judging.beer.empty(), figures.leftOut}, format);
}

std::string leftOutSentence(const std::optional<analysis::LeftOutFigures>& leftOut,
                            const Zone& zone)
{
    constexpr std::size_t mostNamed = 3;
    if (!leftOut)
        return {};
    std::vector<std::string> parts;
    for (const analysis::LeftOut& each : leftOut->stretches) {
        if (parts.size() == mostNamed)
            break;
        const std::string when = each.span.empty()
                                     ? localShortText(each.span.start, zone)
                                     : Phrase::tr("%1 to %2", "from one time to another")
                                           .with(localShortText(each.span.start, zone),
                                                 localShortText(each.span.end, zone));
        parts.push_back(each.why.empty() ? when : when + " (" + each.why + ")");
    }
    if (leftOut->stretches.size() > mostNamed)
        parts.push_back(Phrase::counted("%n more stretches", "%n more stretch",
                                        leftOut->stretches.size() - mostNamed));
    return Phrase::tr("Left out by hand: %1.").with(listed(parts));
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

std::string verdictWord(Verdict verdict)
{
    switch (verdict) {
    case Verdict::stayed:
        return Phrase::tr("stayed");
    case Verdict::left:
        return Phrase::tr("left", "the band");
    case Verdict::missed:
        return Phrase::tr("missed");
    case Verdict::notEnoughData:
        break;
    }
    return Phrase::tr("not enough data");
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

} // namespace holdband::results
