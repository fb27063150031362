// Short helpers to write series, stages and batches in tests. Times are hours from an arbitrary
// start.
#pragma once

#include "core/analysis/run.h"

#include <gtest/gtest.h>
#include <initializer_list>
#include <utility>

namespace holdband::test {

inline const Instant zero = instantFromMs(1'772'000'000'000);

inline Instant hour(double hours)
{
    return zero + toMilliseconds(Hours{hours});
}

inline Series series(std::initializer_list<std::pair<double, double>> points)
{
    Series result;
    for (const auto& [hours, value] : points) {
        result.at.push_back(hour(hours));
        result.value.push_back(value);
    }
    return result;
}

inline Stage hold(std::string label, double celsius, std::optional<double> hours = {})
{
    Stage stage;
    stage.label = std::move(label);
    stage.target = Temperature::celsius(celsius);
    if (hours)
        stage.length = Hours{*hours};
    return stage;
}

inline Stage ramp(std::string label, double celsius, double hours)
{
    Stage stage = hold(std::move(label), celsius, hours);
    stage.kind = StageKind::ramp;
    return stage;
}

/// A batch pitched at hour 0 with a tolerance of ±1 K.
inline Batch batchOf(Schedule schedule, std::optional<double> endedHour)
{
    Batch batch;
    batch.name = "Trial";
    batch.setup = "Loop";
    batch.pitched = zero;
    if (endedHour)
        batch.ended = hour(*endedHour);
    batch.beerSensor = "Beer";
    batch.tolerance = TemperatureDifference::kelvins(1.0);
    batch.schedule = std::move(schedule);
    return batch;
}

inline analysis::RunInput runInput(const Batch& batch, Series beer, double gapMinutes,
                                   std::optional<double> accuracy = {})
{
    analysis::RunInput input;
    input.batch = batch;
    const Instant end = batch.ended.value_or(beer.at.empty() ? batch.pitched : beer.at.back());
    input.span = {batch.pitched, end};
    input.judging.beer = std::move(beer);
    input.judging.gapLimit = toMilliseconds(Hours{gapMinutes / 60.0});
    if (accuracy)
        input.judging.accuracy = TemperatureDifference::kelvins(*accuracy);
    input.judging.ignoreShorterThan = batch.ignoreShorterThan;
    input.judging.bandTimes = batch.bandTimes;
    input.judging.open = !batch.ended;
    input.concurrentBatches = {{input.span, 1.0}};
    return input;
}

/// The batch judged alone, as planned and with the sensor's uncertainty.
inline analysis::JudgedBatch judged(const Batch& batch, Series beer, double gapMinutes,
                                    std::optional<double> accuracy = {})
{
    const analysis::RunInput input = runInput(batch, std::move(beer), gapMinutes, accuracy);
    return analysis::judgeBatch(analysis::placeStages(batch, input.span.end), input.judging,
                                input.settings);
}

inline constexpr double hourMs = 3.6e6;

inline MeterReading meterReading(double hours, double kwh, int decimals = 2,
                                 std::optional<MeterEvent> event = {})
{
    return {hour(hours), Energy::kilowattHours(kwh), decimals, event, {}};
}

inline Span hourSpan(double from, double to)
{
    return {hour(from), hour(to)};
}

inline analysis::EnergySource meterSource(std::string name, std::vector<MeterReading> readings,
                                          std::optional<double> from = {},
                                          std::optional<double> to = {},
                                          std::optional<double> accuracy = {})
{
    analysis::MeterRegister meterRegister;
    meterRegister.readings = std::move(readings);
    analysis::EnergySource source{
        std::move(name), analysis::MeterCurve(meterRegister, {}), {}, {}, accuracy};
    if (from)
        source.from = hour(*from);
    if (to)
        source.to = hour(*to);
    return source;
}

inline analysis::SetupEnergy oneMeter(std::vector<MeterReading> readings,
                                      std::optional<double> resolution = {},
                                      std::optional<Power> rated = {},
                                      std::optional<double> top = {})
{
    analysis::MeterRegister meter;
    meter.readings = std::move(readings);
    if (resolution)
        meter.resolution = Energy::kilowattHours(*resolution);
    if (top)
        meter.rollsOverAt = Energy::kilowattHours(*top);
    return analysis::SetupEnergy({{"Meter", analysis::MeterCurve(meter, rated), {}, {}, {}}});
}

inline void expectFigure(const analysis::EnergyFigure& figure, double kwh, double low, double high)
{
    EXPECT_NEAR(figure.kwh, kwh, 1e-9);
    EXPECT_NEAR(figure.low, low, 1e-9);
    EXPECT_TRUE(figure.high == high || std::abs(figure.high - high) < 1e-9)
        << figure.high << " against " << high;
}

/// The readings of the worked example of the method.
inline Series workedSeries()
{
    return series({{0, 20.0},
                   {1, 20.5},
                   {2, 21.5},
                   {3, 22.0},
                   {4, 20.0},
                   {5, 19.5},
                   {6, 18.5},
                   {7, 19.5},
                   {9, 20.0},
                   {10, 20.0}});
}

} // namespace holdband::test
