// Logbooks for the tests of the store: a new one in its own folder, with a fixed clock.
#pragma once

#include "core/store/logbook_file.h"
#include "core/store/readings/meter_readings.h"
#include "core/store/readings/readings.h"
#include "core/store/records/batches.h"
#include "core/store/records/equipment.h"
#include "tests/store/saying.h"

#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace holdband::test {

inline const Instant someday = instantFromMs(1'772'900'000'000);

class LogbookTest : public ::testing::Test {
protected:
    std::string path(const char* name = "log.holdband") const
    {
        return m_folder.filePath(QString::fromLatin1(name)).toStdString();
    }

    std::unique_ptr<store::LogbookFile> create(const char* name = "log.holdband",
                                               const LogbookSettings& settings = {}) const
    {
        auto made = store::LogbookFile::create(path(name), settings, [] { return someday; });
        EXPECT_TRUE(made) << made.error().sentence();
        return made ? std::move(*made) : nullptr;
    }

    /// One whose clock is that of Denver, where most logs of the tests come from.
    std::unique_ptr<store::LogbookFile> createInDenver() const
    {
        LogbookSettings settings;
        settings.zone = "America/Denver";
        return create("log.holdband", settings);
    }

    /// A setup "Loop", a sensor "Beer" and a meter "Meter".
    static void addEquipment(const store::LogbookFile& logbook)
    {
        auto change = store::Change::begin(logbook, saying("equipment"));
        ASSERT_TRUE(change);
        holdband::Setup setup;
        setup.name = "Loop";
        Sensor sensor;
        sensor.name = "Beer";
        Meter meter;
        meter.name = "Meter";
        meter.setup = "Loop";
        ASSERT_TRUE(store::addSetup(*change, setup));
        ASSERT_TRUE(store::addSensor(*change, sensor));
        ASSERT_TRUE(store::addMeter(*change, meter));
        ASSERT_TRUE(change->commit());
    }

    struct Log {
        std::vector<Instant> at;
        std::vector<double> raw;
        std::vector<std::uint32_t> line;

        void add(int minute, double value)
        {
            at.push_back(someday + std::chrono::minutes{minute});
            raw.push_back(value);
            line.push_back(static_cast<std::uint32_t>(line.size() + 2));
        }
        store::SensorRows rows(ReadingUnit unit = ReadingUnit::celsius) const
        {
            return {"Beer", "Beer (C)", unit, &at, &raw, &line};
        }
    };

    static store::AddedRows addLog(const store::LogbookFile& logbook, const Log& log,
                                   ReadingUnit unit = ReadingUnit::celsius)
    {
        auto change = store::Change::begin(logbook, saying("import"));
        EXPECT_TRUE(change);
        auto import = store::addImport(*change, {"log.csv", "00", 1});
        EXPECT_TRUE(import);
        auto added = store::addReadings(*change, *import, log.rows(unit));
        EXPECT_TRUE(added) << added.error().sentence();
        EXPECT_TRUE(change->commit());
        return added ? *added : store::AddedRows{};
    }

private:
    QTemporaryDir m_folder;
};

} // namespace holdband::test
