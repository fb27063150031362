// Properties of any comparison: of two runs, of two setups, of their costs and of the judgement
// sheet.
#include "core/analysis/bounded.h"
#include "core/analysis/judgement.h"
#include "core/analysis/setup_comparison.h"
#include "core/analysis/total_cost.h"
#include "tests/analysis/comparison_sides.h"
#include "tests/properties/random_runs.h"

#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace holdband::test {
namespace {

using namespace analysis;

TrialSide randomSide(const std::string& meter)
{
    TrialSide side;
    Batch batch = randomBatch();
    side.input = runInput(batch, randomBeer(), 45, 0.25);
    side.input.ambient = randomBeer();
    side.input.ambientGap = std::chrono::minutes{45};
    side.input.setup = SetupEnergy({{meter, randomCurve(true), {}, {}, 0.01}});
    side.input.prices = {{side.input.span, 0.2}};
    side.parts = between(10, 500);
    return side;
}

bool same(const std::optional<double>& a, const std::optional<double>& b)
{
    return a.has_value() == b.has_value() && (!a || std::abs(*a - *b) < 1e-9);
}

bool opposite(const std::optional<Ahead>& one, const std::optional<Ahead>& other)
{
    if (!one || *one == Ahead::tooClose)
        return one == other;
    return other == (*one == Ahead::a ? Ahead::b : Ahead::a);
}

RC_GTEST_PROP(ComparisonProperties, SwappingTheSidesInvertsEverything, ())
{
    TrialSide a = randomSide("First");
    TrialSide b = randomSide(below(2) == 0 ? "First" : "Second");
    const RunComparison forth = compare(a, b);
    const RunComparison back = compare(b, a);
    RC_ASSERT(forth.commonHours == back.commonHours);
    RC_ASSERT(forth.notes.size() == back.notes.size());
    for (std::size_t i = 0; i < forth.measures.size(); ++i) {
        const Measure& one = forth.measures[i];
        const Measure& other = back.measures[i];
        RC_ASSERT(one.a == other.b);
        RC_ASSERT(one.b == other.a);
        RC_ASSERT(opposite(one.ahead, other.ahead));
        RC_ASSERT(one.difference.has_value() == other.difference.has_value());
        if (!one.difference)
            continue;
        RC_ASSERT(std::abs(one.difference->value + other.difference->value) < 1e-9);
        if (one.difference->low)
            RC_ASSERT(same(-*one.difference->low, other.difference->high));
    }
    for (std::size_t i = 0; i < forth.notes.size(); ++i) {
        RC_ASSERT(forth.notes[i].kind == back.notes[i].kind);
        RC_ASSERT(forth.notes[i].a == back.notes[i].b);
    }
}

RC_GTEST_PROP(ComparisonProperties, NobodyIsAheadWhereBoundsOverlap, ())
{
    TrialSide a = randomSide("First");
    TrialSide b = randomSide("Second");
    for (const Measure& measure : compare(a, b).measures) {
        for (const auto& figure : {measure.a, measure.b}) {
            if (figure && figure->low)
                RC_ASSERT(*figure->low <= figure->value + tiny);
            if (figure && figure->high)
                RC_ASSERT(figure->value <= *figure->high + tiny);
        }
        if (!measure.ahead || *measure.ahead == Ahead::tooClose)
            continue;
        const bool bySize = measure.rule.id == MeasureId::meanDeviation;
        const Bounded left = bySize ? sizeOf(*measure.a) : *measure.a;
        const Bounded right = bySize ? sizeOf(*measure.b) : *measure.b;
        const bool aIsLess = left.high && right.low && *left.high < *right.low;
        const bool bIsLess = right.high && left.low && *right.high < *left.low;
        RC_ASSERT(aIsLess != bIsLess);
        RC_ASSERT((*measure.ahead == Ahead::a) ==
                  (aIsLess == (measure.rule.better == Better::less)));
    }
}

/// The same curves with every reading × k; k is a power of two, so that nothing is rounded.
TrialSide withEnergyTimes(const TrialSide& side, const std::vector<MeterReading>& readings,
                          const std::string& meter, double k)
{
    MeterRegister record;
    record.readings = readings;
    record.resolution = Energy::kilowattHours(0.01 * k);
    for (MeterReading& reading : record.readings)
        reading.registerReading =
            Energy::kilowattHours(reading.registerReading.kilowattHours() * k);
    TrialSide scaledSide = side;
    scaledSide.input.setup = SetupEnergy({{meter, MeterCurve(record, {}), {}, {}, 0.01}});
    return scaledSide;
}

RC_GTEST_PROP(ComparisonProperties, ScalingBothEnergiesLeavesTheRatiosUnchanged, ())
{
    const TrialSide a = randomSide("First");
    const TrialSide b = randomSide("Second");
    const auto readingsA = randomReadings(true);
    const auto readingsB = randomReadings(true);
    const auto compared = [&](double k) {
        TrialSide left = withEnergyTimes(a, readingsA, "First", k);
        TrialSide right = withEnergyTimes(b, readingsB, "Second", k);
        return compare(left, right);
    };
    const double k = between(0, 1) == 0 ? 4.0 : 0.25;
    const RunComparison plain = compared(1.0);
    const RunComparison scaled_ = compared(k);
    const auto alike = [](const std::optional<double>& one, const std::optional<double>& other) {
        return one.has_value() == other.has_value() &&
               (!one || std::abs(*one - *other) <= 1e-9 * std::max(1.0, std::abs(*one)));
    };
    for (std::size_t i = 0; i < plain.measures.size(); ++i) {
        const Measure& one = plain.measures[i];
        const Measure& other = scaled_.measures[i];
        RC_ASSERT(one.ahead == other.ahead);
        RC_ASSERT(one.ratio.has_value() == other.ratio.has_value());
        if (!one.ratio || one.rule.id == MeasureId::effectivePerformance)
            continue;
        RC_ASSERT(alike(one.ratio->value, other.ratio->value));
        RC_ASSERT(alike(one.ratio->low, other.ratio->low));
        RC_ASSERT(alike(one.ratio->high, other.ratio->high));
    }
}

RC_GTEST_PROP(ComparisonProperties, MoreReadingsNeverWidenTheBounds, ())
{
    TrialSide a = randomSide("First");
    TrialSide b = randomSide("Second");
    // Readings of a steady or stepping load that the register shows without rounding.
    std::vector<MeterReading> all;
    int hundredths = 0;
    for (int i = 0; i <= 12; ++i) {
        all.push_back(meterReading(i * 1.5, hundredths / 100.0));
        hundredths += between(0, 80);
    }
    std::vector<MeterReading> some;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (i == 0 || i + 1 == all.size() || below(2) == 0)
            some.push_back(all[i]);
    }
    const auto energies = [&](const std::vector<MeterReading>& readings) {
        TrialSide side = withEnergyTimes(a, readings, "First", 1.0);
        return compare(side, b).measures;
    };
    const auto few = energies(some);
    const auto many_ = energies(all);
    for (const std::size_t i : {0, 1, 2, 5}) { // energies and the cost
        const auto& wide = few[i].a;
        const auto& narrow = many_[i].a;
        RC_ASSERT(wide.has_value() == narrow.has_value());
        if (!wide || !wide->bounded())
            continue;
        RC_ASSERT(*narrow->low >= *wide->low - tiny);
        RC_ASSERT(*narrow->high <= *wide->high + tiny);
    }
}

