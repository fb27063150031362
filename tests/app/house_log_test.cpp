// The log of a house as a public data set may have it: 28 columns, every ten minutes, quoted and
// padded numbers, most columns of no use to a brewer. The figures are made here.
#include "tests/app/program.h"

namespace holdband::test {
namespace {

constexpr int rowsOfADay = 144;

/// The energy of ten minutes: 60, 50 or 110 Wh.
int appliancesAt(int row)
{
    return row % 3 == 0 ? 60 : row % 3 == 1 ? 50 : 110;
}

std::string quoted(const std::string& text)
{
    return '"' + text + '"';
}

std::string houseHeader()
{
    std::string header = "\"date\",\"Appliances\",\"lights\"";
    for (int room = 1; room <= 9; ++room)
        header += ",\"T" + std::to_string(room) + "\",\"RH_" + std::to_string(room) + "\"";
    return header + ",\"T_out\",\"Pressure\",\"RH_out\",\"Wind\",\"Sight\",\"Dew\",\"Chance\"\n";
}

std::string timeOf(int row)
{
    char text[32];
    std::snprintf(text, sizeof text, "2026-03-%02d %02d:%02d:00", 7 + row / rowsOfADay,
                  row % rowsOfADay / 6, row % 6 * 10);
    return text;
}

/// Two days; `without` is left out.
std::string houseLog(int without = -1)
{
    std::string text = houseHeader();
    for (int row = 0; row < 2 * rowsOfADay; ++row) {
        if (row == without)
            continue;
        text +=
            quoted(timeOf(row)) + "," + quoted(" " + std::to_string(appliancesAt(row))) + ",\"10\"";
        for (int room = 1; room <= 9; ++room)
            text += ",\"19.89\",\" 47.5966666666667\"";
        text += ",\"6.6\",\"733.5\",\"92\",\"7\",\"63\",\"5.3\",\" 13.2754331571049\"\n";
    }
    return text;
}

class HouseLog : public testing::Test {
protected:
    void SetUp() override
    {
        m_program.write("garage.json", R"json({
  "holdband": 1, "zone": "UTC", "units": "metric",
  "setups": [ { "name": "Cabinet" } ],
  "sensors": [ { "name": "Beer", "reads": "beer" }, { "name": "Room", "reads": "ambient" },
               { "name": "Plug", "reads": "interval_energy", "setup": "Cabinet" } ],
  "batches": [ { "name": "Ale", "setup": "Cabinet", "pitched": "2026-03-07 06:00",
                 "ended": "2026-03-08 18:00", "beer_sensor": "Beer", "ambient_sensor": "Room",
                 "tolerance_c": 1, "schedule": [ { "stage": "Hold", "target_c": 19.5 } ] } ] })json");
        const Outcome loaded = m_program.run({"load", "log.holdband", "garage.json"});
        ASSERT_EQ(loaded.status, 0) << loaded.err;
    }

    Outcome import(const std::string& text, const std::vector<std::string>& answers) const
    {
        m_program.write("house.csv", text);
        std::vector<std::string> call{"import", "log.holdband", "house.csv"};
        call.insert(call.end(), answers.begin(), answers.end());
        return m_program.run(call);
    }

    nlohmann::json energy() const
    {
        return m_program.run({"energy", "log.holdband", "Ale", "--json"}).json();
    }

    Program m_program;
    const std::vector<std::string> m_answers{"--column", "Plug=Appliances", "--column",
                                             "Room=T1",  "--unit",          "wh"};
};

TEST_F(HouseLog, IsImportedWithThreeAnswersAndItsEnergyIsRight)
{
    const Outcome imported = import(houseLog(), m_answers);
    ASSERT_EQ(imported.status, 0) << imported.err;
    EXPECT_TRUE(holds(imported.out, "288 rows read")) << imported.out;
    const auto json = energy();
    // 36 h of it: 216 rows, a third of each kind: 72 · (60 + 50 + 110) Wh.
    EXPECT_NEAR(json["kwh"].get<double>(), 15.84, 1e-9);
    EXPECT_NEAR(json["metered_h"].get<double>(), 36.0, 1e-9);
    // Steps of 10 Wh: each of the 216 intervals may be off by 5 Wh.
    EXPECT_NEAR(json["kwh_low"].get<double>(), 15.84 - 1.08, 1e-9);
    EXPECT_NEAR(json["kwh_high"].get<double>(), 15.84 + 1.08, 1e-9);
    EXPECT_FALSE(json["partly_metered"].get<bool>());
    const auto& day = json["days"][0];
    EXPECT_EQ(day["day"], "2026-03-07");
    EXPECT_NEAR(day["kwh"].get<double>(), 7.92, 1e-9); // 18 h: 36 · 220 Wh
}

TEST_F(HouseLog, SaysInOneLineWhichColumnsItIgnored)
{
    const Outcome imported = import(houseLog(), m_answers);
    std::size_t lines = 0;
    for (std::size_t at = imported.err.find("ignored"); at != imported.err.npos;
         at = imported.err.find("ignored", at + 1))
        ++lines;
    EXPECT_EQ(lines, 1u) << imported.err;
    EXPECT_TRUE(holds(imported.err, "25 columns")) << imported.err;
}

TEST_F(HouseLog, AMissingIntervalIsAGap)
{
    ASSERT_EQ(import(houseLog(60), m_answers).status, 0); // 10:00 to 10:10 on 7 March, 60 Wh
    const auto json = energy();
    EXPECT_NEAR(json["kwh"].get<double>(), 15.78, 1e-9);
    EXPECT_NEAR(json["metered_h"].get<double>(), 36.0 - 1.0 / 6.0, 1e-9);
    EXPECT_TRUE(json["partly_metered"].get<bool>());
}

TEST_F(HouseLog, AsksForTheUnitOfItsEnergy)
{
    const Outcome asked =
        import(houseLog(), {"--column", "Plug=Appliances", "--column", "Room=T1"});
    EXPECT_EQ(asked.status, 1);
    EXPECT_TRUE(holds(asked.err, "--unit wh or --unit kwh")) << asked.err;
}

} // namespace
} // namespace holdband::test
