// Impossible values that a damaged file may contain: every one gives a sentence quickly, and no
// figure is computed from it.
#include "core/results/overview/batch_list.h"
#include "core/results/run/run_review.h"
#include "core/store/sqlite/database.h"
#include "tests/results/described_logbook.h"

#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using ::testing::AnyOf;
using ::testing::HasSubstr;

class DamagedValue : public ::testing::TestWithParam<const char*> {
protected:
    /// A logbook with a batch that has readings and metered energy, changed by the SQL statement.
    std::string damagedBy(const char* statement)
    {
        m_files.write("beer.csv", "Time,Beer (C)\n2026-03-01 00:00,20\n2026-03-01 01:00,20.5\n"
                                  "2026-03-01 02:00,20\n");
        const auto logbook = m_files.load(
            R"json({"holdband":1,"setups":[{"name":"S","rated_power_w":900}],
            "sensors":[{"name":"Beer","reads":"beer",
                "offsets":[{"from":"2026-02-01 00:00","add_c":0.1}]}],
            "meters":[{"name":"M","setup":"S"}],
            "batches":[{"name":"B","setup":"S","pitched":"2026-03-01 00:00",
                "ended":"2026-03-01 02:00","beer_sensor":"Beer","tolerance_c":1,
                "schedule":[{"stage":"Hold","target_c":20,"hours":24}]}],
            "files":[{"file":"beer.csv","columns":{"Beer":"Beer (C)"}}],
            "meter_readings":[{"meter":"M","at":"2026-03-01 00:00","kwh":5},
                {"meter":"M","at":"2026-03-01 02:00","kwh":6}]})json",
            "2026-03-10T00:00:00Z");
        EXPECT_TRUE(results::reviewRun(*logbook, "B")) << "sound before";
        const std::string path = m_files.path("d.holdband");
        const auto database = store::Database::open(path, store::Access::write, false);
        EXPECT_TRUE(database);
        const auto changed =
            (*database)->execute(std::string("PRAGMA ignore_check_constraints = ON; ") + statement);
        EXPECT_TRUE(changed) << changed.error().sentence();
        EXPECT_GT((*database)->changes(), 0) << statement;
        return path;
    }

    DescribedLogbook m_files;
};

TEST_P(DamagedValue, EndsInASentence)
{
    const auto logbook = store::LogbookFile::open(damagedBy(GetParam()), store::Access::read);
    if (!logbook) {
        EXPECT_EQ(logbook.error().kind, ProblemKind::file);
        return;
    }
    const auto run = results::reviewRun(**logbook, "B");
    ASSERT_FALSE(run);
    EXPECT_EQ(run.error().kind, ProblemKind::file);
    EXPECT_THAT(run.error().sentence(),
                AnyOf(HasSubstr("the file is damaged"), HasSubstr("no longer fit their checksum")));
    EXPECT_FALSE(results::reviewBatches(**logbook));
}

INSTANTIATE_TEST_SUITE_P(
    Everywhere, DamagedValue,
    ::testing::Values("UPDATE batches SET pitched = -9223372036854775808",
                      "UPDATE batches SET ended = 9223372036854775807",
                      "UPDATE batches SET tolerance_k = 9e999", "UPDATE stages SET hours = 9e999",
                      "UPDATE stages SET target_c = -9e999",
                      "UPDATE meter_readings SET kwh = 9e999",
                      "UPDATE meter_readings SET at = 9223372036854775807 WHERE kwh = 6",
                      "UPDATE reading_blocks SET logged = '[9e999]'",
                      "UPDATE setups SET rated_power_w = 9e999",
                      "UPDATE offsets SET add_k = 9e999"));

} // namespace
} // namespace holdband::test
