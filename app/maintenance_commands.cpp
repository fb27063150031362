// Commands that maintain the file: export, check, backup.
#include "app/commands.h"
#include "app/logbook_call.h"
#include "core/exchange/export.h"
#include "core/results/overview/batch_list.h"
#include "core/store/logbook_file.h"
#include "core/store/safety/backup.h"
#include "core/store/safety/soundness.h"

namespace holdband::app {

namespace {

template <typename Act>
int withLogbook(const Call& call, Act act)
{
    auto logbook = store::LogbookFile::open(call.argument(0), store::Access::read);
    if (!logbook)
        return failOpening(logbook.error(), call.argument(0));
    return act(**logbook);
}

/// A damaged logbook is exported as far as it can be read, so that its data can be saved.
void warnOfDamage(const store::LogbookFile& logbook)
{
    const auto damage = store::findDamage(logbook);
    if (!damage)
        return;
    for (const std::string& sentence : *damage)
        report("Damaged: " + sentence + ".");
}

int exportAll(const Call& call)
{
    return withLogbook(call, [&](const store::LogbookFile& logbook) {
        warnOfDamage(logbook);
        if (Done written = exchange::exportLogbook(logbook, call.argument(1)); !written)
            return fail(written.error());
        confirm("Exported to " + call.argument(1) + ".");
        return static_cast<int>(exitDone);
    });
}

int check(const Call& call)
{
    return withLogbook(call, [&](const store::LogbookFile& logbook) {
        auto damage = store::findDamage(logbook);
        if (!damage)
            return fail(damage.error());
        for (const std::string& sentence : *damage)
            printLine("Damaged: " + sentence + ".");
        if (!damage->empty())
            return failOpening({ProblemKind::file, "the logbook is damaged", logbook.path(),
                                "use a backup; `holdband export` saves what can be read"},
                               logbook.path());
        auto odd = results::findOddities(logbook);
        if (!odd)
            return fail(odd.error());
        printLine("The file is sound.");
        for (const std::string& sentence : *odd)
            printLine("Odd: " + sentence);
        return static_cast<int>(exitDone);
    });
}

int backup(const Call& call)
{
    return withLogbook(call, [&](const store::LogbookFile& logbook) {
        if (Done copied = store::backupTo(logbook.database(), call.argument(1)); !copied)
            return fail(copied.error());
        confirm("Backed up to " + call.argument(1) + ".");
        return static_cast<int>(exitDone);
    });
}

} // namespace

std::vector<Command> maintenanceCommands()
{
    return {
        {"export",
         "LOGBOOK FOLDER",
         "Write everything as a description and CSV files that `load` reads back.",
         2,
         2,
         {},
         exportAll},
        {"check", "LOGBOOK", "Is the file sound, and what is odd in it?", 1, 1, {}, check},
        {"backup", "LOGBOOK FILE", "Copy the logbook to another file.", 2, 2, {}, backup},
    };
}

std::vector<Command> allCommands()
{
    std::vector<Command> all = writingCommands();
    for (const auto& some : {readingCommands(), forecastCommands(), reportCommands(),
                             maintenanceCommands(), schemaCommands()})
        all.insert(all.end(), some.begin(), some.end());
    return all;
}

} // namespace holdband::app
