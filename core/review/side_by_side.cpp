#include "core/review/side_by_side.h"

#include "core/keep.h"
#include "core/review/comparison_cache.h"
#include "core/review/measure_words.h"
#include "core/review/side_loading.h"
#include "core/review/side_models.h"
#include "core/review/side_sentences.h"
#include "core/store/weighing.h"
#include "core/text/near.h"

#include <algorithm>

namespace holdband::review {

using analysis::BatchSummary;
using analysis::Bounded;
using analysis::MeasureId;

namespace {

constexpr double setupEdgeTolerances = 5.0;

/// All that one comparison reads with.
struct Reader {
    const store::LogbookFile& logbook;
    const Snapshot& snapshot;
    const SideBySideRequest& request;
    SideManner manner;
    ComparisonCache* cache;
    store::SeriesPrints prints;

    Result<BatchSummary> summary(const Batch& batch, const LoadedSetup& setup,
                                 const SummaryRules& rules)
    {
        if (cache)
            return cache->summaryOf(logbook, snapshot, batch, setup, rules, prints);
        return summaryFor(logbook, snapshot, batch, setup, rules);
    }
};

Milliseconds quietAfter(const Weighing& weighing)
{
    return toMilliseconds(weighing.quietAfter.value_or(usualQuietAfter));
}

double widestTolerance(const Batch& batch)
{
    double widest = batch.tolerance ? batch.tolerance->kelvins() : 0.0;
    for (const Stage& stage : batch.schedule) {
        if (stage.tolerance)
            widest = std::max(widest, stage.tolerance->kelvins());
    }
    return widest;
}

SideBySide begun(const Reader& reader, const Weighing& weighing, bool ofSetups)
{
    SideBySide review;
    review.settings = reader.snapshot.settings;
    review.weighing = weighing;
    review.a = reader.request.a;
    review.b = reader.request.b;
    review.ofSetups = ofSetups;
    return review;
}

void addLines(SideBySide& review, const SideManner& manner,
              const std::vector<analysis::FairnessNote>& notes)
{
    for (const analysis::Measure& measure : review.measures)
        review.lines.push_back(measureWords(measure, manner));
    for (const analysis::FairnessNote& note : notes)
        review.notes.push_back(noteWords(note, manner, {review.a, review.b, review.ofSetups}));
    addRemarks(review, notes);
}

/// The pairs between readings in which the wanted batches ran; others that ran at the same time are
/// looked at too.
Result<SidePairs> pairsOf(Reader& reader, const LoadedSetup& setup,
                          const std::vector<std::string>& wanted,
                          const std::map<std::string, BatchSummary>& known,
                          const SummaryRules& rules)
{
    SidePairs side;
    side.hasMeter = !setup.betweenReadings.empty();
    side.hasAmbient = false;
    std::vector<Span> spans;
    for (const std::string& name : wanted) {
        spans.push_back(reader.snapshot.batchSpans.at(name));
        side.meanHours += spans.back().hours() / static_cast<double>(wanted.size());
        side.hasAmbient = side.hasAmbient || reader.snapshot.batch(name)->ambientSensor;
    }
    std::vector<analysis::SetupRun> runs;
    for (const Batch* batch : setup.batches) {
        analysis::SetupRun run{batch->name, reader.snapshot.batchSpans.at(batch->name), false, {}};
        run.wanted = std::find(wanted.begin(), wanted.end(), batch->name) != wanted.end();
        if (const auto found = known.find(batch->name); found != known.end()) {
            run.quiet = found->second.quiet;
        } else if (!analysis::intersect(analysis::unite(spans), {run.span}).empty()) {
            auto summary = reader.summary(*batch, setup, rules);
            HOLDBAND_TRY(summary);
            run.quiet = std::move(summary->quiet);
        }
        runs.push_back(std::move(run));
    }
    side.pairs = analysis::weatherPairs(setup.energy, setup.betweenReadings, runs);
    return side;
}

bool hasWindows(const LogbookSettings& settings)
{
    return !settings.tariff.windows.empty() ||
           std::any_of(settings.tariffChanges.begin(), settings.tariffChanges.end(),
                       [](const TariffChange& change) { return !change.tariff.windows.empty(); });
}

void addModels(SideBySide& review, const Reader& reader, SidePairs a, SidePairs b)
{
    const Setup& setupA = *reader.snapshot.setup(review.setupA);
    const Setup& setupB = *reader.snapshot.setup(review.setupB);
    addWeather(review, reader.manner, std::move(a), std::move(b));
    addMoney(review, reader.manner, setupA, setupB, hasWindows(review.settings));
    addJudgement(review, reader.manner, setupA, setupB);
}

// Two batches

/// The deviation over elapsed time from the aligned start, with what of it was settling.
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
        tolerance, {std::min(left.least, right.least), std::max(left.most, right.most)});
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
    alignment.offered = analysis::commonStages(a.contender(), b.contender());
    alignment.stage = request.fromStage;
    alignment.words = request.fromStage ? "the start of " + *request.fromStage : "pitching";
    const auto& offered = alignment.offered;
    if (!request.fromStage ||
        std::find(offered.begin(), offered.end(), *request.fromStage) != offered.end())
        return {};
    const std::string none = "there is no stage \"" + *request.fromStage + "\" in both \"" +
                             review.a + "\" and \"" + review.b + "\"";
    return dataProblem(none, {},
                       offered.empty()
                           ? "they have no stage in common: align from pitching"
                           : "in both there are " + joined(offered) + "; or align from pitching");
}

