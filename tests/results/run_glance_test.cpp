// A run at a glance: the method's worked example, figures by hand.
#include "core/results/run/run_glance.h"
#include "tests/results/described_logbook.h"
#include "tests/worked_example.h"

#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using testing::ElementsAre;

/// "5 h, outside, twice", with a "!" where it speaks against the batch.
std::vector<std::string> shownFigures(const results::RunGlance& glance)
{
    std::vector<std::string> list;
    const auto add = [&](const results::GlanceFigure& figure) {
        list.push_back(figure.value + ", " + figure.caption + (figure.warns ? "!" : ""));
    };
    if (glance.lead)
        add(*glance.lead);
    for (const results::GlanceFigure& figure : glance.others)
        add(figure);
    return list;
}

std::vector<std::string> glanceOfRun(const std::string& description, const std::string& log,
                                     const std::string& batch)
{
    const DescribedLogbook files;
    files.write("worked.csv", log);
    const auto logbook = files.load(description, "2026-03-10T00:00:00Z");
    const auto review = results::reviewRun(*logbook, batch);
    EXPECT_TRUE(review) << review.error().sentence();
    return review ? shownFigures(results::glanceOf(*review)) : std::vector<std::string>{};
}

TEST(RunGlance, OfTheWorkedExample)
{
    // 8 of 10 h covered; 5 h inside of these 8, 2 h above and 1 h below, the worst 1.0 K above;
    // 0.90 kWh (0.79 to 1.41).
    EXPECT_THAT(glanceOfRun(workedDescription(), workedLog(), "Worked"),
                ElementsAre("62.5 %, on target, of 8 h recorded", "3 h, outside, twice!",
                            "+1.00 °C, worst past the edge!", "80.0 %, of the hold time recorded!",
                            "0.90 kWh, 0.79 – 1.41"));
}

std::string crashDescription(const std::string& more)
{
    return R"json({"holdband":1,"setups":[{"name":"Loop"}],
      "sensors":[{"name":"Beer","reads":"beer"}],
      "batches":[{"name":"Ale","setup":"Loop","pitched":"2026-03-07 00:00",)json" +
           more + R"json("beer_sensor":"Beer","tolerance_c":1,"gap_limit_min":90,"dwell_min":0,
      "schedule":[{"stage":"Hold","target_c":20,"hours":2},{"stage":"Crash","target_c":5}]}],
      "files":[{"file":"worked.csv","columns":{"Beer":"Beer (C)"}}]})json";
}

const std::string crashLog = "Time,Beer (C)\n2026-03-07 00:00,20\n2026-03-07 01:00,20\n"
                             "2026-03-07 02:00,20\n2026-03-07 03:00,13\n2026-03-07 04:00,6\n"
                             "2026-03-07 05:00,5\n2026-03-07 06:00,5\n";

TEST(RunGlance, HasTheCrashsSettlingAndNoEnergyWithoutAMeter)
{
    // From 20 to 6 °C, the band's edge, in 2 h; then 2 h on target.
    EXPECT_THAT(glanceOfRun(crashDescription(R"("ended":"2026-03-07 06:00",)"), crashLog, "Ale"),
                ElementsAre("100.0 %, on target, of 4 h recorded", "2 h, Crash settled in",
                            "100.0 %, of the hold time recorded"));
}

TEST(RunGlance, SaysThatACrashWasMissed)
{
    const std::string log = crashLog.substr(0, crashLog.find("2026-03-07 04:00"));
    EXPECT_THAT(glanceOfRun(crashDescription(R"("ended":"2026-03-07 03:00",)"), log, "Ale"),
                ElementsAre("100.0 %, on target, of 2 h recorded", "missed, Crash!",
                            "100.0 %, of the hold time recorded"));
}

TEST(RunGlance, HasNothingToShowWithoutReadings)
{
    const std::string before = "Time,Beer (C)\n2026-03-01 00:00,20\n";
    EXPECT_THAT(glanceOfRun(crashDescription(R"("ended":"2026-03-07 06:00",)"), before, "Ale"),
                ElementsAre("0.0 %, of the hold time recorded!"))
        << "a stage of which nothing is covered neither settles nor misses (method, section 2)";
}

} // namespace
} // namespace holdband::test
