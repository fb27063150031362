#include "tests/bench/side_by_side.h"

#include "core/results/comparison/comparison_cache.h"
#include "core/results/comparison/side_by_side.h"
#include "core/store/readings/meter_readings.h"
#include "core/store/readings/readings.h"
#include "core/store/records/batches.h"
#include "core/store/records/equipment.h"
#include "core/store/records/weighing.h"
#include "tests/bench/child.h"
#include "tests/bench/must.h"
#include "tests/store/saying.h"

#include <chrono>
#include <sqlite3.h>
#include <vector>

namespace holdband::bench {
namespace {

using store::Change;
using store::LogbookFile;

constexpr int rounds = 50; ///< of two batches at once, one on each setup
constexpr std::array<const char*, 2> setups{"Loop", "Cabinet"};

/// The times of the rounds of batches over the years.
struct History {
    int readingsEach;

    Instant pitched(int round) const
    {
        return instantFromMs(1'478'000'000'000) + std::chrono::minutes{readingsEach + 1440} * round;
    }
};

void addEquipment(const Change& change, const History& history)
{
    Sensor room;
    room.name = "Room";
    room.reads = SensorKind::ambient;
    must(store::addSensor(change, room));
    for (const char* name : setups) {
        holdband::Setup setup;
        setup.name = name;
        setup.parts = {{"all", 1.0, 300.0}};
        must(store::addSetup(change, setup));
        Sensor sensor;
        sensor.name = name;
        sensor.accuracy = TemperatureDifference::kelvins(0.3);
        must(store::addSensor(change, sensor));
        Meter meter;
        meter.name = name;
        meter.setup = name;
        must(store::addMeter(change, meter));
        double kwh = 0.0;
        for (Instant at = history.pitched(0); at < history.pitched(rounds);
             at += std::chrono::hours{12}) {
            MeterReading reading{at, Energy::kilowattHours(kwh), 2, {}, {}};
            must(store::addMeterReading(change, name, reading));
            kwh += 0.25 + 0.01 * static_cast<double>(toMs(at) / 43'200'000 % 13);
        }
    }
}

void log(const Change& change, const std::string& sensor, Instant from, int count, double level)
{
    std::vector<Instant> at;
    std::vector<double> raw;
    std::vector<std::uint32_t> line;
    for (int i = 0; i < count; ++i) {
        at.push_back(from + std::chrono::minutes{i});
        raw.push_back(level + 0.1 * (i % 13) + (i % 5000 < 40 ? 1.0 : 0.0));
        line.push_back(static_cast<std::uint32_t>(i + 2));
    }
    const auto import = must(store::addImport(change, {"log.csv", "00", count}));
    must(store::addReadings(change, import,
                            {sensor, sensor, ReadingUnit::celsius, &at, &raw, &line}));
}

void addBatch(const Change& change, const std::string& setup, int round, const History& history)
{
    Batch batch;
    batch.name = setup + " " + std::to_string(round);
    batch.setup = setup;
    batch.beerSensor = setup;
    batch.ambientSensor = "Room";
    batch.pitched = history.pitched(round);
    batch.ended = batch.pitched + std::chrono::minutes{history.readingsEach};
    batch.tolerance = TemperatureDifference::kelvins(1.5);
    Stage stage;
    stage.label = "Primary";
    stage.target = Temperature::celsius(20.0);
    batch.schedule = {stage};
    must(store::addBatch(change, batch));
}

std::unique_ptr<LogbookFile> made(const std::string& path, const History& history)
{
    std::filesystem::remove(path);
    LogbookSettings settings;
    settings.tariff.pricePerKwh = 0.2;
    const Instant now = history.pitched(rounds);
    auto logbook = must(LogbookFile::create(path, settings, [now] { return now; }));
    auto change = must(Change::begin(*logbook, saying("years")));
    addEquipment(change, history);
    for (int round = 0; round < rounds; ++round) {
        log(change, "Room", history.pitched(round), history.readingsEach, 24.0 + round % 9);
        for (const char* setup : setups) {
            addBatch(change, setup, round, history);
            log(change, setup, history.pitched(round), history.readingsEach, 19.6);
        }
    }
    must(change.commit());
    return logbook;
}

double seconds(const std::chrono::steady_clock::time_point& start)
{
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

double compareTime(const LogbookFile& logbook, results::ComparisonCache& cache)
{
    const auto start = std::chrono::steady_clock::now();
    results::SideBySideRequest request;
    request.a = setups[0];
    request.b = setups[1];
    must(results::reviewSideBySide(logbook, request, &cache));
    return seconds(start);
}

using SpansRead = std::vector<std::pair<std::string, Span>>;

/// The data of each batch: sensors and spans.
SpansRead spansRead(const LogbookFile& logbook)
{
    SpansRead all;
    for (const Batch& batch : must(store::readBatches(logbook))) {
        all.emplace_back(batch.beerSensor, Span{batch.pitched, *batch.ended});
        all.emplace_back(*batch.ambientSensor, Span{batch.pitched, *batch.ended});
    }
    return all;
}

/// The same readings as rows of a table, for the peer.
void writePeer(const std::string& path, const std::string& logbook)
{
    std::filesystem::remove(path);
    sqlite3* database = nullptr;
    sqlite3_open(path.c_str(), &database);
    const std::string script =
        "ATTACH '" + logbook +
        "' AS logbook; CREATE TABLE sensors AS SELECT id, name FROM logbook.sensors; "
        "CREATE TABLE long (place INTEGER PRIMARY KEY, value REAL); "
        "INSERT INTO long SELECT sensor * (1 << 44) + first_at + step_ms * each.key, each.value "
        "FROM logbook.reading_blocks, json_each(logged) each";
    if (sqlite3_exec(database, script.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK)
        std::fprintf(stderr, "the peer's table: %s\n", sqlite3_errmsg(database));
    sqlite3_close(database);
}

/// Seconds to read the rows of each batch: its beer's and its room's.
double plainTime(const LogbookFile& logbook, const std::string& peer)
{
    const SpansRead spans = spansRead(logbook);
    const auto start = std::chrono::steady_clock::now();
    sqlite3* database = nullptr;
    sqlite3_stmt* statement = nullptr;
    sqlite3_open_v2(peer.c_str(), &database, SQLITE_OPEN_READONLY, nullptr);
    sqlite3_prepare_v2(database,
                       "SELECT place, value FROM long WHERE place BETWEEN "
                       "(SELECT id FROM sensors WHERE name = ?1) * (1 << 44) + ?2 AND "
                       "(SELECT id FROM sensors WHERE name = ?1) * (1 << 44) + ?3",
                       -1, &statement, nullptr);
    double sum = 0.0;
    for (const auto& [sensor, span] : spans) {
        sqlite3_bind_text(statement, 1, sensor.c_str(), -1, SQLITE_TRANSIENT);
        sqlite3_bind_int64(statement, 2, toMs(span.start));
        sqlite3_bind_int64(statement, 3, toMs(span.end));
        while (sqlite3_step(statement) == SQLITE_ROW)
            sum += sqlite3_column_double(statement, 1) +
                   static_cast<double>(sqlite3_column_int64(statement, 0));
        sqlite3_reset(statement);
    }
    if (sum == 0.0)
        std::fprintf(stderr, "nothing was read\n");
    sqlite3_finalize(statement);
    sqlite3_close(database);
    return seconds(start);
}

void changeWeight(const LogbookFile& logbook, int i)
{
    auto change = must(Change::begin(logbook, saying("weighed")));
    Weighing weighing;
    weighing.weights["noise"] = i % 5;
    must(store::writeWeighing(change, weighing));
    must(change.commit());
}

} // namespace

SideBySideTimes sideBySideTimes(const std::filesystem::path& folder, int readings, int runs)
{
    const History history{readings / (4 * rounds)};
    const std::string path = (folder / "side_by_side.holdband").string();
    const auto logbook = made(path, history);
    const std::string peer = (folder / "side_by_side.db").string();
    writePeer(peer, path);
    std::vector<double> plain, first, again, afterRows;
    for (int i = 0; i < runs; ++i) {
        plain.push_back(plainTime(*logbook, peer));
        results::ComparisonCache cache;
        first.push_back(compareTime(*logbook, cache));
        changeWeight(*logbook, i);
        again.push_back(compareTime(*logbook, cache));
        auto rows = must(Change::begin(*logbook, saying("more rows")));
        log(rows, setups[0],
            history.pitched(rounds - 1) + std::chrono::minutes{history.readingsEach - 1} +
                std::chrono::seconds{i + 1},
            1, 20.0);
        must(rows.commit());
        afterRows.push_back(compareTime(*logbook, cache));
    }
    return {median(plain), median(first), median(again), median(afterRows)};
}

} // namespace holdband::bench
