#include "core/results/comparison/side_by_side_text.h"

#include "core/results/comparison/measure_text.h"
#include "core/results/comparison/side_sentences.h"
#include "core/results/comparison/side_texts.h"
#include "core/text/phrase.h"

namespace holdband::results {

namespace {

std::vector<std::string> batchTexts(const SetupFigures& figures, analysis::MeasureId id,
                                    const SideFormat& format)
{
    std::vector<std::string> texts;
    for (const BatchFigure& batch : figures.batches)
        texts.push_back(figureText(id, batch.value, format));
    return texts;
}

MeasureText lineOf(const SideBySide& review, std::size_t measure, const SideFormat& format)
{
    const analysis::Measure& figures = review.measures[measure];
    MeasureText text = measureText(figures, format);
    text.remark = remarkOn(review, measure);
    if (review.ofSetups) {
        const MeasureBatches& batches = review.batchFigures[measure];
        text.batchesA = batchTexts(batches.a, figures.rule.id, format);
        text.batchesB = batchTexts(batches.b, figures.rule.id, format);
    }
    return text;
}

std::string alignedFrom(const Alignment& alignment)
{
    return alignment.stage ? Phrase::tr("the start of %1", "of a stage").with(*alignment.stage)
                           : Phrase::tr("pitching", "since that moment").text();
}

/// For batches: which figures cover which time.
std::string scopeOf(const SideBySide& review)
{
    if (review.alignment.stage)
        return Phrase::tr("Energy, its cost and mean power are counted from there; temperature, "
                          "settling and fairness are of the whole runs.");
    if (!review.deviations.crashA || !review.deviations.crashB)
        return {};
    return Phrase::tr("Before the crash and the crash are each compared over as much of it as both "
                      "have, so they need not add up.");
}

std::string idleText(const IdleFigures& idle, const SideFormat& format)
{
    if (!idle.kwh)
        return (idle.metered
                    ? Phrase::tr("%1 had a batch whenever it was metered.")
                    : Phrase::tr(
                          "Nothing is known of %1 without a batch: no meter of it was read."))
            .with(idle.setup);
    return Phrase::tr("Without a batch %1 used %2 in %3: %4 in the mean. That is no part of any "
                      "batch's energy.")
        .with(idle.setup, format.energy(idle.kwh->value) + format.bounds(*idle.kwh, 2),
              format.duration(idle.meteredHours), format.power(*idle.meanWatts, 1));
}

/// All texts except those that differ between batches and setups.
SideBySideText textOf(const SideBySide& review, const SideFormat& format)
{
    SideBySideText text;
    text.alignedFrom = alignedFrom(review.alignment);
    for (std::size_t i = 0; i < review.measures.size(); ++i)
        text.measures.push_back(lineOf(review, i, format));
    for (const analysis::FairnessNote& note : review.notes)
        text.notes.push_back(noteText(note, format, {review.a, review.b, review.ofSetups}));
    for (const IdleFigures& idle : review.idle)
        text.idle.push_back(idleText(idle, format));
    text.energySentence = energySentence(review, format);
    text.weather = weatherText(review, format);
    text.money = costsText(review, format);
    text.judgement = judgementText(review, format);
    return text;
}

} // namespace

SideBySideText textOfBatches(const SideBySide& review, const SideFormat& format, const LoadedRun& a,
                             const LoadedRun& b)
{
    SideBySideText text = textOf(review, format);
    text.scope = scopeOf(review);
    text.temperatureSentence = temperatureSentenceOfBatches(review, format, a, b);
    addHeadline(review, text);
    return text;
}

SideBySideText textOfSetups(const SideBySide& review, const SideFormat& format)
{
    SideBySideText text = textOf(review, format);
    text.temperatureSentence = temperatureSentenceOfSetups(review, format);
    addHeadline(review, text);
    return text;
}

} // namespace holdband::results
