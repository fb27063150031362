// A comparison at a glance: the sentence that answers, what is not decided, and the pairs. Figures
// by hand; the texts from figures that are written down here.
#include "core/results/comparison/measure_text.h"
#include "core/results/comparison/side_by_side.h"
#include "core/results/comparison/side_format.h"
#include "tests/results/garage.h"

#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using analysis::Ahead;
using analysis::Bounded;
using analysis::MeasureId;
using results::GlancePair;
using results::GlanceRow;
using results::PairGlance;
using results::SideBySide;
using ::testing::ElementsAre;
using ::testing::HasSubstr;

/// A comparison of Loop (A) and Cabinet (B) that has the figures which a test gives it.
class Compared {
public:
    explicit Compared(bool ofSetups, std::size_t batches = 3)
    {
        m_review.settings.currency = "USD";
        m_review.a = m_review.setupA = "Loop";
        m_review.b = m_review.setupB = "Cabinet";
        m_review.ofSetups = ofSetups;
        m_review.batchesA.assign(ofSetups ? batches : 1, "L");
        m_review.batchesB = m_review.batchesA;
        m_review.text.energySentence = "Their energies can't be compared.";
        for (const analysis::MeasureRule& rule : analysis::measureRules())
            m_review.measures.push_back({rule, {}, {}, {}, {}, {}});
        m_review.batchFigures.resize(m_review.measures.size());
    }

    Compared& with(MeasureId id, std::optional<Bounded> a, std::optional<Bounded> b,
                   std::optional<Ahead> ahead)
    {
        analysis::Measure& measure = m_review.measures[static_cast<std::size_t>(id)];
        measure.a = a;
        measure.b = b;
        measure.ahead = ahead;
        return *this;
    }
    SideBySide& review() { return m_review; }

    PairGlance glance()
    {
        const results::SideFormat format{m_review.settings, '.'};
        m_review.text.measures.clear();
        for (const analysis::Measure& measure : m_review.measures)
            m_review.text.measures.push_back(results::measureText(measure, format));
        return results::pairGlanceOf(m_review, format);
    }

private:
    SideBySide m_review;
};

Bounded figure(double value)
{
    return {value, value - 0.5, value + 0.5};
}

const GlancePair* pairOf(const PairGlance& glance, GlanceRow row)
{
    for (const GlancePair& pair : glance.pairs) {
        if (pair.row == row)
            return &pair;
    }
    return nullptr;
}

TEST(SideGlance, SaysInWhatEachSetupIsAhead)
{
    Compared both(true);
    both.with(MeasureId::parts, figure(300.0), figure(100.0), Ahead::b)
        .with(MeasureId::cost, figure(5.0), figure(3.0), Ahead::b)
        .with(MeasureId::energy, figure(25.0), figure(15.0), Ahead::b)
        .with(MeasureId::insideShare, figure(1.0), figure(0.9), Ahead::a)
        .with(MeasureId::meanAbsoluteDeviation, figure(0.2), figure(0.4), Ahead::a)
        .with(MeasureId::settlingCrash, figure(6.0), figure(20.0), Ahead::a);
    both.review().work = {{figure(20.0), {}}, {figure(10.0), {}}, Ahead::b};
    const PairGlance glance = both.glance();
    EXPECT_EQ(glance.answer, "Loop is steadier and cold sooner; Cabinet is cheaper to build, "
                             "cheaper to run and less work.");
    EXPECT_EQ(glance.open, "");
}

TEST(SideGlance, SaysOfBatchesWhatTheyWere)
{
    Compared both(false);
    both.with(MeasureId::parts, figure(300.0), figure(100.0), Ahead::b)
        .with(MeasureId::energy, figure(25.0), figure(15.0), Ahead::b)
        .with(MeasureId::meanAbsoluteDeviation, figure(0.2), figure(0.4), Ahead::a);
    EXPECT_EQ(both.glance().answer, "Loop was closer to target; Cabinet was more economical.")
        << "the parts are the setup's, not the batch's; without a price the energy counts";
    both.with(MeasureId::cost, figure(5.0), figure(3.0), Ahead::b);
    EXPECT_EQ(both.glance().answer, "Loop was closer to target; Cabinet was cheaper.");
}

TEST(SideGlance, TheSameWeatherIsAnAnswerOfItsOwnForSetups)
{
    Compared both(true);
    both.with(MeasureId::cost, figure(3.0), figure(3.1), Ahead::tooClose);
    both.review().weather.ahead = Ahead::b;
    EXPECT_EQ(both.glance().answer, "Cabinet is more economical in the same weather.");
    EXPECT_EQ(both.glance().open,
              "Too close to call from 3 batches of Loop and 3 batches of Cabinet: cost.");
    both.review().weather.ahead = Ahead::tooClose;
    EXPECT_EQ(both.glance().answer, "Too close to call: neither Loop nor Cabinet is ahead.");
}

