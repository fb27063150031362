// The views in the file, read as another program would: by SQLite alone.
#include "core/store/history/undo.h"
#include "core/store/readings/meter_readings.h"
#include "core/store/records/batches.h"
#include "core/store/records/equipment.h"
#include "tests/store/logbooks.h"
#include "tests/store/saying.h"

#include <gmock/gmock.h>
#include <sqlite3.h>

namespace holdband::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

class Views : public LogbookTest {
protected:
    void SetUp() override
    {
        m_logbook = createInDenver();
        ASSERT_TRUE(m_logbook);
        addEquipment(*m_logbook);
    }

    /// Each row as its columns joined by "|"; NULL is "-".
    std::vector<std::string> rows(const std::string& sql) const
    {
        sqlite3* database = nullptr;
        EXPECT_EQ(sqlite3_open_v2(path().c_str(), &database, SQLITE_OPEN_READONLY, nullptr),
                  SQLITE_OK);
        std::vector<std::string> found;
        const auto take = [](void* into, int count, char** values, char**) {
            std::string row;
            for (int i = 0; i < count; ++i)
                row += (i > 0 ? "|" : "") + std::string(values[i] ? values[i] : "-");
            static_cast<std::vector<std::string>*>(into)->push_back(row);
            return 0;
        };
        char* error = nullptr;
        sqlite3_exec(database, sql.c_str(), take, &found, &error);
        EXPECT_EQ(std::string(error ? error : ""), "") << sql;
        sqlite3_free(error);
        sqlite3_close(database);
        return found;
    }

    template <typename Act>
    void change(Act act) const
    {
        auto change = store::Change::begin(*m_logbook, saying("a change"));
        ASSERT_TRUE(change) << change.error().sentence();
        const Done done = act(*change);
        ASSERT_TRUE(done) << done.error().sentence();
        ASSERT_TRUE(change->commit());
    }

    void import(const std::vector<double>& fahrenheit, std::int64_t firstMs) const
    {
        change([&](const store::Change& into) -> Done {
            auto added = store::addImport(into, {"loop.csv", "00", 2});
            HOLDBAND_TRY(added);
            std::vector<Instant> at;
            std::vector<std::uint32_t> line;
            for (std::size_t i = 0; i < fahrenheit.size(); ++i) {
                at.push_back(instantFromMs(firstMs + 1'800'000 * static_cast<std::int64_t>(i)));
                line.push_back(static_cast<std::uint32_t>(i + 2));
            }
            return store::addReadings(
                       into, *added,
                       {"Beer", "Beer (F)", ReadingUnit::fahrenheit, &at, &fahrenheit, &line})
                .map([](const auto&) {});
        });
    }

    std::unique_ptr<store::LogbookFile> m_logbook;
};

// 1772928000 s is 2026-03-08 00:00 UTC, the evening before in Denver (UTC − 7 h); clocks go forward
// there at 09:00 UTC of that day (the tz database).
constexpr std::int64_t eighthOfMarch = 1'772'928'000'000;

TEST_F(Views, ReadingsHaveNamesTimesAndUnits)
{
    import({66.2, 68.0}, eighthOfMarch);
    EXPECT_THAT(rows("SELECT sensor, reads, at_utc, at_local, round(temperature_c, 9), "
                     "temperature_f, logged_value, logged_unit, is_corrected, is_left_out, file "
                     "FROM v_readings ORDER BY at_ms"),
                ElementsAre("Beer|beer|2026-03-08T00:00:00.000Z|2026-03-07 17:00:00|19.0|66.2|66.2|"
                            "F|0|0|loop.csv",
                            "Beer|beer|2026-03-08T00:30:00.000Z|2026-03-07 17:30:00|20.0|68.0|68.0|"
                            "F|0|0|loop.csv"));
}

TEST_F(Views, LocalTimesFollowTheClockChange)
{
    import({66.2, 66.2}, eighthOfMarch + 9 * 3'600'000 - 1'800'000);
    EXPECT_THAT(rows("SELECT at_local FROM v_readings ORDER BY at_ms"),
                ElementsAre("2026-03-08 01:30:00", "2026-03-08 03:00:00"));
}

