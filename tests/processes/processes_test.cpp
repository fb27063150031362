// Several processes and one logbook: readers while one writes, writers that are refused, locks, a
// holder that is killed, a file that is moved while it is open.
#include "core/store/safety/soundness.h"
#include "tests/app/program.h"
#include "tests/faults/faulty_vfs.h"
#include "tests/faults/kill_acts.h"
#include "tests/faults/long_set.h"
#include "tests/faults/world.h"
#include "tests/processes/child.h"
#include "tests/processes/reads.h"

#include <filesystem>
#include <gmock/gmock.h>
#include <map>
#include <memory>

namespace holdband::test {
namespace {

namespace fs = std::filesystem;
using faults::contentOf;
using faults::logbookIn;
using store::Access;
using store::LogbookFile;
using testing::HasSubstr;

class Processes : public ::testing::Test {
protected:
    void SetUp() override
    {
        m_folder = fs::canonical(m_program.path("")).string();
        m_scratch = m_folder + "/scratch";
        fs::create_directory(m_scratch);
    }

    void prepare() const
    {
        const faults::UndisturbedFiles files(m_folder);
        const Done prepared = faults::prepareForKills(m_folder);
        ASSERT_TRUE(prepared) << prepared.error().sentence();
    }

    std::string logbook() const { return logbookIn(m_folder); }

    std::unique_ptr<Child> child(const std::string& role) const
    {
        return std::make_unique<Child>(
            std::vector<std::string>{HOLDBAND_PROCESS_CHILD, role, m_folder});
    }

    std::unique_ptr<Child> reader(const std::string& kind) const
    {
        const std::string scratch = m_scratch + "/" + kind;
        fs::create_directory(scratch);
        auto made = std::make_unique<Child>(
            std::vector<std::string>{HOLDBAND_PROCESS_CHILD, "read", m_folder, scratch});
        made->tell(kind);
        return made;
    }

    /// A process that has the logbook open for writing.
    std::unique_ptr<Child> holder() const
    {
        auto made = child("write");
        EXPECT_EQ(made->line(), "open");
        return made;
    }

    /// The answer to the order to do an act.
    static std::string act(Child& holder, int number)
    {
        holder.tell(std::to_string(number));
        return holder.line().value_or("(it ended)");
    }

    void expectSound() const
    {
        const auto file = LogbookFile::open(logbook(), Access::read, faults::clockOfTests);
        ASSERT_TRUE(file) << file.error().sentence();
        const auto damage = store::findDamage(**file);
        ASSERT_TRUE(damage) << damage.error().sentence();
        EXPECT_EQ(*damage, std::vector<std::string>{});
    }

