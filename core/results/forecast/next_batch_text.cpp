#include "core/results/forecast/next_batch_text.h"

#include "core/results/forecast/forecast_texts.h"
#include "core/text/phrase.h"
#include "core/text/times.h"

#include <cmath>

namespace holdband::results {

using analysis::HoldOutlook;

namespace {

std::string holdText(HoldOutlook hold)
{
    switch (hold) {
    case HoldOutlook::heldMore:
        return Phrase::tr("yes", "can it hold?");
    case HoldOutlook::atEdge:
        return Phrase::tr("at the edge", "can it hold?");
    case HoldOutlook::beyondSeen:
        return Phrase::tr("not seen yet", "can it hold?");
    case HoldOutlook::unknown:
        break;
    }
    return Phrase::tr("not known", "can it hold?");
}

/// "4 of 5"; empty where it is not rated.
std::string ratingText(const Setup& setup, const std::string& criterion,
                       const ForecastFormat& format)
{
    const auto rated = setup.ratings.find(criterion);
    if (rated == setup.ratings.end())
        return {};
    return Phrase::tr("%1 of 5", "points of a rating")
        .with(shortestText(rated->second, format.decimalSign));
}

std::string costText(const SetupForecast& setup, const ForecastFormat& format)
{
    if (!setup.usable() || !setup.cost)
        return {};
    return format.money(setup.cost->amount) + " (" + format.fixed(setup.cost->low, 2) + " – " +
           format.fixed(setup.cost->high, 2) + ")";
}

std::string backtestText(const analysis::Backtest& backtest, const ForecastFormat& format)
{
    if (backtest.judged == 0)
        return Phrase::tr("No past batch could be forecast from the others.");
    std::string text = Phrase::tr("%1 of %2 inside", "forecasts whose interval held what came")
                           .with(std::to_string(backtest.hits), std::to_string(backtest.judged));
    if (backtest.typicalError)
        text += Phrase::tr("; typically off by %1").with(format.percent(*backtest.typicalError));
    text += ".";
    return backtest.tooNarrow ? text + " " + Phrase::tr("The ranges were too narrow here.").text()
                              : text;
}

std::vector<std::string> stageTexts(const SetupForecast& setup, const ForecastFormat& format)
{
    std::vector<std::string> texts;
    for (const analysis::StageForecast& stage : setup.stages)
        texts.push_back(
            Phrase::tr("%1: %2 over %3, %4 of lift", "stage, energy, time, temperature")
                .with(stage.label,
                      format.kwh(stage.energy.kwh, stage.energy.low(), stage.energy.high()),
                      format.duration(stage.hours), format.lift(stage.liftK)));
    return texts;
}

SetupForecastText setupText(const NextBatch& review, const SetupForecast& setup,
                            const ForecastFormat& format)
{
    SetupForecastText text;
    if (setup.usable()) {
        const auto& total = *setup.energy.total;
        text.energy =
            format.withRange(total.kwh, total.low(), total.high(), format.places(total.kwh));
        text.stages = stageTexts(setup, format);
    }
    text.cost = costText(setup, format);
    if (setup.crash)
        text.coldAfter = format.withRange(setup.crash->hours, setup.crash->low, setup.crash->high,
                                          format.hourPlaces(setup.crash->hours));
    text.hold = holdText(setup.hold);
    if (setup.seenLiftK)
        text.seen = format.lift(*setup.seenLiftK);
    text.easeOfUse = ratingText(setup.setup, "ease of use", format);
    text.cleaning = ratingText(setup.setup, "cleaning", format);
    text.missing = missingForForecast(review, setup, format);
    text.backtest = backtestText(setup.backtest, format);
    text.assumed = assumedIn(review, setup, format);
    text.explainEnergy = explainForecastEnergy(review, setup, format);
    text.explainCost = explainForecastCost(review, setup, format);
    text.explainCrash = explainForecastCrash(review, setup, format);
    text.explainHold = explainForecastHold(review, setup, format);
    text.explainBacktest = explainForecastBacktest(setup, format);
    return text;
}

std::string dayOf(Instant at, const Zone& zone)
{
    return dateText(zone.localDate(at));
}

std::string roomText(const NextBatch& review, const ForecastFormat& format)
{
    const NextRoom& room = review.room;
    const std::string mean = format.temperature(room.meanCelsius);
    if (!room.record)
        return Phrase::tr("typed: %1, from %2 to %3 in a day")
            .with(mean, format.temperature(room.meanCelsius - room.swingK / 2.0),
                  format.temperature(room.meanCelsius + room.swingK / 2.0));
    const RoomRecord& record = *room.record;
    std::string text = Phrase::tr("%1, %2 to %3: mean %4", "sensor, first and last day, mean")
                           .with(record.sensor, dayOf(record.span.start, review.zone),
                                 dayOf(record.span.end - Milliseconds(1), review.zone), mean);
    if (record.dayLow)
        text += Phrase::tr(", from %1 to %2 in a day")
                    .with(format.temperature(*record.dayLow), format.temperature(*record.dayHigh));
    text += Phrase::tr(", %1 covered").with(format.percent(record.coverage));
    if (room.starts > 1)
        text += Phrase::counted("; the mean of %n days of pitching", "; one day of pitching",
                                room.starts);
    if (room.repeated)
        text += Phrase::tr("; repeated, because the plan is longer");
    return text;
}

} // namespace

NextBatchText nextBatchText(const NextBatch& review, char decimalSign)
{
    const ForecastFormat format{{review.settings, decimalSign}};
    NextBatchText text;
    text.headline = forecastHeadline(review, format);
    text.also = forecastAlso(review, format);
    text.basis = forecastBasis(review, format);
    const std::string length =
        format.duration(static_cast<double>(review.placed.length().count()) / msPerHour);
    text.plan =
        review.plan.name.empty()
            ? Phrase::tr("a drawn plan, %1", "its length").with(length)
            : Phrase::tr("%1, %2", "a plan's name and its length").with(review.plan.name, length);
    text.room = roomText(review, format);
    if (review.neededLiftK)
        text.need = format.lift(*review.neededLiftK);
    for (const SetupForecast& setup : review.setups)
        text.setups.push_back(setupText(review, setup, format));
    return text;
}

} // namespace holdband::results
