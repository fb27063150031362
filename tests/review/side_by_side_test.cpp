// Two batches or two setups in words: the sentences, the table and the notes.
#include "core/review/side_by_side.h"
#include "tests/review/described_logbook.h"

namespace holdband::test {
namespace {

using review::SideBySide;

/// A log every 30 min from 1 March 00:00 (UTC) for as many hours, one value.
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

std::string described(const Plan& plan)
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

SideBySide reviewOf(const Plan& plan, const std::string& a = "A", const std::string& b = "B")
{
    const DescribedLogbook files;
    files.write("a.csv", level("SA (C)", 20.5, 48));
    files.write("b.csv", level("SB (C)", plan.beerB, 48));
    const auto logbook = files.load(described(plan), "2026-03-10T00:00:00Z");
    const auto compared = review::reviewSideBySide(*logbook, a, b);
    EXPECT_TRUE(compared) << compared.error().sentence();
    return compared.value_or(SideBySide{});
}

const review::NoteWords* noteOf(const SideBySide& review, const std::string& start)
{
    for (const review::NoteWords& note : review.notes) {
        if (note.note.starts_with(start))
            return &note;
    }
    return nullptr;
}

TEST(SideBySideWords, SaysTheRatioOfEnergiesWithItsBoundsOverTheCommonTime)
{
    // (4.79 × 0.99) / (2.41 × 1.01) = 1.948 and (4.81 × 1.01) / (2.39 × 0.99) = 2.053.
    EXPECT_EQ(reviewOf({}).energySentence,
              "Over the same 2 days A used 2.00 times B's energy (1.95 – 2.05): 4.80 kWh against "
              "2.40 kWh.");
}

TEST(SideBySideWords, SaysWhatIsTooCloseToCall)
{
    Plan plan;
    plan.readingsB = R"(,{"meter":"MB","at":"2026-03-01 00:00","kwh":1},
        {"meter":"MB","at":"2026-03-03 00:00","kwh":5.78})";
    const SideBySide close = reviewOf(plan);
    EXPECT_TRUE(close.energySentence.ends_with("4.80 kWh against 4.78 kWh, which is too close to "
                                               "call."))
        << close.energySentence;
    EXPECT_EQ(close.temperatureSentence,
              "A stayed in the band of ±1 °C for all of the 2 days held and seen; B stayed in the "
              "band of ±1 °C for all of the 2 days held and seen. Typical deviation 0.5 °C against "
              "0 °C, too close to call with these sensors.");
}

TEST(SideBySideWords, AMissedTargetPutsNobodyAhead)
{
    Plan plan;
    plan.units = "us";
    plan.beerB = 21.9; // 1.9 K off from first to last
    const SideBySide review = reviewOf(plan);
    EXPECT_NE(review.temperatureSentence.find("B missed the target of Hold"), std::string::npos)
        << review.temperatureSentence;
    EXPECT_EQ(review.temperatureSentence.find("held closer"), std::string::npos);
    const review::NoteWords* missed = noteOf(review, "targets were missed");
    ASSERT_TRUE(missed);
    EXPECT_EQ(missed->note, "targets were missed: 0 for A, 1 for B");
    const review::NoteWords* sensors = noteOf(review, "the sensors differ");
    ASSERT_TRUE(sensors);
    EXPECT_EQ(sensors->note, "the sensors differ: ±0.54 °F for A, ±0.9 °F for B");
    EXPECT_EQ(sensors->measure, "rms_dev_c");
}

TEST(SideBySideWords, AnOpenBatchAndOneWithoutDataReadAsSentences)
{
    Plan plan;
    plan.batchA = "";
    plan.batchB = R"("ended":"2026-03-01 06:00",)";
    const DescribedLogbook files;
    files.write("a.csv", level("SA (C)", 20.5, 48));
    files.write("b.csv", "Time,SB (C)\n2026-03-02 00:00,20\n2026-03-02 01:00,20\n");
    const auto logbook = files.load(described(plan), "2026-03-10T00:00:00Z");
    const auto compared = review::reviewSideBySide(*logbook, "A", "B");
    ASSERT_TRUE(compared);
    EXPECT_TRUE(compared->temperatureSentence.starts_with(
        "A, so far: stayed in the band of ±1 °C for all of the 2 days held and seen; B, not enough "
        "data: "))
        << compared->temperatureSentence;
    const review::NoteWords* logging = noteOf(*compared, "logged");
    ASSERT_TRUE(logging);
    EXPECT_EQ(logging->note, "logged every 30 min for A, not at all for B");
    const review::NoteWords* durations = noteOf(*compared, "they ran");
    ASSERT_TRUE(durations);
    EXPECT_EQ(durations->note, "they ran for unequal times: 2 days for A, 6 h for B");
}

TEST(SideBySideWords, SaysWhereNothingIsMeteredInBoth)
{
    Plan plan;
    plan.readingsB = "";
    const SideBySide review = reviewOf(plan);
    EXPECT_EQ(review.energySentence, "Their energies can't be compared: no time is metered in "
                                     "both.");
    EXPECT_EQ(review.lines[0].a, "–");
    EXPECT_EQ(review.lines[0].ahead, "");
    EXPECT_TRUE(noteOf(review, "there is no elapsed time that is metered in both"));
}

TEST(SideBySideWords, SaysWhereAMetersAccuracyIsAssumed)
{
    Plan plan;
    plan.metersB = R"({"name":"MB","setup":"Cabinet","resolution_kwh":0.01},)";
    const SideBySide review = reviewOf(plan);
    const review::NoteWords* assumed = noteOf(review, "the accuracy");
    ASSERT_TRUE(assumed);
    EXPECT_EQ(assumed->note, "the accuracy of a meter of B is unknown, 2 % is assumed");
}

TEST(SideBySideWords, SetupsAreMeansOverTheirFinishedBatches)
{
    const SideBySide review = reviewOf({}, "Loop", "Cabinet");
    EXPECT_TRUE(review.ofSetups);
    EXPECT_EQ(review.batchesA, std::vector<std::string>{"A"});
    EXPECT_EQ(review.energySentence,
              "For each batch Loop used 2.00 times Cabinet's energy: 4.80 kWh against 2.40 kWh.");
    EXPECT_EQ(review.temperatureSentence, "Means are over 1 batch of Loop and 1 batch of Cabinet. "
                                          "Typical deviation 0.5 °C against 0 °C.");
}

TEST(SideBySideWords, RefusesWhatCantBeCompared)
{
    const DescribedLogbook files;
    files.write("a.csv", level("SA (C)", 20.5, 48));
    files.write("b.csv", level("SB (C)", 20.0, 48));
    Plan plan;
    plan.batchB = "";
    const auto logbook = files.load(described(plan), "2026-03-10T00:00:00Z");
    const auto why = [&](const char* a, const char* b) {
        const auto compared = review::reviewSideBySide(*logbook, a, b);
        EXPECT_FALSE(compared) << a << " " << b;
        return compared ? std::string() : compared.error().sentence();
    };
    EXPECT_EQ(why("A", "C"), "there is no batch and no setup \"C\"; near ones: A, B.");
    EXPECT_EQ(why("A", "A"), "\"A\" can't be compared with itself; name two.");
    EXPECT_EQ(why("A", "Loop"), "one of \"A\" and \"Loop\" is a batch, the other a setup; compare "
                                "two batches or two setups.");
    EXPECT_EQ(why("Loop", "Cabinet"), "the setup \"Cabinet\" has no finished batch; end one, or "
                                      "compare others.");
}

} // namespace
} // namespace holdband::test
