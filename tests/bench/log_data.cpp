#include "tests/bench/log_data.h"

#include "core/text/times.h"

#include <cmath>
#include <cstdio>
#include <fstream>

namespace holdband::bench {

namespace {

constexpr std::int64_t firstMs = 1'451'606'400'000; // 2016-01-01 UTC

std::string stamp(int minute)
{
    const Instant at = instantFromMs(firstMs + std::int64_t{60'000} * minute);
    std::string text = rfc3339Utc(at); // 2016-01-01T00:00:00.000Z
    text[10] = ' ';
    return text.substr(0, 16);
}

} // namespace

void writeLog(const std::filesystem::path& path, int rows)
{
    std::FILE* file = std::fopen(path.c_str(), "w");
    std::fputs("Logged,Vessel (F),Air (F),Room (F)\n", file);
    for (int i = 0; i < rows; ++i) {
        const double hour = i / 60.0;
        const double vessel = 66.0 + 1.2 * std::sin(hour * 2.1) + 0.3 * std::sin(hour * 17.0);
        const double air = 60.0 + 6.0 * std::sin(hour * 1.9);
        const double room = 68.0 + 9.0 * std::sin(hour * 0.2618);
        std::fprintf(file, "%s,%.2f,%.2f,%.2f\n", stamp(i).c_str(), vessel, air, room);
    }
    std::fclose(file);
}

void writeDescription(const std::filesystem::path& path, int batchRows)
{
    std::ofstream(path) << R"json({ "holdband": 1, "zone": "UTC", "units": "us",
  "setups": [ { "name": "Loop" } ],
  "sensors": [ { "name": "Vessel", "reads": "beer", "setup": "Loop", "accuracy_c": 0.25 },
               { "name": "Air", "reads": "chamber", "setup": "Loop" },
               { "name": "Room", "reads": "ambient" } ],
  "batches": [ { "name": "Long", "setup": "Loop", "pitched": "2016-01-01 00:00", "ended": ")json"
                        << stamp(batchRows) << R"json(",
                 "beer_sensor": "Vessel", "ambient_sensor": "Room", "tolerance_f": 3,
                 "schedule": [ { "stage": "Hold", "target_f": 66 } ] } ] })json";
}

} // namespace holdband::bench
