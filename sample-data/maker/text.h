// Text of the sample's files: printf into a string, and bytes into a file with every error seen.
#pragma once

#include <filesystem>
#include <string>

namespace holdband::sample {

/// As std::snprintf, in the "C" locale that the program never leaves.
[[gnu::format(printf, 1, 2)]] std::string format(const char* pattern, ...);

/// False when the file could not be written whole.
[[nodiscard]] bool writeFile(const std::filesystem::path& path, const std::string& bytes);

} // namespace holdband::sample
