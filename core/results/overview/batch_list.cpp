#include "core/results/overview/batch_list.h"

#include "core/results/overview/batch_line.h"
#include "core/results/run/verdict_text.h"
#include "core/text/phrase.h"
#include "core/text/quantities.h"

#include <algorithm>

namespace holdband::results {

Result<BatchLine> batchLineOf(const store::LogbookFile& logbook, const Snapshot& snapshot,
                              const Batch& batch)
{
    auto input = judgingInputFor(logbook, snapshot, batch);
    HOLDBAND_TRY(input);
    const analysis::RunFigures figures = analysis::judgeRun(*input);
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
            odd.push_back(Phrase::tr("The sensor \"%1\" has no readings.").with(sensor.name));
        else if (**last > logbook.now())
            odd.push_back(
                Phrase::tr("The sensor \"%1\" has readings in the future.").with(sensor.name));
    }
    return {};
}

void addMeterOddities(const Snapshot& snapshot, Sentences& odd)
{
    for (const Meter& meter : snapshot.meters) {
        const auto& readings = snapshot.meterReadings.at(meter.name);
        if (readings.size() < 2)
            odd.push_back(Phrase::tr("The meter \"%1\" has fewer than two readings: nothing can be "
                                     "said of its energy.")
                              .with(meter.name));
        const Setup* setup = snapshot.setup(meter.setup);
        analysis::MeterRegister values;
        values.resolution = meter.resolution;
        values.rollsOverAt = meter.rollsOverAt;
        values.timeDoubt = snapshot.settings.timeDoubt;
        for (const auto& stored : readings)
            values.readings.push_back(stored.inForce);
        const analysis::MeterCurve curve(values, setup ? setup->ratedPower : std::nullopt);
        if (const std::size_t pairs = curve.pairsAboveRatedPower(); pairs > 0)
            odd.push_back(
                Phrase::counted("The meter \"%1\" counted more than the rated power of %2 allows, "
                                "%n times.",
                                "The meter \"%1\" counted more than the rated power of %2 allows, "
                                "%n time.",
                                pairs)
                    .with(meter.name, meter.setup));
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
                odd.push_back(
                    Phrase::counted("When \"%1\" was pitched, %2 batches ran on %3, which has %n "
                                    "vessels.",
                                    "When \"%1\" was pitched, %2 batches ran on %3, which has %n "
                                    "vessel.",
                                    static_cast<std::uint64_t>(setup.vessels))
                        .with(batch.name, std::to_string(running), setup.name));
        }
    }
}

/// Finds targets that are more likely a wrong digit or unit than a plan; common practice, no
/// source.
void addTargets(const Snapshot& snapshot, Sentences& odd)
{
    const Temperature freezing = Temperature::celsius(0.0);
    const Temperature hot = Temperature::fahrenheit(110.0);
    const TemperatureUnit unit = snapshot.settings.temperatureUnit();
    for (const Batch& batch : snapshot.batches) {
        for (const Stage& stage : batch.schedule) {
            const bool below = stage.target < freezing;
            if (!below && !(stage.target > hot))
                continue;
            const Phrase phrase =
                below ? Phrase::tr("%1: the target of %2, %3, is below freezing.")
                      : Phrase::tr("%1: the target of %2, %3, is hotter than beer ferments.");
            odd.push_back(
                phrase.with(batch.name, stage.label, temperatureText(stage.target, unit)));
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

} // namespace holdband::results
