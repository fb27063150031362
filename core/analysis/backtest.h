// How well the forecasts of a setup would have known its past batches. Section 8.4 of the method in
// DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include "core/analysis/forecast.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace holdband::analysis {

/// A past batch, forecast from the others with its own hours, its heat and the lift that came.
struct BacktestedBatch {
    std::string batch;
    double cameKwh = 0.0; ///< kWh, of the parts that count
    Forecast forecast;    ///< without a total where the others have no forecast

    /// Whether the interval has a use: a refused one is no hit and no miss.
    bool judged() const;
    bool inside() const; ///< of a judged one
};

struct Backtest {
    std::vector<BacktestedBatch> batches; ///< in the order of the basis
    std::size_t judged = 0;
    std::size_t hits = 0;
    /// The median of |came / forecast − 1| of the judged, a fraction; absent without any.
    std::optional<double> typicalError;
    /// Chance alone gives so few hits, or fewer, in less than 5 % of cases.
    bool tooNarrow = false;
};

/// Every batch of the basis with at least one part that counts. It tests the energy, not the
/// weather: no batch has a room doubt.
Backtest backtest(const ForecastBasis& basis);

/// Whether `hits` of `judged` intervals of 90 % are so few that chance gives them or fewer in less
/// than 5 % of cases (binomial).
bool tooFewHits(std::size_t hits, std::size_t judged);

} // namespace holdband::analysis
