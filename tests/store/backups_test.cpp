// The automatic copies of a logbook: which are retained, when one is made, what happens on a
// failure.
#include "core/store/records/journal.h"
#include "core/store/safety/backups.h"
#include "core/store/safety/daily_backup.h"
#include "core/text/times.h"
#include "tests/store/logbooks.h"
#include "tests/store/saying.h"

#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

namespace holdband::test {
namespace {

namespace fs = std::filesystem;
using namespace std::chrono_literals;
using std::chrono::days;
using std::chrono::local_days;
using store::BackupCopy;
using store::DatedCopy;
using store::LogbookFile;

constexpr std::uint64_t gibibyte = std::uint64_t{1} << 30;
const local_days firstDay =
    local_days(Date(std::chrono::year{2026}, std::chrono::month{1}, std::chrono::day{1}));

std::vector<DatedCopy> stored(const std::vector<DatedCopy>& copies)
{
    const std::vector<bool> retained = store::copiesToRetain(copies, firstDay + days{3000});
    std::vector<DatedCopy> result;
    for (std::size_t i = 0; i < copies.size(); ++i) {
        if (retained.at(i))
            result.push_back(copies[i]);
    }
    return result;
}

std::vector<DatedCopy> someCopies()
{
    const auto gaps = *rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 20));
    std::vector<DatedCopy> copies;
    local_days day = firstDay + days{2000};
    for (const int gap : gaps) {
        copies.push_back({day, *rc::gen::inRange<std::uint64_t>(0, gibibyte)});
        day -= days{gap};
    }
    return copies;
}

RC_GTEST_PROP(BackupRotation, RetainsTheNewestThreeAndNoMoreThanAllowed, ())
{
    const std::vector<DatedCopy> copies = someCopies();
    const std::vector<bool> retained = store::copiesToRetain(copies, firstDay + days{3000});
    RC_ASSERT(retained.size() == copies.size());
    std::uint64_t bytes = 0;
    std::size_t count = 0;
    for (std::size_t i = 0; i < copies.size(); ++i) {
        RC_ASSERT(i >= 3 || retained[i]);
        count += retained[i];
        bytes += retained[i] ? copies[i].bytes : 0;
    }
    RC_ASSERT(count <= 7u + 8u + 3u);
    RC_ASSERT(count <= 3u || bytes <= gibibyte);
}

RC_GTEST_PROP(BackupRotation, ChoosesTheSameFromTheRetainedOnes, ())
{
    const std::vector<DatedCopy> once = stored(someCopies());
    RC_ASSERT(stored(once).size() == once.size());
}

TEST(BackupRotation, OfDailyCopiesRetainsSevenDaysAndEightWeeks)
{
    std::vector<DatedCopy> copies;
    for (int day = 0; day < 200; ++day) {
        copies.insert(copies.begin(), {firstDay + days{day}, 1000});
        copies = stored(copies);
    }
    // 19 July 2026 is a Sunday: its week is the first of the eight, with seven Sundays before it.
    const local_days last = firstDay + days{199};
    ASSERT_EQ(isoDate(Date(last)), "2026-07-19");
    ASSERT_EQ(copies.size(), 7u + 7u);
    for (int i = 0; i < 7; ++i)
        EXPECT_EQ(copies[static_cast<std::size_t>(i)].day, last - days{i});
    for (int i = 0; i < 7; ++i)
        EXPECT_EQ(copies[static_cast<std::size_t>(7 + i)].day, last - days{7 * (i + 1)});
}

TEST(BackupRotation, OfCopiesFromAClockThatWasAheadRetainsAsManyAgain)
{
    std::vector<DatedCopy> copies;
    for (int day = 399; day >= 0; --day)
        copies.push_back({firstDay + days{day}, 1000});
    const std::vector<bool> retained = store::copiesToRetain(copies, firstDay + days{199});
    const std::vector<bool> real(retained.begin() + 200, retained.end());
    EXPECT_EQ(real, store::copiesToRetain(std::span(copies).subspan(200), firstDay + days{199}));
    EXPECT_EQ(std::count(real.begin(), real.end(), true), 7 + 7);
    EXPECT_TRUE(retained[200]) << "the copy of today";
    const std::vector<bool> later(retained.begin(), retained.begin() + 200);
    EXPECT_EQ(later, store::copiesToRetain(std::span(copies).first(200), firstDay + days{399}));
    EXPECT_TRUE(later[0]);
}

