#include "core/analysis/fairness.h"

#include "core/analysis/gravity.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <limits>

namespace holdband::analysis {

namespace {

constexpr double sameKelvin = 1e-6;
constexpr double ambientApart = 1.0;      ///< K of mean lift
constexpr double fermentationApart = 0.2; ///< of the larger
constexpr double volumeApart = 0.01;      ///< of the larger
constexpr double coverageApart = 0.01;    ///< share of hold time
constexpr double intervalApart = 1.5;     ///< factor
constexpr double durationApartHours = 1.0;
constexpr double atOnceApart = 0.05;
constexpr double meanTargetApart = 0.1;     ///< K, of setups: plans that take turns differ a little
constexpr double meanToleranceApart = 0.05; ///< K, of setups

using Notes = std::vector<FairnessNote>;

bool apart(double a, double b, double share)
{
    return std::abs(a - b) > share * std::max(std::abs(a), std::abs(b));
}

/// Elapsed ms at which a stage of either run begins or ends, up to the end of the shorter run.
std::vector<double> planEdges(const ComparisonSide& a, const ComparisonSide& b)
{
    std::vector<double> edges;
    double shorter = std::numeric_limits<double>::infinity();
    for (const ComparisonSide* side : {&a, &b}) {
        const Span run = side->input->span;
        shorter = std::min(shorter, static_cast<double>((run.end - run.start).count()));
        for (const PlacedStage& stage : side->figures->judged.stages) {
            edges.push_back(static_cast<double>((stage.span.start - run.start).count()));
            edges.push_back(static_cast<double>((stage.span.end - run.start).count()));
        }
    }
    std::erase_if(edges, [&](double edge) { return edge > shorter; });
    edges.push_back(shorter);
    std::sort(edges.begin(), edges.end());
    edges.erase(std::unique(edges.begin(), edges.end()), edges.end());
    return edges;
}

/// A figure of the plan at the start and the end of a stretch of elapsed time inside one stage.
template <typename Pick>
std::optional<std::array<double, 2>> planned(const ComparisonSide& side, double from, double to,
                                             Pick pick)
{
    for (const PlacedStage& stage : side.figures->judged.stages) {
        const auto start = static_cast<double>((stage.span.start - side.input->span.start).count());
        const auto length = static_cast<double>((stage.span.end - stage.span.start).count());
        if (start <= from && to <= start + length)
            return std::array{pick(stage, from - start), pick(stage, to - start)};
    }
    return std::nullopt;
}

/// Where the plans first differ in a figure at equal elapsed time; the figure is linear over each
/// stage.
template <typename Pick>
std::optional<std::pair<double, double>> firstDifference(const ComparisonSide& a,
                                                         const ComparisonSide& b, Pick pick)
{
    const std::vector<double> edges = planEdges(a, b);
    for (std::size_t i = 1; i < edges.size(); ++i) {
        const auto left = planned(a, edges[i - 1], edges[i], pick);
        const auto right = planned(b, edges[i - 1], edges[i], pick);
        for (std::size_t end = 0; left && right && end < 2; ++end) {
            if (std::abs((*left)[end] - (*right)[end]) > sameKelvin)
                return std::pair((*left)[end], (*right)[end]);
        }
    }
    return std::nullopt;
}

void notePlan(Notes& notes, const ComparisonSide& a, const ComparisonSide& b)
{
    const auto target = [](const PlacedStage& stage, double ms) {
        return stage.targetCelsiusAt(ms);
    };
    if (const auto targets = firstDifference(a, b, target))
        notes.push_back({NoteKind::targets, MeasureId::energy, targets->first, targets->second});
    const auto tolerance = [](const PlacedStage& stage, double) {
        return stage.tolerance.kelvins();
    };
    if (const auto found = firstDifference(a, b, tolerance))
        notes.push_back(
            {NoteKind::tolerances, MeasureId::insideShare, found->first, found->second});
}

void noteMeanPlan(Notes& notes, const FairnessFacts& a, const FairnessFacts& b)
{
    if (std::abs(a.target - b.target) > meanTargetApart)
        notes.push_back({NoteKind::targets, MeasureId::energy, a.target, b.target});
    if (std::abs(a.tolerance - b.tolerance) > meanToleranceApart)
        notes.push_back({NoteKind::tolerances, MeasureId::insideShare, a.tolerance, b.tolerance});
}

void noteBeer(Notes& notes, const FairnessFacts& a, const FairnessFacts& b)
{
    if (std::abs(a.hours - b.hours) > durationApartHours)
        notes.push_back({NoteKind::durations, MeasureId::outsideHours, a.hours, b.hours});
    if (a.litres && b.litres && apart(*a.litres, *b.litres, volumeApart))
        notes.push_back({NoteKind::volumes, MeasureId::energy, *a.litres, *b.litres});
    if (a.extractKg && b.extractKg && apart(*a.extractKg, *b.extractKg, fermentationApart))
        notes.push_back({NoteKind::fermentationHeat, MeasureId::energy, *a.extractKg, *b.extractKg,
                         a.extractMeasured, b.extractMeasured});
    if (a.lift && b.lift && std::abs(*a.lift - *b.lift) > ambientApart)
        notes.push_back({NoteKind::ambient, MeasureId::energy, *a.lift, *b.lift});
}

void noteSensors(Notes& notes, const FairnessFacts& a, const FairnessFacts& b)
{
    if (std::abs(a.coverage - b.coverage) > coverageApart)
        notes.push_back({NoteKind::coverage, MeasureId::insideShare, a.coverage, b.coverage});
    const double doubtA = a.accuracy.value_or(-1.0);
    const double doubtB = b.accuracy.value_or(-1.0);
    if (std::abs(doubtA - doubtB) > sameKelvin)
        notes.push_back({NoteKind::sensorAccuracy, MeasureId::rmsDeviation, doubtA, doubtB});
    if (a.placements != b.placements)
        notes.push_back({NoteKind::sensorPlacement, MeasureId::rmsDeviation});
    const double slower = std::max(a.intervalMinutes, b.intervalMinutes);
    if (slower > intervalApart * std::min(a.intervalMinutes, b.intervalMinutes))
        notes.push_back({NoteKind::loggingInterval, MeasureId::excursions, a.intervalMinutes,
                         b.intervalMinutes});
}

void noteMetering(Notes& notes, const FairnessFacts& a, const FairnessFacts& b, bool anyCommon)
{
    if (!anyCommon)
        notes.push_back(
            {NoteKind::noCommonMetering, MeasureId::energy, a.meteredShare, b.meteredShare});
    else if (a.meteredShare < 1.0 || b.meteredShare < 1.0)
        notes.push_back(
            {NoteKind::partlyMetered, MeasureId::energy, a.meteredShare, b.meteredShare});
    if (std::abs(a.atOnce - b.atOnce) > atOnceApart)
        notes.push_back({NoteKind::batchesAtOnce, MeasureId::energy, a.atOnce, b.atOnce});
}

void noteMissed(Notes& notes, const FairnessFacts& a, const FairnessFacts& b)
{
    if (a.missed > 0.0 || b.missed > 0.0)
        notes.push_back({NoteKind::missedStage, MeasureId::insideShare, a.missed, b.missed});
}

bool accuracyAssumed(const FairnessFacts& side, const std::set<std::string>& shared)
{
    return std::any_of(side.unclassedMeters.begin(), side.unclassedMeters.end(),
                       [&](const std::string& meter) { return !shared.contains(meter); });
}

void noteAssumed(Notes& notes, const FairnessFacts& a, const FairnessFacts& b,
                 const std::set<std::string>& shared)
{
    const bool assumedA = accuracyAssumed(a, shared);
    const bool assumedB = accuracyAssumed(b, shared);
    if (assumedA || assumedB)
        notes.push_back({NoteKind::meterAccuracyAssumed, MeasureId::energy,
                         static_cast<double>(assumedA), static_cast<double>(assumedB)});
}

void noteOneMeter(Notes& notes, const ComparisonSide& a, const ComparisonSide& b,
                  const std::set<std::string>& shared)
{
    if (shared.empty())
        return;
    const double together = intersection(a.input->span, b.input->span).hours();
    notes.push_back({together > 0.0 ? NoteKind::sharedMeter : NoteKind::oneMeter, MeasureId::energy,
                     together, together});
}

/// The mean over the run of how many batches shared the setup.
double batchesAtOnce(const ComparisonSide& side)
{
    double weighted = 0.0;
    for (const ConcurrentBatch& concurrent : side.input->concurrentBatches)
        weighted += intersection(concurrent.span, side.input->span).hours();
    const double hours = side.input->span.hours();
    return hours > 0.0 ? weighted / hours : 1.0;
}

void addBeer(const ComparisonSide& side, FairnessFacts& facts)
{
    const Batch& batch = side.input->batch;
    if (batch.volume)
        facts.litres = batch.volume->litres();
    const std::optional<Fermentation>& fermented = side.figures->fermentation;
    if (batch.volume && fermented) {
        facts.extractKg = extractFermentedKg(*batch.volume, fermented->original, fermented->final);
        facts.extractMeasured = fermented->measuredAt.has_value();
    }
    if (const auto& lift = side.figures->energy.lift)
        facts.lift = lift->mean();
}

void addPlan(const ComparisonSide& side, FairnessFacts& facts)
{
    double hours = 0.0;
    for (const PlacedStage& stage : side.figures->judged.stages) {
        const auto length = static_cast<double>((stage.span.end - stage.span.start).count());
        const double middle = stage.targetCelsiusAt(length / 2.0);
        facts.target += middle * stage.span.hours();
        facts.tolerance += stage.tolerance.kelvins() * stage.span.hours();
        hours += stage.span.hours();
    }
    if (hours > 0.0) {
        facts.target /= hours;
        facts.tolerance /= hours;
    }
}

void addMeters(const ComparisonSide& side, FairnessFacts& facts)
{
    facts.meters = side.input->setup.inService(side.input->span);
    for (const EnergySource& source : side.input->setup.sources()) {
        if (!source.accuracy && facts.meters.contains(source.name))
            facts.unclassedMeters.insert(source.name);
    }
}

/// The mean of a figure over the runs that have it.
template <typename Pick>
std::optional<double> meanOf(const std::vector<FairnessFacts>& runs, Pick pick)
{
    double sum = 0.0;
    double count = 0.0;
    for (const FairnessFacts& run : runs) {
        if (const std::optional<double> value = pick(run)) {
            sum += *value;
            count += 1.0;
        }
    }
    return count > 0.0 ? std::optional(sum / count) : std::nullopt;
}

} // namespace

FairnessFacts factsOf(const ComparisonSide& side)
{
    FairnessFacts facts;
    facts.hours = side.input->span.hours();
    addPlan(side, facts);
    addBeer(side, facts);
    facts.coverage = side.figures->judged.asPlanned.totals.coverage().value_or(0.0);
    if (side.input->judging.accuracy)
        facts.accuracy = side.input->judging.accuracy->kelvins();
    facts.placements = {side.placement};
    facts.intervalMinutes = medianIntervalMs(side.input->judging.beer) / 60000.0;
    if (facts.hours > 0.0)
        facts.meteredShare = side.figures->energy.whole.meteredMs() / msPerHour / facts.hours;
    facts.atOnce = batchesAtOnce(side);
    facts.missed = static_cast<double>(side.figures->judged.asPlanned.missed.size());
    addMeters(side, facts);
    return facts;
}

FairnessFacts meanFacts(const std::vector<FairnessFacts>& runs)
{
    using Facts = FairnessFacts;
    const auto mean = [&](double Facts::*field) {
        return *meanOf(runs, [=](const Facts& run) { return std::optional(run.*field); });
    };
    Facts facts;
    facts.runs = static_cast<double>(runs.size());
    facts.hours = mean(&Facts::hours);
    facts.target = mean(&Facts::target);
    facts.tolerance = mean(&Facts::tolerance);
    facts.coverage = mean(&Facts::coverage);
    facts.intervalMinutes = mean(&Facts::intervalMinutes);
    facts.meteredShare = mean(&Facts::meteredShare);
    facts.atOnce = mean(&Facts::atOnce);
    facts.litres = meanOf(runs, [](const Facts& run) { return run.litres; });
    facts.extractKg = meanOf(runs, [](const Facts& run) { return run.extractKg; });
    facts.lift = meanOf(runs, [](const Facts& run) { return run.lift; });
    facts.accuracy = 0.0;
    for (const Facts& run : runs) {
        facts.extractMeasured = facts.extractMeasured || run.extractMeasured;
        if (facts.accuracy)
            facts.accuracy = run.accuracy ? std::optional(std::max(*facts.accuracy, *run.accuracy))
                                          : std::nullopt;
        facts.missed += run.missed;
        facts.placements.insert(run.placements.begin(), run.placements.end());
        facts.meters.insert(run.meters.begin(), run.meters.end());
        facts.unclassedMeters.insert(run.unclassedMeters.begin(), run.unclassedMeters.end());
    }
    return facts;
}

std::vector<FairnessNote> fairnessNotes(const ComparisonSide& a, const ComparisonSide& b,
                                        bool anyCommon, const Widening& widening)
{
    Notes notes;
    const FairnessFacts factsA = factsOf(a);
    const FairnessFacts factsB = factsOf(b);
    notePlan(notes, a, b);
    noteBeer(notes, factsA, factsB);
    noteSensors(notes, factsA, factsB);
    noteMetering(notes, factsA, factsB, anyCommon);
    if (anyCommon)
        noteAssumed(notes, factsA, factsB, widening.sharedMeters);
    noteOneMeter(notes, a, b, widening.sharedMeters);
    noteMissed(notes, factsA, factsB);
    return notes;
}

std::vector<FairnessNote> fairnessNotes(const FairnessFacts& a, const FairnessFacts& b)
{
    Notes notes;
    if (a.runs < 3.0 || b.runs < 3.0)
        notes.push_back({NoteKind::fewBatches, MeasureId::energy, a.runs, b.runs});
    std::set<std::string> shared;
    std::set_intersection(a.meters.begin(), a.meters.end(), b.meters.begin(), b.meters.end(),
                          std::inserter(shared, shared.begin()));
    const bool anyMetered = a.meteredShare > 0.0 && b.meteredShare > 0.0;
    noteMeanPlan(notes, a, b);
    noteBeer(notes, a, b);
    noteSensors(notes, a, b);
    noteMetering(notes, a, b, anyMetered);
    if (anyMetered)
        noteAssumed(notes, a, b, shared);
    if (!shared.empty())
        notes.push_back({NoteKind::oneMeter, MeasureId::energy});
    noteMissed(notes, a, b);
    return notes;
}

} // namespace holdband::analysis
