// Everything that people do with a logbook and that writes: each with what must be there before.
#pragma once

#include "core/problem.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace holdband::faults {

struct Outcome {
    Done done;
    std::optional<Problem> copyFailed = {}; ///< of the day's copy, which blocks no change
};

struct Act {
    std::string name;
    /// Makes the files of an empty folder.
    std::function<void(const std::string& folder)> prepare;
    /// The act itself, from opening the logbook to closing it.
    std::function<Outcome(const std::string& folder)> run;
    /// The folder, with '/', whose files are all there or none; empty: each file counts by itself.
    std::string wholeFolder = {};
    long quickStep = 1;    ///< the quick set lets every call fail, every fifth …
    bool migrates = false; ///< opening the logbook for any purpose does the act
};

const std::vector<Act>& allActs();

} // namespace holdband::faults