TEST(BackupRotation, OfLargeCopiesFromAClockThatWasAheadRetainsThree)
{
    std::vector<DatedCopy> copies;
    for (int day = 9; day >= 0; --day)
        copies.push_back({firstDay + days{day}, gibibyte / 5});
    // Those of real days take all bytes.
    EXPECT_EQ(store::copiesToRetain(copies, firstDay + days{4}),
              (std::vector<bool>{true, true, true, false, false, true, true, true, true, true}));
}

TEST(BackupRotation, OfLargeCopiesRetainsOneGibibyte)
{
    std::vector<DatedCopy> copies;
    for (int day = 0; day < 7; ++day)
        copies.push_back({firstDay - days{day}, gibibyte / 5});
    EXPECT_EQ(stored(copies).size(), 5u);
    for (DatedCopy& copy : copies)
        copy.bytes = gibibyte;
    EXPECT_EQ(stored(copies).size(), 3u);
}

class Backups : public LogbookTest {
protected:
    std::unique_ptr<LogbookFile> open(const std::string& place = {})
    {
        auto opened = LogbookFile::open(path(), store::Access::write, [this] { return m_now; });
        EXPECT_TRUE(opened) << opened.error().sentence();
        (*opened)->useBackups(
            {[place] { return place; }, [this](const auto& made) { m_reported.push_back(made); }});
        return std::move(*opened);
    }

    static void note(const LogbookFile& logbook, const std::string& text)
    {
        auto change = store::Change::begin(logbook, saying("note"));
        ASSERT_TRUE(change);
        ASSERT_TRUE(store::addNote(*change, {someday, {}, text}));
        ASSERT_TRUE(change->commit());
    }

    std::vector<BackupCopy> copies(const std::string& place = {}) const
    {
        return store::listBackups(path(), place);
    }

    static void overwrite(const std::string& file, std::streamoff at, const std::string& bytes)
    {
        std::fstream stream(file, std::ios::in | std::ios::out | std::ios::binary);
        stream.seekp(at);
        stream << bytes;
        ASSERT_TRUE(stream.flush());
    }

    Instant m_now = someday; ///< 2026-03-07 16:13:20 UTC
    std::vector<Result<BackupCopy>> m_reported;
};

TEST_F(Backups, AreMadeOnceADayBeforeItsFirstChange)
{
    addEquipment(*create());
    const auto logbook = open();
    note(*logbook, "first");
    note(*logbook, "second");
    ASSERT_EQ(copies().size(), 1u);
    EXPECT_EQ(copies()[0].path, path("log backups") + "/2026-03-07 16.13 log.holdband");
    m_now += days{1};
    note(*logbook, "third");
    ASSERT_EQ(copies().size(), 2u);
    ASSERT_EQ(m_reported.size(), 2u);
    EXPECT_EQ(*m_reported[1], copies()[0]);
    // The second copy has the state at the end of the first day, without the change that it
    // precedes.
    const auto copy = LogbookFile::open(copies()[0].path, store::Access::read);
    ASSERT_TRUE(copy);
    EXPECT_EQ(store::readJournal(**copy)->size(), 2u);
    EXPECT_EQ(store::readJournal(*logbook)->size(), 3u);
}

TEST_F(Backups, OfADayAreNotRepeatedByTheNextProgram)
{
    addEquipment(*create());
    note(*open(), "first");
    m_now += 30min;
    note(*open(), "second");
    EXPECT_EQ(copies().size(), 1u);
}

TEST_F(Backups, AreNotMadeOfAnEmptyLogbook)
{
    create();
    note(*open(), "first");
    EXPECT_TRUE(copies().empty());
    EXPECT_TRUE(m_reported.empty());
}

TEST_F(Backups, AreRotated)
{
    addEquipment(*create());
    const auto logbook = open();
    for (int day = 0; day < 30; ++day) {
        m_now = someday + days{day};
        note(*logbook, std::to_string(day));
    }
    // 5 April 2026 is a Sunday: seven days, and the four Sundays before them.
    EXPECT_EQ(copies().size(), 11u);
    EXPECT_EQ(copies().front().taken, LocalTime(m_now.time_since_epoch()) - 20s);
}

TEST_F(Backups, AreInAChosenPlaceSeparateFromOthersOfThatName)
{
    addEquipment(*create());
    const std::string place = path("all copies");
    note(*open(place), "first");
    EXPECT_EQ(copies(place).size(), 1u);
    EXPECT_TRUE(copies().empty());
    EXPECT_NE(store::backupFolder("/one/log.holdband", place),
              store::backupFolder("/two/log.holdband", place));
}

