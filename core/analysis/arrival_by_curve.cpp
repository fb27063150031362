#include "core/analysis/arrival_by_curve.h"

#include "core/analysis/cooling_curve.h"
#include "core/analysis/regression.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace holdband::analysis {

namespace {

constexpr double soonestForCurveH = 1.5; // h after turning down
constexpr std::size_t fewestBlocks = 6;
constexpr double leastFallK = 1.0;
constexpr double leastFallShare = 0.1; // of the whole way
constexpr double startLeftOutH = 0.25; // the cooler is only getting cold
constexpr double shortestWindowH = 3.0;
constexpr int blocksInWindow = 12;
constexpr double soonestForNeverH = 6.0; // h after turning down
constexpr double lowMargin = 0.95;
constexpr double highMargin = 1.05;
constexpr double infiniteHours = std::numeric_limits<double>::infinity();

/// The bounds before their margins, in hours; infinite for an open top.
struct HourBounds {
    double least = infiniteHours;
    double greatest = 0.0;

    void include(double hours)
    {
        least = std::min(least, hours);
        greatest = std::max(greatest, hours);
    }
};

/// Straight at a rate (K/h): the soonest that a fall which slows down can arrive.
double straightHours(double nowK, double rate, double bandK)
{
    if (nowK <= bandK)
        return 0.0;
    return rate > 0.0 ? (nowK - bandK) / rate : infiniteHours;
}

/// Newton's cooling to the floor, at a rate (K/h) now: the slowest way that still arrives.
double hoursToFloor(double nowK, double rate, const FallingWay& way)
{
    if (nowK <= way.bandK)
        return 0.0;
    if (!(rate > 0.0) || way.floorK >= way.bandK)
        return infiniteHours;
    const double aboveFloor = nowK - way.floorK;
    return aboveFloor / rate * std::log(aboveFloor / (way.bandK - way.floorK));
}

/// K/h, positive where it falls; absent for fewer than 3 blocks.
std::optional<double> rateOf(std::span<const TemperatureAt> blocks)
{
    std::vector<FitPoint> points;
    for (const auto& [hours, kelvins] : blocks)
        points.push_back({hours, kelvins});
    const std::optional<LinearFit> line = fitLine(points);
    if (!line)
        return std::nullopt;
    return -line->slope;
}

/// Another batch takes cooling by turns, so the present rate need not last: the rates of the
/// window's thirds bound it too.
void includeThirds(HourBounds& bounds, std::span<const TemperatureAt> blocks, double nowK,
                   const FallingWay& way)
{
    const std::size_t third = blocks.size() / 3;
    std::vector<double> rates;
    for (const auto part : {blocks.first(third), blocks.subspan(third, blocks.size() - 2 * third),
                            blocks.last(third)}) {
        if (const auto rate = rateOf(part))
            rates.push_back(*rate);
    }
    if (rates.empty())
        return;
    const auto [slowest, fastest] = std::minmax_element(rates.begin(), rates.end());
    bounds.least = std::min(bounds.least, straightHours(nowK, *fastest, way.bandK));
    bounds.greatest = std::max(bounds.greatest, hoursToFloor(nowK, *slowest, way));
}

ArrivalForecast tooEarly(NotYet reason)
{
    ArrivalForecast forecast;
    forecast.answer = ArrivalAnswer::notYet;
    forecast.notYet = reason;
    return forecast;
}

NotYet reasonToWait(const FallingWay& way, std::size_t blocks)
{
    if (way.nowH < soonestForCurveH)
        return NotYet::tooSoon;
    if (blocks < fewestBlocks)
        return NotYet::fewBlocks;
    const double fallen = way.beginningK - way.nowK;
    if (fallen < leastFallK || fallen < leastFallShare * way.wholeWay())
        return NotYet::hardlyFallen;
    return NotYet::none;
}

ArrivalForecast answerWithin(const HourBounds& bounds)
{
    ArrivalForecast forecast;
    forecast.source = ArrivalSource::curve;
    forecast.answer = ArrivalAnswer::openTop;
    if (bounds.least < infiniteHours)
        forecast.lowH = lowMargin * bounds.least;
    if (!(bounds.greatest < infiniteHours))
        return forecast;
    forecast.answer = ArrivalAnswer::hours;
    forecast.middleH = std::sqrt(bounds.least * bounds.greatest);
    forecast.highH = highMargin * bounds.greatest;
    return forecast;
}

ArrivalForecast willNotArrive(const CoolingCurve& best, const FallingWay& way)
{
    ArrivalForecast forecast;
    forecast.source = ArrivalSource::curve;
    forecast.answer = ArrivalAnswer::willNotArrive;
    const bool falls = best.rate > 0.0;
    forecast.levelsOffC = way.celsius(falls ? best.levelsOffAt().value_or(best.now) : best.now);
    return forecast;
}

/// Of the accepted curves that arrive. Where the best one does not, the top is open; where none
/// does, no way is shorter than straight on at the rate of now.
HourBounds boundsOf(const CoolingCurves& curves, const FallingWay& way)
{
    HourBounds bounds;
    for (const CoolingCurve& curve : curves.accepted) {
        if (const auto hours = curve.hoursTo(way.bandK))
            bounds.include(*hours);
    }
    const CoolingCurve& best = curves.best;
    const double slowest =
        best.hoursTo(way.bandK) ? hoursToFloor(best.now, best.rate, way) : infiniteHours;
    bounds.greatest = std::max(bounds.greatest, slowest);
    if (bounds.least < infiniteHours)
        return bounds;
    for (const CoolingCurve& curve : curves.accepted)
        bounds.least = std::min(bounds.least, straightHours(curve.now, curve.rate, way.bandK));
    return bounds;
}

bool noneArrives(const CoolingCurves& curves, const FallingWay& way)
{
    return std::none_of(
        curves.accepted.begin(), curves.accepted.end(),
        [&way](const CoolingCurve& curve) { return curve.hoursTo(way.bandK).has_value(); });
}

} // namespace

ArrivalForecast arrivalByCurve(const FallingWay& way, bool shared)
{
    const double window = std::max(shortestWindowH, way.nowH / 2.0);
    const double from = std::max(startLeftOutH, way.nowH - window);
    const std::vector<TemperatureAt> blocks =
        way.nowH > from ? blockMeans(way.fall, from, way.nowH, blocksInWindow)
                        : std::vector<TemperatureAt>{};
    if (const NotYet reason = reasonToWait(way, blocks.size()); reason != NotYet::none)
        return tooEarly(reason);
    const std::optional<CoolingCurves> curves = coolingCurvesOf(blocks, way.nowH);
    if (!curves)
        return tooEarly(NotYet::fewBlocks);
    const CoolingCurve& best = curves->best;
    if (way.nowH >= soonestForNeverH && noneArrives(*curves, way) && (!shared || best.rate <= 0.0))
        return willNotArrive(best, way);
    HourBounds bounds = boundsOf(*curves, way);
    if (shared)
        includeThirds(bounds, blocks, best.now, way);
    return answerWithin(bounds);
}

} // namespace holdband::analysis
