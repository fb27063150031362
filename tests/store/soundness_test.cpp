// A changed bit is noticed anywhere in the file.
#include "core/store/safety/soundness.h"
#include "tests/store/logbooks.h"
#include "tests/store/saying.h"

#include <atomic>
#include <fstream>
#include <functional>
#include <random>
#include <sqlite3.h>
#include <thread>

namespace holdband::test {
namespace {

class Soundness : public LogbookTest {
protected:
    void SetUp() override
    {
        const auto logbook = create();
        addEquipment(*logbook);
        Log log;
        for (int minute = 0; minute < 3000; ++minute)
            log.add(minute, minute % 5 == 0 ? -0.0 : 20.0 + minute / 7.0);
        addLog(*logbook, log);
        auto change = store::Change::begin(*logbook, saying("round"));
        ASSERT_TRUE(change);
        for (int hour = 0; hour < 200; ++hour)
            ASSERT_TRUE(store::addMeterReading(*change, "Meter",
                                               {someday + std::chrono::hours{hour},
                                                Energy::kilowattHours(hour * 0.1),
                                                1,
                                                {},
                                                ""}));
        ASSERT_TRUE(change->commit());
    }

    /// True if the file opens and no damage is found.
    static bool looksSound(const std::string& file)
    {
        const auto logbook = store::LogbookFile::open(file, store::Access::read);
        if (!logbook)
            return false;
        const auto damage = store::findDamage(**logbook);
        return damage && damage->empty();
    }

    /// What a reader would get from the file.
    static std::string contents(const std::string& file)
    {
        const auto logbook = store::LogbookFile::open(file, store::Access::read);
        std::string text;
        if (!logbook)
            return "unreadable";
        const Span all{someday, someday + std::chrono::hours{1000}};
        if (const auto series = store::readSeries(**logbook, "Beer", all)) {
            for (std::size_t i = 0; i < series->size(); ++i)
                text += std::to_string(toMs(series->at[i])) + " " +
                        std::to_string(series->value[i]) + "\n";
        }
        if (const auto readings = store::readMeterReadings(**logbook, "Meter")) {
            for (const auto& stored : *readings)
                text += std::to_string(stored.inForce.registerReading.kilowattHours()) + "\n";
        }
        return text;
    }
};

TEST_F(Soundness, AFreshFileIsSound)
{
    EXPECT_TRUE(looksSound(path()));
}

TEST_F(Soundness, ChangesByAnotherProgramAreNoticed)
{
    auto database = store::Database::open(path(), store::Access::write, false);
    ASSERT_TRUE(database);
    ASSERT_TRUE((*database)->execute("UPDATE meter_readings SET kwh = kwh + 1 WHERE id = 7"));
    EXPECT_FALSE(looksSound(path()));
    ASSERT_TRUE((*database)->execute("UPDATE meter_readings SET kwh = kwh - 1 WHERE id = 7"));
    ASSERT_TRUE(
        (*database)->execute("UPDATE reading_blocks SET logged = json_set(logged, '$[#-1]', "
                             "json_extract(logged, '$[#-1]') + 1e-9) "
                             "WHERE block = (SELECT max(block) FROM reading_blocks)"));
    EXPECT_FALSE(looksSound(path()));
}

TEST_F(Soundness, AChangedChecksumIsNoticed)
{
    auto database = store::Database::open(path(), store::Access::write, false);
    ASSERT_TRUE(database);
    ASSERT_TRUE((*database)->execute("UPDATE block_checksums SET checksum = checksum + 1 "
                                     "WHERE block = (SELECT min(block) FROM block_checksums)"));
    EXPECT_FALSE(looksSound(path()));
    ASSERT_TRUE((*database)->execute("DELETE FROM block_checksums"));
    EXPECT_FALSE(looksSound(path()));
}

// Single flipped bits, seeded: none may change what is read without being noticed.
TEST_F(Soundness, NoFlippedBitChangesAReadingUnnoticed)
{
    std::ifstream in(path(), std::ios::binary);
    const std::string whole((std::istreambuf_iterator<char>(in)), {});
    const std::string before = contents(path());
    std::mt19937_64 random(20260307);
    int unnoticed = 0;
    for (int trial = 0; trial < 120; ++trial) {
        std::string flipped = whole;
        const std::size_t bit = random() % (8 * flipped.size());
        flipped[bit / 8] = static_cast<char>(flipped[bit / 8] ^ (1 << (bit % 8)));
        const std::string file = path("flipped.holdband");
        std::ofstream(file, std::ios::binary) << flipped;
        if (looksSound(file) && contents(file) != before)
            ++unnoticed;
    }
    EXPECT_EQ(unnoticed, 0);
}

TEST_F(Soundness, ASaveByAnotherProgramMeanwhileIsNoDamage)
{
    std::atomic<bool> writing = true;
    std::thread writer([&] {
        for (int i = 0; i < 60; ++i) {
            const auto logbook = store::LogbookFile::open(path(), store::Access::write);
            ASSERT_TRUE(logbook) << logbook.error().sentence();
            auto change = store::Change::begin(**logbook, saying("a reading"));
            ASSERT_TRUE(change);
            const MeterReading reading{
                someday + std::chrono::hours{1000 + i}, Energy::kilowattHours(i), 0, {}, {}};
            ASSERT_TRUE(store::addMeterReading(*change, "Meter", reading));
            ASSERT_TRUE(change->commit());
        }
        writing = false;
    });
    const auto reader = store::LogbookFile::open(path(), store::Access::read);
    ASSERT_TRUE(reader);
    while (writing) {
        const auto damage = store::findDamage(**reader);
        ASSERT_TRUE(damage) << damage.error().sentence();
        EXPECT_EQ(*damage, std::vector<std::string>{});
    }
    writer.join();
}

/// Runs an act inside a connection, as another process could between two statements of it: before
/// the given statement begins.
class ActBefore {
public:
    ActBefore(const store::Database& reader, std::string statement, std::function<void()> act)
        : m_reader(reader), m_statement(std::move(statement)), m_act(std::move(act))
    {
        sqlite3_trace_v2(reader.raw(), SQLITE_TRACE_STMT, &ActBefore::begins, this);
    }
    ~ActBefore() { sqlite3_trace_v2(m_reader.raw(), 0, nullptr, nullptr); }
    ActBefore(const ActBefore&) = delete;
    ActBefore& operator=(const ActBefore&) = delete;

