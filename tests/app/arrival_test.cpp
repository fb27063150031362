// When a crash in progress will arrive, on the command line: text and JSON.
#include "core/text/numbers.h"
#include "tests/app/program.h"

#include <cmath>

namespace holdband::test {
namespace {

/// The example of the method's section 8.3: T = 2 + 16·e^(−0.2 t) °C each 15 min to `hours`, turned
/// down on 9 March 2026 at noon.
void loadCrash(const Program& program, double hours)
{
    std::string rows = "Time,Beer (C)\n2026-03-09T11:45:00Z,18\n";
    for (int i = 0; i * 0.25 <= hours; ++i) {
        const int minutes = 12 * 60 + 15 * i;
        const auto two = [](int number) {
            return (number < 10 ? "0" : "") + std::to_string(number);
        };
        rows += "2026-03-" + two(9 + minutes / 1440) + "T" + two(minutes % 1440 / 60) + ":" +
                two(minutes % 60) + ":00Z," + shortestText(2.0 + 16.0 * std::exp(-0.05 * i)) + "\n";
    }
    program.write("b.csv", rows);
    program.write("d.json", R"json({"holdband":1,"setups":[{"name":"Loop"}],
        "sensors":[{"name":"Beer","reads":"beer"}],
        "batches":[{"name":"Trial","setup":"Loop","pitched":"2026-03-09 11:00","beer_sensor":"Beer",
        "tolerance_c":1,"schedule":[{"stage":"Primary","target_c":18,"hours":1},
        {"stage":"Crash","target_c":2}]}],
        "files":[{"file":"b.csv","columns":{"Beer":"Beer (C)"}}]})json");
    ASSERT_EQ(program.run({"load", "l.holdband", "d.json"}).status, 0);
}

} // namespace

TEST(ArrivalOnTheCommandLine, IsALineOfTheVerdict)
{
    const Program program;
    loadCrash(program, 9.0);
    const std::string text = program.run({"verdict", "l.holdband", "Trial"}).out;
    EXPECT_TRUE(holds(text, "\nCold at about 10 Mar 03:00 (10 Mar 00:30 – 10 Mar 07:20). Last "
                            "reading 9 Mar 21:00.\n"))
        << text;
}

TEST(ArrivalOnTheCommandLine, IsAnObjectOfTheJson)
{
    const Program program;
    loadCrash(program, 9.0);
    const auto arrival =
        program.run({"verdict", "l.holdband", "Trial", "--json"}).json()["arrival"];
    EXPECT_EQ(arrival["stage"], "Crash");
    EXPECT_EQ(arrival["answer"], "hours");
    EXPECT_EQ(arrival["as_of"], "2026-03-09T21:00:00.000Z");
    EXPECT_NEAR(arrival["low_h"].get<double>(), 3.47796, 1e-4) << "method, section 8.3";
    EXPECT_NEAR(arrival["middle_h"].get<double>(), 5.99614, 1e-4);
    EXPECT_NEAR(arrival["high_h"].get<double>(), 10.3118, 1e-4);
    EXPECT_TRUE(holds(arrival["at"].get<std::string>(), "2026-03-10T02:59:4"));
    EXPECT_TRUE(holds(arrival["at_low"].get<std::string>(), "2026-03-10T00:28:4"));
    EXPECT_TRUE(holds(arrival["at_high"].get<std::string>(), "2026-03-10T07:18:4"));
    EXPECT_TRUE(arrival["levels_off_c"].is_null());
    EXPECT_EQ(arrival["past_crashes"], 0);
}

TEST(ArrivalOnTheCommandLine, IsNullWhereTheBeerHasArrived)
{
    const Program program;
    loadCrash(program, 20.0); // at 3 °C after 13.9 h
    const auto json = program.run({"verdict", "l.holdband", "Trial", "--json"}).json();
    EXPECT_TRUE(json.contains("arrival"));
    EXPECT_TRUE(json["arrival"].is_null());
    EXPECT_FALSE(holds(program.run({"verdict", "l.holdband", "Trial"}).out, "Cold"));
}

} // namespace holdband::test
