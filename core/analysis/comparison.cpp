#include "core/analysis/comparison.h"

#include "core/analysis/bounded.h"
#include "core/analysis/fairness.h"

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

constexpr double msPerHour = 3.6e6;

using Figure = std::optional<Bounded>;

/// Elapsed time is kept as an Instant counted from the epoch.
std::vector<Span> shifted(const std::vector<Span>& spans, Milliseconds by)
{
    std::vector<Span> moved;
    for (const Span& span : spans)
        moved.push_back({span.start + by, span.end + by});
    return moved;
}

/// The parts of elapsed time, counted from `startA` and `startB`, that are metered in both.
std::vector<Span> commonElapsed(const Contender& a, Instant startA, const Contender& b,
                                Instant startB, Milliseconds from, Milliseconds until)
{
    const auto metered = [](const Contender& side, Instant start) {
        return shifted(side.figures->energy.whole.metered, -start.time_since_epoch());
    };
    const std::vector<Span> common = intersect(metered(a, startA), metered(b, startB));
    return intersect(common, {{Instant{from}, Instant{until}}});
}

constexpr Milliseconds forever = std::chrono::hours{24 * 365 * 1000};

std::optional<Instant> crashStart(const Contender& side)
{
    if (!side.figures->crash)
        return std::nullopt;
    return side.figures->judged.stages[*side.figures->crash].span.start;
}

/// Energy and what follows from it, over some parts of one run.
struct EnergyPart {
    Figure energy;
    Figure power;
    Figure perDegreeDay;
    Figure cost;
};

EnergyPart energyPart(const Contender& side, const std::vector<Span>& spans,
                      const Widening& widening)
{
    EnergyPart part;
    const RunInput& input = *side.input;
    EnergyFigure energy;
    Cost cost;
    bool priced = !spans.empty();
    for (const Span& span : spans) {
        energy.append(shareOver(input.setup, side.figures->energy.shares, span, widening));
        const std::optional<Cost> some =
            costOver(input.setup, side.figures->energy.shares, input.prices, span, widening);
        priced = priced && some;
        if (some)
            cost = {cost.amount + some->amount, cost.low + some->low, cost.high + some->high};
    }
    if (!energy.any())
        return part;
    part.energy = fromEnergy(energy);
    part.power = scaled(*part.energy, 1000.0 * msPerHour / energy.meteredMs());
    if (priced) {
        const EnergyFigure money{cost.amount, cost.low, cost.high, {}};
        part.cost = fromEnergy(money);
    }
    if (!input.ambient.empty()) {
        const Lift lift = liftOver(input.ambient, input.ambientGap, input.judging.beer,
                                   input.judging.gapLimit, spans);
        if (energyPerDegreeDay(1.0, lift))
            part.perDegreeDay = scaled(*part.energy, 24.0 / lift.coolingKh);
    }
    return part;
}

/// The least and greatest of the three judgings; without bounds where the sensor's doubt is
/// unknown.
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

/// Absent where the stage was missed: what it took then is no settling time.
Figure settlingOf(const JudgedBatch& judged, std::optional<std::size_t> stage)
{
    if (!stage || *stage >= judged.stages.size() || judged.tracks[*stage].deviation.empty() ||
        judged.asPlanned.stages[*stage].missed)
        return std::nullopt;
    return fromJudgings(judged, [&](const Judging& judging) {
        return std::optional(judging.stages[*stage].settlingMs / msPerHour);
    });
}

Figure temperatureMeasure(const Contender& side, MeasureId id)
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
        return withDoubt(judged.asPlanned.totals.worstPeak, doubt, 0.0);
    case MeasureId::rmsDeviation:
        return withDoubt(moments.rootMeanSquare(), doubt, 0.0);
    case MeasureId::meanAbsoluteDeviation:
        return withDoubt(moments.meanAbsolute(), doubt, 0.0);
    case MeasureId::meanDeviation:
        return withDoubt(moments.mean(), doubt, -std::numeric_limits<double>::infinity());
    default:
        return std::nullopt;
    }
}

/// An estimate whose factors are uncertain by more than the meter: no bounds, nobody ahead.
Figure performanceOf(const Contender& side)
{
    if (!side.figures->crashHeat)
        return std::nullopt;
    const std::optional<double> performance = side.figures->crashHeat->effectivePerformance();
    if (!performance)
        return std::nullopt;
    return Bounded{*performance, std::nullopt, std::nullopt};
}

