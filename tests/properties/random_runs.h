// Random series, plans and registers for properties. Values are multiples of 1/16 K and full
// minutes, as from loggers, so that edges and ties do occur.
#pragma once

#include "tests/analysis/builders.h"
#include "tests/random.h"

namespace holdband::test {

inline constexpr double tiny = 1e-9;

inline int below(int end)
{
    return *rc::gen::resize(100, rc::gen::inRange(0, end));
}

inline double sixteenths(int low, int high)
{
    return between(low * 16, high * 16) / 16.0;
}

inline Instant minutesFromZero(int minutes)
{
    return zero + Milliseconds{60'000LL * minutes};
}

/// From some minutes before pitching on; steps of 5 to 20 min, sometimes a gap of hours.
inline Series randomBeer()
{
    Series beer;
    int minute = between(-30, 30);
    double value = sixteenths(17, 24);
    const int count = between(2, 60);
    for (int i = 0; i < count; ++i) {
        beer.at.push_back(minutesFromZero(minute));
        beer.value.push_back(value);
        minute += below(8) == 0 ? between(60, 240) : between(5, 20);
        value += below(3) == 0 ? 0.0 : sixteenths(-2, 2);
    }
    return beer;
}

inline Stage randomStage(bool first)
{
    Stage stage = hold("Stage", between(18, 22), between(1, 12) / 2.0);
    if (!first && below(4) == 0)
        stage.kind = StageKind::ramp;
    if (below(3) == 0)
        stage.tolerance = TemperatureDifference::kelvins(between(1, 8) / 4.0);
    if (below(2) == 0)
        stage.settleAllowed = Hours{between(0, 4) / 1.0};
    return stage;
}

inline Batch randomBatch()
{
    Batch batch = batchOf({}, std::nullopt);
    const int stages = between(1, 4);
    for (int i = 0; i < stages; ++i)
        batch.schedule.push_back(randomStage(i == 0));
    if (below(2) == 0)
        batch.schedule.back().length.reset();
    batch.ended = hour(between(1, 30) / 2.0);
    batch.tolerance = TemperatureDifference::kelvins(between(1, 8) / 4.0);
    return batch;
}

/// A register read every few hours; sometimes it is reset or drops without a reason.
inline std::vector<MeterReading> randomReadings(bool withEvents)
{
    std::vector<MeterReading> readings;
    int minute = between(-600, 120);
    int hundredths = between(0, 5000);
    const int count = between(2, 12);
    for (int i = 0; i < count; ++i) {
        MeterReading reading{
            minutesFromZero(minute), Energy::kilowattHours(hundredths / 100.0), 2, {}, {}};
        if (withEvents && i > 0 && below(6) == 0) {
            hundredths = between(0, 100);
            reading.registerReading = Energy::kilowattHours(hundredths / 100.0);
            if (below(2) == 0)
                reading.event = MeterEvent::reset;
        }
        readings.push_back(reading);
        minute += between(1, 300);
        hundredths += between(0, 150);
    }
    return readings;
}

inline std::optional<Power> randomPower()
{
    return below(2) == 0 ? std::nullopt : std::optional(Power::watts(between(50, 900)));
}

inline analysis::MeterCurve randomCurve(bool withEvents)
{
    analysis::MeterRegister meter;
    meter.readings = randomReadings(withEvents);
    return {meter, randomPower()};
}

inline Span randomSpan()
{
    const int start = between(-700, 3000);
    return {minutesFromZero(start), minutesFromZero(start + between(1, 1500))};
}

} // namespace holdband::test
