#include "tests/faults/acts.h"

#include "core/editing/import_withdrawal.h"
#include "core/editing/rounds.h"
#include "core/exchange/export.h"
#include "core/exchange/file_writer.h"
#include "core/exchange/load.h"
#include "core/intake/log/import.h"
#include "core/store/readings/imports.h"
#include "core/store/readings/meter_readings.h"
#include "core/store/records/batches.h"
#include "core/store/records/equipment.h"
#include "core/store/safety/backup.h"
#include "core/store/safety/backups.h"
#include "core/store/safety/daily_backup.h"
#include "core/store/safety/soundness.h"
#include "core/store/sqlite/schema.h"
#include "core/text/times.h"
#include "tests/faults/old_logbook.h"
#include "tests/faults/some_equipment.h"
#include "tests/faults/world.h"
#include "tests/store/saying.h"

#include <chrono>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>

namespace holdband::faults {

namespace fs = std::filesystem;
using namespace std::chrono_literals;
using store::Access;
using store::Change;
using store::LogbookFile;

namespace {

/// Opens the logbook for writing and passes it on.
template <typename Doing>
Done withLogbook(const std::string& folder, Doing doing)
{
    auto logbook = LogbookFile::open(logbookIn(folder), Access::write, clockOfTests);
    HOLDBAND_TRY(logbook);
    return doing(**logbook);
}

template <typename T>
Done done(const Result<T>& result)
{
    HOLDBAND_TRY(result);
    return {};
}

/// The act of a preparation, which must succeed.
void must(const Done& result)
{
    ASSERT_TRUE(result) << result.error().sentence();
}

intake::TypedReading reading(int hours, double kwh)
{
    intake::TypedReading typed;
    typed.meter = "Meter";
    typed.reading.at = someday + std::chrono::hours{hours};
    typed.reading.registerReading = Energy::kilowattHours(kwh);
    typed.reading.decimals = 1;
    return typed;
}

Batch ale()
{
    Batch batch;
    batch.name = "Ale";
    batch.setup = "Loop";
    batch.beerSensor = "Beer";
    batch.pitched = someday - 72h;
    batch.tolerance = TemperatureDifference::kelvins(0.5);
    Stage stage;
    stage.label = "Primary";
    stage.target = Temperature::celsius(19.0);
    batch.schedule = {stage};
    return batch;
}

Done addEquipment(const LogbookFile& logbook)
{
    auto change = Change::begin(logbook, saying("equipment"));
    HOLDBAND_TRY(change);
    HOLDBAND_TRY(addSomeEquipment(*change));
    HOLDBAND_TRY(store::addBatch(*change, ale()));
    return change->commit();
}

/// Made data: a reading every 5 minutes of the three days before `someday`.
void writeLog(const std::string& path)
{
    std::ofstream log(path);
    log << "Time (UTC),Beer (C)\n";
    for (int i = 0; i < 864; ++i)
        log << rfc3339Utc(someday - 72h + i * 5min) << "," << 18.5 + (i % 11) * 0.1 << "\n";
}

void makeBase(const std::string& folder)
{
    auto made = LogbookFile::create(logbookIn(folder), {}, clockOfTests);
    must(done(made));
    must(addEquipment(**made));
    must(done(intake::saveRound(**made, {reading(-60, 100.0), reading(-50, 103.5)})));
    writeLog(folder + "/log.csv");
}

Done saveRound(const std::string& folder)
{
    return withLogbook(folder, [](const LogbookFile& logbook) {
        return done(intake::saveRound(logbook, {reading(-40, 106.0), reading(-30, 109.5)}));
    });
}

Done import(const std::string& folder)
{
    return withLogbook(folder, [&](const LogbookFile& logbook) {
        intake::ImportOptions options;
        options.path = folder + "/log.csv";
        return done(intake::importLog(logbook, options));
    });
}

Done undo(const std::string& folder)
{
    return withLogbook(folder, [](const LogbookFile& logbook) { return done(undoLast(logbook)); });
}

Done redo(const std::string& folder)
{
    return withLogbook(folder, [](const LogbookFile& logbook) { return done(redoLast(logbook)); });
}

Done withdraw(const std::string& folder)
{
    return withLogbook(folder, [](const LogbookFile& logbook) -> Done {
        auto imports = store::listImports(logbook);
        HOLDBAND_TRY(imports);
        auto change = Change::begin(logbook, saying("withdrawn"));
        HOLDBAND_TRY(change);
        HOLDBAND_TRY(intake::withdrawImport(*change, imports->at(0).id));
        return change->commit();
    });
}

Done changePlan(const std::string& folder)
{
    return withLogbook(folder, [](const LogbookFile& logbook) -> Done {
        auto change = Change::begin(logbook, saying("plan"));
        HOLDBAND_TRY(change);
        Batch batch = ale();
        PlanChange plan{someday - 24h, "warmer", batch.schedule};
        plan.schedule[0].target = Temperature::celsius(20.0);
        batch.planChanges = {plan};
        HOLDBAND_TRY(store::updateBatch(*change, "Ale", batch));
        return change->commit();
    });
}

Done changeEquipment(const std::string& folder)
{
    return withLogbook(folder, [](const LogbookFile& logbook) -> Done {
        auto change = Change::begin(logbook, saying("renamed"));
        HOLDBAND_TRY(change);
        Meter meter;
        meter.name = "Cellar meter";
        meter.setup = "Loop";
        HOLDBAND_TRY(store::updateMeter(*change, "Meter", meter));
        return change->commit();
    });
}

/// A round that is the day's first change.
Outcome roundWithDailyCopy(const std::string& folder)
{
    Outcome outcome;
    outcome.done = withLogbook(folder, [&](LogbookFile& logbook) {
        logbook.useBackups({[] { return std::string(); },
                            [&](const Result<store::BackupCopy>& made) {
                                if (!made)
                                    outcome.copyFailed = made.error();
                            }});
        return done(intake::saveRound(logbook, {reading(-40, 106.0)}));
    });
    return outcome;
}

Done create(const std::string& folder)
{
    return done(LogbookFile::create(folder + "/new.holdband", {}, clockOfTests));
}

Done open(const std::string& folder)
{
    return withLogbook(folder, [](const LogbookFile&) { return Done{}; });
}

/// Finds damage where there is none if a failed read is taken for it.
Done check(const std::string& folder)
{
    auto logbook = LogbookFile::open(logbookIn(folder), Access::read, clockOfTests);
    HOLDBAND_TRY(logbook);
    auto damage = store::findDamage(**logbook);
    HOLDBAND_TRY(damage);
    return damage->empty() ? Done{} : fileProblem("damaged: " + damage->front(), folder);
}

Done askForBackup(const std::string& folder)
{
    return store::needsBackup(logbookIn(folder))
               ? fileProblem("damaged: a backup is needed", folder)
               : Done{};
}

Done backUp(const std::string& folder)
{
    auto logbook = LogbookFile::open(logbookIn(folder), Access::read, clockOfTests);
    HOLDBAND_TRY(logbook);
    return store::backupTo((*logbook)->database(), folder + "/copy.holdband");
}

Done restore(const std::string& folder)
{
    return done(store::restoreBeside(logbookIn(folder), {folder + "/kept copy", {}, 0}));
}

Done exportAll(const std::string& folder)
{
    auto logbook = LogbookFile::open(logbookIn(folder), Access::read, clockOfTests);
    HOLDBAND_TRY(logbook);
    return exchange::exportLogbook(**logbook, folder + "/out");
}

Done load(const std::string& folder, const std::string& logbook)
{
    return done(exchange::loadDescription(folder + "/" + logbook, folder + "/in/logbook.json",
                                          clockOfTests));
}

/// As the report's window writes it, once it is drawn.
Done writeReport(const std::string& folder, exchange::Existing existing)
{
    const std::string report(20'000, 'r');
    return exchange::writeFile(folder + "/report.pdf", report, existing);
}

/// The act as it is, after other acts.
Act act(const std::string& name, std::vector<std::function<Done(const std::string&)>> before,
        std::function<Done(const std::string&)> doing, const std::string& wholeFolder = {})
{
    const auto prepare = [before](const std::string& folder) {
        makeBase(folder);
        for (const auto& each : before)
            must(each(folder));
    };
    return {name, prepare,
            [doing](const std::string& folder) {
                return Outcome{doing(folder), {}};
            },
            wholeFolder};
}

Act migration(int format)
{
    return {"migration from format " + std::to_string(format),
            [format](const std::string& folder) { makeOldLogbook(logbookIn(folder), format); },
            [](const std::string& folder) {
                return Outcome{open(folder), {}};
            },
            {},
            1,
            true};
}

Done makeOut(const std::string& folder)
{
    fs::create_directory(folder + "/out");
    return {};
}

/// A description without a logbook.
Done describe(const std::string& folder)
{
    HOLDBAND_TRY(exportAll(folder));
    fs::rename(folder + "/out", folder + "/in");
    fs::remove(logbookIn(folder));
    return {};
}

Done makeEmptyLogbook(const std::string& folder)
{
    return done(LogbookFile::create(logbookIn(folder), {}, clockOfTests));
}

Done copyAway(const std::string& folder)
{
    fs::copy_file(logbookIn(folder), folder + "/kept copy");
    return {};
}

Done writeOldReport(const std::string& folder)
{
    std::ofstream(folder + "/report.pdf") << "the report of last week";
    return {};
}

Done newReport(const std::string& folder)
{
    return writeReport(folder, exchange::Existing::keep);
}

Done replacedReport(const std::string& folder)
{
    return writeReport(folder, exchange::Existing::replace);
}

Done loadNew(const std::string& folder)
{
    return load(folder, "loaded.holdband");
}

Done loadInto(const std::string& folder)
{
    return load(folder, "garage.holdband");
}

/// Every call of the quick acts of every day fails in the quick set, every third or fifth of the
/// others; those that load or migrate take long.
long quickStepOf(const Act& each)
{
    const std::string& name = each.name;
    if (each.migrates || name.starts_with("load"))
        return 15;
    if (name == "round" || name == "import" || name == "undo of an import" || name == "export" ||
        name == "backup" || name.find("report") != name.npos || name == "check")
        return 1;
    return name == "round with the day's copy" ? 3 : 5;
}

std::vector<Act> makeActs()
{
    std::vector<Act> acts = {
        act("new logbook", {}, create),
        act("round", {}, saveRound),
        act("import", {}, import),
        act("same import again", {import}, import),
        act("undo of a round", {saveRound}, undo),
        act("undo of an import", {import}, undo),
        act("redo", {import, undo}, redo),
        act("import withdrawn", {import}, withdraw),
        act("plan change", {}, changePlan),
        act("equipment change", {}, changeEquipment),
        act("check", {import}, check),
        act("question whether a backup is needed", {}, askForBackup),
        act("backup", {import}, backUp),
        act("copy restored", {copyAway}, restore),
        act("export", {import}, exportAll, "out/"),
        act("export into an empty folder", {import, makeOut}, exportAll, "out/"),
        act("load", {import, describe}, loadNew),
        act("load into a logbook", {import, describe, makeEmptyLogbook}, loadInto),
        act("new report", {}, newReport),
        act("report replaced", {writeOldReport}, replacedReport),
    };
    acts.push_back({"round with the day's copy", makeBase, roundWithDailyCopy});
    for (int format = 1; format < store::schemaSteps().back().version; ++format)
        acts.push_back(migration(format));
    for (Act& each : acts)
        each.quickStep = quickStepOf(each);
    return acts;
}

} // namespace

const std::vector<Act>& allActs()
{
    static const std::vector<Act> acts = makeActs();
    return acts;
}

} // namespace holdband::faults
