#include "core/analysis/run.h"

#include "core/analysis/gravity.h"
#include "core/analysis/heat.h"

#include <algorithm>

namespace holdband::analysis {

std::optional<double> meanWatts(const EnergyFigure& energy)
{
    const double hours = energy.meteredMs() / msPerHour;
    return hours > 0.0 ? std::optional(energy.kwh * 1000.0 / hours) : std::nullopt;
}

bool RunEnergy::partlyMetered() const
{
    const auto all = static_cast<double>((span.end - span.start).count());
    return whole.any() && whole.meteredMs() < all;
}

std::optional<double> RunEnergy::meanWatts() const
{
    return analysis::meanWatts(whole);
}

std::optional<double> CrashHeat::effectivePerformance() const
{
    if (!energy.any() || !(energy.kwh > 0.0))
        return std::nullopt;
    return moved.kilowattHours() / energy.kwh;
}

namespace {

/// Instants at which any meter of the setup was read, inside the span.
std::vector<Instant> readingInstants(const SetupEnergy& setup, Span span)
{
    std::vector<Instant> instants;
    for (const EnergySource& source : setup.sources()) {
        const auto* curve = std::get_if<MeterCurve>(&source.curve);
        for (std::size_t i = 0; curve && i < curve->size(); ++i) {
            if (curve->at(i) >= span.start && curve->at(i) <= span.end)
                instants.push_back(curve->at(i));
        }
    }
    std::sort(instants.begin(), instants.end());
    instants.erase(std::unique(instants.begin(), instants.end()), instants.end());
    return instants;
}

SpanEnergy energyOf(const RunInput& input, const RunEnergy& energy, std::string label, Span span)
{
    return {std::move(label), span, shareOver(input.setup, energy.shares, span)};
}

void addSlots(const RunInput& input, RunEnergy& energy)
{
    const std::vector<Instant> read = readingInstants(input.setup, input.span);
    for (std::size_t i = 1; i < read.size(); ++i)
        energy.betweenReadings.push_back(energyOf(input, energy, {}, {read[i - 1], read[i]}));
}

void addWeather(const RunInput& input, RunEnergy& energy)
{
    if (input.ambient.empty())
        return;
    const auto over = [&](const std::vector<Span>& spans) {
        return liftOver(input.ambient, input.ambientGap, input.judging.beer, input.judging.gapLimit,
                        spans);
    };
    const Lift whole = over({input.span});
    if (!whole.any())
        return;
    energy.lift = whole;
    if (!energy.whole.any())
        return;
    const bool all = energy.whole.metered == std::vector{input.span};
    energy.meteredLift = all ? whole : over(energy.whole.metered);
    energy.kwhPerDegreeDay = energyPerDegreeDay(energy.whole.kwh, *energy.meteredLift);
}

/// The judged stages over the span of the energy, which ends later in an open batch: there the last
/// stage continues.
void addStages(const RunInput& input, const RunFigures& figures, RunEnergy& energy)
{
    std::vector<PlacedStage> stages = placeStages(input.batch, input.span.end);
    stages.resize(std::min(stages.size(), figures.judged.stages.size()));
    for (const PlacedStage& stage : stages)
        energy.stages.push_back(energyOf(input, energy, stage.label, stage.span));
    if (!figures.crash)
        return;
    const Instant turn = stages[*figures.crash].span.start;
    energy.beforeCrash = energyOf(input, energy, "before the crash", {input.span.start, turn});
    energy.crash = energyOf(input, energy, "the crash", {turn, input.span.end});
}

RunEnergy energyOfRun(const RunInput& input, const RunFigures& figures)
{
    RunEnergy energy;
    energy.span = input.span;
    energy.shares = sharesOf(input.concurrentBatches, input.self);
    energy.sharedWith = sharedTimes(input.concurrentBatches, input.self, input.span);
    energy.whole = shareOver(input.setup, energy.shares, input.span);
    energy.cost = costOver(input.setup, energy.shares, input.prices, input.span);
    addStages(input, figures, energy);
    for (const LabelledSpan& day : input.days)
        energy.days.push_back(energyOf(input, energy, day.label, day.span));
    addSlots(input, energy);
    addWeather(input, energy);
    return energy;
}

/// Absent without a crash that settled and arrived, or without a volume.
std::optional<CrashHeat> heatOfCrash(const RunInput& input, const RunFigures& figures)
{
    if (!figures.crash || !input.batch.volume)
        return std::nullopt;
    const BandJudgement& judged = figures.judged.asPlanned.stages[*figures.crash];
    const PlacedStage& stage = figures.judged.stages[*figures.crash];
    const Track& track = figures.judged.tracks[*figures.crash].deviation;
    if (!judged.settles || !judged.arrival)
        return std::nullopt;
    const auto beerAt = [&](double deviation) {
        return stage.startTarget + TemperatureDifference::kelvins(deviation);
    };
    const auto at = [&](double ms) {
        return stage.span.start + toMilliseconds(Hours{ms / msPerHour});
    };
    CrashHeat heat;
    heat.from = beerAt(track.value.front());
    heat.to = beerAt(judged.arrival->deviation);
    heat.span = {at(track.ms.front()), at(judged.arrival->ms)};
    heat.moved = heatToCool(*input.batch.volume, heat.from, heat.to);
    heat.energy = shareOver(input.setup, figures.energy.shares, heat.span);
    return heat;
}

std::vector<GravityPoint> gravitiesOf(const RunInput& input)
{
    std::vector<GravityPoint> points;
    const auto& original = input.batch.originalGravity;
    for (const GravityReading& reading : input.gravities) {
        GravityPoint point{reading, reading.gravity, std::nullopt};
        if (reading.sample)
            point.gravity =
                correctedForTemperature(reading.gravity, *reading.sample, hydrometerCalibration);
        if (original)
            point.apparentAttenuation = apparentAttenuation(*original, point.gravity);
        points.push_back(point);
    }
    return points;
}

/// Where no final gravity is given, the last measured one is used.
std::optional<Fermentation> fermentationOf(const Batch& batch,
                                           const std::vector<GravityPoint>& measured)
{
    if (!batch.originalGravity || (!batch.finalGravity && measured.empty()))
        return std::nullopt;
    Fermentation result;
    result.original = *batch.originalGravity;
    result.final = batch.finalGravity ? *batch.finalGravity : measured.back().gravity;
    if (!batch.finalGravity)
        result.measuredAt = measured.back().reading.at;
    result.apparentAttenuation = apparentAttenuation(result.original, result.final);
    result.realAttenuation = realAttenuation(result.original, result.final);
    result.alcoholSimple = alcoholSimple(result.original, result.final);
    result.alcoholBalling = alcoholBalling(result.original, result.final);
    return result;
}

} // namespace

std::vector<PlacedStage> judgedStages(const RunInput& input)
{
    return placeStages(input.batch, input.judgedTo.value_or(input.span.end));
}

RunFigures judgeRun(const RunInput& input, Detail detail)
{
    RunFigures figures;
    figures.judged = judgeBatch(judgedStages(input), input.judging, input.settings, detail);
    for (std::size_t i = 0; i < figures.judged.stages.size(); ++i)
        figures.stages.push_back(stageFigures(figures.judged, i));
    figures.leftOut = leftOutFigures(figures.judged, input.judging, input.judging, input.settings);
    figures.crash = crashStage(figures.judged.stages);
    return figures;
}

RunFigures analyseRun(const RunInput& input, Detail detail)
{
    RunFigures figures = judgeRun(input, detail);
    figures.energy = energyOfRun(input, figures);
    figures.crashHeat = heatOfCrash(input, figures);
    figures.gravities = gravitiesOf(input);
    figures.fermentation = fermentationOf(input.batch, figures.gravities);
    return figures;
}

} // namespace holdband::analysis
