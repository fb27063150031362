// The views of a logbook by the sqlite3 tool, and the help's page about them.
#include "tests/app/program.h"

#include <fstream>
#include <iterator>
#include <sstream>

namespace holdband::test {
namespace {

std::string helpPage(const std::string& language)
{
    std::ifstream file(std::string(HOLDBAND_TESTS_DIR) + "/../resources/help/" + language +
                       "data.md");
    return {std::istreambuf_iterator<char>(file), {}};
}

TEST(DataViews, GiveTheWorkedExampleToAnyTool)
{
    const WorkedProgram program;
    const Outcome energy = program.shell(
        "sqlite3 -readonly log.holdband 'SELECT meter, from_utc, hours, round(kwh, 9) "
        "FROM v_energy ORDER BY from_ms'");
    EXPECT_EQ(energy.out, "Meter|2026-03-07T00:00:00.000Z|8.0|0.8\n"
                          "Meter|2026-03-07T08:00:00.000Z|12.0|0.6\n")
        << energy.err;
    EXPECT_EQ(program
                  .shell("sqlite3 -readonly log.holdband 'SELECT count(*), max(temperature_c) "
                         "FROM v_readings JOIN v_batches ON at_ms BETWEEN pitched_ms AND ended_ms "
                         "AND sensor = beer_sensor'")
                  .out,
              "10|22.0\n");
}

TEST(DataViews, EveryColumnIsInTheHelp)
{
    const WorkedProgram program;
    for (const char* language : {"", "de/"}) {
        const std::string page = helpPage(language);
        ASSERT_FALSE(page.empty()) << language;
        for (const char* view : {"v_readings", "v_meter_readings", "v_energy", "v_batches"}) {
            const std::size_t begin = page.find(std::string("## ") + view);
            ASSERT_NE(begin, page.npos) << view;
            std::string section = page.substr(begin, page.find("\n## ", begin) - begin);
            for (char& c : section)
                c = c == ',' || c == '|' ? ' ' : c;
            std::istringstream columns(
                program
                    .shell(std::string("sqlite3 log.holdband \"SELECT name FROM "
                                       "pragma_table_info('") +
                           view + "')\"")
                    .out);
            int count = 0;
            for (std::string column; columns >> column; ++count)
                EXPECT_TRUE(holds(section, " " + column + " ")) << language << view << column;
            EXPECT_GT(count, 5) << view;
        }
    }
}

} // namespace
} // namespace holdband::test
