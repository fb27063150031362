#include "ui/equipment/equipment_reading.h"

#include "core/keep.h"
#include "core/store/records/batches.h"
#include "core/store/records/equipment.h"

namespace holdband::ui {

Result<Equipment> readEquipment(const store::LogbookFile& file)
{
    Equipment all;
    HOLDBAND_TRY(keep(store::readSettings(file), all.settings));
    HOLDBAND_TRY(keep(Zone::named(all.settings.zone), all.zone));
    HOLDBAND_TRY(keep(store::readSetups(file), all.setups));
    HOLDBAND_TRY(keep(store::readSensors(file), all.sensors));
    HOLDBAND_TRY(keep(store::readMeters(file), all.meters));
    HOLDBAND_TRY(keep(store::readPlans(file), all.plans));
    return all;
}

} // namespace holdband::ui
