// Runs a command as a process and measures it from outside.
#pragma once

#include <string>
#include <vector>

namespace holdband::bench {

struct Measured {
    int status = -1;
    double seconds = 0.0; ///< wall time from start to end
    double peakMib = 0.0; ///< largest resident set
};

/// Output goes to /dev/null; standard input is `input`, where given.
Measured runCommand(const std::vector<std::string>& command, const std::string& input = {});

/// The middle one; of an even count the upper of the two.
double median(std::vector<double> values);

} // namespace holdband::bench
