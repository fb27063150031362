#include "core/results/comparison/side_sentences.h"

#include "core/results/run/verdict_text.h"
#include "core/text/phrase.h"

#include <algorithm>

namespace holdband::results {

using analysis::Ahead;
using analysis::Measure;
using analysis::MeasureId;

const Measure& measureOf(const SideBySide& review, MeasureId id)
{
    return *std::find_if(review.measures.begin(), review.measures.end(),
                         [&](const Measure& measure) { return measure.rule.id == id; });
}

namespace {

std::string notComparable(const SideBySide& review)
{
    if (!review.hasMeterA && !review.hasMeterB)
        return Phrase::tr("Their energies can't be compared: neither has a meter or a power log.");
    if (!review.hasMeterA || !review.hasMeterB)
        return Phrase::tr("Their energies can't be compared: %1 has no meter and no power log.")
            .with(review.hasMeterA ? review.setupB : review.setupA);
    if (review.ofSetups)
        return Phrase::tr("Their energies can't be compared: no batch of one of them was metered.");
    return Phrase::tr("Their energies can't be compared: no time is metered in both.");
}

/// %1 and %2: the sides; %3: their energies; %4: how long; %5: the stage from which it counts.
Phrase usedBoth(const SideBySide& review)
{
    if (review.ofSetups)
        return Phrase::tr("For each batch %1 and %2 used %3.");
    if (review.alignment.stage)
        return Phrase::tr("Over the same %4 from the start of %5 on, %1 and %2 used %3.");
    return Phrase::tr("Over the same %4 %1 and %2 used %3.");
}

/// %6: the ratio; %7: its bounds in brackets, or nothing.
Phrase usedTimes(const SideBySide& review)
{
    if (review.ofSetups)
        return Phrase::tr("For each batch %1 used %6 times %2's energy%7: %3");
    if (review.alignment.stage)
        return Phrase::tr(
            "Over the same %4 from the start of %5 on, %1 used %6 times %2's energy%7: %3");
    return Phrase::tr("Over the same %4 %1 used %6 times %2's energy%7: %3");
}

/// The end of the sentence about energy.
std::string howSure(const SideBySide& review, const Measure& energy)
{
    if (energy.ahead == Ahead::tooClose)
        return Phrase::tr(", which is too close to call.");
    if (review.ofSetups && !energy.ratio->bounded())
        return Phrase::tr(", from too few batches to say how sure: it takes three of each.");
    return ".";
}

std::string sideVerdict(const std::string& name, const LoadedRun& side, const VerdictFormat& format)
{
    std::string headline = verdictWords(side.input, side.figures, format).headline;
    if (!headline.empty() && headline[0] >= 'A' && headline[0] <= 'Z')
        headline[0] = static_cast<char>(headline[0] - 'A' + 'a');
    const bool isClause = !side.input.judging.open &&
                          side.figures.judged.asPlanned.verdict != analysis::Verdict::notEnoughData;
    return isClause ? Phrase::tr("%1 %2", "who, and what became of its run").with(name, headline)
                    : Phrase::tr("%1, %2", "who, and what became of its run").with(name, headline);
}

/// Which side held closer to the target, or why that is unknown. %1 and %2: the deviations; %3: the
/// side.
Phrase typicalPhrase(const SideBySide& review, const Measure& typical)
{
    if (!typical.ahead)
        return Phrase::tr("Typical deviation %1 against %2.");
    if (*typical.ahead != Ahead::tooClose)
        return Phrase::tr("Typical deviation %1 against %2: %3 held closer.");
    return review.ofSetups
               ? Phrase::tr("Typical deviation %1 against %2, too close to call.")
               : Phrase::tr(
                     "Typical deviation %1 against %2, too close to call with these sensors.");
}

/// With a space before it; empty unless known for both.
std::string typicalDeviation(const SideBySide& review, const SideFormat& format)
{
    const Measure& typical = measureOf(review, MeasureId::meanAbsoluteDeviation);
    if (!typical.a || !typical.b)
        return {};
    return " " + typicalPhrase(review, typical)
                     .with(format.difference(typical.a->value), format.difference(typical.b->value),
                           typical.ahead == Ahead::a ? review.a : review.b);
}

bool intervalsApart(const Measure& measure)
{
    return measure.a && measure.b && measure.a->bounded() && measure.b->bounded() &&
           (*measure.a->high < *measure.b->low || *measure.b->high < *measure.a->low);
}

std::string whyNoBounds(const Measure& measure, const SideBySide& review)
{
    if (review.ofSetups)
        return Phrase::tr("fewer than three batches have it, so there is no interval");
    return measure.rule.ofTemperature ? Phrase::tr("a sensor's accuracy is unknown")
                                      : Phrase::tr("no bounds are known");
}

std::string whyNobody(const Measure& measure, const SideBySide& review, bool anyMissed)
{
    if (!measure.a || !measure.b)
        return {};
    if (measure.ahead == Ahead::tooClose && review.ofSetups && intervalsApart(measure))
        return Phrase::tr(
            "the intervals are apart, but by less than meters and sensors may be wrong");
    if (measure.ahead)
        return {};
    if (measure.rule.id == MeasureId::effectivePerformance)
        return Phrase::tr("an estimate: nobody is ahead");
    if (measure.rule.ofTemperature && anyMissed)
        return Phrase::tr("a target was missed: nobody is ahead");
    if (!measure.a->bounded() || !measure.b->bounded())
        return whyNoBounds(measure, review);
    return measure.rule.ofTemperature ? Phrase::tr("a sensor's accuracy is unknown").text()
                                      : std::string();
}

std::string cutText(const SideBySide& review, std::size_t measure)
{
    if (measure >= review.batchFigures.size())
        return {};
    const MeasureBatches& batches = review.batchFigures[measure];
    if (!batches.a.cut && !batches.b.cut)
        return {};
    return review.measures[measure].rule.id == MeasureId::insideShare
               ? Phrase::tr("the interval is cut at 0 and 100 %, where it ends for certain")
               : Phrase::tr("the interval is cut at 0: less there can't be");
}

} // namespace

std::string energySentence(const SideBySide& review, const SideFormat& format)
{
    const Measure& energy = measureOf(review, MeasureId::energy);
    if (!energy.a || !energy.b)
        return notComparable(review);
    const std::string against =
        Phrase::tr("%1 against %2", "two energies")
            .with(format.energy(energy.a->value), format.energy(energy.b->value));
    const std::string length = format.duration(review.alignment.commonHours);
    const std::string stage = review.alignment.stage.value_or("");
    if (!energy.ratio)
        return usedBoth(review).with(review.a, review.b, against, length, stage);
    return usedTimes(review).with(review.a, review.b, against, length, stage,
                                  format.fixed(energy.ratio->value, 2),
                                  format.bounds(*energy.ratio, 2)) +
           howSure(review, energy);
}

std::string temperatureSentenceOfBatches(const SideBySide& review, const SideFormat& format,
                                         const LoadedRun& a, const LoadedRun& b)
{
    const VerdictFormat own(review.settings.temperatureUnit(), format.decimalSign);
    return sideVerdict(review.a, a, own) + "; " + sideVerdict(review.b, b, own) + "." +
           typicalDeviation(review, format);
}

std::string temperatureSentenceOfSetups(const SideBySide& review, const SideFormat& format)
{
    return Phrase::tr("Means are over %1 of %2 and %3 of %4.")
               .with(batchCount(review.batchesA.size()), review.a,
                     batchCount(review.batchesB.size()), review.b) +
           typicalDeviation(review, format);
}

void addHeadline(const SideBySide& review, SideBySideText& text)
{
    // Over several batches in different weather, the same weather is the fair answer.
    if (!review.ofSetups || !review.weather.ahead) {
        text.headline = text.energySentence;
        text.belowHeadline = text.temperatureSentence;
        return;
    }
    text.headline = text.weather.sentence;
    text.belowHeadline = Phrase::tr("As brewed, each in its own weather: %1 %2")
                             .with(text.energySentence, text.temperatureSentence);
}

std::string remarkOn(const SideBySide& review, std::size_t measure)
{
    const bool missed = std::any_of(review.notes.begin(), review.notes.end(), [](const auto& note) {
        return note.kind == analysis::NoteKind::missedStage;
    });
    const std::string why = whyNobody(review.measures[measure], review, missed);
    const std::string cut = cutText(review, measure);
    return why.empty() || cut.empty() ? why + cut : why + "; " + cut;
}

} // namespace holdband::results
