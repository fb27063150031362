// What each side would draw in the same weather, in words.
#include "core/analysis/bounded.h"
#include "core/results/comparison/side_models.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <cmath>

namespace holdband::results {

using analysis::Ahead;
using analysis::Interval95;
using analysis::LiftModel;
using analysis::ModelCaution;

namespace {

std::string wattsText(const analysis::Bounded& watts, const SideFormat& manner)
{
    const int decimals = watts.value < 10.0 ? 1 : 0;
    return manner.power(watts.value, decimals) + manner.bounds(watts, decimals);
}

std::string intervalText(const Interval95& interval, int decimals, const SideFormat& manner)
{
    return manner.fixed(interval.value, decimals) + " W (" +
           manner.range(interval.low(), interval.high(), decimals) + ")";
}

std::string warmer(double liftK, const SideFormat& manner)
{
    return Phrase::tr("the room %1 warmer than the beer").with(manner.difference(liftK, 1));
}

double hoursOf(const LiftModel& model)
{
    double hours = 0.0;
    for (const analysis::WeatherPair& pair : model.pairs)
        hours += pair.hours();
    return hours;
}

std::string timesText(std::size_t count)
{
    return Phrase::counted("%n times between readings", "%n time between readings", count);
}

std::string liftRange(const LiftModel& model, const SideFormat& manner)
{
    return manner.fixed(model.leastLift * manner.degrees(), 1) + " – " +
           manner.difference(model.mostLift, 1);
}

void addFigures(ModelWords& side, const SideFormat& manner)
{
    const LiftModel& model = side.model;
    if (model.pairs.empty())
        return;
    side.figures.push_back(Phrase::tr("%1, %2 together, with the room %3 warmer than the beer")
                               .with(timesText(model.pairs.size()), manner.duration(hoursOf(model)),
                                     liftRange(model, manner)));
    if (!model.fit)
        return;
    const Interval95 slope = model.fit->slopeInterval();
    const Interval95 perDegree{slope.value / manner.degrees(), slope.halfWidth / manner.degrees()};
    side.figures.push_back(
        Phrase::tr("with the room no warmer than the beer it draws %1, and for each %2 that the "
                   "room is warmer %3 more")
            .with(intervalText(model.fit->interceptInterval(), 1, manner), manner.degree(),
                  intervalText(perDegree, 2, manner)));
    std::string fit = Phrase::tr("the line accounts for %1 of how the power varies (R²)")
                          .with(manner.share(model.fit->rSquared));
    if (const auto scatter = model.fit->cvRmse())
        fit += Phrase::tr("; the points are off it by %1 of the mean power (CV(RMSE))")
                   .with(manner.share(*scatter));
    side.figures.push_back(fit);
    if (side.atReference) {
        const analysis::Bounded one = analysis::notNegative(side.atReference->oneMoreWatts);
        side.figures.push_back(
            Phrase::tr("one more batch would draw between %1 and %2 in that weather")
                .with(manner.fixed(*one.low, 0), manner.power(*one.high)));
    }
}

std::string cautionText(const ModelWords& side, ModelCaution caution, const SidePairs& pairs,
                        const SideFormat& manner)
{
    const LiftModel& model = side.model;
    switch (caution) {
    case ModelCaution::noLine:
        if (!pairs.hasMeter)
            return Phrase::tr("%1: no meter was read twice, so there is no line").with(side.side);
        if (!pairs.hasAmbient)
            return Phrase::tr("%1: the room was not measured, so there is no line").with(side.side);
        return Phrase::tr("%1: %2 can be used, too few to draw a line through")
            .with(side.side, timesText(model.pairs.size()));
    case ModelCaution::fewPairs:
        return Phrase::tr("%1: only %2 can be used, and %3 are needed, so this decides nothing")
            .with(side.side, timesText(model.pairs.size()), std::to_string(analysis::pairsNeeded));
    case ModelCaution::fewBatches:
        return Phrase::tr("%1: fewer than %2 took part, so this decides nothing")
            .with(side.side, batchCount(analysis::batchesNeeded));
    case ModelCaution::narrowLift:
        return Phrase::tr("%1: the weather hardly changed (%2 of %3 needed), so this decides "
                          "nothing")
            .with(side.side, manner.difference(model.mostLift - model.leastLift, 1),
                  manner.difference(analysis::liftRangeNeeded, 1));
    case ModelCaution::scattered:
        return Phrase::tr("%1: the points are far off the line (%2 of the mean power, at most %3 "
                          "is allowed), so this decides nothing")
            .with(side.side, manner.share(model.fit->cvRmse().value_or(1.0)),
                  manner.share(analysis::scatterAllowed));
    }
    return {};
}

void addRemarks(ModelWords& side, const SideFormat& manner)
{
    const LiftModel& model = side.model;
    std::size_t most = 1;
    for (const analysis::WeatherPair& pair : model.pairs)
        most = std::max(most, pair.of.size());
    if (most > 1)
        side.remarks.push_back(Phrase::tr("up to %1 ran at once on that setup; the power is that "
                                          "for each of them")
                                   .with(batchCount(most)));
    if (side.atReference && side.atReference->outside)
        side.remarks.push_back(Phrase::tr("%1 was only recorded with the room %2 warmer than the "
                                          "beer; beyond that the line is uncertain")
                                   .with(side.side, liftRange(model, manner)));
}

/// Absent without any pair.
std::optional<double> meanLift(const LiftModel& model)
{
    double sum = 0.0;
    for (const analysis::WeatherPair& pair : model.pairs)
        sum += pair.liftK * pair.hours();
    return model.pairs.empty() ? std::nullopt : std::optional(sum / hoursOf(model));
}

/// The user's hold, or the mean of both; absent where there is nothing to take a lift from.
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

void fillSide(ModelWords& side, const SidePairs& pairs,
              const std::optional<analysis::ReferenceHold>& hold, const SideFormat& manner)
{
    if (hold)
        side.atReference = analysis::atReference(side.model, *hold);
    addFigures(side, manner);
    const bool noLine =
        !side.model.cautions.empty() && side.model.cautions.front() == ModelCaution::noLine;
    for (const ModelCaution caution : side.model.cautions) {
        side.cautions.push_back(cautionText(side, caution, pairs, manner));
        if (noLine)
            break; // it says all
    }
    addRemarks(side, manner);
}

std::string decision(const SameWeather& weather, const SideBySide& review)
{
    if (!weather.ahead)
        return Phrase::tr("; with the cautions below that decides nothing.");
    if (*weather.ahead == Ahead::tooClose)
        return Phrase::tr(", which is too close to call.");
    return Phrase::tr(": %1 needs less.").with(*weather.ahead == Ahead::a ? review.a : review.b);
}

std::string weatherSentence(const SideBySide& review, const SideFormat& manner)
{
    const SameWeather& weather = review.weather;
    if (!weather.any)
        return Phrase::tr("What they would draw in the same weather can't be said: %1.")
            .with(weather.a.atReference ? weather.b.cautions.front() : weather.a.cautions.front());
    return Phrase::tr("In the same weather (%1) %2 would draw %3 and %4 %5")
               .with(warmer(weather.hold.liftK, manner), review.a,
                     wattsText(notNegative(weather.a.atReference->watts), manner), review.b,
                     wattsText(notNegative(weather.b.atReference->watts), manner)) +
           decision(weather, review);
}

std::string energyWords(const SideBySide& review, const SideFormat& manner)
{
    const SameWeather& weather = review.weather;
    const auto kwh = [&](const ModelWords& side) {
        const analysis::Bounded energy = notNegative(side.atReference->kwh);
        return manner.energy(energy.value) + manner.bounds(energy, 2);
    };
    return Phrase::tr("A hold of %1 in that weather would take %2 with %3 and %4 with %5.")
        .with(manner.duration(weather.hold.hours), kwh(weather.a), review.a, kwh(weather.b),
              review.b);
}

std::string holdText(const SameWeather& weather, const SideFormat& manner)
{
    const auto by = [](bool mean) {
        return " " + (mean ? Phrase::tr("(the mean of both)") : Phrase::tr("(chosen)")).text();
    };
    return Phrase::tr("%1 with %2", "a hold of some days, the room so much warmer than the beer")
        .with(manner.duration(weather.hold.hours) + by(weather.hoursAreMean),
              warmer(weather.hold.liftK, manner) + by(weather.liftIsMean));
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

} // namespace

void addWeather(SideBySide& review, const SideFormat& manner, SidePairs a, SidePairs b)
{
    SameWeather& weather = review.weather;
    weather.a.side = review.a;
    weather.b.side = review.b;
    weather.a.model = analysis::liftModel(std::move(a.pairs));
    weather.b.model = analysis::liftModel(std::move(b.pairs));
    weather.liftIsMean = !review.weighing.referenceLift;
    weather.hoursAreMean = !review.weighing.referenceHours;
    const auto hold = holdOf(review, a, b);
    fillSide(weather.a, a, hold, manner);
    fillSide(weather.b, b, hold, manner);
    weather.any = weather.a.atReference && weather.b.atReference;
    if (hold) {
        weather.hold = *hold;
        weather.holdWords = holdText(weather, manner);
    }
    if (weather.any) {
        compareSides(weather);
        weather.energySentence = energyWords(review, manner);
        weather.remarks.push_back(
            Phrase::tr("Successive times between readings are not independent of each other (a "
                       "warm day follows a warm day), so the ranges are on the narrow side."));
        weather.remarks.push_back(
            Phrase::tr("Fermentation gives off heat of its own: the first %1 after pitching are "
                       "left out.")
                .with(
                    manner.duration(review.weighing.quietAfter.value_or(usualQuietAfter).count())));
    }
    weather.sentence = weatherSentence(review, manner);
}

} // namespace holdband::results
