// The table that a benchmark prints: measures with the median of several runs and their range.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace holdband::bench {

/// Of several runs.
struct Times {
    double median = 0.0;
    double least = 0.0;
    double most = 0.0;
};

Times timesOf(std::vector<double> values);

/// Runs it several times; it returns what it measured.
Times measured(int runs, const std::function<double()>& once);

/// Seconds that the work takes.
double timed(const std::function<void()>& work);

void printHeading();
/// A measure beside its peer's; without a peer the row says that it is not there.
void row(const char* measure, const Times& ours, const std::optional<Times>& peer,
         const char* target);
void amount(const char* measure, double value, const char* unit, const char* target);

} // namespace holdband::bench
