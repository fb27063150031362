#include "core/analysis/forecast.h"

#include "core/analysis/lines_without.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <limits>
#include <numbers>
#include <string>
#include <string_view>
#include <unordered_set>

namespace holdband::analysis {

namespace {

using Planned = ByPart<std::optional<PartConditions>>;

constexpr double outsideAllowedK = 2.0;
constexpr double outsideFactor = 1.5;

double square(double value)
{
    return value * value;
}

using Names = std::unordered_set<std::string_view>;

Names namesOf(const std::vector<PastBatch>& batches)
{
    Names names;
    for (const PastBatch& batch : batches)
        names.insert(batch.batch);
    return names;
}

bool anyOf(const BatchPoint& pair, const Names& names)
{
    return std::any_of(pair.of.begin(), pair.of.end(),
                       [&](const std::string& batch) { return names.contains(batch); });
}

std::vector<BatchPoint> pairsOf(const ForecastBasis& basis)
{
    const Names names = namesOf(basis.batches);
    std::vector<BatchPoint> pairs;
    std::copy_if(basis.pairs.begin(), basis.pairs.end(), std::back_inserter(pairs),
                 [&](const BatchPoint& pair) { return anyOf(pair, names); });
    return pairs;
}

std::optional<LinearFit> lineThrough(const std::vector<BatchPoint>& pairs)
{
    std::vector<FitPoint> points;
    for (const BatchPoint& pair : pairs)
        points.push_back(pair.point);
    return fitLine(points);
}

double lineKwh(const LinearFit& line, const PartConditions& part)
{
    return linePower(line, part.liftK) * part.hours / 1000.0;
}

/// How the heat of a part is counted: its own kWh, or 1 for each batch where any is unknown.
struct HeatRule {
    bool known = true;

