#include "core/analysis/planned_lift.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace holdband::analysis {

namespace {

constexpr double smallestRampK = 1e-4; // below it, a difference of integrals would lose digits

/// The integral of meanLiftOfWave over `aboveK`, from −∞.
double waveIntegral(double aboveK, double amplitudeK)
{
    const double square = amplitudeK * amplitudeK;
    if (aboveK <= -amplitudeK)
        return 0.0;
    if (aboveK >= amplitudeK)
        return aboveK * aboveK / 2.0 + square / 4.0;
    const double root = std::sqrt(square - aboveK * aboveK);
    return square / 8.0 + (std::numbers::pi * aboveK * aboveK / 4.0 +
                           (aboveK * aboveK / 2.0 + square / 4.0) * std::asin(aboveK / amplitudeK) +
                           0.75 * aboveK * root) /
                              std::numbers::pi;
}

double lengthMs(const PlacedStage& stage)
{
    return static_cast<double>((stage.span.end - stage.span.start).count());
}

Track targetTrack(const PlacedStage& stage)
{
    const double ms = lengthMs(stage);
    return {stage.span.start,
            {0.0, ms},
            {stage.targetCelsiusAt(0.0), stage.targetCelsiusAt(ms)},
            {{0, 1}}};
}

/// The track with its times counted from another instant.
Track countedFrom(Track track, Instant origin)
{
    const auto shift = static_cast<double>((track.origin - origin).count());
    for (double& ms : track.ms)
        ms += shift;
    track.origin = origin;
    return track;
}

Track roomTrack(const PlacedStage& stage, const PlannedRoom& room)
{
    const double ms = lengthMs(stage);
    if (const auto* typed = std::get_if<TypedRoom>(&room))
        return {stage.span.start, {0.0, ms}, {typed->meanCelsius, typed->meanCelsius}, {{0, 1}}};
    const Track& picked = std::get<Track>(room);
    const auto from = static_cast<double>((stage.span.start - picked.origin).count());
    return countedFrom(clip(picked, from, from + ms), stage.span.start);
}

Lift typedLift(const PlacedStage& stage, const TypedRoom& room)
{
    const double hours = stage.span.hours();
    const double from = room.meanCelsius - stage.targetCelsiusAt(0.0);
    const double to = room.meanCelsius - stage.targetCelsiusAt(lengthMs(stage));
    const double amplitude = room.swingK / 2.0;
    return {meanLiftOfWave(from, to, amplitude) * hours,
            meanLiftOfWave(-from, -to, amplitude) * hours, hours, hours};
}

} // namespace

double roomDoubtK(const PlannedRoom& room)
{
    return std::holds_alternative<TypedRoom>(room) ? typedRoomDoubtK : 0.0;
}

double meanLiftOfWave(double aboveK, double amplitudeK)
{
    if (std::abs(aboveK) >= amplitudeK)
        return std::max(0.0, aboveK);
    return (aboveK * (std::numbers::pi / 2.0 + std::asin(aboveK / amplitudeK)) +
            std::sqrt(amplitudeK * amplitudeK - aboveK * aboveK)) /
           std::numbers::pi;
}

double meanLiftOfWave(double fromAboveK, double toAboveK, double amplitudeK)
{
    if (std::abs(toAboveK - fromAboveK) < smallestRampK)
        return meanLiftOfWave((fromAboveK + toAboveK) / 2.0, amplitudeK);
    return (waveIntegral(toAboveK, amplitudeK) - waveIntegral(fromAboveK, amplitudeK)) /
           (toAboveK - fromAboveK);
}

Track aboveTarget(const PlacedStage& stage, const PlannedRoom& room)
{
    return difference(roomTrack(stage, room), targetTrack(stage));
}

std::vector<Lift> plannedLifts(const std::vector<PlacedStage>& stages, const PlannedRoom& room)
{
    std::vector<Lift> lifts;
    for (const PlacedStage& stage : stages) {
        const auto* typed = std::get_if<TypedRoom>(&room);
        lifts.push_back(typed ? typedLift(stage, *typed)
                              : liftOf(aboveTarget(stage, room), stage.span.hours()));
    }
    return lifts;
}

} // namespace holdband::analysis
