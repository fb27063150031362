#include "core/analysis/forecast_spread.h"

#include <boost/math/distributions/students_t.hpp>

namespace holdband::analysis {

namespace {

constexpr double assumptionFreedom = 4.0; // degrees, the weight of the assumed spread
constexpr double forecastUpperShare = 0.95;

} // namespace

ModeratedSpread moderatedSpread(double assumedVariance, double squares, std::size_t errors)
{
    if (errors == 0)
        return {assumedVariance, assumptionFreedom, 0};
    const double freedom = assumptionFreedom - 1.0 + static_cast<double>(errors);
    return {(assumptionFreedom * assumedVariance + squares) / freedom, freedom, errors};
}

double forecastQuantile(const ModeratedSpread& spread)
{
    return boost::math::quantile(boost::math::students_t(spread.freedom), forecastUpperShare);
}

} // namespace holdband::analysis
