// The settings for weighing two arrangements are stored, can be undone, and are refused if invalid.
#include "core/store/history/undo.h"
#include "core/store/records/weighing.h"
#include "core/store/safety/soundness.h"
#include "tests/store/logbooks.h"
#include "tests/store/saying.h"

#include <limits>

namespace holdband::test {
namespace {

class WeighingTest : public LogbookTest {
protected:
    Done saveWeighing(const Weighing& weighing) const
    {
        auto change = store::Change::begin(*m_logbook, saying("weighed anew"));
        EXPECT_TRUE(change);
        HOLDBAND_TRY(store::writeWeighing(*change, weighing));
        return change->commit();
    }
    Weighing stored() const { return *store::readWeighing(*m_logbook); }

    std::unique_ptr<store::LogbookFile> m_logbook = create();
};

Weighing someWeighing()
{
    Weighing weighing;
    weighing.weights = {{"noise", 2.5}, {"energy", 0.0}, {"looks", 5.0}};
    weighing.referenceLift = TemperatureDifference::kelvins(5.0);
    weighing.referenceHours = Hours{168.0};
    weighing.batchesPerYear = 6.0;
    weighing.otherPricePerKwh = 0.3;
    weighing.quietAfter = Hours{96.0};
    return weighing;
}

TEST_F(WeighingTest, IsEmptyAtFirst)
{
    EXPECT_EQ(stored(), Weighing{});
}

TEST_F(WeighingTest, IsStoredAndReplacedCompletely)
{
    ASSERT_TRUE(saveWeighing(someWeighing()));
    EXPECT_EQ(stored(), someWeighing());
    Weighing other;
    other.weights = {{"noise", 1.0}};
    ASSERT_TRUE(saveWeighing(other));
    EXPECT_EQ(stored(), other);
    EXPECT_TRUE(store::findDamage(*m_logbook)->empty());
}

TEST_F(WeighingTest, CanBeUndoneAndRedone)
{
    ASSERT_TRUE(saveWeighing(someWeighing()));
    Weighing other = someWeighing();
    other.weights["noise"] = 4.0;
    other.otherPricePerKwh.reset();
    ASSERT_TRUE(saveWeighing(other));
    ASSERT_TRUE(store::undoLast(*m_logbook));
    EXPECT_EQ(stored(), someWeighing());
    ASSERT_TRUE(store::redoLast(*m_logbook));
    EXPECT_EQ(stored(), other);
    ASSERT_TRUE(store::undoLast(*m_logbook));
    ASSERT_TRUE(store::undoLast(*m_logbook));
    EXPECT_EQ(stored(), Weighing{});
}

TEST_F(WeighingTest, DoesNotTouchTheSettings)
{
    const LogbookSettings before = *store::readSettings(*m_logbook);
    ASSERT_TRUE(saveWeighing(someWeighing()));
    EXPECT_EQ(*store::readSettings(*m_logbook), before);
}

TEST_F(WeighingTest, RefusesInvalidWeights)
{
    const auto why = [&](auto change) {
        Weighing weighing = someWeighing();
        change(weighing);
        const Done done = saveWeighing(weighing);
        return done ? std::string() : done.error().sentence();
    };
    EXPECT_EQ(why([](Weighing& w) { w.weights["noise"] = 5.5; }),
              "noise: a weight must be between 0 and 5.");
    EXPECT_EQ(why([](Weighing& w) { w.weights["noise"] = -1.0; }),
              "noise: a weight must be between 0 and 5.");
    EXPECT_EQ(why([](Weighing& w) { w.weights[" "] = 1.0; }), "a criterion has no name.");
    EXPECT_EQ(why([](Weighing& w) { w.referenceHours = Hours{0.0}; }),
              "the reference hold lasts longer than nothing.");
    EXPECT_EQ(why([](Weighing& w) { w.referenceLift = TemperatureDifference::kelvins(-1.0); }),
              "the room of the reference hold is no colder than the beer.");
    EXPECT_EQ(why([](Weighing& w) { w.batchesPerYear = 0.0; }),
              "the batches a year are more than none.");
    EXPECT_EQ(why([](Weighing& w) { w.quietAfter = Hours{-1.0}; }),
              "the wait after pitching is no shorter than nothing.");
    EXPECT_EQ(
        why([](Weighing& w) { w.otherPricePerKwh = std::numeric_limits<double>::infinity(); }),
        "what is weighed by must be a number.");
    EXPECT_EQ(stored(), Weighing{});
}

} // namespace
} // namespace holdband::test
