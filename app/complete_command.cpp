// The words that can stand next on the command line, from the same list of commands and options
// that
// `--help` prints. The completions of the shells (resources/completion) only ask for them.
#include "app/commands.h"
#include "core/store/records/batches.h"
#include "core/store/records/equipment.h"

#include <QRegularExpression>
#include <algorithm>

namespace holdband::app {

namespace {

using Words = std::vector<std::string>;

const std::string anyFile = ":files";

Words splitAt(const std::string& text, char sign)
{
    Words parts;
    for (const QString& part : QString::fromStdString(text).split(QLatin1Char(sign)))
        parts.push_back(part.toStdString());
    return parts;
}

template <typename Record>
void addNames(const Result<std::vector<Record>>& records, Words& words)
{
    if (!records)
        return;
    for (const Record& record : *records)
        words.push_back(record.name);
}

Words namesIn(const std::string& path, const std::string& kind)
{
    Words names;
    const auto logbook = store::LogbookFile::open(path, store::Access::read);
    if (!logbook)
        return names;
    const bool either = kind == "A" || kind == "B";
    if (kind == "BATCH" || either)
        addNames(store::readBatches(**logbook), names);
    if (kind == "SETUP" || either)
        addNames(store::readSetups(**logbook), names);
    if (kind == "METER")
        addNames(store::readMeters(**logbook), names);
    if (kind == "SENSOR")
        addNames(store::readSensors(**logbook), names);
    if (kind == "PLAN")
        addNames(store::readPlans(**logbook), names);
    return names;
}

bool isFile(const std::string& placeholder)
{
    return placeholder == "LOGBOOK" || placeholder == "FOLDER" || placeholder.starts_with("FILE") ||
           placeholder.starts_with("DESCRIPTION");
}

/// What a placeholder of the usage can become: "BATCH|SETUP", "us|metric", "FILE.csv".
Words wordsFor(const std::string& placeholder, const std::string& logbook)
{
    Words words;
    for (const std::string& part : splitAt(placeholder, '|')) {
        const bool literal = QString::fromStdString(part) != QString::fromStdString(part).toUpper();
        if (isFile(part))
            words.push_back(anyFile);
        else if (literal)
            words.push_back(part);
        else
            for (const std::string& name : namesIn(logbook, part))
                words.push_back(name);
    }
    return words;
}

/// The command line up to the word that is completed.
class Line {
public:
    Line(const Command& command, const Words& words) : m_command(command)
    {
        for (std::size_t i = 1; i + 1 < words.size(); ++i)
            take(words[i]);
        m_last = words.back();
    }

    Words nextWords() const
    {
        if (m_waiting)
            return wordsFor(m_waiting->valueName().toStdString(), m_logbook);
        if (m_last.starts_with("-"))
            return optionNames();
        const std::vector<std::string> places = placeholders();
        if (places.empty())
            return {};
        return wordsFor(places[std::min(m_arguments, places.size() - 1)], m_logbook);
    }

private:
    void take(const std::string& word)
    {
        if (m_waiting) {
            m_waiting.reset();
        } else if (word.starts_with("--")) {
            const auto option =
                std::find_if(m_command.options.begin(), m_command.options.end(),
                             [&](const QCommandLineOption& each) {
                                 return "--" + each.names().last().toStdString() == word;
                             });
            if (option != m_command.options.end() && !option->valueName().isEmpty())
                m_waiting = *option;
        } else if (!word.starts_with("-")) {
            if (m_arguments == 0)
                m_logbook = word;
            ++m_arguments;
        }
    }

    Words optionNames() const
    {
        Words names;
        for (const QCommandLineOption& option : m_command.options + commonOptions())
            names.push_back("--" + option.names().last().toStdString());
        return names;
    }

    /// "LOGBOOK [SETUP]..." → LOGBOOK, SETUP
    std::vector<std::string> placeholders() const
    {
        static const QRegularExpression decoration(QStringLiteral("[\\[\\]]|\\.\\.\\.$"));
        Words names;
        for (const std::string& word : splitAt(m_command.arguments, ' '))
            names.push_back(QString::fromStdString(word).remove(decoration).toStdString());
        return names;
    }

    const Command& m_command;
    std::optional<QCommandLineOption> m_waiting; ///< whose value is next
    std::string m_logbook;
    std::size_t m_arguments = 0;
    std::string m_last;
};

Words commandNames()
{
    Words names{"help"};
    for (const Command& command : allCommands())
        names.emplace_back(command.name);
    return names;
}

Words nextWords(const Words& words)
{
    if (words.size() < 2) {
        Words names = commandNames();
        names.push_back(anyFile); // a logbook for the window
        return names;
    }
    if (words.front() == "help")
        return commandNames();
    const std::vector<Command> commands = allCommands();
    const auto named = std::find_if(commands.begin(), commands.end(), [&](const Command& each) {
        return each.name == words.front();
    });
    return named == commands.end() ? Words() : Line(*named, words).nextWords();
}

} // namespace

int complete(const std::vector<std::string>& words)
{
    for (const std::string& word : nextWords(words))
        printLine(word);
    return finish(exitDone);
}

} // namespace holdband::app
