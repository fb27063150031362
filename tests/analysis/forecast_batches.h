// Past batches and plans for the tests of forecasts. The two batches and the plan of the worked
// example are method.md 8.1's.
#pragma once

#include "core/analysis/forecast.h"
#include "core/analysis/heat.h"
#include "tests/analysis/lift_batches.h"

#include <optional>
#include <string>

namespace holdband::test {

inline double extractHeatKwh(double kilograms)
{
    return analysis::fermentationHeat(kilograms).kilowattHours();
}

/// 20 L from 18 to 2 °C.
inline double crashHeatKwh()
{
    return analysis::heatToCool(Volume::litres(20.0), Temperature::celsius(18.0),
                                Temperature::celsius(2.0))
        .kilowattHours();
}

inline analysis::PastPart past(double kwh, double hours, double liftK, std::optional<double> heat)
{
    return {{hours, liftK, heat}, kwh};
}

inline analysis::PastBatch pastBatch(const std::string& name,
                                     std::optional<analysis::PastPart> before,
                                     std::optional<analysis::PastPart> crash)
{
    analysis::PastBatch made;
    made.batch = name;
    made.parts[analysis::BatchPart::beforeCrash] = before;
    made.parts[analysis::BatchPart::crash] = crash;
    return made;
}

inline analysis::ForecastBasis workedBasis()
{
    analysis::ForecastBasis basis;
    basis.batches = {
        pastBatch("a", past(4.9, 192, 5, extractHeatKwh(1.6)), past(4.3, 72, 18, crashHeatKwh())),
        pastBatch("b", past(5.6, 192, 6, extractHeatKwh(1.6)), past(4.7, 72, 19, crashHeatKwh()))};
    basis.pairs = together(
        {batch("a", {{4, 20}, {6, 25}, {20, 57}}), batch("b", {{5, 23}, {7, 28}, {20, 60}})});
    basis.resolutionKwh = 0.01;
    return basis;
}

inline analysis::ForecastPlan workedPlan()
{
    analysis::ForecastPlan plan;
    plan.parts[analysis::BatchPart::beforeCrash] = {216, 4, extractHeatKwh(1.8)};
    plan.parts[analysis::BatchPart::crash] = {48, 20, crashHeatKwh()};
    return plan;
}

} // namespace holdband::test
