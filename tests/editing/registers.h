// A logbook with one meter whose register has a top of 10,000 kWh, and the ways to change it.
#pragma once

#include "core/analysis/meter_curve.h"
#include "core/editing/rounds.h"
#include "core/store/history/undo.h"
#include "core/store/readings/imports.h"
#include "tests/store/logbooks.h"

#include <algorithm>

namespace holdband::test {

class RegisterTest : public LogbookTest {
protected:
    void SetUp() override
    {
        m_logbook = create();
        addEquipment(*m_logbook);
        auto change = store::Change::begin(*m_logbook, saying("top"));
        auto meter = store::readMeters(*m_logbook)->front();
        meter.rollsOverAt = Energy::kilowattHours(10'000.0);
        ASSERT_TRUE(store::updateMeter(*change, "Meter", meter));
        ASSERT_TRUE(change->commit());
    }

    static MeterReading at(int hour, double kwh, std::optional<MeterEvent> event = {})
    {
        return {someday + std::chrono::hours{hour - 100}, Energy::kilowattHours(kwh), 0, event, {}};
    }

    Done type(const MeterReading& reading) const
    {
        auto saved = intake::saveRound(*m_logbook, {{"Meter", reading}});
        return saved ? Done{} : Done(failure(saved.error()));
    }
    void typeAll(std::initializer_list<MeterReading> readings) const
    {
        for (const MeterReading& reading : readings) {
            const Done typed = type(reading);
            ASSERT_TRUE(typed) << typed.error().sentence();
        }
    }

    std::vector<store::StoredReading> stored() const
    {
        return *store::readMeterReadings(*m_logbook, "Meter");
    }
    store::MeterReadingId idAt(int hour) const
    {
        for (const store::StoredReading& reading : stored()) {
            if (reading.inForce.at == at(hour, 0).at)
                return reading.id;
        }
        ADD_FAILURE() << "no reading at hour " << hour;
        return {};
    }
    Done erase(int hour) const
    {
        return intake::deleteRegister(*m_logbook, "Meter", idAt(hour), "test");
    }
    Done correct(int hour, double kwh) const
    {
        return intake::correctRegister(*m_logbook, "Meter", idAt(hour), kwh, 0, "test");
    }
    /// Restores the deleted reading at that hour.
    Done bringBack(int hour) const
    {
        const Instant when = at(hour, 0).at;
        auto list = store::listRegister(*m_logbook, "Meter", {when, when}, 10);
        std::erase_if(list->readings, [](const auto& reading) { return !reading.leftOut; });
        return intake::restoreRegisters(*m_logbook, "Meter", list->readings);
    }

    /// kWh from the first reading to the last, as the analysis counts it.
    double used() const
    {
        analysis::MeterRegister meter;
        for (const store::StoredReading& reading : stored())
            meter.readings.push_back(reading.inForce);
        meter.rollsOverAt = Energy::kilowattHours(10'000.0);
        const analysis::MeterCurve curve(meter, {});
        return curve.empty()
                   ? 0.0
                   : curve.over({meter.readings.front().at, meter.readings.back().at}).kwh;
    }

    const store::LogbookFile& logbook() const { return *m_logbook; }

private:
    std::unique_ptr<store::LogbookFile> m_logbook;
};

} // namespace holdband::test