std::vector<BatchSummary> randomBatches()
{
    std::vector<BatchSummary> batches(static_cast<std::size_t>(between(1, 6)));
    for (BatchSummary& batch : batches) {
        batch.meterUncertainty = between(0, 3) / 100.0;
        batch.facts.meters = {below(2) == 0 ? "One" : "Other"};
        for (std::size_t i = 0; i < measureRules().size(); ++i) {
            batch.measures.push_back(below(5) == 0 ? std::nullopt
                                                   : std::optional(between(0, 400) / 100.0));
            batch.missed.push_back(below(9) == 0);
            batch.sensorUncertainty.push_back(std::nullopt);
            if (below(5) > 0)
                batch.sensorUncertainty.back() = {between(0, 40) / 100.0, between(0, 40) / 100.0};
        }
        batch.measures[static_cast<std::size_t>(MeasureId::insideShare)] = between(0, 100) / 100.0;
    }
    return batches;
}

RC_GTEST_PROP(SetupProperties, SwappingTheSidesInvertsEverything, ())
{
    const auto a = randomBatches();
    const auto b = randomBatches();
    const auto forth = compareSetups(a, b);
    const auto back = compareSetups(b, a);
    for (std::size_t i = 0; i < forth.size(); ++i) {
        RC_ASSERT(forth[i].a == back[i].b);
        RC_ASSERT(forth[i].b == back[i].a);
        RC_ASSERT(opposite(forth[i].ahead, back[i].ahead));
        RC_ASSERT(forth[i].difference.has_value() == back[i].difference.has_value());
        if (forth[i].difference)
            RC_ASSERT(std::abs(forth[i].difference->value + back[i].difference->value) < 1e-9);
    }
}