Figure partsOf(const Contender& side)
{
    return side.parts ? Figure(exactly(*side.parts)) : std::nullopt;
}

bool missedStage(const Contender& side, MeasureId id)
{
    const JudgedBatch& judged = side.figures->judged;
    const auto missed = [&](std::size_t stage) {
        return stage < judged.stages.size() && judged.asPlanned.stages[stage].missed;
    };
    if (id == MeasureId::settlingFirst)
        return missed(0);
    if (id == MeasureId::settlingCrash)
        return side.figures->crash && missed(*side.figures->crash);
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

/// All that is compared of the energy of two runs.
class EnergyComparison {
public:
    EnergyComparison(const Contender& a, const Contender& b)
    {
        const std::set<std::string> metersA = a.input->setup.inService(a.input->span);
        const std::set<std::string> metersB = b.input->setup.inService(b.input->span);
        m_widening.wanted = true;
        std::set_intersection(
            metersA.begin(), metersA.end(), metersB.begin(), metersB.end(),
            std::inserter(m_widening.sharedMeters, m_widening.sharedMeters.begin()));
        const Instant startA = a.input->span.start;
        const Instant startB = b.input->span.start;
        m_common = commonElapsed(a, startA, b, startB, Milliseconds{0}, forever);
        fill(m_whole, a, b, m_common, startA, startB);
        const std::optional<Instant> crashA = crashStart(a);
        const std::optional<Instant> crashB = crashStart(b);
        if (!crashA || !crashB)
            return;
        const Milliseconds before = std::min(*crashA - startA, *crashB - startB);
        fill(m_before, a, b, commonElapsed(a, startA, b, startB, Milliseconds{0}, before), startA,
             startB);
        fill(m_crash, a, b, commonElapsed(a, *crashA, b, *crashB, Milliseconds{0}, forever),
             *crashA, *crashB);
    }

    std::pair<Figure, Figure> figures(MeasureId id) const
    {
        switch (id) {
        case MeasureId::energy:
            return {m_whole.first.energy, m_whole.second.energy};
        case MeasureId::energyBeforeCrash:
            return {m_before.first.energy, m_before.second.energy};
        case MeasureId::energyCrash:
            return {m_crash.first.energy, m_crash.second.energy};
        case MeasureId::meanPower:
            return {m_whole.first.power, m_whole.second.power};
        case MeasureId::energyPerDegreeDay:
            return {m_whole.first.perDegreeDay, m_whole.second.perDegreeDay};
        case MeasureId::cost:
            return {m_whole.first.cost, m_whole.second.cost};
        default:
            return {};
        }
    }

    const std::vector<Span>& common() const { return m_common; }
    const Widening& widening() const { return m_widening; }

private:
    using Parts = std::pair<EnergyPart, EnergyPart>;

    void fill(Parts& parts, const Contender& a, const Contender& b,
              const std::vector<Span>& elapsed, Instant startA, Instant startB) const
    {
        parts.first = energyPart(a, shifted(elapsed, startA.time_since_epoch()), m_widening);
        parts.second = energyPart(b, shifted(elapsed, startB.time_since_epoch()), m_widening);
    }

    Widening m_widening;
    std::vector<Span> m_common;
    Parts m_whole;
    Parts m_before;
    Parts m_crash;
};

std::pair<Figure, Figure> figuresFor(const MeasureRule& rule, const Contender& a,
                                     const Contender& b, const EnergyComparison& energies)
{
    if (rule.ofTemperature)
        return {temperatureMeasure(a, rule.id), temperatureMeasure(b, rule.id)};
    if (rule.id == MeasureId::effectivePerformance)
        return {performanceOf(a), performanceOf(b)};
    if (rule.id == MeasureId::parts)
        return {partsOf(a), partsOf(b)};
    return energies.figures(rule.id);
}

Bounded cumulative(const Contender& side, const std::vector<Span>& common, Instant start,
                   Instant elapsed, const Widening& widening)
{
    EnergyFigure energy;
    for (const Span& part : intersect(common, {{Instant{}, elapsed}})) {
        const Span own{part.start + start.time_since_epoch(), part.end + start.time_since_epoch()};
        energy.append(shareOver(side.input->setup, side.figures->energy.shares, own, widening));
    }
    return fromEnergy(energy);
}

/// Elapsed instants at which either side's register was read, inside the common time.
std::vector<Instant> curveInstants(const Contender& a, const Contender& b,
                                   const std::vector<Span>& common)
{
    std::vector<Instant> instants;
    for (const Contender* side : {&a, &b}) {
        for (const SpanEnergy& slot : side->figures->energy.betweenReadings)
            instants.push_back(slot.span.end - side->input->span.start.time_since_epoch());
    }
    if (!common.empty())
        instants.push_back(common.back().end);
    std::erase_if(instants, [&](Instant at) {
        return std::none_of(common.begin(), common.end(),
                            [&](const Span& span) { return at > span.start && at <= span.end; });
    });
    std::sort(instants.begin(), instants.end());
    instants.erase(std::unique(instants.begin(), instants.end()), instants.end());
    return instants;
}

std::vector<RatioPoint> ratioCurve(const Contender& a, const Contender& b,
                                   const EnergyComparison& energies)
{
    std::vector<RatioPoint> curve;
    for (const Instant elapsed : curveInstants(a, b, energies.common())) {
        RatioPoint point;
        point.elapsedHours = hoursBetween(Instant{}, elapsed);
        point.a =
            cumulative(a, energies.common(), a.input->span.start, elapsed, energies.widening());
        point.b =
            cumulative(b, energies.common(), b.input->span.start, elapsed, energies.widening());
        point.ratio = ratioOf(point.a, point.b);
        curve.push_back(point);
    }
    return curve;
}

} // namespace

