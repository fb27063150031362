// A straight line through weighted points, and how well it fits. For the same-weather model of a
// setup: section 5 of the method in DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include <cstddef>
#include <optional>
#include <span>

namespace holdband::analysis {

/// x and y in the caller's units; the weight is relative, only ratios of weights matter.
struct FitPoint {
    double x = 0.0;      ///< the caller's unit
    double y = 0.0;      ///< the caller's unit
    double weight = 1.0; ///< relative, dimensionless
};

/// A value with the half width of its 95 % interval.
struct Interval95 {
    double value = 0.0;     ///< the caller's unit
    double halfWidth = 0.0; ///< the same unit

    double low() const { return value - halfWidth; }
    double high() const { return value + halfWidth; }
};

/// y = intercept + slope × x, by weighted least squares. Weights are scaled to a mean of 1, so that
/// with equal weights every figure equals that of ordinary least squares.
struct LinearFit {
    std::size_t count = 0;
    double intercept = 0.0;      ///< in units of y
    double slope = 0.0;          ///< in units of y for one of x
    double interceptError = 0.0; ///< standard error
    double slopeError = 0.0;     ///< standard error
    double residualSd = 0.0;     ///< divisor n − 2, in units of y
    double rSquared = 0.0;       ///< 0 where y does not vary
    double meanX = 0.0;          ///< weighted
    double meanY = 0.0;          ///< weighted
    double spreadX = 0.0;        ///< Σ w (x − mean)², weights scaled

    /// The line's value at x, in units of y.
    double at(double x) const { return intercept + slope * x; }
    /// Residual SD over the mean of y, a fraction; absent where the mean is 0.
    std::optional<double> cvRmse() const;
};

/// Absent for fewer than 3 points, weights that are not positive, or x all the same.
std::optional<LinearFit> fitLine(std::span<const FitPoint> points);

/// Sums of points, from which a line follows, so that points can be taken out again. Positions are
/// taken from an origin near the points, which keeps the digits.
class FitSums {
public:
    FitSums(double originX, double originY) : m_originX(originX), m_originY(originY) {}

    void add(const FitPoint& point) { addTimes(point, 1.0); }
    void remove(const FitPoint& point) { addTimes(point, -1.0); }
    /// Of the same origin.
    void remove(const FitSums& sums);

    /// As fitLine() to rounding; absent where that is.
    std::optional<LinearFit> fit() const;

private:
    void addTimes(const FitPoint& point, double times);

    double m_originX;
    double m_originY;
    double m_count = 0.0;
    double m_w = 0.0;
    double m_wx = 0.0;
    double m_wy = 0.0;
    double m_wxx = 0.0;
    double m_wxy = 0.0;
    double m_wyy = 0.0;
};

/// Coefficient of variation of the root mean square error: √(Σ (measured − predicted)² / (n − 2))
/// over the mean of the measured, a fraction. After CalTRACK §4.3.2 and ASHRAE Guideline 14; the
/// divisor n − 2 is our choice. Absent for fewer than 3 values, sizes that differ, or a mean of 0.
std::optional<double> cvRmse(std::span<const double> measured, std::span<const double> predicted);

/// Normalised mean bias error: Σ (measured − predicted) / ((n − 2) × mean of the measured), a
/// fraction. Positive where the prediction is too low; the sign and the divisor are our choice,
/// sources differ.
std::optional<double> nmbe(std::span<const double> measured, std::span<const double> predicted);

} // namespace holdband::analysis
