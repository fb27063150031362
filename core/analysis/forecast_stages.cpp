#include "core/analysis/forecast_stages.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace holdband::analysis {

namespace {

constexpr Milliseconds activeFermentation = std::chrono::hours{72};

/// When the heat of a part is removed.
Span heatTime(const std::vector<PlacedStage>& stages, BatchPart part,
              std::optional<double> arrivalHours)
{
    if (part == BatchPart::beforeCrash)
        return {stages.front().span.start, stages.front().span.start + activeFermentation};
    const Span crash = stages[*crashStage(stages)].span;
    return {crash.start,
            arrivalHours ? crash.start + toMilliseconds(Hours{*arrivalHours}) : crash.end};
}

/// The hours of each stage of the part in which its heat is removed.
std::vector<double> heatHours(const std::vector<PlacedStage>& stages, BatchPart part,
                              std::optional<double> arrivalHours)
{
    std::vector<double> hours(stages.size(), 0.0);
    const Span time = heatTime(stages, part, arrivalHours);
    for (std::size_t i = 0; i < stages.size(); ++i) {
        if (partOf(stages, i) == part)
            hours[i] = intersection(stages[i].span, time).hours();
    }
    return hours;
}

void shareExtra(std::vector<StageForecast>& made, const std::vector<double>& hours, double extra)
{
    double sum = 0.0;
    for (const double each : hours)
        sum += each;
    for (std::size_t i = 0; i < made.size() && sum > 0.0; ++i)
        made[i].extraKwh += extra * hours[i] / sum;
}

} // namespace

std::vector<StageForecast> stageForecasts(const Forecast& forecast,
                                          const std::vector<PlacedStage>& stages,
                                          const std::vector<Lift>& lifts,
                                          std::optional<double> arrivalHours)
{
    if (!forecast.line || !forecast.total || stages.empty())
        return {};
    std::vector<StageForecast> made;
    for (std::size_t i = 0; i < stages.size(); ++i) {
        StageForecast stage;
        stage.label = stages[i].label;
        stage.part = partOf(stages, i);
        stage.hours = stages[i].span.hours();
        stage.liftK = lifts[i].any() ? lifts[i].coolingKh / lifts[i].knownHours : 0.0;
        stage.lineKwh = linePower(*forecast.line, stage.liftK) * stage.hours / 1000.0;
        made.push_back(std::move(stage));
    }
    for (const BatchPart part : bothParts) {
        if (const auto& figure = forecast.parts[part])
            shareExtra(made, heatHours(stages, part, arrivalHours), figure->extraKwh);
    }
    for (StageForecast& stage : made) {
        stage.energy = forecast.parts[stage.part]->energy;
        stage.energy.kwh = stage.lineKwh + stage.extraKwh;
    }
    return made;
}

std::optional<Cost> forecastCost(const Forecast& forecast, const std::vector<StageForecast>& stages,
                                 std::span<const double> meanPrices)
{
    if (!forecast.total || stages.empty() || stages.size() != meanPrices.size())
        return std::nullopt;
    double amount = 0.0;
    for (std::size_t i = 0; i < stages.size(); ++i)
        amount += stages[i].energy.kwh * meanPrices[i];
    const double factor = std::exp(forecast.total->halfWidth);
    return Cost{amount, amount / factor, amount * factor};
}

} // namespace holdband::analysis
