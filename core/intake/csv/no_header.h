// Why a log has no header below which times and values follow, in a sentence.
#pragma once

#include "core/intake/csv/sample.h"
#include "core/intake/log/log.h"
#include "core/problem.h"

#include <string>
#include <string_view>
#include <vector>

namespace holdband {

/// `samples`: the first rows, one sample for each delimiter that was tried; not empty.
tl::unexpected<Problem> noHeader(const std::vector<Sample>& samples,
                                 const LayoutRequest& layoutRequest);

/// Why rows with a date alone are no times, in a sentence. `name`: the column's header.
Problem dateAloneProblem(std::string_view text, std::int64_t line, const std::string& name);

} // namespace holdband