TEST(SideGlance, ListsWhatIsNotDecidedAndWhy)
{
    Compared both(false);
    both.with(MeasureId::energy, figure(9.0), figure(9.2), Ahead::tooClose)
        .with(MeasureId::cost, figure(2.0), figure(2.1), Ahead::tooClose)
        .with(MeasureId::insideShare, figure(1.0), figure(0.9), std::nullopt)
        .with(MeasureId::settlingCrash, figure(6.0), std::nullopt, std::nullopt);
    EXPECT_EQ(both.glance().open, "Too close to call: energy and cost. Not decided: time on "
                                  "target. Known of one side only: time to get cold.");
    both.review().notes.push_back(
        {analysis::NoteKind::missedStage, MeasureId::insideShare, 1.0, 0.0});
    EXPECT_THAT(both.glance().open,
                HasSubstr("Not decided, because a target was missed: time on target."));
}

TEST(SideGlance, TwoBatchesAreTooFewForAnAnswer)
{
    Compared both(true, 2);
    both.with(MeasureId::energy, Bounded{9.0, {}, {}}, Bounded{5.0, {}, {}}, std::nullopt);
    EXPECT_EQ(both.glance().answer, "Too few batches to say whether Loop or Cabinet is ahead.");
    EXPECT_EQ(both.glance().open, "Not decided, it takes three batches of each: energy.");
}

TEST(SideGlance, WithoutAFigureOfBothTheSentenceAboutEnergyAnswers)
{
    Compared both(false);
    EXPECT_EQ(both.glance().answer, "Their energies can't be compared.");
    EXPECT_TRUE(both.glance().pairs.empty());
}

TEST(SideGlance, EachPairHasItsUnitAndSaysWhoIsAhead)
{
    Compared both(false);
    both.with(MeasureId::energy, figure(8.874), figure(14.5), Ahead::a)
        .with(MeasureId::cost, figure(1.331), figure(2.175), Ahead::a)
        .with(MeasureId::insideShare, Bounded{0.9, 0.85, 0.95}, figure(0.5), Ahead::a)
        .with(MeasureId::settlingCrash, figure(12.6), figure(5.7), Ahead::b);
    const PairGlance glance = both.glance();
    const GlancePair* energy = pairOf(glance, GlanceRow::energy);
    ASSERT_TRUE(energy);
    EXPECT_EQ(energy->title, "Energy, kWh");
    EXPECT_EQ(energy->a.text, "8.87");
    EXPECT_EQ(energy->aheadText, "A less");
    EXPECT_EQ(energy->explanation,
              "Energy, kWh\nA Loop: 8.87 (8.37 – 9.37)\nB Cabinet: 14.50 (14.00 – 15.00)");
    EXPECT_EQ(pairOf(glance, GlanceRow::cost)->a.text, "$1.33");
    const GlancePair* inside = pairOf(glance, GlanceRow::onTarget);
    EXPECT_EQ(inside->a.figure, (Bounded{90.0, 85.0, 95.0})) << "in %";
    EXPECT_EQ(inside->aheadText, "A longer");
    EXPECT_EQ(pairOf(glance, GlanceRow::crash)->aheadText, "B sooner");
    EXPECT_FALSE(pairOf(glance, GlanceRow::work)) << "nothing is known of it";
}

TEST(SideGlance, EqualCountsAreNotTooCloseToCall)
{
    Compared both(false);
    const Bounded rounds{13.0, 13.0, 13.0};
    both.review().work = {{rounds, {}}, {rounds, {}}, Ahead::tooClose};
    const PairGlance glance = both.glance();
    ASSERT_EQ(glance.pairs.size(), 1u);
    EXPECT_EQ(glance.pairs[0].aheadText, "equal");
    EXPECT_EQ(glance.open, "");
}

SideBySide garageCompared(const std::string& a, const std::string& b, const Garage& garage = {})
{
    const DescribedLogbook files;
    const auto logbook = loadGarage(files, garage);
    const auto compared = results::reviewSideBySide(*logbook, a, b);
    EXPECT_TRUE(compared) << compared.error().sentence();
    return compared.value_or(SideBySide{});
}

