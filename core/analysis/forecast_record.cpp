#include "core/analysis/forecast_record.h"

#include "core/analysis/gravity.h"
#include "core/analysis/heat.h"
#include "core/analysis/hold_need.h"

#include <algorithm>

namespace holdband::analysis {

namespace {

PartHeat heatOf(const RunInput& input, const RunFigures& figures)
{
    PartHeat heat;
    if (!input.batch.volume)
        return heat;
    const auto& fermented = figures.fermentation;
    if (fermented)
        heat[BatchPart::beforeCrash] = fermentationHeat(
            extractFermentedKg(*input.batch.volume, fermented->original, fermented->final));
    heat[BatchPart::crash] = crashTargetHeat(figures.judged.stages, *input.batch.volume);
    return heat;
}

std::optional<PastPart> partOfRun(const RunInput& input, const SpanEnergy& part,
                                  std::optional<Energy> heat)
{
    if (input.ambient.empty() || !part.energy.any())
        return std::nullopt;
    const Lift lift = liftOver(input.ambient, input.ambientGap, input.judging.beer,
                               input.judging.gapLimit, part.energy.metered);
    return pastPart(part.energy, part.span, lift, heat);
}

PastBatch pastBatchOf(const RunInput& input, const RunFigures& figures)
{
    PastBatch past;
    past.batch = input.batch.name;
    const PartHeat heat = heatOf(input, figures);
    const RunEnergy& energy = figures.energy;
    if (!energy.crash) {
        past.parts[BatchPart::beforeCrash] =
            partOfRun(input, {{}, input.span, energy.whole}, heat[BatchPart::beforeCrash]);
        return past;
    }
    past.parts[BatchPart::beforeCrash] =
        partOfRun(input, *energy.beforeCrash, heat[BatchPart::beforeCrash]);
    past.parts[BatchPart::crash] = partOfRun(input, *energy.crash, heat[BatchPart::crash]);
    return past;
}

std::optional<PastCrash> crashOf(const RunInput& input, const RunFigures& figures)
{
    if (!figures.crash)
        return std::nullopt;
    const Instant turned = figures.judged.stages[*figures.crash].span.start;
    const double litres = input.batch.volume ? input.batch.volume->litres() : 0.0;
    return PastCrash{cover(input.judging.beer, input.judging.gapLimit, {turned, input.span.end}),
                     litres};
}

/// The stages' times in the band, as instants.
std::vector<Span> heldTimes(const RunFigures& figures)
{
    std::vector<Span> held;
    for (std::size_t i = 0; i < figures.judged.tracks.size(); ++i) {
        const double tolerance = figures.judged.stages[i].tolerance.kelvins();
        const auto spans = timesInBand(figures.judged.tracks[i].deviation, tolerance);
        held.insert(held.end(), spans.begin(), spans.end());
    }
    return unite(std::move(held));
}

std::optional<double> seenLiftOf(const RunInput& input, const RunFigures& figures)
{
    if (input.ambient.empty())
        return std::nullopt;
    const Track lift = liftTrack(input.ambient, input.ambientGap, input.judging.beer,
                                 input.judging.gapLimit, input.span);
    return seenLift(lift, heldTimes(figures), input.batch.pitched);
}

double coarsestResolution(const SetupEnergy& setup, Span span)
{
    double coarsest = 0.0;
    const std::set<std::string> inService = setup.inService(span);
    for (const EnergySource& source : setup.sources()) {
        const auto* curve = std::get_if<MeterCurve>(&source.curve);
        if (curve && inService.contains(source.name))
            coarsest = std::max(coarsest, curve->resolutionKwh());
    }
    return coarsest;
}

} // namespace

ForecastRecord forecastRecordOf(const RunInput& input, const RunFigures& figures,
                                const std::vector<Span>& between, Milliseconds quietAfter)
{
    ForecastRecord record;
    record.past = pastBatchOf(input, figures);
    record.quiet = quietPairs(input, figures.judged, between, quietAfter);
    record.shared = !figures.energy.sharedWith.empty();
    record.crash = crashOf(input, figures);
    record.seenLiftK = seenLiftOf(input, figures);
    record.resolutionKwh = coarsestResolution(input.setup, input.span);
    return record;
}

} // namespace holdband::analysis
