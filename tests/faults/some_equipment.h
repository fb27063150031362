// The equipment of the logbooks here.
#pragma once

#include "core/store/records/equipment.h"

namespace holdband::faults {

/// A setup "Loop", a sensor "Beer" and a meter "Meter".
inline Done addSomeEquipment(const store::Change& change)
{
    Setup setup;
    setup.name = "Loop";
    Sensor sensor;
    sensor.name = "Beer";
    Meter meter;
    meter.name = "Meter";
    meter.setup = "Loop";
    HOLDBAND_TRY(store::addSetup(change, setup));
    HOLDBAND_TRY(store::addSensor(change, sensor));
    return store::addMeter(change, meter);
}

} // namespace holdband::faults
