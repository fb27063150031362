#include "tests/processes/child.h"

#include <csignal>
#include <fcntl.h>
#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

namespace holdband::test {

Child::Child(const std::vector<std::string>& command)
{
    // Closed in every other child, so that the end of a pipe is the end of this one.
    int in[2];
    int out[2];
    EXPECT_EQ(::pipe2(in, O_CLOEXEC), 0);
    EXPECT_EQ(::pipe2(out, O_CLOEXEC), 0);
    std::vector<char*> arguments;
    for (const std::string& argument : command)
        arguments.push_back(const_cast<char*>(argument.c_str()));
    arguments.push_back(nullptr);
    m_process = ::fork();
    if (m_process == 0) {
        ::dup2(in[0], STDIN_FILENO);
        ::dup2(out[1], STDOUT_FILENO);
        ::execv(arguments[0], arguments.data());
        ::_exit(127);
    }
    ::close(in[0]);
    ::close(out[1]);
    m_input = in[1];
    m_output = out[0];
}

Child::~Child()
{
    endInput();
    if (!m_ended)
        kill();
    ::close(m_output);
}

void Child::tell(const std::string& line) const
{
    const std::string bytes = line + "\n";
    EXPECT_EQ(::write(m_input, bytes.data(), bytes.size()), static_cast<ssize_t>(bytes.size()));
}

void Child::endInput()
{
    if (m_input >= 0)
        ::close(m_input);
    m_input = -1;
}

std::optional<std::string> Child::line()
{
    std::size_t end = m_read.find('\n');
    while (end == m_read.npos) {
        if (!readSome())
            return std::nullopt;
        end = m_read.find('\n');
    }
    std::string line = m_read.substr(0, end);
    m_read.erase(0, end + 1);
    return line;
}

std::vector<std::string> Child::rest()
{
    std::vector<std::string> lines;
    while (auto next = line())
        lines.push_back(std::move(*next));
    return lines;
}

void Child::kill()
{
    ::kill(m_process, SIGKILL);
    wait();
}

int Child::wait()
{
    if (!m_ended)
        ::waitpid(m_process, &m_status, 0);
    m_ended = true;
    return WIFEXITED(m_status) ? WEXITSTATUS(m_status) : -1;
}

bool Child::readSome()
{
    char bytes[4096];
    const ssize_t count = ::read(m_output, bytes, sizeof bytes);
    if (count > 0)
        m_read.append(bytes, static_cast<std::size_t>(count));
    return count > 0;
}

} // namespace holdband::test
