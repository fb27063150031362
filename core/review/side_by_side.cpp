#include "core/review/side_by_side.h"

#include "core/review/measure_words.h"
#include "core/review/snapshot.h"
#include "core/review/verdict_words.h"
#include "core/text/durations.h"
#include "core/text/near.h"
#include "core/text/numbers.h"
#include "core/text/quantities.h"

#include <algorithm>

namespace holdband::review {

using analysis::Contender;
using analysis::Measure;
using analysis::MeasureId;

namespace {

/// One batch with all that a Contender points to.
struct Loaded {
    analysis::RunInput input;
    analysis::RunFigures figures;
    std::optional<double> parts;
    std::string placement;

    Contender contender() const { return {&input, &figures, parts, placement}; }
};

Result<Loaded> load(const store::LogbookFile& logbook, const Snapshot& snapshot, const Batch& batch)
{
    auto input = runInputFor(logbook, snapshot, batch);
    HOLDBAND_TRY(input);
    Loaded loaded;
    loaded.input = std::move(*input);
    loaded.figures = analysis::analyseRun(loaded.input);
    loaded.parts = partsTotal(*snapshot.setup(batch.setup));
    loaded.placement = snapshot.sensor(batch.beerSensor)->placement;
    return loaded;
}

const Measure& measureOf(const SideBySide& review, MeasureId id)
{
    return *std::find_if(review.measures.begin(), review.measures.end(),
                         [&](const Measure& measure) { return measure.rule.id == id; });
}

std::string rangeText(const analysis::Bounded& figure)
{
    if (!figure.bounded())
        return {};
    return " (" + fixedText(*figure.low, 2) + " – " + fixedText(*figure.high, 2) + ")";
}

/// "A used 2.30 times B's energy (2.2 – 2.4) over the same 13.5 days: 11.52 against 5.01 kWh."
std::string energySentence(const SideBySide& review, const std::string& span)
{
    const Measure& energy = measureOf(review, MeasureId::energy);
    if (!energy.a || !energy.b)
        return "Their energies can't be compared: no time is metered in both.";
    const std::string against = energyText(Energy::kilowattHours(energy.a->value)) + " against " +
                                energyText(Energy::kilowattHours(energy.b->value));
    if (!energy.ratio)
        return span + review.a + " and " + review.b + " used " + against + ".";
    std::string text = span + review.a + " used " + fixedText(energy.ratio->value, 2) + " times " +
                       review.b + "'s energy" + rangeText(*energy.ratio) + ": " + against;
    if (energy.ahead == analysis::Ahead::tooClose)
        text += ", which is too close to call";
    return text + ".";
}

std::string sideVerdict(const std::string& name, const Loaded& side, TemperatureUnit unit)
{
    std::string headline = verdictWords(side.input, side.figures, unit).headline;
    if (!headline.empty() && headline[0] >= 'A' && headline[0] <= 'Z')
        headline[0] = static_cast<char>(headline[0] - 'A' + 'a');
    const bool isClause = !side.input.judging.open &&
                          side.figures.judged.asPlanned.verdict != analysis::Verdict::notEnoughData;
    return name + (isClause ? " " : ", ") + headline;
}

std::string typicalDeviation(const SideBySide& review)
{
    const Measure& typical = measureOf(review, MeasureId::meanAbsoluteDeviation);
    if (!typical.a || !typical.b)
        return {};
    const TemperatureUnit unit = review.settings.temperatureUnit();
    const auto text = [&](double kelvins) {
        return differenceText(TemperatureDifference::kelvins(kelvins), unit);
    };
    std::string sentence =
        " Typical deviation " + text(typical.a->value) + " against " + text(typical.b->value);
    if (typical.ahead == analysis::Ahead::tooClose)
        sentence +=
            ", too close to call" + std::string(review.ofSetups ? "" : " with these sensors");
    else if (typical.ahead)
        sentence +=
            ": " + (*typical.ahead == analysis::Ahead::a ? review.a : review.b) + " held closer";
    return sentence + ".";
}

void addWords(SideBySide& review)
{
    for (const Measure& measure : review.measures)
        review.lines.push_back(measureWords(measure, review.settings));
}

Result<SideBySide> ofBatches(const store::LogbookFile& logbook, const Snapshot& snapshot,
                             const Batch& a, const Batch& b)
{
    auto left = load(logbook, snapshot, a);
    HOLDBAND_TRY(left);
    auto right = load(logbook, snapshot, b);
    HOLDBAND_TRY(right);
    analysis::RunComparison comparison =
        analysis::compareRuns(left->contender(), right->contender());
    SideBySide review;
    review.settings = snapshot.settings;
    review.a = a.name;
    review.b = b.name;
    review.measures = std::move(comparison.measures);
    review.ratioCurve = std::move(comparison.ratioCurve);
    for (const analysis::FairnessNote& note : comparison.notes)
        review.notes.push_back(noteWords(note, review.settings, a.name, b.name));
    addWords(review);
    const TemperatureUnit unit = review.settings.temperatureUnit();
    review.temperatureSentence = sideVerdict(a.name, *left, unit) + "; " +
                                 sideVerdict(b.name, *right, unit) + "." + typicalDeviation(review);
    review.energySentence = energySentence(
        review, "Over the same " + durationText(Hours{comparison.commonHours}) + " ");
    return review;
}

using Rows = std::vector<std::vector<std::optional<double>>>;

Result<Rows> measuresOfSetup(const store::LogbookFile& logbook, const Snapshot& snapshot,
                             const Setup& setup, std::vector<std::string>& names)
{
    Rows rows;
    for (const Batch& batch : snapshot.batches) {
        if (batch.setup != setup.name || !batch.ended)
            continue;
        auto loaded = load(logbook, snapshot, batch);
        HOLDBAND_TRY(loaded);
        rows.push_back(analysis::plainMeasures(loaded->contender()));
        names.push_back(batch.name);
    }
    if (rows.empty())
        return dataProblem("the setup \"" + setup.name + "\" has no finished batch", {},
                           "end one, or compare others");
    return rows;
}

std::string batchCount(std::size_t count)
{
    return std::to_string(count) + (count == 1 ? " batch" : " batches");
}

Result<SideBySide> ofSetups(const store::LogbookFile& logbook, const Snapshot& snapshot,
                            const Setup& a, const Setup& b)
{
    SideBySide review;
    review.settings = snapshot.settings;
    review.a = a.name;
    review.b = b.name;
    review.ofSetups = true;
    auto left = measuresOfSetup(logbook, snapshot, a, review.batchesA);
    HOLDBAND_TRY(left);
    auto right = measuresOfSetup(logbook, snapshot, b, review.batchesB);
    HOLDBAND_TRY(right);
    review.measures = analysis::compareSetups(*left, *right);
    addWords(review);
    review.temperatureSentence = "Means are over " + batchCount(left->size()) + " of " + a.name +
                                 " and " + batchCount(right->size()) + " of " + b.name + "." +
                                 typicalDeviation(review);
    review.energySentence = energySentence(review, "For each batch ");
    return review;
}

Problem unknownSide(const Snapshot& snapshot, const std::string& name)
{
    std::vector<std::string> names;
    for (const Batch& batch : snapshot.batches)
        names.push_back(batch.name);
    for (const Setup& setup : snapshot.setups)
        names.push_back(setup.name);
    return {ProblemKind::data,
            "there is no batch and no setup \"" + name + "\"",
            {},
            suggestion(name, names)};
}

} // namespace

Result<SideBySide> reviewSideBySide(const store::LogbookFile& logbook, const std::string& a,
                                    const std::string& b)
{
    auto steady = store::Transaction::beginReading(logbook.database());
    HOLDBAND_TRY(steady);
    auto snapshot = readSnapshot(logbook);
    HOLDBAND_TRY(snapshot);
    for (const std::string& name : {a, b}) {
        if (!snapshot->batch(name) && !snapshot->setup(name))
            return failure(unknownSide(*snapshot, name));
    }
    if (a == b)
        return dataProblem("\"" + a + "\" can't be compared with itself", {}, "name two");
    if (snapshot->batch(a) && snapshot->batch(b))
        return ofBatches(logbook, *snapshot, *snapshot->batch(a), *snapshot->batch(b));
    if (snapshot->setup(a) && snapshot->setup(b))
        return ofSetups(logbook, *snapshot, *snapshot->setup(a), *snapshot->setup(b));
    return dataProblem("one of \"" + a + "\" and \"" + b + "\" is a batch, the other a setup", {},
                       "compare two batches or two setups");
}

} // namespace holdband::review
