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

/// Output goes to /dev/null; standard input is `input`, if given.
Measured runCommand(const std::vector<std::string>& command, const std::string& input = {});

/// The median; of an even count the upper of the middle two.
double median(std::vector<double> values);

} // namespace holdband::bench
