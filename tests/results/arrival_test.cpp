// When the beer of an open batch will be cold: the numbers are those of the example of the method,
// section 8.3; which batches and readings go into them is counted by hand.
#include "core/results/run/arrival_text.h"
#include "core/results/run/explain.h"
#include "core/results/run/past_falls.h"
#include "core/results/run/run_review.h"
#include "tests/results/arrival_logbook.h"

#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using analysis::ArrivalAnswer;
using analysis::ArrivalSource;
using results::ArrivalReview;
using results::RunReview;
using ::testing::HasSubstr;
using ::testing::StartsWith;

const CrashedBatch current{"Now", "2026-03-08T12:00:00Z"};

/// The method's example of a past crash: T = 1 + 17·e^(−0.18 t).
CrashedBatch pastCrash(const std::string& name = "Before",
                       const std::string& pitched = "2026-03-01T12:00:00Z")
{
    CrashedBatch batch{name, pitched, 24.0, false};
    batch.beer = [](double t) { return 1.0 + 17.0 * std::exp(-0.18 * t); };
    return batch;
}

class Arrival : public ::testing::Test {
protected:
    RunReview review(const std::vector<CrashedBatch>& batches, const std::string& top = {},
                     const std::string& now = {}, const std::string& name = "Now")
    {
        m_logbook.reset();
        m_files.emplace();
        m_logbook = loadCrashes(*m_files, batches, top, now);
        auto read = results::reviewRun(*m_logbook, name);
        EXPECT_TRUE(read) << read.error().sentence();
        return read ? std::move(*read) : RunReview();
    }

    /// Of a batch whose beer follows a curve, as long as it was read.
    RunReview reviewOf(double hours, std::function<double(double)> beer)
    {
        CrashedBatch batch = current;
        batch.readHours = hours;
        batch.beer = std::move(beer);
        return review({batch});
    }

    std::optional<DescribedLogbook> m_files;
    std::unique_ptr<store::LogbookFile> m_logbook;
};

TEST_F(Arrival, IsForecastFromTheBeersOwnCurveWithoutAPastCrash)
{
    const RunReview read = review({current});
    ASSERT_TRUE(read.arrival);
    const ArrivalReview& arrival = *read.arrival;
    EXPECT_EQ(arrival.label, "Crash");
    EXPECT_EQ(arrival.forecast.answer, ArrivalAnswer::hours);
    EXPECT_EQ(arrival.forecast.source, ArrivalSource::curve);
    EXPECT_NEAR(*arrival.forecast.lowH, 3.47796, 1e-4) << "method, section 8.3";
    EXPECT_NEAR(*arrival.forecast.highH, 10.3118, 1e-4);
    EXPECT_NEAR(*arrival.forecast.middleH, 5.99614, 1e-4);
    EXPECT_EQ(arrival.now, current.lastAt());
    EXPECT_NEAR(arrival.beer.celsius(), 2.0 + 16.0 * std::exp(-1.8), 1e-9);
    EXPECT_DOUBLE_EQ(arrival.edge.celsius(), 3.0);
    EXPECT_NEAR(hoursBetween(arrival.now, *arrival.middle), 5.99614, 1e-4);
    EXPECT_NEAR(hoursBetween(arrival.now, *arrival.low), 3.47796, 1e-4);
    EXPECT_NEAR(hoursBetween(arrival.now, *arrival.high), 10.3118, 1e-4);
}

TEST_F(Arrival, IsSaidInOneSentence)
{
    // Last reading 9 Mar 21:00; 5.99614 h later 02:59:46, 3.47796 h 00:28:41, 10.3118 h 07:18:42.
    EXPECT_EQ(review({current}).arrival->sentence,
              "Cold in about 6 h, at about 03:00 (00:30 – 07:20).");
    EXPECT_EQ(review({current}, R"("zone":"America/Denver","units":"us",)").arrival->sentence,
              "Cold in about 6 h, at about 21:00 (18:30 – 01:20).")
        << "six hours behind UTC";
}

