// A child process with pipes at its standard input and output, which is told what to do and answers
// in lines.
#pragma once

#include <optional>
#include <string>
#include <sys/types.h>
#include <vector>

namespace holdband::test {

class Child {
public:
    explicit Child(const std::vector<std::string>& command);
    /// Kills it if it still runs.
    ~Child();
    Child(const Child&) = delete;
    Child& operator=(const Child&) = delete;

    /// A line to its standard input.
    void tell(const std::string& line) const;
    /// Ends its standard input.
    void endInput();
    /// Its next line; absent once it has ended its output.
    std::optional<std::string> line();
    /// All lines until it ends its output.
    std::vector<std::string> rest();

    /// Ends this one process at once.
    void kill();
    /// Waits for its end. Returns its exit status; −1: a signal ended it.
    int wait();
    pid_t process() const { return m_process; }

private:
    bool readSome();

    pid_t m_process = -1;
    int m_input = -1;
    int m_output = -1;
    bool m_ended = false;
    int m_status = 0;
    std::string m_read; ///< not yet returned
};

} // namespace holdband::test
