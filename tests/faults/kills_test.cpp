// A process that is killed (SIGKILL) while it imports, saves rounds, undoes and backs up: every
// confirmed act is there and the one under way is whole or absent. That is no power loss: the
// system still writes what the process gave it.
#include "core/store/safety/soundness.h"
#include "tests/faults/faulty_vfs.h"
#include "tests/faults/kill_acts.h"
#include "tests/faults/long_set.h"
#include "tests/faults/world.h"
#include "tests/processes/child.h"

#include <QTemporaryDir>
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <gtest/gtest.h>
#include <optional>
#include <random>
#include <string>
#include <thread>
#include <vector>

namespace holdband::faults {
namespace {

namespace fs = std::filesystem;
using namespace std::chrono_literals;

constexpr int actsOfAChild = 24;

/// A journal that holds something: a change is under way.
bool hasChangeUnderWay(const std::string& folder)
{
    std::error_code vanished;
    for (fs::directory_iterator entry(folder, vanished);
         !vanished && entry != fs::directory_iterator(); entry.increment(vanished)) {
        std::error_code unknown;
        const std::string name = entry->path().filename().string();
        if (name.ends_with("-journal") && fs::file_size(entry->path(), unknown) > 0 && !unknown)
            return true;
    }
    return false;
}

class Kills : public ::testing::Test {
protected:
    /// The contents after each number of acts.
    void SetUp() override
    {
        m_folder = fs::canonical(m_place.path().toStdString()).string() + "/run";
        fs::create_directory(m_folder);
        const UndisturbedFiles files(m_folder);
        const Done prepared = prepareForKills(m_folder);
        ASSERT_TRUE(prepared) << prepared.error().sentence();
        m_start.emplace(m_folder);
        m_contents.push_back(contentOf(logbookIn(m_folder)));
        for (int number = 0; number < actsOfAChild; ++number) {
            const Done done = killAct(m_folder, number);
            ASSERT_TRUE(done) << number << ": " << done.error().sentence();
            m_contents.push_back(contentOf(logbookIn(m_folder)));
        }
    }

    /// Returns whether it died inside a change; absent if it had ended already.
    std::optional<bool> killOnce(bool inside)
    {
        clearFolder(m_folder);
        m_start->writeInto(m_folder);
        test::Child child({HOLDBAND_KILL_CHILD, m_folder, std::to_string(actsOfAChild)});
        const int before = std::uniform_int_distribution<>(0, actsOfAChild - 4)(m_random);
        int confirmed = 0;
        while (confirmed < before && child.line())
            ++confirmed;
        if (confirmed < before)
            ADD_FAILURE() << "the child ended after " << confirmed << " acts";
        const auto deadline = std::chrono::steady_clock::now() + 20s;
        while (inside && !hasChangeUnderWay(m_folder) &&
               std::chrono::steady_clock::now() < deadline)
            ;
        const int mostWait = inside ? 300 : 3000; // a change may take less than a millisecond
        std::this_thread::sleep_for(
            std::chrono::microseconds{std::uniform_int_distribution<>(0, mostWait)(m_random)});
        child.kill();
        confirmed += static_cast<int>(child.rest().size());
        if (child.wait() != -1)
            return std::nullopt;
        const bool died = hasChangeUnderWay(m_folder);
        check(confirmed);
        return died;
    }

    void check(int confirmed)
    {
        SCOPED_TRACE("killed after " + std::to_string(confirmed) + " acts");
        {
            const auto logbook =
                store::LogbookFile::open(logbookIn(m_folder), store::Access::read, clockOfTests);
            ASSERT_TRUE(logbook) << logbook.error().sentence();
            const auto damage = store::findDamage(**logbook);
            ASSERT_TRUE(damage) << damage.error().sentence();
            EXPECT_EQ(*damage, std::vector<std::string>{});
        }
        const std::string content = contentOf(logbookIn(m_folder));
        const auto next = static_cast<std::size_t>(std::min(confirmed + 1, actsOfAChild));
        EXPECT_TRUE(content == m_contents.at(static_cast<std::size_t>(confirmed)) ||
                    content == m_contents.at(next));
        for (int number = 0; number < actsOfAChild; ++number) {
            const bool there = fs::exists(copyOf(m_folder, number));
            EXPECT_TRUE(there || number >= confirmed || !isBackup(number))
                << "the copy of act " << number << " is lost";
            if (there) {
                EXPECT_EQ(contentOf(copyOf(m_folder, number)),
                          m_contents.at(static_cast<std::size_t>(number)));
            }
        }
        const Done again = killAct(m_folder, 1000); // an import
        EXPECT_TRUE(again) << again.error().sentence();
    }

    QTemporaryDir m_place;
    std::string m_folder;
    std::optional<StoredFolder> m_start;
    std::vector<std::string> m_contents;
    std::mt19937 m_random{20'260'307};
};

TEST_F(Kills, LoseNothingConfirmed)
{
    const int wanted = wantsLongSet() ? 300 : 20;
    int kills = 0;
    int inside = 0;
    for (int attempts = 0; kills < wanted && attempts < 2 * wanted; ++attempts) {
        const auto died = killOnce(attempts % 5 != 0);
        kills += died.has_value();
        inside += died.value_or(false);
    }
    std::printf("%d kills, %d of them inside a change\n", kills, inside);
    EXPECT_EQ(kills, wanted);
    EXPECT_GE(2 * inside, kills);
}

} // namespace
} // namespace holdband::faults
