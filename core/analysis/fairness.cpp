#include "core/analysis/fairness.h"

#include "core/analysis/gravity.h"

#include <algorithm>
#include <cmath>

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

/// The first stage whose figure differs, among those that both have.
template <typename Pick>
std::optional<std::pair<double, double>> firstDifference(const Contender& a, const Contender& b,
                                                         Pick pick)
{
    const auto& left = a.figures->judged.stages;
    const auto& right = b.figures->judged.stages;
    for (std::size_t i = 0; i < std::min(left.size(), right.size()); ++i) {
        if (std::abs(pick(left[i]) - pick(right[i])) > sameKelvin)
            return std::pair(pick(left[i]), pick(right[i]));
    }
    return std::nullopt;
}

void notePlan(Notes& notes, const Contender& a, const Contender& b)
{
    const auto endTarget = [](const PlacedStage& stage) {
        const auto length = static_cast<double>((stage.span.end - stage.span.start).count());
        return stage.targetCelsiusAt(length);
    };
    if (const auto targets = firstDifference(a, b, endTarget))
        notes.push_back({NoteKind::targets, MeasureId::energy, targets->first, targets->second});
    const auto tolerance = [](const PlacedStage& stage) { return stage.tolerance.kelvins(); };
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
    return std::any_of(sources.begin(), sources.end(), [&](const EnergySource& source) {
        return !source.accuracy && !widening.sharedMeters.contains(source.name);
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
