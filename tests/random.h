// Random choices inside a RapidCheck property.
#pragma once

#include "core/problem.h"

#include <rapidcheck.h>

namespace holdband::test {

/// From low to high, both included; all of them are possible at any generator size.
inline int between(int low, int high)
{
    return *rc::gen::resize(100, rc::gen::inRange(low, high + 1));
}

/// The logbook may refuse a random change; no other error is allowed.
template <typename T>
void mayRefuse(const Result<T>& result)
{
    RC_ASSERT(result.has_value() || result.error().kind == ProblemKind::data);
}

} // namespace holdband::test