Result<SidePairs> batchPairs(Reader& reader, const Batch& batch, const Weighing& weighing)
{
    auto setup = loadSetup(reader.logbook, reader.snapshot, *reader.snapshot.setup(batch.setup));
    HOLDBAND_TRY(setup);
    const SummaryRules rules{{-1.0, 1.0}, quietAfter(weighing)};
    return pairsOf(reader, *setup, {batch.name}, {}, rules);
}

Result<SideBySide> ofBatches(Reader& reader, const Batch& a, const Batch& b,
                             const Weighing& weighing)
{
    auto left = loadRun(reader.logbook, reader.snapshot, a);
    HOLDBAND_TRY(left);
    auto right = loadRun(reader.logbook, reader.snapshot, b);
    HOLDBAND_TRY(right);
    SideBySide review = begun(reader, weighing, false);
    review.setupA = a.setup;
    review.setupB = b.setup;
    review.batchesA = {a.name};
    review.batchesB = {b.name};
    HOLDBAND_TRY(align(review, reader.request, *left, *right));
    const auto& from = reader.request.fromStage;
    analysis::RunComparison comparison =
        analysis::compareRuns(left->contender(), right->contender(), from);
    review.measures = std::move(comparison.measures);
    review.ratioCurve = std::move(comparison.ratioCurve);
    review.alignment.commonHours = comparison.commonHours;
    addLines(review, reader.manner, comparison.notes);
    addCharts(review, *left, *analysis::alignedStart(left->contender(), from), *right,
              *analysis::alignedStart(right->contender(), from));
    review.temperatureSentence = temperatureSentenceOfBatches(review, reader.manner, *left, *right);
    review.energySentence = energySentence(
        review, reader.manner,
        {!left->input.setup.sources().empty(), !right->input.setup.sources().empty()});
    auto pairsA = batchPairs(reader, a, weighing);
    HOLDBAND_TRY(pairsA);
    auto pairsB = batchPairs(reader, b, weighing);
    HOLDBAND_TRY(pairsB);
    addModels(review, reader, std::move(*pairsA), std::move(*pairsB));
    return review;
}

// Two setups

/// One side of a comparison of setups.
struct SetupSide {
    LoadedSetup setup;
    std::vector<std::string> offered; ///< ended batches
    std::vector<std::string> taken;
    std::map<std::string, BatchSummary> summaries;

    std::vector<BatchSummary> list() const
    {
        std::vector<BatchSummary> all;
        for (const std::string& name : taken)
            all.push_back(summaries.at(name));
        return all;
    }
};

