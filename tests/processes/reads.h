// What a reader gets from a logbook, as one line for each read, to compare what was read while
// another process wrote with what is in the file after each change.
#pragma once

#include "core/store/logbook_file.h"

#include <string>
#include <vector>

namespace holdband::test {

/// The kinds of reads: "figures" (verdict and energy, with the seal), "batches", "check",
/// "backup", "export".
const std::vector<std::string>& kindsOfReads();

/// Opens the logbook in the folder and reads it. `scratch`: an empty folder for the files that it
/// writes, which are removed. A Problem is returned as its sentence, after "failed: ".
std::string readOnce(const std::string& kind, const std::string& folder,
                     const std::string& scratch);

} // namespace holdband::test
