// The influence of the surroundings: lift, degree-hours, energy per degree-day. Section 5 of the
// method in DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include "core/analysis/energy_figure.h"
#include "core/analysis/track.h"

#include <optional>

namespace holdband::analysis {

/// Ambient − beer, K, where both are covered.
struct Lift {
    double coolingKh = 0.0;  ///< ∫ max(0, ambient − beer) dt, K·h
    double heatingKh = 0.0;  ///< ∫ max(0, beer − ambient) dt, K·h
    double knownHours = 0.0; ///< h, both covered
    double spanHours = 0.0;  ///< h, clock

    bool any() const { return knownHours > 0.0; }
    std::optional<double> mean() const; ///< K
    /// At least 90 % of the span has a known lift.
    bool knownEnough() const;
};

/// The track of the lift over the span. Both series in °C.
Track liftTrack(const Series& ambient, Milliseconds ambientGap, const Series& beer,
                Milliseconds beerGap, Span span);

Lift liftOf(const Track& lift, double spanHours);

/// The lift over several spans together.
Lift liftOver(const Series& ambient, Milliseconds ambientGap, const Series& beer,
              Milliseconds beerGap, const std::vector<Span>& spans);

/// kWh per K·day of cooling lift over the metered part; absent where too little of the lift is
/// known, the lift is never positive, or nothing is metered.
std::optional<double> energyPerDegreeDay(double kwh, const Lift& liftOfSameSpan);

} // namespace holdband::analysis
