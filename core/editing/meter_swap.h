// Another meter takes a meter's place: the old one goes out of service, the new one begins with the
// reading that gave it away.
#pragma once

#include "core/model/readings.h"
#include "core/store/logbook_file.h"

#include <string>

namespace holdband::intake {

/// Returns the new meter's name: the old one's with the next free number behind it. Resolution and
/// accuracy are taken over, the register's top is not: nobody knows it of the new one.
/// Problem (data): unknown meter; a reading of the old meter stands at or after that instant.
Result<std::string> replaceMeter(const store::LogbookFile& logbook, const std::string& meter,
                                 const MeterReading& first);

} // namespace holdband::intake
