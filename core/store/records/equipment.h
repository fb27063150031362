// Settings, setups, sensors and meters in the store.
#pragma once

#include "core/model/equipment.h"
#include "core/store/logbook_file.h"

#include <vector>

namespace holdband::store {

Result<LogbookSettings> readSettings(const LogbookFile& logbook);
Done writeSettings(const Change& change, const LogbookSettings& settings);

/// In the order in which they were added.
Result<std::vector<Setup>> readSetups(const LogbookFile& logbook);
Result<std::vector<Sensor>> readSensors(const LogbookFile& logbook);
Result<std::vector<Meter>> readMeters(const LogbookFile& logbook);

/// Problem (data): the name is taken, or another differs from it only in case; an unknown setup is
/// named by the sensor or meter.
Done addSetup(const Change& change, const Setup& setup);
Done addSensor(const Change& change, const Sensor& sensor);
Done addMeter(const Change& change, const Meter& meter);

/// Replaces the record called `name`; the value may have a new name. Problem (data): as when
/// adding, and an unknown name.
Done updateSetup(const Change& change, const std::string& name, const Setup& setup);
Done updateSensor(const Change& change, const std::string& name, const Sensor& sensor);
Done updateMeter(const Change& change, const std::string& name, const Meter& meter);

/// Problem (data): other records refer to it; it can be retired instead.
Done removeSetup(const Change& change, const std::string& name);
Done removeSensor(const Change& change, const std::string& name);
Done removeMeter(const Change& change, const std::string& name);

} // namespace holdband::store
