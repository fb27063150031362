// Two batches or two setups as text: the sentences, the table and the notes.
#include "core/results/comparison/side_by_side.h"
#include "tests/results/described_logbook.h"

namespace holdband::test {
namespace {

using results::SideBySide;

/// A log with one value every 30 min from 1 March 00:00 (UTC), for that many hours.
std::string level(const std::string& header, double celsius, int hours)
{
    std::string log = "Time," + header + "\n";
    for (int half = 0; half <= 2 * hours; ++half)
        log +=
            std::to_string(1'772'323'200LL + 1800LL * half) + "," + std::to_string(celsius) + "\n";
    return log;
}

struct Plan {
    std::string units = "metric";
    std::string batchA = R"("ended":"2026-03-03 00:00",)";
    std::string batchB = R"("ended":"2026-03-03 00:00",)";
    std::string metersB =
        R"({"name":"MB","setup":"Cabinet","resolution_kwh":0.01,"accuracy_pct":1},)";
    std::string readingsB = R"(,{"meter":"MB","at":"2026-03-01 00:00","kwh":1},
        {"meter":"MB","at":"2026-03-03 00:00","kwh":3.4})";
    double beerB = 20.0;
};

std::string describedPlan(const Plan& plan)
{
    const auto batch = [](const std::string& name, const std::string& setup,
                          const std::string& sensor, const std::string& more) {
        return R"({"name":")" + name + R"(","setup":")" + setup + R"(","beer_sensor":")" + sensor +
               R"(","pitched":"2026-03-01 00:00","tolerance_c":1,)" + more +
               R"("schedule":[{"stage":"Hold","target_c":20}]})";
    };
    return R"({"holdband":1,"units":")" + plan.units +
           R"(","setups":[{"name":"Loop"},{"name":"Cabinet"}],
      "sensors":[{"name":"SA","reads":"beer","accuracy_c":0.3},{"name":"SB","reads":"beer","accuracy_c":0.5},
                 {"name":"Watts","reads":"power_w","setup":"Cabinet"}],
      "meters":[)" +
           plan.metersB + R"({"name":"MA","setup":"Loop","resolution_kwh":0.01,"accuracy_pct":1}],
      "batches":[)" +
           batch("A", "Loop", "SA", plan.batchA) + "," + batch("B", "Cabinet", "SB", plan.batchB) +
           R"json(],"files":[{"file":"a.csv","columns":{"SA":"SA (C)"}},{"file":"b.csv","columns":{"SB":"SB (C)"}}],
      "meter_readings":[{"meter":"MA","at":"2026-03-01 00:00","kwh":0},
                        {"meter":"MA","at":"2026-03-03 00:00","kwh":4.8})json" +
           plan.readingsB + "]}";
}

SideBySide reviewOfPlan(const Plan& plan, const std::string& a = "A", const std::string& b = "B")
{
    const DescribedLogbook files;
    files.write("a.csv", level("SA (C)", 20.5, 48));
    files.write("b.csv", level("SB (C)", plan.beerB, 48));
    const auto logbook = files.load(describedPlan(plan), "2026-03-10T00:00:00Z");
    const auto compared = results::reviewSideBySide(*logbook, a, b);
    EXPECT_TRUE(compared) << compared.error().sentence();
    return compared.value_or(SideBySide{});
}

const results::NoteText* noteOf(const SideBySide& review, const std::string& start)
{
    for (const results::NoteText& note : review.text.notes) {
        if (note.note.starts_with(start))
            return &note;
    }
    return nullptr;
}

/// The fixed name of the measure that a note of `review` touches.
std::string_view touchedBy(const SideBySide& review, const results::NoteText& note)
{
    return results::measureName(review.notes.at(&note - review.text.notes.data()).touches);
}

TEST(SideBySideTexts, GiveTheRatioOfEnergiesWithItsBoundsOverTheCommonTime)
{
    // (4.79 × 0.99) / (2.41 × 1.01) = 1.948 and (4.81 × 1.01) / (2.39 × 0.99) = 2.053.
    EXPECT_EQ(reviewOfPlan({}).text.energySentence,
              "Over the same 2 days A used 2.00 times B's energy (1.95 – 2.05): 4.80 kWh against "
              "2.40 kWh.");
}

