// Undo and redo: what they restore, in which order, how far, and what prevents them.
#include "core/store/history/history.h"
#include "core/store/history/undo.h"
#include "core/store/readings/hand_readings.h"
#include "core/store/readings/imports.h"
#include "core/store/readings/value_corrections.h"
#include "core/store/records/exclusions.h"
#include "core/store/records/journal.h"
#include "core/store/safety/soundness.h"
#include "tests/store/logbooks.h"
#include "tests/store/saying.h"

namespace holdband::test {
namespace {

using store::Change;

class Undo : public LogbookTest {
protected:
    void SetUp() override
    {
        m_logbook = create();
        addEquipment(*m_logbook);
    }

    void rename(const char* from, const char* to) const
    {
        auto change = Change::begin(*m_logbook, saying(std::string("renamed to ") + to));
        ASSERT_TRUE(change);
        Sensor sensor = store::readSensors(*m_logbook)->front();
        sensor.name = to;
        ASSERT_TRUE(store::updateSensor(*change, from, sensor));
        ASSERT_TRUE(change->commit());
    }

    std::string sensorName() const { return store::readSensors(*m_logbook)->front().name; }

    store::ImportId import(const Log& log) const
    {
        auto change = Change::begin(*m_logbook, saying("imported loop.csv"));
        auto id = store::addImport(*change, {"loop.csv", "00", 3});
        EXPECT_TRUE(id);
        store::SensorRows rows;
        rows.sensor = "Beer";
        rows.header = "Beer";
        rows.at = &log.at;
        rows.raw = &log.raw;
        rows.line = &log.line;
        EXPECT_TRUE(store::addReadings(*change, *id, rows));
        EXPECT_TRUE(change->commit());
        return *id;
    }

    std::vector<double> values() const
    {
        auto series = store::readSeries(
            *m_logbook, "Beer", {someday - std::chrono::days{1}, someday + std::chrono::days{1}});
        EXPECT_TRUE(series);
        return series->value;
    }

    void expectSound() const
    {
        auto damage = store::findDamage(*m_logbook);
        ASSERT_TRUE(damage);
        EXPECT_EQ(*damage, std::vector<std::string>{});
    }

