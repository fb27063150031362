// The command that writes reports: a run, two side by side, a season, as PDF, HTML, CSV or picture.
#include "app/commands.h"
#include "app/logbook_call.h"
#include "app/meant_names.h"
#include "core/assign_result.h"

#ifdef HOLDBAND_HAS_WINDOW
#include "ui/report/report.h"

#include <QPageSize>
#endif

namespace holdband::app {

namespace {

#ifdef HOLDBAND_HAS_WINDOW

Problem wrong(std::string what, std::string remedy)
{
    return {ProblemKind::call, std::move(what), {}, std::move(remedy)};
}

/// The end of the name, if it is extremely long.
std::string shortened(const std::string& name)
{
    constexpr std::size_t most = 120;
    return name.size() <= most ? name : "…" + name.substr(name.size() - most);
}

Result<std::optional<QPageSize>> paperOf(const Call& call)
{
    const auto name = call.value("paper");
    if (!name)
        return std::nullopt;
    const QString paper = QString::fromStdString(*name).toLower();
    if (paper == QStringLiteral("a4"))
        return QPageSize(QPageSize::A4);
    if (paper == QStringLiteral("letter"))
        return QPageSize(QPageSize::Letter);
    return failure(wrong("there is no paper \"" + *name + "\"", "say --paper a4 or letter"));
}

/// "1920x1080"
Result<QSize> sizeOf(const Call& call)
{
    const auto text = call.value("size");
    if (!text)
        return report::landscape;
    const QStringList sides = QString::fromStdString(*text).split(
        QLatin1Char('x'), Qt::KeepEmptyParts, Qt::CaseInsensitive);
    bool first = false;
    bool second = false;
    const QSize size =
        sides.size() == 2 ? QSize(sides[0].toInt(&first), sides[1].toInt(&second)) : QSize();
    const auto fits = [](int side) {
        return side >= report::leastSide && side <= report::mostSide;
    };
    if (!first || !second || !fits(size.width()) || !fits(size.height()))
        return failure(wrong("\"" + *text + "\" is no size that a picture can have",
                             "write width x height in pixels, " +
                                 std::to_string(report::leastSide) + " to " +
                                 std::to_string(report::mostSide) + " each: --size 1080x1920"));
    return size;
}

/// An option that the form does not use is probably a mistake.
Done checkUses(const Call& call, report::Form form)
{
    using report::Form;
    const bool picture = form == Form::png || form == Form::svg;
    if (call.has("paper") && form != Form::pdf)
        return failure(wrong("--paper is for PDF", "leave it out, or end the file in .pdf"));
    if (call.has("size") && !picture)
        return failure(wrong("--size is for pictures", "leave it out, or end the file in .png"));
    if (call.has("dark") && !picture && form != Form::html)
        return failure(wrong("--dark is for pictures and HTML: paper is light", "leave it out"));
    if ((call.has("from") || call.has("only")) && call.argumentCount() < 3)
        return failure(wrong("--from and --only are for two side by side", "name both"));
    return {};
}

Result<report::ReportRequest> requestOf(const Call& call)
{
    report::ReportRequest request;
    request.counting = {call.value("from"), call.values("only")};
    for (int i = 1; i < call.argumentCount(); ++i)
        request.names.push_back(call.argument(i));
    const auto out = call.value("out");
    if (!out)
        return failure(wrong("the file to write is missing", "say --out FILE.pdf"));
    request.path = *out;
    const auto form = report::formNamed(request.path);
    if (!form)
        return failure(
            wrong("the ending of \"" + shortened(request.path) + "\" is none of a report's",
                  "end it in .pdf, .html, .csv, .png or .svg"));
    request.form = *form;
    HOLDBAND_TRY(checkUses(call, *form));
    auto paper = paperOf(call);
    HOLDBAND_TRY(paper);
    auto size = sizeOf(call);
    HOLDBAND_TRY(size);
    request.format.paper = *paper;
    request.format.size = *size;
    request.format.scheme = call.has("dark") ? ui::Scheme::dark : ui::Scheme::light;
    request.existing = call.has("force") ? exchange::Existing::replace : exchange::Existing::keep;
    return request;
}

Result<report::ReportRequest> withMeantNames(const store::LogbookFile& logbook,
                                             report::ReportRequest request)
{
    HOLDBAND_TRY(assignResult(allMeant(logbook, request.names, meantBatchOrSetup), request.names));
    HOLDBAND_TRY(
        assignResult(allMeant(logbook, request.counting.only, meantBatch), request.counting.only));
    return request;
}

int writeReport(const Call& call, const Command& command)
{
    const auto request = requestOf(call);
    if (!request) {
        const Problem& problem = request.error();
        return wrongCall(problem.what + "; " + problem.remedy, usageLine(command));
    }
    auto logbook = openForFigures(call.argument(0));
    if (!logbook)
        return failOpening(logbook.error(), call.argument(0));
    auto named = withMeantNames(**logbook, *request);
    if (!named)
        return fail(named.error());
    if (Done made = report::make(**logbook, *named); !made)
        return fail(made.error());
    app::confirm("Wrote " + request->path + ".");
    return exitDone;
}

#else

int writeReport(const Call&, const Command&)
{
    report("holdband: this build has no window, and reports are drawn with its parts.");
    return exitCall;
}

#endif

QCommandLineOption option(const char* name, const char* what, const char* value = "")
{
    return {QString::fromLatin1(name), QString::fromUtf8(what), QString::fromLatin1(value)};
}

} // namespace

std::vector<Command> reportCommands()
{
    Command command{
        "report",
        "LOGBOOK BATCH|SETUP [BATCH|SETUP]",
        "Write a report of a batch, of two side by side, or of all batches of a setup.",
        2,
        3,
        {option("out", "the file to write: .pdf, .html (one file), .csv (the figures), .png, .svg",
                "FILE"),
         option("force", "replace a file that already exists"),
         option("paper", "of a PDF; else the usual one of the logbook's units", "a4|letter"),
         option("size", "of a picture in pixels, such as 1080x1920; else 1920x1080", "WxH"),
         option("dark", "pictures and HTML on a dark background"),
         option("from",
                "of two batches: count from the start of that stage, instead of from pitching",
                "STAGE"),
         option("only", "of two setups: take only that batch; may be repeated", "BATCH")},
        {},
        true};
    command.run = [named = command](const Call& call) { return writeReport(call, named); };
    return {command};
}

} // namespace holdband::app
