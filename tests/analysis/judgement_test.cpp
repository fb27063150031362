// Scores from figures, weighted totals, and what would change the lead. Figures by hand.
#include "core/analysis/bounded.h"
#include "core/analysis/judgement.h"

#include <gtest/gtest.h>

namespace holdband::test {
namespace {

using namespace analysis;

Measure measure(MeasureId id, double a, double b, std::optional<Ahead> ahead)
{
    Measure result;
    for (const MeasureRule& rule : measureRules()) {
        if (rule.id == id)
            result.rule = rule;
    }
    result.a = exactly(a);
    result.b = exactly(b);
    result.ahead = ahead;
    return result;
}

void expectScores(const std::optional<Scores>& scores, double a, double b)
{
    ASSERT_TRUE(scores);
    EXPECT_DOUBLE_EQ(scores->a, a);
    EXPECT_DOUBLE_EQ(scores->b, b);
}

TEST(Scores, TheOneAheadGetsFiveTheOtherFiveDividedByHowManyTimesWorse)
{
    expectScores(scoresOf(measure(MeasureId::energy, 10, 4, Ahead::b)), 2.0, 5.0);
    expectScores(scoresOf(measure(MeasureId::energy, 4, 10, Ahead::a)), 5.0, 2.0);
    expectScores(scoresOf(measure(MeasureId::energy, 4, 100, Ahead::a)), 5.0, 1.0);
    expectScores(scoresOf(measure(MeasureId::insideShare, 0.6, 0.9, Ahead::b)), 10.0 / 3.0, 5.0);
    expectScores(scoresOf(measure(MeasureId::outsideHours, 0.0, 2.0, Ahead::a)), 5.0, 1.0);
    expectScores(scoresOf(measure(MeasureId::meanDeviation, -0.8, 0.4, Ahead::b)), 2.5, 5.0);
}

TEST(Scores, AreEqualWhereNobodyIsAhead)
{
    expectScores(scoresOf(measure(MeasureId::energy, 10, 4, Ahead::tooClose)), 3.0, 3.0);
    expectScores(scoresOf(measure(MeasureId::energy, 10, 4, std::nullopt)), 3.0, 3.0);
    Measure half = measure(MeasureId::energy, 10, 4, std::nullopt);
    half.b.reset();
    EXPECT_FALSE(scoresOf(half));
}

TEST(Judgement, IsTheMeanByWeight)
{
    const JudgedSheet sheet = judge({{1, Scores{5, 2}}, {3, Scores{2, 4}}, {9, std::nullopt}});
    // (5 + 6) / 4 and (2 + 12) / 4
    expectScores(sheet.totals, 2.75, 3.5);
    EXPECT_EQ(sheet.lead, Ahead::b);
    ASSERT_EQ(sheet.turns.size(), 3u);
    EXPECT_FALSE(sheet.turns[2].byRemoval);
}

TEST(Judgement, NamesTheCriteriaThatChangeTheLead)
{
    // Differences A − B by weight: +3, −2, +0.5. A leads by 1.5.
    const JudgedSheet sheet = judge({{1, Scores{5, 2}}, {1, Scores{2, 4}}, {0.5, Scores{4, 3}}});
    EXPECT_EQ(sheet.lead, Ahead::a);
    EXPECT_TRUE(sheet.turns[0].byRemoval) << "the others favour B by 1.5";
    EXPECT_DOUBLE_EQ(*sheet.turns[0].weightToTie, 0.5);
    EXPECT_FALSE(sheet.turns[1].byRemoval);
    EXPECT_DOUBLE_EQ(*sheet.turns[1].weightToTie, 1.75);
    EXPECT_FALSE(sheet.turns[2].byRemoval);
    EXPECT_FALSE(sheet.turns[2].weightToTie) << "no weight from 0 up makes A lose by it";
}

TEST(Judgement, AtTheTieBothAreLevel)
{
    const JudgedSheet sheet = judge({{1, Scores{5, 2}}, {1.5, Scores{2, 4}}});
    EXPECT_EQ(sheet.lead, Ahead::tooClose);
    EXPECT_FALSE(sheet.turns[0].weightToTie);
    EXPECT_TRUE(sheet.turns[0].byRemoval) << "without it B leads";
}

TEST(Judgement, WithoutCriteria)
{
    EXPECT_FALSE(judge({}).totals);
    EXPECT_FALSE(judge({{0, Scores{5, 2}}}).totals);
    const JudgedSheet one = judge({{1, Scores{5, 2}}});
    EXPECT_EQ(one.lead, Ahead::a);
    EXPECT_FALSE(one.turns[0].byRemoval) << "there is no other criterion";
}

} // namespace
} // namespace holdband::test