Result<SetupSide> sideOf(const Reader& reader, const Setup& setup)
{
    SetupSide side;
    HOLDBAND_TRY(keep(loadSetup(reader.logbook, reader.snapshot, setup), side.setup));
    const auto& only = reader.request.only;
    for (const Batch* batch : side.setup.batches) {
        if (!batch->ended)
            continue;
        side.offered.push_back(batch->name);
        if (std::find(only.begin(), only.end(), batch->name) != only.end())
            side.taken.push_back(batch->name);
    }
    if (side.offered.empty())
        return dataProblem("the setup \"" + setup.name + "\" has no finished batch", {},
                           "end one, or compare others");
    if (side.taken.empty())
        side.taken = side.offered;
    return side;
}

/// Problem (data): a batch that is on neither setup, or not ended.
Done checkOnly(const Reader& reader, const Setup& a, const Setup& b)
{
    for (const std::string& name : reader.request.only) {
        const Batch* batch = reader.snapshot.batch(name);
        std::vector<std::string> possible;
        for (const Batch& each : reader.snapshot.batches) {
            if ((each.setup == a.name || each.setup == b.name) && each.ended)
                possible.push_back(each.name);
        }
        if (!batch)
            return dataProblem("there is no batch \"" + name + "\"", {},
                               suggestion(name, possible));
        if (batch->setup != a.name && batch->setup != b.name)
            return dataProblem("the batch \"" + name + "\" ran on \"" + batch->setup +
                                   "\", which is none of the two",
                               {}, suggestion(name, possible));
        if (!batch->ended)
            return dataProblem("the batch \"" + name + "\" is still open", {},
                               "end it, or take others");
    }
    return {};
}

SummaryRules rulesFor(const Reader& reader, const SetupSide& a, const SetupSide& b,
                      const Weighing& weighing)
{
    double tolerance = 0.0;
    for (const SetupSide* side : {&a, &b}) {
        for (const std::string& name : side->offered)
            tolerance = std::max(tolerance, widestTolerance(*reader.snapshot.batch(name)));
    }
    const double far = setupEdgeTolerances * tolerance;
    return {analysis::bandEdges(tolerance, {-far, far}), quietAfter(weighing)};
}

Done sumUp(Reader& reader, SetupSide& side, const SummaryRules& rules)
{
    for (const std::string& name : side.taken) {
        auto summary = reader.summary(*reader.snapshot.batch(name), side.setup, rules);
        HOLDBAND_TRY(summary);
        side.summaries.emplace(name, std::move(*summary));
    }
    return {};
}