    Program m_program;
    std::string m_folder;
    std::string m_scratch;
};

/// What each kind of read gives after each number of acts.
using States = std::map<std::string, std::vector<std::string>>;

States statesOf(const std::string& folder, const std::string& scratch, int acts)
{
    const faults::UndisturbedFiles files(folder);
    States states;
    for (int number = 0; number <= acts; ++number) {
        for (const std::string& kind : kindsOfReads())
            states[kind].push_back(readOnce(kind, folder, scratch));
        if (number < acts) {
            const Done done = faults::killAct(folder, number);
            EXPECT_TRUE(done) << done.error().sentence();
        }
    }
    return states;
}

/// Each line must be the state after some act, and none an earlier one than the line before.
void expectStates(const std::vector<std::string>& lines, const std::vector<std::string>& states)
{
    auto state = states.begin();
    for (const std::string& line : lines) {
        const auto found = std::find(state, states.end(), line);
        ASSERT_NE(found, states.end())
            << "not a state of the logbook, or one from before the last read: " << line;
        state = found;
    }
    ASSERT_FALSE(lines.empty());
    EXPECT_EQ(lines.back(), states.back()) << "the last read is of the last state";
}

TEST_F(Processes, EveryReadDuringWritesIsOfACompleteState)
{
    const int acts = faults::wantsLongSet() ? 40 : 9;
    prepare();
    const faults::StoredFolder start(m_folder);
    const States states = statesOf(m_folder, m_scratch, acts);
    EXPECT_EQ(states.at("check").front(), "sound");
    for (int turn = 0; turn < (faults::wantsLongSet() ? 20 : 1); ++turn) {
        faults::clearFolder(m_folder);
        start.writeInto(m_folder);
        const auto writer = holder();
        std::vector<std::unique_ptr<Child>> readers;
        for (const std::string& kind : kindsOfReads())
            readers.push_back(reader(kind));
        for (int number = 0; number < acts; ++number)
            ASSERT_EQ(act(*writer, number), std::to_string(number));
        for (const auto& each : readers)
            each->endInput();
        for (std::size_t i = 0; i < readers.size(); ++i) {
            const std::string& kind = kindsOfReads()[i];
            SCOPED_TRACE(kind);
            expectStates(readers[i]->rest(), states.at(kind));
            EXPECT_EQ(readers[i]->wait(), 0);
        }
        writer->endInput();
        EXPECT_EQ(writer->wait(), 0);
    }
}

TEST_F(Processes, AnotherWriterIsRefusedAndChangesNothing)
{
    prepare();
    const auto first = holder();
    ASSERT_EQ(act(*first, 0), "0");
    const std::string before = contentOf(logbook());
    m_program.write("more.csv", "Time (UTC),Beer (C)\n2026-03-07 00:00,20\n");
    m_program.write("more.json", R"({ "holdband": 1, "setups": [ { "name": "Other" } ] })");
    const std::vector<std::vector<std::string>> writing{
        {"import", logbook(), "more.csv"},
        {"meter", logbook(), "Meter", "5"},
        {"load", logbook(), "more.json"},
    };
    for (const auto& arguments : writing) {
        SCOPED_TRACE(arguments[0]);
        const Outcome outcome = m_program.run(arguments);
        EXPECT_EQ(outcome.status, 3);
        EXPECT_EQ(outcome.out, "");
        EXPECT_THAT(outcome.err, HasSubstr("open for writing in process_child (process " +
                                           std::to_string(first->process()) + " on "));
        EXPECT_THAT(outcome.err, HasSubstr("close it there first"));
        EXPECT_EQ(contentOf(logbook()), before);
    }
    const Outcome made = m_program.run({"new", logbook()});
    EXPECT_EQ(made.status, 3);
    EXPECT_THAT(made.err, HasSubstr("already exists"));
    for (const std::vector<std::string>& reading :
         {std::vector<std::string>{"verdict", logbook(), "Pale"},
          {"energy", logbook(), "Pale"},
          {"batches", logbook()},
          {"check", logbook()},
          {"backup", logbook(), "copy.holdband"},
          {"export", logbook(), "exported"},
          {"import", logbook(), "more.csv", "--dry-run"}}) {
        const Outcome outcome = m_program.run(reading);
        EXPECT_EQ(outcome.status, 0) << reading[0] << ": " << outcome.err;
    }
    EXPECT_EQ(contentOf(m_program.path("copy.holdband")), before);
    EXPECT_EQ(act(*first, 1), "1") << "and the first one goes on";
}

TEST_F(Processes, OfThoseThatStartAtTheSameMomentOneWins)
{
    prepare();
    const int turns = faults::wantsLongSet() ? 100 : 4;
    for (int turn = 0; turn < turns; ++turn) {
        SCOPED_TRACE(turn);
        if (turn % 2 == 1) { // a lock that must be taken over
            const auto killed = holder();
            killed->kill();
            ASSERT_TRUE(fs::exists(logbook() + ".lock"));
        }
        std::vector<std::unique_ptr<Child>> children;
        for (int i = 0; i < 4; ++i) {
            children.push_back(child("take"));
            ASSERT_EQ(children.back()->line(), "ready");
        }
        for (const auto& each : children)
            each->tell("go");
        int winners = 0;
        for (const auto& each : children) {
            const std::string said = each->line().value_or("(it ended)");
            winners += said == "open";
            if (said != "open") {
                EXPECT_THAT(said, HasSubstr("open for writing in process_child"));
                EXPECT_EQ(each->wait(), 3);
            }
        }
        EXPECT_EQ(winners, 1);
    }
    expectSound();
}

TEST_F(Processes, OfThoseThatMakeTheSameLogbookOneWins)
{
    const int turns = faults::wantsLongSet() ? 60 : 2;
    for (int turn = 0; turn < turns; ++turn) {
        fs::remove(logbook());
        std::vector<std::unique_ptr<Child>> children;
        for (int i = 0; i < 4; ++i) {
            children.push_back(child("new"));
            ASSERT_EQ(children.back()->line(), "ready");
        }
        for (const auto& each : children)
            each->tell("go");
        int winners = 0;
        for (const auto& each : children) {
            const std::string said = each->line().value_or("(it ended)");
            winners += said == "open";
            if (said != "open") {
                EXPECT_THAT(said, testing::AnyOf(HasSubstr("open for writing in process_child"),
                                                 HasSubstr("already exists")));
            }
        }
        EXPECT_EQ(winners, 1);
        children.clear();
        expectSound();
        EXPECT_FALSE(fs::exists(logbook() + "-journal"));
    }
}

TEST_F(Processes, AKilledHolderIsFollowedByAnother)
{
    prepare();
    const auto first = holder();
    ASSERT_EQ(act(*first, 0), "0");
    const std::string confirmed = contentOf(logbook());
    first->tell("4"); // an import; killed before, inside or after it
    first->kill();
    const auto second = holder();
    const std::string there = contentOf(logbook());
    EXPECT_EQ(act(*second, 1), "1");
    second->endInput();
    EXPECT_EQ(second->wait(), 0);
    EXPECT_FALSE(fs::exists(logbook() + ".lock"));
    expectSound();
    if (there != confirmed) {
        const Outcome again = m_program.run({"batches", logbook()});
        EXPECT_EQ(again.status, 0) << again.err;
    }
}

TEST_F(Processes, ALogbookThatIsMovedWhileOpenLosesNothing)
{
    prepare();
    const auto first = holder();
    ASSERT_EQ(act(*first, 0), "0");
    const std::string before = contentOf(logbook());
    const std::string moved = m_folder + "/moved.holdband";
    fs::rename(logbook(), moved);
    EXPECT_THAT(act(*first, 1), HasSubstr("deleted, moved or replaced"));
    EXPECT_EQ(contentOf(moved), before);
    EXPECT_FALSE(fs::exists(logbook()));
    const Outcome other = m_program.run({"meter", moved, "Meter", "5"});
    EXPECT_EQ(other.status, 0) << "by its new name it can be written: " << other.err;
    const std::string after = contentOf(moved);
    fs::rename(moved, logbook());
    EXPECT_EQ(contentOf(logbook()), after);
    EXPECT_EQ(act(*first, 0), "0") << "once it is back, the holder goes on from what is there";
    expectSound();
}

TEST_F(Processes, ALogbookThatIsReplacedOrDeletedWhileOpenIsLeftAlone)
{
    prepare();
    const auto first = holder();
    ASSERT_EQ(act(*first, 0), "0");
    const Outcome made = m_program.run({"new", "other.holdband"});
    ASSERT_EQ(made.status, 0) << made.err;
    fs::rename(m_program.path("other.holdband"), logbook());
    const std::string other = contentOf(logbook());
    for (const int number : {0, 1, 2}) {
        EXPECT_THAT(act(*first, number), HasSubstr("deleted, moved or replaced"));
        EXPECT_EQ(contentOf(logbook()), other);
    }
    fs::remove(logbook());
    EXPECT_THAT(act(*first, 1), HasSubstr("deleted, moved or replaced"));
    first->endInput();
    EXPECT_EQ(first->wait(), 0);
    EXPECT_FALSE(fs::exists(logbook()));
    EXPECT_FALSE(fs::exists(logbook() + "-journal"));
}

} // namespace
} // namespace holdband::test
