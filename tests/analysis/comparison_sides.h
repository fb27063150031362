// Two runs for a comparison, equal except for what a test changes.
#pragma once

#include "core/analysis/comparison.h"
#include "tests/analysis/builders.h"

#include <algorithm>

namespace holdband::test {

/// One side with its data. Change `input`, then call analyse().
struct TrialSide {
    analysis::RunInput input;
    analysis::RunFigures figures;
    std::optional<double> parts;
    std::string placement = "in the beer";

    TrialSide& analyse()
    {
        figures = analysis::analyseRun(input);
        return *this;
    }
    analysis::ComparisonSide side() const { return {&input, &figures, parts, placement}; }
};

inline analysis::EnergySource source(std::string name, std::vector<MeterReading> readings,
                                     std::optional<double> accuracy)
{
    analysis::MeterRegister meter;
    meter.readings = std::move(readings);
    return {std::move(name), analysis::MeterCurve(meter, {}), {}, {}, accuracy};
}

inline Batch twentyHours()
{
    Batch batch = batchOf({hold("Hold", 20.0)}, 20.0);
    batch.volume = Volume::litres(20);
    batch.originalGravity = Gravity::specific(1.050);
    batch.finalGravity = Gravity::specific(1.010);
    return batch;
}

inline Series levelSeries(double celsius)
{
    return series({{0, celsius}, {5, celsius}, {10, celsius}, {15, celsius}, {20, celsius}});
}

/// 20 h at 20 °C under 30 °C, `kwh` used, read to 0.01 by a meter of accuracy 0.01.
inline TrialSide steadySide(std::string meter, double kwh)
{
    TrialSide side;
    side.input = runInput(twentyHours(), levelSeries(20.0), 300, 0.5);
    side.input.ambient = levelSeries(30.0);
    side.input.ambientGap = std::chrono::hours{5};
    side.input.setup = analysis::SetupEnergy(
        {source(std::move(meter), {meterReading(0, 0.0), meterReading(20, kwh)}, 0.01)});
    return side;
}

inline const analysis::Measure& measureOf(const analysis::RunComparison& comparison,
                                          analysis::MeasureId id)
{
    return *std::find_if(comparison.measures.begin(), comparison.measures.end(),
                         [&](const analysis::Measure& measure) { return measure.rule.id == id; });
}

inline analysis::RunComparison compare(TrialSide& a, TrialSide& b)
{
    a.analyse();
    b.analyse();
    return analysis::compareRuns(a.side(), b.side());
}

} // namespace holdband::test
