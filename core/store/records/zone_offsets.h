// The offsets of the logbook's zone as rows, from which the views tell local times: SQLite knows no
// time zones.
#pragma once

#include "core/store/sqlite/database.h"

namespace holdband::store {

/// Writes the offsets of the logbook's zone if there are none. A zone that this computer doesn't
/// know gets none, and the views then have no local times.
Done storeZoneOffsets(const Database& database);

} // namespace holdband::store
