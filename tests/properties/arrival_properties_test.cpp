// Properties of the arrival of any crash.
#include "core/analysis/arrival_forecast.h"
#include "tests/analysis/crashes.h"
#include "tests/random.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <optional>
#include <rapidcheck/gtest.h>
#include <utility>
#include <vector>

namespace holdband::test {
namespace {

using namespace analysis;

/// Falls towards a level near the band, with noise of ± 0.05 K, for part of its way.
std::vector<TemperatureAt> noisyFall(double untilH)
{
    const NewtonFall fall{between(-400, 500) / 100.0, between(800, 2000) / 100.0,
                          between(3, 60) / 100.0};
    std::vector<TemperatureAt> readings = fall.readings(untilH, between(1, 6) / 10.0);
    for (TemperatureAt& reading : readings)
        reading.celsius += between(-50, 50) / 1000.0;
    return readings;
}

ArrivalQuestion anyQuestion(int mostPast)
{
    ArrivalQuestion question = toTwo(noisyFall(between(5, 120) / 10.0));
    question.toleranceK = between(1, 20) / 10.0;
    question.shared = between(0, 1) == 1;
    if (between(0, 1) == 1)
        question.floorC = between(-80, 40) / 10.0 + 0.05; // never on the edge of the band
    if (between(0, 1) == 1)
        question.litres = between(10, 40);
    for (int past = between(0, mostPast); past > 0; --past) {
        CrashRecord crash{
            noisyFall(60.0), {}, between(0, 3) == 1 ? !question.shared : question.shared};
        if (between(0, 1) == 1)
            crash.litres = between(10, 40);
        question.past.push_back(std::move(crash));
    }
    return question;
}

bool near(const std::optional<double>& a, const std::optional<double>& b)
{
    if (!a || !b)
        return a.has_value() == b.has_value();
    return std::abs(*a - *b) <= 1e-6 * (1.0 + std::abs(*a));
}

void assertSameHours(const ArrivalForecast& a, const ArrivalForecast& b)
{
    RC_ASSERT(a.answer == b.answer);
    RC_ASSERT(a.notYet == b.notYet);
    RC_ASSERT(a.source == b.source);
    RC_ASSERT(a.pastCrashes == b.pastCrashes);
    RC_ASSERT(a.byPace == b.byPace);
    RC_ASSERT(near(a.middleH, b.middleH));
    RC_ASSERT(near(a.lowH, b.lowH));
    RC_ASSERT(near(a.highH, b.highH));
}

RC_GTEST_PROP(ArrivalProperty, AWarmUpIsTheMirrorImage, ())
{
    const ArrivalQuestion question = anyQuestion(3);
    const double axis = between(-20, 20) / 2.0;
    const ArrivalForecast cold = arrivalForecastOf(question);
    const ArrivalForecast warm = arrivalForecastOf(mirrored(question, axis));
    assertSameHours(cold, warm);
    RC_ASSERT(cold.levelsOffC.has_value() == warm.levelsOffC.has_value());
    if (cold.levelsOffC)
        RC_ASSERT(std::abs(*cold.levelsOffC + *warm.levelsOffC - 2.0 * axis) < 1e-6);
}

RC_GTEST_PROP(ArrivalProperty, LowMiddleAndHighAreInOrder, ())
{
    const ArrivalForecast forecast = arrivalForecastOf(anyQuestion(3));
    RC_TAG(static_cast<int>(forecast.answer));
    const bool hours = forecast.answer == ArrivalAnswer::hours;
    RC_ASSERT(forecast.middleH.has_value() == hours);
    RC_ASSERT(forecast.highH.has_value() == hours);
    RC_ASSERT(forecast.levelsOffC.has_value() == (forecast.answer == ArrivalAnswer::willNotArrive));
    RC_ASSERT((forecast.notYet != NotYet::none) == (forecast.answer == ArrivalAnswer::notYet));
    if (forecast.lowH)
        RC_ASSERT(*forecast.lowH >= 0.0 && std::isfinite(*forecast.lowH));
    if (!hours)
        return;
    RC_ASSERT(*forecast.lowH <= *forecast.middleH);
    RC_ASSERT(*forecast.middleH <= *forecast.highH);
    RC_ASSERT(std::isfinite(*forecast.highH));
}

RC_GTEST_PROP(ArrivalProperty, AllTemperaturesShiftedByTheSameChangeNothing, ())
{
    ArrivalQuestion question = anyQuestion(3);
    const ArrivalForecast before = arrivalForecastOf(question);
    const double shift = between(-100, 100) / 10.0;
    const auto move = [shift](std::vector<TemperatureAt>& readings) {
        for (TemperatureAt& reading : readings)
            reading.celsius += shift;
    };
    move(question.readings);
    for (CrashRecord& crash : question.past)
        move(crash.readings);
    question.targetC += shift;
    if (question.floorC)
        *question.floorC += shift;
    const ArrivalForecast after = arrivalForecastOf(question);
    assertSameHours(before, after);
    if (before.levelsOffC)
        RC_ASSERT(std::abs(*before.levelsOffC + shift - *after.levelsOffC) < 1e-6);
}

RC_GTEST_PROP(ArrivalProperty, TheOrderOfPastCrashesChangesNothing, ())
{
    ArrivalQuestion question = anyQuestion(6);
    const ArrivalForecast before = arrivalForecastOf(question);
    std::reverse(question.past.begin(), question.past.end());
    const ArrivalForecast reversed = arrivalForecastOf(question);
    RC_ASSERT(before.middleH == reversed.middleH);
    RC_ASSERT(before.lowH == reversed.lowH);
    RC_ASSERT(before.highH == reversed.highH);
    assertSameHours(before, reversed);
}

RC_GTEST_PROP(ArrivalProperty, HoursThatRunSlowerByAFactorAreLongerByIt, ())
{
    ArrivalQuestion question = toTwo(noisyFall(between(5, 120) / 10.0));
    for (int past = between(1, 3); past > 0; --past)
        question.past.push_back({noisyFall(60.0), {}, false});
    const ArrivalForecast before = arrivalForecastOf(question);
    RC_PRE(before.source == ArrivalSource::pastCrashes);
    const double factor = between(10, 40) / 10.0;
    for (CrashRecord& crash : question.past) {
        for (TemperatureAt& reading : crash.readings)
            reading.hours *= factor;
    }
    for (TemperatureAt& reading : question.readings)
        reading.hours *= factor;
    const ArrivalForecast after = arrivalForecastOf(question);
    RC_ASSERT(near(*before.middleH * factor, after.middleH));
    RC_ASSERT(near(*before.highH * factor, after.highH));
}

} // namespace
} // namespace holdband::test
