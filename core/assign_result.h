// Fills a struct field by field from calls that can fail. No Qt.
#pragma once

#include "core/problem.h"

#include <utility>

namespace holdband {

/// Moves the value into its place, or passes its Problem on.
template <typename Value>
Done assignResult(Result<Value> read, Value& into)
{
    HOLDBAND_TRY(read);
    into = std::move(*read);
    return {};
}

} // namespace holdband