RC_GTEST_PROP(SetupProperties, NobodyIsAheadWhereIntervalsOverlap, ())
{
    const auto a = randomBatches();
    const auto b = randomBatches();
    for (const Measure& measure : compareSetups(a, b)) {
        for (const auto& figure : {measure.a, measure.b}) {
            if (!figure || !figure->bounded())
                continue;
            RC_ASSERT(*figure->low <= figure->value && figure->value <= *figure->high);
            if (measure.rule.id != MeasureId::meanDeviation)
                RC_ASSERT(*figure->low >= 0.0);
        }
        if (!measure.ahead || *measure.ahead == Ahead::tooClose)
            continue;
        const bool bySize = measure.rule.id == MeasureId::meanDeviation;
        const Bounded left = bySize ? sizeOf(*measure.a) : *measure.a;
        const Bounded right = bySize ? sizeOf(*measure.b) : *measure.b;
        const bool aIsLess = *left.high < *right.low;
        RC_ASSERT(aIsLess || *right.high < *left.low);
        RC_ASSERT((*measure.ahead == Ahead::a) ==
                  (aIsLess == (measure.rule.better == Better::less)));
    }
}

RC_GTEST_PROP(CrossingProperties, SwappingTheSidesInvertsIt, ())
{
    const auto side = [] {
        const double value = between(1, 50) / 10.0;
        const double doubt = between(0, 30) / 10.0;
        return SideCost{between(0, 300) * 1.0, {value, value - doubt, value + doubt}};
    };
    const SideCost a = side();
    const SideCost b = side();
    const Crossing forth = crossingOf(a, b);
    const Crossing back = crossingOf(b, a);
    RC_ASSERT(forth.kind == back.kind);
    RC_ASSERT(same(forth.batches, back.batches));
    RC_ASSERT(same(forth.earliest, back.earliest));
    RC_ASSERT(same(forth.latest, back.latest));
    RC_ASSERT(forth.sure == back.sure);
    RC_ASSERT(opposite(forth.cheaperFirst, back.cheaperFirst));
    if (forth.kind != CrossingKind::crosses)
        return;
    RC_ASSERT(std::abs(a.after(forth.batches) - b.after(forth.batches)) < 1e-6);
    RC_ASSERT(!forth.earliest || *forth.earliest <= forth.batches + tiny);
    RC_ASSERT(!forth.latest || *forth.latest >= forth.batches - tiny);
}

RC_GTEST_PROP(JudgementProperties, TheLeadChangesAtTheWeightThatIsNamed, ())
{
    std::vector<WeighedCriterion> criteria(static_cast<std::size_t>(between(1, 7)));
    for (WeighedCriterion& criterion : criteria) {
        criterion.weight = between(0, 20) / 4.0;
        if (below(6) > 0)
            criterion.scores = Scores{between(4, 20) / 4.0, between(4, 20) / 4.0};
    }
    const JudgedSheet sheet = judge(criteria);
    for (std::size_t i = 0; i < criteria.size(); ++i) {
        const Turn& turn = sheet.turns[i];
        auto others = criteria;
        others.erase(others.begin() + static_cast<std::ptrdiff_t>(i));
        const JudgedSheet without = judge(others);
        if (criteria[i].scores && criteria[i].weight > 0.0 && without.totals)
            RC_ASSERT(turn.byRemoval == (without.lead != sheet.lead));
        if (!turn.weightToTie)
            continue;
        auto beyond = criteria;
        const bool more = *turn.weightToTie > criteria[i].weight;
        beyond[i].weight = more ? *turn.weightToTie + 0.01 : *turn.weightToTie - 0.01;
        if (beyond[i].weight < 0.0)
            continue;
        const JudgedSheet turned = judge(beyond);
        RC_ASSERT(turned.lead != sheet.lead);
    }
}

} // namespace
} // namespace holdband::test
