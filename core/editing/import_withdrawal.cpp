#include "core/editing/import_withdrawal.h"

#include "core/editing/register_check.h"
#include "core/store/readings/meter_readings.h"
#include "core/store/records/equipment.h"

#include <set>
#include <utility>

namespace holdband::intake {

namespace {

/// A meter's readings of one import, in order of time, without those that were deleted on their
/// own.
struct ImportedRegister {
    RegisterCheck check; ///< of the readings that count now
    std::vector<MeterReading> readings;
};

/// Of the meters that the import has readings of; `withdrawn`: those that don't count.
Result<std::vector<ImportedRegister>> registersOf(const store::LogbookFile& logbook,
                                                  store::ImportId import, bool withdrawn,
                                                  char decimalSign = '.')
{
    auto meters = store::readMeters(logbook);
    HOLDBAND_TRY(meters);
    std::vector<ImportedRegister> registers;
    for (const Meter& meter : *meters) {
        auto record = store::readRegisterRecord(logbook, meter.name);
        HOLDBAND_TRY(record);
        std::vector<MeterReading> readings;
        for (const store::RecordedRegister& reading : *record) {
            if (reading.source && reading.source->import == import && !reading.leftOutBy &&
                reading.withdrawn == withdrawn)
                readings.push_back(reading.inForce);
        }
        if (readings.empty())
            continue;
        auto check = registerOf(logbook, meter.name, decimalSign);
        HOLDBAND_TRY(check);
        registers.push_back({std::move(*check), std::move(readings)});
    }
    return registers;
}

} // namespace

Done withdrawImport(const store::Change& change, store::ImportId import)
{
    auto registers = registersOf(change.logbook(), import, false);
    HOLDBAND_TRY(registers);
    HOLDBAND_TRY(store::withdraw(change, import));
    for (auto& [check, readings] : *registers) {
        std::set<Instant> instants;
        for (const MeterReading& reading : readings)
            instants.insert(reading.at);
        check.remove(instants);
        HOLDBAND_TRY(saveMovedEvents(change, check));
    }
    return {};
}

Done restoreImport(const store::Change& change, store::ImportId import, char decimalSign)
{
    auto registers = registersOf(change.logbook(), import, true, decimalSign);
    HOLDBAND_TRY(registers);
    HOLDBAND_TRY(store::restoreImport(change, import));
    for (auto& [check, readings] : *registers) {
        if (const auto doubt = check.restore(readings))
            return failure(doubt->problem);
        HOLDBAND_TRY(saveMovedEvents(change, check));
    }
    return {};
}

} // namespace holdband::intake