TEST_F(Arrival, RestsOnThePastCrashesOfTheSetup)
{
    const RunReview read = review({pastCrash(), current});
    ASSERT_TRUE(read.arrival);
    EXPECT_EQ(read.arrival->forecast.source, ArrivalSource::pastCrashes);
    EXPECT_EQ(read.arrival->forecast.pastCrashes, 1u);
    // Readings each 15 min and straight lines between them, as in the method's own example.
    EXPECT_NEAR(*read.arrival->forecast.middleH, 3.53872, 0.01) << "method, section 8.3";
    EXPECT_NEAR(*read.arrival->forecast.lowH, 2.25135, 0.01);
    EXPECT_NEAR(*read.arrival->forecast.highH, 5.56222, 0.01);
    EXPECT_EQ(read.arrival->sentence, "Cold in about 3½ h, at about 00:30 (23:20 – 02:30).");
}

TEST_F(Arrival, TakesNoCrashOfAnotherSetupAndNoWarmUp)
{
    CrashedBatch elsewhere = pastCrash("Elsewhere");
    elsewhere.setup = "Cabinet";
    elsewhere.sensor = "Cabinet beer";
    CrashedBatch warmed = pastCrash("Warmed", "2026-02-01T12:00:00Z");
    warmed.beforeC = 2.0;
    warmed.targetC = 18.0;
    warmed.beer = [](double t) { return 19.0 - 17.0 * std::exp(-0.18 * t); };
    EXPECT_EQ(review({warmed, elsewhere, current}).arrival->forecast.pastCrashes, 0u);
}

TEST_F(Arrival, TakesPastCrashesOfItsKindOnlySharedOrAlone)
{
    // The other vessel's batch ran during the past crash; now this one is alone.
    CrashedBatch beside = pastCrash("Beside", "2026-03-02T00:00:00Z");
    beside.sensor = "Other beer";
    const RunReview alone = review({beside, pastCrash(), current});
    EXPECT_FALSE(alone.arrival->shared);
    EXPECT_EQ(alone.arrival->forecast.pastCrashes, 0u);
    CrashedBatch besideNow = beside;
    besideNow.name = "Beside now";
    besideNow.pitched = "2026-03-08T18:00:00Z";
    besideNow.open = true;
    besideNow.readHours = 3.0;
    const RunReview both = review({besideNow, beside, pastCrash(), current});
    EXPECT_TRUE(both.arrival->shared);
    EXPECT_EQ(both.arrival->forecast.pastCrashes, 2u);
}

TEST_F(Arrival, LooksOnlyAtThePastCrashItselfForOtherBatches)
{
    // The crash arrives at 3 °C after ln(17/2)/0.18 = 11.9 h; the other batch is pitched after 12
    // h.
    CrashedBatch beside = pastCrash("Beside", "2026-03-03T00:00:00Z");
    beside.sensor = "Other beer";
    const RunReview read = review({pastCrash(), beside, current});
    EXPECT_EQ(read.arrival->forecast.pastCrashes, 2u) << "this one, and the other batch's own";
}

TEST_F(Arrival, DoesNotBridgeALongHoleOfAPastCrash)
{
    const auto at = [](double hours) { return instantFromMs(0) + toMilliseconds(Hours{hours}); };
    const Series beer{{at(0), at(1), at(2.5), at(5), at(6)}, {18, 15, 12, 8, 6}, {}};
    const Span span{at(0), at(10)};
    const auto hoursOf = [&](Milliseconds gapLimit) {
        return results::fallOf(beer, span, gapLimit).size();
    };
    EXPECT_EQ(hoursOf(std::chrono::minutes{45}), 3u) << "1.5 h are bridged, 2.5 h are not";
    EXPECT_EQ(hoursOf(std::chrono::hours{3}), 5u) << "the batch's own gap limit allows it";
}

TEST_F(Arrival, IsForASettlingStageOfAnOpenBatchOnly)
{
    CrashedBatch ended = current;
    ended.open = false;
    EXPECT_FALSE(review({ended}).arrival) << "it has ended";
    EXPECT_FALSE(reviewOf(20.0, current.beer).arrival) << "cold after ln(16)/0.2 = 13.9 h";
    CrashedBatch holding = current;
    holding.readHours = -1.0;
    EXPECT_FALSE(review({holding}).arrival) << "not turned down yet";
    EXPECT_THAT(explain(review({ended}), results::Figure::arrival),
                StartsWith("There is nothing to forecast"));
}