    std::unique_ptr<store::LogbookFile> m_logbook;
};

TEST_F(Undo, UndoesTheLastChangeFirstAndRedoesThemInOrder)
{
    rename("Beer", "Probe 1");
    rename("Probe 1", "Probe 2");
    EXPECT_EQ(undoText(*m_logbook), "renamed to Probe 2");
    EXPECT_EQ(store::historyText(*store::undoLast(*m_logbook)), "undid: renamed to Probe 2");
    EXPECT_EQ(sensorName(), "Probe 1");
    EXPECT_EQ(store::historyText(*store::undoLast(*m_logbook)), "undid: renamed to Probe 1");
    EXPECT_EQ(sensorName(), "Beer");
    EXPECT_EQ(redoText(*m_logbook), "renamed to Probe 1");
    ASSERT_TRUE(store::redoLast(*m_logbook));
    ASSERT_TRUE(store::redoLast(*m_logbook));
    EXPECT_EQ(sensorName(), "Probe 2");
    EXPECT_FALSE(store::redoLast(*m_logbook));
    expectSound();
}

TEST_F(Undo, ANewChangeEndsRedo)
{
    rename("Beer", "Probe 1");
    ASSERT_TRUE(store::undoLast(*m_logbook));
    rename("Beer", "Probe 3");
    EXPECT_FALSE(store::readUndoState(*m_logbook)->redo);
    EXPECT_EQ(store::historyText(*store::undoLast(*m_logbook)), "undid: renamed to Probe 3");
    EXPECT_EQ(sensorName(), "Beer");
}

TEST_F(Undo, GoesBackToTheFreshLogbookAndNoFurther)
{
    ASSERT_TRUE(store::undoLast(*m_logbook)); // the equipment
    EXPECT_TRUE(store::readSensors(*m_logbook)->empty());
    auto more = store::undoLast(*m_logbook);
    ASSERT_FALSE(more);
    EXPECT_EQ(more.error().kind, ProblemKind::data);
}

TEST_F(Undo, SurvivesARestartButNotMidnight)
{
    rename("Beer", "Probe 1");
    m_logbook.reset();
    // 1,772,900,000 s is 16:13 UTC; the logbook's zone is UTC.
    const auto sameDay = [] { return someday + std::chrono::hours{7}; };
    m_logbook = std::move(*store::LogbookFile::open(path(), store::Access::write, sameDay));
    EXPECT_EQ(undoText(*m_logbook), "renamed to Probe 1");
    m_logbook.reset();
    const auto nextDay = [] { return someday + std::chrono::hours{8}; };
    m_logbook = std::move(*store::LogbookFile::open(path(), store::Access::write, nextDay));
    EXPECT_FALSE(store::readUndoState(*m_logbook)->undo);
    EXPECT_FALSE(store::undoLast(*m_logbook));
}

TEST_F(Undo, AnImportIsWithdrawnUntilItIsRedone)
{
    Log log;
    log.add(0, 20.0);
    log.add(1, 21.0);
    import(log);
    EXPECT_EQ(values(), (std::vector{20.0, 21.0}));
    ASSERT_TRUE(store::undoLast(*m_logbook));
    EXPECT_TRUE(values().empty());
    EXPECT_TRUE(store::listImports(*m_logbook)->empty());
    expectSound();
    ASSERT_TRUE(store::redoLast(*m_logbook));
    EXPECT_EQ(values(), (std::vector{20.0, 21.0}));
    expectSound();
}

TEST_F(Undo, AnImportAfterAnUndoneOneNeverGetsItsReadings)
{
    Log first;
    first.add(0, 20.0);
    const store::ImportId undone = import(first);
    ASSERT_TRUE(store::undoLast(*m_logbook));
    Log second;
    second.add(5, 30.0);
    EXPECT_NE(import(second), undone);
    EXPECT_EQ(values(), std::vector{30.0});
    expectSound();
}

TEST_F(Undo, AnImportIsWithdrawnCompletelyAndRestored)
{
    Log log;
    log.add(0, 20.0);
    const store::ImportId id = import(log);
    {
        auto change = Change::begin(*m_logbook, saying("took back loop.csv"));
        ASSERT_TRUE(store::withdraw(*change, id));
        ASSERT_TRUE(change->commit());
    }
    EXPECT_TRUE(values().empty());
    EXPECT_EQ(store::listImports(*m_logbook)->front().withdrawnAt, someday);
    expectSound();
    ASSERT_TRUE(store::undoLast(*m_logbook));
    EXPECT_EQ(values(), std::vector{20.0});
    ASSERT_TRUE(store::redoLast(*m_logbook));
    EXPECT_TRUE(values().empty());
    auto change = Change::begin(*m_logbook, saying("put back loop.csv"));
    ASSERT_TRUE(store::restoreImport(*change, id));
    ASSERT_TRUE(change->commit());
    EXPECT_EQ(values(), std::vector{20.0});
    expectSound();
}

TEST_F(Undo, AnImportIsNotRestoredOverAnother)
{
    Log log;
    log.add(0, 20.0);
    const store::ImportId id = import(log);
    auto away = Change::begin(*m_logbook, saying("took back loop.csv"));
    ASSERT_TRUE(store::withdraw(*away, id));
    ASSERT_TRUE(away->commit());
    away = tl::unexpected(Problem{});
    import(log);
    auto back = Change::begin(*m_logbook, saying("put back loop.csv"));
    auto put = store::restoreImport(*back, id);
    ASSERT_FALSE(put);
    EXPECT_NE(put.error().sentence().find("another import"), std::string::npos);
    ASSERT_TRUE(back->commit());
    EXPECT_EQ(store::listImports(*m_logbook)->back().withdrawnAt, someday) << "nothing was written";
    EXPECT_EQ(values(), std::vector{20.0});
    expectSound();
}

TEST_F(Undo, AChangeThatOthersDependOnIsNotUndone)
{
    // The program itself adds a watched file's rows, so they are no step of undo.
    {
        auto change = Change::begin(*m_logbook, saying("added a probe"));
        Sensor sensor;
        sensor.name = "Probe 2";
        ASSERT_TRUE(store::addSensor(*change, sensor));
        ASSERT_TRUE(change->commit());
    }
    auto own = Change::begin(*m_logbook, saying("rows of a watched file", store::HistoryKind::own));
    ASSERT_TRUE(own);
    ASSERT_TRUE(store::addHandReading(*own, {store::HandOwner::Kind::sensor, "Probe 2"},
                                      {someday, 20.0, ReadingUnit::celsius, 1, {}, {}}));
    ASSERT_TRUE(own->commit());
    own = tl::unexpected(Problem{});
    EXPECT_EQ(undoText(*m_logbook), "added a probe");
    auto undone = store::undoLast(*m_logbook);
    ASSERT_FALSE(undone);
    EXPECT_NE(undone.error().sentence().find("later change depends"), std::string::npos);
    EXPECT_EQ(store::readSensors(*m_logbook)->size(), 2u);
    expectSound();
}

TEST_F(Undo, TheHistoryShowsEarlierValuesAndWhatIsUndone)
{
    rename("Beer", "Probe 1");
    const auto renamed = store::readHistory(*m_logbook, 1)->front();
    EXPECT_EQ(store::historyText(renamed.entry), "renamed to Probe 1");
    auto rows = store::readChangedRows(*m_logbook, renamed.id);
    ASSERT_TRUE(rows);
    ASSERT_EQ(rows->size(), 1u);
    EXPECT_EQ(rows->front().table, "sensors");
    const auto& values = rows->front().values;
    const auto name = std::find_if(values.begin(), values.end(),
                                   [](const auto& value) { return value.column == "name"; });
    ASSERT_NE(name, values.end());
    EXPECT_EQ(name->before, "Beer");
    EXPECT_EQ(name->after, "Probe 1");
    ASSERT_TRUE(store::undoLast(*m_logbook));
    auto history = store::readHistory(*m_logbook, 2);
    EXPECT_EQ(store::historyText(history->at(0).entry), "undid: renamed to Probe 1");
    EXPECT_TRUE(history->at(1).undone);
}

TEST_F(Undo, HandReadingsJoinTheSeriesAndCorrectionsPreserveTheOldOne)
{
    Log log;
    log.add(0, 20.0);
    import(log);
    const store::HandOwner beer{store::HandOwner::Kind::sensor, "Beer"};
    {
        auto change = Change::begin(*m_logbook, saying("typed a round"));
        ASSERT_TRUE(store::addHandReading(
            *change, beer,
            {someday + std::chrono::minutes{2}, 68.0, ReadingUnit::fahrenheit, 1, {}, "by eye"}));
        EXPECT_FALSE(store::addHandReading(
            *change, beer,
            {someday + std::chrono::minutes{2}, 69.0, ReadingUnit::fahrenheit, 1, {}, {}}));
        ASSERT_TRUE(change->commit());
    }
    ASSERT_EQ(values().size(), 2u);
    EXPECT_NEAR(values()[1], 20.0, 1e-9); // 68 °F
    const auto id = store::readHandReadings(*m_logbook, beer)->front().id;
    {
        auto change = Change::begin(*m_logbook, saying("corrected a reading"));
        ASSERT_TRUE(store::correctHandReading(*change, id, 86.0, 1, someday, "digits swapped"));
        ASSERT_TRUE(store::addValueCorrection(
            *change, {"Beer", someday, 25.0, ReadingUnit::celsius, someday, "probe lifted"}));
        ASSERT_TRUE(change->commit());
    }
    EXPECT_NEAR(values()[0], 25.0, 1e-9);
    EXPECT_NEAR(values()[1], 30.0, 1e-9); // 86 °F
    const auto stored = store::readHandReadings(*m_logbook, beer)->front();
    ASSERT_EQ(stored.before.size(), 1u);
    EXPECT_EQ(stored.before.front().value, 68.0);
    EXPECT_EQ(stored.before.front().why, "digits swapped");
    ASSERT_TRUE(store::undoLast(*m_logbook));
    EXPECT_NEAR(values()[0], 20.0, 1e-9);
    EXPECT_NEAR(values()[1], 20.0, 1e-9);
}

TEST_F(Undo, NothingInUseIsRemoved)
{
    auto change = Change::begin(*m_logbook, saying("removal"));
    auto removed = store::removeSetup(*change, "Loop");
    ASSERT_FALSE(removed);
    EXPECT_EQ(removed.error().remedy, "retire it instead");
    EXPECT_TRUE(store::removeMeter(*change, "Meter"));
    EXPECT_TRUE(store::removeSetup(*change, "Loop"));
    EXPECT_TRUE(store::removeSensor(*change, "Beer"));
}

} // namespace
} // namespace holdband::test
