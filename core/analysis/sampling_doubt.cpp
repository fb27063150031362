#include "core/analysis/sampling_doubt.h"

#include "core/quantity/temperature.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace holdband::analysis {

namespace {

constexpr auto leastNotable = TemperatureDifference::fahrenheitDegrees(0.1);
constexpr double shareOfTolerance = 0.1;
/// Instants of a track and of an excursion that are this near are the same, ms.
constexpr double sameInstant = 1e-3;

/// A piece of a run, from point `at` to the next.
struct Piece {
    const Track& track;
    Run run;
    std::size_t at;

    double lengthMs() const { return track.ms[at + 1] - track.ms[at]; }
    double change() const { return std::abs(track.value[at + 1] - track.value[at]); }
};

double changeBeside(const Piece& piece)
{
    double greatest = 0.0;
    const std::size_t first = piece.at > piece.run.first ? piece.at - 1 : piece.at;
    const std::size_t last = std::min(piece.at + 1, piece.run.last - 1);
    for (std::size_t i = first; i <= last; ++i) {
        const Piece near{piece.track, piece.run, i};
        const double scale = std::min(1.0, piece.lengthMs() / near.lengthMs());
        greatest = std::max(greatest, scale * near.change());
    }
    return greatest;
}

/// The run that holds the instant; the later one of two that touch it.
std::optional<Run> runAt(const Track& track, double ms)
{
    const auto after =
        std::upper_bound(track.runs.begin(), track.runs.end(), ms + sameInstant,
                         [&](double at, const Run& run) { return at < track.ms[run.first]; });
    if (after == track.runs.begin() || ms > track.ms[std::prev(after)->last] + sameInstant)
        return std::nullopt;
    return *std::prev(after);
}

/// The first point of the run at or after the instant, or its last one.
std::size_t pointAt(const Track& track, Run run, double ms)
{
    const auto first = track.ms.begin() + static_cast<std::ptrdiff_t>(run.first);
    const auto last = track.ms.begin() + static_cast<std::ptrdiff_t>(run.last);
    return static_cast<std::size_t>(std::lower_bound(first, last, ms - sameInstant) -
                                    track.ms.begin());
}

void addPeak(const Track& track, const Excursion& excursion, SamplingDoubt& doubt)
{
    const auto run = runAt(track, excursion.peakMs);
    if (!run)
        return;
    const std::size_t point = pointAt(track, *run, excursion.peakMs);
    const bool atReading = track.ms[point] - excursion.peakMs <= sameInstant;
    const std::size_t first = point > run->first ? point - 1 : point;
    const std::size_t last = atReading ? std::min(point, run->last - 1) : first;
    for (std::size_t i = first; i <= last; ++i) {
        const Piece piece{track, *run, i};
        const double half = changeBeside(piece) / 2.0;
        if (half >= doubt.peak) {
            doubt.peak = half;
            doubt.pieceMs = piece.lengthMs();
        }
    }
}

/// Half the piece in which the excursion begins; 0 where the covered time, or the hold time, begins
/// beyond the edge.
double beginDoubt(const Track& track, const Excursion& excursion, double holdFromMs)
{
    const auto run = runAt(track, excursion.startMs);
    if (!run || excursion.startMs <= std::max(track.ms[run->first], holdFromMs) + sameInstant)
        return 0.0;
    return Piece{track, *run, pointAt(track, *run, excursion.startMs) - 1}.lengthMs() / 2.0;
}

/// Half the piece in which the excursion ends; 0 where the covered time ends beyond the edge.
double endDoubt(const Track& track, const Excursion& excursion)
{
    const auto run = runAt(track, excursion.endMs);
    if (!run || excursion.endMs >= track.ms[run->last] - sameInstant)
        return 0.0;
    const std::size_t point = pointAt(track, *run, excursion.endMs);
    return Piece{track, *run, point > run->first ? point - 1 : point}.lengthMs() / 2.0;
}

} // namespace

SamplingDoubt samplingDoubt(const StageTrack& track, const BandJudgement& judged,
                            const Excursion& excursion)
{
    SamplingDoubt doubt;
    addPeak(track.deviation, excursion, doubt);
    doubt.lengthMs = beginDoubt(track.deviation, excursion, judged.holdFromMs) +
                     endDoubt(track.deviation, excursion);
    return doubt;
}

bool isNotable(const SamplingDoubt& doubt, double tolerance)
{
    return doubt.peak >= leastNotable.kelvins() && doubt.peak > shareOfTolerance * tolerance;
}

} // namespace holdband::analysis