TEST(SideBySideTexts, ReportWhatIsTooCloseToCall)
{
    Plan plan;
    plan.readingsB = R"(,{"meter":"MB","at":"2026-03-01 00:00","kwh":1},
        {"meter":"MB","at":"2026-03-03 00:00","kwh":5.78})";
    const SideBySide close = reviewOfPlan(plan);
    EXPECT_TRUE(
        close.text.energySentence.ends_with("4.80 kWh against 4.78 kWh, which is too close to "
                                            "call."))
        << close.text.energySentence;
    EXPECT_EQ(close.text.temperatureSentence,
              "A stayed in the band of ±1 °C for all of the 2 days on target and recorded; B "
              "stayed in the band of ±1 °C for all of the 2 days on target and recorded. Typical "
              "deviation 0.5 °C against 0 °C, too close to call with these sensors.");
}

TEST(SideBySideTexts, AMissedTargetPutsNobodyAhead)
{
    Plan plan;
    plan.units = "us";
    plan.beerB = 21.9; // 1.9 K off from first to last
    const SideBySide review = reviewOfPlan(plan);
    EXPECT_NE(review.text.temperatureSentence.find("B missed the target of Hold"),
              std::string::npos)
        << review.text.temperatureSentence;
    EXPECT_EQ(review.text.temperatureSentence.find("held closer"), std::string::npos);
    const results::NoteText* missed = noteOf(review, "targets were missed");
    ASSERT_TRUE(missed);
    EXPECT_EQ(missed->note, "targets were missed: 0 for A, 1 for B");
    const results::NoteText* sensors = noteOf(review, "the sensors differ");
    ASSERT_TRUE(sensors);
    EXPECT_EQ(sensors->note, "the sensors differ: ±0.54 °F for A, ±0.9 °F for B");
    EXPECT_EQ(touchedBy(review, *sensors), "rms_dev_c");
}

TEST(SideBySideTexts, AnOpenBatchAndOneWithoutDataReadAsSentences)
{
    Plan plan;
    plan.batchA = "";
    plan.batchB = R"("ended":"2026-03-01 06:00",)";
    const DescribedLogbook files;
    files.write("a.csv", level("SA (C)", 20.5, 48));
    files.write("b.csv", "Time,SB (C)\n2026-03-02 00:00,20\n2026-03-02 01:00,20\n");
    const auto logbook = files.load(describedPlan(plan), "2026-03-10T00:00:00Z");
    const auto compared = results::reviewSideBySide(*logbook, "A", "B");
    ASSERT_TRUE(compared);
    EXPECT_TRUE(compared->text.temperatureSentence.starts_with(
        "A, so far: stayed in the band of ±1 °C for all of the 2 days on target and recorded; B, "
        "not enough data: "))
        << compared->text.temperatureSentence;
    const results::NoteText* logging = noteOf(*compared, "logged");
    ASSERT_TRUE(logging);
    EXPECT_EQ(logging->note, "logged every 30 min for A, not at all for B");
    const results::NoteText* durations = noteOf(*compared, "they ran");
    ASSERT_TRUE(durations);
    EXPECT_EQ(durations->note, "they ran for unequal times: 2 days for A, 6 h for B");
}

TEST(SideBySideTexts, ReportThatNothingIsMeteredInBoth)
{
    Plan plan;
    plan.readingsB = "";
    const SideBySide review = reviewOfPlan(plan);
    EXPECT_EQ(review.text.energySentence, "Their energies can't be compared: no time is metered in "
                                          "both.");
    EXPECT_EQ(review.text.measures[0].a, "–");
    EXPECT_EQ(review.text.measures[0].ahead, "");
    EXPECT_TRUE(noteOf(review, "there is no elapsed time that is metered in both"));
}

