// Two setups side by side over all or some of their ended batches.
#include "core/assign_result.h"
#include "core/results/comparison/side_reader.h"
#include "core/results/comparison/side_texts.h"
#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"

#include <algorithm>

namespace holdband::results {

using analysis::BatchSummary;
using analysis::Bounded;
using analysis::MeasureId;

namespace {

constexpr double setupEdgeTolerances = 5.0;

/// One side of a comparison of setups.
struct SetupSide {
    LoadedSetup setup;
    std::vector<std::string> offered; ///< ended batches
    std::vector<std::string> taken;
    Summaries summaries;

    std::vector<BatchSummary> list() const
    {
        std::vector<BatchSummary> all;
        for (const std::string& name : taken)
            all.push_back(summaries.at(name));
        return all;
    }
};

Result<SetupSide> sideOf(const SideReader& reader, const Setup& setup)
{
    SetupSide side;
    HOLDBAND_TRY(assignResult(loadSetup(reader.logbook, reader.snapshot, setup), side.setup));
    const auto& only = reader.request.only;
    for (const Batch* batch : side.setup.batches) {
        if (!batch->ended)
            continue;
        side.offered.push_back(batch->name);
        if (std::find(only.begin(), only.end(), batch->name) != only.end())
            side.taken.push_back(batch->name);
    }
    if (side.offered.empty())
        return dataProblem(Phrase::tr("the setup \"%1\" has no finished batch").with(setup.name),
                           {}, Phrase::tr("end one, or compare others"));
    if (side.taken.empty())
        side.taken = side.offered;
    return side;
}

/// Problem (data): a batch that is on neither setup, or not ended.
Done checkOnly(const SideReader& reader, const Setup& a, const Setup& b)
{
    for (const std::string& name : reader.request.only) {
        const Batch* batch = reader.snapshot.batch(name);
        std::vector<std::string> possible;
        for (const Batch& each : reader.snapshot.batches) {
            if ((each.setup == a.name || each.setup == b.name) && each.ended)
                possible.push_back(each.name);
        }
        if (!batch)
            return dataProblem(Phrase::tr("there is no batch \"%1\"").with(name), {},
                               suggestion(name, possible));
        if (batch->setup != a.name && batch->setup != b.name)
            return dataProblem(
                Phrase::tr("the batch \"%1\" ran on \"%2\", which is none of the two")
                    .with(name, batch->setup),
                {}, suggestion(name, possible));
        if (!batch->ended)
            return dataProblem(Phrase::tr("the batch \"%1\" is still open").with(name), {},
                               Phrase::tr("end it, or take others"));
    }
    return {};
}

SummaryRules rulesFor(const SideReader& reader, const SetupSide& a, const SetupSide& b)
{
    double tolerance = 0.0;
    for (const SetupSide* side : {&a, &b}) {
        for (const std::string& name : side->offered)
            tolerance = std::max(tolerance, widestTolerance(*reader.snapshot.batch(name)));
    }
    const double far = setupEdgeTolerances * tolerance;
    return {analysis::bandEdges(tolerance, {-far, far}, spreadBins), reader.quietAfter()};
}

Done sumUp(SideReader& reader, SetupSide& side, const SummaryRules& rules)
{
    auto summing = summingUp(reader, side.setup, rules);
    for (const std::string& name : side.taken)
        HOLDBAND_TRY(summing.add(*reader.snapshot.batch(name)));
    side.summaries = summing.finish();
    return {};
}

SetupFigures figuresOf(const SetupSide& side, std::size_t measure)
{
    SetupFigures figures;
    const MeasureId id = analysis::measureRules()[measure].id;
    for (const std::string& name : side.taken) {
        if (const auto value = side.summaries.at(name).measures[measure])
            figures.batches.push_back({name, *value});
    }
    const std::optional<Bounded> mean = analysis::plainMean(side.list(), measure);
    if (!mean)
        return figures;
    figures.mean = mean->value;
    figures.low = mean->low;
    figures.high = mean->high;
    figures.cut = analysis::possible(*mean, id) != *mean;
    return figures;
}

/// The time and energy of each setup without a batch.
IdleFigures idleOf(const SetupSide& side, const Snapshot& snapshot)
{
    IdleFigures idle;
    idle.setup = side.setup.setup->name;
    const std::optional<Span> whole = analysis::readSpan(side.setup.energy);
    analysis::EnergyFigure energy;
    if (whole) {
        for (const Span& part :
             analysis::idleSpans(side.setup.concurrentBatches(snapshot), *whole)) {
            idle.hours += part.hours();
            energy.append(side.setup.energy.over(part));
        }
    }
    idle.meteredHours = energy.meteredMs() / msPerHour;
    idle.metered = whole.has_value();
    if (!energy.any())
        return idle;
    idle.kwh = analysis::fromEnergy(energy);
    idle.meanWatts = analysis::meanWatts(energy);
    return idle;
}

analysis::Distribution added(const SetupSide& side)
{
    analysis::Distribution sum;
    for (const auto& [name, summary] : side.summaries) {
        const analysis::Distribution& one = summary.deviation;
        if (sum.edges.empty()) {
            sum = one;
            continue;
        }
        for (std::size_t i = 0; i < sum.binMs.size(); ++i)
            sum.binMs[i] += one.binMs[i];
        sum.belowMs += one.belowMs;
        sum.aboveMs += one.aboveMs;
    }
    return sum;
}

double widestOf(const SetupSide& side, const Snapshot& snapshot)
{
    double widest = 0.0;
    for (const std::string& name : side.taken)
        widest = std::max(widest, widestTolerance(*snapshot.batch(name)));
    return widest;
}

std::vector<analysis::FairnessNote> notesOf(const SetupSide& a, const SetupSide& b)
{
    const auto facts = [](const SetupSide& side) {
        std::vector<analysis::FairnessFacts> all;
        for (const BatchSummary& summary : side.list())
            all.push_back(summary.facts);
        return analysis::meanFacts(all);
    };
    return analysis::fairnessNotes(facts(a), facts(b));
}

std::vector<EnergyCurve> curvesOf(const SetupSide& side)
{
    std::vector<EnergyCurve> curves;
    for (const std::string& name : side.taken) {
        if (const auto& points = side.summaries.at(name).energyCurve; !points.empty())
            curves.push_back({name, points});
    }
    return curves;
}

void addFigures(SideBySide& review, const SideReader& reader, const SetupSide& a,
                const SetupSide& b)
{
    review.batchesA = a.taken;
    review.batchesB = b.taken;
    review.offeredA = a.offered;
    review.offeredB = b.offered;
    review.measures = analysis::compareSetups(a.list(), b.list());
    for (std::size_t i = 0; i < review.measures.size(); ++i)
        review.batchFigures.push_back({figuresOf(a, i), figuresOf(b, i)});
    review.energyA = curvesOf(a);
    review.energyB = curvesOf(b);
    review.notes = notesOf(a, b);
    review.deviations.spreadA = added(a);
    review.deviations.spreadB = added(b);
    review.deviations.toleranceA = widestOf(a, reader.snapshot);
    review.deviations.toleranceB = widestOf(b, reader.snapshot);
    for (const SetupSide* side : {&a, &b})
        review.idle.push_back(idleOf(*side, reader.snapshot));
}

} // namespace

Result<SideBySide> reviewOfSetups(SideReader& reader, const Setup& a, const Setup& b)
{
    if (reader.request.fromStage)
        return dataProblem(Phrase::tr("two setups are compared over whole batches"), {},
                           Phrase::tr("align two batches from a stage, or leave the stage out"));
    HOLDBAND_TRY(checkOnly(reader, a, b));
    auto left = sideOf(reader, a);
    HOLDBAND_TRY(left);
    auto right = sideOf(reader, b);
    HOLDBAND_TRY(right);
    const SummaryRules rules = rulesFor(reader, *left, *right);
    HOLDBAND_TRY(sumUp(reader, *left, rules));
    HOLDBAND_TRY(sumUp(reader, *right, rules));
    SideBySide review = begunReview(reader, true);
    review.setupA = a.name;
    review.setupB = b.name;
    addFigures(review, reader, *left, *right);
    review.hasMeterA = left->setup.metered();
    review.hasMeterB = right->setup.metered();
    HOLDBAND_TRY(addWork(review, reader, left->setup.energy, right->setup.energy));
    auto pairsA = pairsOf(reader, left->setup, left->taken, left->summaries, rules);
    HOLDBAND_TRY(pairsA);
    auto pairsB = pairsOf(reader, right->setup, right->taken, right->summaries, rules);
    HOLDBAND_TRY(pairsB);
    addModels(review, reader, std::move(*pairsA), std::move(*pairsB));
    review.text = textOfSetups(review, reader.format);
    review.glance = pairGlanceOf(review, reader.format);
    return review;
}

} // namespace holdband::results
