// Two setups over their batches: each batch's plain measures, their means and intervals.
#include "core/analysis/bounded.h"
#include "core/analysis/measures.h"

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

Plain plainMeasure(const Contender& run, const MeasureRule& rule)
{
    if (rule.ofTemperature)
        return valueOf(temperatureMeasure(run, rule.id));
    if (rule.id == MeasureId::effectivePerformance)
        return valueOf(performanceOf(run));
    if (rule.id == MeasureId::parts)
        return run.parts;
    return energyMeasure(run.figures->energy, rule.id);
}

/// Mean over the batches that have the measure, with its 95 % interval from three on.
Figure meanOf(const std::vector<std::vector<Plain>>& batches, std::size_t measure)
{
    std::vector<double> values;
    for (const auto& batch : batches) {
        if (batch[measure])
            values.push_back(*batch[measure]);
    }
    if (values.empty())
        return std::nullopt;
    const SampleSummary summary = summarise(values);
    return withDoubt(summary.mean, meanHalfWidth95(summary),
                     -std::numeric_limits<double>::infinity());
}

} // namespace

std::vector<std::optional<double>> plainMeasures(const Contender& run)
{
    std::vector<std::optional<double>> values;
    for (const MeasureRule& rule : measureRules())
        values.push_back(plainMeasure(run, rule));
    return values;
}

std::vector<Measure> compareSetups(const std::vector<std::vector<std::optional<double>>>& a,
                                   const std::vector<std::vector<std::optional<double>>>& b)
{
    std::vector<Measure> measures;
    for (std::size_t i = 0; i < measureRules().size(); ++i) {
        const MeasureRule& rule = measureRules()[i];
        Figure left = meanOf(a, i);
        Figure right = meanOf(b, i);
        if (rule.id == MeasureId::parts) {
            left = left ? Figure(exactly(left->value)) : std::nullopt;
            right = right ? Figure(exactly(right->value)) : std::nullopt;
        }
        measures.push_back(completed(rule, left, right));
    }
    return measures;
}

} // namespace holdband::analysis
