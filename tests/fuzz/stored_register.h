// A meter in a logbook that is changed like a RegisterCheck beside it: both must hold the same, and
// undo and redo give the exact states before and after each change.
#pragma once

#include "core/editing/register_check.h"
#include "core/store/history/undo.h"
#include "core/store/readings/meter_readings.h"
#include "core/store/records/equipment.h"
#include "tests/fuzz/fuzz_one.h"

#include <QTemporaryDir>
#include <algorithm>
#include <functional>

namespace holdband::fuzz {

class StoredRegister {
public:
    explicit StoredRegister(const Meter& meter)
    {
        const auto path = m_folder.filePath(QStringLiteral("f.holdband")).toStdString();
        auto made = store::LogbookFile::create(path, {}, [] { return now(); });
        expect(made.has_value(), "a logbook can be made");
        m_logbook = std::move(*made);
        auto change = store::Change::begin(*m_logbook, {store::HistoryVerb::other, {"equipment"}});
        Setup setup;
        setup.name = "Setup";
        Meter its = meter;
        its.setup = setup.name;
        expect(store::addSetup(*change, setup) && store::addMeter(*change, its) && change->commit(),
               "equipment can be added");
    }

    void type(const MeterReading& reading)
    {
        changed([&] { return intake::saveRound(*m_logbook, {{"Meter", reading}}).has_value(); });
    }
    void correct(Instant at, double kwh)
    {
        changed([&] {
            return intake::correctRegister(*m_logbook, "Meter", idAt(at), kwh, 0, "why")
                .has_value();
        });
    }
    void remove(const std::set<Instant>& instants)
    {
        std::vector<store::MeterReadingId> ids;
        for (const Instant at : instants)
            ids.push_back(idAt(at));
        changed(
            [&] { return intake::deleteRegisters(*m_logbook, "Meter", ids, "why").has_value(); });
    }
    void restore(const std::vector<MeterReading>& readings)
    {
        std::vector<store::ListedRegister> deleted;
        const auto list = store::listRegister(*m_logbook, "Meter", {instantFromMs(0), now()}, 100);
        for (const store::ListedRegister& each : list->readings) {
            const bool wanted =
                std::any_of(readings.begin(), readings.end(), [&](const MeterReading& reading) {
                    return reading.at == each.inForce.at;
                });
            if (wanted && each.leftOut)
                deleted.push_back(each);
        }
        changed([&] { return intake::restoreRegisters(*m_logbook, "Meter", deleted).has_value(); });
    }

    void expectSame(const std::vector<MeterReading>& readings) const
    {
        const std::vector<MeterReading> stored = all();
        bool same = stored.size() == readings.size();
        for (std::size_t i = 0; same && i < stored.size(); ++i)
            same = stored[i].at == readings[i].at && stored[i].event == readings[i].event &&
                   stored[i].registerReading == readings[i].registerReading;
        expect(same, "the logbook holds what the check holds");
    }

private:
    static Instant now() { return instantFromMs(1'772'900'000'000); }

    std::vector<MeterReading> all() const
    {
        std::vector<MeterReading> readings;
        const auto stored = store::readMeterReadings(*m_logbook, "Meter");
        expect(stored.has_value(), "the readings can be read");
        for (const store::StoredReading& each : *stored)
            readings.push_back(each.inForce);
        return readings;
    }
    store::MeterReadingId idAt(Instant at) const
    {
        const auto stored = store::readMeterReadings(*m_logbook, "Meter");
        for (const store::StoredReading& each : *stored) {
            if (each.inForce.at == at)
                return each.id;
        }
        expect(false, "the reading is stored");
        return {};
    }

    void changed(const std::function<bool()>& change)
    {
        const auto before = all();
        expect(change(), "the logbook takes what the check takes");
        const auto after = all();
        expect(store::undoLast(*m_logbook).has_value(), "it can be undone");
        expect(all() == before, "undo gives the state before");
        expect(store::redoLast(*m_logbook).has_value(), "it can be redone");
        expect(all() == after, "redo gives the state after");
    }

    QTemporaryDir m_folder;
    std::unique_ptr<store::LogbookFile> m_logbook;
};

} // namespace holdband::fuzz
