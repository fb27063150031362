// How the figures of a forecast came about, with their numbers.
#include "core/results/forecast/forecast_texts.h"

#include "core/text/phrase.h"

#include <algorithm>

namespace holdband::results {

using analysis::BatchPart;

namespace {

std::string partText(const SetupForecast& setup, BatchPart part, const ForecastFormat& format)
{
    const auto& figure = setup.energy.parts[part];
    if (!figure)
        return {};
    const std::string line = format.kwh(figure->lineKwh);
    const std::string extra = format.kwh(figure->extraKwh);
    if (part == BatchPart::beforeCrash)
        return Phrase::tr("Before the crash the line gives %1 for the planned hours and weather, "
                          "and the heat of fermentation %2 more.")
            .with(line, extra);
    return Phrase::tr("In the crash the line gives %1, and cooling the beer down %2 more.")
        .with(line, extra);
}

std::string lineText(const SetupForecast& setup, const ForecastFormat& format)
{
    const analysis::LinearFit& line = *setup.energy.line;
    const double slope = line.slope / format.degrees();
    return Phrase::tr("While it held, %1 drew %2 and %3 for each %4 that the room was warmer than "
                      "the beer.")
        .with(setup.setup.name, format.power(line.intercept, 1), format.power(slope, 1),
              format.degree());
}

std::string spreadText(const analysis::EnergyForecast& total, const ForecastFormat& format)
{
    const std::string half = format.percent(std::exp(total.halfWidth) - 1.0);
    if (total.spread.errors < 2)
        return Phrase::tr("The range goes up to %1 more: how far batches differ is assumed.")
            .with(half);
    return Phrase::tr("The range goes up to %1 more: from how far each past batch was off when it "
                      "was forecast from the others, together with an assumed spread that weighs "
                      "as much as four more batches.")
        .with(half);
}

} // namespace

std::string explainForecastEnergy(const NextBatch& review, const SetupForecast& setup,
                                  const ForecastFormat& format)
{
    const std::string missing = missingForForecast(review, setup, format);
    if (!setup.energy.total || !setup.energy.line)
        return missing;
    std::string text = lineText(setup, format);
    for (const BatchPart part : analysis::bothParts) {
        const std::string sentence = partText(setup, part, format);
        if (!sentence.empty())
            text += " " + sentence;
    }
    text += " " + spreadText(*setup.energy.total, format);
    for (const std::string& assumed : assumedIn(review, setup, format))
        text += " " + Phrase::tr("Assumed: %1.").with(assumed);
    return missing.empty() ? text : missing + " " + text;
}

std::string explainForecastCost(const NextBatch& review, const SetupForecast& setup,
                                const ForecastFormat& format)
{
    if (!setup.usable())
        return missingForForecast(review, setup, format);
    if (!setup.cost)
        return Phrase::tr("The price of energy is not known. Enter it under Equipment.");
    return Phrase::tr("Each stage's energy at the mean price of its hours, %1 in all: %2 for %3.")
        .with(format.duration(static_cast<double>(review.placed.length().count()) / msPerHour),
              format.money(setup.cost->amount), format.kwh(setup.energy.total->kwh));
}

std::string explainForecastCrash(const NextBatch& review, const SetupForecast& setup,
                                 const ForecastFormat& format)
{
    if (!review.crashPlan)
        return Phrase::tr("The plan has no crash.");
    const std::string from = format.temperature(review.crashPlan->fromCelsius);
    const std::string to = format.temperature(review.crashPlan->toCelsius);
    if (!setup.crash)
        return Phrase::tr("No past crash of %1 went from %2 to %3, the upper edge of the band.")
            .with(setup.setup.name, from, to);
    return Phrase::tr("From turning down at %1 to the upper edge of the band at %2: the hours that "
                      "%3 took for it, in proportion to the volume. Their spread is partly "
                      "assumed.")
        .with(from, to,
              Phrase::counted("%n past crashes", "%n past crash", setup.crash->crashes).text());
}

std::string explainForecastHold(const NextBatch& review, const SetupForecast& setup,
                                const ForecastFormat& format)
{
    if (!review.neededLiftK)
        return Phrase::tr("What the plan needs is not known: the room's record has gaps.");
    const std::string need = format.lift(*review.neededLiftK);
    if (!setup.seenLiftK)
        return Phrase::tr("In its hardest 12 hours the plan needs the beer %1 below the room. No "
                          "past batch of %2 was in its band for 12 hours on end, later than four "
                          "days after pitching, with the room known.")
            .with(need, setup.setup.name);
    return Phrase::tr("In its hardest 12 hours the plan needs the beer %1 below the room. The most "
                      "that %2 was seen holding over 12 hours, in its band and later than four "
                      "days after pitching, is %3.")
        .with(need, setup.setup.name, format.lift(*setup.seenLiftK));
}

std::string explainForecastBacktest(const SetupForecast& setup, const ForecastFormat& format)
{
    std::string text = Phrase::tr("Each past batch of %1 was forecast from the others, with its "
                                  "own hours, heat and weather. It tests the energy, not the "
                                  "forecast of the weather.")
                           .with(setup.setup.name);
    for (const analysis::BacktestedBatch& batch : setup.backtest.batches) {
        const auto& total = batch.forecast.total;
        if (total && batch.judged())
            text +=
                " " + Phrase::tr("%1: %2 forecast, %3 came.")
                          .with(batch.batch, format.kwh(total->kwh, total->low(), total->high()),
                                format.kwh(batch.cameKwh));
    }
    return text;
}

} // namespace holdband::results
