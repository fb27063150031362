// What the time between two readings can hide of an excursion, by hand from the definition in
// core/analysis/sampling_doubt.h. Target 20 °C ± 1 K, times in minutes.
#include "core/analysis/sampling_doubt.h"
#include "tests/analysis/builders.h"

#include <gtest/gtest.h>

namespace holdband::test {
namespace {

using namespace analysis;

constexpr double msAMinute = 60'000.0;

SamplingDoubt doubtOfWorst(std::initializer_list<std::pair<double, double>> points,
                           double gapMinutes = 120, std::optional<double> settleAllowed = {})
{
    Series beer;
    for (const auto& [minute, value] : points) {
        beer.at.push_back(hour(minute / 60.0));
        beer.value.push_back(value);
    }
    Stage stage = hold("Hold", 20);
    if (settleAllowed)
        stage.settleAllowed = Hours{*settleAllowed};
    const JudgedBatch batch = judged(batchOf({stage}, 10), beer, gapMinutes);
    const BandJudgement& band = batch.asPlanned.stages.at(0);
    const Excursion* worst = worstOf(band.excursions);
    EXPECT_TRUE(worst);
    return worst ? samplingDoubt(batch.tracks.at(0), band, *worst) : SamplingDoubt{};
}

TEST(SamplingDoubt, IsHalfTheGreatestChangeBesideThePeak)
{
    // Peak at 30 min. Changes of 0.5, 1.5, 0.8 and 1.2 K each 10 min: 1.5 / 2.
    const SamplingDoubt doubt =
        doubtOfWorst({{0, 20}, {10, 20}, {20, 20.5}, {30, 22}, {40, 21.2}, {50, 20}, {60, 20}});
    EXPECT_NEAR(doubt.peak, 0.75, 1e-12);
    EXPECT_NEAR(doubt.pieceMs, 10 * msAMinute, 1e-6);
    // Left between 20 and 30 min, back between 40 and 50: half of each.
    EXPECT_NEAR(doubt.lengthMs, 10 * msAMinute, 1e-6);
}

TEST(SamplingDoubt, IsSmallWhereTheBeerMovesSlowly)
{
    // 0.05 K in 10 min near the peak, however fast it moved an hour before.
    const SamplingDoubt doubt = doubtOfWorst({{0, 20},
                                              {10, 20.9},
                                              {20, 21.1},
                                              {30, 21.15},
                                              {40, 21.2},
                                              {50, 21.15},
                                              {60, 21.1},
                                              {70, 20.9},
                                              {80, 20.5}});
    EXPECT_NEAR(doubt.peak, 0.025, 1e-12);
}

TEST(SamplingDoubt, ALongerPieceBesideCountsForItsShare)
{
    // Peak at 70 min. The 10 min before it: 3 K in 60 min and 3.2 K in 60 min are 0.5 and 0.533 K
    // in 10. The 60 min after it: 3.2 K of its own; the 0.2 K of 10 min are not scaled up.
    const SamplingDoubt doubt = doubtOfWorst({{0, 20}, {60, 23}, {70, 23.2}, {130, 20}});
    EXPECT_NEAR(doubt.peak, 1.6, 1e-12);
    EXPECT_NEAR(doubt.pieceMs, 60 * msAMinute, 1e-6);
    EXPECT_NEAR(doubt.lengthMs, 60 * msAMinute, 1e-6);
}

TEST(SamplingDoubt, TwoReadingsASecondApartSayNothingAboutTenMinutes)
{
    // 0.2 K within a second at the peak would be 120 K in 10 min.
    const SamplingDoubt doubt = doubtOfWorst(
        {{0, 20}, {10, 21.2}, {20, 21.3}, {20 + 1 / 60.0, 21.5}, {30, 21.4}, {40, 21.3}, {50, 20}});
    EXPECT_NEAR(doubt.peak, 0.1, 1e-12);
    EXPECT_NEAR(doubt.pieceMs, (10 - 1 / 60.0) * msAMinute, 1e-6);
}

TEST(SamplingDoubt, NothingIsTakenFromBeyondAGap)
{
    // Behind the gap from 20 to 60 min the beer is outside at once, and falls 0.5 K in 10 min.
    const SamplingDoubt doubt =
        doubtOfWorst({{0, 20}, {10, 20}, {20, 20}, {60, 22}, {70, 21.5}, {80, 21}, {90, 20}}, 15);
    EXPECT_NEAR(doubt.peak, 0.25, 1e-12);
    // Its begin is the gap's end; its end, at the reading at 80 min, is known to half a piece.
    EXPECT_NEAR(doubt.lengthMs, 5 * msAMinute, 1e-6);
}

TEST(SamplingDoubt, WhereTheHoldTimeBeginsOutsideThereIsNoCrossing)
{
    // Of 30 min only 15 are allowed for settling: the excursion begins there, at 22 °C, and ends
    // when 21 °C is passed at 25 min.
    const SamplingDoubt doubt =
        doubtOfWorst({{0, 23.5}, {10, 22.5}, {20, 21.5}, {30, 20.5}, {40, 20.5}}, 120, 0.25);
    EXPECT_NEAR(doubt.lengthMs, 5 * msAMinute, 1e-6);
    EXPECT_NEAR(doubt.peak, 0.5, 1e-12);
}

TEST(SamplingDoubt, IsNotableFromATenthOfAFahrenheitDegreeAndOfTheTolerance)
{
    // 0.1 °F = 0.0556 K.
    EXPECT_TRUE(isNotable({0.056, 0, 0}, 0.5));
    EXPECT_FALSE(isNotable({0.055, 0, 0}, 0.5));
    EXPECT_FALSE(isNotable({0.1, 0, 0}, 1.0)) << "not more than a tenth";
    EXPECT_TRUE(isNotable({0.11, 0, 0}, 1.0));
}

} // namespace
} // namespace holdband::test
