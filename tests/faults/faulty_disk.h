// The calls of core/disk.h, as the fault engine lets them through.
#pragma once

#include "core/disk.h"

namespace holdband::faults {

/// Syncs nothing: what was synced is known to the power model.
const DiskCalls& faultyDisk();

} // namespace holdband::faults
