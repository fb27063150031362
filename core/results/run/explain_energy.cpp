// Explains energy, money and lift.
#include "core/results/run/energy_texts.h"
#include "core/results/run/explain_text.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <cmath>

namespace holdband::results {

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
        return Phrase::tr("The setup %1 has no meter and no power log.").with(review.setup.name);
    return Phrase::tr("Energy needs a reading before and one after, and nothing is filled in: no "
                      "part of this time has both.");
}

/// " For 120 h of it the batch shared Loop with Ale 2, and has an equal part …"
std::string sharedText(const RunReview& review, Span span)
{
    double shared = 0.0;
    for (const analysis::WeightedSpan& weighted : review.figures.energy.shares) {
        const Span both = intersection(weighted.span, span);
        if (weighted.weight < 1.0 && !both.empty())
            shared += msOf(both);
    }
    if (shared <= 0.0)
        return {};
    const auto with =
        analysis::sharedTimes(review.input.concurrentBatches, review.input.self, span);
    return " " + Phrase::tr("For %1 the batch shared %2 with %3, and has an equal part of what was "
                            "used then.")
                     .with(spanText(shared), review.setup.name, sharedWithText(with));
}

/// " Reading times are taken as good to 10 min."
std::string doubtText(const RunReview& review, Span span)
{
    const std::string sentence = timeDoubtSentence(review, span);
    return sentence.empty() ? sentence : " " + sentence;
}

/// %1 is the energy with its bounds, %2 the metered time of %3.
Phrase meteredPhrase(bool fromPower, bool partly)
{
    if (fromPower && partly)
        return Phrase::tr("The logged power added up over its readings (its bounds are not known): "
                          "%1 in the %2 that were metered, of %3; nothing is added for the rest.");
    if (fromPower)
        return Phrase::tr("The logged power added up over its readings (its bounds are not known): "
                          "%1 in %2.");
    if (partly)
        return Phrase::tr("The meter at the end minus the meter at the start, with straight lines "
                          "between its readings; in brackets the range that they allow: %1 in the "
                          "%2 that were metered, of %3; nothing is added for the rest.");
    return Phrase::tr("The meter at the end minus the meter at the start, with straight lines "
                      "between its readings; in brackets the range that they allow: %1 in %2.");
}

} // namespace

std::string meteredText(const ExplainText& words, const EnergyFigure& energy, Span span)
{
    const RunReview& review = words.review();
    if (!energy.any())
        return whyNotMetered(review);
    const double metered = energy.meteredMs();
    return meteredPhrase(byPowerLog(review), metered < msOf(span))
               .with(words.kwh(energy.kwh) + words.bounds(energy), spanText(metered),
                     spanText(msOf(span))) +
           doubtText(review, span) + sharedText(review, span);
}

std::string powerWords(const ExplainText& words, const EnergyFigure& energy)
{
    const auto watts = analysis::meanWatts(energy);
    if (!watts)
        return whyNotMetered(words.review());
    return Phrase::tr("Energy over the time that was metered: %1 in %2 = %3.")
        .with(words.kwh(energy.kwh), spanText(energy.meteredMs()),
              powerText(Power::watts(*watts), 1, words.sign()));
}

