// A small logbook with two setups, a batch on each, their logs and meter readings.
#pragma once

#include "core/exchange/load.h"
#include "tests/fuzz/fuzz_one.h"

#include <QTemporaryDir>
#include <cmath>
#include <fstream>
#include <iterator>

namespace holdband::fuzz {

inline Instant smallLogbookNow()
{
    return instantFromMs(1'775'000'000'000); // 2026-03-31
}

class SmallLogbook {
public:
    SmallLogbook()
    {
        std::ofstream(path("one.csv")) << log(0.0);
        std::ofstream(path("two.csv")) << log(0.4);
        std::ofstream(path("d.json")) << description;
        const auto loaded =
            exchange::loadDescription(path("f.holdband"), path("d.json"), smallLogbookNow);
        expect(loaded.has_value(), "the small logbook can be made",
               loaded ? std::string() : loaded.error().sentence());
    }

    std::string bytes() const
    {
        std::ifstream file(path("f.holdband"), std::ios::binary);
        return {std::istreambuf_iterator<char>(file), {}};
    }

private:
    static constexpr const char* description = R"json({"holdband":1,
        "setups":[{"name":"A","rated_power_w":900},{"name":"B","rated_power_w":120}],
        "sensors":[{"name":"Beer A","reads":"beer","setup":"A"},
            {"name":"Room A","reads":"ambient","setup":"A"},
            {"name":"Beer B","reads":"beer","setup":"B"},
            {"name":"Room B","reads":"ambient","setup":"B"}],
        "meters":[{"name":"Meter A","setup":"A","rolls_over_at_kwh":10000},
            {"name":"Meter B","setup":"B"}],
        "batches":[{"name":"A1","setup":"A","pitched":"2026-03-01 00:00","volume_l":20,
                "ended":"2026-03-06 00:00","beer_sensor":"Beer A","tolerance_c":1,
                "schedule":[{"stage":"Hold","target_c":20,"hours":96},
                    {"stage":"Crash","target_c":4,"hours":24}]},
            {"name":"B1","setup":"B","pitched":"2026-03-01 00:00","volume_l":20,
                "ended":"2026-03-06 00:00","beer_sensor":"Beer B","tolerance_c":1,
                "schedule":[{"stage":"Hold","target_c":20,"hours":96},
                    {"stage":"Crash","target_c":4,"hours":24}]}],
        "files":[{"file":"one.csv","columns":{"Beer A":"Beer (C)","Room A":"Room (C)"}},
            {"file":"two.csv","columns":{"Beer B":"Beer (C)","Room B":"Room (C)"}}],
        "meter_readings":[{"meter":"Meter A","at":"2026-03-01 00:00","kwh":9990},
            {"meter":"Meter A","at":"2026-03-03 00:00","kwh":9998},
            {"meter":"Meter A","at":"2026-03-04 00:00","kwh":3},
            {"meter":"Meter A","at":"2026-03-06 00:00","kwh":13},
            {"meter":"Meter B","at":"2026-03-01 00:00","kwh":5.2},
            {"meter":"Meter B","at":"2026-03-04 00:00","kwh":7.9},
            {"meter":"Meter B","at":"2026-03-06 00:00","kwh":10.1}]})json";

    std::string path(const std::string& name) const
    {
        return m_folder.filePath(QString::fromStdString(name)).toStdString();
    }

    /// A row an hour: at 20 °C until the crash, to 4 °C in half a day.
    static std::string log(double swing)
    {
        std::string text = "Time,Beer (C),Room (C)\n";
        for (int hour = 0; hour <= 120; ++hour) {
            const double fall = std::min(16.0, std::max(0, hour - 96) * 1.4);
            const double beer = 20.0 - fall + swing * std::sin(hour / 3.0);
            const double room = 24.0 + 2.0 * std::sin(hour / 12.0);
            text += "2026-03-0" + std::to_string(1 + hour / 24) + " " +
                    std::string(hour % 24 < 10 ? "0" : "") + std::to_string(hour % 24) + ":00," +
                    std::to_string(beer).substr(0, 5) + "," + std::to_string(room).substr(0, 5) +
                    "\n";
        }
        return text;
    }

    QTemporaryDir m_folder;
};

} // namespace holdband::fuzz