    double of(const PartConditions& part) const { return known ? *part.heatKwh : 1.0; }
};

HeatRule heatRule(const std::vector<PastBatch>& batches, const PartConditions& planned,
                  BatchPart part)
{
    bool known = planned.heatKwh.has_value();
    double sum = 0.0;
    for (const PastBatch& batch : batches) {
        if (!batch.parts[part])
            continue;
        known = known && batch.parts[part]->conditions.heatKwh;
        sum += batch.parts[part]->conditions.heatKwh.value_or(0.0);
    }
    return {known && sum > 0.0};
}

constexpr std::size_t nobody = std::numeric_limits<std::size_t>::max();

/// Without batch `left`. Absent where no other one counts in the part.
std::optional<double> extraPerHeat(const std::vector<PastBatch>& batches, BatchPart part,
                                   const LinearFit& line, const HeatRule& rule, std::size_t left)
{
    double extra = 0.0;
    double heat = 0.0;
    for (std::size_t i = 0; i < batches.size(); ++i) {
        const auto& past = batches[i].parts[part];
        if (!past || i == left)
            continue;
        extra += past->kwh - lineKwh(line, past->conditions);
        heat += rule.of(past->conditions);
    }
    return heat > 0.0 ? std::optional(std::max(0.0, extra / heat)) : std::nullopt;
}

/// Line and heat of one part, without an interval.
std::optional<PartForecast> estimate(const std::vector<PastBatch>& batches, BatchPart part,
                                     const LinearFit& line, const PartConditions& conditions,
                                     const HeatRule& rule, std::size_t left = nobody)
{
    const std::optional<double> extra = extraPerHeat(batches, part, line, rule, left);
    if (!extra)
        return std::nullopt;
    PartForecast made;
    made.lineKwh = lineKwh(line, conditions);
    made.extraPerHeat = *extra;
    made.heatKnown = rule.known;
    made.extraKwh = *extra * rule.of(conditions);
    made.energy.kwh = made.lineKwh + made.extraKwh;
    return made;
}

/// Everything that the intervals of the parts and of the total are made from.
struct Sources {
    const ForecastBasis& basis;
    const ForecastPlan& plan;
    const std::vector<BatchPoint>& pairs;
    LinearFit line;
    ByPart<HeatRule> rules;
    LinesWithout lines;
    std::vector<std::vector<std::size_t>> groups; ///< of the pairs
};

/// The parts of the plan that a figure covers: one of them, or all.
Planned only(const ForecastPlan& plan, BatchPart part)
{
    Planned one;
    one[part] = plan.parts[part];
    return one;
}

/// ln(came / forecast from the others), for one batch; absent where nothing was used or the others
/// have no forecast.
std::optional<double> leaveOneOutError(const Sources& from, const Planned& parts, std::size_t which)
{
    const PastBatch& left = from.basis.batches[which];
    const double came = left.kwh(parts);
    const std::optional<LinearFit> line = from.lines.without(which);
    if (!line || !(came > 0.0))
        return std::nullopt;
    double kwh = 0.0;
    for (const BatchPart part : bothParts) {
        if (!parts[part])
            continue;
        const auto made = estimate(from.basis.batches, part, *line, left.parts[part]->conditions,
                                   from.rules[part], which);
        if (!made)
            return std::nullopt;
        kwh += made->energy.kwh;
    }
    return std::log(came / kwh);
}

/// e²: the doubt of the line's slope and of the room, as a squared fraction of the forecast.
double lineError(const Sources& from, const Planned& parts, double kwh)
{
    double slope = 0.0;
    double room = 0.0;
    for (const BatchPart part : bothParts) {
        if (!parts[part])
            continue;
        const double kiloHours = parts[part]->hours / 1000.0;
        slope += from.line.residualSd * std::abs(parts[part]->liftK - from.line.meanX) * kiloHours /
                 std::sqrt(from.line.spreadX);
        room += from.plan.roomDoubtK * from.line.slope * kiloHours;
    }
    return (square(slope) + square(room)) / square(kwh);
}

bool liftOutside(const Sources& from, const Planned& parts)
{
    const auto [least, most] = std::minmax_element(
        from.pairs.begin(), from.pairs.end(),
        [](const BatchPoint& a, const BatchPoint& b) { return a.point.x < b.point.x; });
    return std::any_of(bothParts.begin(), bothParts.end(),
                       [&, low = least->point.x, high = most->point.x](BatchPart part) {
                           return parts[part] && (parts[part]->liftK < low - outsideAllowedK ||
                                                  parts[part]->liftK > high + outsideAllowedK);
                       });
}

/// The groups of section 8.2 that hold one of the batches.
std::size_t groupsOf(const Sources& from, const Names& batches)
{
    const auto held = std::count_if(from.groups.begin(), from.groups.end(), [&](const auto& group) {
        return std::any_of(group.begin(), group.end(),
                           [&](std::size_t i) { return anyOf(from.pairs[i], batches); });
    });
    return std::max<std::size_t>(1, static_cast<std::size_t>(held));
}

ModeratedSpread spreadOf(const Sources& from, const Planned& parts, double assumedVariance,
                         const std::vector<std::size_t>& counted)
{
    double squares = 0.0;
    std::size_t errors = 0;
    for (const std::size_t i : counted) {
        const std::optional<double> error = leaveOneOutError(from, parts, i);
        if (!error)
            continue;
        squares += square(*error);
        ++errors;
    }
    const auto n = static_cast<double>(counted.size());
    return moderatedSpread(assumedVariance, square((n - 1.0) / n) * squares, errors);
}

/// The interval of `kwh`, forecast for the given parts. `assumed` is the SD for it.
EnergyForecast withInterval(const Sources& from, const Planned& parts, double kwh, double assumed)
{
    EnergyForecast made;
    made.kwh = kwh;
    std::vector<std::size_t> counted;
    Names names;
    for (std::size_t i = 0; i < from.basis.batches.size(); ++i) {
        if (!from.basis.batches[i].counts(parts))
            continue;
        counted.push_back(i);
        names.insert(from.basis.batches[i].batch);
    }
    made.batches = counted.size();
    made.groups = groupsOf(from, names);
    made.outside = liftOutside(from, parts);
    if (!(kwh > 0.0)) {
        made.halfWidth = std::numeric_limits<double>::infinity();
        return made;
    }
    const double resolution = square(from.basis.resolutionKwh / kwh) / 6.0;
    made.spread = counted.empty() ? moderatedSpread(square(assumed) + resolution, 0.0, 0)
                                  : spreadOf(from, parts, square(assumed) + resolution, counted);
    made.lineError2 = lineError(from, parts, kwh);
    const double share = 1.0 + 1.0 / static_cast<double>(made.groups);
    made.halfWidth = forecastQuantile(made.spread) *
                     std::sqrt(made.spread.variance * share + made.lineError2) *
                     (made.outside ? outsideFactor : 1.0);
    return made;
}

/// Absent where one of the planned parts has no forecast.
std::optional<double> totalKwh(const Forecast& made, const ForecastPlan& plan)
{
    double sum = 0.0;
    bool any = false;
    for (const BatchPart part : bothParts) {
        if (!plan.parts[part])
            continue;
        if (!made.parts[part])
            return std::nullopt;
        sum += made.parts[part]->energy.kwh;
        any = true;
    }
    return any ? std::optional(sum) : std::nullopt;
}

} // namespace

double EnergyForecast::low() const
{
    return kwh * std::exp(-halfWidth);
}

double EnergyForecast::high() const
{
    return kwh > 0.0 ? kwh * std::exp(halfWidth) : std::numeric_limits<double>::infinity();
}

bool EnergyForecast::refused() const
{
    return !(halfWidth <= std::numbers::ln2);
}

double linePower(const LinearFit& line, double liftK)
{
    return std::max(0.0, line.at(liftK));
}

ForecastBasis without(const ForecastBasis& basis, std::size_t batch)
{
    ForecastBasis others = basis;
    others.batches.erase(others.batches.begin() + static_cast<std::ptrdiff_t>(batch));
    others.pairs = pairsOf(others);
    return others;
}

Forecast forecast(const ForecastBasis& basis, const ForecastPlan& plan)
{
    Forecast made;
    if (basis.batches.empty())
        return made;
    const Names names = namesOf(basis.batches);
    const bool allCount = std::all_of(basis.pairs.begin(), basis.pairs.end(),
                                      [&](const BatchPoint& pair) { return anyOf(pair, names); });
    const std::vector<BatchPoint> some = allCount ? std::vector<BatchPoint>() : pairsOf(basis);
    const std::vector<BatchPoint>& pairs = allCount ? basis.pairs : some;
    made.line = lineThrough(pairs);
    if (!made.line) {
        made.lack = ForecastLack::noLine;
        return made;
    }
    LinesWithout lines(basis.batches, pairs);
    auto groups = batchGroups(pairs);
    Sources from{basis, plan, pairs, *made.line, {}, std::move(lines), std::move(groups)};
    const AssumedSpread& assumed = assumedSpreadOf(basis.shared);
    for (const BatchPart part : bothParts) {
        if (!plan.parts[part])
            continue;
        from.rules[part] = heatRule(basis.batches, *plan.parts[part], part);
        auto& figure = made.parts[part];
        figure = estimate(basis.batches, part, from.line, *plan.parts[part], from.rules[part]);
        if (figure)
            figure->energy = withInterval(from, only(plan, part), figure->energy.kwh, assumed.part);
    }
    if (const std::optional<double> kwh = totalKwh(made, plan)) {
        made.total = withInterval(from, plan.parts, *kwh, assumed.total);
        made.lack = made.total->refused() ? ForecastLack::tooLittle : ForecastLack::none;
    }
    return made;
}

} // namespace holdband::analysis