    bool ran() const { return m_ran; }

private:
    static int begins(unsigned, void* self, void*, void* sql)
    {
        auto& each = *static_cast<ActBefore*>(self);
        if (!each.m_ran && static_cast<const char*>(sql) == each.m_statement) {
            each.m_ran = true;
            each.m_act();
        }
        return 0;
    }

    const store::Database& m_reader;
    std::string m_statement;
    std::function<void()> m_act;
    bool m_ran = false;
};

TEST_F(Soundness, ASealThatIsCheckedWhileAnotherSavesIsNoFalseAlarm)
{
    const auto writer = store::LogbookFile::open(path(), store::Access::write);
    const auto reader = store::LogbookFile::open(path(), store::Access::read);
    ASSERT_TRUE(writer && reader);
    sqlite3_busy_timeout((*writer)->database().raw(), 0); // it would wait for the reader below
    int hour = 5000;
    const auto save = [&] {
        auto change = store::Change::begin(**writer, saying("round"));
        ASSERT_TRUE(change);
        const MeterReading reading{
            someday + std::chrono::hours{++hour}, Energy::kilowattHours(hour), 0, {}, {}};
        ASSERT_TRUE(store::addMeterReading(*change, "Meter", reading));
        (void)change->commit(); // refused where the reader holds its state
    };
    for (const char* before :
         {"SELECT digest FROM seal WHERE id = 1", "SELECT * FROM \"meter_readings\""}) {
        SCOPED_TRACE(before);
        const ActBefore other((*reader)->database(), before, save);
        const Done seal = store::checkSeal((*reader)->database());
        EXPECT_TRUE(other.ran());
        EXPECT_TRUE(seal) << seal.error().sentence();
    }
    save();
    EXPECT_EQ(*(*reader)->database().integer("SELECT max(at) FROM meter_readings"),
              toMs(someday + std::chrono::hours{hour}))
        << "the reader holds nothing afterwards";
}

} // namespace
} // namespace holdband::test
