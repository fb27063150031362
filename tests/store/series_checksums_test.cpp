// Readings are held against the checksums of their imports as they are read, whatever part of the
// import is asked for; where that would take long it is said that they were not.
#include "tests/store/logbooks.h"

#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using ::testing::HasSubstr;

class SeriesChecksums : public LogbookTest {
protected:
    void make(int readings)
    {
        const auto logbook = create();
        addEquipment(*logbook);
        Log log;
        for (int minute = 0; minute < readings; ++minute)
            log.add(minute, 20.0 + minute % 7);
        keep(*logbook, log);
    }

    Result<store::CheckedSeries> read(int fromMinute, int toMinute)
    {
        const auto logbook = store::LogbookFile::open(path(), store::Access::read);
        EXPECT_TRUE(logbook);
        return store::readCheckedSeries(
            **logbook, "Beer",
            {someday + std::chrono::minutes{fromMinute}, someday + std::chrono::minutes{toMinute}});
    }

    /// One bit of the exponent: 21 becomes some 10 to the 155.
    void damageOne(int minute)
    {
        const auto database = store::Database::open(path(), store::Access::write, false);
        ASSERT_TRUE(database);
        ASSERT_TRUE((*database)->execute("UPDATE readings SET value = 8.9e155 WHERE place = "
                                         "(SELECT place FROM readings ORDER BY "
                                         "place LIMIT 1 OFFSET " +
                                         std::to_string(minute) + ")"));
    }
};

TEST_F(SeriesChecksums, SoundOnesAreChecked)
{
    make(3000);
    const auto whole = read(0, 3000);
    ASSERT_TRUE(whole);
    EXPECT_TRUE(whole->checked);
    EXPECT_EQ(whole->series.size(), 3000u);
    const auto part = read(100, 110);
    ASSERT_TRUE(part);
    EXPECT_TRUE(part->checked) << "the rest of a short log is looked at";
    EXPECT_EQ(part->series.size(), 13u);
}

TEST_F(SeriesChecksums, AChangedReadingIsNoticedAndNoFigureIsMadeOfIt)
{
    make(3000);
    damageOne(105);
    for (const auto& [from, to] :
         {std::pair{0, 3000}, std::pair{100, 110}, std::pair{2000, 2010}}) {
        const auto series = read(from, to);
        ASSERT_FALSE(series) << from;
        EXPECT_EQ(series.error().kind, ProblemKind::file);
        EXPECT_THAT(series.error().sentence(), HasSubstr("no longer fit their checksum"));
    }
}

TEST_F(SeriesChecksums, OneThatIsGoneIsNoticed)
{
    make(3000);
    const auto database = store::Database::open(path(), store::Access::write, false);
    ASSERT_TRUE(database);
    ASSERT_TRUE((*database)->execute(
        "DELETE FROM readings WHERE place = (SELECT min(place) FROM readings)"));
    EXPECT_FALSE(read(0, 3000));
}

TEST_F(SeriesChecksums, OfALongLogAShortPartIsNotCheckedAndThatIsSaid)
{
    make(25'000);
    const auto part = read(100, 110);
    ASSERT_TRUE(part);
    EXPECT_FALSE(part->checked);
    const auto most = read(0, 20'000);
    ASSERT_TRUE(most);
    EXPECT_FALSE(most->checked) << "the rest is more than may be read for it";
    const auto whole = read(0, 25'000);
    ASSERT_TRUE(whole);
    EXPECT_TRUE(whole->checked);
}

} // namespace
} // namespace holdband::test
