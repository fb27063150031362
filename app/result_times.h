// Instants of results that the analysis gives as milliseconds from a stage's start.
#pragma once

#include "core/quantity/instant.h"

#include <cmath>

namespace holdband::app {

/// To the nearest millisecond.
inline Instant after(Instant start, double ms)
{
    return start + Milliseconds{std::llround(ms)};
}

} // namespace holdband::app
