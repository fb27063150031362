// A garage with two setups whose power is a straight line of lift, and three batches on each, so
// that every figure of a comparison can be computed by hand. Beer holds 20 °C; from each pitching
// on the room warms from 22 °C by 0.06 °C an hour; meters are read every twelve hours.
#pragma once

#include "core/text/numbers.h"
#include "core/text/times.h"
#include "tests/results/described_logbook.h"

#include <cmath>
#include <functional>

namespace holdband::test {

struct GarageSide {
    std::string setup;
    std::string batch; ///< "L": its batches are L1, L2, L3
    double standingW = 0.0;
    double wattsPerKelvin = 0.0;
    double idleW = 0.0;
    double parts = 0.0;
    std::string ratings = "{}";
    std::string meterMore = R"("accuracy_pct":1)"; ///< besides name, setup and resolution
    std::string setupMore = {};                    ///< with a comma before it
    std::string batchMore = {};                    ///< the same
    double beerC = 20.0;
    double accuracyC = 0.3;
};

struct Garage {
    GarageSide a{"Loop", "L", 20.0, 4.0, 3.0, 300.0};
    GarageSide b{"Cabinet", "C", 5.0, 2.0, 1.0, 100.0};
    std::string units = "metric";
    std::string top = R"("currency":"USD","price_per_kwh":0.2,)"; ///< with a comma after it
    int batches = 3;
    bool room = true;
    std::string schedule = R"([{"stage":"Hold","target_c":20}])";
};

inline constexpr int garageHours = 144;     ///< of a batch
inline constexpr int garageEvery = 168;     ///< from pitching to pitching
inline constexpr double garageWarmer = 2.0; ///< K at pitching
inline constexpr double garageRise = 0.06;  ///< K an hour

inline Instant garageStart(int batch)
{
    return *parseRfc3339("2026-03-01T00:00:00Z") + std::chrono::hours{garageEvery * batch};
}

inline std::string garageLog(const std::string& header, int batches,
                             const std::function<double(int)>& value)
{
    std::string log = "Time," + header + "\n";
    for (int batch = 0; batch < batches; ++batch) {
        for (int hour = 0; hour <= garageHours; ++hour)
            log += rfc3339Utc(garageStart(batch) + std::chrono::hours{hour}) + "," +
                   shortestText(value(hour)) + "\n";
    }
    return log;
}

/// The register, read every twelve hours to 0.001 kWh.
inline std::string garageReadings(const GarageSide& side, int batches)
{
    std::string readings;
    double kwh = 10.0;
    for (int batch = 0; batch < batches; ++batch) {
        for (int hour = 0; hour < garageEvery; hour += 12) {
            readings += R"(,{"meter":")" + side.setup + R"( meter","at":")" +
                        rfc3339Utc(garageStart(batch) + std::chrono::hours{hour}) + R"(","kwh":)" +
                        fixedText(kwh, 3) + "}";
            const double lift = garageWarmer + garageRise * (hour + 6) + 20.0 - side.beerC;
            const double watts =
                hour < garageHours ? side.standingW + side.wattsPerKelvin * lift : side.idleW;
            kwh += watts * 12.0 / 1000.0;
        }
    }
    readings += R"(,{"meter":")" + side.setup + R"( meter","at":")" +
                rfc3339Utc(garageStart(batches)) + R"(","kwh":)" + fixedText(kwh, 3) + "}";
    return readings;
}

inline std::string garageBatches(const Garage& garage, const GarageSide& side)
{
    std::string text;
    for (int batch = 0; batch < garage.batches; ++batch)
        text += (text.empty() ? "" : ",") + (R"({"name":")" + side.batch) +
                std::to_string(batch + 1) + R"(","setup":")" + side.setup + R"(","beer_sensor":")" +
                side.setup + R"( beer","tolerance_c":1,"gap_limit_min":90,"pitched":")" +
                rfc3339Utc(garageStart(batch)) + R"(","ended":")" +
                rfc3339Utc(garageStart(batch) + std::chrono::hours{garageHours}) + "\"" +
                (garage.room ? R"(,"ambient_sensor":"Room")" : "") + side.batchMore +
                R"(,"schedule":)" + garage.schedule + "}";
    return text;
}

inline std::string garageDescription(const Garage& garage)
{
    std::string setups, sensors, meters, batches, files, readings;
    for (const GarageSide* side : {&garage.a, &garage.b}) {
        const std::string comma = setups.empty() ? "" : ",";
        const std::string& name = side->setup;
        setups += comma + R"({"name":")" + name + R"(","parts":[{"item":"all","price":)" +
                  shortestText(side->parts) + R"(}],"ratings":)" + side->ratings + side->setupMore +
                  "}";
        sensors += R"({"name":")" + name + R"( beer","reads":"beer","accuracy_c":)" +
                   shortestText(side->accuracyC) + "},";
        meters += comma + R"({"name":")" + name + R"( meter","setup":")" + name +
                  R"(","resolution_kwh":0.001)" +
                  (side->meterMore.empty() ? "" : "," + side->meterMore) + "}";
        batches += comma + garageBatches(garage, *side);
        files += comma + R"({"file":")" + name + R"(.csv","columns":{")" + name + R"( beer":")" +
                 name + " (C)\"}}";
        readings += garageReadings(*side, garage.batches);
    }
    if (garage.room)
        files += ",{\"file\":\"room.csv\",\"columns\":{\"Room\":\"Room (C)\"}}";
    return R"({"holdband":1,"units":")" + garage.units + "\"," + garage.top + R"("setups":[)" +
           setups + R"(],"sensors":[)" + sensors +
           R"({"name":"Room","reads":"ambient"}],"meters":[)" + meters + R"(],"batches":[)" +
           batches + R"(],"files":[)" + files + R"(],"meter_readings":[)" + readings.substr(1) +
           "]}";
}

inline std::unique_ptr<store::LogbookFile> loadGarage(const DescribedLogbook& files,
                                                      const Garage& garage)
{
    for (const GarageSide* side : {&garage.a, &garage.b})
        files.write(side->setup + ".csv", garageLog(side->setup + " (C)", garage.batches,
                                                    [&](int) { return side->beerC; }));
    if (garage.room)
        files.write("room.csv", garageLog("Room (C)", garage.batches, [](int hour) {
                        return 20.0 + garageWarmer + garageRise * hour;
                    }));
    return files.load(garageDescription(garage), "2026-06-01T00:00:00Z");
}

} // namespace holdband::test