TEST(SideBySideTexts, ReportThatAMetersAccuracyIsAssumed)
{
    Plan plan;
    plan.metersB = R"({"name":"MB","setup":"Cabinet","resolution_kwh":0.01},)";
    const SideBySide review = reviewOfPlan(plan);
    const results::NoteText* assumed = noteOf(review, "the accuracy");
    ASSERT_TRUE(assumed);
    EXPECT_EQ(assumed->note, "the accuracy of a meter of B is unknown, 2 % is assumed");
}

TEST(SideBySideTexts, SetupsAreMeansOverTheirFinishedBatches)
{
    const SideBySide review = reviewOfPlan({}, "Loop", "Cabinet");
    EXPECT_TRUE(review.ofSetups);
    EXPECT_EQ(review.batchesA, std::vector<std::string>{"A"});
    EXPECT_EQ(review.text.energySentence,
              "For each batch Loop used 2.00 times Cabinet's energy: 4.80 kWh against 2.40 kWh, "
              "from too few batches to say how sure: it takes three of each.");
    EXPECT_EQ(review.text.temperatureSentence,
              "Means are over 1 batch of Loop and 1 batch of Cabinet. "
              "Typical deviation 0.5 °C against 0 °C.");
}

TEST(SideBySideTexts, RefuseWhatCantBeCompared)
{
    const DescribedLogbook files;
    files.write("a.csv", level("SA (C)", 20.5, 48));
    files.write("b.csv", level("SB (C)", 20.0, 48));
    Plan plan;
    plan.batchB = "";
    const auto logbook = files.load(describedPlan(plan), "2026-03-10T00:00:00Z");
    const auto why = [&](const char* a, const char* b) {
        const auto compared = results::reviewSideBySide(*logbook, a, b);
        EXPECT_FALSE(compared) << a << " " << b;
        return compared ? std::string() : compared.error().sentence();
    };
    EXPECT_EQ(why("A", "C"), "there is no batch and no setup \"C\"; did you mean A, B?");
    EXPECT_EQ(why("A", "A"), "\"A\" can't be compared with itself; name two.");
    EXPECT_EQ(why("A", "Loop"), "one of \"A\" and \"Loop\" is a batch, the other a setup; compare "
                                "two batches or two setups.");
    EXPECT_EQ(why("Loop", "Cabinet"), "the setup \"Cabinet\" has no finished batch; end one, or "
                                      "compare others.");
}

TEST(SideBySideTexts, ReportWhichSideHasNoMeter)
{
    Plan plan;
    plan.metersB = "";
    plan.readingsB = "";
    std::string described_ = describedPlan(plan);
    const std::string watts = R"(,
                 {"name":"Watts","reads":"power_w","setup":"Cabinet"})";
    described_.erase(described_.find(watts), watts.size());
    const DescribedLogbook files;
    files.write("a.csv", level("SA (C)", 20.5, 48));
    files.write("b.csv", level("SB (C)", 20.0, 48));
    const auto logbook = files.load(described_, "2026-03-10T00:00:00Z");
    const auto review = results::reviewSideBySide(*logbook, "A", "B");
    ASSERT_TRUE(review) << review.error().sentence();
    EXPECT_EQ(review->text.energySentence,
              "Their energies can't be compared: Cabinet has no meter and no power log.");
    const results::NoteText* note = noteOf(*review, "there is no elapsed time");
    ASSERT_TRUE(note);
    EXPECT_EQ(note->effect, "energies can't be compared: B was not metered");
    EXPECT_EQ(review->text.money.why, "The total can't be drawn: Loop has no parts listed.");
}

TEST(SideBySideTexts, OnePartlyMeteredIsComparedOverThatPart)
{
    Plan plan;
    plan.readingsB = R"(,{"meter":"MB","at":"2026-03-01 12:00","kwh":1},
        {"meter":"MB","at":"2026-03-02 12:00","kwh":2.2})";
    const SideBySide review = reviewOfPlan(plan);
    // 24 of 48 h: A 2.4 kWh, B 1.2.
    EXPECT_TRUE(review.text.energySentence.starts_with("Over the same 24 h A used 2.00 times B's"))
        << review.text.energySentence;
    EXPECT_DOUBLE_EQ(review.alignment.commonHours, 24.0);
    const results::NoteText* note = noteOf(review, "not metered throughout");
    ASSERT_TRUE(note);
    EXPECT_EQ(note->note, "not metered throughout: 100.0 % of the run for A, 50.0 % of the run "
                          "for B");
}

