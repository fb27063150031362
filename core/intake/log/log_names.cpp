#include "core/intake/log/log_names.h"

#include <algorithm>
#include <array>
#include <filesystem>
#include <string_view>

namespace holdband::intake {

namespace fs = std::filesystem;

namespace {

constexpr std::array<std::string_view, 7> logEndings{".csv",  ".txt",   ".tsv",   ".log",
                                                     ".xlsx", ".jsonl", ".ndjson"};
constexpr std::array<std::string_view, 2> packedEndings{".gz", ".zip"};

/// Names that begin with a tilde are marks of programs that have a workbook open.
bool isLogName(const fs::path& path, PackedLogs packed)
{
    const std::string ending = path.extension().string();
    const std::string name = path.filename().string();
    const auto isOne = [&](std::string_view each) { return ending == each; };
    return !name.starts_with('.') && !name.starts_with('~') &&
           (std::any_of(logEndings.begin(), logEndings.end(), isOne) ||
            (packed == PackedLogs::take &&
             std::any_of(packedEndings.begin(), packedEndings.end(), isOne)));
}

} // namespace

std::vector<std::string> logsOf(const std::string& path, PackedLogs packed)
{
    std::error_code error;
    if (!fs::is_directory(path, error))
        return {path};
    std::vector<std::string> files;
    for (fs::directory_iterator each(path, error), end; !error && each != end;
         each.increment(error)) {
        if (each->is_regular_file(error) && isLogName(each->path(), packed))
            files.push_back(each->path().string());
    }
    std::sort(files.begin(), files.end());
    return files;
}

} // namespace holdband::intake
