#include "app/import_inputs.h"

#include "core/intake/container/limits.h"
#include "core/intake/log/log_names.h"

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <filesystem>
#include <optional>
#include <set>
#include <unistd.h>
#include <utility>

namespace holdband::app {

namespace {

constexpr const char* standardInputName = "standard input";

bool isStandardInput(const std::string& argument)
{
    return argument == "-" || argument == "/dev/stdin";
}

Result<ImportInput> readStandardInput()
{
    constexpr std::size_t step = std::size_t{1} << 16;
    std::string text;
    for (;;) {
        const std::size_t before = text.size();
        text.resize(before + step);
        const ssize_t count = ::read(STDIN_FILENO, text.data() + before, step);
        text.resize(before + static_cast<std::size_t>(std::max<ssize_t>(count, 0)));
        if (count < 0 && errno != EINTR)
            return fileProblem(std::string("it can't be read (") + std::strerror(errno) + ")",
                               standardInputName);
        if (static_cast<std::int64_t>(text.size()) > mostWhole)
            return fileProblem("it is larger than 512 MiB", standardInputName,
                               "write it to a file, and import that");
        if (count == 0)
            break;
    }
    return ImportInput{standardInputName, std::make_shared<const std::string>(std::move(text))};
}

/// The same for all names of a file.
std::string plainPath(const std::string& path)
{
    std::error_code error;
    const auto plain = std::filesystem::weakly_canonical(path, error);
    return error ? path : plain.string();
}

} // namespace

Result<std::vector<ImportInput>> importInputs(const std::vector<std::string>& arguments)
{
    if (std::count_if(arguments.begin(), arguments.end(), isStandardInput) > 1)
        return failure({ProblemKind::call, "standard input can be read only once", {}, {}});
    std::vector<ImportInput> inputs;
    std::set<std::string> seen;
    for (const std::string& argument : arguments) {
        if (isStandardInput(argument)) {
            auto input = readStandardInput();
            HOLDBAND_TRY(input);
            inputs.push_back(std::move(*input));
            continue;
        }
        const auto logs = intake::logsOf(argument, intake::PackedLogs::take);
        if (logs.empty())
            return fileProblem("there is no log in this folder", argument,
                               "name the files themselves");
        for (const std::string& log : logs) {
            if (seen.insert(plainPath(log)).second)
                inputs.push_back({log});
        }
    }
    return inputs;
}

void sortByFirstReading(const store::LogbookFile& logbook, const intake::ImportOptions& options,
                        std::vector<ImportInput>& inputs)
{
    std::vector<std::pair<std::optional<Instant>, ImportInput>> dated;
    for (ImportInput& input : inputs) {
        intake::ImportOptions own = options;
        own.path = input.path;
        own.text = input.text;
        const auto first = intake::firstReading(logbook, own);
        dated.emplace_back(first ? *first : std::nullopt, std::move(input));
    }
    std::stable_sort(dated.begin(), dated.end(), [](const auto& a, const auto& b) {
        return a.first && (!b.first || *a.first < *b.first);
    });
    inputs.clear();
    for (auto& [first, input] : dated)
        inputs.push_back(std::move(input));
}

} // namespace holdband::app
