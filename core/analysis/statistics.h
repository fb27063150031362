// Time-weighted statistics of a piecewise linear quantity: exact integrals over the straight
// pieces, no sampling. No Qt, no SQL.
#pragma once

#include "core/analysis/track.h"

#include <optional>
#include <span>
#include <vector>

namespace holdband::analysis {

/// Mean, spread and size of a quantity over covered time, each piece weighted by its length. On a
/// piece from a to b the mean is (a + b)/2, the mean square (a² + ab + b²)/3, and the distribution
/// uniform. Combined by the pairwise update of Chan, Golub and LeVeque (1979), which avoids the
/// cancellation of Σx² − (Σx)²/n.
class TimeMoments {
public:
    void addPiece(double ms, double a, double b);
    void add(const TimeMoments& other);

    bool empty() const { return m_weight <= 0.0; }
    double weightMs() const { return m_weight; }
    double mean() const { return m_mean; }
    /// Around the mean, divided by the total weight (population).
    double standardDeviation() const;
    double rootMeanSquare() const;
    double meanAbsolute() const;

private:
    double m_weight = 0.0;   ///< ms
    double m_mean = 0.0;     ///< unit of x
    double m_squares = 0.0;  ///< ∫ (x − mean)² dt
    double m_absolute = 0.0; ///< ∫ |x| dt
};

/// Moments of the covered part of a track from `fromMs` on.
TimeMoments momentsOf(const Track& track, double fromMs);

/// For each share (increasing, in 0 … 1): the smallest x such that the quantity was at or below x
/// for at least that share of the covered time from `fromMs` on. Empty where nothing is covered.
std::vector<double> timeQuantiles(const Track& track, double fromMs,
                                  std::span<const double> shares);

/// Sample mean and standard deviation (divisor n − 1) of plain numbers, two passes.
/// n must be at least 1; the deviation is 0 for n = 1.
struct SampleSummary {
    double mean = 0.0;              ///< unit of the values
    double standardDeviation = 0.0; ///< unit of the values
    std::size_t count = 0;
};
SampleSummary summarise(std::span<const double> values);

/// The half width of the 95 % interval of a mean (Student t, n − 1); absent for n < 3.
std::optional<double> meanHalfWidth95(const SampleSummary& summary);

} // namespace holdband::analysis
