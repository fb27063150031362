// Why a log has no header below which times and values follow, in a sentence.
#pragma once

#include "core/intake/csv/sample.h"
#include "core/intake/log/log.h"
#include "core/problem.h"

#include <vector>

namespace holdband {

/// `samples`: the first rows, one sample for each delimiter that was tried; not empty.
tl::unexpected<Problem> noHeader(const std::vector<Sample>& samples,
                                 const LayoutRequest& layoutRequest);

} // namespace holdband
