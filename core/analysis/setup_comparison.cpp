#include "core/analysis/setup_comparison.h"

#include "core/analysis/bounded.h"
#include "core/analysis/measures.h"

#include <algorithm>
#include <iterator>
#include <limits>

namespace holdband::analysis {

namespace {

using Plain = std::optional<double>;

Plain kwhOf(const std::optional<SpanEnergy>& part)
{
    return part && part->energy.any() ? Plain(part->energy.kwh) : std::nullopt;
}

Plain energyMeasure(const RunEnergy& energy, MeasureId id)
{
    switch (id) {
    case MeasureId::energy:
        return energy.whole.any() ? Plain(energy.whole.kwh) : std::nullopt;
    case MeasureId::energyBeforeCrash:
        return kwhOf(energy.beforeCrash);
    case MeasureId::energyCrash:
        return kwhOf(energy.crash);
    case MeasureId::meanPower:
        return energy.meanWatts();
    case MeasureId::energyPerDegreeDay:
        return energy.kwhPerDegreeDay;
    case MeasureId::cost:
        return energy.cost ? Plain(energy.cost->amount) : std::nullopt;
    default:
        return std::nullopt;
    }
}

Plain valueOf(const Figure& figure)
{
    return figure ? Plain(figure->value) : std::nullopt;
}

Plain plainMeasure(const ComparisonSide& run, const MeasureRule& rule)
{
    if (rule.ofTemperature)
        return valueOf(temperatureMeasure(run, rule.id));
    if (rule.id == MeasureId::effectivePerformance)
        return valueOf(performanceOf(run));
    if (rule.id == MeasureId::parts)
        return run.parts;
    return energyMeasure(run.figures->energy, rule.id);
}

bool ofEnergy(MeasureId id)
{
    return !measureRules()[static_cast<std::size_t>(id)].ofTemperature &&
           id != MeasureId::effectivePerformance && id != MeasureId::parts;
}

std::optional<std::array<double, 2>> sensorDoubtOf(const ComparisonSide& run,
                                                   const MeasureRule& rule)
{
    const Figure figure = rule.ofTemperature ? temperatureMeasure(run, rule.id) : std::nullopt;
    if (!figure || !figure->bounded())
        return std::nullopt;
    return std::array{figure->value - *figure->low, *figure->high - figure->value};
}

double meterDoubtOf(const ComparisonSide& run, const std::set<std::string>& serving)
{
    double doubt = 0.0;
    for (const EnergySource& source : run.input->setup.sources()) {
        if (serving.contains(source.name))
            doubt = std::max(doubt, source.accuracy.value_or(assumedMeterAccuracy));
    }
    return doubt;
}

/// One side: its batches, and the uncertainty of its instruments, which more batches do not reduce.
struct SetupSide {
    const std::vector<BatchSummary>& batches;
    FairnessFacts facts;
    double meterUncertainty = 0.0;
};

SetupSide sideOf(const std::vector<BatchSummary>& batches)
{
    std::vector<FairnessFacts> facts;
    double doubt = 0.0;
    for (const BatchSummary& batch : batches) {
        facts.push_back(batch.facts);
        doubt = std::max(doubt, batch.meterUncertainty);
    }
    return {batches, meanFacts(facts), doubt};
}

/// The mean, over the batches that have the measure, of the error that the sensor may cause; absent
/// where that is unknown for any of them.
std::optional<std::array<double, 2>> meanSensorDoubt(const std::vector<BatchSummary>& batches,
                                                     std::size_t measure)
{
    std::array<double, 2> sum{};
    double count = 0.0;
    for (const BatchSummary& batch : batches) {
        if (!batch.measures[measure])
            continue;
        if (!batch.sensorUncertainty[measure])
            return std::nullopt;
        sum[0] += (*batch.sensorUncertainty[measure])[0];
        sum[1] += (*batch.sensorUncertainty[measure])[1];
        count += 1.0;
    }
    return count > 0.0 ? std::optional(std::array{sum[0] / count, sum[1] / count}) : std::nullopt;
}

/// The interval widened by the instruments' own uncertainty; without bounds where that is unknown.
Figure withInstruments(Figure figure, std::size_t measure, const SetupSide& side, bool oneMeter)
{
    const MeasureRule& rule = measureRules()[measure];
    if (!figure || !figure->bounded())
        return figure;
    if (ofEnergy(rule.id) && !oneMeter) {
        *figure->low *= 1.0 - side.meterUncertainty;
        *figure->high *= 1.0 + side.meterUncertainty;
    }
    if (rule.ofTemperature) {
        const auto doubt = meanSensorDoubt(side.batches, measure);
        if (!doubt)
            return Bounded{figure->value, std::nullopt, std::nullopt};
        *figure->low -= (*doubt)[0];
        *figure->high += (*doubt)[1];
    }
    return possible(*figure, rule.id);
}

bool anyMissed(const std::vector<BatchSummary>& batches, std::size_t measure)
{
    return std::any_of(batches.begin(), batches.end(), [&](const BatchSummary& batch) {
        return static_cast<bool>(batch.missed[measure]);
    });
}

constexpr std::size_t mostCurvePoints = 300; ///< more would not be visible

/// From the first reading on. With a meter that writes a log, only some of its readings, evenly.
std::vector<EnergyPoint> energyCurveOf(const ComparisonSide& run)
{
    const std::vector<SpanEnergy>& slots = run.figures->energy.betweenReadings;
    if (slots.empty())
        return {};
    const Instant start = run.input->span.start;
    std::vector<EnergyPoint> curve{{hoursBetween(start, slots.front().span.start), 0.0}};
    const std::size_t every = slots.size() / mostCurvePoints + 1;
    double kwh = 0.0;
    for (std::size_t i = 0; i < slots.size(); ++i) {
        kwh += slots[i].energy.kwh;
        if ((i + 1) % every == 0 || i + 1 == slots.size())
            curve.push_back({hoursBetween(start, slots[i].span.end), kwh});
    }
    return curve;
}

bool sameMeter(const SetupSide& a, const SetupSide& b)
{
    return !a.facts.meters.empty() && a.facts.meters == b.facts.meters;
}

std::optional<Ahead> aheadOf(const Measure& measure, std::size_t index, const SetupSide& a,
                             const SetupSide& b)
{
    const MeasureRule& rule = measure.rule;
    if (rule.id == MeasureId::parts || !measure.ahead)
        return measure.ahead;
    if (rule.id == MeasureId::effectivePerformance) // an estimate: see performanceOf
        return std::nullopt;
    if (rule.ofTemperature && (anyMissed(a.batches, index) || anyMissed(b.batches, index)))
        return std::nullopt;
    const bool oneMeter = sameMeter(a, b);
    Figure left = withInstruments(measure.a, index, a, oneMeter);
    Figure right = withInstruments(measure.b, index, b, oneMeter);
    if (rule.id == MeasureId::meanDeviation) {
        left = sizeOf(*left);
        right = sizeOf(*right);
    }
    const std::optional<Ahead> sure = whoIsAhead(left, right, rule.better);
    return sure == measure.ahead || !sure ? sure : Ahead::tooClose;
}

} // namespace

std::vector<std::optional<double>> plainMeasures(const ComparisonSide& run)
{
    std::vector<std::optional<double>> values;
    for (const MeasureRule& rule : measureRules())
        values.push_back(plainMeasure(run, rule));
    return values;
}

BatchSummary summaryOf(const ComparisonSide& run, std::span<const double> edges,
                       const std::vector<Span>& betweenReadings, Milliseconds quietAfter)
{
    BatchSummary summary;
    summary.measures = plainMeasures(run);
    for (const MeasureRule& rule : measureRules()) {
        summary.missed.push_back(missedStage(*run.figures, rule.id));
        summary.sensorUncertainty.push_back(sensorDoubtOf(run, rule));
    }
    summary.facts = factsOf(run);
    summary.deviation = distributionOf(run.figures->judged, edges);
    summary.quiet = quietPairs(*run.input, run.figures->judged, betweenReadings, quietAfter);
    summary.meterUncertainty = meterDoubtOf(run, summary.facts.meters);
    summary.energyCurve = energyCurveOf(run);
    return summary;
}

std::optional<Bounded> meanOf(std::span<const double> values)
{
    if (values.empty())
        return std::nullopt;
    const SampleSummary summary = summarise(values);
    return withUncertainty(summary.mean, meanHalfWidth95(summary),
                           -std::numeric_limits<double>::infinity());
}

std::optional<Bounded> plainMean(const std::vector<BatchSummary>& batches, std::size_t measure)
{
    std::vector<double> values;
    for (const BatchSummary& batch : batches) {
        if (batch.measures[measure])
            values.push_back(*batch.measures[measure]);
    }
    if (!values.empty() && measureRules()[measure].id == MeasureId::parts)
        return exactly(values.front()); // the same in every batch
    return meanOf(values);
}

Bounded possible(Bounded figure, MeasureId id)
{
    if (!figure.bounded() || id == MeasureId::meanDeviation)
        return figure;
    figure.low = std::max(*figure.low, std::min(0.0, figure.value));
    if (id == MeasureId::insideShare)
        figure.high = std::min(*figure.high, 1.0);
    return figure;
}

std::vector<Measure> compareSetups(const std::vector<BatchSummary>& a,
                                   const std::vector<BatchSummary>& b)
{
    const SetupSide left = sideOf(a);
    const SetupSide right = sideOf(b);
    const auto mean = [](const std::vector<BatchSummary>& batches, std::size_t i) {
        const Figure plain = plainMean(batches, i);
        return plain ? Figure(possible(*plain, measureRules()[i].id)) : std::nullopt;
    };
    std::vector<Measure> measures;
    for (std::size_t i = 0; i < measureRules().size(); ++i) {
        measures.push_back(completed(measureRules()[i], mean(a, i), mean(b, i)));
        measures.back().ahead = aheadOf(measures.back(), i, left, right);
    }
    return measures;
}

} // namespace holdband::analysis