namespace {

std::string aroundTheCrash(const ExplainText& words,
                           const std::optional<analysis::SpanEnergy>& part)
{
    const RunReview& review = words.review();
    if (!part || !review.figures.crash)
        return Phrase::tr("There is no crash: none of the holds so far has its target at least %1 "
                          "below the stage before it.")
            .with(words.difference(5.0));
    const analysis::PlacedStage& crash = review.figures.judged.stages[*review.figures.crash];
    return Phrase::tr("The crash begins with %1, %2.")
               .with(crash.label, words.time(crash.span.start)) +
           " " + meteredText(words, part->energy, part->span);
}

std::string perDay(const ExplainText& words)
{
    const RunReview& review = words.review();
    const RunEnergy& energy = review.figures.energy;
    if (!energy.whole.any())
        return whyNotMetered(review);
    if (!review.dailyEnergy)
        return Phrase::tr("No calendar day of the run was metered from midnight to midnight.");
    const DailyEnergy& daily = *review.dailyEnergy;
    const auto day = [&](std::size_t i) {
        return Phrase::tr("%1 on %2", "energy on a day")
            .with(words.kwh(energy.days[i].energy.kwh), dayText(energy.days[i], review.zone));
    };
    const std::size_t count = daily.wholeDays.size();
    if (count == 1)
        return Phrase::tr("Only one calendar day was metered from midnight to midnight: %1.")
            .with(day(daily.least));
    return Phrase::tr("The mean of the %1 calendar days that were metered from midnight to "
                      "midnight: %2; minimum %3, maximum %4.")
        .with(std::to_string(count), words.kwh(daily.meanKwh), day(daily.least), day(daily.most));
}

std::string costBounds(const ExplainText& words, const analysis::Cost& cost)
{
    if (!std::isfinite(cost.low) || !std::isfinite(cost.high))
        return {};
    return " (" + words.money(cost.low) + " – " + words.money(cost.high) + ")";
}

std::string cost(const ExplainText& words)
{
    const RunReview& review = words.review();
    const RunEnergy& energy = review.figures.energy;
    if (!energy.whole.any())
        return whyNotMetered(review);
    if (!energy.cost)
        return Phrase::tr("No price of energy is known for some of the metered time.");
    const auto& prices = review.input.prices;
    const bool flat = std::all_of(prices.begin(), prices.end(), [&](const auto& priced) {
        return priced.pricePerKwh == prices.front().pricePerKwh;
    });
    const std::string amount = words.money(energy.cost->amount) + costBounds(words, *energy.cost);
    if (flat && !prices.empty())
        return Phrase::tr("Metered energy times its price: %1 × %2 = %3.")
            .with(words.kwh(energy.whole.kwh), words.money(prices.front().pricePerKwh), amount);
    return Phrase::tr("Each part of the %1 at the price that held when it was used, %2 spans of "
                      "one price each: %3.")
        .with(words.kwh(energy.whole.kwh), std::to_string(prices.size()), amount);
}

std::string whyNoLift(const RunReview& review)
{
    if (!review.batch().ambientSensor)
        return Phrase::tr("Lift is room minus beer, and no sensor of the room is named for this "
                          "batch.");
    return Phrase::tr("Lift is room minus beer, and the readings of %1 never cover the same time "
                      "as the beer's.")
        .with(*review.batch().ambientSensor);
}

std::string lift(const ExplainText& words)
{
    const auto& lift = words.review().figures.energy.lift;
    if (!lift)
        return whyNoLift(words.review());
    std::string text =
        Phrase::tr("Room minus beer, summed over the %1 in which both were recorded: %2 with the "
                   "room warmer, %3 with the beer warmer")
            .with(spanText(lift->knownHours * msPerHour), words.degreeHours(lift->coolingKh),
                  words.degreeHours(lift->heatingKh));
    if (const auto mean = lift->mean())
        text += Phrase::tr("; in the mean %1").with(words.deviation(*mean));
    return text + ".";
}

std::string perDegreeDay(const ExplainText& words)
{
    const RunReview& review = words.review();
    const RunEnergy& energy = review.figures.energy;
    if (!energy.whole.any())
        return whyNotMetered(review);
    if (!energy.lift || !energy.meteredLift)
        return whyNoLift(review);
    const Lift& lift = *energy.meteredLift;
    if (!lift.knownEnough())
        return Phrase::tr("The lift must be known for 90 % of the metered time: it is for %1 of "
                          "%2.")
            .with(spanText(lift.knownHours * msPerHour), spanText(lift.spanHours * msPerHour));
    if (!energy.kwhPerDegreeDay)
        return Phrase::tr("The room was never warmer than the beer: there was nothing to cool "
                          "against.");
    const TemperatureUnit degree = review.settings.temperatureUnit();
    const Phrase unit = words.fahrenheit() ? Phrase::tr("°F·day") : Phrase::tr("°C·day");
    return Phrase::tr("Metered energy over the lift of the same time, with the room warmer: %1 ÷ "
                      "(%2 ÷ 24) = %3 for each %4.")
        .with(words.kwh(energy.whole.kwh), words.degreeHours(lift.coolingKh),
              words.kwh(perDegree(*energy.kwhPerDegreeDay, degree), 3), unit.text());
}

} // namespace

std::string explainEnergy(const ExplainText& words, Figure figure)
{
    const RunEnergy& energy = words.review().figures.energy;
    switch (figure) {
    case Figure::wholeEnergy:
        return meteredText(words, energy.whole, energy.span);
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

} // namespace holdband::results
