#include "core/results/run/forecast_outcome.h"

#include "core/results/forecast/forecast_format.h"
#include "core/text/phrase.h"

namespace holdband::results {

namespace {

constexpr double meteredEnough = 0.9; // as for a batch that counts in a forecast

/// "inside the range", "more than the range", "less than the range"
std::string againstRange(const ForecastFigure& forecast, double came)
{
    if (forecast.holds(came))
        return Phrase::tr("inside the range");
    return came > forecast.high ? Phrase::tr("more than the range")
                                : Phrase::tr("less than the range");
}

std::string energyOutcome(const RunReview& review, const ForecastFigure& forecast,
                          const ForecastFormat& format)
{
    const std::string said = format.kwh(forecast.value, forecast.low, forecast.high);
    const analysis::EnergyFigure& energy = review.figures.energy.whole;
    if (!energy.any())
        return Phrase::tr("When it was pitched it was forecast to use %1.").with(said);
    const std::string came = format.kwh(energy.kwh);
    if (review.open())
        return Phrase::tr("When it was pitched it was forecast to use %1; so far it used %2.")
            .with(said, came);
    const double metered = energy.meteredMs() / msPerHour;
    if (metered < meteredEnough * review.input.span.hours())
        return Phrase::tr("When it was pitched it was forecast to use %1; of what it used only a "
                          "part is metered.")
            .with(said);
    return Phrase::tr("When it was pitched it was forecast to use %1; it used %2, %3.",
                      "ranges, an energy, 'inside the range'")
        .with(said, came, againstRange(forecast, energy.kwh));
}

/// Hours from turning down to the first covered instant at or below the band's upper edge; absent
/// where that was not seen.
std::optional<double> hoursToBand(const RunReview& review)
{
    if (!review.figures.crash)
        return std::nullopt;
    const std::size_t crash = *review.figures.crash;
    const analysis::Track& deviation = review.figures.judged.tracks[crash].deviation;
    const double edge = review.figures.judged.stages[crash].tolerance.kelvins();
    const auto found = analysis::firstAtOrBelow(deviation, edge, 0.0);
    return found ? std::optional(*found / msPerHour) : std::nullopt;
}

std::string crashOutcome(const RunReview& review, const ForecastFigure& forecast,
                         const ForecastFormat& format)
{
    const std::optional<double> came = hoursToBand(review);
    if (!came)
        return {};
    return Phrase::tr("It was forecast to be cold %1 after turning down; it took %2, %3.",
                      "range of hours, hours, 'inside the range'")
        .with(format.hours(forecast.value, forecast.low, forecast.high), format.hours(*came),
              againstRange(forecast, *came));
}

} // namespace

std::vector<std::string> forecastOutcome(const RunReview& review)
{
    const auto& forecast = review.batch().forecast;
    if (!forecast)
        return {};
    const ForecastFormat format{{review.settings, review.decimalSign}};
    std::vector<std::string> sentences{energyOutcome(review, forecast->energy, format)};
    if (forecast->crashHours) {
        const std::string crash = crashOutcome(review, *forecast->crashHours, format);
        if (!crash.empty())
            sentences.push_back(crash);
    }
    return sentences;
}

} // namespace holdband::results
