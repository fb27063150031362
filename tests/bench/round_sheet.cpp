#include "tests/bench/round_sheet.h"

#include "core/results/rounds/rounds_sheet.h"
#include "core/store/readings/meter_readings.h"
#include "core/store/records/equipment.h"
#include "tests/bench/must.h"
#include "tests/store/saying.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <vector>

namespace holdband::bench {
namespace {

constexpr int meters = 8;
constexpr int rounds = 10 * 365 * 2;

void addMeter(const store::Change& change, const std::string& setup, int number)
{
    Meter meter;
    meter.name = "Meter " + std::to_string(number);
    meter.setup = setup;
    must(store::addMeter(change, meter));
    MeterReading reading;
    reading.decimals = 2;
    reading.at = change.at() - std::chrono::hours{12} * rounds;
    for (int i = 0; i < rounds; ++i) {
        reading.at += std::chrono::hours{12};
        reading.registerReading = Energy::kilowattHours(i * 0.61);
        must(store::addMeterReading(change, meter.name, reading));
    }
}

} // namespace

double roundSheetMs(const std::filesystem::path& logbook, int runs)
{
    const auto file = must(store::LogbookFile::open(logbook.string(), store::Access::write));
    {
        auto change = must(store::Change::begin(*file, saying("eight meters")));
        holdband::Setup setup;
        setup.name = "Eight meters";
        must(store::addSetup(change, setup));
        for (int i = 1; i <= meters; ++i)
            addMeter(change, setup.name, i);
        must(change.commit());
    }
    std::vector<double> times;
    for (int i = 0; i < runs; ++i) {
        const auto start = std::chrono::steady_clock::now();
        const auto sheet = must(results::reviewRounds(*file));
        times.push_back(
            std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start)
                .count());
    }
    std::sort(times.begin(), times.end());
    return times[times.size() / 2];
}

} // namespace holdband::bench