/// Two batches of one setup with one meter; B is pitched `later` hours after A.
SideBySide onOneMeter(int later)
{
    const auto at = [](int hours) {
        return rfc3339Utc(instantFromMs(1'772'323'200'000LL) + std::chrono::hours{hours});
    };
    const auto batch = [&](const std::string& name, const std::string& sensor, int start) {
        return R"({"name":")" + name + R"(","setup":"Loop","beer_sensor":")" + sensor +
               R"(","tolerance_c":1,"pitched":")" + at(start) + R"(","ended":")" + at(start + 24) +
               R"(","schedule":[{"stage":"Hold","target_c":20}]})";
    };
    const std::string text =
        R"({"holdband":1,"setups":[{"name":"Loop"}],"sensors":[{"name":"SA","reads":"beer",
        "accuracy_c":0.3},{"name":"SB","reads":"beer","accuracy_c":0.3}],"meters":[{"name":"M",
        "setup":"Loop","resolution_kwh":0.01}],"batches":[)" +
        batch("A", "SA", 0) + "," + batch("B", "SB", later) +
        R"json(],"files":[{"file":"a.csv","columns":{"SA":"SA (C)"}},{"file":"b.csv","columns":{"SB":"SB (C)"}}],
        "meter_readings":[{"meter":"M","at":")json" +
        at(0) + R"(","kwh":0},{"meter":"M","at":")" + at(48) + R"(","kwh":4.8}]})";
    const DescribedLogbook files;
    files.write("a.csv", level("SA (C)", 20.0, 48));
    files.write("b.csv", level("SB (C)", 20.0, 48));
    const auto logbook = files.load(text, "2026-03-10T00:00:00Z");
    const auto review = results::reviewSideBySide(*logbook, "A", "B");
    EXPECT_TRUE(review) << review.error().sentence();
    return review.value_or(SideBySide{});
}

TEST(SideBySideTexts, TwoBatchesOnOneMeterAtTheSameTimeShareItsEnergy)
{
    const SideBySide review = onOneMeter(12);
    const results::NoteText* note = noteOf(review, "both ran at once on one meter for 12 h");
    ASSERT_TRUE(note);
    EXPECT_EQ(note->effect, "of what it read then each is given an even share, so that time can't "
                            "tell them apart");
    // 100 W: 12 h alone and 12 h at half.
    EXPECT_NEAR(review.measures[0].a->value, 1.8, 1e-9);
    EXPECT_NEAR(review.measures[0].b->value, 1.8, 1e-9);
}

TEST(SideBySideTexts, TwoBatchesOnOneMeterAtDifferentTimes)
{
    const SideBySide review = onOneMeter(24);
    const results::NoteText* note = noteOf(review, "one meter measured both");
    ASSERT_TRUE(note);
    EXPECT_EQ(touchedBy(review, *note), "energy_kwh");
    EXPECT_EQ(note->title, "Energy, kWh");
    EXPECT_FALSE(noteOf(review, "both ran at once"));
    EXPECT_FALSE(noteOf(review, "the accuracy")) << "its class does not matter";
}