RunComparison compareRuns(const Contender& a, const Contender& b)
{
    const EnergyComparison energies(a, b);
    RunComparison comparison;
    for (const MeasureRule& rule : measureRules()) {
        const auto [left, right] = figuresFor(rule, a, b, energies);
        comparison.measures.push_back(completed(rule, left, right));
        const bool missed = missedStage(a, rule.id) || missedStage(b, rule.id);
        if (rule.ofTemperature && missed)
            comparison.measures.back().ahead.reset();
    }
    comparison.commonHours = totalMs(energies.common()) / msPerHour;
    comparison.notes = fairnessNotes(a, b, !energies.common().empty(), energies.widening());
    comparison.ratioCurve = ratioCurve(a, b, energies);
    return comparison;
}

std::vector<std::optional<double>> plainMeasures(const Contender& run)
{
    const RunEnergy& energy = run.figures->energy;
    const auto kwhOf = [](const std::optional<SpanEnergy>& part) {
        return part && part->energy.any() ? std::optional(part->energy.kwh) : std::nullopt;
    };
    std::vector<std::optional<double>> values;
    for (const MeasureRule& rule : measureRules()) {
        std::optional<double> value;
        if (rule.ofTemperature) {
            if (const Figure figure = temperatureMeasure(run, rule.id))
                value = figure->value;
        } else if (rule.id == MeasureId::energy) {
            value = energy.whole.any() ? std::optional(energy.whole.kwh) : std::nullopt;
        } else if (rule.id == MeasureId::energyBeforeCrash) {
            value = kwhOf(energy.beforeCrash);
        } else if (rule.id == MeasureId::energyCrash) {
            value = kwhOf(energy.crash);
        } else if (rule.id == MeasureId::meanPower) {
            value = energy.meanWatts();
        } else if (rule.id == MeasureId::energyPerDegreeDay) {
            value = energy.kwhPerDegreeDay;
        } else if (rule.id == MeasureId::cost) {
            value = energy.cost ? std::optional(energy.cost->amount) : std::nullopt;
        } else if (rule.id == MeasureId::effectivePerformance) {
            value = run.figures->crashHeat ? run.figures->crashHeat->effectivePerformance()
                                           : std::nullopt;
        } else {
            value = run.parts;
        }
        values.push_back(value);
    }
    return values;
}

namespace {

/// Mean over the batches that have the measure, with its 95 % interval from three on.
Figure meanOf(const std::vector<std::vector<std::optional<double>>>& batches, std::size_t measure)
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
