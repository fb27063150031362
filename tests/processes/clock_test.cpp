// A computer's clock that is set back or ahead, and corrected later: the order of the history,
// undo, and the automatic copies don't follow it blindly.
#include "core/store/history/history.h"
#include "core/store/history/undo.h"
#include "core/store/records/journal.h"
#include "core/store/safety/backups.h"
#include "core/store/safety/daily_backup.h"
#include "core/store/safety/soundness.h"
#include "core/text/times.h"
#include "tests/faults/faulty_vfs.h"
#include "tests/processes/some_runs.h"
#include "tests/random.h"
#include "tests/store/logbooks.h"
#include "tests/store/saying.h"

#include <gmock/gmock.h>
#include <optional>

namespace holdband::test {
namespace {

using namespace std::chrono_literals;
using std::chrono::days;
using store::BackupCopy;
using store::Change;
using store::LogbookFile;

/// A logbook whose clock the test sets; 2026-03-07 16:13:20 UTC at first.
class SetClock : public LogbookTest {
public:
    void undoTakesTheLastChangeThatIsInForce();
    void theDayOfAChangeHasACopy();

protected:
    void SetUp() override
    {
        m_files.emplace(path(""));
        addEquipment(*create());
        m_logbook = open();
    }

    std::unique_ptr<LogbookFile> open()
    {
        auto opened = LogbookFile::open(path(), store::Access::write, [this] { return m_now; });
        EXPECT_TRUE(opened) << opened.error().sentence();
        (*opened)->useBackups({{}, [this](const auto& made) { m_failed += made ? 0 : 1; }});
        return std::move(*opened);
    }

    void note(const std::string& text) const
    {
        auto change = Change::begin(*m_logbook, saying(text));
        ASSERT_TRUE(change);
        ASSERT_TRUE(store::addNote(*change, {someday, {}, text}));
        ASSERT_TRUE(change->commit());
    }

    std::vector<std::string> notes() const
    {
        std::vector<std::string> texts;
        const auto journal = store::readJournal(*m_logbook);
        EXPECT_TRUE(journal);
        for (const auto& stored : *journal)
            texts.push_back(stored.text);
        return texts;
    }

    std::vector<std::string> copiedDays() const
    {
        std::vector<std::string> dates;
        for (const BackupCopy& copy : store::listBackups(path(), {}))
            dates.push_back(isoDate(Date(std::chrono::floor<days>(copy.taken))));
        return dates;
    }

    void expectSound() const
    {
        const auto damage = store::findDamage(*m_logbook);
        ASSERT_TRUE(damage) << damage.error().sentence();
        EXPECT_EQ(*damage, std::vector<std::string>{});
    }

