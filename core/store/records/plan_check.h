// The rules that a batch's plan must meet before it is stored. No Qt.
#pragma once

#include "core/model/batch.h"
#include "core/problem.h"

namespace holdband {

/// Problem (data) with the stage it is about: no stage, a ramp first, hours that are missing, not
/// positive or beyond ten years, no tolerance, a tolerance that is not positive, a target beyond
/// −50 … 100 °C, an end that is not after pitching.
Done checkPlan(const Batch& batch);

} // namespace holdband
