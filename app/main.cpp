// Without a subcommand Holdband opens its window; with one it works without a display.
#include "app/commands.h"
#include "core/text/near.h"

#ifdef HOLDBAND_HAS_WINDOW
#include "ui/report/painting.h"
#include "ui/window/open_window.h"
#endif

#include <QCoreApplication>
#include <algorithm>
#include <csignal>
#include <cstdlib>
#include <filesystem>

namespace holdband::app {

namespace {

const char* const windowUsage = "holdband [LOGBOOK]";

std::string overview(const std::vector<Command>& commands)
{
    std::string text = "Holdband keeps the logbook of fermentation runs: temperature held, energy "
                       "used, arrangements compared.\n\nusage: " +
                       std::string(windowUsage) + "\n      opens the window\n";
    for (const Command& command : commands)
        text += "usage: " + usageLine(command) + "\n      " + command.summary + "\n";
    return text + "`holdband COMMAND --help` explains the options. Exit status: 0 done, 1 the data "
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

/// A lone word that names no file is likelier a mistyped command.
bool looksLikeCommand(const std::string& word)
{
    return word.find('/') == std::string::npos && word.find('.') == std::string::npos;
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

/// The sample logbook that app/start.sh makes, where it was made.
std::optional<std::string> sampleLogbook()
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
    return std::filesystem::is_regular_file(sample, error) ? std::optional(sample.string())
                                                           : std::nullopt;
}

int openTheWindow(int argc, char** argv)
{
    ui::WindowOptions options;
    if (argc > 1)
        options.logbook = argv[1];
    options.sample = sampleLogbook();
    return ui::openWindow(argc, argv, options);
}

#else

int openTheWindow(int, char**)
{
    report("holdband: this build has no window; `holdband --help` lists the commands.");
    return exitCall;
}

#endif

int run(int argc, char** argv)
{
    // A limit on file sizes is reported by the write that meets it, not by dying.
    std::signal(SIGXFSZ, SIG_IGN);
    const std::vector<Command> commands = allCommands();
    const std::string word = argc > 1 ? argv[1] : "";
    if (word == "--help") {
        print(overview(commands));
        return finish(exitDone);
    }
    if (word == "--version") {
        printLine("holdband " HOLDBAND_VERSION);
        return finish(exitDone);
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
    return holdband::app::run(argc, argv);
}
