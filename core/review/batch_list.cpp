#include "core/review/batch_list.h"

#include "core/review/batch_line.h"
#include "core/review/verdict_words.h"
#include "core/text/quantities.h"

#include <algorithm>

namespace holdband::review {

Result<BatchLine> batchLineOf(const store::LogbookFile& logbook, const Snapshot& snapshot,
                              const Batch& batch)
{
    auto input = judgingInputFor(logbook, snapshot, batch);
    HOLDBAND_TRY(input);
    analysis::RunFigures figures;
    figures.judged =
        analysis::judgeBatch(analysis::judgedStages(*input), input->judging, input->settings);
    BatchLine line;
    line.name = batch.name;
    line.setup = batch.setup;
    line.pitched = batch.pitched;
    line.ended = batch.ended;
    line.lastKnown = input->span.end;
    line.verdict = figures.judged.asPlanned.verdict;
    line.mark = verdictMark(figures, !batch.ended);
    line.headline =
        verdictWords(*input, figures, {snapshot.settings.temperatureUnit(), snapshot.decimalSign})
            .headline;
    return line;
}

Result<BatchList> reviewBatches(const store::LogbookFile& logbook)
{
    auto steady = store::Transaction::beginReading(logbook.database());
    HOLDBAND_TRY(steady);
    auto snapshot = readSnapshot(logbook);
    HOLDBAND_TRY(snapshot);
    BatchList list;
    list.zone = snapshot->zone;
    for (const Batch& batch : snapshot->batches) {
        auto line = batchLineOf(logbook, *snapshot, batch);
        HOLDBAND_TRY(line);
        list.batches.push_back(std::move(*line));
    }
    return list;
}

namespace {

using Sentences = std::vector<std::string>;

Done addSensorOddities(const store::LogbookFile& logbook, const Snapshot& snapshot, Sentences& odd)
{
    for (const Sensor& sensor : snapshot.sensors) {
        auto last = store::lastReadingAt(logbook, sensor.name);
        HOLDBAND_TRY(last);
        if (!*last)
            odd.push_back("The sensor \"" + sensor.name + "\" has no readings.");
        else if (**last > logbook.now())
            odd.push_back("The sensor \"" + sensor.name + "\" has readings in the future.");
    }
    return {};
}

void addMeterOddities(const Snapshot& snapshot, Sentences& odd)
{
    for (const Meter& meter : snapshot.meters) {
        const auto& readings = snapshot.meterReadings.at(meter.name);
        if (readings.size() < 2)
            odd.push_back("The meter \"" + meter.name +
                          "\" has fewer than two readings: nothing can be said of its energy.");
        const Setup* setup = snapshot.setup(meter.setup);
        analysis::MeterRegister values;
        values.resolution = meter.resolution;
        values.rollsOverAt = meter.rollsOverAt;
        for (const auto& kept : readings)
            values.readings.push_back(kept.inForce);
        const analysis::MeterCurve curve(values, setup ? setup->ratedPower : std::nullopt);
        if (const std::size_t pairs = curve.pairsAboveRatedPower(); pairs > 0)
            odd.push_back("The meter \"" + meter.name + "\" counted more than the rated power of " +
                          meter.setup + " allows, " + std::to_string(pairs) +
                          (pairs == 1 ? " time." : " times."));
    }
}

void addOverlaps(const Snapshot& snapshot, Sentences& odd)
{
    for (const Setup& setup : snapshot.setups) {
        for (const Batch& batch : snapshot.batches) {
            if (batch.setup != setup.name)
                continue;
            const auto running = std::count_if(
                snapshot.batches.begin(), snapshot.batches.end(), [&](const Batch& other) {
                    const Span span = snapshot.batchSpans.at(other.name);
                    return other.setup == setup.name && span.start <= batch.pitched &&
                           batch.pitched < span.end;
                });
            if (running > setup.vessels)
                odd.push_back("When \"" + batch.name + "\" was pitched, " +
                              std::to_string(running) + " batches ran on " + setup.name +
                              ", which has " + std::to_string(setup.vessels) +
                              (setup.vessels == 1 ? " vessel." : " vessels."));
        }
    }
}

/// Targets that are likelier a wrong digit or unit than a plan; common practice, no source.
void addTargets(const Snapshot& snapshot, Sentences& odd)
{
    const Temperature freezing = Temperature::celsius(0.0);
    const Temperature hot = Temperature::fahrenheit(110.0);
    const TemperatureUnit unit = snapshot.settings.temperatureUnit();
    for (const Batch& batch : snapshot.batches) {
        for (const Stage& stage : batch.schedule) {
            const bool below = stage.target < freezing;
            if (below || stage.target > hot)
                odd.push_back(batch.name + ": the target of " + stage.label + ", " +
                              temperatureText(stage.target, unit) + ", is " +
                              (below ? "below freezing." : "hotter than beer ferments."));
        }
    }
}

} // namespace

Result<std::vector<std::string>> findOddities(const store::LogbookFile& logbook)
{
    auto steady = store::Transaction::beginReading(logbook.database());
    HOLDBAND_TRY(steady);
    auto snapshot = readSnapshot(logbook);
    HOLDBAND_TRY(snapshot);
    Sentences odd;
    HOLDBAND_TRY(addSensorOddities(logbook, *snapshot, odd));
    addMeterOddities(*snapshot, odd);
    addOverlaps(*snapshot, odd);
    addTargets(*snapshot, odd);
    for (const Batch& batch : snapshot->batches) {
        auto line = batchLineOf(logbook, *snapshot, batch);
        HOLDBAND_TRY(line);
        if (line->verdict == analysis::Verdict::notEnoughData)
            odd.push_back(batch.name + ": " + line->headline + ".");
    }
    return odd;
}

} // namespace holdband::review
