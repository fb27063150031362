#include "ui/equipment/equipment_reading.h"

#include "core/assign_result.h"
#include "core/store/records/batches.h"
#include "core/store/records/equipment.h"

namespace holdband::ui {

Result<Equipment> readEquipment(const store::LogbookFile& file)
{
    Equipment all;
    HOLDBAND_TRY(assignResult(store::readSettings(file), all.settings));
    HOLDBAND_TRY(assignResult(Zone::named(all.settings.zone), all.zone));
    HOLDBAND_TRY(assignResult(store::readSetups(file), all.setups));
    HOLDBAND_TRY(assignResult(store::readSensors(file), all.sensors));
    HOLDBAND_TRY(assignResult(store::readMeters(file), all.meters));
    HOLDBAND_TRY(assignResult(store::readPlans(file), all.plans));
    return all;
}

} // namespace holdband::ui
