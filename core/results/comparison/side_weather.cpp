// What each side would draw in the same weather.
#include "core/analysis/bounded.h"
#include "core/results/comparison/side_models.h"

namespace holdband::results {

using analysis::LiftModel;

namespace {

/// Absent without any pair.
std::optional<double> meanLift(const LiftModel& model)
{
    double sum = 0.0;
    for (const analysis::WeatherPair& pair : model.pairs)
        sum += pair.liftK * pair.hours();
    return model.pairs.empty() ? std::nullopt : std::optional(sum / model.hours());
}

/// The user's hold, or the mean of both; absent if no lift is known.
std::optional<analysis::ReferenceHold> holdOf(const SideBySide& review, const SidePairs& a,
                                              const SidePairs& b)
{
    const Weighing& weighing = review.weighing;
    const auto liftA = meanLift(review.weather.a.model);
    const auto liftB = meanLift(review.weather.b.model);
    analysis::ReferenceHold hold;
    hold.hours = weighing.referenceHours ? weighing.referenceHours->count()
                                         : (a.meanHours + b.meanHours) / 2.0;
    if (weighing.referenceLift)
        hold.liftK = weighing.referenceLift->kelvins();
    else if (liftA && liftB)
        hold.liftK = (*liftA + *liftB) / 2.0;
    else if (liftA || liftB)
        hold.liftK = liftA ? *liftA : *liftB;
    else
        return std::nullopt;
    return hold;
}

void compareSides(SameWeather& weather)
{
    weather.ahead = analysis::aheadInSameWeather(weather.a.model, weather.a.atReference,
                                                 weather.b.model, weather.b.atReference);
    const analysis::Bounded a = notNegative(weather.a.atReference->watts);
    const analysis::Bounded b = notNegative(weather.b.atReference->watts);
    weather.difference = analysis::differenceOf(a, b);
    weather.ratio = analysis::ratioOf(a, b);
}

/// The pairs move out of `pairs`.
void fillSide(SideModel& side, SidePairs& pairs)
{
    side.hasMeter = pairs.hasMeter;
    side.hasAmbient = pairs.hasAmbient;
    side.model = analysis::liftModel(std::move(pairs.pairs));
}

} // namespace

void addWeather(SideBySide& review, SidePairs a, SidePairs b)
{
    SameWeather& weather = review.weather;
    fillSide(weather.a, a);
    fillSide(weather.b, b);
    weather.liftIsMean = !review.weighing.referenceLift;
    weather.hoursAreMean = !review.weighing.referenceHours;
    weather.hold = holdOf(review, a, b);
    if (!weather.hold)
        return;
    for (SideModel* side : {&weather.a, &weather.b})
        side->atReference = analysis::atReference(side->model, *weather.hold);
    weather.any = weather.a.atReference && weather.b.atReference;
    if (weather.any)
        compareSides(weather);
}

} // namespace holdband::results
