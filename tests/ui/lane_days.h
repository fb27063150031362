// The days used by tests of the lanes.
#pragma once

#include "core/text/times.h"

namespace holdband::ui {

/// After 1 March 2026, 00:00 in Denver.
inline Instant day(int days)
{
    return *parseRfc3339("2026-03-01T07:00:00Z") + std::chrono::days{days};
}

} // namespace holdband::ui
