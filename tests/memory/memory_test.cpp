// An allocation fails, or all from one on, while a log is imported and while a batch is opened:
// that ends in a sentence or an exit, the logbook is sound, and it holds the state before or after.
//
// The quick set lets some allocations fail; HOLDBAND_FAULTS=long hundreds, in both ways.
#include "core/store/safety/soundness.h"
#include "tests/app/program.h"
#include "tests/faults/long_set.h"
#include "tests/faults/world.h"

#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <gtest/gtest.h>
#include <sstream>
#include <string>
#include <vector>

namespace holdband::memory {
namespace {

namespace fs = std::filesystem;
using faults::contentOf;
using faults::wantsLongSet;

/// Made data: a reading each minute for half a day.
std::string halfADay()
{
    std::string log = "Time,Beer (C)\n";
    for (int minute = 0; minute < 720; ++minute) {
        char line[40];
        std::snprintf(line, sizeof line, "2026-03-08 %02d:%02d,%d.%d\n", minute / 60, minute % 60,
                      18 + minute % 3, minute % 10);
        log += line;
    }
    return log;
}

/// A command of the program with little memory.
struct Task {
    const char* name;
    const char* command; ///< for bash, after the program's name
    bool changes;
};

constexpr Task tasks[] = {
    {"Import", "import try.holdband more.csv", true},
    {"OpeningABatch", "verdict try.holdband Worked", false},
};

class LittleMemory : public ::testing::TestWithParam<Task> {
protected:
    void SetUp() override
    {
        m_program.write("more.csv", halfADay());
        m_before = contentOf(m_program.path("log.holdband"));
        const auto sound = run("");
        ASSERT_EQ(sound.status, 0) << sound.err;
        m_after = content();
        m_answer = sound.out;
        m_allocations = std::atol(m_program.read("count").c_str());
        ASSERT_GT(m_allocations, 1000);
        ASSERT_EQ(m_before != m_after, GetParam().changes);
    }

    /// On a fresh copy of the logbook.
    test::Outcome run(const std::string& fails)
    {
        fs::copy_file(m_program.path("log.holdband"), m_program.path("try.holdband"),
                      fs::copy_options::overwrite_existing);
        return m_program.shell(
            "ulimit -c 0; rm -f try.holdband-journal; HOLDBAND_MEMORY_COUNT=count "
            "HOLDBAND_MEMORY_FAILS=" +
            fails +
            " LD_PRELOAD=" HOLDBAND_FAILING_MEMORY
            " ASAN_OPTIONS=verify_asan_link_order=0:detect_leaks=0:handle_abort=0 "
            "$HOLDBAND " +
            GetParam().command + "; exit $?");
    }

    std::string content() const { return contentOf(m_program.path("try.holdband")); }

    std::string odd(const test::Outcome& outcome)
    {
        const bool aborted = outcome.status == 128 + SIGABRT;
        const bool broke = brokeIn(outcome.err, "holdband::");
        const bool libraryBroke =
            !broke && (brokeIn(outcome.err, "") || outcome.status == 128 + SIGSEGV);
        if (broke || outcome.err.find("runtime error") != std::string::npos)
            return "crashed: " + outcome.err;
        (libraryBroke          ? m_inLibrary
         : outcome.status == 0 ? m_done
         : aborted             ? m_aborted
                               : m_said) += 1;
        if (!libraryBroke && !aborted && outcome.status != 0 &&
            outcome.err.find("memory") == std::string::npos)
            return "no sentence about memory: status " + std::to_string(outcome.status) + ", " +
                   outcome.err;
        if (outcome.status == 0 && outcome.out != m_answer)
            return "a different answer without a word: " + outcome.out;
        return oddLogbook(outcome.status == 0);
    }

    /// Whether the sanitizer saw a crash in a function whose line holds `part`. Qt itself does not
    /// survive every failed allocation (QSqlRecord), which is an exit that we can't avoid.
    static bool brokeIn(const std::string& err, const std::string& part)
    {
        const std::size_t report = err.find("ERROR: AddressSanitizer");
        if (report == std::string::npos)
            return false;
        std::istringstream lines(err.substr(report));
        for (std::string line; std::getline(lines, line);) {
            const bool frame = line.find("    #") == 0;
            if (frame && line.find("asan") == std::string::npos)
                return line.find(part) != std::string::npos;
        }
        return part.empty();
    }

    std::string oddLogbook(bool done) const
    {
        const auto logbook =
            store::LogbookFile::open(m_program.path("try.holdband"), store::Access::read);
        if (!logbook)
            return logbook.error().sentence();
        const auto damage = store::findDamage(**logbook);
        if (!damage || !damage->empty())
            return "damaged: " + (damage ? damage->front() : damage.error().sentence());
        const auto readings = (*logbook)->database().integer(
            "SELECT count(*) FROM reading_blocks, json_each(reading_blocks.logged)");
        const bool isBefore = *readings == readingsBefore;
        const bool isAfter = *readings == readingsBefore + (GetParam().changes ? 720 : 0);
        if (!(done ? isAfter : isBefore || isAfter))
            return std::to_string(*readings) + " readings";
        return {};
    }

    static constexpr std::int64_t readingsBefore = 10; ///< of the worked example

    test::WorkedProgram m_program;
    std::string m_before;
    std::string m_after;
    std::string m_answer;
    long m_allocations = 0;
    int m_said = 0;
    int m_aborted = 0;
    int m_inLibrary = 0;
    int m_done = 0;
};

TEST_P(LittleMemory, EndsInASentenceOrAnExit)
{
    const long trials = wantsLongSet() ? 1000 : 32;
    int wrong = 0;
    for (long trial = 0; trial < trials; ++trial) {
        const long at = 1 + trial * (m_allocations - 1) / trials;
        std::vector<std::string> ways{std::to_string(at)};
        if (wantsLongSet() || trial % 4 == 0)
            ways.push_back(std::to_string(at) + "+");
        for (const std::string& way : ways) {
            const std::string what = odd(run(way));
            if (!what.empty() && ++wrong <= 6)
                ADD_FAILURE() << "allocation " << way << " of " << m_allocations << ": " << what;
        }
    }
    EXPECT_EQ(wrong, 0);
    std::printf("%s: %ld allocations; of those that failed %d ended in a sentence, %d in an abort, "
                "%d in a crash of a library, %d changed nothing\n",
                GetParam().name, m_allocations, m_said, m_aborted, m_inLibrary, m_done);
}

INSTANTIATE_TEST_SUITE_P(In, LittleMemory, ::testing::ValuesIn(tasks),
                         [](const auto& task) { return std::string(task.param.name); });

} // namespace
} // namespace holdband::memory
