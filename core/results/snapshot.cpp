#include "core/results/snapshot.h"

#include "core/analysis/calibration.h"
#include "core/analysis/interval_energy.h"
#include "core/assign_result.h"
#include "core/model/meter_service.h"
#include "core/model/plan_in_force.h"
#include "core/quantity/plato.h"
#include "core/results/cache_key.h"
#include "core/results/prices.h"
#include "core/store/readings/hand_readings.h"
#include "core/store/records/batches.h"
#include "core/store/records/equipment.h"
#include "core/text/phrase.h"
#include "core/text/times.h"

#include <algorithm>

namespace holdband::results {

namespace {

template <typename Value>
const Value* named(const std::vector<Value>& values, const std::string& name)
{
    const auto found = std::find_if(values.begin(), values.end(),
                                    [&](const Value& value) { return value.name == name; });
    return found == values.end() ? nullptr : &*found;
}

/// The last reading of an open batch's beer; pitching if there is none since.
Result<Instant> beerKnownTo(const store::LogbookFile& logbook, const Batch& batch)
{
    const std::string& sensor =
        batch.beerUses.empty() ? batch.beerSensor : batch.beerUses.back().sensor;
    auto last = store::lastReadingAt(logbook, sensor);
    HOLDBAND_TRY(last);
    return std::max(batch.pitched, last->value_or(batch.pitched));
}

/// The last reading of a meter while it counted for the setup.
std::optional<Instant> meteredTo(const Snapshot& snapshot, const std::string& setup)
{
    std::optional<Instant> last;
    for (const auto& [name, readings] : snapshot.meterReadings) {
        const Meter* meter = named(snapshot.meters, name);
        const auto counted = std::find_if(readings.rbegin(), readings.rend(),
                                          [&](const store::StoredReading& stored) {
                                              return setupAt(*meter, stored.inForce.at) == setup;
                                          });
        if (counted != readings.rend())
            last = std::max(last.value_or(counted->inForce.at), counted->inForce.at);
    }
    return last;
}

/// An open batch's energy continues to the setup's last round, but a batch that was never ended
/// takes no share of much later ones.
Instant energyEnd(Instant beerKnownTo, std::optional<Instant> meteredTo)
{
    return std::max(beerKnownTo,
                    std::min(meteredTo.value_or(beerKnownTo), beerKnownTo + openBatchMetered));
}

Done addSpan(const store::LogbookFile& logbook, const Batch& batch, Snapshot& into)
{
    Span& span = into.batchSpans[batch.name];
    span = {batch.pitched, batch.ended.value_or(batch.pitched)};
    if (batch.ended)
        return {};
    auto known = beerKnownTo(logbook, batch);
    HOLDBAND_TRY(known);
    into.beerKnownTo[batch.name] = *known;
    span.end = energyEnd(*known, meteredTo(into, batch.setup));
    return {};
}

analysis::MeterRegister registerOf(const Meter& meter,
                                   const std::vector<store::StoredReading>& readings,
                                   Milliseconds timeDoubt)
{
    analysis::MeterRegister result;
    for (const store::StoredReading& stored : readings)
        result.readings.push_back(stored.inForce);
    result.resolution = meter.resolution;
    result.rollsOverAt = meter.rollsOverAt;
    result.timeDoubt = timeDoubt;
    return result;
}

std::vector<analysis::EnergySource> meterSources(const Snapshot& snapshot, const Setup& setup)
{
    std::vector<analysis::EnergySource> sources;
    for (const Meter& meter : snapshot.meters) {
        for (const MeterService& service : servicesOf(meter)) {
            if (service.setup != setup.name)
                continue;
            const analysis::MeterRegister readings = registerOf(
                meter, snapshot.meterReadings.at(meter.name), snapshot.settings.timeDoubt);
            sources.push_back({meter.name, analysis::MeterCurve(readings, setup.ratedPower),
                               service.from, service.to, meter.accuracy});
        }
    }
    return sources;
}

analysis::PowerCurve powerCurve(JudgedSeries watts)
{
    return {std::move(watts.series), watts.gapLimit};
}

/// The logged energies of intervals as a register.
analysis::MeterCurve intervalCurve(const Snapshot& snapshot, const Sensor& sensor,
                                   const Setup& setup, const Series& energies)
{
    const analysis::DayStep sameTimeOfDay = [&](Instant at, int days) {
        const LocalTime local = snapshot.zone.toLocal(at);
        return snapshot.zone.resolve(local + std::chrono::days{days}).earlier;
    };
    return {
        analysis::registerOf(analysis::intervalsOf(energies, sensor.intervalTime, sameTimeOfDay)),
        setup.ratedPower};
}

/// Logs of power and of interval energy are used if the setup has no meter.
Result<std::vector<analysis::EnergySource>> loggedSources(const store::LogbookFile& logbook,
                                                          const Snapshot& snapshot,
                                                          const Setup& setup, Span span)
{
    std::vector<analysis::EnergySource> sources;
    for (const Sensor& sensor : snapshot.sensors) {
        if (!readsElectricity(sensor.reads) || sensor.setup != setup.name)
            continue;
        auto logged = judgedSeries(logbook, snapshot, sensor, span, std::nullopt);
        HOLDBAND_TRY(logged);
        analysis::EnergySource source{sensor.name, analysis::MeterCurve({}, {}), std::nullopt,
                                      std::nullopt, std::nullopt};
        if (sensor.reads == SensorKind::power)
            source.curve = powerCurve(std::move(*logged));
        else
            source.curve = intervalCurve(snapshot, sensor, setup, logged->series);
        sources.push_back(std::move(source));
    }
    return sources;
}

void addConcurrentBatches(const Snapshot& snapshot, const Batch& batch, analysis::RunInput& input)
{
    for (const Batch& other : snapshot.batches) {
        if (other.setup != batch.setup)
            continue;
        if (other.name == batch.name)
            input.self = input.concurrentBatches.size();
        input.concurrentBatches.push_back({snapshot.batchSpans.at(other.name), 1.0, other.name});
    }
}

Gravity gravityFrom(const HandReading& reading)
{
    return reading.unit == ReadingUnit::degreePlato
               ? gravityOfPlato(std::clamp(reading.value, 0.0, 40.0))
               : Gravity::specific(reading.value);
}

enum class LeftOutReadings { without, with };

/// A sensor's readings with its offsets.
Result<Series> calibratedSeries(const store::LogbookFile& logbook, const Snapshot& snapshot,
                                const Sensor& sensor, Span span, LeftOutReadings leftOut)
{
    auto read = store::readSeries(logbook, sensor.name, span);
    HOLDBAND_TRY(read);
    if (readsTemperature(sensor.reads))
        analysis::applyOffsets(*read, sensor.offsets);
    if (leftOut == LeftOutReadings::without)
        analysis::applyExclusions(*read, exclusionsOf(snapshot, sensor.name));
    return read;
}

/// The stretches of the batch, each with the sensor that read its beer.
std::vector<std::pair<std::string, Span>> beerSpans(const Batch& batch, Span span)
{
    std::vector<std::pair<std::string, Span>> spans{{batch.beerSensor, span}};
    for (const BeerUse& use : batch.beerUses) {
        if (use.sensor == spans.back().first)
            continue; // moved to another vessel with its sensor
        spans.back().second.end = std::min(use.from, span.end);
        spans.push_back({use.sensor, {std::max(use.from, span.start), span.end}});
    }
    std::erase_if(spans, [](const auto& each) { return each.second.empty(); });
    return spans;
}

/// Appends the readings of the next sensor, with a break so that nothing is interpolated between
/// the two.
void append(Series& series, const Series& next)
{
    const std::size_t before = series.size();
    if (before > 0 && !next.empty())
        series.breaks.push_back(before);
    series.at.insert(series.at.end(), next.at.begin(), next.at.end());
    series.value.insert(series.value.end(), next.value.begin(), next.value.end());
    for (const std::size_t i : next.breaks) {
        if (i > 0)
            series.breaks.push_back(before + i);
    }
}

/// Removes readings before `from` and, where the next sensor takes over, at or after `to`.
Series inside(const Series& series, std::optional<Instant> from, std::optional<Instant> to)
{
    Series stored;
    for (std::size_t i = 0; i < series.size(); ++i) {
        if ((from && series.at[i] < *from) || (to && series.at[i] >= *to))
            continue;
        if (std::binary_search(series.breaks.begin(), series.breaks.end(), i) && !stored.empty())
            stored.breaks.push_back(stored.size());
        stored.at.push_back(series.at[i]);
        stored.value.push_back(series.value[i]);
    }
    return stored;
}

/// The series of all sensors that read the batch's beer, one after the other.
Result<Series> beerSeries(const store::LogbookFile& logbook, const Snapshot& snapshot,
                          const Batch& batch, Span whole, LeftOutReadings leftOut)
{
    const auto spans = beerSpans(batch, whole);
    Series beer;
    for (std::size_t i = 0; i < spans.size(); ++i) {
        const auto& [name, span] = spans[i];
        const Sensor* sensor = snapshot.sensor(name);
        if (!sensor)
            return dataProblem(Phrase::tr("the beer sensor \"%1\" is not on record").with(name));
        auto read = calibratedSeries(logbook, snapshot, *sensor, span, leftOut);
        HOLDBAND_TRY(read);
        if (spans.size() == 1) {
            beer = std::move(*read);
            break;
        }
        append(beer, inside(*read, i > 0 ? std::optional(span.start) : std::nullopt,
                            i + 1 < spans.size() ? std::optional(span.end) : std::nullopt));
    }
    return beer;
}

/// The largest accuracy of the sensors that read the beer; unknown if any is unknown.
std::optional<TemperatureDifference> beerAccuracy(const Snapshot& snapshot, const Batch& batch,
                                                  Span whole)
{
    std::optional<TemperatureDifference> largest;
    for (const auto& [name, span] : beerSpans(batch, whole)) {
        const auto accuracy = analysis::accuracyOver(*snapshot.sensor(name), span);
        if (!accuracy)
            return std::nullopt;
        largest = std::max(largest.value_or(*accuracy), *accuracy);
    }
    return largest;
}

/// The stretches left out of the beer's readings while their sensor read this batch.
std::vector<analysis::LeftOut> leftOutOf(const Snapshot& snapshot, const Batch& batch, Span whole)
{
    std::vector<analysis::LeftOut> all;
    for (const auto& [name, span] : beerSpans(batch, whole)) {
        for (const store::Exclusion& exclusion : snapshot.exclusions) {
            const Span both = intersection(exclusion.span, span);
            if (exclusion.sensor == name && both.start <= both.end)
                all.push_back({both, exclusion.why});
        }
    }
    return all;
}

Milliseconds gapLimitOf(const Batch& batch, const Series& beer, Span whole)
{
    return batch.gapLimit.value_or(analysis::defaultGapLimit(beer, whole));
}

Done addBeer(const store::LogbookFile& logbook, const Snapshot& snapshot, const Batch& batch,
             analysis::RunInput& input)
{
    analysis::JudgingInput& judging = input.judging;
    const auto series = [&](LeftOutReadings leftOut) {
        return beerSeries(logbook, snapshot, batch, input.span, leftOut);
    };
    auto beer = series(LeftOutReadings::without);
    HOLDBAND_TRY(beer);
    judging.beer = std::move(*beer);
    judging.accuracy = beerAccuracy(snapshot, batch, input.span);
    judging.gapLimit = gapLimitOf(batch, judging.beer, input.span);
    judging.ignoreShorterThan = batch.ignoreShorterThan;
    judging.bandTimes = batch.bandTimes;
    judging.open = !batch.ended;
    judging.leftOut = leftOutOf(snapshot, batch, input.span);
    if (judging.leftOut.empty())
        return {};
    auto whole = series(LeftOutReadings::with);
    HOLDBAND_TRY(whole);
    judging.withLeftOut = std::move(*whole);
    judging.gapLimitWithLeftOut = gapLimitOf(batch, judging.withLeftOut, input.span);
    return {};
}

Done addAmbient(const store::LogbookFile& logbook, const Snapshot& snapshot, const Batch& batch,
                analysis::RunInput& input)
{
    const Sensor* ambient = batch.ambientSensor ? snapshot.sensor(*batch.ambientSensor) : nullptr;
    if (!ambient)
        return {};
    auto series = judgedSeries(logbook, snapshot, *ambient, input.span, batch.gapLimit);
    HOLDBAND_TRY(series);
    input.ambient = std::move(series->series);
    input.ambientGap = series->gapLimit;
    return {};
}

} // namespace

const Setup* Snapshot::setup(const std::string& name) const
{
    return named(setups, name);
}

int Snapshot::indexOfSetup(const std::string& name) const
{
    return static_cast<int>(setup(name) - setups.data());
}

const Sensor* Snapshot::sensor(const std::string& name) const
{
    return named(sensors, name);
}

const Batch* Snapshot::batch(const std::string& name) const
{
    return named(batches, name);
}

Result<Snapshot> readSnapshot(const store::LogbookFile& logbook)
{
    Snapshot snapshot;
    HOLDBAND_TRY(assignResult(store::readSettings(logbook), snapshot.settings));
    HOLDBAND_TRY(assignResult(Zone::named(snapshot.settings.zone), snapshot.zone));
    HOLDBAND_TRY(assignResult(store::readSetups(logbook), snapshot.setups));
    HOLDBAND_TRY(assignResult(store::readSensors(logbook), snapshot.sensors));
    HOLDBAND_TRY(assignResult(store::readMeters(logbook), snapshot.meters));
    HOLDBAND_TRY(assignResult(store::readBatches(logbook), snapshot.batches));
    HOLDBAND_TRY(assignResult(store::readExclusions(logbook), snapshot.exclusions));
    for (const Meter& meter : snapshot.meters)
        HOLDBAND_TRY(assignResult(store::readMeterReadings(logbook, meter.name),
                                  snapshot.meterReadings[meter.name]));
    for (const Batch& batch : snapshot.batches)
        HOLDBAND_TRY(addSpan(logbook, batch, snapshot));
    return snapshot;
}

Result<JudgedSeries> judgedSeries(const store::LogbookFile& logbook, const Snapshot& snapshot,
                                  const Sensor& sensor, Span span,
                                  const std::optional<Milliseconds>& ownGapLimit)
{
    auto read = calibratedSeries(logbook, snapshot, sensor, span, LeftOutReadings::without);
    HOLDBAND_TRY(read);
    JudgedSeries judged{std::move(*read), {}};
    judged.gapLimit = ownGapLimit ? *ownGapLimit : analysis::defaultGapLimit(judged.series, span);
    return judged;
}

Result<Series> beerInside(const store::LogbookFile& logbook, const Snapshot& snapshot,
                          const Batch& batch, Span span)
{
    auto beer = beerSeries(logbook, snapshot, batch, span, LeftOutReadings::without);
    HOLDBAND_TRY(beer);
    return inside(*beer, span.start, span.end + Milliseconds{1});
}

Result<analysis::RunInput> judgingInputFor(const store::LogbookFile& logbook,
                                           const Snapshot& snapshot, const Batch& batch)
{
    analysis::RunInput input;
    input.batch = batch;
    input.batch.schedule = scheduleInForce(batch);
    input.span = snapshot.batchSpans.at(batch.name);
    if (!batch.ended)
        input.judgedTo = snapshot.beerKnownTo.at(batch.name);
    HOLDBAND_TRY(addBeer(logbook, snapshot, batch, input));
    return input;
}

Result<std::vector<analysis::GravityReading>> gravitiesOf(const store::LogbookFile& logbook,
                                                          const Batch& batch)
{
    auto stored = store::readHandReadings(logbook, {store::HandOwner::Kind::batch, batch.name});
    HOLDBAND_TRY(stored);
    std::vector<analysis::GravityReading> readings;
    for (const store::StoredHandReading& reading : *stored)
        readings.push_back(
            {reading.inForce.at, gravityFrom(reading.inForce), reading.inForce.sample});
    return readings;
}

Result<analysis::SetupEnergy> setupEnergyOf(const store::LogbookFile& logbook,
                                            const Snapshot& snapshot, const Setup& setup, Span span)
{
    std::vector<analysis::EnergySource> sources = meterSources(snapshot, setup);
    if (sources.empty()) {
        auto logged = loggedSources(logbook, snapshot, setup, span);
        HOLDBAND_TRY(logged);
        sources = std::move(*logged);
    }
    return analysis::SetupEnergy(std::move(sources));
}

Done addEnergyInput(const store::LogbookFile& logbook, const Snapshot& snapshot, const Batch& batch,
                    analysis::RunInput& input)
{
    addConcurrentBatches(snapshot, batch, input);
    if (const Setup* setup = snapshot.setup(batch.setup)) {
        auto energy = setupEnergyOf(logbook, snapshot, *setup, input.span);
        HOLDBAND_TRY(energy);
        input.setup = std::move(*energy);
    }
    return {};
}

Result<analysis::RunInput> runInputFor(const store::LogbookFile& logbook, const Snapshot& snapshot,
                                       const Batch& batch)
{
    auto judging = judgingInputFor(logbook, snapshot, batch);
    HOLDBAND_TRY(judging);
    analysis::RunInput input = std::move(*judging);
    HOLDBAND_TRY(addAmbient(logbook, snapshot, batch, input));
    HOLDBAND_TRY(assignResult(gravitiesOf(logbook, batch), input.gravities));
    HOLDBAND_TRY(addEnergyInput(logbook, snapshot, batch, input));
    input.prices = pricesOver(snapshot.settings, snapshot.zone, input.span);
    for (const LocalDay& day : snapshot.zone.localDays(input.span))
        input.days.push_back({isoDate(day.date), day.span});
    return input;
}

} // namespace holdband::results
