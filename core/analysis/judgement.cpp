#include "core/analysis/judgement.h"

#include "core/analysis/bounded.h"

#include <algorithm>
#include <cmath>

namespace holdband::analysis {

namespace {

constexpr double sameScore = 1e-9;

/// The score of the side that is not ahead: 5 divided by how many times worse it is.
double scoreOfOther(double ahead, double other, Better better)
{
    const double top = better == Better::less ? ahead : other;
    const double bottom = better == Better::less ? other : ahead;
    if (!(bottom > 0.0))
        return leastScore;
    return std::clamp(mostScore * top / bottom, leastScore, mostScore);
}

Ahead leadOf(double difference)
{
    if (std::abs(difference) < sameScore)
        return Ahead::tooClose;
    return difference > 0.0 ? Ahead::a : Ahead::b;
}

struct Sums {
    double weight = 0.0;
    Scores scores{0.0, 0.0};

    double difference() const { return scores.a - scores.b; }
    void add(const WeighedCriterion& criterion, double sign = 1.0)
    {
        weight += sign * criterion.weight;
        scores.a += sign * criterion.weight * criterion.scores->a;
        scores.b += sign * criterion.weight * criterion.scores->b;
    }
};

Turn turnOf(const WeighedCriterion& criterion, const Sums& all)
{
    Turn turn;
    Sums others = all;
    others.add(criterion, -1.0);
    const Ahead lead = leadOf(all.difference());
    const bool anyLeft = others.weight > sameScore;
    turn.byRemoval = anyLeft && criterion.weight > 0.0 && leadOf(others.difference()) != lead;
    const double own = criterion.scores->a - criterion.scores->b;
    if (!anyLeft || lead == Ahead::tooClose || std::abs(own) < sameScore)
        return turn;
    const double tie = -others.difference() / own;
    if (tie >= 0.0)
        turn.weightToTie = tie;
    return turn;
}

} // namespace

std::optional<Scores> scoresOf(const Measure& measure)
{
    if (!measure.a || !measure.b)
        return std::nullopt;
    if (!measure.ahead || *measure.ahead == Ahead::tooClose)
        return Scores{};
    const bool bySize = measure.rule.id == MeasureId::meanDeviation;
    const double a = bySize ? sizeOf(*measure.a).value : measure.a->value;
    const double b = bySize ? sizeOf(*measure.b).value : measure.b->value;
    if (*measure.ahead == Ahead::a)
        return Scores{mostScore, scoreOfOther(a, b, measure.rule.better)};
    return Scores{scoreOfOther(b, a, measure.rule.better), mostScore};
}

JudgedSheet judge(const std::vector<WeighedCriterion>& criteria)
{
    JudgedSheet sheet;
    Sums all;
    for (const WeighedCriterion& criterion : criteria) {
        if (criterion.scores)
            all.add(criterion);
    }
    sheet.turns.resize(criteria.size());
    if (!(all.weight > 0.0))
        return sheet;
    sheet.totals = Scores{all.scores.a / all.weight, all.scores.b / all.weight};
    sheet.lead = leadOf(all.difference());
    for (std::size_t i = 0; i < criteria.size(); ++i) {
        if (criteria[i].scores)
            sheet.turns[i] = turnOf(criteria[i], all);
    }
    return sheet;
}

} // namespace holdband::analysis
