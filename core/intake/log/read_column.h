// A column of a log and how it is read.
#pragma once

#include "core/intake/log/log.h"
#include "core/intake/log/units.h"

#include <cstddef>

namespace holdband {

/// A column to be read, with its chosen unit. Of a long log, one of the names in it: `index` is
/// then the column of the values.
struct ReadColumn {
    std::size_t index = 0; ///< in the header
    LogColumn column;      ///< without readings
    ChosenUnit unit;
};

} // namespace holdband
