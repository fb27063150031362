// Text of the sample's files: printf into a string, and bytes into a file with all errors checked.
#pragma once

#include <filesystem>
#include <string>

namespace holdband::sample {

/// As std::snprintf, in the "C" locale, which the program never changes.
[[gnu::format(printf, 1, 2)]] std::string format(const char* pattern, ...);

/// False if the file could not be written completely.
[[nodiscard]] bool writeFile(const std::filesystem::path& path, const std::string& bytes);

} // namespace holdband::sample
