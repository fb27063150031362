#include "tests/damage/commands_child.h"

#include "app/commands.h"

#include <QString>
#include <QStringList>
#include <algorithm>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <sys/wait.h>
#include <unistd.h>

namespace holdband::damage {

namespace {

constexpr unsigned mostSeconds = 10;

std::string fileOf(const std::string& scratch, std::size_t command, const char* what)
{
    return scratch + "/" + std::to_string(command) + "." + what;
}

std::string contentsOf(const std::string& path)
{
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

void sendTo(const std::string& path, int descriptor)
{
    const int file = ::open(path.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
    ::dup2(file, descriptor);
    ::close(file);
}

int runOne(const Arguments& arguments)
{
    const auto all = app::allCommands();
    const auto command = std::find_if(all.begin(), all.end(), [&](const app::Command& each) {
        return each.name == arguments.front();
    });
    if (command == all.end())
        return -1;
    QStringList rest;
    for (std::size_t i = 1; i < arguments.size(); ++i)
        rest += QString::fromStdString(arguments[i]);
    return app::runCommand(*command, rest);
}

[[noreturn]] void runAll(const std::vector<Arguments>& commands, const std::string& scratch)
{
    for (std::size_t i = 0; i < commands.size(); ++i) {
        sendTo(fileOf(scratch, i, "out"), STDOUT_FILENO);
        sendTo(fileOf(scratch, i, "err"), STDERR_FILENO);
        ::alarm(mostSeconds);
        const int status = runOne(commands[i]);
        ::alarm(0);
        std::fflush(stdout);
        std::fflush(stderr);
        std::ofstream(fileOf(scratch, i, "status")) << status;
    }
    ::_exit(0);
}

std::string howItDied(int status, const std::string& command)
{
    if (WIFEXITED(status) && WEXITSTATUS(status) == 0)
        return {};
    if (WIFSIGNALED(status) && WTERMSIG(status) == SIGALRM)
        return "took longer than " + std::to_string(mostSeconds) + " s in: " + command;
    return "crashed in: " + command;
}

Answer answerOf(const std::string& scratch, std::size_t command)
{
    const std::string status = contentsOf(fileOf(scratch, command, "status"));
    return {status.empty() ? -1 : std::atoi(status.c_str()),
            contentsOf(fileOf(scratch, command, "out")),
            contentsOf(fileOf(scratch, command, "err"))};
}

} // namespace

std::string lineOf(const Arguments& command)
{
    std::string line;
    for (const std::string& word : command)
        line += (line.empty() ? "" : " ") + word;
    return line;
}

Answers runInChild(const std::vector<Arguments>& commands, const std::string& scratch)
{
    std::filesystem::remove_all(scratch);
    std::filesystem::create_directories(scratch);
    std::fflush(stdout);
    std::fflush(stderr);
    const pid_t child = ::fork();
    if (child == 0)
        runAll(commands, scratch);
    int status = 0;
    ::waitpid(child, &status, 0);
    Answers answers;
    for (std::size_t i = 0; i < commands.size(); ++i)
        answers.each.push_back(answerOf(scratch, i));
    const auto unfinished = std::find_if(answers.each.begin(), answers.each.end(),
                                         [](const Answer& each) { return each.status < 0; });
    if (unfinished != answers.each.end()) {
        const auto index = static_cast<std::size_t>(unfinished - answers.each.begin());
        answers.broken = howItDied(status, lineOf(commands[index])) + "\n" + unfinished->err;
    }
    return answers;
}

} // namespace holdband::damage
