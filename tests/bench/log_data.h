// The data of the benchmark: a log of 1-minute rows with three temperatures, and its description.
#pragma once

#include <filesystem>
#include <string>

namespace holdband::bench {

/// `Logged,Vessel (F),Air (F),Room (F)`, 1-minute steps from 2016 on, UTC.
void writeLog(const std::filesystem::path& path, int rows);

/// Equipment for the log, and one batch over its first `batchRows` minutes.
void writeDescription(const std::filesystem::path& path, int batchRows);

} // namespace holdband::bench
