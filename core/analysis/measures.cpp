#include "core/analysis/measures.h"

#include "core/analysis/bounded.h"

#include <algorithm>
#include <limits>

namespace holdband::analysis {

const std::vector<MeasureRule>& measureRules()
{
    using enum MeasureId;
    static const std::vector<MeasureRule> rules{
        {energy, "energy_kwh", "kWh", Better::less, false},
        {energyBeforeCrash, "energy_before_crash_kwh", "kWh", Better::less, false},
        {energyCrash, "energy_crash_kwh", "kWh", Better::less, false},
        {meanPower, "mean_power_w", "W", Better::less, false},
        {energyPerDegreeDay, "kwh_per_cday", "kWh/(K·d)", Better::less, false},
        {cost, "cost", "money", Better::less, false},
        {insideShare, "inside_share", "1", Better::more, true},
        {outsideHours, "outside_h", "h", Better::less, true},
        {excursions, "excursions", "1", Better::less, true},
        {worstPastEdge, "worst_past_edge_c", "K", Better::less, true},
        {rmsDeviation, "rms_dev_c", "K", Better::less, true},
        {meanAbsoluteDeviation, "mean_abs_dev_c", "K", Better::less, true},
        {meanDeviation, "mean_dev_c", "K", Better::less, true},
        {settlingFirst, "settling_first_h", "h", Better::less, true},
        {settlingCrash, "settling_crash_h", "h", Better::less, true},
        {effectivePerformance, "effective_performance", "1", Better::more, false},
        {parts, "parts", "money", Better::less, false},
    };
    return rules;
}

namespace {

/// The lowest and highest value of the three judgings; without bounds where the sensor's
/// uncertainty is unknown.
template <typename Pick>
Figure fromJudgings(const JudgedBatch& judged, Pick pick)
{
    const std::optional<double> planned = pick(judged.asPlanned);
    if (!planned)
        return std::nullopt;
    Bounded figure{*planned, std::nullopt, std::nullopt};
    if (!judged.tighter || !judged.wider)
        return figure;
    const double tight = pick(*judged.tighter).value_or(*planned);
    const double wide = pick(*judged.wider).value_or(*planned);
    figure.low = std::min({*planned, tight, wide});
    figure.high = std::max({*planned, tight, wide});
    return figure;
}

/// Absent where the stage was missed: the time until its end is no settling time.
Figure settlingOf(const JudgedBatch& judged, std::optional<std::size_t> stage)
{
    if (!stage || *stage >= judged.stages.size() || judged.tracks[*stage].deviation.empty() ||
        judged.asPlanned.stages[*stage].missed)
        return std::nullopt;
    return fromJudgings(judged, [&](const Judging& judging) {
        return std::optional(judging.stages[*stage].settlingMs / msPerHour);
    });
}

} // namespace

Figure temperatureMeasure(const ComparisonSide& side, MeasureId id)
{
    const JudgedBatch& judged = side.figures->judged;
    const TimeMoments& moments = judged.deviation;
    std::optional<double> doubt;
    if (side.input->judging.accuracy)
        doubt = side.input->judging.accuracy->kelvins();
    const auto covered = [](const Judging& judging) { return judging.totals.coveredMs > 0.0; };
    const auto ofTotals = [&](auto pick) {
        return fromJudgings(judged, [&](const Judging& judging) {
            return covered(judging) ? std::optional<double>(pick(judging.totals)) : std::nullopt;
        });
    };
    if (id == MeasureId::settlingFirst)
        return settlingOf(judged, 0);
    if (id == MeasureId::settlingCrash)
        return settlingOf(judged, side.figures->crash);
    if (moments.empty())
        return std::nullopt;
    switch (id) {
    case MeasureId::insideShare:
        return ofTotals([](const BandTotals& totals) { return *totals.insideShare(); });
    case MeasureId::outsideHours:
        return ofTotals([](const BandTotals& totals) { return totals.outsideMs() / msPerHour; });
    case MeasureId::excursions:
        return ofTotals(
            [](const BandTotals& totals) { return static_cast<double>(totals.excursions); });
    case MeasureId::worstPastEdge:
        return withUncertainty(judged.asPlanned.totals.worstPeak(), doubt, 0.0);
    case MeasureId::rmsDeviation:
        return withUncertainty(moments.rootMeanSquare(), doubt, 0.0);
    case MeasureId::meanAbsoluteDeviation:
        return withUncertainty(moments.meanAbsolute(), doubt, 0.0);
    case MeasureId::meanDeviation:
        return withUncertainty(moments.mean(), doubt, -std::numeric_limits<double>::infinity());
    default:
        return std::nullopt;
    }
}

Figure performanceOf(const ComparisonSide& side)
{
    if (!side.figures->crashHeat)
        return std::nullopt;
    const std::optional<double> performance = side.figures->crashHeat->effectivePerformance();
    if (!performance)
        return std::nullopt;
    return Bounded{*performance, std::nullopt, std::nullopt};
}

Figure partsOf(const ComparisonSide& side)
{
    return side.parts ? Figure(exactly(*side.parts)) : std::nullopt;
}

bool missedStage(const RunFigures& figures, MeasureId id)
{
    const JudgedBatch& judged = figures.judged;
    const auto missed = [&](std::size_t stage) {
        return stage < judged.stages.size() && judged.asPlanned.stages[stage].missed;
    };
    if (id == MeasureId::settlingFirst)
        return missed(0);
    if (id == MeasureId::settlingCrash)
        return figures.crash && missed(*figures.crash);
    return !judged.asPlanned.missed.empty();
}

Measure completed(const MeasureRule& rule, Figure a, Figure b)
{
    Measure measure{rule, a, b, differenceOf(a, b), ratioOf(a, b), whoIsAhead(a, b, rule.better)};
    if (rule.id == MeasureId::meanDeviation && a && b) {
        measure.ratio = ratioOf(sizeOf(*a), sizeOf(*b));
        measure.ahead = whoIsAhead(sizeOf(*a), sizeOf(*b), rule.better);
    }
    return measure;
}

} // namespace holdband::analysis
