#include "core/results/run/provenance.h"

#include "core/analysis/calibration.h"
#include "core/store/records/equipment.h"

#include <algorithm>

namespace holdband::results {

namespace {

std::vector<std::string> sensorNames(const Batch& batch)
{
    std::vector<std::string> names{batch.beerSensor};
    const auto add = [&](const std::string& name) {
        if (std::find(names.begin(), names.end(), name) == names.end())
            names.push_back(name);
    };
    for (const BeerUse& use : batch.beerUses)
        add(use.sensor);
    if (batch.ambientSensor)
        add(*batch.ambientSensor);
    return names;
}

/// The number of readings in the judged series; several sensors that read the beer share one
/// series.
std::size_t readingsOf(const RunReview& review, const Sensor& sensor)
{
    const analysis::RunInput& input = review.input;
    const bool isRoom = sensor.name == review.batch().ambientSensor;
    const Series& series = isRoom ? input.ambient : input.judging.beer;
    return static_cast<std::size_t>(
        std::count_if(series.at.begin(), series.at.end(),
                      [&](Instant at) { return at >= input.span.start && at <= input.span.end; }));
}

/// Filled from the review alone.
Provenance begunProvenance(const RunReview& review)
{
    const Batch& batch = review.batch();
    Provenance provenance;
    provenance.batch = batch.name;
    provenance.span = review.input.span;
    provenance.judgedTo = review.input.judgedTo;
    provenance.coverage = review.figures.judged.asPlanned.totals.coverage();
    provenance.tolerance = batch.tolerance;
    provenance.gapLimit = review.input.judging.gapLimit;
    provenance.usualGapLimit = !batch.gapLimit;
    provenance.ignoreShorterThan = batch.ignoreShorterThan;
    provenance.bandTimes = batch.bandTimes;
    provenance.coverageNeeded = review.input.settings.coverageNeeded;
    return provenance;
}

} // namespace

Result<Provenance> provenanceOf(const store::LogbookFile& logbook, const RunReview& review)
{
    auto sensors = store::readSensors(logbook);
    HOLDBAND_TRY(sensors);
    auto meters = store::readMeters(logbook);
    HOLDBAND_TRY(meters);
    Provenance provenance = begunProvenance(review);
    for (const std::string& name : sensorNames(review.batch())) {
        const auto found = std::find_if(sensors->begin(), sensors->end(),
                                        [&](const Sensor& sensor) { return sensor.name == name; });
        if (found != sensors->end())
            provenance.sensors.push_back({*found, analysis::accuracyOver(*found, review.input.span),
                                          readingsOf(review, *found)});
    }
    for (Meter& meter : *meters) {
        const auto& sources = review.input.setup.sources();
        const bool counts =
            std::any_of(sources.begin(), sources.end(), [&](const analysis::EnergySource& source) {
                return source.name == meter.name;
            });
        if (counts)
            provenance.meters.push_back(std::move(meter));
    }
    return provenance;
}

Result<std::vector<Provenance>> provenancesOf(const store::LogbookFile& logbook,
                                              const std::vector<std::string>& batches)
{
    std::vector<Provenance> provenances;
    for (const std::string& name : batches) {
        auto review = reviewRun(logbook, name, '.', SideCurves::leave);
        HOLDBAND_TRY(review);
        auto provenance = provenanceOf(logbook, *review);
        HOLDBAND_TRY(provenance);
        provenances.push_back(std::move(*provenance));
    }
    return provenances;
}

} // namespace holdband::results
