// Runs commands of the program in a child process, so that a crash or a hang ends only that.
#pragma once

#include <string>
#include <vector>

namespace holdband::damage {

/// The program's arguments, without its name.
using Arguments = std::vector<std::string>;
std::string lineOf(const Arguments& command);

struct Answer {
    int status = -1; ///< the exit status of the program; -1: it did not come to its end
    std::string out;
    std::string err;
};

/// What a child process made of some commands.
struct Answers {
    std::vector<Answer> each;
    std::string broken; ///< how the child died: "crashed in …", "took longer than 10 s in …"
};

/// Runs the commands one after another in a child of this process. `scratch` is a folder for what
/// they print. Each may take 10 s.
Answers runInChild(const std::vector<Arguments>& commands, const std::string& scratch);

} // namespace holdband::damage