TEST_F(Backups, ThatCannotBeWrittenDoNotBlockTheChange)
{
    addEquipment(*create());
    std::ofstream(path("log backups")) << "a file where the folder should be";
    const auto logbook = open();
    note(*logbook, "first");
    note(*logbook, "second");
    EXPECT_EQ(store::readJournal(*logbook)->size(), 2u);
    ASSERT_EQ(m_reported.size(), 1u); // reported once
    ASSERT_FALSE(m_reported[0]);
    EXPECT_EQ(m_reported[0].error().kind, ProblemKind::file);
}

TEST_F(Backups, ThatWereLeftUnfinishedAreDeletedAndNeverListed)
{
    addEquipment(*create());
    fs::create_directory(path("log backups"));
    const std::string left = path("log backups") + "/2026-03-06 07.00 log.holdband.part";
    const std::string other = path("log backups") + "/2026-03-06 07.00 my notes.txt";
    std::ofstream(left) << "half";
    std::ofstream(other) << "not ours";
    note(*open(), "first");
    EXPECT_EQ(copies().size(), 1u);
    EXPECT_FALSE(fs::exists(left));
    EXPECT_TRUE(fs::exists(other));
}

TEST_F(Backups, OfADamagedLogbookAreNotMade)
{
    addEquipment(*create());
    {
        const auto logbook = open();
        ASSERT_TRUE(logbook->database().execute("UPDATE sensors SET name = 'Changed'"));
        note(*logbook, "first");
    }
    EXPECT_TRUE(copies().empty());
    ASSERT_EQ(m_reported.size(), 1u);
    EXPECT_FALSE(m_reported[0]);
}

TEST_F(Backups, ThatAreDamagedAreNotOffered)
{
    addEquipment(*create());
    const auto logbook = open();
    for (int day = 0; day < 4; ++day) {
        m_now = someday + days{day};
        note(*logbook, std::to_string(day));
    }
    const std::vector<BackupCopy> all = copies();
    ASSERT_EQ(all.size(), 4u);
    EXPECT_EQ(store::soundBackups(path(), {}), all);
    overwrite(all[0].path, 0, "no SQLite at all");
    fs::resize_file(all[1].path, all[1].bytes / 2);
    {
        auto database = store::Database::open(all[2].path, store::Access::write, false);
        ASSERT_TRUE((*database)->execute("UPDATE sensors SET name = 'Changed'"));
    }
    EXPECT_EQ(store::soundBackups(path(), {}), std::vector<BackupCopy>{all[3]});
}

TEST_F(Backups, AreOfferedOnlyIfTheLogbookIsDamagedOrMissing)
{
    addEquipment(*create());
    EXPECT_FALSE(store::needsBackup(path()));
    std::ofstream(path("other.holdband")) << "a letter";
    EXPECT_TRUE(store::needsBackup(path("other.holdband")));
    EXPECT_TRUE(store::needsBackup(path("gone.holdband")));
    std::ofstream(path("empty.holdband")).flush();
    EXPECT_TRUE(store::needsBackup(path("empty.holdband")));
    fs::create_directory(path("folder.holdband"));
    EXPECT_FALSE(store::needsBackup(path("folder.holdband")));
    overwrite(path(), 60, std::string(4, '\x01')); // user_version: made by a newer program
    EXPECT_FALSE(store::needsBackup(path()));
}

TEST_F(Backups, AreNotOfferedWhileAnotherProgramHasTheLogbookToItself)
{
    addEquipment(*create());
    const auto other = store::Database::open(path(), store::Access::write, false);
    ASSERT_TRUE(other && (*other)->execute("BEGIN EXCLUSIVE"));
    EXPECT_FALSE(store::needsBackup(path()));
}

TEST_F(Backups, AreRestoredUnderANewNameAndOverwriteNothing)
{
    addEquipment(*create());
    note(*open(), "first");
    overwrite(path(), 0, "broken");
    const auto sizeBefore = fs::file_size(path());
    const BackupCopy copy = copies().at(0);
    const auto first = store::restoreBeside(path(), copy);
    const auto second = store::restoreBeside(path(), copy);
    ASSERT_TRUE(first) << first.error().sentence();
    ASSERT_TRUE(second);
    EXPECT_EQ(*first, path("log restored.holdband"));
    EXPECT_EQ(*second, path("log restored 2.holdband"));
    EXPECT_EQ(fs::file_size(path()), sizeBefore);
    const auto restored = LogbookFile::open(*first, store::Access::write);
    ASSERT_TRUE(restored) << restored.error().sentence();
    EXPECT_EQ(store::readSetups(**restored)->size(), 1u);
    EXPECT_EQ(copies().size(), 1u); // the copy is not deleted
}

} // namespace
} // namespace holdband::test