TEST_F(Views, OffsetsCountFromTheirTime)
{
    change([](const store::Change& into) {
        Sensor beer;
        beer.name = "Beer";
        beer.offsets = {{instantFromMs(eighthOfMarch + 1'800'000),
                         TemperatureDifference::kelvins(0.5), std::nullopt, ""}};
        return store::updateSensor(into, "Beer", beer);
    });
    import({66.2, 68.0}, eighthOfMarch);
    EXPECT_THAT(rows("SELECT round(temperature_c, 9), round(temperature_f, 9) FROM v_readings "
                     "ORDER BY at_ms"),
                ElementsAre("19.0|66.2", "20.5|68.9"));
}

TEST_F(Views, MeterReadingsAndTheEnergyBetweenThem)
{
    const auto add = [](const store::Change& into, std::int64_t hours, double kwh,
                        std::optional<MeterEvent> event) {
        MeterReading reading;
        reading.at = instantFromMs(eighthOfMarch + hours * 3'600'000);
        reading.registerReading = Energy::kilowattHours(kwh);
        reading.decimals = 1;
        reading.event = event;
        return store::addMeterReading(into, "Meter", reading).map([](const auto&) {});
    };
    change([&](const store::Change& into) -> Done {
        HOLDBAND_TRY(add(into, 0, 100.0, std::nullopt));
        HOLDBAND_TRY(add(into, 12, 101.2, std::nullopt));
        HOLDBAND_TRY(add(into, 24, 0.6, MeterEvent::reset));
        return {};
    });
    EXPECT_THAT(rows("SELECT meter, setup, at_local, register_kwh, event FROM v_meter_readings "
                     "ORDER BY at_ms"),
                ElementsAre("Meter|Loop|2026-03-07 17:00:00|100.0|-",
                            "Meter|Loop|2026-03-08 06:00:00|101.2|-",
                            "Meter|Loop|2026-03-08 18:00:00|0.6|reset"));
    // 1.2 kWh in 12 h are 100 W; after the reset the new reading counts.
    EXPECT_THAT(rows("SELECT meter, setup, hours, round(kwh, 9), round(mean_w, 6), event "
                     "FROM v_energy ORDER BY from_ms"),
                ElementsAre("Meter|Loop|12.0|1.2|100.0|-", "Meter|Loop|12.0|0.6|50.0|reset"));
}

TEST_F(Views, BatchesHaveTheirSensorsAndLimits)
{
    change([](const store::Change& into) {
        Batch batch;
        batch.name = "Ale";
        batch.setup = "Loop";
        batch.volume = Volume::litres(19.5);
        batch.pitched = instantFromMs(eighthOfMarch);
        batch.beerSensor = "Beer";
        batch.tolerance = TemperatureDifference::kelvins(1.5);
        Stage primary;
        primary.label = "Primary";
        primary.target = Temperature::celsius(19.0);
        batch.schedule = {primary};
        return store::addBatch(into, batch);
    });
    EXPECT_THAT(rows("SELECT batch, setup, volume_l, pitched_utc, pitched_local, ended_utc, "
                     "beer_sensor, ambient_sensor, tolerance_k, dwell_min, return_min "
                     "FROM v_batches"),
                ElementsAre("Ale|Loop|19.5|2026-03-08T00:00:00.000Z|2026-03-07 17:00:00|-|Beer|-|"
                            "1.5|60.0|15.0"));
}

TEST_F(Views, AnotherZoneGivesOtherLocalTimes)
{
    import({66.2}, eighthOfMarch);
    change([](const store::Change& into) {
        LogbookSettings settings;
        settings.zone = "Europe/Berlin";
        return store::writeSettings(into, settings);
    });
    EXPECT_THAT(rows("SELECT at_local FROM v_readings"), ElementsAre("2026-03-08 01:00:00"));
    ASSERT_TRUE(store::undoLast(*m_logbook));
    EXPECT_THAT(rows("SELECT at_local FROM v_readings"), ElementsAre("2026-03-07 17:00:00"));
}

TEST_F(Views, AWithdrawnImportIsNotAmongTheReadings)
{
    import({66.2}, eighthOfMarch);
    ASSERT_TRUE(store::undoLast(*m_logbook));
    EXPECT_THAT(rows("SELECT * FROM v_readings"), IsEmpty());
}

} // namespace
} // namespace holdband::test
