// The texts of what each side would draw in the same weather.
#include "core/analysis/bounded.h"
#include "core/results/comparison/side_texts.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <cmath>

namespace holdband::results {

using analysis::Ahead;
using analysis::Interval95;
using analysis::LiftModel;
using analysis::ModelCaution;

namespace {

std::string wattsText(const analysis::Bounded& watts, const SideFormat& format)
{
    const int decimals = watts.value < 10.0 ? 1 : 0;
    return format.power(watts.value, decimals) + format.bounds(watts, decimals);
}

std::string intervalText(const Interval95& interval, int decimals, const SideFormat& format)
{
    return format.fixed(interval.value, decimals) + " W (" +
           format.range(interval.low(), interval.high(), decimals) + ")";
}

std::string warmer(double liftK, const SideFormat& format)
{
    return Phrase::tr("the room %1 warmer than the beer").with(format.difference(liftK, 1));
}

std::string timesText(std::size_t count)
{
    return Phrase::counted("%n times between readings", "%n time between readings", count);
}

std::string liftRange(const LiftModel& model, const SideFormat& format)
{
    return format.fixed(model.leastLift * format.degrees(), 1) + " – " +
           format.difference(model.mostLift, 1);
}

/// A side's model, and the name for sentences.
struct NamedModel {
    const SideModel& side;
    const std::string& name;
};

std::string fitText(const analysis::LinearFit& fit, const SideFormat& format)
{
    const std::string text = Phrase::tr("the line accounts for %1 of how the power varies (R²)")
                                 .with(format.share(fit.rSquared));
    const auto scatter = fit.cvRmse();
    if (!scatter)
        return text;
    return text + Phrase::tr("; the points are off it by %1 of the mean power (CV(RMSE))")
                      .with(format.share(*scatter));
}

std::vector<std::string> figuresText(const SideModel& side, const SideFormat& format)
{
    const LiftModel& model = side.model;
    if (model.pairs.empty())
        return {};
    std::vector<std::string> figures{
        Phrase::tr("%1, %2 together, with the room %3 warmer than the beer")
            .with(timesText(model.pairs.size()), format.duration(model.hours()),
                  liftRange(model, format))};
    if (!model.interval)
        return figures;
    const Interval95 slope = model.interval->slope();
    const Interval95 perDegree{slope.value / format.degrees(), slope.halfWidth / format.degrees()};
    figures.push_back(
        Phrase::tr("with the room no warmer than the beer it draws %1, and for each %2 that the "
                   "room is warmer %3 more")
            .with(intervalText(model.interval->intercept(), 1, format), format.degree(),
                  intervalText(perDegree, 2, format)));
    figures.push_back(fitText(*model.fit(), format));
    if (side.atReference) {
        const analysis::Bounded one = analysis::notNegative(side.atReference->oneMoreWatts);
        figures.push_back(Phrase::tr("one more batch would draw between %1 and %2 in that weather")
                              .with(format.fixed(*one.low, 0), format.power(*one.high)));
    }
    return figures;
}

std::string noLineText(const NamedModel& named)
{
    if (!named.side.hasMeter)
        return Phrase::tr("%1: no meter was read twice, so there is no line").with(named.name);
    if (!named.side.hasAmbient)
        return Phrase::tr("%1: the room was not measured, so there is no line").with(named.name);
    return Phrase::tr("%1: %2 can be used, too few to draw a line through")
        .with(named.name, timesText(named.side.model.pairs.size()));
}

std::string cautionText(const NamedModel& named, ModelCaution caution, const SideFormat& format)
{
    const LiftModel& model = named.side.model;
    switch (caution) {
    case ModelCaution::noLine:
        return noLineText(named);
    case ModelCaution::fewPairs:
        return Phrase::tr("%1: only %2 can be used, and %3 are needed, so this decides nothing")
            .with(named.name, timesText(model.pairs.size()), std::to_string(analysis::pairsNeeded));
    case ModelCaution::fewBatches:
        return Phrase::tr("%1: fewer than %2 took part, so this decides nothing")
            .with(named.name, batchCount(analysis::batchesNeeded));
    case ModelCaution::fewGroups:
        return Phrase::tr("%1: its batches ran at the same time or have too few times between "
                          "readings to tell how much they differ, so this decides nothing")
            .with(named.name);
    case ModelCaution::narrowLift:
        return Phrase::tr("%1: the weather hardly changed (%2 of %3 needed), so this decides "
                          "nothing")
            .with(named.name, format.difference(model.mostLift - model.leastLift, 1),
                  format.difference(analysis::liftRangeNeeded, 1));
    case ModelCaution::scattered:
        return Phrase::tr("%1: the points are far off the line (%2 of the mean power, at most %3 "
                          "is allowed), so this decides nothing")
            .with(named.name, format.share(model.fit()->cvRmse().value_or(1.0)),
                  format.share(analysis::scatterAllowed));
    }
    return {};
}

std::vector<std::string> cautionsText(const NamedModel& named, const SideFormat& format)
{
    std::vector<std::string> texts;
    for (const ModelCaution caution : named.side.model.cautions) {
        texts.push_back(cautionText(named, caution, format));
        if (named.side.model.cautions.front() == ModelCaution::noLine)
            break; // it covers the other cautions
    }
    return texts;
}

/// What the ranges rest on.
std::string sourceText(const LiftModel& model)
{
    if (model.interval->source() == analysis::SpreadSource::assumed)
        return Phrase::tr("its ranges are partly assumed: that batches differ by 5 %");
    const std::size_t groups = model.interval->groups();
    if (groups == model.batches())
        return Phrase::tr("its ranges come from how much its %1 differ").with(batchCount(groups));
    return Phrase::tr(
               "its ranges come from how much its %1 differ, in %2 groups: those that ran at "
               "once count as one")
        .with(batchCount(model.batches()), std::to_string(groups));
}

std::vector<std::string> remarksText(const NamedModel& named, const SideFormat& format)
{
    const LiftModel& model = named.side.model;
    std::vector<std::string> remarks;
    std::size_t most = 1;
    for (const analysis::WeatherPair& pair : model.pairs)
        most = std::max(most, pair.of.size());
    if (most > 1)
        remarks.push_back(Phrase::tr("up to %1 ran at once on that setup; the power is that for "
                                     "each of them")
                              .with(batchCount(most)));
    if (named.side.atReference && named.side.atReference->outside)
        remarks.push_back(Phrase::tr("%1 was only recorded with the room %2 warmer than the beer; "
                                     "beyond that the line is uncertain")
                              .with(named.name, liftRange(model, format)));
    if (model.interval)
        remarks.push_back(sourceText(model));
    return remarks;
}

SideModelText modelText(const NamedModel& named, const SideFormat& format)
{
    return {figuresText(named.side, format), cautionsText(named, format),
            remarksText(named, format)};
}

std::string decision(const SameWeather& weather, const SideBySide& review)
{
    if (!weather.ahead)
        return Phrase::tr("; with the cautions below that decides nothing.");
    if (*weather.ahead == Ahead::tooClose)
        return Phrase::tr(", which is too close to call.");
    return Phrase::tr(": %1 needs less.").with(*weather.ahead == Ahead::a ? review.a : review.b);
}

/// `cautions`: why a side has no line.
std::string weatherSentence(const SideBySide& review, const SideFormat& format,
                            const std::vector<std::string>& cautions)
{
    const SameWeather& weather = review.weather;
    if (!weather.any)
        return Phrase::tr("What they would draw in the same weather can't be said: %1.")
            .with(cautions.front());
    return Phrase::tr("In the same weather (%1) %2 would draw %3 and %4 %5")
               .with(warmer(weather.hold->liftK, format), review.a,
                     wattsText(notNegative(weather.a.atReference->watts), format), review.b,
                     wattsText(notNegative(weather.b.atReference->watts), format)) +
           decision(weather, review);
}

std::string weatherEnergySentence(const SideBySide& review, const SideFormat& format)
{
    const SameWeather& weather = review.weather;
    const auto kwh = [&](const SideModel& side) {
        const analysis::Bounded energy = notNegative(side.atReference->kwh);
        return format.energy(energy.value) + format.bounds(energy, 2);
    };
    return Phrase::tr("A hold of %1 in that weather would take %2 with %3 and %4 with %5.")
        .with(format.duration(weather.hold->hours), kwh(weather.a), review.a, kwh(weather.b),
              review.b);
}

std::string holdText(const SameWeather& weather, const SideFormat& format)
{
    const auto by = [](bool mean) {
        return " " + (mean ? Phrase::tr("(the mean of both)") : Phrase::tr("(chosen)")).text();
    };
    return Phrase::tr("%1 with %2", "a hold of some days, the room so much warmer than the beer")
        .with(format.duration(weather.hold->hours) + by(weather.hoursAreMean),
              warmer(weather.hold->liftK, format) + by(weather.liftIsMean));
}

std::vector<std::string> remarksOfBoth(const SideBySide& review, const SideFormat& format)
{
    return {
        Phrase::tr("Successive times between readings are alike (a warm day follows a warm day), "
                   "and batches differ, so the ranges are computed by batch."),
        Phrase::tr("Fermentation gives off heat of its own: the first %1 after pitching are "
                   "left out.")
            .with(format.duration(review.weighing.quietAfter.value_or(usualQuietAfter).count()))};
}

} // namespace

SameWeatherText weatherText(const SideBySide& review, const SideFormat& format)
{
    const SameWeather& weather = review.weather;
    SameWeatherText text;
    text.a = modelText({weather.a, review.a}, format);
    text.b = modelText({weather.b, review.b}, format);
    if (weather.hold)
        text.hold = holdText(weather, format);
    if (weather.any) {
        text.energySentence = weatherEnergySentence(review, format);
        text.remarks = remarksOfBoth(review, format);
    }
    text.sentence =
        weatherSentence(review, format, weather.a.atReference ? text.b.cautions : text.a.cautions);
    return text;
}

} // namespace holdband::results
