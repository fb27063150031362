// Rounds that are saved as "now" while the computer's clock is wrong, and after it was corrected.
#include "core/editing/rounds.h"
#include "core/store/readings/meter_readings.h"
#include "tests/store/logbooks.h"

#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using testing::HasSubstr;
using namespace std::chrono_literals;

class RoundsWithAWrongClock : public LogbookTest {
protected:
    void SetUp() override
    {
        addEquipment(*create());
        m_logbook =
            *store::LogbookFile::open(path(), store::Access::write, [this] { return m_now; });
    }

    Result<int> saveNow(double kwh)
    {
        intake::TypedReading typed;
        typed.meter = "Meter";
        typed.reading.at = m_logbook->now();
        typed.reading.registerReading = Energy::kilowattHours(kwh);
        typed.reading.timeDoubt = Milliseconds{0};
        return intake::saveRound(*m_logbook, {typed});
    }

    std::vector<double> registers() const
    {
        std::vector<double> values;
        const auto readings = store::readMeterReadings(*m_logbook, "Meter");
        EXPECT_TRUE(readings);
        for (const store::StoredReading& stored : *readings)
            values.push_back(stored.inForce.registerReading.kilowattHours());
        return values;
    }

    Instant m_now = someday; ///< 2026-03-07 16:13 UTC
    std::unique_ptr<store::LogbookFile> m_logbook;
};

TEST_F(RoundsWithAWrongClock, ASmallStepBackIsNoMatter)
{
    ASSERT_TRUE(saveNow(100.0));
    m_now += 12h;
    ASSERT_TRUE(saveNow(101.0));
    m_now += 6h - 1s; // it went a second too fast and was set back
    ASSERT_TRUE(saveNow(101.5));
    EXPECT_EQ(registers(), (std::vector{100.0, 101.0, 101.5}));
}

TEST_F(RoundsWithAWrongClock, AReadingFromAClockThatWasAheadIsNamedWithTheRemedy)
{
    ASSERT_TRUE(saveNow(100.0));
    m_now += 366 * 24h;
    ASSERT_TRUE(saveNow(101.0));
    m_now = someday + 12h;
    const auto refused = saveNow(102.0);
    ASSERT_FALSE(refused);
    const std::string said = refused.error().sentence();
    EXPECT_THAT(said, HasSubstr("is above the later 101 kWh of 8 Mar 2027"));
    EXPECT_THAT(said, HasSubstr("that time is in the future: the computer's clock was wrong when "
                                "it was saved, or is wrong now"));
    EXPECT_EQ(registers(), (std::vector{100.0, 101.0})) << "nothing was saved";
}

TEST_F(RoundsWithAWrongClock, AClockThatIsBehindIsNamedWithTheRemedy)
{
    ASSERT_TRUE(saveNow(100.0));
    m_now -= 24h;
    const auto refused = saveNow(101.0);
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().sentence(), HasSubstr("or is wrong now"));
    m_now = someday + 1h;
    ASSERT_TRUE(saveNow(101.0)) << "once it is right";
    EXPECT_EQ(registers(), (std::vector{100.0, 101.0}));
}

TEST_F(RoundsWithAWrongClock, ALaterReadingOfThePastIsNotBlamedOnTheClock)
{
    ASSERT_TRUE(saveNow(100.0));
    intake::TypedReading typed;
    typed.meter = "Meter";
    typed.reading.at = someday - 2h;
    typed.reading.registerReading = Energy::kilowattHours(105);
    const auto refused = intake::saveRound(*m_logbook, {typed});
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().sentence(), HasSubstr("check the number and its time"));
    EXPECT_THAT(refused.error().sentence(), testing::Not(HasSubstr("clock")));
}

} // namespace
} // namespace holdband::test