/// A 24 h hold at 20 °C, then a crash to 2 °C; B's begins 12 h later. The beer follows immediately.
SideBySide crashed(const std::optional<std::string>& from, std::string* why = nullptr)
{
    Plan plan;
    std::string text = describedPlan(plan);
    const std::string hold = R"("schedule":[{"stage":"Hold","target_c":20}])";
    for (const char* hours : {"24", "36"}) {
        const std::string both = R"("schedule":[{"stage":"Hold","target_c":20,"hours":)" +
                                 std::string(hours) + R"(},{"stage":"Crash","target_c":2}])";
        text.replace(text.find(hold), hold.size(), both);
    }
    const auto crash = [](const std::string& header, int at) {
        std::string log = "Time," + header + "\n";
        for (int half = 0; half <= 96; ++half)
            log += std::to_string(1'772'323'200LL + 1800LL * half) +
                   (half <= 2 * at ? ",20\n" : ",2\n");
        return log;
    };
    const DescribedLogbook files;
    files.write("a.csv", crash("SA (C)", 24));
    files.write("b.csv", crash("SB (C)", 36));
    const auto logbook = files.load(text, "2026-03-10T00:00:00Z");
    results::SideBySideRequest request;
    request.a = "A";
    request.b = "B";
    request.fromStage = from;
    const auto review = results::reviewSideBySide(*logbook, request);
    if (why)
        *why = review ? std::string() : review.error().sentence();
    else
        EXPECT_TRUE(review) << review.error().sentence();
    return review.value_or(SideBySide{});
}

TEST(SideBySideTexts, AlignFromACommonStage)
{
    const SideBySide pitching = crashed({});
    EXPECT_EQ(pitching.alignment.offered, (std::vector<std::string>{"Hold", "Crash"}));
    EXPECT_EQ(pitching.text.alignedFrom, "pitching");
    EXPECT_DOUBLE_EQ(pitching.alignment.commonHours, 48.0);
    EXPECT_DOUBLE_EQ(*pitching.deviations.crashA, 24.0);
    EXPECT_DOUBLE_EQ(*pitching.deviations.crashB, 36.0);
    const SideBySide review = crashed("Crash");
    // From 24 h of A and 36 h of B 12 h are common: 1.2 kWh against 0.6.
    EXPECT_DOUBLE_EQ(review.alignment.commonHours, 12.0);
    EXPECT_NEAR(review.measures[0].a->value, 1.2, 1e-9);
    EXPECT_NEAR(review.measures[0].b->value, 0.6, 1e-9);
    EXPECT_TRUE(review.text.energySentence.starts_with(
        "Over the same 12 h from the start of Crash on, A used 2.00 times B's energy"))
        << review.text.energySentence;
    EXPECT_FALSE(review.measures[1].a) << "nothing lies before the crash";
    EXPECT_DOUBLE_EQ(*review.deviations.crashB, 0.0);
    EXPECT_DOUBLE_EQ(review.ratioCurve.back().elapsedHours, 12.0);
    ASSERT_TRUE(review.deviations.a);
    EXPECT_DOUBLE_EQ(review.deviations.a->track.ms.front(), -24.0 * 3.6e6) << "pitching";
    EXPECT_FALSE(review.deviations.a->settling.empty());
}

TEST(SideBySideTexts, NameTheCommonStages)
{
    std::string why;
    crashed("Rest", &why);
    EXPECT_EQ(why, "there is no stage \"Rest\" in both \"A\" and \"B\"; in both there are "
                   "Hold, Crash; or align from pitching.");
}

TEST(SideBySideTexts, ReportThatNoStageIsCommon)
{
    Plan plan;
    std::string text = describedPlan(plan);
    const std::string hold = R"({"stage":"Hold")";
    text.replace(text.find(hold), hold.size(), R"({"stage":"Primary")");
    const DescribedLogbook files;
    files.write("a.csv", level("SA (C)", 20.5, 48));
    files.write("b.csv", level("SB (C)", 20.0, 48));
    const auto logbook = files.load(text, "2026-03-10T00:00:00Z");
    results::SideBySideRequest request;
    request.a = "A";
    request.b = "B";
    EXPECT_TRUE(results::reviewSideBySide(*logbook, request)->alignment.offered.empty());
    request.fromStage = "Hold";
    const auto refused = results::reviewSideBySide(*logbook, request);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().sentence(), "there is no stage \"Hold\" in both \"A\" and \"B\"; "
                                          "they have no stage in common: align from pitching.");
}

} // namespace
} // namespace holdband::test
