// Without a subcommand Holdband opens its window; with one it works without a display.
#include "app/commands.h"
#include "core/text/name_suggestions.h"

#ifdef HOLDBAND_HAS_WINDOW
#include "ui/report/render/painting.h"
#include "ui/window/open_window.h"
#endif

#include <QCoreApplication>
#include <QSysInfo>
#include <QUrl>
#include <algorithm>
#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <new>
#include <string_view>
#include <unistd.h>

namespace holdband::app {

namespace {

const char* const windowUsage = "holdband [LOGBOOK]";

std::string overview(const std::vector<Command>& commands)
{
    std::string text = "Holdband is a logbook of fermentation runs: temperature held, energy used, "
                       "setups compared.\n\nusage: " +
                       std::string(windowUsage) + "\n      opens the window\n";
    for (const Command& command : commands)
        text += "usage: " + usageLine(command) + "\n      " + command.summary + "\n";
    return text + "`holdband help COMMAND` explains the options. Exit status: 0 done, 1 the data "
                  "forbids it or needs a decision,\n2 the call is wrong, 3 a file can't be read or "
                  "written.\n";
}

int runNamed(const Command& command, int argc, char** argv)
{
    QStringList arguments;
    for (int i = 2; i < argc; ++i)
        arguments += QString::fromUtf8(argv[i]);
#ifdef HOLDBAND_HAS_WINDOW
    if (command.paints)
        return report::withPainting(argv[0], [&] { return runCommand(command, arguments); });
#endif
    QCoreApplication application(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("holdband"));
    return runCommand(command, arguments);
}

/// A single word that names no file is probably a mistyped command.
bool looksLikeCommand(const std::string& word)
{
    std::error_code error;
    return word.find('/') == std::string::npos && word.find('.') == std::string::npos &&
           !std::filesystem::exists(word, error);
}

int wrongCommand(const std::vector<Command>& commands, const std::string& word)
{
    std::vector<std::string> names;
    for (const Command& command : commands)
        names.emplace_back(command.name);
    return wrongCall("there is no command \"" + word + "\" (" + suggestion(word, names) + ")",
                     "holdband COMMAND …, or " + std::string(windowUsage));
}

#ifdef HOLDBAND_HAS_WINDOW

/// A desktop may pass a file:// URL instead of a path.
Result<std::string> pathOf(const std::string& argument)
{
    if (!argument.starts_with("file:"))
        return argument;
    const QUrl url(QString::fromStdString(argument), QUrl::StrictMode);
    const QString host = url.host();
    const bool here = host.isEmpty() || host == QStringLiteral("localhost") ||
                      host == QSysInfo::machineHostName();
    if (!url.isValid() || !here || url.path().isEmpty())
        return failure({ProblemKind::call, "this URL names no file of this computer", argument,
                        "give the logbook's path"});
    return url.path(QUrl::FullyDecoded).toStdString();
}

/// The description for the sample logbook, if it was installed with the program.
std::optional<std::string> sampleDescription()
{
    std::error_code error;
    const std::filesystem::path program = std::filesystem::read_symlink("/proc/self/exe", error);
    const std::filesystem::path description =
        program.parent_path().parent_path() / "share/holdband/sample-data/spring-trials.json";
    return std::filesystem::is_regular_file(description, error)
               ? std::optional(description.string())
               : std::nullopt;
}

/// The path of the sample logbook made by app/start.sh or by this program; absent if it neither
/// exists nor can be made.
std::optional<std::string> sampleLogbook(bool canBeMade)
{
    const char* data = std::getenv("XDG_DATA_HOME");
    const char* home = std::getenv("HOME");
    std::filesystem::path folder;
    if (data && *data)
        folder = data;
    else if (home && *home)
        folder = std::filesystem::path(home) / ".local" / "share";
    const std::filesystem::path sample = folder / "holdband" / "sample.holdband";
    std::error_code error;
    const bool there = std::filesystem::is_regular_file(sample, error);
    return there || (canBeMade && !folder.empty()) ? std::optional(sample.string()) : std::nullopt;
}

int openTheWindow(int argc, char** argv)
{
    ui::WindowOptions options;
    if (argc > 1) {
        const auto path = pathOf(argv[1]);
        if (!path)
            return fail(path.error());
        options.logbook = *path;
    }
    options.sampleDescription = sampleDescription();
    options.sample = sampleLogbook(options.sampleDescription.has_value());
    return ui::openWindow(argc, argv, options);
}

#else

int openTheWindow(int, char**)
{
    report("holdband: this build has no window; `holdband --help` lists the commands.");
    return exitCall;
}

#endif

/// Of all commands, or of the one.
int help(const std::vector<Command>& commands, const std::string& name)
{
    if (name.empty()) {
        print(overview(commands));
        return finish(exitDone);
    }
    const auto named = std::find_if(commands.begin(), commands.end(),
                                    [&](const Command& each) { return each.name == name; });
    if (named == commands.end())
        return wrongCommand(commands, name);
    print(helpText(*named));
    return finish(exitDone);
}

int run(int argc, char** argv)
{
    // Exceeding a limit on file sizes makes the write fail instead of killing the program.
    std::signal(SIGXFSZ, SIG_IGN);
    const std::vector<Command> commands = allCommands();
    const std::string word = argc > 1 ? argv[1] : "";
    if (word == "--help" || word == "-h")
        return help(commands, "");
    if (word == "help")
        return help(commands, argc > 2 ? argv[2] : "");
    if (word == "--version" || word == "-V") {
        printLine("holdband " HOLDBAND_VERSION);
        return finish(exitDone);
    }
    if (word == "complete" && argc > 2 && std::string_view(argv[2]) == "--") {
        const QCoreApplication application(argc, argv);
        return complete({argv + 3, argv + argc});
    }
    const auto named = std::find_if(commands.begin(), commands.end(),
                                    [&](const Command& each) { return each.name == word; });
    if (named != commands.end())
        return runNamed(*named, argc, argv);
    if (word.starts_with("-"))
        return wrongCall("there is no option " + word, windowUsage);
    if (argc > 2 || (argc == 2 && looksLikeCommand(word)))
        return wrongCommand(commands, word);
    return openTheWindow(argc, argv);
}

} // namespace

} // namespace holdband::app

int main(int argc, char** argv)
{
    try {
        return holdband::app::run(argc, argv);
    } catch (const std::bad_alloc&) { // what was begun is rolled back by now
        constexpr std::string_view text =
            "holdband: there is not enough memory; close other programs, then try again.\n";
        [[maybe_unused]] const auto written = ::write(STDERR_FILENO, text.data(), text.size());
        return holdband::app::exitFile;
    }
}
