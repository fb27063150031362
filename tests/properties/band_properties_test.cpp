// Properties of every judging, whatever the series and the plan.
#include "core/analysis/distribution.h"
#include "tests/properties/random_runs.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace holdband::test {
namespace {

using namespace analysis;

constexpr double gapMinutes = 45.0;
constexpr double ms = 1.0;

JudgedBatch judgeRandom(const Batch& batch, const Series& beer)
{
    return judged(batch, beer, gapMinutes, 0.25);
}

void checkSums(const BandJudgement& stage)
{
    RC_ASSERT(std::abs(stage.coveredMs - stage.insideMs - stage.aboveMs - stage.belowMs) < ms);
    RC_ASSERT(stage.insideMs >= 0.0);
    RC_ASSERT(stage.coveredMs <= stage.holdMs + ms);
    double above = 0.0;
    double below = 0.0;
    for (const Excursion& excursion : stage.excursions) {
        (excursion.side == Side::above ? above : below) += excursion.outsideMs;
        RC_ASSERT(excursion.outsideMs >= 0.0);
        RC_ASSERT(excursion.outsideMs <= excursion.endMs - excursion.startMs + 1e-3);
        RC_ASSERT(excursion.areaMs <= excursion.peak * excursion.outsideMs + 1e-3);
    }
    RC_ASSERT(std::abs(above - stage.aboveMs) < ms);
    RC_ASSERT(std::abs(below - stage.belowMs) < ms);
}

RC_GTEST_PROP(BandProperties, CoveredIsInsideAndAboveAndBelow, ())
{
    const JudgedBatch batch = judgeRandom(randomBatch(), randomBeer());
    for (const Judging* judging : {&batch.asPlanned, &*batch.tighter, &*batch.wider}) {
        for (const BandJudgement& stage : judging->stages)
            checkSums(stage);
    }
}

RC_GTEST_PROP(BandProperties, SettlingAndHoldTimeMakeTheStage, ())
{
    const JudgedBatch batch = judgeRandom(randomBatch(), randomBeer());
    for (std::size_t i = 0; i < batch.stages.size(); ++i) {
        const BandJudgement& stage = batch.asPlanned.stages[i];
        const double length = batch.stages[i].span.hours() * hourMs;
        RC_ASSERT(std::abs(stage.settlingMs + stage.holdMs - length) < ms);
        const double settleAllowed = static_cast<double>(batch.stages[i].settleAllowed.count());
        RC_ASSERT(stage.settlingMs <= settleAllowed);
        RC_ASSERT(std::abs(batch.tracks[i].deviation.coveredMs() - stage.settlingMs -
                           stage.coveredMs) < ms);
    }
}

Series inFahrenheitAndBack(Series beer)
{
    for (double& value : beer.value)
        value = Temperature::fahrenheit(Temperature::celsius(value).fahrenheit()).celsius();
    return beer;
}

Batch inFahrenheitAndBack(Batch batch)
{
    const auto again = [](std::optional<TemperatureDifference>& tolerance) {
        if (tolerance) {
            tolerance = TemperatureDifference::fahrenheitDegrees(tolerance->fahrenheitDegrees());
        }
    };
    again(batch.tolerance);
    for (Stage& stage : batch.schedule) {
        stage.target = Temperature::fahrenheit(stage.target.fahrenheit());
        again(stage.tolerance);
    }
    return batch;
}

RC_GTEST_PROP(BandProperties, TheUnitOfTheInputsChangesNothing, ())
{
    const Batch batch = randomBatch();
    const Series beer = randomBeer();
    const JudgedBatch celsius = judgeRandom(batch, beer);
    const JudgedBatch fahrenheit =
        judgeRandom(inFahrenheitAndBack(batch), inFahrenheitAndBack(beer));
    RC_ASSERT(celsius.asPlanned.verdict == fahrenheit.asPlanned.verdict);
    RC_ASSERT(celsius.sure == fahrenheit.sure);
    for (std::size_t i = 0; i < celsius.stages.size(); ++i) {
        const BandJudgement& a = celsius.asPlanned.stages[i];
        const BandJudgement& b = fahrenheit.asPlanned.stages[i];
        RC_ASSERT(std::abs(a.insideMs - b.insideMs) < ms);
        RC_ASSERT(std::abs(a.settlingMs - b.settlingMs) < ms);
        RC_ASSERT(a.excursions.size() == b.excursions.size());
        for (std::size_t k = 0; k < a.excursions.size(); ++k)
            RC_ASSERT(a.excursions[k].cut == b.excursions[k].cut);
    }
}

/// The series with one more reading in the middle of some pieces.
Series refined(const Series& beer)
{
    Series more;
    for (std::size_t i = 0; i < beer.size(); ++i) {
        if (i > 0 && below(2) == 0 && beer.at[i] - beer.at[i - 1] <= std::chrono::minutes{45}) {
            more.at.push_back(beer.at[i - 1] + (beer.at[i] - beer.at[i - 1]) / 2);
            more.value.push_back((beer.value[i - 1] + beer.value[i]) / 2.0);
        }
        more.at.push_back(beer.at[i]);
        more.value.push_back(beer.value[i]);
    }
    return more;
}

RC_GTEST_PROP(BandProperties, AReadingOnTheLineChangesNothing, ())
{
    const Batch batch = randomBatch();
    const Series beer = randomBeer();
    const JudgedBatch before = judgeRandom(batch, beer);
    const JudgedBatch after = judgeRandom(batch, refined(beer));
    RC_ASSERT(before.asPlanned.verdict == after.asPlanned.verdict);
    for (std::size_t i = 0; i < before.stages.size(); ++i) {
        const BandJudgement& a = before.asPlanned.stages[i];
        const BandJudgement& b = after.asPlanned.stages[i];
        RC_ASSERT(std::abs(a.coveredMs - b.coveredMs) < ms);
        RC_ASSERT(std::abs(a.aboveMs - b.aboveMs) < ms);
        RC_ASSERT(std::abs(a.belowMs - b.belowMs) < ms);
        RC_ASSERT(a.excursions.size() == b.excursions.size());
        for (std::size_t k = 0; k < a.excursions.size(); ++k) {
            RC_ASSERT(std::abs(a.excursions[k].peak - b.excursions[k].peak) < 1e-9);
            RC_ASSERT(std::abs(a.excursions[k].areaMs - b.excursions[k].areaMs) < 1e-2);
        }
    }
}

RC_GTEST_PROP(BandProperties, ANarrowerToleranceNeverGivesMoreTimeInside, ())
{
    Batch batch = randomBatch();
    for (Stage& stage : batch.schedule)
        stage.settleAllowed = Hours{0}; // no settling: all covered time is hold time
    const JudgedBatch judgings = judgeRandom(batch, randomBeer());
    for (std::size_t i = 0; i < judgings.stages.size(); ++i) {
        const double planned = judgings.asPlanned.stages[i].insideMs;
        RC_ASSERT(judgings.tighter->stages[i].insideMs <= planned + ms);
        RC_ASSERT(planned <= judgings.wider->stages[i].insideMs + ms);
        RC_ASSERT(judgings.tighter->stages[i].coveredMs == judgings.wider->stages[i].coveredMs);
    }
}

double shareAtOrBelow(const Track& track, double x)
{
    double sum = 0.0;
    forEachPiece(track, 0.0, [&](double t0, double a, double t1, double b, bool) {
        const double low = std::min(a, b);
        const double high = std::max(a, b);
        if (x >= high)
            sum += t1 - t0;
        else if (x > low)
            sum += (t1 - t0) * (x - low) / (high - low);
    });
    return sum / track.coveredMs();
}

RC_GTEST_PROP(QuantileProperties, AreOrderedAndTheSmallestWithTheirShare, ())
{
    const Series beer = randomBeer();
    const Track track = cover(beer, std::chrono::minutes{45}, {beer.at.front(), beer.at.back()});
    RC_PRE(!track.empty());
    const std::array shares{0.05, 0.25, 0.5, 0.75, 0.95};
    const std::vector<double> quantiles = timeQuantiles(track, 0.0, shares);
    RC_ASSERT(std::is_sorted(quantiles.begin(), quantiles.end()));
    for (std::size_t i = 0; i < shares.size(); ++i) {
        // Just above it there is at least the share, just below it less than the share.
        RC_ASSERT(shareAtOrBelow(track, quantiles[i] + 1e-9) >= shares[i] - 1e-7);
        RC_ASSERT(shareAtOrBelow(track, quantiles[i] - 1e-6) < shares[i] + 1e-7);
        RC_ASSERT(quantiles[i] >= *std::min_element(beer.value.begin(), beer.value.end()));
        RC_ASSERT(quantiles[i] <= *std::max_element(beer.value.begin(), beer.value.end()));
    }
}

/// Increasing edges, sometimes exactly at values of the track.
std::vector<double> randomEdges()
{
    std::vector<double> edges{sixteenths(14, 20)};
    for (int i = between(1, 12); i > 0; --i)
        edges.push_back(edges.back() + (below(3) == 0 ? 0.011 : between(1, 16) / 16.0));
    return edges;
}

RC_GTEST_PROP(DistributionProperties, SharesMakeTheWholeAndAgreeWithTheSharesBelow, ())
{
    const Series beer = randomBeer();
    const Track track = cover(beer, std::chrono::minutes{45}, {beer.at.front(), beer.at.back()});
    RC_PRE(!track.empty());
    const std::vector<double> edges = randomEdges();
    const Distribution spread = distributionOf(track, 0.0, edges);
    RC_ASSERT(std::abs(spread.totalMs() - track.coveredMs()) < 1e-3);
    double sum = spread.shareBelow() + spread.shareAbove();
    for (std::size_t i = 0; i < spread.binMs.size(); ++i) {
        RC_ASSERT(spread.binMs[i] >= 0.0);
        // Up to the next edge: at least the share just below it, at most the share at it.
        sum += spread.share(i);
        const double reached = sum - spread.shareAbove();
        RC_ASSERT(reached >= shareAtOrBelow(track, edges[i + 1] - 1e-5) - 1e-4);
        RC_ASSERT(reached <= shareAtOrBelow(track, edges[i + 1] + 1e-5) + 1e-4);
    }
    RC_ASSERT(std::abs(sum - 1.0) < 1e-9);
}

RC_GTEST_PROP(DistributionProperties, AgreesWithTheBandAtItsEdges, ())
{
    Batch batch = randomBatch();
    for (Stage& stage : batch.schedule)
        stage.tolerance.reset(); // one band for all stages
    const JudgedBatch judgement = judgeRandom(batch, randomBeer());
    const double tolerance = batch.tolerance->kelvins();
    const Distribution spread =
        distributionOf(judgement, bandEdges(tolerance, {-9.0, 9.0}, between(1, 5), 1));
    const BandTotals& totals = judgement.asPlanned.totals;
    RC_ASSERT(std::abs(spread.aboveMs - totals.aboveMs) < ms);
    RC_ASSERT(std::abs(spread.belowMs - totals.belowMs) < ms);
    RC_ASSERT(std::abs(spread.totalMs() - totals.coveredMs) < ms);
    if (totals.coveredMs > 0.0)
        RC_ASSERT(std::abs(1.0 - spread.shareAbove() - spread.shareBelow() -
                           *totals.insideShare()) < 1e-6);
}

RC_GTEST_PROP(DistributionProperties, AQuantileHasItsShareBelow, ())
{
    const Series beer = randomBeer();
    const Track track = cover(beer, std::chrono::minutes{45}, {beer.at.front(), beer.at.back()});
    RC_PRE(!track.empty());
    const std::array shares{0.05, 0.5, 0.95};
    const std::vector<double> quantiles = timeQuantiles(track, 0.0, shares);
    for (std::size_t i = 0; i < shares.size(); ++i) {
        const Distribution at =
            distributionOf(track, 0.0, std::array{quantiles[i] - 1e-5, quantiles[i] + 1e-5});
        // Strictly below the quantile at most its share, at or below it at least its share.
        RC_ASSERT(at.shareBelow() <= shares[i] + 1e-6);
        RC_ASSERT(at.shareBelow() + at.share(0) >= shares[i] - 1e-6);
    }
}

RC_GTEST_PROP(MomentProperties, MeanSquareIsVarianceAndSquaredMean, ())
{
    const Series beer = randomBeer();
    const Track track = cover(beer, std::chrono::minutes{45}, {beer.at.front(), beer.at.back()});
    RC_PRE(!track.empty());
    const TimeMoments moments = momentsOf(track, 0.0);
    const double spread = moments.standardDeviation();
    RC_ASSERT(std::abs(moments.rootMeanSquare() * moments.rootMeanSquare() - spread * spread -
                       moments.mean() * moments.mean()) < 1e-9);
    RC_ASSERT(std::abs(moments.mean()) <= moments.meanAbsolute() + 1e-9);
    RC_ASSERT(moments.meanAbsolute() <= moments.rootMeanSquare() + 1e-9);
    // Two halves add up to the total.
    const double middle = track.ms.back() / 2.0;
    TimeMoments halves = momentsOf(clip(track, 0.0, middle), 0.0);
    halves.add(momentsOf(clip(track, middle, track.ms.back()), 0.0));
    RC_ASSERT(std::abs(halves.mean() - moments.mean()) < 1e-9);
    RC_ASSERT(std::abs(halves.standardDeviation() - spread) < 1e-7);
}

} // namespace
} // namespace holdband::test
