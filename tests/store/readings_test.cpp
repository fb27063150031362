// Bulk readings: which are new, stored, or conflicting; and reading them back.
#include "tests/store/logbooks.h"
#include "tests/store/saying.h"

namespace holdband::test {
namespace {

class Readings : public LogbookTest {
protected:
    void SetUp() override
    {
        m_logbook = create();
        addEquipment(*m_logbook);
    }
    std::unique_ptr<store::LogbookFile> m_logbook;
};

Span minutes(int from, int to)
{
    return {someday + std::chrono::minutes{from}, someday + std::chrono::minutes{to}};
}

TEST_F(Readings, AreReadInOrderWithTheirNeighbours)
{
    Log log;
    for (int minute = 0; minute <= 50; minute += 10)
        log.add(minute, minute);
    EXPECT_EQ(addLog(*m_logbook, log).added, 6);
    const auto inside = store::readSeries(*m_logbook, "Beer", minutes(15, 35));
    EXPECT_EQ(inside->value, (std::vector<double>{10, 20, 30, 40}));
    const auto edges = store::readSeries(*m_logbook, "Beer", minutes(20, 30));
    EXPECT_EQ(edges->value, (std::vector<double>{10, 20, 30, 40}));
    const auto outside = store::readSeries(*m_logbook, "Beer", minutes(60, 90));
    EXPECT_EQ(outside->value, (std::vector<double>{50}));
    EXPECT_FALSE(store::readSeries(*m_logbook, "Bier", minutes(0, 1)));
}

TEST_F(Readings, AreStoredOnceAndTheFirstRemains)
{
    Log log;
    for (int minute = 0; minute < 1000; ++minute)
        log.add(minute, 20.0 + minute % 7);
    EXPECT_EQ(addLog(*m_logbook, log).added, 1000);
    const store::AddedRows again = addLog(*m_logbook, log);
    EXPECT_EQ(again.added, 0);
    EXPECT_EQ(again.alreadyThere, 1000);
    Log other;
    other.add(500, 99.0);
    other.add(2000, 20.0);
    const store::AddedRows mixed = addLog(*m_logbook, other);
    EXPECT_EQ(mixed.added, 1);
    ASSERT_EQ(mixed.conflicts.size(), 1u);
    EXPECT_EQ(mixed.conflicts[0].row, 0u);
    EXPECT_DOUBLE_EQ(mixed.conflicts[0].stored, 20.0 + 500 % 7);
    EXPECT_DOUBLE_EQ(store::readSeries(*m_logbook, "Beer", minutes(500, 500))->value[1],
                     20.0 + 500 % 7);
}

TEST_F(Readings, FillGapsBetweenStoredOnes)
{
    Log even;
    Log odd;
    for (int minute = 0; minute < 900; ++minute)
        (minute % 2 == 0 ? even : odd).add(minute, minute);
    addLog(*m_logbook, even);
    addLog(*m_logbook, odd);
    const auto all = store::readSeries(*m_logbook, "Beer", minutes(0, 899));
    ASSERT_EQ(all->size(), 900u);
    for (std::size_t i = 0; i < all->size(); ++i)
        ASSERT_DOUBLE_EQ(all->value[i], static_cast<double>(i));
}

TEST_F(Readings, AreStoredWithTheirRawValueAndUnit)
{
    Log fahrenheit;
    fahrenheit.add(0, 68.1);
    addLog(*m_logbook, fahrenheit, ReadingUnit::fahrenheit);
    const auto series = store::readSeries(*m_logbook, "Beer", minutes(0, 0));
    EXPECT_DOUBLE_EQ(series->value[0], (68.1 - 32.0) / 1.8);
    auto imports = store::readImports(*m_logbook);
    ASSERT_EQ(imports->size(), 1u);
    ASSERT_TRUE(store::readRawColumns(*m_logbook, imports->at(0)));
    EXPECT_EQ(imports->at(0).columns[0].unit, ReadingUnit::fahrenheit);
    EXPECT_EQ(imports->at(0).columns[0].raw, std::vector<double>{68.1});
}

TEST_F(Readings, HaveTheLineTheyCameFrom)
{
    Log log;
    log.add(0, 20);
    log.add(1, 20);
    log.add(2, 20);
    log.line = {7, 8, 12};
    addLog(*m_logbook, log);
    auto imports = store::readImports(*m_logbook);
    ASSERT_TRUE(store::readRawColumns(*m_logbook, imports->at(0)));
    const auto& lines = imports->at(0).columns[0].lines;
    ASSERT_EQ(lines.size(), 2u);
    EXPECT_EQ(lines[0], std::pair(someday, std::int64_t{7}));
    EXPECT_EQ(lines[1], std::pair(someday + std::chrono::minutes{2}, std::int64_t{12}));
}

TEST_F(Readings, CorrectionsAreStoredBesideTheTypedValue)
{
    auto change = store::Change::begin(*m_logbook, saying("round"));
    ASSERT_TRUE(change);
    const MeterReading typed{someday, Energy::kilowattHours(85.14), 3, {}, "by eye"};
    auto id = store::addMeterReading(*change, "Meter", typed);
    ASSERT_TRUE(id);
    EXPECT_FALSE(store::addMeterReading(*change, "Meter", typed)) << "one instant, one reading";
    const Instant later = someday + std::chrono::hours{1};
    ASSERT_TRUE(store::correctMeterReading(*change, *id, 58.14, 2, later, "digits swapped"));
    ASSERT_TRUE(change->commit());
    const auto stored = store::readMeterReadings(*m_logbook, "Meter");
    ASSERT_EQ(stored->size(), 1u);
    EXPECT_DOUBLE_EQ(stored->at(0).inForce.registerReading.kilowattHours(), 58.14);
    EXPECT_EQ(stored->at(0).before,
              (std::vector<store::Replaced>{{85.14, 3, later, "digits swapped"}}));
}

TEST_F(Readings, TakeAtMostTwentyFiveBytesEach)
{
    // A target of the project: file size ≤ 25 bytes per reading, index included.
    Log log;
    for (int minute = 0; minute < 200'000; ++minute)
        log.add(minute, 66.0 + (minute % 37) / 10.0);
    const std::int64_t pagesBefore = *m_logbook->database().integer("PRAGMA page_count");
    addLog(*m_logbook, log);
    const std::int64_t pages = *m_logbook->database().integer("PRAGMA page_count") - pagesBefore;
    EXPECT_LE(static_cast<double>(pages * 4096) / 200'000.0, 25.0);
}

} // namespace
} // namespace holdband::test
