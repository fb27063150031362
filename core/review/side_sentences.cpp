#include "core/review/side_sentences.h"

#include "core/review/verdict_words.h"

#include <algorithm>

namespace holdband::review {

using analysis::Ahead;
using analysis::Measure;
using analysis::MeasureId;

const Measure& measureOf(const SideBySide& review, MeasureId id)
{
    return *std::find_if(review.measures.begin(), review.measures.end(),
                         [&](const Measure& measure) { return measure.rule.id == id; });
}

namespace {

std::string notComparable(const SideBySide& review, const Metering& metering)
{
    const std::string lead = "Their energies can't be compared: ";
    if (!metering.a && !metering.b)
        return lead + "neither has a meter or a power log.";
    if (!metering.a || !metering.b)
        return lead + (metering.a ? review.setupB : review.setupA) +
               " has no meter and no power log.";
    if (review.ofSetups)
        return lead + "no batch of one of them was metered.";
    return lead + "no time is metered in both.";
}

std::string spanWords(const SideBySide& review, const SideManner& manner)
{
    if (review.ofSetups)
        return "For each batch ";
    const std::string from =
        review.alignment.stage ? " from " + review.alignment.words + " on," : "";
    return "Over the same " + manner.duration(review.alignment.commonHours) + from + " ";
}

std::string sideVerdict(const std::string& name, const LoadedRun& side, const VerdictManner& manner)
{
    std::string headline = verdictWords(side.input, side.figures, manner).headline;
    if (!headline.empty() && headline[0] >= 'A' && headline[0] <= 'Z')
        headline[0] = static_cast<char>(headline[0] - 'A' + 'a');
    const bool isClause = !side.input.judging.open &&
                          side.figures.judged.asPlanned.verdict != analysis::Verdict::notEnoughData;
    return name + (isClause ? " " : ", ") + headline;
}

std::string typicalDeviation(const SideBySide& review, const SideManner& manner)
{
    const Measure& typical = measureOf(review, MeasureId::meanAbsoluteDeviation);
    if (!typical.a || !typical.b)
        return {};
    std::string sentence = " Typical deviation " + manner.difference(typical.a->value) +
                           " against " + manner.difference(typical.b->value);
    if (typical.ahead == Ahead::tooClose)
        sentence +=
            ", too close to call" + std::string(review.ofSetups ? "" : " with these sensors");
    else if (typical.ahead)
        sentence += ": " + (*typical.ahead == Ahead::a ? review.a : review.b) + " held closer";
    return sentence + ".";
}

bool intervalsApart(const Measure& measure)
{
    return measure.a && measure.b && measure.a->bounded() && measure.b->bounded() &&
           (*measure.a->high < *measure.b->low || *measure.b->high < *measure.a->low);
}

std::string whyNoBounds(const Measure& measure, const SideBySide& review)
{
    if (review.ofSetups)
        return "fewer than three batches have it, so there is no interval";
    return measure.rule.ofTemperature ? "a sensor's accuracy is unknown" : "no bounds are known";
}

std::string whyNobody(const Measure& measure, const SideBySide& review, bool anyMissed)
{
    if (!measure.a || !measure.b)
        return {};
    if (measure.ahead == Ahead::tooClose)
        return review.ofSetups && intervalsApart(measure)
                   ? "the intervals are apart, but by less than meters and sensors may be wrong"
                   : "";
    if (measure.ahead)
        return {};
    if (measure.rule.id == MeasureId::effectivePerformance)
        return "an estimate: nobody is ahead";
    if (measure.rule.ofTemperature && anyMissed)
        return "a target was missed: nobody is ahead";
    if (!measure.a->bounded() || !measure.b->bounded())
        return whyNoBounds(measure, review);
    return measure.rule.ofTemperature ? "a sensor's accuracy is unknown" : "";
}

std::string cutWords(const SideBySide& review, std::size_t measure)
{
    if (measure >= review.batchFigures.size())
        return {};
    const MeasureBatches& batches = review.batchFigures[measure];
    if (!batches.a.cut && !batches.b.cut)
        return {};
    return review.measures[measure].rule.id == MeasureId::insideShare
               ? "the interval is cut at 0 and 100 %, where it ends for certain"
               : "the interval is cut at 0: less there can't be";
}

} // namespace

std::string energySentence(const SideBySide& review, const SideManner& manner,
                           const Metering& metering)
{
    const Measure& energy = measureOf(review, MeasureId::energy);
    if (!energy.a || !energy.b)
        return notComparable(review, metering);
    const std::string span = spanWords(review, manner);
    const std::string against =
        manner.energy(energy.a->value) + " against " + manner.energy(energy.b->value);
    if (!energy.ratio)
        return span + review.a + " and " + review.b + " used " + against + ".";
    std::string text = span + review.a + " used " + manner.fixed(energy.ratio->value, 2) +
                       " times " + review.b + "'s energy" + manner.bounds(*energy.ratio, 2) + ": " +
                       against;
    if (energy.ahead == Ahead::tooClose)
        text += ", which is too close to call";
    else if (review.ofSetups && !energy.ratio->bounded())
        text += ", from too few batches to say how sure: it takes three of each";
    return text + ".";
}

std::string temperatureSentenceOfBatches(const SideBySide& review, const SideManner& manner,
                                         const LoadedRun& a, const LoadedRun& b)
{
    const VerdictManner own(review.settings.temperatureUnit(), manner.decimalSign);
    return sideVerdict(review.a, a, own) + "; " + sideVerdict(review.b, b, own) + "." +
           typicalDeviation(review, manner);
}

std::string temperatureSentenceOfSetups(const SideBySide& review, const SideManner& manner)
{
    return "Means are over " + batchCount(review.batchesA.size()) + " of " + review.a + " and " +
           batchCount(review.batchesB.size()) + " of " + review.b + "." +
           typicalDeviation(review, manner);
}

void addRemarks(SideBySide& review, const std::vector<analysis::FairnessNote>& notes)
{
    const bool missed = std::any_of(notes.begin(), notes.end(), [](const auto& note) {
        return note.kind == analysis::NoteKind::missedStage;
    });
    for (std::size_t i = 0; i < review.lines.size(); ++i) {
        const std::string why = whyNobody(review.measures[i], review, missed);
        const std::string cut = cutWords(review, i);
        review.lines[i].remark = why.empty() || cut.empty() ? why + cut : why + "; " + cut;
    }
}

} // namespace holdband::review