SetupFigures figuresOf(const SetupSide& side, std::size_t measure, const SideManner& manner)
{
    SetupFigures figures;
    const MeasureId id = analysis::measureRules()[measure].id;
    for (const std::string& name : side.taken) {
        if (const auto value = side.summaries.at(name).measures[measure])
            figures.batches.push_back({name, *value, figureText(id, *value, manner)});
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

/// The time that each setup stood ready without a batch.
IdleFigures idleOf(const SetupSide& side, const Snapshot& snapshot, const SideManner& manner)
{
    IdleFigures idle;
    idle.setup = side.setup.setup->name;
    const std::optional<Span> whole = analysis::readSpan(side.setup.energy);
    analysis::EnergyFigure energy;
    if (whole) {
        for (const Span& part : analysis::idleSpans(side.setup.tenants(snapshot), *whole)) {
            idle.hours += part.hours();
            energy.append(side.setup.energy.over(part));
        }
    }
    idle.meteredHours = energy.meteredMs() / 3.6e6;
    if (!energy.any()) {
        idle.sentence = whole ? idle.setup + " had a batch whenever it was metered."
                              : "Nothing is known of " + idle.setup +
                                    " without a batch: no meter of it was read.";
        return idle;
    }
    idle.kwh = analysis::fromEnergy(energy);
    idle.meanWatts = analysis::meanWatts(energy);
    idle.sentence = "Without a batch " + idle.setup + " used " + manner.energy(idle.kwh->value) +
                    manner.bounds(*idle.kwh, 2) + " in " + manner.duration(idle.meteredHours) +
                    ": " + manner.power(*idle.meanWatts, 1) +
                    " in the mean. That is no part of any batch's energy.";
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

void addFigures(SideBySide& review, const Reader& reader, const SetupSide& a, const SetupSide& b)
{
    review.batchesA = a.taken;
    review.batchesB = b.taken;
    review.offeredA = a.offered;
    review.offeredB = b.offered;
    review.measures = analysis::compareSetups(a.list(), b.list());
    for (std::size_t i = 0; i < review.measures.size(); ++i)
        review.batchFigures.push_back(
            {figuresOf(a, i, reader.manner), figuresOf(b, i, reader.manner)});
    addLines(review, reader.manner, notesOf(a, b));
    review.deviations.spreadA = added(a);
    review.deviations.spreadB = added(b);
    review.deviations.toleranceA = widestOf(a, reader.snapshot);
    review.deviations.toleranceB = widestOf(b, reader.snapshot);
    for (const SetupSide* side : {&a, &b})
        review.idle.push_back(idleOf(*side, reader.snapshot, reader.manner));
}

Result<SideBySide> ofSetups(Reader& reader, const Setup& a, const Setup& b,
                            const Weighing& weighing)
{
    if (reader.request.fromStage)
        return dataProblem("two setups are compared over whole batches", {},
                           "align two batches from a stage, or leave the stage out");
    HOLDBAND_TRY(checkOnly(reader, a, b));
    auto left = sideOf(reader, a);
    HOLDBAND_TRY(left);
    auto right = sideOf(reader, b);
    HOLDBAND_TRY(right);
    const SummaryRules rules = rulesFor(reader, *left, *right, weighing);
    HOLDBAND_TRY(sumUp(reader, *left, rules));
    HOLDBAND_TRY(sumUp(reader, *right, rules));
    SideBySide review = begun(reader, weighing, true);
    review.setupA = a.name;
    review.setupB = b.name;
    review.alignment.words = "pitching";
    addFigures(review, reader, *left, *right);
    review.temperatureSentence = temperatureSentenceOfSetups(review, reader.manner);
    review.energySentence =
        energySentence(review, reader.manner, {left->setup.metered(), right->setup.metered()});
    auto pairsA = pairsOf(reader, left->setup, left->taken, left->summaries, rules);
    HOLDBAND_TRY(pairsA);
    auto pairsB = pairsOf(reader, right->setup, right->taken, right->summaries, rules);
    HOLDBAND_TRY(pairsB);
    addModels(review, reader, std::move(*pairsA), std::move(*pairsB));
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

Result<SideBySide> compared(Reader& reader, const Weighing& weighing)
{
    const Snapshot& snapshot = reader.snapshot;
    const auto& [a, b, only, fromStage, sign, given] = reader.request;
    for (const std::string& name : {a, b}) {
        if (!snapshot.batch(name) && !snapshot.setup(name))
            return failure(unknownSide(snapshot, name));
    }
    if (a == b)
        return dataProblem("\"" + a + "\" can't be compared with itself", {}, "name two");
    if (snapshot.batch(a) && snapshot.batch(b)) {
        if (!only.empty())
            return dataProblem("two batches are compared, there are no others to take", {},
                               "choose among batches only where two setups are compared");
        return ofBatches(reader, *snapshot.batch(a), *snapshot.batch(b), weighing);
    }
    if (snapshot.setup(a) && snapshot.setup(b))
        return ofSetups(reader, *snapshot.setup(a), *snapshot.setup(b), weighing);
    return dataProblem("one of \"" + a + "\" and \"" + b + "\" is a batch, the other a setup", {},
                       "compare two batches or two setups");
}

} // namespace

Result<SideBySide> reviewSideBySide(const store::LogbookFile& logbook,
                                    const SideBySideRequest& request, ComparisonCache* cache)
{
    auto steady = store::Transaction::beginReading(logbook.database());
    HOLDBAND_TRY(steady);
    auto snapshot = readSnapshot(logbook);
    HOLDBAND_TRY(snapshot);
    Weighing weighing;
    if (request.weighing)
        weighing = *request.weighing;
    else
        HOLDBAND_TRY(keep(store::readWeighing(logbook), weighing));
    if (cache)
        cache->begin(logbook, *snapshot);
    Reader reader{logbook, *snapshot,
                  request, {snapshot->settings, request.decimalSign},
                  cache,   store::SeriesPrints(logbook)};
    return compared(reader, weighing);
}

} // namespace holdband::review