TEST_F(Arrival, OfTheFirstStageIsNoQuestion)
{
    // Pitched at 24 °C into 18 °C: it settles, but nothing was turned down.
    CrashedBatch batch = current;
    batch.beforeC = 24.0;
    batch.primaryC = 18.0;
    batch.readHours = -1.0;
    const RunReview read = review({batch});
    EXPECT_EQ(read.figures.stages.at(0).settled, analysis::Settled::notYet);
    EXPECT_FALSE(read.arrival);
}

TEST_F(Arrival, OfAWarmUpIsTheMirrorImage)
{
    CrashedBatch batch = current;
    batch.beforeC = 2.0;
    batch.targetC = 18.0;
    batch.beer = [](double t) { return 18.0 - 16.0 * std::exp(-0.2 * t); };
    const RunReview read = review({batch});
    ASSERT_TRUE(read.arrival);
    EXPECT_EQ(read.arrival->turned, analysis::Turned::up);
    EXPECT_DOUBLE_EQ(read.arrival->edge.celsius(), 17.0);
    EXPECT_NEAR(*read.arrival->forecast.middleH, 5.99614, 1e-4);
    EXPECT_EQ(read.arrival->sentence, "At 18 °C in about 6 h, at about 03:00 (00:30 – 07:20).");
    EXPECT_THAT(explain(read, results::Figure::arrival), HasSubstr("curves of warming"));
}

TEST_F(Arrival, OfASmallStepDownNamesTheTarget)
{
    CrashedBatch batch = current;
    batch.targetC = 14.0; // 4 K lower is no crash; in its band from 15 °C
    batch.beer = [](double t) { return 14.0 + 4.0 * std::exp(-0.1 * t); };
    EXPECT_THAT(review({batch}).arrival->sentence, StartsWith("At 14 °C in about "));
}

TEST_F(Arrival, SaysThatItIsTooEarly)
{
    EXPECT_EQ(reviewOf(1.0, current.beer).arrival->sentence,
              "Too early to say when the beer will be at 2 °C.");
    const auto slow = [](double t) { return 18.0 - 0.1 * t; };
    EXPECT_EQ(reviewOf(4.0, slow).arrival->sentence,
              "Too early to say when the beer will be at 2 °C: it has hardly moved.");
    CrashedBatch withPast = current;
    withPast.readHours = 0.25;
    const RunReview soon = review({pastCrash(), withPast});
    EXPECT_EQ(soon.arrival->sentence, "Too early to say when the beer will be at 2 °C.");
    EXPECT_THAT(explain(soon, results::Figure::arrival), HasSubstr("half an hour"));
}

TEST_F(Arrival, SaysWhereItLevelsOff)
{
    // To 4 °C, above the band's edge at 3 °C: 39.2 °F.
    const auto beer = [](double t) { return 4.0 + 14.0 * std::exp(-0.3 * t); };
    const RunReview read = reviewOf(24.0, beer);
    EXPECT_EQ(read.arrival->forecast.answer, ArrivalAnswer::willNotArrive);
    EXPECT_EQ(read.arrival->sentence, "Will not come to 2 °C at this rate: levels off near 4 °C.");
    EXPECT_THAT(explain(read, results::Figure::arrival), HasSubstr("levels off at 4.0 °C."));
    CrashedBatch batch = current;
    batch.readHours = 24.0;
    batch.beer = beer;
    EXPECT_EQ(review({batch}, R"("units":"us",)").arrival->sentence,
              "Will not come to 35.6 °F at this rate: levels off near 39 °F.");
}

TEST_F(Arrival, SaysThatItMayNotArrive)
{
    // Levels off at 4 °C; before 6 h that is not claimed.
    const auto beer = [](double t) { return 4.0 + 14.0 * std::exp(-0.5 * t); };
    const RunReview read = reviewOf(5.0, beer);
    ASSERT_EQ(read.arrival->forecast.answer, ArrivalAnswer::openTop);
    EXPECT_THAT(read.arrival->sentence, StartsWith("Not cold before about "));
    EXPECT_THAT(read.arrival->sentence, HasSubstr(", and may not get there."));
    EXPECT_FALSE(read.arrival->high);
}

