#include "core/analysis/fairness.h"

#include "core/analysis/gravity.h"

#include <algorithm>
#include <array>
#include <cmath>
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

using Notes = std::vector<FairnessNote>;

bool apart(double a, double b, double share)
{
    return std::abs(a - b) > share * std::max(std::abs(a), std::abs(b));
}

/// Elapsed ms at which a stage of either run begins or ends, up to the end of the shorter run.
std::vector<double> planEdges(const Contender& a, const Contender& b)
{
    std::vector<double> edges;
    double shorter = std::numeric_limits<double>::infinity();
    for (const Contender* side : {&a, &b}) {
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

/// A figure of the plan on a stretch of elapsed time inside one stage: at its start and its end.
template <typename Pick>
std::optional<std::array<double, 2>> planned(const Contender& side, double from, double to,
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

/// Where the plans first differ in a figure at equal elapsed time; it is straight over each stage.
template <typename Pick>
std::optional<std::pair<double, double>> firstDifference(const Contender& a, const Contender& b,
                                                         Pick pick)
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

void notePlan(Notes& notes, const Contender& a, const Contender& b)
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
    const double hoursA = a.input->span.hours();
    const double hoursB = b.input->span.hours();
    if (std::abs(hoursA - hoursB) > durationApartHours)
        notes.push_back({NoteKind::durations, MeasureId::outsideHours, hoursA, hoursB});
}

void noteBeer(Notes& notes, const Contender& a, const Contender& b)
{
    const Batch& left = a.input->batch;
    const Batch& right = b.input->batch;
    if (left.volume && right.volume &&
        apart(left.volume->litres(), right.volume->litres(), volumeApart))
        notes.push_back(
            {NoteKind::volumes, MeasureId::energy, left.volume->litres(), right.volume->litres()});
    const auto extract = [](const Batch& batch) -> std::optional<double> {
        if (!batch.volume || !batch.originalGravity || !batch.finalGravity)
            return std::nullopt;
        return extractFermentedKg(*batch.volume, *batch.originalGravity, *batch.finalGravity);
    };
    const auto extractA = extract(left);
    const auto extractB = extract(right);
    if (extractA && extractB && apart(*extractA, *extractB, fermentationApart))
        notes.push_back({NoteKind::fermentationHeat, MeasureId::energy, *extractA, *extractB});
}

void noteWeather(Notes& notes, const Contender& a, const Contender& b)
{
    const auto& liftA = a.figures->energy.lift;
    const auto& liftB = b.figures->energy.lift;
    if (liftA && liftB && std::abs(*liftA->mean() - *liftB->mean()) > ambientApart)
        notes.push_back({NoteKind::ambient, MeasureId::energy, *liftA->mean(), *liftB->mean()});
}

double typicalIntervalMinutes(const Contender& side)
{
    const auto& at = side.input->judging.beer.at;
    if (at.size() < 2)
        return 0.0;
    std::vector<std::int64_t> intervals;
    for (std::size_t i = 1; i < at.size(); ++i)
        intervals.push_back((at[i] - at[i - 1]).count());
    const auto middle = intervals.begin() + static_cast<std::ptrdiff_t>(intervals.size() / 2);
    std::nth_element(intervals.begin(), middle, intervals.end());
    return static_cast<double>(*middle) / 60000.0;
}

void noteSensors(Notes& notes, const Contender& a, const Contender& b)
{
    const auto coverage = [](const Contender& side) {
        return side.figures->judged.asPlanned.totals.coverage().value_or(0.0);
    };
    if (std::abs(coverage(a) - coverage(b)) > coverageApart)
        notes.push_back({NoteKind::coverage, MeasureId::insideShare, coverage(a), coverage(b)});
    const auto doubt = [](const Contender& side) {
        return side.input->judging.accuracy ? side.input->judging.accuracy->kelvins() : -1.0;
    };
    if (std::abs(doubt(a) - doubt(b)) > sameKelvin)
        notes.push_back({NoteKind::sensorAccuracy, MeasureId::rmsDeviation, doubt(a), doubt(b)});
    if (a.placement != b.placement)
        notes.push_back({NoteKind::sensorPlacement, MeasureId::rmsDeviation, 0.0, 0.0});
    const double every = typicalIntervalMinutes(a);
    const double other = typicalIntervalMinutes(b);
    if (std::max(every, other) > intervalApart * std::min(every, other))
        notes.push_back({NoteKind::loggingInterval, MeasureId::excursions, every, other});
}

/// The mean over the run of how many batches shared the setup.
double batchesAtOnce(const Contender& side)
{
    double weighted = 0.0;
    for (const Tenant& tenant : side.input->tenants)
        weighted += intersection(tenant.span, side.input->span).hours();
    const double hours = side.input->span.hours();
    return hours > 0.0 ? weighted / hours : 1.0;
}

bool accuracyAssumed(const Contender& side, const Widening& widening)
{
    const auto& sources = side.input->setup.sources();
    const std::set<std::string> serving = side.input->setup.inService(side.input->span);
    return std::any_of(sources.begin(), sources.end(), [&](const EnergySource& source) {
        return !source.accuracy && serving.contains(source.name) &&
               !widening.sharedMeters.contains(source.name);
    });
}

void noteMetering(Notes& notes, const Contender& a, const Contender& b, bool anyCommon,
                  const Widening& widening)
{
    const auto share = [](const Contender& side) {
        const double hours = side.input->span.hours();
        return hours > 0.0 ? side.figures->energy.whole.meteredMs() / 3.6e6 / hours : 0.0;
    };
    if (!anyCommon)
        notes.push_back({NoteKind::noCommonMetering, MeasureId::energy, share(a), share(b)});
    else if (share(a) < 1.0 || share(b) < 1.0)
        notes.push_back({NoteKind::partlyMetered, MeasureId::energy, share(a), share(b)});
    const double atOnceA = batchesAtOnce(a);
    const double atOnceB = batchesAtOnce(b);
    if (std::abs(atOnceA - atOnceB) > 0.05)
        notes.push_back({NoteKind::batchesAtOnce, MeasureId::energy, atOnceA, atOnceB});
    const bool assumedA = accuracyAssumed(a, widening);
    const bool assumedB = accuracyAssumed(b, widening);
    if (anyCommon && (assumedA || assumedB))
        notes.push_back({NoteKind::meterAccuracyAssumed, MeasureId::energy,
                         static_cast<double>(assumedA), static_cast<double>(assumedB)});
}

void noteMissed(Notes& notes, const Contender& a, const Contender& b)
{
    const auto missed = [](const Contender& side) {
        return static_cast<double>(side.figures->judged.asPlanned.missed.size());
    };
    if (missed(a) > 0.0 || missed(b) > 0.0)
        notes.push_back({NoteKind::missedStage, MeasureId::insideShare, missed(a), missed(b)});
}

} // namespace

std::vector<FairnessNote> fairnessNotes(const Contender& a, const Contender& b, bool anyCommon,
                                        const Widening& widening)
{
    Notes notes;
    notePlan(notes, a, b);
    noteBeer(notes, a, b);
    noteWeather(notes, a, b);
    noteSensors(notes, a, b);
    noteMetering(notes, a, b, anyCommon, widening);
    noteMissed(notes, a, b);
    return notes;
}

} // namespace holdband::analysis
