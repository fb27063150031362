#include "app/console.h"

#include "app/colors.h"
#include "app/command_options.h"
#include "core/text/name_suggestions.h"
#include "core/text/visible.h"

#include <algorithm>
#include <cstdio>
#include <sys/ioctl.h>
#include <unistd.h>

namespace holdband::app {

namespace {

bool isQuiet = false; ///< --quiet of the command that runs

} // namespace

void print(const std::string& text)
{
    const std::string plain = paintedEmphasis(visible(text, LineEnds::stay));
    std::fwrite(plain.data(), 1, plain.size(), stdout);
}

void printLine(const std::string& line)
{
    print(visible(line, LineEnds::escaped) + "\n");
}

void printSummary(const std::string& text)
{
    if (!isQuiet)
        print(text);
}

std::optional<std::size_t> terminalWidth()
{
    struct winsize size {};
    if (::isatty(STDOUT_FILENO) == 0 || ::ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) != 0 ||
        size.ws_col == 0)
        return std::nullopt;
    return size.ws_col;
}

void confirm(const std::string& line)
{
    if (!isQuiet)
        report(line);
}

namespace {

/// `start` comes from the program and may have colors.
void reportAfter(const std::string& start, const std::string& line)
{
    const std::string text = start + visible(line, LineEnds::escaped) + "\n";
    std::fwrite(text.data(), 1, text.size(), stderr);
}

} // namespace

void report(const std::string& line)
{
    reportAfter({}, line);
}

int fail(const Problem& problem)
{
    reportAfter(problemStart(), problem.sentence());
    switch (problem.kind) {
    case ProblemKind::data:
        return exitData;
    case ProblemKind::call:
        return exitCall;
    case ProblemKind::file:
        break;
    }
    return exitFile;
}

int finish(int status)
{
    if (std::fflush(stdout) == 0 && std::ferror(stdout) == 0)
        return status;
    report("holdband: the results can't be written to standard output.");
    return exitFile;
}

std::optional<std::string> Call::value(const char* option) const
{
    if (!has(option))
        return std::nullopt;
    return m_parser.value(QString::fromLatin1(option)).toStdString();
}

std::vector<std::string> Call::values(const char* option) const
{
    std::vector<std::string> all;
    for (const QString& value : m_parser.values(QString::fromLatin1(option)))
        all.push_back(value.toStdString());
    return all;
}

std::string usageLine(const Command& command)
{
    std::string line = std::string("holdband ") + command.name + " " + command.arguments;
    for (const QCommandLineOption& option : command.options) {
        line += " [--" + option.names().first().toStdString();
        if (!option.valueName().isEmpty())
            line += " " + option.valueName().toStdString();
        line += "]";
    }
    return line;
}

int wrongCall(const std::string& why, const std::string& usage)
{
    reportAfter(problemStart(), why + ".");
    report("usage: " + usage);
    return exitCall;
}

namespace {

/// Put before an argument that the parser must not take for an option; a private-use character.
constexpr QChar shield(0xE000);

bool takesValue(const Command& command, const QString& argument)
{
    const QList<QCommandLineOption> options = command.options + commonOptions();
    return std::any_of(options.begin(), options.end(), [&](const QCommandLineOption& option) {
        return !option.valueName().isEmpty() &&
               argument == QStringLiteral("--") + option.names().last();
    });
}

/// A number such as -5 is an argument, not an option. The parser already treats the value of an
/// option, and everything after the end of options (--), correctly.
QStringList withNumbersShielded(const Command& command, const QStringList& arguments)
{
    QStringList result;
    bool free = true;
    for (const QString& argument : arguments) {
        const bool number = argument.size() > 1 && argument[0] == u'-' &&
                            (argument[1].isDigit() || argument[1] == u'.');
        result += free && number ? shield + argument : argument;
        if (argument == QStringLiteral("--"))
            return result + arguments.mid(result.size());
        free = !(free && takesValue(command, argument));
    }
    return result;
}

QStringList withoutShields(QStringList arguments)
{
    for (QString& argument : arguments) {
        if (argument.startsWith(shield))
            argument.remove(0, 1);
    }
    return arguments;
}

/// "-h, --help", "--zone IANA"
std::string spelling(const QCommandLineOption& option)
{
    std::string text;
    for (const QString& name : option.names()) {
        text += text.empty() ? "" : ", ";
        text += (name.size() == 1 ? "-" : "--") + name.toStdString();
    }
    return option.valueName().isEmpty() ? text : text + " " + option.valueName().toStdString();
}

std::string unknownOption(const Command& command, const QCommandLineParser& parser)
{
    const std::string name = parser.unknownOptionNames().first().toStdString();
    std::vector<std::string> known;
    for (const QCommandLineOption& option : command.options + commonOptions())
        known.push_back(option.names().last().toStdString());
    return "there is no option --" + name + " (" + suggestion(name, known) + ")";
}

} // namespace

QList<QCommandLineOption> commonOptions()
{
    return {
        {{QStringLiteral("q"), QStringLiteral("quiet")},
         QStringLiteral("print results, warnings and problems, but no summary of what was done")},
        {QStringLiteral("color"),
         QStringLiteral("emphasis at a terminal; auto, the default, respects NO_COLOR"),
         QStringLiteral("auto|always|never")},
        {{QStringLiteral("h"), QStringLiteral("help")}, QStringLiteral("print this help")},
        {{QStringLiteral("V"), QStringLiteral("version")},
         QStringLiteral("print the version of the program")}};
}

std::string helpText(const Command& command)
{
    std::string text = "usage: " + usageLine(command) + "\n" + command.summary + "\n";
    for (const QCommandLineOption& option : command.options + commonOptions())
        text += "  " + spelling(option) + "\n      " + option.description().toStdString() + "\n";
    return text;
}

namespace {

Done takeColors(const Call& call)
{
    const std::string text = call.value("color").value_or("auto");
    if (text != "auto" && text != "always" && text != "never")
        return failure(wrongValue("color", text, "auto, always, never"));
    chooseColors(text == "always"  ? ColorChoice::always
                 : text == "never" ? ColorChoice::never
                                   : ColorChoice::automatic);
    return {};
}

} // namespace

int runCommand(const Command& command, const QStringList& arguments)
{
    QCommandLineParser parser;
    parser.addOptions(command.options);
    parser.addOptions(commonOptions());
    QStringList all{QStringLiteral("holdband")};
    all += withNumbersShielded(command, arguments);
    const bool parsed = parser.parse(all);
    if (parser.isSet(QStringLiteral("help"))) {
        print(helpText(command));
        return finish(exitDone);
    }
    if (parser.isSet(QStringLiteral("version"))) {
        printLine("holdband " HOLDBAND_VERSION);
        return finish(exitDone);
    }
    const std::string usage = usageLine(command);
    if (!parser.unknownOptionNames().isEmpty())
        return wrongCall(unknownOption(command, parser), usage);
    if (!parsed) {
        QString why = parser.errorText();
        if (why.endsWith(u'.'))
            why.chop(1);
        return wrongCall(why.toStdString(), usage);
    }
    isQuiet = parser.isSet(QStringLiteral("quiet"));
    if (const Done chosen = takeColors(Call(parser, {})); !chosen)
        return fail(chosen.error());
    const QStringList positional = withoutShields(parser.positionalArguments());
    if (positional.size() < command.leastArguments)
        return wrongCall("an argument is missing", usage);
    if (positional.size() > command.mostArguments)
        return wrongCall("there is an argument too many: " +
                             positional[command.mostArguments].toStdString(),
                         usage);
    return finish(command.run(Call(parser, positional)));
}

} // namespace holdband::app