    std::optional<faults::UndisturbedFiles> m_files;
    Instant m_now = someday;
    int m_failed = 0; ///< copies
    std::unique_ptr<LogbookFile> m_logbook;
};

TEST_F(SetClock, TheHistoryIsInTheOrderOfTheChanges)
{
    note("first");
    m_now -= days{400};
    note("second");
    m_now = someday + 1h;
    note("third");
    const auto history = store::readHistory(*m_logbook, 3);
    ASSERT_TRUE(history);
    std::vector<std::string> texts;
    for (const auto& stored : *history)
        texts.push_back(store::historyText(stored.entry));
    EXPECT_THAT(texts, testing::ElementsAre("third", "second", "first"));
}

TEST_F(SetClock, UndoNeverSkipsALaterChangeThatTheClockDatesEarlier)
{
    note("before");
    m_now -= days{1};
    note("while it was a day back");
    m_now = someday + 1min;
    EXPECT_EQ(undoText(*m_logbook), "") << "the last change is not of today";
    note("after");
    EXPECT_EQ(undoText(*m_logbook), "after");
    ASSERT_TRUE(store::undoLast(*m_logbook));
    EXPECT_THAT(notes(), testing::UnorderedElementsAre("before", "while it was a day back"));
    EXPECT_FALSE(store::undoLast(*m_logbook));
    expectSound();
}

TEST_F(SetClock, AnUndoThatTheClockDatesEarlierStillCounts)
{
    note("before");
    m_now -= 20h; // yesterday
    ASSERT_TRUE(store::undoLast(*m_logbook));
    EXPECT_TRUE(notes().empty());
    m_now = someday + 1min;
    const auto again = store::undoLast(*m_logbook);
    ASSERT_FALSE(again) << "it is undone already";
    EXPECT_EQ(again.error().kind, ProblemKind::data) << again.error().sentence();
    EXPECT_TRUE(notes().empty());
    expectSound();
}

TEST_F(SetClock, ChangesOfAClockThatWasAheadCanBeUndoneUntilTheNextDay)
{
    m_now += days{366};
    note("while it was a year ahead");
    m_now = someday + 1min;
    EXPECT_EQ(undoText(*m_logbook), "while it was a year ahead");
    m_now += days{1};
    note("the next day");
    m_now += days{1};
    EXPECT_EQ(undoText(*m_logbook), "") << "of yesterday";
}

/// Whatever the clock does, the changes in force are those that were not undone, last first.
void SetClock::undoTakesTheLastChangeThatIsInForce()
{

    std::vector<std::string> inForce;
    std::vector<std::string> undone;
    const int steps = between(1, 12);
    for (int i = 0; i < steps; ++i) {
        m_now += std::chrono::hours{between(-30, 30)};
        const int act = between(0, 3);
        if (act <= 1) {
            inForce.push_back(std::to_string(i));
            note(inForce.back());
            undone.clear();
        } else if (act == 2) {
            const auto done = store::undoLast(*m_logbook);
            RC_ASSERT(done.has_value() || done.error().kind == ProblemKind::data);
            if (done && !inForce.empty()) {
                undone.push_back(inForce.back());
                inForce.pop_back();
            } else if (done) {
                break; // the equipment
            }
        } else if (const auto done = store::redoLast(*m_logbook)) {
            RC_ASSERT(!undone.empty());
            inForce.push_back(undone.back());
            undone.pop_back();
        } else {
            RC_ASSERT(done.error().kind == ProblemKind::data);
        }
        std::vector<std::string> there = notes();
        std::vector<std::string> wanted = inForce;
        std::sort(there.begin(), there.end());
        std::sort(wanted.begin(), wanted.end());
        RC_ASSERT(there == wanted);
    }
    const auto damage = store::findDamage(*m_logbook);
    RC_ASSERT(damage && damage->empty());
}

TEST_F(SetClock, ACopyIsMadeEachDayAlsoAfterTheClockWasAhead)
{
    note("today");
    m_now += days{366};
    note("a year ahead");
    m_now = someday + days{1};
    note("tomorrow");
    m_now += days{1};
    note("the day after");
    EXPECT_THAT(copiedDays(),
                testing::ElementsAre("2027-03-08", "2026-03-09", "2026-03-08", "2026-03-07"));
    EXPECT_EQ(m_failed, 0);
}

TEST_F(SetClock, ADayHasOneCopyHoweverOftenTheClockComesBackToIt)
{
    for (int turn = 0; turn < 3; ++turn) {
        note("today");
        m_now -= days{1};
        note("yesterday");
        m_now += days{1};
    }
    EXPECT_THAT(copiedDays(), testing::ElementsAre("2026-03-07", "2026-03-06"));
    EXPECT_EQ(m_failed, 0);
}

TEST_F(SetClock, CopiesOfLaterDatesPushOutNoCopyOfTheRealDays)
{
    m_now -= days{4};
    for (int day = 0; day < 4; ++day, m_now += days{1})
        note("day " + std::to_string(day));
    // A year ahead for half a year.
    m_now = someday + days{366};
    for (int day = 0; day < 180; day += 6, m_now += days{6})
        note("ahead " + std::to_string(day));
    m_now = someday;
    for (int day = 0; day < 5; ++day, m_now += days{1})
        note("corrected " + std::to_string(day));
    std::vector<std::string> ofNow;
    std::size_t later = 0;
    for (const std::string& day : copiedDays()) {
        if (day < "2027")
            ofNow.push_back(day);
        else
            ++later;
    }
    EXPECT_THAT(ofNow, testing::IsSupersetOf(
                           {"2026-03-07", "2026-03-08", "2026-03-09", "2026-03-10", "2026-03-11"}));
    EXPECT_GE(later, 7u);
    EXPECT_EQ(m_failed, 0);
}

/// The copy of the day's start is there after each change, whatever the clock does.
void SetClock::theDayOfAChangeHasACopy()
{

    for (int i = 0; i < 8; ++i) {
        m_now += days{between(-40, 40)};
        note(std::to_string(i));
        const auto today = isoDate(Date(std::chrono::floor<days>(m_now)));
        const auto dates = copiedDays();
        RC_ASSERT(std::find(dates.begin(), dates.end(), today) != dates.end());
    }
    RC_ASSERT(m_failed == 0);
}

TEST(AnyCourseOf, TheClockLeavesUndoInOrder)
{
    tryOften(15, &SetClock::undoTakesTheLastChangeThatIsInForce);
}

TEST(AnyCourseOf, TheClockLeavesACopyOfEachDay)
{
    tryOften(5, &SetClock::theDayOfAChangeHasACopy);
}

} // namespace
} // namespace holdband::test
