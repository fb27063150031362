// The verdict as a sentence: every form, in both units. Figures by hand.
#include "core/results/run/verdict_text.h"
#include "tests/analysis/builders.h"

#include <QCoreApplication>
#include <QTranslator>
#include <gtest/gtest.h>
#include <string_view>

namespace holdband::test {
namespace {

using analysis::RunFigures;
using analysis::RunInput;
using results::VerdictText;

constexpr auto inCelsius = TemperatureUnit::celsius;
constexpr auto fahrenheit = TemperatureUnit::fahrenheit;

struct ShownVerdict {
    VerdictText words;
    std::string mark;
};

ShownVerdict shownVerdict(const Batch& batch, Series beer, std::optional<double> accuracy,
                          const results::VerdictFormat& format = inCelsius)
{
    const RunInput input = runInput(batch, std::move(beer), 90, accuracy);
    RunFigures figures;
    figures.judged = analysis::judgeBatch(analysis::placeStages(batch, input.span.end),
                                          input.judging, input.settings);
    return {results::verdictWords(input, figures, format),
            results::verdictMark(figures, input.judging.open)};
}

Batch oneHold(std::optional<double> endedHour)
{
    return batchOf({hold("Hold", 20.0)}, endedHour);
}

Batch withCrash()
{
    return batchOf({hold("Primary", 20.0, 4.0), hold("Crash", 5.0)}, 8.0);
}

/// An hourly log.
Series hourly(std::initializer_list<double> values)
{
    Series log;
    for (const double value : values) {
        log.at.push_back(hour(static_cast<double>(log.at.size())));
        log.value.push_back(value);
    }
    return log;
}

/// Above 21 from 1:40 to 2:20, by 0.5 K.
Series oneExcursion()
{
    return hourly({20, 20, 21.5, 20, 20});
}

TEST(VerdictText, LeftTheBandOnceTwiceAndMoreOften)
{
    EXPECT_EQ(shownVerdict(oneHold(4), oneExcursion(), {}).words.headline,
              "Left the band once: 40 min of 4 h held (16.7 %), worst 0.5 °C past the edge");
    EXPECT_EQ(shownVerdict(oneHold(10), workedSeries(), {}).words.headline,
              "Left the band twice: 3 h of 8 h held (37.5 %), worst 1 °C past the edge");
    EXPECT_EQ(
        shownVerdict(oneHold(6), hourly({20, 21.5, 20, 21.5, 20, 18.5, 20}), {}).words.headline,
        "Left the band 3 times: 2 h of 6 h held (33.3 %), worst 0.5 °C past the edge");
}

TEST(VerdictText, DifferencesAreDifferencesInFahrenheitToo)
{
    const ShownVerdict shown = shownVerdict(oneHold(10), workedSeries(), 0.5, fahrenheit);
    EXPECT_EQ(shown.words.headline,
              "Left the band twice: 3 h of 8 h held (37.5 %), worst 1.8 °F past the edge");
    // The beer falls by 2 K in the hour after the peak: the log can hide half of that.
    EXPECT_EQ(
        shown.words.detail,
        "Sure: it also leaves the band widened by the sensor's ±0.9 °F. The log's 1 h between "
        "readings can hide up to 1.8 °F more than the worst that was read. Covered 80.0 % of "
        "the hold time (no data for 2 h).");
    EXPECT_EQ(shownVerdict(oneHold(2), hourly({20, 20, 20}), {}, fahrenheit).words.headline,
              "Stayed in the band of ±1.8 °F for all of the 2 h on target and recorded");
}

TEST(VerdictText, SmallFiguresNeverRoundToZero)
{
    // 0.001 K past the edge, for 1/500 of two hours out of a hundred.
    Series log;
    for (int at = 0; at <= 100; ++at) {
        log.at.push_back(hour(at));
        log.value.push_back(at == 50 ? 21.001 : 20.5);
    }
    const double outsideHours = 2.0 * 0.001 / 0.501;
    ASSERT_LT(outsideHours / 100.0, 0.0005);
    EXPECT_EQ(shownVerdict(oneHold(100), log, {}).words.headline,
              "Left the band once: 14 s of 4.2 days held (less than 0.1 %), worst less than 0.01 "
              "°C past the edge");
}

TEST(VerdictText, StayedInTheBand)
{
    const ShownVerdict shown = shownVerdict(oneHold(4), hourly({20, 20, 20, 20, 20}), 0.5);
    EXPECT_EQ(shown.words.headline,
              "Stayed in the band of ±1 °C for all of the 4 h on target and recorded");
    EXPECT_EQ(shown.words.detail, "Sure: it also stays in the band narrowed by the sensor's ±0.5 "
                                  "°C. Covered 100.0 % of the hold time.");
    EXPECT_EQ(shown.mark, "✓");
    Batch unequal = batchOf({hold("A", 20.0, 2.0), hold("B", 20.0)}, 4.0);
    unequal.schedule[1].tolerance = TemperatureDifference::kelvins(2.0);
    EXPECT_EQ(shownVerdict(unequal, hourly({20, 20, 20, 20, 20}), {}).words.headline,
              "Stayed in the band for all of the 4 h on target and recorded")
        << "there is no single tolerance to name";
}

TEST(VerdictText, IgnoredExcursionsAreNamed)
{
    Batch batch = oneHold(4);
    batch.ignoreShorterThan = std::chrono::hours{1};
    EXPECT_EQ(shownVerdict(batch, oneExcursion(), {}).words.headline,
              "Stayed in the band of ±1 °C: 1 excursion was ignored as shorter than 1 h");
    EXPECT_EQ(shownVerdict(batch, hourly({20, 21.5, 20, 21.5, 20}), {}).words.headline,
              "Stayed in the band of ±1 °C: 2 excursions were ignored as shorter than 1 h");
}

TEST(VerdictText, MissedOneOrSeveralTargets)
{
    const ShownVerdict one =
        shownVerdict(withCrash(), hourly({20, 20, 20, 20, 20, 20, 20, 20, 20}), 0.5);
    EXPECT_EQ(one.words.headline, "Missed the target of Crash: the beer never came into its band");
    EXPECT_EQ(one.words.detail.substr(0, one.words.detail.find(". ") + 1),
              "Sure: it also misses with the band widened by the sensor's ±0.5 °C.");
    EXPECT_EQ(one.mark, "↛");
    EXPECT_EQ(
        shownVerdict(withCrash(), hourly({25, 25, 25, 25, 25, 25, 25, 25, 25}), {}).words.headline,
        "Missed the targets of Primary and Crash: the beer never came into their bands");
    const Batch three = batchOf({hold("A", 20.0, 2.0), hold("B", 10.0, 2.0), hold("C", 5.0)}, 6.0);
    EXPECT_EQ(shownVerdict(three, hourly({25, 25, 25, 25, 25, 25, 25}), {}).words.headline,
              "Missed the targets of A, B and C: the beer never came into their bands");
    Batch open = batchOf({hold("A", 20.0, 2.0), hold("B", 10.0)}, std::nullopt);
    open.schedule[1].tolerance = TemperatureDifference::kelvins(20.0);
    EXPECT_EQ(shownVerdict(open, hourly({25, 25, 25, 25}), {}).words.headline,
              "So far: missed the target of A: the beer never came into its band");
}

TEST(VerdictText, AMissedTargetThatWasVisitedNamesTheDwell)
{
    // 23 → 20 → 26: inside from 0:40 to 1:10 only.
    EXPECT_EQ(shownVerdict(oneHold(2), hourly({23, 20, 26}), {}).words.headline,
              "Missed the target of Hold: the beer never stayed in its band for 1 h");
    const Batch two = batchOf({hold("A", 20.0, 2.0), hold("B", 10.0)}, 4.0);
    EXPECT_EQ(shownVerdict(two, hourly({23, 20, 26, 26, 26}), {}).words.headline,
              "Missed the targets of A and B: the beer never stayed in their bands for 1 h");
}

TEST(VerdictText, WhatTheLogCanHideIsSaidWhereItIsNotable)
{
    const auto detail = [](double peak, const results::VerdictFormat& format) {
        return shownVerdict(oneHold(4), hourly({20.9, 20.9, peak, 20.9, 20.9}), {}, format)
            .words.detail;
    };
    // 0.3 K an hour beside the peak: 0.15 K, more than a tenth of the tolerance of 1 K.
    EXPECT_NE(detail(21.2, fahrenheit)
                  .find(" The log's 1 h between readings can hide up to 0.3 °F "
                        "more than the worst that was read. "),
              std::string::npos)
        << detail(21.2, fahrenheit);
    // 0.15 K an hour: 0.075 K.
    EXPECT_EQ(detail(21.05, inCelsius).find("hide"), std::string::npos);
    EXPECT_EQ(
        shownVerdict(oneHold(4), hourly({20, 20, 20.9, 20, 20}), {}).words.detail.find("hide"),
        std::string::npos)
        << "without an excursion there is no worst";
}

TEST(VerdictText, ALeftBandAlsoNamesMissedTargets)
{
    const ShownVerdict shown =
        shownVerdict(withCrash(), hourly({20, 20, 21.5, 20, 20, 20, 20, 20, 20}), {});
    EXPECT_TRUE(shown.words.headline.starts_with("Left the band once")) << shown.words.headline;
    EXPECT_TRUE(shown.words.detail.ends_with("It also missed Crash.")) << shown.words.detail;
    EXPECT_EQ(shown.mark, "1");
}

TEST(VerdictText, NotEnoughDataNamesWhatWouldBeEnough)
{
    const ShownVerdict none = shownVerdict(oneHold(4), {}, 0.5);
    // 90 % of 4 h.
    EXPECT_EQ(none.words.headline, "Not enough data: there are no beer readings in this batch; 3 h "
                                   "36 min of its 4 h must be covered");
    EXPECT_EQ(none.words.detail, "Covered 0.0 % of the hold time (no data for 4 h).");
    EXPECT_EQ(none.mark, "?");
    // 4 h of 8 h, 7.2 h are needed.
    EXPECT_EQ(
        shownVerdict(oneHold(8), series({{0, 20}, {1, 20}, {2, 20}, {6, 20}, {7, 20}, {8, 20}}), {})
            .words.headline,
        "Not enough data: 50.0 % of 8 h hold time is covered, and 90 % is needed; 3 h 12 min "
        "more of it is enough");
}

TEST(VerdictText, NotEnoughDataYetNamesHowMuchToLog)
{
    const ShownVerdict none = shownVerdict(oneHold({}), {}, 0.5);
    EXPECT_EQ(none.words.headline, "So far: not enough data: there are no beer readings in this "
                                   "batch yet; log or import some");
    EXPECT_EQ(none.mark, "…");
    // 4 h of 8 h so far: after 32 h more, 36 h of 40 h are 90 %.
    const auto gappy = series({{0, 20}, {1, 20}, {2, 20}, {6, 20}, {7, 20}, {8, 20}});
    EXPECT_EQ(shownVerdict(oneHold({}), gappy, {}).words.headline,
              "So far: not enough data: 50.0 % of 8 h hold time is covered, and 90 % is needed; 32 "
              "h more held without a gap would do");
    const ShownVerdict settling = shownVerdict(oneHold({}), hourly({30, 29, 28}), 0.5);
    EXPECT_EQ(settling.words.headline,
              "So far: not enough data: there is no hold time to judge yet; it begins when the "
              "beer is settled in the band of Hold");
    EXPECT_EQ(settling.words.detail, "Settling, 2 h, is not judged.");
    EXPECT_EQ(settling.mark, "…");
}

TEST(VerdictText, TheNeededTimeIsEnoughAndAMinuteLessIsNot)
{
    // 0:30 to 1:10 is a gap: 1 h 10 min of 1 h 50 min are covered; with t more, 70 + t of 110 + t
    // is 90 % at t = 290 min.
    const auto logged = [](int minutes) {
        Series log = series({{0, 20}, {0.5, 20}});
        for (int at = 70; at <= 110 + minutes; ++at) {
            log.at.push_back(zero + std::chrono::minutes{at});
            log.value.push_back(20.0);
        }
        return runInput(oneHold({}), log, 30);
    };
    const RunInput now = logged(0);
    const RunFigures figures = analysis::analyseRun(now);
    EXPECT_TRUE(results::verdictWords(now, figures, inCelsius)
                    .headline.ends_with("; 4 h 50 min more held without a gap would do"))
        << results::verdictWords(now, figures, inCelsius).headline;
    EXPECT_EQ(analysis::analyseRun(logged(290)).judged.asPlanned.verdict,
              analysis::Verdict::stayed);
    EXPECT_EQ(analysis::analyseRun(logged(289)).judged.asPlanned.verdict,
              analysis::Verdict::notEnoughData);
}

TEST(VerdictText, AnOpenBatchIsJudgedSoFar)
{
    const ShownVerdict shown = shownVerdict(oneHold({}), hourly({20, 20, 20}), {});
    EXPECT_EQ(shown.words.headline,
              "So far: stayed in the band of ±1 °C for all of the 2 h on target and recorded");
    EXPECT_EQ(shown.mark, "…");
    const ShownVerdict left = shownVerdict(oneHold({}), oneExcursion(), {});
    EXPECT_TRUE(left.words.headline.starts_with("So far: left the band once")) << left.mark;
    EXPECT_EQ(left.mark, "1");
}

TEST(VerdictText, AnUnknownAccuracyIsReported)
{
    EXPECT_EQ(shownVerdict(oneHold(2), hourly({20, 20, 20}), {}).words.detail,
              "How sure is unknown: the beer sensor's accuracy is not on record. Covered 100.0 % "
              "of the hold time.");
}

TEST(VerdictText, WithinTheSensorsUncertaintyNamesTheDirection)
{
    const auto doubt = [](const Batch& batch, Series beer, double accuracy) {
        const std::string detail = shownVerdict(batch, std::move(beer), accuracy).words.detail;
        return detail.substr(0, detail.find(". ") + 1);
    };
    EXPECT_EQ(doubt(oneHold(4), oneExcursion(), 0.6),
              "Within the sensor's uncertainty of ±0.6 °C: in a band wider by that it would have "
              "stayed.");
    EXPECT_EQ(doubt(oneHold(10), workedSeries(), 1.5),
              "Within the sensor's uncertainty of ±1.5 °C: in a band wider by that there would not "
              "be enough data.");
    EXPECT_EQ(doubt(oneHold(4), hourly({20, 20, 20.7, 20, 20}), 0.5),
              "Within the sensor's uncertainty of ±0.5 °C: in a band narrower by that it would "
              "have left the band.");
    EXPECT_EQ(doubt(oneHold(4), hourly({20.7, 20.7, 20.7, 20.7, 20.7}), 0.5),
              "Within the sensor's uncertainty of ±0.5 °C: in a band narrower by that it would "
              "have missed a target.");
    EXPECT_EQ(
        doubt(withCrash(), hourly({20, 20, 20, 20, 20, 15, 10, 6.2, 6.2}), 0.5),
        "Within the sensor's uncertainty of ±0.5 °C: in a band wider by that it would have stayed.")
        << "missed by 0.2 K";
    // 21.4 is outside ± 1 K and inside ± 1.5 K, where 22 is then an excursion.
    EXPECT_EQ(doubt(oneHold(4), hourly({21.4, 22, 20.5, 20, 20}), 0.5),
              "Within the sensor's uncertainty of ±0.5 °C: in a band wider by that, settling ends "
              "earlier, and after that the beer leaves the band.");
    // 20.9 is inside ± 1 K, which 22 then leaves, as it leaves ± 1.5 K; ± 0.5 K waits for both.
    EXPECT_EQ(doubt(oneHold(4), hourly({20.9, 22, 20.2, 20, 20}), 0.5),
              "Within the sensor's uncertainty of ±0.5 °C: in a band narrower by that, settling "
              "lasts longer, and after that the beer stays in the band.");
    EXPECT_EQ(
        doubt(oneHold(4), hourly({20, 20, 20, 20, 20}), 1.0),
        "Within the sensor's uncertainty of ±1 °C: the band is no wider than the uncertainty.");
}

TEST(VerdictText, NumbersHaveTheReadersDecimalSign)
{
    const ShownVerdict shown = shownVerdict(oneHold(4), oneExcursion(), 0.25, {inCelsius, ','});
    EXPECT_EQ(shown.words.headline,
              "Left the band once: 40 min of 4 h held (16,7 %), worst 0,5 °C past the edge");
    EXPECT_NE(shown.words.detail.find("±0,25 °C"), std::string::npos) << shown.words.detail;
    EXPECT_EQ(shown.words.detail.find("100.0"), std::string::npos) << shown.words.detail;
}

TEST(VerdictText, TheTextForPeopleIsTheNameInEnglish)
{
    using enum analysis::Verdict;
    for (const analysis::Verdict verdict : {stayed, left, missed, notEnoughData})
        EXPECT_EQ(results::verdictWord(verdict), results::verdictName(verdict));
}

/// Another language, with the same parts in a different order.
class Turned : public QTranslator {
public:
    bool isEmpty() const override { return false; }
    QString translate(const char* /*context*/, const char* source, const char* /*one*/,
                      int /*count*/) const override
    {
        const bool left = std::string_view(source).starts_with("left the band %n times: %1");
        return left ? QStringLiteral("bis zu %4 daneben, %1 von %2 (%3), %n-mal") : QString();
    }
};

TEST(VerdictText, AnotherLanguageMayReorderTheSentence)
{
    Turned turned;
    QCoreApplication::installTranslator(&turned);
    const ShownVerdict shown = shownVerdict(oneHold(4), oneExcursion(), 0.25, {inCelsius, ','});
    QCoreApplication::removeTranslator(&turned);
    EXPECT_EQ(shown.words.headline, "Bis zu 0,5 °C daneben, 40 min von 4 h (16,7 %), 1-mal");
}

TEST(VerdictText, SettlingIsNamedStageByStage)
{
    // 22 → 20 over 2 h is inside from 1 h on; 20 → 5 over 3 h is within 6 at 2:48.
    const ShownVerdict shown =
        shownVerdict(withCrash(), hourly({22, 21, 20, 20, 20, 15, 10, 5, 5}), {});
    EXPECT_TRUE(shown.words.detail.ends_with("Settling, 1 h + 2 h 48 min, is not judged."))
        << shown.words.detail;
}

} // namespace
} // namespace holdband::test
