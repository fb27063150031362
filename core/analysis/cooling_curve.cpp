#include "core/analysis/cooling_curve.h"

#include "core/analysis/regression.h"

#include <algorithm>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <iterator>

namespace holdband::analysis {

namespace {

constexpr std::size_t parameters = 3; // now, rate, pace
constexpr double slowestPace = 0.01;  // 1/h
constexpr double paceStep = 1.15;
constexpr int paces = 42;
constexpr double leastSd = 0.03;       // K: no thermometer's means agree better
constexpr double alikeResiduals = 4.0; // for residuals that are alike, found by simulation

/// Fitted on e^(−pace·hours since the first block), which is at most 1, so that a long window does
/// not overflow.
std::optional<CoolingCurve> curveOf(std::span<const TemperatureAt> blocks, double nowHours,
                                    double pace)
{
    std::vector<FitPoint> points;
    for (const auto& [hours, celsius] : blocks) {
        const double x =
            pace > 0.0 ? std::exp(-pace * (hours - blocks.front().hours)) : hours - nowHours;
        points.push_back({x, celsius});
    }
    const std::optional<LinearFit> line = fitLine(points);
    if (!line)
        return std::nullopt;
    const double degrees = static_cast<double>(points.size()) - 2.0;
    const double squares = line->residualSd * line->residualSd * degrees;
    if (pace <= 0.0)
        return CoolingCurve{pace, line->intercept, -line->slope, squares};
    const double left = line->slope * std::exp(-pace * (nowHours - blocks.front().hours));
    return CoolingCurve{pace, line->intercept + left, pace * left, squares};
}

double mostSquares(double leastSquares, std::size_t blocks)
{
    const double degrees = static_cast<double>(blocks - parameters);
    const double quantile = boost::math::quantile(boost::math::students_t(degrees), 0.95);
    const double squares = std::max(leastSquares, degrees * leastSd * leastSd);
    return leastSquares + alikeResiduals * quantile * quantile * squares / degrees;
}

} // namespace

std::optional<double> CoolingCurve::levelsOffAt() const
{
    if (pace <= 0.0)
        return std::nullopt;
    return now - rate / pace;
}

std::optional<double> CoolingCurve::hoursTo(double celsius) const
{
    if (now <= celsius)
        return 0.0;
    if (!(rate > 0.0))
        return std::nullopt;
    const std::optional<double> level = levelsOffAt();
    if (!level)
        return (now - celsius) / rate;
    if (*level >= celsius)
        return std::nullopt;
    return std::log((now - *level) / (celsius - *level)) / pace;
}

std::optional<CoolingCurves> coolingCurvesOf(std::span<const TemperatureAt> blocks, double nowHours)
{
    if (blocks.size() <= parameters)
        return std::nullopt;
    std::vector<CoolingCurve> curves;
    for (int i = -1; i < paces; ++i) {
        const double pace = i < 0 ? 0.0 : slowestPace * std::pow(paceStep, i);
        if (const auto curve = curveOf(blocks, nowHours, pace))
            curves.push_back(*curve);
    }
    if (curves.empty())
        return std::nullopt;
    CoolingCurves found;
    found.best = *std::min_element(
        curves.begin(), curves.end(),
        [](const CoolingCurve& a, const CoolingCurve& b) { return a.squares < b.squares; });
    const double most = mostSquares(found.best.squares, blocks.size());
    std::copy_if(curves.begin(), curves.end(), std::back_inserter(found.accepted),
                 [most](const CoolingCurve& curve) { return curve.squares <= most; });
    return found;
}

} // namespace holdband::analysis
