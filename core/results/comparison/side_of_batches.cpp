// Two batches side by side: aligned from pitching or from a stage that both have.
#include "core/assign_result.h"
#include "core/results/comparison/side_reader.h"
#include "core/results/comparison/side_texts.h"
#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"

#include <algorithm>

namespace holdband::results {

namespace {

/// The deviation over elapsed time from the aligned start, with its settling stretches.
DeviationLine deviationLine(const LoadedRun& run, Instant start)
{
    DeviationLine line;
    line.track.origin = start;
    const analysis::JudgedBatch& judged = run.figures.judged;
    for (std::size_t i = 0; i < judged.stages.size(); ++i) {
        const auto from = static_cast<double>((judged.stages[i].span.start - start).count());
        const analysis::Track& track = judged.tracks[i].deviation;
        const std::size_t before = line.track.ms.size();
        for (const double ms : track.ms)
            line.track.ms.push_back(from + ms);
        line.track.value.insert(line.track.value.end(), track.value.begin(), track.value.end());
        for (const analysis::Run& piece : track.runs)
            line.track.runs.push_back({before + piece.first, before + piece.last});
        const analysis::BandJudgement& band = judged.asPlanned.stages[i];
        if (band.settlingMs > 0.0)
            line.settling.emplace_back(from, from + band.holdFromMs);
    }
    return line;
}

std::optional<double> crashHours(const LoadedRun& run, Instant start)
{
    if (!run.figures.crash)
        return std::nullopt;
    return hoursBetween(start, run.figures.judged.stages[*run.figures.crash].span.start);
}

void addSpreads(DeviationCharts& charts, const LoadedRun& a, const LoadedRun& b)
{
    const auto extentA = analysis::extentOf(a.figures.judged);
    const auto extentB = analysis::extentOf(b.figures.judged);
    const double tolerance = std::max(charts.toleranceA, charts.toleranceB);
    if ((!extentA && !extentB) || !(tolerance > 0.0))
        return;
    const analysis::Extent left = extentA ? *extentA : *extentB;
    const analysis::Extent right = extentB ? *extentB : *extentA;
    const std::vector<double> edges = analysis::bandEdges(
        tolerance, {std::min(left.least, right.least), std::max(left.most, right.most)},
        spreadBins);
    charts.spreadA = analysis::distributionOf(a.figures.judged, edges);
    charts.spreadB = analysis::distributionOf(b.figures.judged, edges);
}

void addCharts(SideBySide& review, const LoadedRun& a, Instant startA, const LoadedRun& b,
               Instant startB)
{
    DeviationCharts& charts = review.deviations;
    charts.toleranceA = widestTolerance(a.input.batch);
    charts.toleranceB = widestTolerance(b.input.batch);
    charts.a = deviationLine(a, startA);
    charts.b = deviationLine(b, startB);
    charts.crashA = crashHours(a, startA);
    charts.crashB = crashHours(b, startB);
    addSpreads(charts, a, b);
}

/// Problem (data): the stage is not common to both.
Done align(SideBySide& review, const SideBySideRequest& request, const LoadedRun& a,
           const LoadedRun& b)
{
    Alignment& alignment = review.alignment;
    alignment.offered = analysis::commonStages(a.side(), b.side());
    alignment.stage = request.fromStage;
    const auto& offered = alignment.offered;
    if (!request.fromStage ||
        std::find(offered.begin(), offered.end(), *request.fromStage) != offered.end())
        return {};
    return dataProblem(
        Phrase::tr("there is no stage \"%1\" in both \"%2\" and \"%3\"")
            .with(*request.fromStage, review.a, review.b),
        {},
        offered.empty()
            ? Phrase::tr("they have no stage in common: align from pitching").text()
            : Phrase::tr("in both there are %1; or align from pitching").with(joined(offered)));
}

Result<SidePairs> batchPairs(SideReader& reader, const Batch& batch)
{
    auto setup = loadSetup(reader.logbook, reader.snapshot, *reader.snapshot.setup(batch.setup));
    HOLDBAND_TRY(setup);
    const SummaryRules rules{{-1.0, 1.0}, reader.quietAfter()};
    return pairsOf(reader, *setup, {batch.name}, {}, rules);
}

} // namespace

Result<SideBySide> reviewOfBatches(SideReader& reader, const Batch& a, const Batch& b)
{
    auto left = loadRun(reader.logbook, reader.snapshot, a);
    HOLDBAND_TRY(left);
    auto right = loadRun(reader.logbook, reader.snapshot, b);
    HOLDBAND_TRY(right);
    SideBySide review = begunReview(reader, false);
    review.setupA = a.setup;
    review.setupB = b.setup;
    review.batchesA = {a.name};
    review.batchesB = {b.name};
    HOLDBAND_TRY(align(review, reader.request, *left, *right));
    const auto& from = reader.request.fromStage;
    analysis::RunComparison comparison = analysis::compareRuns(left->side(), right->side(), from);
    review.measures = std::move(comparison.measures);
    review.ratioCurve = std::move(comparison.ratioCurve);
    review.alignment.commonHours = comparison.commonHours;
    review.notes = std::move(comparison.notes);
    addCharts(review, *left, *analysis::alignedStart(left->side(), from), *right,
              *analysis::alignedStart(right->side(), from));
    review.hasMeterA = !left->input.setup.sources().empty();
    review.hasMeterB = !right->input.setup.sources().empty();
    HOLDBAND_TRY(addWork(review, reader, left->input.setup, right->input.setup));
    auto pairsA = batchPairs(reader, a);
    HOLDBAND_TRY(pairsA);
    auto pairsB = batchPairs(reader, b);
    HOLDBAND_TRY(pairsB);
    addModels(review, reader, std::move(*pairsA), std::move(*pairsB));
    review.text = textOfBatches(review, reader.format, *left, *right);
    review.glance = pairGlanceOf(review, reader.format);
    return review;
}

} // namespace holdband::results
