// Crashes by formula, for the tests of their arrival.
#pragma once

#include "core/analysis/arrival_forecast.h"

#include <cmath>
#include <utility>
#include <vector>

namespace holdband::test {

/// Newton's cooling from `level` + `above` to `level`, °C, a reading each `step` h up to `untilH`.
struct NewtonFall {
    double level = 2.0;
    double above = 16.0;
    double pace = 0.2; ///< 1/h

    std::vector<analysis::TemperatureAt> readings(double untilH, double step = 0.25) const
    {
        std::vector<analysis::TemperatureAt> made;
        for (int i = 0; i * step <= untilH + 1e-9; ++i)
            made.push_back({i * step, level + above * std::exp(-pace * i * step)});
        return made;
    }
};

/// A straight fall from `from` °C by `rate` K/h.
inline std::vector<analysis::TemperatureAt> straightFall(double from, double rate, double untilH,
                                                         double step = 0.25)
{
    std::vector<analysis::TemperatureAt> made;
    for (int i = 0; i * step <= untilH + 1e-9; ++i)
        made.push_back({i * step, from - rate * i * step});
    return made;
}

/// To 2 ± 1 °C.
inline analysis::ArrivalQuestion toTwo(std::vector<analysis::TemperatureAt> readings)
{
    analysis::ArrivalQuestion question;
    question.readings = std::move(readings);
    question.targetC = 2.0;
    question.toleranceK = 1.0;
    return question;
}

/// The same question for a warm-up: every temperature about `axis` °C.
inline analysis::ArrivalQuestion mirrored(analysis::ArrivalQuestion question, double axis)
{
    const auto mirror = [axis](double& celsius) { celsius = 2.0 * axis - celsius; };
    for (analysis::TemperatureAt& reading : question.readings)
        mirror(reading.celsius);
    for (analysis::CrashRecord& crash : question.past) {
        for (analysis::TemperatureAt& reading : crash.readings)
            mirror(reading.celsius);
    }
    if (question.floorC)
        mirror(*question.floorC);
    mirror(question.targetC);
    return question;
}

} // namespace holdband::test
