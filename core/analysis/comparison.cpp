#include "core/analysis/comparison.h"

#include "core/analysis/bounded.h"
#include "core/analysis/fairness.h"
#include "core/analysis/measures.h"

#include <algorithm>
#include <limits>

namespace holdband::analysis {

namespace {

/// Elapsed time is stored as an Instant counted from the epoch.
std::vector<Span> shifted(const std::vector<Span>& spans, Milliseconds by)
{
    std::vector<Span> moved;
    for (const Span& span : spans)
        moved.push_back({span.start + by, span.end + by});
    return moved;
}

/// The parts of elapsed time, counted from `startA` and `startB`, that are metered in both.
std::vector<Span> commonElapsed(const ComparisonSide& a, Instant startA, const ComparisonSide& b,
                                Instant startB, Milliseconds from, Milliseconds until)
{
    const auto metered = [](const ComparisonSide& side, Instant start) {
        return shifted(side.figures->energy.whole.metered, -start.time_since_epoch());
    };
    const std::vector<Span> common = intersect(metered(a, startA), metered(b, startB));
    return intersect(common, {{Instant{from}, Instant{until}}});
}

constexpr Milliseconds forever = std::chrono::hours{24 * 365 * 1000};

std::optional<Instant> crashStart(const ComparisonSide& side)
{
    if (!side.figures->crash)
        return std::nullopt;
    return side.figures->judged.stages[*side.figures->crash].span.start;
}

/// Energy and the figures derived from it, over some parts of one run.
struct EnergyPart {
    Figure energy;
    Figure power;
    Figure perDegreeDay;
    Figure cost;
};

EnergyPart energyPart(const ComparisonSide& side, const std::vector<Span>& spans,
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

/// Every energy figure that is compared between two runs.
class EnergyComparison {
public:
    EnergyComparison(const ComparisonSide& a, Instant startA, const ComparisonSide& b,
                     Instant startB)
        : m_startA(startA), m_startB(startB)
    {
        const std::set<std::string> metersA = a.input->setup.inService(a.input->span);
        const std::set<std::string> metersB = b.input->setup.inService(b.input->span);
        m_widening.wanted = true;
        std::set_intersection(
            metersA.begin(), metersA.end(), metersB.begin(), metersB.end(),
            std::inserter(m_widening.sharedMeters, m_widening.sharedMeters.begin()));
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
    Instant startA() const { return m_startA; }
    Instant startB() const { return m_startB; }

private:
    using Parts = std::pair<EnergyPart, EnergyPart>;

    void fill(Parts& parts, const ComparisonSide& a, const ComparisonSide& b,
              const std::vector<Span>& elapsed, Instant startA, Instant startB) const
    {
        parts.first = energyPart(a, shifted(elapsed, startA.time_since_epoch()), m_widening);
        parts.second = energyPart(b, shifted(elapsed, startB.time_since_epoch()), m_widening);
    }

    Instant m_startA;
    Instant m_startB;
    Widening m_widening;
    std::vector<Span> m_common;
    Parts m_whole;
    Parts m_before;
    Parts m_crash;
};

std::pair<Figure, Figure> figuresFor(const MeasureRule& rule, const ComparisonSide& a,
                                     const ComparisonSide& b, const EnergyComparison& energies)
{
    if (rule.ofTemperature)
        return {temperatureMeasure(a, rule.id), temperatureMeasure(b, rule.id)};
    if (rule.id == MeasureId::effectivePerformance)
        return {performanceOf(a), performanceOf(b)};
    if (rule.id == MeasureId::parts)
        return {partsOf(a), partsOf(b)};
    return energies.figures(rule.id);
}

Bounded cumulative(const ComparisonSide& side, const std::vector<Span>& common, Instant start,
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
std::vector<Instant> curveInstants(const ComparisonSide& a, const ComparisonSide& b,
                                   const EnergyComparison& energies)
{
    const std::vector<Span>& common = energies.common();
    std::vector<Instant> instants;
    const auto add = [&](const ComparisonSide& side, Instant start) {
        for (const SpanEnergy& slot : side.figures->energy.betweenReadings)
            instants.push_back(slot.span.end - start.time_since_epoch());
    };
    add(a, energies.startA());
    add(b, energies.startB());
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

std::vector<RatioPoint> ratioCurve(const ComparisonSide& a, const ComparisonSide& b,
                                   const EnergyComparison& energies)
{
    std::vector<RatioPoint> curve;
    for (const Instant elapsed : curveInstants(a, b, energies)) {
        RatioPoint point;
        point.elapsedHours = hoursBetween(Instant{}, elapsed);
        point.a = cumulative(a, energies.common(), energies.startA(), elapsed, energies.widening());
        point.b = cumulative(b, energies.common(), energies.startB(), elapsed, energies.widening());
        point.ratio = ratioOf(point.a, point.b);
        curve.push_back(point);
    }
    return curve;
}

} // namespace

std::optional<Instant> alignedStart(const ComparisonSide& run,
                                    const std::optional<std::string>& fromStage)
{
    if (!fromStage)
        return run.input->span.start;
    for (const PlacedStage& stage : run.figures->judged.stages) {
        if (stage.label == *fromStage)
            return stage.span.start;
    }
    return std::nullopt;
}

std::vector<std::string> commonStages(const ComparisonSide& a, const ComparisonSide& b)
{
    std::vector<std::string> labels;
    for (const PlacedStage& stage : a.figures->judged.stages) {
        const bool listed = std::find(labels.begin(), labels.end(), stage.label) != labels.end();
        if (!listed && alignedStart(b, stage.label))
            labels.push_back(stage.label);
    }
    return labels;
}

RunComparison compareRuns(const ComparisonSide& a, const ComparisonSide& b,
                          const std::optional<std::string>& fromStage)
{
    const EnergyComparison energies(a, alignedStart(a, fromStage).value_or(a.input->span.start), b,
                                    alignedStart(b, fromStage).value_or(b.input->span.start));
    RunComparison comparison;
    for (const MeasureRule& rule : measureRules()) {
        const auto [left, right] = figuresFor(rule, a, b, energies);
        comparison.measures.push_back(completed(rule, left, right));
        const bool missed = missedStage(*a.figures, rule.id) || missedStage(*b.figures, rule.id);
        if (rule.ofTemperature && missed)
            comparison.measures.back().ahead.reset();
    }
    comparison.commonHours = totalMs(energies.common()) / msPerHour;
    comparison.notes = fairnessNotes(a, b, !energies.common().empty(), energies.widening());
    comparison.ratioCurve = ratioCurve(a, b, energies);
    return comparison;
}

} // namespace holdband::analysis
