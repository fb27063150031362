// Shared by every command of the command line: results to standard output, everything else to
// standard error, exit statuses, and the parsing of its arguments.
#pragma once

#include "core/problem.h"

#include <QCommandLineParser>
#include <QList>
#include <QStringList>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace holdband::app {

enum ExitStatus {
    exitDone = 0,
    exitData = 1, ///< the data forbids it or needs a decision
    exitCall = 2, ///< the call is wrong
    exitFile = 3, ///< a file can't be read or written, is damaged, foreign or locked
};

// Text from files and names is shown here so that the terminal does not obey it
// (core/text/visible.h).
void print(const std::string& text);     ///< to standard output; line breaks remain
void printLine(const std::string& line); ///< to standard output
/// To standard output, what was read or saved: not with --quiet.
void printSummary(const std::string& text);
void report(const std::string& line); ///< to standard error
/// The columns of the terminal that standard output goes to; absent: to a file or another program.
std::optional<std::size_t> terminalWidth();
/// To standard error, that something was done: not with --quiet.
void confirm(const std::string& line);
/// Prints the problem and returns its exit status.
int fail(const Problem& problem);
/// Flushes standard output; a full disk or closed pipe there gives its own exit status.
int finish(int status);

/// The arguments of a command, after parsing.
class Call {
public:
    Call(const QCommandLineParser& parser, QStringList positional)
        : m_parser(parser), m_positional(std::move(positional))
    {
    }

    std::string argument(int index) const { return m_positional[index].toStdString(); }
    int argumentCount() const { return static_cast<int>(m_positional.size()); }
    bool has(const char* option) const { return m_parser.isSet(QString::fromLatin1(option)); }
    std::optional<std::string> value(const char* option) const;
    std::vector<std::string> values(const char* option) const;

private:
    const QCommandLineParser& m_parser;
    QStringList m_positional;
};

struct Command {
    const char* name;
    const char* arguments; ///< for the usage line: "LOGBOOK BATCH"
    const char* summary;
    int leastArguments;
    int mostArguments;
    QList<QCommandLineOption> options;
    std::function<int(const Call&)> run;
    bool paints = false; ///< needs fonts and pictures, but no display
};

/// Parses the arguments after the command's name and runs it.
int runCommand(const Command& command, const QStringList& arguments);

/// What `--help` of the command prints.
std::string helpText(const Command& command);

/// The options that every command has.
QList<QCommandLineOption> commonOptions();

std::string usageLine(const Command& command);

/// For a wrong call: prints the reason and the usage line.
int wrongCall(const std::string& why, const std::string& usage);

} // namespace holdband::app
