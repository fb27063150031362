// Replaces a meter: the old one goes out of service, and the new one begins with the reading that
// revealed the change.
#pragma once

#include "core/model/readings.h"
#include "core/store/logbook_file.h"

#include <string>

namespace holdband::intake {

/// Returns the new meter's name: the old name with the next free number appended. Resolution and
/// accuracy are copied; the highest value of the register is not, because it is unknown for the new
/// meter. Problem (data): unknown meter; the old meter has a reading at or after that instant.
Result<std::string> replaceMeter(const store::LogbookFile& logbook, const std::string& meter,
                                 const MeterReading& first);

} // namespace holdband::intake
