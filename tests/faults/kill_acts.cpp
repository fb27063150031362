#include "tests/faults/kill_acts.h"

#include "core/editing/rounds.h"
#include "core/intake/log/import.h"
#include "core/store/history/undo.h"
#include "core/store/records/batches.h"
#include "core/store/safety/backup.h"
#include "core/text/times.h"
#include "tests/faults/some_equipment.h"
#include "tests/faults/world.h"

#include <chrono>
#include <memory>

namespace holdband::faults {

namespace {

using store::Access;
using store::LogbookFile;

constexpr int kindsOfActs = 4;
const Instant pitched = someday - std::chrono::hours{24 * 300};

/// Made data: a reading every minute for two days, later ones with each number.
std::string madeLog(int number)
{
    std::string log = "Time (UTC),Beer (C)\n";
    const Instant begin = pitched + std::chrono::hours{48 * number};
    for (int minute = 0; minute < 2880; ++minute)
        log += rfc3339Utc(begin + std::chrono::minutes{minute}) + "," +
               std::to_string(18 + minute % 5) + "." + std::to_string(minute % 10) + "\n";
    return log;
}

Done importPiece(const LogbookFile& logbook, int number)
{
    intake::ImportOptions options;
    options.path = "piece.csv";
    options.text = std::make_shared<const std::string>(madeLog(number));
    auto imported = intake::importLog(logbook, options);
    HOLDBAND_TRY(imported);
    return {};
}

Done saveOneRound(const LogbookFile& logbook, int number)
{
    intake::TypedReading typed;
    typed.meter = "Meter";
    typed.reading.at = pitched + std::chrono::hours{4 * number};
    typed.reading.registerReading = Energy::kilowattHours(100.0 + number);
    auto saved = intake::saveRound(logbook, {typed});
    HOLDBAND_TRY(saved);
    return {};
}

Done undoOnce(const LogbookFile& logbook)
{
    auto undone = store::undoLast(logbook);
    HOLDBAND_TRY(undone);
    return {};
}

/// "Pale" at 20 ± 1 °C, still open.
Done addOpenBatch(const store::Change& change)
{
    Batch batch;
    batch.name = "Pale";
    batch.setup = "Loop";
    batch.beerSensor = "Beer";
    batch.pitched = pitched;
    batch.tolerance = TemperatureDifference::kelvins(1.0);
    Stage stage;
    stage.label = "Hold";
    stage.target = Temperature::celsius(20.0);
    batch.schedule = {stage};
    return store::addBatch(change, batch);
}

} // namespace

Done prepareForKills(const std::string& folder)
{
    auto logbook = LogbookFile::create(logbookIn(folder), {}, clockOfTests);
    HOLDBAND_TRY(logbook);
    auto change =
        store::Change::begin(**logbook, {store::HistoryVerb::other, {"equipment"}, {}, {}});
    HOLDBAND_TRY(change);
    HOLDBAND_TRY(addSomeEquipment(*change));
    HOLDBAND_TRY(addOpenBatch(*change));
    return change->commit();
}

bool isBackup(int number)
{
    return number % kindsOfActs == 3;
}

std::string copyOf(const std::string& folder, int number)
{
    return folder + "/copy " + std::to_string(number);
}

Done killAct(const LogbookFile& logbook, const std::string& folder, int number)
{
    switch (number % kindsOfActs) {
    case 0:
        return importPiece(logbook, number);
    case 1:
        return saveOneRound(logbook, number);
    case 2:
        return undoOnce(logbook);
    default:
        return store::backupTo(logbook.database(), copyOf(folder, number));
    }
}

Done killAct(const std::string& folder, int number)
{
    auto logbook = LogbookFile::open(logbookIn(folder), Access::write, clockOfTests);
    HOLDBAND_TRY(logbook);
    return killAct(**logbook, folder, number);
}

} // namespace holdband::faults
