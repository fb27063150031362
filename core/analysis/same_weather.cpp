#include "core/analysis/same_weather.h"

#include <algorithm>
#include <limits>
#include <set>

namespace holdband::analysis {

namespace {

Interval95 scaled(const Interval95& interval, double factor)
{
    return {interval.value * factor, interval.halfWidth * factor};
}

/// The instants at which a stage's hold time begins and ends, merged over the stages.
std::vector<Span> holdSpans(const JudgedBatch& judged)
{
    std::vector<Span> spans;
    for (std::size_t i = 0; i < judged.stages.size(); ++i) {
        const Span stage = judged.stages[i].span;
        const double from = judged.asPlanned.stages[i].holdFromMs;
        spans.push_back({stage.start + toMilliseconds(Hours{from / msPerHour}), stage.end});
    }
    return unite(std::move(spans));
}

bool within(const std::vector<Span>& spans, const Span& part)
{
    return std::any_of(spans.begin(), spans.end(), [&](const Span& span) {
        return span.start <= part.start && part.end <= span.end;
    });
}

/// A meter while it is in service for the setup.
struct ServingCurve {
    const MeterCurve* curve;
    Span service;
};

std::vector<ServingCurve> servingCurves(const SetupEnergy& setup)
{
    std::vector<ServingCurve> curves;
    for (const EnergySource& source : setup.sources()) {
        if (const auto* curve = std::get_if<MeterCurve>(&source.curve))
            curves.push_back(
                {curve,
                 {source.from.value_or(Instant::min()), source.to.value_or(Instant::max())}});
    }
    return curves;
}

/// Whether every pair of the curve that touches the span is plain.
bool plainOver(const ServingCurve& serving, Span span)
{
    for (std::size_t i = 1; i < serving.curve->size(); ++i) {
        const Span pair{serving.curve->at(i - 1), serving.curve->at(i)};
        if (!intersection(pair, span).empty() &&
            serving.curve->pairBefore(i) != MeterCurve::Pair::plain)
            return false;
    }
    return true;
}

bool servesAll(const ServingCurve& serving, Span span)
{
    return serving.service.start <= span.start && span.end <= serving.service.end;
}

bool servesSome(const ServingCurve& serving, Span span)
{
    return !intersection(serving.service, span).empty();
}

/// With several meters at once the first one's readings are used, and all must be plain during the
/// span.
bool usableInAllMeters(const std::vector<ServingCurve>& curves, std::size_t which, Span span)
{
    for (std::size_t i = 0; i < curves.size(); ++i) {
        if (i == which || !servesSome(curves[i], span))
            continue;
        if (i < which || !servesAll(curves[i], span) || !plainOver(curves[i], span))
            return false;
    }
    return true;
}

const QuietPair* quietAt(const SetupRun& run, const Span& span)
{
    if (!run.quiet)
        return nullptr;
    const auto found =
        std::lower_bound(run.quiet->begin(), run.quiet->end(), span.start,
                         [](const QuietPair& pair, Instant at) { return pair.span.start < at; });
    return found != run.quiet->end() && found->span == span ? &*found : nullptr;
}

/// The pair with its lift, if all runs in it are usable.
std::optional<WeatherPair> pairOf(const Span& span, const std::vector<SetupRun>& runs)
{
    WeatherPair pair;
    pair.span = span;
    bool wanted = false;
    for (const SetupRun& run : runs) {
        if (intersection(run.span, span).empty())
            continue;
        const QuietPair* quiet = quietAt(run, span);
        if (!quiet)
            return std::nullopt;
        wanted = wanted || run.wanted;
        pair.liftK += quiet->liftK;
        pair.of.push_back(run.batch);
    }
    if (!wanted)
        return std::nullopt;
    pair.liftK /= static_cast<double>(pair.of.size());
    return pair;
}

} // namespace

std::size_t LiftModel::batches() const
{
    std::set<std::string> names;
    for (const WeatherPair& pair : pairs)
        names.insert(pair.of.begin(), pair.of.end());
    return names.size();
}

double LiftModel::hours() const
{
    double sum = 0.0;
    for (const WeatherPair& pair : pairs)
        sum += pair.hours();
    return sum;
}

LiftModel liftModel(std::vector<WeatherPair> pairs)
{
    LiftModel model;
    model.pairs = std::move(pairs);
    std::vector<FitPoint> points;
    for (const WeatherPair& pair : model.pairs)
        points.push_back({pair.liftK, pair.watts, pair.hours()});
    if (!points.empty()) {
        const auto [least, most] =
            std::minmax_element(points.begin(), points.end(),
                                [](const FitPoint& a, const FitPoint& b) { return a.x < b.x; });
        model.leastLift = least->x;
        model.mostLift = most->x;
    }
    std::vector<BatchPoint> byBatch;
    for (std::size_t i = 0; i < points.size(); ++i)
        byBatch.push_back({points[i], model.pairs[i].of});
    model.interval = LiftInterval::of(byBatch);
    if (!model.fit())
        model.cautions.push_back(ModelCaution::noLine);
    if (points.size() < pairsNeeded)
        model.cautions.push_back(ModelCaution::fewPairs);
    if (model.fit() && model.batches() < batchesNeeded)
        model.cautions.push_back(ModelCaution::fewBatches);
    else if (model.interval && model.interval->source() == SpreadSource::assumed)
        model.cautions.push_back(ModelCaution::fewGroups);
    if (model.mostLift - model.leastLift < liftRangeNeeded)
        model.cautions.push_back(ModelCaution::narrowLift);
    const auto scatter = model.fit() ? model.fit()->cvRmse() : std::nullopt;
    if (model.fit() && scatter.value_or(std::numeric_limits<double>::infinity()) > scatterAllowed)
        model.cautions.push_back(ModelCaution::scattered);
    return model;
}

std::optional<AtReference> atReference(const LiftModel& model, const ReferenceHold& hold)
{
    if (!model.interval)
        return std::nullopt;
    AtReference at;
    at.watts = model.interval->meanResponse(hold.liftK);
    at.oneMoreWatts = model.interval->oneMoreBatch(hold.liftK);
    at.kwh = scaled(at.watts, hold.hours / 1000.0);
    at.oneMoreKwh = scaled(at.oneMoreWatts, hold.hours / 1000.0);
    at.outside = hold.liftK < model.leastLift || hold.liftK > model.mostLift;
    return at;
}

Bounded notNegative(const Interval95& interval)
{
    return {std::max(0.0, interval.value), std::max(0.0, interval.low()),
            std::max(0.0, interval.high())};
}

std::optional<Ahead> aheadInSameWeather(const LiftModel& a, const std::optional<AtReference>& atA,
                                        const LiftModel& b, const std::optional<AtReference>& atB)
{
    if (!a.decides() || !b.decides() || !atA || !atB)
        return std::nullopt;
    return whoIsAhead(notNegative(atA->watts), notNegative(atB->watts), Better::less);
}

std::vector<QuietPair> quietPairs(const RunInput& input, const JudgedBatch& judged,
                                  const std::vector<Span>& between, Milliseconds quietAfter)
{
    std::vector<QuietPair> pairs;
    if (input.ambient.empty())
        return pairs;
    const std::vector<Span> hold = holdSpans(judged);
    for (const Span& span : between) {
        if (span.start < input.batch.pitched + quietAfter || !within(hold, span))
            continue;
        const Lift lift = liftOver(input.ambient, input.ambientGap, input.judging.beer,
                                   input.judging.gapLimit, {span});
        if (lift.knownEnough())
            pairs.push_back({span, lift.coolingKh / lift.knownHours});
    }
    return pairs;
}

std::vector<Span> timesBetweenReadings(const SetupEnergy& setup)
{
    const std::vector<ServingCurve> curves = servingCurves(setup);
    std::vector<Span> times;
    for (std::size_t which = 0; which < curves.size(); ++which) {
        const ServingCurve& own = curves[which];
        for (std::size_t i = 1; i < own.curve->size(); ++i) {
            const Span span{own.curve->at(i - 1), own.curve->at(i)};
            if (servesAll(own, span) && own.curve->pairBefore(i) == MeterCurve::Pair::plain &&
                usableInAllMeters(curves, which, span))
                times.push_back(span);
        }
    }
    std::sort(times.begin(), times.end(),
              [](const Span& a, const Span& b) { return a.start < b.start; });
    return times;
}

std::vector<WeatherPair> weatherPairs(const SetupEnergy& setup, const std::vector<Span>& between,
                                      const std::vector<SetupRun>& runs)
{
    std::vector<WeatherPair> pairs;
    for (const Span& span : between) {
        std::optional<WeatherPair> pair = pairOf(span, runs);
        if (!pair)
            continue;
        const EnergyFigure energy = setup.over(span);
        if (energy.metered != std::vector{span})
            continue;
        pair->watts = energy.kwh * 1000.0 / span.hours() / static_cast<double>(pair->of.size());
        pairs.push_back(std::move(*pair));
    }
    return pairs;
}

} // namespace holdband::analysis
