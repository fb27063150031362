#include "tests/bench/child.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <fcntl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

namespace holdband::bench {

namespace {

[[noreturn]] void becomeCommand(const std::vector<std::string>& command, const std::string& input)
{
    std::vector<char*> arguments;
    for (const std::string& argument : command)
        arguments.push_back(const_cast<char*>(argument.c_str()));
    arguments.push_back(nullptr);
    const int in = ::open(input.empty() ? "/dev/null" : input.c_str(), O_RDONLY);
    const int out = ::open("/dev/null", O_WRONLY);
    ::dup2(in, 0);
    ::dup2(out, 1);
    ::execvp(arguments[0], arguments.data());
    std::_Exit(127);
}

} // namespace

Measured runCommand(const std::vector<std::string>& command, const std::string& input)
{
    const auto start = std::chrono::steady_clock::now();
    const pid_t child = ::fork();
    if (child == 0)
        becomeCommand(command, input);
    int status = 0;
    struct rusage usage {};
    ::wait4(child, &status, 0, &usage);
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
    Measured measured;
    measured.status = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    measured.seconds = took.count();
    measured.peakMib = static_cast<double>(usage.ru_maxrss) / 1024.0;
    if (measured.status != 0)
        std::fprintf(stderr, "%s ended with status %d\n", command[0].c_str(), measured.status);
    return measured;
}

double median(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
}

} // namespace holdband::bench
