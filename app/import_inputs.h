// What a call of `import` gives it to read: files, folders of logs, standard input.
#pragma once

#include "core/intake/log/import.h"
#include "core/problem.h"

#include <memory>
#include <string>
#include <vector>

namespace holdband::app {

struct ImportInput {
    std::string path;                             ///< as the call names it
    std::shared_ptr<const std::string> text = {}; ///< of standard input
};

/// Each file once, a folder's logs by name; "-" and /dev/stdin are read to their end. Problem
/// (call): standard input twice. Problem (file): a folder without logs, standard input can't be
/// read.
Result<std::vector<ImportInput>> importInputs(const std::vector<std::string>& arguments);

/// Puts them in the order of their first readings; those that can't be read come last.
void sortByFirstReading(const store::LogbookFile& logbook, const intake::ImportOptions& options,
                        std::vector<ImportInput>& inputs);

} // namespace holdband::app
