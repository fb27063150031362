// A garage whose power is exactly 10 W and 2 W for each kelvin of lift, so that a forecast can be
// computed by hand. Batches hold 18 °C for 216 h and 2 °C for 72 h; the beer falls straight from 18
// to 2 °C in 8 h. Each batch adds 0.6 kWh for the heat of fermentation in its first 72 h and
// 0.5 kWh for cooling down in the first 12 h of its crash. Meters are read every 12 h.
#pragma once

#include "core/text/numbers.h"
#include "tests/results/described_logbook.h"

#include <algorithm>
#include <string>
#include <vector>

namespace holdband::test {

struct ForecastSetup {
    std::string name;
    std::vector<double> rooms; ///< °C, constant, one for each batch
    double times = 1.0;        ///< of the power above
    bool metered = true;
};

struct ForecastGarage {
    std::vector<ForecastSetup> setups{{"Loop", {22.0, 24.0}}};
    int hoursApart = 336;    ///< from pitching to pitching
    std::string moreBatches; ///< with a comma before them
    std::string batchMore;   ///< further keys of each batch, with a comma before them

    static constexpr int crashHour = 216;
    static constexpr int endHour = 288;

    static Instant start() { return *parseRfc3339("2026-03-01T00:00:00Z"); }
    Instant pitched(std::size_t batch) const
    {
        return start() + std::chrono::hours{hoursApart * static_cast<int>(batch)};
    }
    static double beerAt(int hour)
    {
        return hour <= crashHour ? 18.0 : std::max(2.0, 18.0 - 2.0 * (hour - crashHour));
    }
    /// kWh of the 12 h that begin at that hour.
    static double kwhOf(int hour, double room)
    {
        double lift = 12.0 * (room - (hour < crashHour ? 18.0 : 2.0));
        double extra = hour < 72 ? 0.1 : 0.0;
        if (hour == crashHour) {
            lift -= 64.0; // the triangle of the fall: 16 K × 8 h / 2
            extra = 0.5;
        }
        return (10.0 * 12.0 + 2.0 * lift) / 1000.0 + extra;
    }

    std::string log(const ForecastSetup& setup, bool room) const
    {
        std::string text = "Time,Value\n";
        for (std::size_t batch = 0; batch < setup.rooms.size(); ++batch) {
            const int last = room ? hoursApart - 1 : endHour;
            for (int hour = 0; hour <= last; ++hour)
                text += rfc3339Utc(pitched(batch) + std::chrono::hours{hour}) + "," +
                        shortestText(room ? setup.rooms[batch] : beerAt(hour)) + "\n";
        }
        return text;
    }

    std::string readings(const ForecastSetup& setup) const
    {
        std::string text;
        double kwh = 10.0;
        for (std::size_t batch = 0; batch < setup.rooms.size(); ++batch) {
            for (int hour = 0; hour <= endHour; hour += 12) {
                text += R"(,{"meter":")" + setup.name + R"( meter","at":")" +
                        rfc3339Utc(pitched(batch) + std::chrono::hours{hour}) + R"(","kwh":)" +
                        fixedText(kwh, 3) + "}";
                if (hour < endHour)
                    kwh += setup.times * kwhOf(hour, setup.rooms[batch]);
            }
        }
        return text;
    }

    std::string batches(const ForecastSetup& setup) const
    {
        std::string text;
        for (std::size_t batch = 0; batch < setup.rooms.size(); ++batch)
            text += R"(,{"name":")" + setup.name + " " + std::to_string(batch + 1) +
                    R"(","setup":")" + setup.name + R"(","beer_sensor":")" + setup.name +
                    R"( beer","ambient_sensor":")" + setup.name +
                    R"( room","tolerance_c":1,"volume_l":20,"original_gravity":1.05,)"
                    R"("final_gravity":1.01)" +
                    batchMore + R"(,"pitched":")" + rfc3339Utc(pitched(batch)) + R"(","ended":")" +
                    rfc3339Utc(pitched(batch) + std::chrono::hours{endHour}) +
                    R"(","schedule":[{"stage":"Primary","target_c":18,"hours":216},)"
                    R"({"stage":"Crash","target_c":2}]})";
        return text;
    }

    std::string description() const
    {
        std::string setupList, sensors, meters, batchList, files, readingList;
        for (const ForecastSetup& setup : setups) {
            const std::string& name = setup.name;
            setupList += R"(,{"name":")" + name + R"("})";
            sensors += R"(,{"name":")" + name + R"( beer","reads":"beer"},{"name":")" + name +
                       R"( room","reads":"ambient"})";
            if (!setup.rooms.empty())
                files += fileOf(name, " beer", ".csv") + fileOf(name, " room", "-room.csv");
            batchList += batches(setup);
            if (!setup.metered)
                continue;
            meters += R"(,{"name":")" + name + R"( meter","setup":")" + name +
                      R"(","resolution_kwh":0.001})";
            readingList += readings(setup);
        }
        return R"({"holdband":1,"zone":"UTC","currency":"USD","price_per_kwh":0.2,)" +
               list("setups", setupList) + "," + list("sensors", sensors) + "," +
               list("meters", meters) + "," + list("batches", batchList + moreBatches) + "," +
               list("files", files) + "," + list("meter_readings", readingList) + "}";
    }

    static std::string fileOf(const std::string& name, const std::string& sensor,
                              const std::string& ending)
    {
        return R"(,{"file":")" + name + ending + R"(","unit":"c","columns":{")" + name + sensor +
               R"(":"Value"}})";
    }

    static std::string list(const std::string& name, const std::string& items)
    {
        return "\"" + name + "\":[" + (items.empty() ? items : items.substr(1)) + "]";
    }

    std::unique_ptr<store::LogbookFile> loadInto(const DescribedLogbook& folder) const
    {
        for (const ForecastSetup& setup : setups) {
            folder.write(setup.name + ".csv", log(setup, false));
            folder.write(setup.name + "-room.csv", log(setup, true));
        }
        return folder.load(description(), "2026-06-01T00:00:00Z");
    }
};

} // namespace holdband::test
