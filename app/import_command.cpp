#include "app/import_command.h"

#include "app/command_options.h"
#include "app/import_inputs.h"
#include "app/logbook_call.h"
#include "app/meant_names.h"
#include "app/results_text.h"
#include "core/assign_result.h"
#include "core/exchange/file_writer.h"
#include "core/intake/csv/time_numbers.h"
#include "core/model/names.h"
#include "core/text/name_suggestions.h"

#include <algorithm>
#include <charconv>
#include <limits>
#include <optional>

namespace holdband::app {

void reportWarnings(const intake::ImportReport& imported)
{
    for (const std::string& warning : imported.file.warnings)
        report("holdband: " + imported.file.fileName + ": " + warning + ".");
}

namespace {

Result<std::pair<std::string, std::string>> columnFrom(const std::string& text)
{
    const std::size_t equals = text.find('=');
    if (equals == std::string::npos || equals == 0 || equals + 1 == text.size())
        return failure({ProblemKind::call,
                        "--column \"" + text + "\" is not of the form \"SENSOR OR METER=COLUMN\"",
                        {},
                        {}});
    return std::pair(text.substr(0, equals), text.substr(equals + 1));
}

Result<DateOrder> dateOrderFrom(const std::string& text)
{
    if (text == "ymd")
        return DateOrder::yearMonthDay;
    if (text == "mdy")
        return DateOrder::monthDayYear;
    if (text == "dmy")
        return DateOrder::dayMonthYear;
    return failure(wrongValue("date-order", text, "ymd, mdy, dmy"));
}

/// "f" or "c" of the temperatures, "wh" or "kwh" of the energies.
Done takeUnit(const std::string& text, intake::ImportOptions& options)
{
    if (text == "f")
        options.unit = TemperatureUnit::fahrenheit;
    else if (text == "c")
        options.unit = TemperatureUnit::celsius;
    else if (text == "wh")
        options.energyUnit = ReadingUnit::wattHour;
    else if (text == "kwh")
        options.energyUnit = ReadingUnit::kilowattHour;
    else
        return failure(wrongValue("unit", text, "f, c, wh, kwh"));
    return {};
}

Result<char> decimalSignFrom(const std::string& text)
{
    if (text == "comma")
        return ',';
    if (text == "point")
        return '.';
    return failure(wrongValue("decimal", text, "comma, point"));
}

Result<char> delimiterFrom(const std::string& text)
{
    static constexpr std::pair<std::string_view, char> named[] = {
        {"comma", ','}, {"semicolon", ';'}, {"tab", '\t'}, {"bar", '|'}, {"space", ' '}};
    for (const auto& [name, sign] : named) {
        if (text == name || text == std::string(1, sign))
            return sign;
    }
    return failure(wrongValue("delimiter", text, "comma, semicolon, tab, bar, space"));
}

/// The layout of columns and header, if the user specifies it.
Result<LayoutRequest> layoutFrom(const Call& call)
{
    LayoutRequest layoutRequest;
    if (const auto text = call.value("delimiter")) {
        auto sign = delimiterFrom(*text);
        HOLDBAND_TRY(sign);
        layoutRequest.delimiter = *sign;
    }
    if (const auto text = call.value("header-line")) {
        std::int64_t line = 0;
        const char* end = text->data() + text->size();
        const auto read = std::from_chars(text->data(), end, line);
        if (read.ec != std::errc{} || read.ptr != end || line < 0)
            return failure(wrongValue("header-line", *text,
                                      "the file's line numbers, from 1, or 0 for no header"));
        layoutRequest.headerLine = line;
    }
    return layoutRequest;
}

/// The columns of a log with one value per row, which must be given together.
Result<std::optional<intake::LongColumns>> longColumnsFrom(const Call& call)
{
    const auto names = call.value("names");
    const auto values = call.value("values");
    const auto units = call.value("unit-column");
    if (units && !(names && values))
        return failure({ProblemKind::call, "--unit-column goes with --names and --values", {}, {}});
    if (names.has_value() != values.has_value())
        return failure({ProblemKind::call, "--names and --values go together", {}, {}});
    if (!names)
        return std::optional<intake::LongColumns>();
    return std::optional(intake::LongColumns{*names, *values, units});
}

/// The options about values: unit, decimal sign, a register that falls.
Done takeValueOptions(const Call& call, intake::ImportOptions& options)
{
    for (const std::string& text : call.values("unit"))
        HOLDBAND_TRY(takeUnit(text, options));
    if (const auto text = call.value("decimal")) {
        auto sign = decimalSignFrom(*text);
        HOLDBAND_TRY(sign);
        options.decimalSign = *sign;
    }
    if (const auto text = call.value("event")) {
        options.registerDrop = choiceNamed<MeterEvent>(*text);
        if (!options.registerDrop)
            return failure(wrongValue("event", *text, choicesText<MeterEvent>()));
    }
    return {};
}

Result<intake::ImportOptions> importOptionsFrom(const Call& call)
{
    intake::ImportOptions options;
    options.sheet = call.value("sheet");
    options.timeColumn = call.value("time");
    options.timePattern = call.value("pattern");
    options.zone = call.value("zone");
    options.start = call.value("start");
    if (const auto text = call.value("time-unit")) {
        options.timeUnit = timeUnitOption(*text);
        if (!options.timeUnit)
            return failure(wrongValue("time-unit", *text, "seconds, minutes, hours, days"));
    }
    options.dryRun = call.has("dry-run");
    for (const std::string& text : call.values("column")) {
        auto column = columnFrom(text);
        HOLDBAND_TRY(column);
        options.columns.push_back(std::move(*column));
    }
    if (const auto text = call.value("date-order")) {
        auto order = dateOrderFrom(*text);
        HOLDBAND_TRY(order);
        options.dateOrder = *order;
    }
    auto longColumns = longColumnsFrom(call);
    HOLDBAND_TRY(longColumns);
    options.longColumns = std::move(*longColumns);
    auto layout = layoutFrom(call);
    HOLDBAND_TRY(layout);
    options.layoutRequest = *layout;
    HOLDBAND_TRY(takeValueOptions(call, options));
    return options;
}

std::vector<std::string> inQuotes(std::vector<std::string> names)
{
    for (std::string& name : names)
        name = '"' + name + '"';
    return names;
}

void reportIgnored(const intake::ImportReport& imported)
{
    reportWarnings(imported);
    const std::string file = "holdband: " + imported.file.fileName + ": ";
    const std::vector<std::string>& columns = imported.file.ignoredColumns;
    if (columns.size() == 1)
        report(file + "the column \"" + columns.front() +
               "\" was ignored: it is no sensor's or meter's name; import it with --column "
               "\"SENSOR=" +
               columns.front() + "\".");
    else if (!columns.empty())
        report(file + std::to_string(columns.size()) +
               " columns were ignored, no sensor or meter has their names: " +
               joined(inQuotes(columns)) + "; import one with --column \"SENSOR=COLUMN\".");
    if (!imported.file.ignoredNames.empty())
        report(file + "ignored: " + joined(imported.file.ignoredNames) +
               "; import one with --column \"SENSOR=NAME\".");
}

/// The log had values, but none of them could be read.
bool wasAllRejected(const intake::ImportReport& imported)
{
    return imported.file.rejectedTotal > 0 &&
           imported.added() + imported.alreadyThere() + imported.conflicting() == 0;
}

/// The readings are stored already, and the message says so.
int failRejects(Problem problem, const intake::ImportReport& imported, bool dryRun)
{
    if (!dryRun && imported.added() > 0)
        problem.remedy =
            "the readings are stored; import the file again to write its rejected rows";
    return fail(problem);
}

/// What a dry run finds is its result.
void printImport(const std::string& text, bool dryRun)
{
    if (dryRun)
        print(text);
    else
        printSummary(text);
}

Done useMeantNames(const store::LogbookFile& logbook, intake::ImportOptions& options)
{
    for (auto& [name, header] : options.columns)
        HOLDBAND_TRY(assignResult(meantSensorOrMeter(logbook, name), name));
    return {};
}

/// One file of a call, and how it went.
struct ImportOutcome {
    int status = exitDone;
    std::string summary; ///< "2 readings new"
};

ImportOutcome importOne(const store::LogbookFile& logbook, const intake::ImportOptions& options,
                        const std::optional<std::string>& rejects)
{
    const auto imported = intake::importLog(logbook, options);
    if (!imported)
        return {fail(imported.error()), "refused"};
    printImport(importText(*imported, options.dryRun), options.dryRun);
    reportIgnored(*imported);
    if (rejects) {
        const Done written = exchange::writeNewFile(*rejects, intake::rejectsCsv(*imported));
        if (!written)
            return {failRejects(written.error(), *imported, options.dryRun), "refused"};
    }
    if (wasAllRejected(*imported)) {
        report("holdband: " + imported->file.fileName +
               ": every row was rejected; nothing was stored.");
        return {exitData, "every row was rejected"};
    }
    return {exitDone, countLine(imported->added(), "reading", "readings") + " new"};
}

/// Each file by itself: one that is refused does not stop the others. The status is the highest of
/// theirs.
int importAll(const store::LogbookFile& logbook, intake::ImportOptions options,
              const std::vector<ImportInput>& inputs)
{
    int status = exitDone;
    std::int64_t refused = 0;
    std::string lines;
    for (const ImportInput& input : inputs) {
        options.path = input.path;
        options.text = input.text;
        const ImportOutcome outcome = importOne(logbook, options, std::nullopt);
        status = std::max(status, outcome.status);
        refused += outcome.status == exitDone ? 0 : 1;
        lines += "  " + oneLine(input.path) + ": " + outcome.summary + "\n";
    }
    const auto count = static_cast<std::int64_t>(inputs.size());
    printImport(countLine(count, "file", "files") + ": " + std::to_string(count - refused) +
                    (options.dryRun ? " can be imported, " : " imported, ") +
                    std::to_string(refused) + " refused.\n" + lines,
                options.dryRun);
    return status;
}

/// Checked before anything is stored: afterwards the readings would already be in the logbook.
Done mayWriteRejects(const std::string& path, std::size_t files)
{
    if (files > 1)
        return failure({ProblemKind::call, "--rejects goes with one file", {}, {}});
    Done may = exchange::mayWrite(path, exchange::Existing::keep);
    if (!may)
        may.error().remedy = "choose another name"; // there is no --force for this file
    return may;
}

std::vector<std::string> fileArguments(const Call& call)
{
    std::vector<std::string> files;
    for (int i = 1; i < call.argumentCount(); ++i)
        files.push_back(call.argument(i));
    return files;
}

int import(const Call& call)
{
    auto options = importOptionsFrom(call);
    if (!options)
        return fail(options.error());
    auto inputs = importInputs(fileArguments(call));
    if (!inputs)
        return fail(inputs.error());
    const auto rejects = call.value("rejects");
    if (rejects) {
        const Done may = mayWriteRejects(*rejects, inputs->size());
        if (!may)
            return fail(may.error());
    }
    auto logbook = options->dryRun ? store::LogbookFile::open(call.argument(0), store::Access::read)
                                   : openForWriting(call.argument(0));
    if (!logbook)
        return failOpening(logbook.error(), call.argument(0));
    if (const Done named = useMeantNames(**logbook, *options); !named)
        return fail(named.error());
    if (inputs->size() > 1) {
        sortByFirstReading(**logbook, *options, *inputs);
        return importAll(**logbook, *options, *inputs);
    }
    options->path = inputs->front().path;
    options->text = inputs->front().text;
    return importOne(**logbook, *options, rejects).status;
}

} // namespace

Command importCommand()
{
    return {
        "import",
        "LOGBOOK FILE...",
        "Read logs of sensors or meters: CSV, JSON lines, workbooks (.xlsx), packed or not; "
        "folders "
        "of them; - for standard input.",
        2,
        std::numeric_limits<int>::max(),
        {valueOption("column", "which column is a sensor's or meter's; may be repeated",
                     "\"SENSOR OR METER=COLUMN\""),
         valueOption("time", "the time's column, or date and time joined by +", "COLUMN"),
         valueOption("zone", "the zone of its local times; default the logbook's", "IANA"),
         valueOption("date-order", "how its dates are written", "ymd|mdy|dmy"),
         valueOption("unit",
                     "the unit of its temperatures (f, c) or of its energies (wh, kwh), whatever "
                     "the headers say; may be repeated",
                     "f|c|wh|kwh"),
         valueOption("pattern", "its times' layout, where no usual one fits", "\"dd.MM.yy HH:mm\""),
         valueOption("time-unit",
                     "what its times count, where they are numbers: since --start, or days of a "
                     "spreadsheet's calendar",
                     "seconds|minutes|hours|days"),
         valueOption("start", "when it began, if its times count from its start",
                     "\"2026-03-07 06:30\""),
         valueOption("decimal", "what a comma in its numbers is", "comma|point"),
         valueOption("names", "of a log with one value a row: the column that says whose",
                     "COLUMN"),
         valueOption("values", "and the column that holds the value", "COLUMN"),
         valueOption("unit-column", "and the column that says its unit, if one does", "COLUMN"),
         valueOption("delimiter", "what separates its columns, where that is detected wrongly",
                     "comma|semicolon|tab|bar|space"),
         valueOption("header-line",
                     "the line of the header row; 0: there is none, and the columns "
                     "are called \"column 1\" …",
                     "LINE"),
         valueOption("sheet", "of a workbook: the sheet to read; default the first", "NAME"),
         valueOption("event", "what happened wherever a register falls", "rollover|reset"),
         valueOption("rejects", "write the rejected rows there, as CSV; it must not exist",
                     "FILE.csv"),
         {QStringLiteral("dry-run"),
          QStringLiteral("say what would be stored, and store nothing")}},
        import};
}

} // namespace holdband::app
