// Explanations of energy, money and lift.
#include "core/review/explain_words.h"

#include <algorithm>
#include <cmath>

namespace holdband::review {

using analysis::EnergyFigure;
using analysis::Lift;
using analysis::RunEnergy;

namespace {

double msOf(Span span)
{
    return static_cast<double>((span.end - span.start).count());
}

bool byPowerLog(const RunReview& review)
{
    const auto& sources = review.input.setup.sources();
    return std::any_of(sources.begin(), sources.end(), [](const analysis::EnergySource& source) {
        return std::holds_alternative<analysis::PowerCurve>(source.curve);
    });
}

std::string whyNotMetered(const RunReview& review)
{
    if (review.input.setup.sources().empty())
        return "The setup " + review.setup.name + " has no meter and no power log.";
    return "Energy needs a reading before and one after, and nothing is filled in: no part of this "
           "time has both.";
}

/// " For 120 h of it the batch shared Loop with others, and has an equal part of what was used."
std::string sharedWords(const RunReview& review, Span span)
{
    double shared = 0.0;
    for (const analysis::WeightedSpan& weighted : review.figures.energy.shares) {
        const Span both = intersection(weighted.span, span);
        if (weighted.weight < 1.0 && !both.empty())
            shared += msOf(both);
    }
    if (shared <= 0.0)
        return {};
    return " For " + spanWords(shared) + " the batch shared " + review.setup.name +
           " with others, and has an equal part of what was used then.";
}

} // namespace

std::string meteredWords(const ExplainWords& words, const EnergyFigure& energy, Span span)
{
    const RunReview& review = words.review();
    if (!energy.any())
        return whyNotMetered(review);
    std::string text =
        byPowerLog(review)
            ? "The logged power added up over its readings (its bounds are not known): "
            : "The meter at the end less the meter at the start, with straight lines between its "
              "readings; in brackets what they leave open: ";
    text += words.kwh(energy.kwh) + words.bounds(energy) + " in ";
    const double metered = energy.meteredMs();
    if (metered < msOf(span))
        text += "the " + spanWords(metered) + " that were metered, of " + spanWords(msOf(span)) +
                "; nothing is added for the rest.";
    else
        text += spanWords(metered) + ".";
    return text + sharedWords(review, span);
}

std::string powerWords(const ExplainWords& words, const EnergyFigure& energy)
{
    const auto watts = analysis::meanWatts(energy);
    if (!watts)
        return whyNotMetered(words.review());
    return "Energy over the time that was metered: " + words.kwh(energy.kwh) + " in " +
           spanWords(energy.meteredMs()) + " = " +
           powerText(Power::watts(*watts), 1, words.sign()) + ".";
}

namespace {

std::string aroundTheCrash(const ExplainWords& words,
                           const std::optional<analysis::SpanEnergy>& part)
{
    const RunReview& review = words.review();
    if (!part || !review.figures.crash)
        return "There is no crash: none of the holds so far has its target at least " +
               words.difference(5.0) + " below the stage before it.";
    const analysis::PlacedStage& crash = review.figures.judged.stages[*review.figures.crash];
    return "The crash begins with " + crash.label + ", " + words.time(crash.span.start) + ". " +
           meteredWords(words, part->energy, part->span);
}

std::string perDay(const ExplainWords& words)
{
    const RunReview& review = words.review();
    const RunEnergy& energy = review.figures.energy;
    if (!energy.whole.any())
        return whyNotMetered(review);
    if (!review.dailyEnergy)
        return "No calendar day of the run was metered from midnight to midnight.";
    const DailyEnergy& daily = *review.dailyEnergy;
    const auto day = [&](std::size_t i) {
        return words.kwh(energy.days[i].energy.kwh) + " on " + dayText(energy.days[i], review.zone);
    };
    const std::size_t count = daily.wholeDays.size();
    if (count == 1)
        return "Only one calendar day was metered from midnight to midnight: " + day(daily.least) +
               ".";
    return "The mean of the " + std::to_string(count) +
           " calendar days that were metered from midnight to midnight: " +
           words.kwh(daily.meanKwh) + "; least " + day(daily.least) + ", most " + day(daily.most) +
           ".";
}

std::string costBounds(const ExplainWords& words, const analysis::Cost& cost)
{
    if (!std::isfinite(cost.low) || !std::isfinite(cost.high))
        return {};
    return " (" + words.money(cost.low) + " – " + words.money(cost.high) + ")";
}

std::string cost(const ExplainWords& words)
{
    const RunReview& review = words.review();
    const RunEnergy& energy = review.figures.energy;
    if (!energy.whole.any())
        return whyNotMetered(review);
    if (!energy.cost)
        return "No price of energy is known for some of the metered time.";
    const auto& prices = review.input.prices;
    const bool flat = std::all_of(prices.begin(), prices.end(), [&](const auto& priced) {
        return priced.pricePerKwh == prices.front().pricePerKwh;
    });
    const std::string amount =
        words.money(energy.cost->amount) + costBounds(words, *energy.cost) + ".";
    if (flat && !prices.empty())
        return "Metered energy times its price: " + words.kwh(energy.whole.kwh) + " × " +
               words.money(prices.front().pricePerKwh) + " = " + amount;
    return "Each part of the " + words.kwh(energy.whole.kwh) +
           " at the price that held when it was used, " + std::to_string(prices.size()) +
           " spans of one price each: " + amount;
}

std::string whyNoLift(const RunReview& review)
{
    if (!review.batch().ambientSensor)
        return "Lift is room minus beer, and no sensor of the room is named for this batch.";
    return "Lift is room minus beer, and the readings of " + *review.batch().ambientSensor +
           " never cover the same time as the beer's.";
}

std::string lift(const ExplainWords& words)
{
    const auto& lift = words.review().figures.energy.lift;
    if (!lift)
        return whyNoLift(words.review());
    std::string text = "Room minus beer, summed over the " + spanWords(lift->knownHours * 3.6e6) +
                       " in which both were seen: " + words.degreeHours(lift->coolingKh) +
                       " with the room the warmer, " + words.degreeHours(lift->heatingKh) +
                       " with the beer the warmer";
    if (const auto mean = lift->mean())
        text += "; in the mean " + words.deviation(*mean);
    return text + ".";
}

std::string perDegreeDay(const ExplainWords& words)
{
    const RunReview& review = words.review();
    const RunEnergy& energy = review.figures.energy;
    if (!energy.whole.any())
        return whyNotMetered(review);
    if (!energy.lift || !energy.meteredLift)
        return whyNoLift(review);
    const Lift& lift = *energy.meteredLift;
    if (!lift.knownEnough())
        return "The lift must be known for 90 % of the metered time: it is for " +
               spanWords(lift.knownHours * 3.6e6) + " of " + spanWords(lift.spanHours * 3.6e6) +
               ".";
    if (!energy.kwhPerDegreeDay)
        return "The room was never warmer than the beer: there was nothing to cool against.";
    const double scale = words.fahrenheit() ? 1.8 : 1.0;
    const std::string unit = words.fahrenheit() ? "°F·day" : "°C·day";
    return "Metered energy over the lift of the same time, with the room the warmer: " +
           words.kwh(energy.whole.kwh) + " ÷ (" + words.degreeHours(lift.coolingKh) +
           " ÷ 24) = " + words.kwh(*energy.kwhPerDegreeDay / scale, 3) + " for each " + unit + ".";
}

} // namespace

std::string explainEnergy(const ExplainWords& words, Figure figure)
{
    const RunEnergy& energy = words.review().figures.energy;
    switch (figure) {
    case Figure::wholeEnergy:
        return meteredWords(words, energy.whole, energy.span);
    case Figure::beforeCrash:
        return aroundTheCrash(words, energy.beforeCrash);
    case Figure::crash:
        return aroundTheCrash(words, energy.crash);
    case Figure::perDay:
        return perDay(words);
    case Figure::meanPower:
        return powerWords(words, energy.whole);
    case Figure::cost:
        return cost(words);
    case Figure::lift:
        return lift(words);
    case Figure::perDegreeDay:
        return perDegreeDay(words);
    default:
        return explainBeer(words, figure);
    }
}

} // namespace holdband::review
