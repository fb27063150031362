// Which files of a folder are logs, by their names.
#pragma once

#include <string>
#include <vector>

namespace holdband::intake {

enum class PackedLogs {
    leaveOut, ///< of a watched folder, where they are old logs that were put away
    take,
};

/// The logs of the folder, by name, without those in folders inside it; a file itself.
std::vector<std::string> logsOf(const std::string& path, PackedLogs packed);

} // namespace holdband::intake
