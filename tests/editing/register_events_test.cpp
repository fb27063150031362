// A rollover or a reset belongs to a pair of readings; whatever happens to the readings beside it,
// it counts once.
#include "core/editing/import_withdrawal.h"
#include "core/intake/log/store_log.h"
#include "tests/editing/registers.h"

namespace holdband::test {
namespace {

constexpr auto rollover = MeterEvent::rollover;
constexpr auto reset = MeterEvent::reset;

/// Events of the readings in order of time.
using Events = std::vector<std::optional<MeterEvent>>;

class RegisterEventsTest : public RegisterTest {
protected:
    Events events() const
    {
        Events all;
        for (const store::StoredReading& reading : stored())
            all.push_back(reading.inForce.event);
        return all;
    }
    void undo() const { ASSERT_TRUE(store::undoLast(logbook())); }

    /// Imports a log of the meter.
    store::ImportId import(std::initializer_list<MeterReading> readings) const
    {
        auto change = store::Change::begin(logbook(), saying("imported"));
        LogFile log;
        log.fileName = "meter.csv";
        LogColumn column;
        column.name = "Meter";
        column.kind = SeriesKind::meter;
        column.unit = ReadingUnit::kilowattHour;
        for (const MeterReading& reading : readings) {
            column.line.push_back(static_cast<std::uint32_t>(column.at.size() + 2));
            column.at.push_back(reading.at);
            column.raw.push_back(reading.registerReading.kilowattHours());
            column.decimals.push_back(0);
        }
        log.columns.push_back(std::move(column));
        const auto report = intake::storeLog(logbook(), *change, std::move(log), {});
        EXPECT_TRUE(report) << report.error().sentence();
        EXPECT_TRUE(change->commit());
        return *report->import;
    }
    void withdraw(store::ImportId import) const
    {
        auto change = store::Change::begin(logbook(), saying("withdrawn"));
        ASSERT_TRUE(intake::withdrawImport(*change, import));
        ASSERT_TRUE(change->commit());
    }
    Done putBack(store::ImportId import) const
    {
        auto change = store::Change::begin(logbook(), saying("put back"));
        HOLDBAND_TRY(intake::restoreImport(*change, import));
        return change->commit();
    }
};

} // namespace

TEST_F(RegisterEventsTest, ALateReadingPastTheTopTakesTheRolloverOver)
{
    typeAll({at(1, 9'900), at(5, 100)});
    EXPECT_EQ(used(), 200.0);
    typeAll({at(3, 50)});
    EXPECT_EQ(used(), 200.0);
    EXPECT_EQ(events(), (Events{{}, rollover, {}}));
    undo();
    EXPECT_EQ(events(), (Events{{}, rollover}));
    typeAll({at(3, 9'950)});
    EXPECT_EQ(used(), 200.0);
    EXPECT_EQ(events(), (Events{{}, {}, rollover}));
}

TEST_F(RegisterEventsTest, AReadingTypedBeforeTheFirstOneCanShowARollover)
{
    typeAll({at(5, 100), at(1, 9'900)});
    EXPECT_EQ(used(), 200.0);
    EXPECT_EQ(events(), (Events{{}, rollover}));
    undo();
    EXPECT_EQ(events(), (Events{std::nullopt}));
}

TEST_F(RegisterEventsTest, ARolloverSurvivesTheDeletionOfItsReading)
{
    typeAll({at(1, 9'900), at(3, 50), at(5, 100)});
    ASSERT_TRUE(erase(3));
    EXPECT_EQ(used(), 200.0);
    EXPECT_EQ(events(), (Events{{}, rollover}));
    ASSERT_TRUE(bringBack(3));
    EXPECT_EQ(used(), 200.0);
    EXPECT_EQ(events(), (Events{{}, rollover, {}}));
    undo();
    undo();
    EXPECT_EQ(events(), (Events{{}, rollover, {}}));
}

TEST_F(RegisterEventsTest, ADeclaredRolloverFromTheMiddleOfTheRegisterMovesToo)
{
    typeAll({at(1, 5'000), at(3, 50, rollover), at(5, 100)});
    EXPECT_EQ(used(), 5'100.0);
    ASSERT_TRUE(erase(3));
    EXPECT_EQ(used(), 5'100.0);
    typeAll({at(2, 20)});
    EXPECT_EQ(used(), 5'100.0);
    EXPECT_EQ(events(), (Events{{}, rollover, {}}));
}

TEST_F(RegisterEventsTest, AResetMovesLikeARollover)
{
    typeAll({at(1, 50), at(5, 20, reset)});
    EXPECT_EQ(used(), 20.0);
    typeAll({at(3, 10)});
    EXPECT_EQ(used(), 20.0);
    EXPECT_EQ(events(), (Events{{}, reset, {}}));
    ASSERT_TRUE(erase(3));
    EXPECT_EQ(used(), 20.0);
    EXPECT_EQ(events(), (Events{{}, reset}));
    typeAll({at(3, 10, reset)});
    EXPECT_EQ(used(), 20.0) << "the same reset, now said explicitly";
    typeAll({at(2, 60)});
    EXPECT_EQ(used(), 30.0) << "10 kWh before it";
}

TEST_F(RegisterEventsTest, ADeletedReadingTakesAnEventAlongThatNothingShowsAnyMore)
{
    typeAll({at(1, 9'900), at(3, 50), at(5, 9'960)});
    ASSERT_TRUE(erase(3)); // mistyped
    EXPECT_EQ(used(), 60.0);
}

TEST_F(RegisterEventsTest, AMistypedReadingBeforeTheTopTakesItsRolloverAlong)
{
    typeAll({at(1, 90), at(3, 9'100), at(5, 95)});
    EXPECT_EQ(used(), 10'005.0);
    ASSERT_TRUE(erase(3));
    EXPECT_EQ(used(), 5.0);
    ASSERT_TRUE(bringBack(3));
    EXPECT_EQ(used(), 10'005.0);
}

TEST_F(RegisterEventsTest, OneRolloverExplainsOnlyOneFall)
{
    typeAll({at(1, 9'900), at(5, 100)});
    EXPECT_FALSE(type(at(3, 150))) << "above the later 100";
    EXPECT_EQ(used(), 200.0);
}

TEST_F(RegisterEventsTest, ACorrectionAcrossTheTopBecomesARolloverAndBack)
{
    typeAll({at(1, 9'900), at(3, 9'950)});
    ASSERT_TRUE(correct(3, 50));
    EXPECT_EQ(used(), 150.0);
    EXPECT_EQ(events(), (Events{{}, rollover}));
    ASSERT_TRUE(correct(3, 9'960));
    EXPECT_EQ(used(), 60.0);
    EXPECT_EQ(events(), (Events{{}, {}}));
    undo();
    EXPECT_EQ(used(), 150.0);
    EXPECT_EQ(events(), (Events{{}, rollover}));
}

TEST_F(RegisterEventsTest, ACorrectionMovesTheRolloverBetweenItsTwoPairs)
{
    typeAll({at(1, 9'900), at(3, 9'950), at(5, 100)});
    EXPECT_EQ(events(), (Events{{}, {}, rollover}));
    ASSERT_TRUE(correct(3, 50));
    EXPECT_EQ(used(), 200.0);
    EXPECT_EQ(events(), (Events{{}, rollover, {}}));
    ASSERT_TRUE(correct(3, 9'960));
    EXPECT_EQ(used(), 200.0);
    EXPECT_EQ(events(), (Events{{}, {}, rollover}));
    EXPECT_FALSE(correct(3, 150)) << "above the later 100";
    ASSERT_TRUE(correct(1, 9'940)) << "the first reading";
    EXPECT_EQ(used(), 160.0);
}

TEST_F(RegisterEventsTest, ACorrectedFirstReadingDecidesTheEventOfTheNext)
{
    typeAll({at(1, 9'900), at(3, 9'950)});
    ASSERT_TRUE(erase(1));
    typeAll({at(5, 100)});
    ASSERT_TRUE(correct(3, 90));
    EXPECT_EQ(used(), 10.0);
    ASSERT_TRUE(correct(3, 9'950));
    EXPECT_EQ(used(), 150.0);
}

TEST_F(RegisterEventsTest, AStaleRolloverOfAFirstReadingDoesNotCount)
{
    typeAll({at(1, 9'900), at(5, 100)});
    ASSERT_TRUE(erase(1));
    typeAll({at(3, 50)});
    EXPECT_EQ(used(), 50.0);
}

TEST_F(RegisterEventsTest, ADeclaredResetStaysWithItsReading)
{
    typeAll({at(1, 50), at(5, 20, reset)});
    ASSERT_TRUE(correct(5, 60));
    EXPECT_EQ(used(), 60.0);
    typeAll({at(3, 55)});
    EXPECT_EQ(used(), 65.0);
    ASSERT_TRUE(erase(1));
    ASSERT_TRUE(bringBack(1));
    EXPECT_EQ(used(), 65.0);
}

TEST_F(RegisterEventsTest, AWithdrawnImportGivesTheRolloverBackAndTakesItAgain)
{
    typeAll({at(1, 9'900), at(6, 100)});
    const auto log = import({at(2, 9'950), at(3, 20), at(4, 30)});
    EXPECT_EQ(used(), 200.0);
    EXPECT_EQ(events(), (Events{{}, {}, rollover, {}, {}}));
    withdraw(log);
    EXPECT_EQ(used(), 200.0);
    EXPECT_EQ(events(), (Events{{}, rollover}));
    const Done back = putBack(log);
    ASSERT_TRUE(back) << back.error().sentence();
    EXPECT_EQ(used(), 200.0);
    EXPECT_EQ(events(), (Events{{}, {}, rollover, {}, {}}));
    undo();
    EXPECT_EQ(events(), (Events{{}, rollover}));
    undo();
    EXPECT_EQ(events(), (Events{{}, {}, rollover, {}, {}}));
    undo();
    EXPECT_EQ(events(), (Events{{}, rollover}));
}

TEST_F(RegisterEventsTest, AnImportThatContradictsReadingsTypedSinceIsNotRestored)
{
    const auto log = import({at(2, 40), at(4, 50)});
    withdraw(log);
    typeAll({at(3, 60), at(5, 70)});
    ASSERT_FALSE(putBack(log)) << "50 kWh after 60";
    EXPECT_EQ(used(), 10.0);
}

TEST_F(RegisterEventsTest, DeletedReadingsOfAnImportStayDeletedWhenItComesBack)
{
    typeAll({at(1, 9'900)});
    const auto log = import({at(2, 10), at(3, 20), at(4, 30)});
    ASSERT_TRUE(erase(2));
    EXPECT_EQ(used(), 130.0);
    withdraw(log);
    EXPECT_EQ(used(), 0.0);
    ASSERT_TRUE(putBack(log));
    EXPECT_EQ(used(), 130.0);
    ASSERT_TRUE(bringBack(2));
    EXPECT_EQ(used(), 130.0);
}

} // namespace holdband::test