TEST_F(Arrival, IsDatedWhereTheLogIsSilent)
{
    // The gap limit is 45 min, three times the interval.
    EXPECT_EQ(review({current}, {}, "2026-03-09T21:40:00Z").arrival->sentence,
              "Cold in about 6 h, at about 03:00 (00:30 – 07:20).");
    EXPECT_EQ(
        review({current}, {}, "2026-04-01T00:00:00Z").arrival->sentence,
        "Cold at about 10 Mar 03:00 (10 Mar 00:30 – 10 Mar 07:20). Last reading 9 Mar 21:00.");
}

TEST_F(Arrival, IsDatedOnPaper)
{
    EXPECT_EQ(
        review({current}).arrival->datedSentence,
        "Cold at about 10 Mar 03:00 (10 Mar 00:30 – 10 Mar 07:20). Last reading 9 Mar 21:00.");
    EXPECT_EQ(reviewOf(1.0, current.beer).arrival->datedSentence,
              "Too early to say when the beer will be at 2 °C. Last reading 9 Mar 13:00.");
}

TEST_F(Arrival, IsExplained)
{
    EXPECT_EQ(explain(review({current}), results::Figure::arrival),
              "From the beer's last readings: curves of cooling that fit them, and when each "
              "reaches 3.0 °C, the edge of the band. No past crash on Loop helps: none came from "
              "4.6 °C to there. The interval is meant to hold nine times in ten.");
    EXPECT_EQ(explain(review({pastCrash(), current}), results::Figure::arrival),
              "From 1 past crash on Loop: the hours that it took from 4.6 °C, where the beer is "
              "now, to 3.0 °C, the edge of its band. They are scaled by the pace of this one so "
              "far. The interval is meant to hold nine times in ten; by how much one differs from "
              "another is partly assumed.");
}

TEST_F(Arrival, MovesWithEachReading)
{
    EXPECT_LT(*reviewOf(10.0, current.beer).arrival->forecast.highH,
              *reviewOf(9.0, current.beer).arrival->forecast.highH);
}

TEST(ArrivalText, ALevelIsNeverRoundedIntoTheBand)
{
    ArrivalReview arrival;
    arrival.target = Temperature::celsius(2.0);
    arrival.edge = Temperature::celsius(3.0);
    arrival.forecast.answer = ArrivalAnswer::willNotArrive;
    const auto levelsOffAt = [&](double celsius) {
        arrival.forecast.levelsOffC = celsius;
        return results::arrivalSentence(arrival, {TemperatureUnit::celsius}, Zone::utc());
    };
    EXPECT_THAT(levelsOffAt(3.6), HasSubstr("near 4 °C."));
    EXPECT_THAT(levelsOffAt(3.3), HasSubstr("near 3.3 °C."));
    arrival.turned = analysis::Turned::up; // to 18 ± 1 °C
    arrival.edge = Temperature::celsius(17.0);
    EXPECT_THAT(levelsOffAt(16.4), HasSubstr("near 16 °C."));
    EXPECT_THAT(levelsOffAt(16.7), HasSubstr("near 16.7 °C."));
}

TEST(ArrivalText, LengthsAreRough)
{
    using results::roughLengthText;
    EXPECT_EQ(roughLengthText(0.01), "5 min");
    EXPECT_EQ(roughLengthText(0.4), "25 min");
    EXPECT_EQ(roughLengthText(0.75), "1 h");
    EXPECT_EQ(roughLengthText(1.3), "1½ h");
    EXPECT_EQ(roughLengthText(3.47796), "3½ h");
    EXPECT_EQ(roughLengthText(4.7), "4½ h");
    EXPECT_EQ(roughLengthText(4.8), "5 h");
    EXPECT_EQ(roughLengthText(10.3118), "10 h");
    EXPECT_EQ(roughLengthText(47.4), "47 h");
    EXPECT_EQ(roughLengthText(60.0), "2½ days");
}

} // namespace
} // namespace holdband::test
