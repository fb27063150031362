#include "app/logbook_call.h"

#include "app/console.h"
#include "core/preferences/preferences.h"
#include "core/store/safety/soundness.h"
#include "core/text/times.h"

namespace holdband::app {

namespace {

std::string inQuotes(const std::string& path)
{
    std::string quoted = "'";
    for (const char c : path)
        quoted += c == '\'' ? std::string("'\\''") : std::string(1, c);
    return quoted + "'";
}

std::string line(const store::BackupCopy& copy)
{
    const Date day(std::chrono::floor<std::chrono::days>(copy.taken));
    return "  " + dateText(day) + " " + clockText(copy.taken) + "  " + copy.path;
}

} // namespace

store::BackupOptions backupOptions()
{
    const auto tell = [](const Result<store::BackupCopy>& made) {
        if (!made)
            report("holdband: no copy today: " + made.error().sentence() +
                   " The change goes on without it.");
    };
    return {[] { return preferences::backupPlace().toStdString(); }, tell};
}

Result<std::unique_ptr<store::LogbookFile>> openForWriting(const std::string& path)
{
    auto logbook = store::LogbookFile::open(path, store::Access::write);
    HOLDBAND_TRY(logbook);
    (*logbook)->useBackups(backupOptions());
    auto sealed = (*logbook)->isSealed();
    HOLDBAND_TRY(sealed);
    if (!*sealed)
        report("holdband: " + path +
               " is damaged, or another program wrote in it: it no longer "
               "fits its seal. The change is saved all the same; `holdband "
               "check` says what is damaged.");
    return logbook;
}

Result<std::unique_ptr<store::LogbookFile>> openForFigures(const std::string& path)
{
    auto logbook = store::LogbookFile::open(path, store::Access::read);
    HOLDBAND_TRY(logbook);
    HOLDBAND_TRY(store::checkSeal((*logbook)->database()));
    return logbook;
}

int failOpening(const Problem& problem, const std::string& logbook)
{
    const int status = fail(problem);
    const std::string place = preferences::backupPlace().toStdString();
    if (problem.kind != ProblemKind::file || !store::needsBackup(logbook))
        return status;
    const auto copies = store::soundBackups(logbook, place);
    if (copies.empty())
        return status;
    report("Sound copies of it, newest first:");
    for (const store::BackupCopy& copy : copies)
        report(line(copy));
    report("Take one into use under another name; what is there stays as it is:");
    report("  holdband backup " + inQuotes(copies.front().path) + " restored.holdband");
    return status;
}

} // namespace holdband::app
