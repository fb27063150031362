#include "tests/bench/table.h"

#include "tests/bench/child.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cstdio>

namespace holdband::bench {

namespace {

std::string rangeText(const Times& times)
{
    std::array<char, 64> text{};
    std::snprintf(text.data(), text.size(), "%.3f (%.3f-%.3f)", times.median, times.least,
                  times.most);
    return text.data();
}

} // namespace

Times timesOf(std::vector<double> values)
{
    const auto [least, most] = std::minmax_element(values.begin(), values.end());
    const Times times{0.0, *least, *most};
    return {median(std::move(values)), times.least, times.most};
}

Times measured(int runs, const std::function<double()>& once)
{
    std::vector<double> values;
    for (int i = 0; i < runs; ++i)
        values.push_back(once());
    return timesOf(std::move(values));
}

double timed(const std::function<void()>& work)
{
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

void printHeading()
{
    std::printf("%-66s %21s %21s %7s   %s\n", "measure", "ours, s", "peer, s", "ratio", "target");
}

void row(const char* measure, const Times& ours, const std::optional<Times>& peer,
         const char* target)
{
    if (peer)
        std::printf("%-66s %21s %21s %7.2f   %s\n", measure, rangeText(ours).c_str(),
                    rangeText(*peer).c_str(), ours.median / peer->median, target);
    else
        std::printf("%-66s %21s %21s %7s   %s\n", measure, rangeText(ours).c_str(), "not there", "",
                    target);
    std::fflush(stdout);
}

void amount(const char* measure, double value, const char* unit, const char* target)
{
    std::printf("%-66s %12.1f %-39s   %s\n", measure, value, unit, target);
    std::fflush(stdout);
}

} // namespace holdband::bench
