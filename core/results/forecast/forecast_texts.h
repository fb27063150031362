// The texts of a forecast, part by part. Not for use outside core/results.
#pragma once

#include "core/results/forecast/forecast_format.h"
#include "core/results/forecast/next_batch.h"

#include <string>
#include <vector>

namespace holdband::results {

/// Sentences that answer: energy, and when it is cold and whether it can be held.
std::string forecastHeadline(const NextBatch& review, const ForecastFormat& format);
std::string forecastAlso(const NextBatch& review, const ForecastFormat& format);
std::string forecastBasis(const NextBatch& review, const ForecastFormat& format);

/// Why there is no forecast of that setup and what would give one; empty where there is one.
std::string missingForForecast(const NextBatch& review, const SetupForecast& setup,
                               const ForecastFormat& format);

/// What is assumed, in short.
std::vector<std::string> assumedIn(const NextBatch& review, const SetupForecast& setup,
                                   const ForecastFormat& format);

/// How a figure came about, with its numbers.
std::string explainForecastEnergy(const NextBatch& review, const SetupForecast& setup,
                                  const ForecastFormat& format);
std::string explainForecastCost(const NextBatch& review, const SetupForecast& setup,
                                const ForecastFormat& format);
std::string explainForecastCrash(const NextBatch& review, const SetupForecast& setup,
                                 const ForecastFormat& format);
std::string explainForecastHold(const NextBatch& review, const SetupForecast& setup,
                                const ForecastFormat& format);
std::string explainForecastBacktest(const SetupForecast& setup, const ForecastFormat& format);

} // namespace holdband::results
