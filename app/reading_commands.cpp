// Commands that only read: they work while the logbook is open for writing elsewhere.
#include "app/commands.h"
#include "app/compare_json.h"
#include "app/compare_text.h"
#include "app/logbook_call.h"
#include "app/meant_names.h"
#include "app/results_json.h"
#include "app/results_text.h"
#include "core/assign_result.h"

namespace holdband::app {

namespace {

const QCommandLineOption jsonOption(QStringLiteral("json"),
                                    QStringLiteral("print the result as JSON"));

/// Opens the logbook, reviews it, and prints the review as text or as JSON.
template <typename Review, typename Text, typename JsonText>
int show(const Call& call, Review review, Text text, JsonText json)
{
    auto logbook = openForFigures(call.argument(0));
    if (!logbook)
        return failOpening(logbook.error(), call.argument(0));
    auto result = review(**logbook);
    if (!result)
        return fail(result.error());
    print(call.has("json") ? json(*result) + "\n" : text(*result));
    return exitDone;
}

int batches(const Call& call)
{
    return show(call, results::reviewBatches, batchesText, batchesJson);
}

Result<results::RunReview> reviewNamed(const store::LogbookFile& logbook, const std::string& typed)
{
    auto batch = meantBatch(logbook, typed);
    HOLDBAND_TRY(batch);
    return results::reviewRun(logbook, *batch, '.', results::SideCurves::leave);
}

int verdict(const Call& call)
{
    const auto review = [&](const store::LogbookFile& logbook) {
        return reviewNamed(logbook, call.argument(1));
    };
    return show(call, review, verdictText, verdictJson);
}

int energy(const Call& call)
{
    const auto review = [&](const store::LogbookFile& logbook) {
        return reviewNamed(logbook, call.argument(1));
    };
    return show(call, review, energyText, energyJson);
}

const QCommandLineOption fromOption(
    QStringLiteral("from"),
    QStringLiteral("of two batches: count from the start of that stage, which both have, "
                   "instead of from pitching"),
    QStringLiteral("STAGE"));

const QCommandLineOption
    onlyOption(QStringLiteral("only"),
               QStringLiteral("of two setups: take that batch; may be given several times, and a "
                              "setup of which none is given takes all of its own"),
               QStringLiteral("BATCH"));

int compare(const Call& call)
{
    const auto review = [&](const store::LogbookFile& logbook) -> Result<results::SideBySide> {
        results::SideBySideRequest request;
        HOLDBAND_TRY(assignResult(meantBatchOrSetup(logbook, call.argument(1)), request.a));
        HOLDBAND_TRY(assignResult(meantBatchOrSetup(logbook, call.argument(2)), request.b));
        HOLDBAND_TRY(
            assignResult(allMeant(logbook, call.values("only"), meantBatch), request.only));
        request.fromStage = call.value("from");
        return results::reviewSideBySide(logbook, request);
    };
    return show(call, review, compareText, compareJson);
}

} // namespace

std::vector<Command> readingCommands()
{
    return {
        {"batches",
         "LOGBOOK",
         "List the batches with their verdicts.",
         1,
         1,
         {jsonOption},
         batches},
        {"verdict",
         "LOGBOOK BATCH",
         "Did the batch stay in its band, and how sure is that?",
         2,
         2,
         {jsonOption},
         verdict},
        {"energy",
         "LOGBOOK BATCH",
         "What the batch used, by stage and by day.",
         2,
         2,
         {jsonOption},
         energy},
        {"compare",
         "LOGBOOK A B",
         "Two batches, or two setups, side by side.",
         3,
         3,
         {jsonOption, fromOption, onlyOption},
         compare},
    };
}

} // namespace holdband::app
