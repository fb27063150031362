// A logbook with an open batch in its crash, of which every number can be computed by hand. Beer
// falls as T = 2 + 16·e^(−0.2 t) °C, read each 15 minutes, as in the example of the method's
// section 8.3.
#pragma once

#include "core/text/numbers.h"
#include "core/text/times.h"
#include "tests/results/described_logbook.h"

#include <cmath>
#include <functional>
#include <map>
#include <optional>

namespace holdband::test {

inline constexpr int crashAfterH = 24; ///< h from pitching to turning down

/// A batch whose beer holds `before`, and follows a curve from the turning on.
struct CrashedBatch {
    std::string name;
    std::string pitched;    ///< RFC 3339
    double readHours = 9.0; ///< after turning; a batch that has ended lasts as long
    bool open = true;
    std::string setup = "Loop";
    std::string sensor = "Beer";
    double litres = 20.0;
    double beforeC = 18.0;
    std::optional<double> primaryC = {}; ///< target of the first stage; absent: beforeC
    double targetC = 2.0;
    std::function<double(double)> beer = [](double t) { return 2.0 + 16.0 * std::exp(-0.2 * t); };
    std::string more = {}; ///< with a comma before it

    Instant pitchedAt() const { return *parseRfc3339(pitched); }
    Instant turnedAt() const { return pitchedAt() + std::chrono::hours{crashAfterH}; }
    Instant lastAt() const { return turnedAt() + toMilliseconds(Hours{readHours}); }
};

inline std::string rowsOf(const CrashedBatch& batch)
{
    std::string rows;
    const auto add = [&](double hours, double celsius) {
        rows += rfc3339Utc(batch.turnedAt() + toMilliseconds(Hours{hours})) + "," +
                shortestText(celsius) + "\n";
    };
    for (double t = -crashAfterH; t < 0.0; t += 0.25)
        add(t, batch.beforeC);
    for (double t = 0.0; t <= batch.readHours + 1e-9; t += 0.25)
        add(t, batch.beer(t));
    return rows;
}

inline std::string descriptionOf(const CrashedBatch& batch)
{
    return R"({"name":")" + batch.name + R"(","setup":")" + batch.setup + R"(","beer_sensor":")" +
           batch.sensor + R"(","tolerance_c":1,"volume_l":)" + shortestText(batch.litres) +
           R"(,"pitched":")" + batch.pitched + "\"" +
           (batch.open ? std::string() : R"(,"ended":")" + rfc3339Utc(batch.lastAt()) + "\"") +
           R"(,"schedule":[{"stage":"Primary","target_c":)" +
           shortestText(batch.primaryC.value_or(batch.beforeC)) + R"(,"hours":)" +
           std::to_string(crashAfterH) + R"(},{"stage":"Crash","target_c":)" +
           shortestText(batch.targetC) + "}]" + batch.more + "}";
}

/// Each sensor's log is a file of its own. Now is `now`, else one minute after the last batch's
/// last reading.
inline std::unique_ptr<store::LogbookFile> loadCrashes(const DescribedLogbook& files,
                                                       const std::vector<CrashedBatch>& batches,
                                                       const std::string& top = {},
                                                       std::string now = {})
{
    std::map<std::string, std::string> logs;
    std::string described;
    for (const CrashedBatch& batch : batches) {
        logs[batch.sensor] += rowsOf(batch);
        described += (described.empty() ? "" : ",") + descriptionOf(batch);
    }
    std::string sensors, lists;
    for (const auto& [sensor, rows] : logs) {
        const std::string comma = sensors.empty() ? "" : ",";
        sensors += comma + R"({"name":")" + sensor + R"(","reads":"beer"})";
        lists += comma + R"({"file":")" + sensor + R"(.csv","columns":{")" + sensor + R"(":")" +
                 sensor + " (C)\"}}";
        files.write(sensor + ".csv", "Time," + sensor + " (C)\n" + rows);
    }
    if (now.empty())
        now = rfc3339Utc(batches.back().lastAt() + std::chrono::minutes{1});
    return files.load(R"({"holdband":1,)" + top +
                          R"("setups":[{"name":"Loop"},{"name":"Cabinet"}],"sensors":[)" + sensors +
                          R"(],"batches":[)" + described + R"(],"files":[)" + lists + "]}",
                      now);
}

} // namespace holdband::test
