// The energy that the next batch of a setup will use, from its past batches, with a 90 % interval.
// Section 8.1 of the method in DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include "core/analysis/forecast_parts.h"
#include "core/analysis/forecast_spread.h"
#include "core/analysis/lift_interval.h"
#include "core/analysis/regression.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace holdband::analysis {

/// What is known of a setup. All batches are of the plan's kind: shared or alone.
struct ForecastBasis {
    std::vector<PastBatch> batches;
    /// The setup's quiet pairs (section 5): weatherPairs() as points. Those in which none of
    /// `batches` ran are not used.
    std::vector<BatchPoint> pairs;
    bool shared = false;        ///< another batch runs on the setup meanwhile
    double resolutionKwh = 0.0; ///< kWh, the coarsest of the setup's registers
};

struct ForecastPlan {
    ByPart<std::optional<PartConditions>> parts; ///< plannedParts()
    double roomDoubtK = 0.0;                     ///< K: roomDoubtK() of the room
};

/// Why there is no forecast, or none that helps.
enum class ForecastLack {
    none,
    noBatch,   ///< no past batch counts in one of the parts: nothing but the heat is known
    noLine,    ///< the quiet pairs have no line
    tooLittle, ///< the past batches say too little: the interval is wider than twice or half
};

/// An energy with its 90 % interval, kWh × e^(∓ halfWidth).
struct EnergyForecast {
    double kwh = 0.0;
    double halfWidth = 0.0;  ///< of the natural logarithm; infinite where kwh is 0
    ModeratedSpread spread;  ///< of batches about the forecast
    double lineError2 = 0.0; ///< e²: the squared relative error of line and room
    std::size_t batches = 0; ///< past batches that count
    std::size_t groups = 0;  ///< of them, that can be told apart
    bool outside = false;    ///< a lift is over 2 K outside those of the pairs

    double low() const;
    double high() const;
    bool refused() const; ///< halfWidth over ln 2
};

struct PartForecast {
    double lineKwh = 0.0;      ///< what the line gives for the part's lift and hours
    double extraPerHeat = 0.0; ///< kWh for a kWh of heat; for the part where heatKnown is false
    bool heatKnown = true;     ///< false: a batch's heat or the plan's is unknown, all count as 1
    double extraKwh = 0.0;
    EnergyForecast energy;
};

struct Forecast {
    ForecastLack lack = ForecastLack::noBatch; ///< of the total
    std::optional<LinearFit> line;             ///< x: lift, K; y: mean power, W; weight: hours
    ByPart<std::optional<PartForecast>> parts; ///< absent where not planned, or nothing is known
    std::optional<EnergyForecast> total;       ///< of the planned parts; absent where one lacks
};

Forecast forecast(const ForecastBasis& basis, const ForecastPlan& plan);

/// The same without one of the batches: what would have been said before it. A pair stays where
/// another of the batches ran in it too.
ForecastBasis without(const ForecastBasis& basis, std::size_t batch);

/// The power that the line gives at a lift, W, not below 0.
double linePower(const LinearFit& line, double liftK);

} // namespace holdband::analysis
