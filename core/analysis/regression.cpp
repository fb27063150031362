#include "core/analysis/regression.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace holdband::analysis {

namespace {

constexpr std::size_t fewestPoints = 3;

/// The points with weights scaled to a mean of 1; empty where any weight is not positive.
std::vector<FitPoint> scaledWeights(std::span<const FitPoint> points)
{
    double sum = 0.0;
    for (const FitPoint& point : points) {
        if (!(point.weight > 0.0))
            return {};
        sum += point.weight;
    }
    std::vector<FitPoint> scaled(points.begin(), points.end());
    for (FitPoint& point : scaled)
        point.weight *= static_cast<double>(points.size()) / sum;
    return scaled;
}

double meanOfMeasured(std::span<const double> values)
{
    double sum = 0.0;
    for (const double value : values)
        sum += value;
    return sum / static_cast<double>(values.size());
}

bool comparable(std::span<const double> measured, std::span<const double> predicted)
{
    return measured.size() == predicted.size() && measured.size() >= fewestPoints &&
           meanOfMeasured(measured) != 0.0;
}

} // namespace

std::optional<LinearFit> fitLine(std::span<const FitPoint> given)
{
    const std::vector<FitPoint> points = scaledWeights(given);
    if (points.size() < fewestPoints)
        return std::nullopt;
    const auto n = static_cast<double>(points.size());
    LinearFit fit;
    fit.count = points.size();
    for (const FitPoint& point : points) {
        fit.meanX += point.weight * point.x / n;
        fit.meanY += point.weight * point.y / n;
    }
    double products = 0.0;
    double spreadY = 0.0;
    for (const auto& [x, y, weight] : points) {
        fit.spreadX += weight * (x - fit.meanX) * (x - fit.meanX);
        products += weight * (x - fit.meanX) * (y - fit.meanY);
        spreadY += weight * (y - fit.meanY) * (y - fit.meanY);
    }
    if (!(fit.spreadX > 0.0))
        return std::nullopt;
    fit.slope = products / fit.spreadX;
    fit.intercept = fit.meanY - fit.slope * fit.meanX;
    double squares = 0.0;
    for (const auto& [x, y, weight] : points) {
        const double residual = (y - fit.meanY) - fit.slope * (x - fit.meanX);
        squares += weight * residual * residual;
    }
    fit.residualSd = std::sqrt(squares / (n - 2.0));
    fit.rSquared = spreadY > 0.0 ? std::max(0.0, 1.0 - squares / spreadY) : 0.0;
    fit.slopeError = fit.residualSd / std::sqrt(fit.spreadX);
    fit.interceptError = fit.residualSd * std::sqrt(1.0 / n + fit.meanX * fit.meanX / fit.spreadX);
    return fit;
}

void FitSums::addTimes(const FitPoint& point, double times)
{
    const double x = point.x - m_originX;
    const double y = point.y - m_originY;
    const double w = times * point.weight;
    m_count += times;
    m_w += w;
    m_wx += w * x;
    m_wy += w * y;
    m_wxx += w * x * x;
    m_wxy += w * x * y;
    m_wyy += w * y * y;
}

void FitSums::remove(const FitSums& sums)
{
    m_count -= sums.m_count;
    m_w -= sums.m_w;
    m_wx -= sums.m_wx;
    m_wy -= sums.m_wy;
    m_wxx -= sums.m_wxx;
    m_wxy -= sums.m_wxy;
    m_wyy -= sums.m_wyy;
}

std::optional<LinearFit> FitSums::fit() const
{
    constexpr double nothing = 1e-12; // of a sum, where only rounding is left
    const double n = std::round(m_count);
    if (n < static_cast<double>(fewestPoints) || !(m_w > 0.0))
        return std::nullopt;
    const double scale = n / m_w;
    const double meanX = m_wx / m_w;
    const double meanY = m_wy / m_w;
    LinearFit fit;
    fit.count = static_cast<std::size_t>(n);
    fit.meanX = m_originX + meanX;
    fit.meanY = m_originY + meanY;
    fit.spreadX = scale * (m_wxx - m_wx * meanX);
    if (!(fit.spreadX > nothing * scale * m_wxx))
        return std::nullopt;
    const double spreadY = std::max(0.0, scale * (m_wyy - m_wy * meanY));
    const double products = scale * (m_wxy - m_wx * meanY);
    fit.slope = products / fit.spreadX;
    fit.intercept = fit.meanY - fit.slope * fit.meanX;
    const double squares = std::max(0.0, spreadY - fit.slope * products);
    fit.residualSd = std::sqrt(squares / (n - 2.0));
    fit.rSquared = spreadY > 0.0 ? std::max(0.0, 1.0 - squares / spreadY) : 0.0;
    fit.slopeError = fit.residualSd / std::sqrt(fit.spreadX);
    fit.interceptError = fit.residualSd * std::sqrt(1.0 / n + fit.meanX * fit.meanX / fit.spreadX);
    return fit;
}

std::optional<double> LinearFit::cvRmse() const
{
    return meanY != 0.0 ? std::optional(residualSd / std::abs(meanY)) : std::nullopt;
}

std::optional<double> cvRmse(std::span<const double> measured, std::span<const double> predicted)
{
    if (!comparable(measured, predicted))
        return std::nullopt;
    double squares = 0.0;
    for (std::size_t i = 0; i < measured.size(); ++i)
        squares += (measured[i] - predicted[i]) * (measured[i] - predicted[i]);
    const double divisor = static_cast<double>(measured.size()) - 2.0;
    return std::sqrt(squares / divisor) / std::abs(meanOfMeasured(measured));
}

std::optional<double> nmbe(std::span<const double> measured, std::span<const double> predicted)
{
    if (!comparable(measured, predicted))
        return std::nullopt;
    double bias = 0.0;
    for (std::size_t i = 0; i < measured.size(); ++i)
        bias += measured[i] - predicted[i];
    const double divisor = static_cast<double>(measured.size()) - 2.0;
    return bias / (divisor * meanOfMeasured(measured));
}

} // namespace holdband::analysis
