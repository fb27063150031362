// Random choices inside a property of RapidCheck.
#pragma once

#include "core/problem.h"

#include <rapidcheck.h>

namespace holdband::test {

/// From low to high, both included; any size of the generator reaches all of them.
inline int between(int low, int high)
{
    return *rc::gen::resize(100, rc::gen::inRange(low, high + 1));
}

/// A random change may be one that the logbook refuses; nothing else may go wrong with it.
template <typename T>
void mayRefuse(const Result<T>& result)
{
    RC_ASSERT(result.has_value() || result.error().kind == ProblemKind::data);
}

} // namespace holdband::test
