// The headers of a log, so that each column can be given a meaning before anything is read.
#pragma once

#include "core/problem.h"

#include <string>
#include <vector>

namespace holdband::ui {

struct LogHead {
    std::vector<std::string> headers; ///< without those of the time
    std::vector<std::string> timeHeaders;
};

/// Problem (file): can't be read. Problem (data): no header or no time column is found.
Result<LogHead> readHead(const std::string& path);

} // namespace holdband::ui
