#include "core/analysis/arrival_forecast.h"

#include "core/analysis/arrival_by_curve.h"
#include "core/analysis/arrival_spread.h"
#include "core/analysis/falling_way.h"

#include <algorithm>
#include <cmath>

namespace holdband::analysis {

namespace {

constexpr double soonestByPastH = 0.5;  // h after turning down
constexpr double paceStartShare = 0.15; // of the whole way: the pace counts from there
constexpr double paceShare = 0.25;      // of the whole way, past that start

/// How the running crash's pace is compared with a past one's.
struct Pace {
    double startK = 0.0;
    double hours = 0.0; ///< from startK to now
};

/// Absent while it has not gone far enough.
std::optional<Pace> paceOf(const FallingWay& way)
{
    const double startK = way.beginningK - paceStartShare * way.wholeWay();
    if (startK - way.nowK < paceShare * way.wholeWay())
        return std::nullopt;
    const std::optional<double> passed = firstAtOrBelow(way.fall, startK);
    if (!passed || way.nowH <= *passed)
        return std::nullopt;
    return Pace{startK, way.nowH - *passed};
}

/// This batch's litres for one of the past crash's; 1 where either is unknown.
double volumeRatio(const std::optional<double>& litres, const std::optional<double>& past)
{
    const bool known = litres && past && *litres > 0.0 && *past > 0.0;
    const double ratio = known ? *litres / *past : 1.0;
    return std::isfinite(ratio) && ratio > 0.0 ? ratio : 1.0;
}

/// The logarithm of the hours that a past crash promises; absent where it did not pass from the
/// temperature now to the band.
std::optional<double> promised(const CrashRecord& crash, const ArrivalQuestion& question,
                               const FallingWay& way, const std::optional<Pace>& pace)
{
    const std::vector<TemperatureAt> fall = way.inKelvins(crash.readings);
    if (fall.empty() || beginningOf(fall) < way.nowK)
        return std::nullopt;
    const std::optional<double> hours = hoursFromTo(fall, way.nowK, way.bandK);
    if (!hours || !(*hours > 0.0))
        return std::nullopt;
    if (!pace)
        return std::log(*hours * volumeRatio(question.litres, crash.litres));
    const std::optional<double> then = hoursFromTo(fall, pace->startK, way.nowK);
    if (!then || !(*then > 0.0))
        return std::nullopt;
    return std::log(*hours * pace->hours / *then);
}

std::vector<double> allPromised(const ArrivalQuestion& question, const FallingWay& way,
                                const std::optional<Pace>& pace)
{
    std::vector<double> logarithms;
    for (const CrashRecord& crash : question.past) {
        if (crash.shared != question.shared)
            continue;
        if (const auto each = promised(crash, question, way, pace))
            logarithms.push_back(*each);
    }
    std::sort(logarithms.begin(), logarithms.end()); // so that their order changes no digit
    return logarithms;
}

ArrivalForecast byPastCrashes(std::span<const double> logarithms, bool shared)
{
    const HoursRange hours = oneMoreOf(logarithms, assumedSpreadOf(shared).crashDuration);
    ArrivalForecast forecast;
    forecast.answer = ArrivalAnswer::hours;
    forecast.source = ArrivalSource::pastCrashes;
    forecast.pastCrashes = logarithms.size();
    forecast.middleH = hours.middle;
    forecast.lowH = hours.low;
    forecast.highH = hours.high;
    return forecast;
}

} // namespace

ArrivalForecast arrivalForecastOf(const ArrivalQuestion& question)
{
    const std::optional<FallingWay> way = FallingWay::of(question);
    ArrivalForecast forecast;
    if (!way)
        return forecast;
    if (way->arrived()) {
        forecast.answer = ArrivalAnswer::arrived;
        return forecast;
    }
    const std::optional<Pace> pace = paceOf(*way);
    const std::vector<double> logarithms = allPromised(question, *way, pace);
    if (logarithms.empty())
        return arrivalByCurve(*way, question.shared);
    if (way->nowH < soonestByPastH) {
        forecast.answer = ArrivalAnswer::notYet;
        forecast.notYet = NotYet::tooSoon;
        return forecast;
    }
    forecast = byPastCrashes(logarithms, question.shared);
    forecast.byPace = pace.has_value();
    return forecast;
}

} // namespace holdband::analysis