TEST(SideGlance, TheGarageIsAnsweredByItsFigures)
{
    const SideBySide review = garageCompared("Loop", "Cabinet");
    EXPECT_EQ(review.glance.answer, "Cabinet is cheaper to build, cheaper to run and more "
                                    "economical in the same weather.");
    const GlancePair* energy = pairOf(review.glance, GlanceRow::energy);
    ASSERT_TRUE(energy);
    // 144 h at 20 + 4 × 6.32 W and at 5 + 2 × 6.32 W.
    EXPECT_EQ(energy->a.text, "6.52");
    EXPECT_EQ(energy->b.text, "2.54");
    EXPECT_EQ(energy->aheadText, "B less");
    ASSERT_EQ(energy->a.batches.size(), 3u);
    EXPECT_EQ(energy->a.batches[2].batch, "L3");
    EXPECT_NEAR(energy->a.batches[2].value, 6.520, 0.0011);
    EXPECT_THAT(energy->explanation, HasSubstr("L1 6.52, L2 6.52, L3 6.52"));
    EXPECT_FALSE(pairOf(review.glance, GlanceRow::crash)) << "no batch had one";
}

TEST(SideGlance, WorkCountsTheRoundsWithATypedReading)
{
    const SideBySide review = garageCompared("Loop", "Cabinet");
    // Every 12 h from 0 h to 144 h, both ends included.
    ASSERT_TRUE(review.work.a.rounds);
    EXPECT_EQ(review.work.a.rounds->value, 13.0);
    ASSERT_EQ(review.work.b.batches.size(), 3u);
    EXPECT_EQ(review.work.b.batches[1].value, 13.0);
    const GlancePair* work = pairOf(review.glance, GlanceRow::work);
    ASSERT_TRUE(work);
    EXPECT_EQ(work->a.text, "13");
    EXPECT_THAT(work->explanation, HasSubstr("A Loop: 13; L1 13, L2 13, L3 13"));
}

TEST(SideGlance, TwoBatchesHaveTheirOwnRounds)
{
    const SideBySide review = garageCompared("L1", "C2");
    EXPECT_EQ(review.work.a.rounds, (Bounded{13.0, 13.0, 13.0}));
    EXPECT_TRUE(review.work.a.batches.empty());
    EXPECT_TRUE(review.energyA.empty()) << "two batches have a curve of both";
}

TEST(SideGlance, EverySetupsBatchHasItsEnergySincePitching)
{
    const SideBySide review = garageCompared("Loop", "Cabinet");
    ASSERT_EQ(review.energyA.size(), 3u);
    EXPECT_EQ(review.energyA[0].batch, "L1");
    const auto& points = review.energyA[0].points;
    ASSERT_EQ(points.size(), 13u);
    EXPECT_EQ(points[0], (analysis::EnergyPoint{0.0, 0.0}));
    // The first 12 h: lift 2 + 0.06 × 6 K, 20 + 4 × 2.36 W.
    EXPECT_EQ(points[1].elapsedHours, 12.0);
    EXPECT_NEAR(points[1].kwh, 0.353, 0.0011);
    EXPECT_EQ(points[12].elapsedHours, 144.0);
    EXPECT_NEAR(points[12].kwh, 6.520, 0.0011);
}

TEST(SideGlance, ImportedReadingsAreNoWork)
{
    const DescribedLogbook files;
    std::string registers = "Time,Loop meter (kWh)\n";
    for (int hour = 0; hour <= garageHours; hour += 6)
        registers += rfc3339Utc(garageStart(0) + std::chrono::hours{hour}) + "," +
                     fixedText(10.0 + 0.1 * hour, 3) + "\n";
    files.write("registers.csv", registers);
    Garage garage;
    garage.batches = 1;
    for (const GarageSide* side : {&garage.a, &garage.b})
        files.write(side->setup + ".csv",
                    garageLog(side->setup + " (C)", 1, [](int) { return 20.0; }));
    files.write("room.csv", garageLog("Room (C)", 1, [](int) { return 24.0; }));
    std::string described = garageDescription(garage);
    const std::string typed = garageReadings(garage.a, 1).substr(1) + ",";
    described.erase(described.find(typed), typed.size());
    described.insert(
        described.find(R"json({"file":"room.csv")json"),
        R"json({"file":"registers.csv","columns":{"Loop meter":"Loop meter (kWh)"}},)json");
    const auto logbook = files.load(described, "2026-06-01T00:00:00Z");
    const auto review = results::reviewSideBySide(*logbook, "L1", "C1");
    ASSERT_TRUE(review) << review.error().sentence();
    EXPECT_EQ(review->work.a.rounds, (Bounded{0.0, 0.0, 0.0}));
    EXPECT_EQ(review->work.b.rounds->value, 13.0);
    EXPECT_EQ(review->work.ahead, Ahead::a);
}

} // namespace
} // namespace holdband::test
