#include "tests/bench/lanes.h"

#include "core/results/overview/lanes.h"
#include "core/results/overview/lanes_cache.h"
#include "core/store/readings/meter_readings.h"
#include "core/store/readings/readings.h"
#include "core/store/records/batches.h"
#include "core/store/records/equipment.h"
#include "core/store/records/journal.h"
#include "tests/bench/child.h"
#include "tests/bench/must.h"
#include "tests/store/saying.h"

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <vector>

namespace holdband::bench {
namespace {

using store::Change;
using store::LogbookFile;

constexpr int setups = 3;
constexpr int batches = 300;
constexpr int readingsEach = 16'700; ///< one per minute: eleven and a half days
constexpr std::chrono::hours every{24 * 36};

std::string named(const char* what, int number)
{
    return what + std::to_string(number);
}

Instant pitched(int batch)
{
    return instantFromMs(1'478'000'000'000) + every * (batch / setups);
}

void addEquipment(const Change& change)
{
    for (int i = 0; i < setups; ++i) {
        holdband::Setup setup;
        setup.name = named("Setup ", i);
        Sensor sensor;
        sensor.name = named("Beer ", i);
        sensor.accuracy = TemperatureDifference::kelvins(0.3);
        Meter meter;
        meter.name = named("Meter ", i);
        meter.setup = setup.name;
        must(store::addSetup(change, setup));
        must(store::addSensor(change, sensor));
        must(store::addMeter(change, meter));
        MeterReading reading;
        for (int round = 0; round < 10 * 365 * 2; ++round) {
            reading.at = pitched(0) + std::chrono::hours{12} * round;
            reading.registerReading = Energy::kilowattHours(round);
            if (round % 41 != 0)
                must(store::addMeterReading(change, meter.name, reading));
        }
    }
}

void log(const Change& change, int batch, Instant from, int count)
{
    std::vector<Instant> at;
    std::vector<double> raw;
    std::vector<std::uint32_t> line;
    for (int i = 0; i < count; ++i) {
        at.push_back(from + std::chrono::minutes{i});
        raw.push_back(20.0 + 0.1 * (i % 13) + (i % 5000 < 40 ? 1.0 : 0.0));
        line.push_back(static_cast<std::uint32_t>(i + 2));
    }
    const std::string sensor = named("Beer ", batch % setups);
    const auto import = must(store::addImport(change, {"log.csv", "00", count}));
    must(store::addReadings(change, import,
                            {sensor, sensor, ReadingUnit::celsius, &at, &raw, &line}));
}

void addBatch(const Change& change, int number)
{
    Batch batch;
    batch.name = named("Batch ", number);
    batch.setup = named("Setup ", number % setups);
    batch.beerSensor = named("Beer ", number % setups);
    batch.pitched = pitched(number);
    if (number + setups < batches)
        batch.ended = batch.pitched + std::chrono::minutes{readingsEach};
    batch.tolerance = TemperatureDifference::kelvins(1.5);
    Stage stage;
    stage.label = "Primary";
    stage.target = Temperature::celsius(20.0);
    batch.schedule = {stage};
    must(store::addBatch(change, batch));
    log(change, number, batch.pitched, readingsEach);
}

std::unique_ptr<LogbookFile> made(const std::string& path)
{
    std::filesystem::remove(path);
    const Instant now = pitched(batches - 1) + std::chrono::hours{24 * 14};
    auto logbook = must(LogbookFile::create(path, {}, [now] { return now; }));
    auto change = must(Change::begin(*logbook, saying("ten years")));
    addEquipment(change);
    for (int i = 0; i < batches; ++i)
        addBatch(change, i);
    must(change.commit());
    return logbook;
}

double lanesTime(const LogbookFile& logbook, results::LanesCache& cache)
{
    const auto start = std::chrono::steady_clock::now();
    must(results::reviewLanes(logbook, &cache));
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

} // namespace

LanesTimes lanesTimes(const std::filesystem::path& folder, int runs)
{
    const auto logbook = made((folder / "lanes.holdband").string());
    std::vector<double> first, afterNote, afterRows;
    for (int i = 0; i < runs; ++i) {
        results::LanesCache cache;
        first.push_back(lanesTime(*logbook, cache));
        auto note = must(Change::begin(*logbook, saying("a note")));
        must(store::addNote(note, {pitched(5), "Batch 5", named("note ", i)}));
        must(note.commit());
        afterNote.push_back(lanesTime(*logbook, cache));
        auto rows = must(Change::begin(*logbook, saying("more rows")));
        log(rows, batches - 1, pitched(batches - 1) + std::chrono::minutes{readingsEach + 20 * i},
            20);
        must(rows.commit());
        afterRows.push_back(lanesTime(*logbook, cache));
    }
    return {median(first), median(afterNote), median(afterRows)};
}

} // namespace holdband::bench
