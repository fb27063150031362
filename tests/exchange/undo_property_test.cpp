// For any sequence of changes and undos: redoing everything gives the same export, and undoing
// everything gives the initial export.
#include "core/exchange/export.h"
#include "core/store/history/undo.h"
#include "core/store/readings/imports.h"
#include "core/store/readings/value_corrections.h"
#include "core/store/records/causes.h"
#include "core/store/records/exclusions.h"
#include "core/store/records/journal.h"
#include "core/store/records/watches.h"
#include "core/store/records/weighing.h"
#include "core/store/safety/soundness.h"
#include "tests/store/logbooks.h"

#include "core/store/readings/hand_readings.h"
#include "tests/random.h"
#include "tests/store/saying.h"

#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <nlohmann/json.hpp>
#include <rapidcheck.h>

namespace holdband::test {
namespace {

using store::Change;
using store::LogbookFile;

Instant moment()
{
    return someday - std::chrono::minutes{between(0, 5000)};
}

/// The description without its history, which also grows with each undo.
std::string withoutHistory(const std::string& description)
{
    auto document = nlohmann::ordered_json::parse(description);
    RC_ASSERT(document.erase("history") == 1u);
    return document.dump(1);
}

/// Every file of the export, one after the other, with its name.
std::string exported(const LogbookFile& logbook)
{
    const QTemporaryDir folder;
    const QString out = folder.filePath("out");
    const Done done = exchange::exportLogbook(logbook, out.toStdString());
    RC_ASSERT(done.has_value());
    QStringList names;
    for (QDirIterator files(out, QDir::Files, QDirIterator::Subdirectories); files.hasNext();)
        names << files.next();
    names.sort();
    std::string all;
    for (const QString& name : names) {
        QFile file(name);
        RC_ASSERT(file.open(QIODevice::ReadOnly));
        const std::string text = file.readAll().toStdString();
        all += QDir(out).relativeFilePath(name).toStdString() + "\n" +
               (name.endsWith(".json") ? withoutHistory(text) : text);
    }
    return all;
}

void importSomething(const Change& change)
{
    auto id = store::addImport(change, {"log.csv", "00", 3});
    RC_ASSERT(id.has_value());
    std::vector<Instant> at;
    std::vector<double> raw;
    std::vector<std::uint32_t> line;
    Instant next = moment();
    for (int i = between(1, 5); i > 0; --i) {
        at.push_back(next += std::chrono::minutes{between(1, 30)});
        raw.push_back(between(-50, 300) / 10.0);
        line.push_back(static_cast<std::uint32_t>(at.size() + 1));
    }
    store::SensorRows rows;
    rows.sensor = "Beer";
    rows.header = "Beer";
    rows.at = &at;
    rows.raw = &raw;
    rows.line = &line;
    RC_ASSERT(store::addReadings(change, *id, rows).has_value());
    RC_ASSERT(store::dropEmptyImport(change, *id).has_value());
}

void editEquipment(const LogbookFile& logbook, const Change& change)
{
    holdband::Setup setup = store::readSetups(logbook)->front();
    setup.kind += "x";
    setup.parts.push_back({"hose", 1.0, between(1, 90) / 1.0});
    RC_ASSERT(store::updateSetup(change, setup.name, setup).has_value());
    Sensor sensor = store::readSensors(logbook)->front();
    sensor.placement += "y";
    sensor.offsets.clear();
    if (between(0, 1) == 1)
        sensor.offsets = {{moment(), TemperatureDifference::kelvins(0.1), {}, "ice"}};
    RC_ASSERT(store::updateSensor(change, sensor.name, sensor).has_value());
    LogbookSettings settings = *store::readSettings(logbook);
    settings.tariff.pricePerKwh = between(1, 50) / 100.0;
    RC_ASSERT(store::writeSettings(change, settings).has_value());
}

Schedule someSchedule()
{
    Stage stage;
    stage.label = "Primary";
    stage.target = Temperature::celsius(between(5, 25));
    stage.tolerance = TemperatureDifference::kelvins(1.5);
    return {stage};
}

void editBatches(const LogbookFile& logbook, const Change& change)
{
    const auto batches = *store::readBatches(logbook);
    if (batches.empty()) {
        Batch batch;
        batch.name = "Ale";
        batch.setup = "Loop";
        batch.beerSensor = "Beer";
        batch.pitched = someday - std::chrono::days{9};
        batch.schedule = someSchedule();
        RC_ASSERT(store::addBatch(change, batch).has_value());
        return;
    }
    Batch batch = batches.front();
    const Instant last = batch.planChanges.empty() ? batch.pitched : batch.planChanges.back().from;
    batch.planChanges.push_back({last + std::chrono::hours{1}, "warmer", someSchedule()});
    batch.stageEnds = {batch.pitched + std::chrono::hours{between(1, 90)}};
    RC_ASSERT(store::updateBatch(change, batch.name, batch).has_value());
    const auto causes = *store::readCauses(logbook, batch.name);
    if (causes.size() > 1)
        RC_ASSERT(store::removeCause(change, causes.front().id).has_value());
    const Instant from = moment();
    RC_ASSERT(
        store::addCause(change, batch.name,
                        {{from, from + std::chrono::hours{1}}, Side::below, Cause::lidOpen, "n"})
            .has_value());
    RC_ASSERT(store::savePlan(change, {"Plan", "n", {}, someSchedule()}).has_value());
}

/// Adds a reading, or nothing if there is already one at that instant.
void addReading(const LogbookFile& logbook, const Change& change)
{
    const store::HandOwner beer{store::HandOwner::Kind::sensor, "Beer"};
    const auto hand =
        store::addHandReading(change, beer, {moment(), 20.5, ReadingUnit::celsius, 1, {}, "eye"});
    RC_ASSERT(hand.has_value() || hand.error().kind == ProblemKind::data);
    const auto stored = *store::readHandReadings(logbook, beer);
    RC_ASSERT(store::correctHandReading(change, stored.front().id, between(0, 300) / 10.0, 1,
                                        someday, "slip")
                  .has_value());
    MeterReading reading;
    reading.at = moment();
    reading.registerReading = Energy::kilowattHours(between(0, 999));
    const auto meter = store::addMeterReading(change, "Meter", reading);
    RC_ASSERT(meter.has_value() || meter.error().kind == ProblemKind::data);
    if (meter && between(0, 2) == 0)
        RC_ASSERT(store::deleteMeterReading(change, *meter).has_value());
    if (hand && between(0, 2) == 0)
        RC_ASSERT(store::deleteHandReading(change, *hand).has_value());
}

void remark(const LogbookFile& logbook, const Change& change)
{
    const Instant from = moment();
    RC_ASSERT(store::addExclusion(change, {"Beer", {from, from + std::chrono::hours{1}}, "lid", {}})
                  .has_value());
    RC_ASSERT(store::addNote(change, {moment(), {}, "note"}).has_value());
    RC_ASSERT(store::addValueCorrection(
                  change, {"Beer", from, 19.0, ReadingUnit::celsius, someday, "lifted"})
                  .has_value());
    const auto notes = *store::readNotes(logbook);
    if (notes.size() > 2)
        RC_ASSERT(store::removeNote(change, notes.front().id).has_value());
    const auto exclusions = *store::readExclusions(logbook);
    if (exclusions.size() > 2)
        RC_ASSERT(store::removeExclusion(change, exclusions.front().id).has_value());
}

void weigh(const LogbookFile& logbook, const Change& change)
{
    Weighing weighing = *store::readWeighing(logbook);
    weighing.weights[between(0, 1) == 1 ? "noise" : "looks"] = between(0, 50) / 10.0;
    if (between(0, 2) == 0)
        weighing.weights.erase("looks");
    weighing.batchesPerYear = between(1, 20) / 2.0;
    weighing.referenceLift.reset();
    if (between(0, 1) == 1)
        weighing.referenceLift = TemperatureDifference::kelvins(between(0, 20));
    RC_ASSERT(store::writeWeighing(change, weighing).has_value());
}

void withdrawAnImport(const LogbookFile& logbook, const Change& change)
{
    const auto imports = *store::listImports(logbook);
    if (!imports.empty())
        RC_ASSERT(store::withdraw(change, imports.front().id).has_value());
}

void watch(const LogbookFile& logbook, const Change& change)
{
    const auto watches = *store::readWatches(logbook);
    if (watches.size() > 1)
        RC_ASSERT(store::removeWatch(change, watches.front().id).has_value());
    else
        RC_ASSERT(store::addWatch(change, "/logs/" + std::to_string(between(0, 99)) + ".csv", "")
                      .has_value() ||
                  !watches.empty());
}

void enterSomething(const LogbookFile& logbook)
{
    const int what = between(0, 7);
    auto change = Change::begin(logbook, saying("entry " + std::to_string(what)));
    RC_ASSERT(change.has_value());
    if (what == 0)
        importSomething(*change);
    else if (what == 1)
        editEquipment(logbook, *change);
    else if (what == 2)
        editBatches(logbook, *change);
    else if (what == 3)
        addReading(logbook, *change);
    else if (what == 4)
        remark(logbook, *change);
    else if (what == 5)
        weigh(logbook, *change);
    else if (what == 6)
        watch(logbook, *change);
    else
        withdrawAnImport(logbook, *change);
    RC_ASSERT(change->commit().has_value());
}

class UndoProperties : public LogbookTest {
public:
    std::unique_ptr<LogbookFile> fresh() const
    {
        QFile::remove(QString::fromStdString(path()));
        return create();
    }
    using LogbookTest::addEquipment;
};

TEST_F(UndoProperties, EntriesAndUndosThenRedoGiveTheSameExport)
{
    const bool held = rc::check("enter and undo, then redo: the same export", [this] {
        const auto logbook = fresh();
        addEquipment(*logbook);
        const std::string beginning = exported(*logbook);
        for (int i = between(1, 12); i > 0; --i) {
            if (between(0, 3) > 0)
                enterSomething(*logbook);
            else if (undoText(*logbook) != "equipment")
                RC_ASSERT(store::undoLast(*logbook).has_value());
        }
        while (store::readUndoState(*logbook)->redo)
            RC_ASSERT(store::redoLast(*logbook).has_value());
        const std::string full = exported(*logbook);
        int undone = 0;
        while (undoText(*logbook) != "equipment") {
            RC_ASSERT(store::undoLast(*logbook).has_value());
            ++undone;
        }
        RC_ASSERT(exported(*logbook) == beginning);
        for (; undone > 0; --undone)
            RC_ASSERT(store::redoLast(*logbook).has_value());
        RC_ASSERT(exported(*logbook) == full);
        RC_ASSERT(store::findDamage(*logbook)->empty());
    });
    EXPECT_TRUE(held);
}

} // namespace
} // namespace holdband::test
