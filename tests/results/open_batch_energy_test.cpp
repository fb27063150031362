// The energy of an open batch, and with which batches it is shared. Sections 2 and 4 of the method:
// at most 48 h past the last reading of its beer; a shared figure names the batches.
#include "core/results/run/energy_texts.h"
#include "core/results/run/explain.h"
#include "core/results/run/run_review.h"
#include "tests/results/described_logbook.h"

#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

/// The meter counts 1 kWh each day of March. "First" is open and its beer was read until 2 March
/// 00:00; "Second" runs from `pitched` on for two days.
std::string twoBatches(const std::string& pitched, const std::string& ended)
{
    std::string readings;
    for (int day = 1; day <= 20; ++day)
        readings += std::string(day == 1 ? "" : ",") + R"({"meter":"M","at":"2026-03-)" +
                    (day < 10 ? "0" : "") + std::to_string(day) + R"( 00:00","kwh":)" +
                    std::to_string(day) + "}";
    return R"json({"holdband":1,"setups":[{"name":"S","vessels":2}],
        "sensors":[{"name":"Beer","reads":"beer"},{"name":"Beer 2","reads":"beer"}],
        "meters":[{"name":"M","setup":"S"}],
        "batches":[{"name":"First","setup":"S","pitched":"2026-03-01 00:00","beer_sensor":"Beer",
                "tolerance_c":1,"schedule":[{"stage":"Hold","target_c":20}]},
            {"name":"Second","setup":"S","pitched":")json" +
           pitched + R"(","ended":")" + ended +
           R"json(","beer_sensor":"Beer 2",
                "tolerance_c":1,"schedule":[{"stage":"Hold","target_c":20}]}],
        "files":[{"file":"beer.csv","columns":{"Beer":"Beer (C)"}}],"meter_readings":[)json" +
           readings + "]}";
}

class OpenBatch : public ::testing::Test {
protected:
    results::RunReview run(const std::string& description, const std::string& batch)
    {
        m_files.write("beer.csv", "Time,Beer (C)\n2026-03-01 00:00,20\n2026-03-02 00:00,20\n");
        const auto logbook = m_files.load(description, "2026-03-25T00:00:00Z");
        auto review = results::reviewRun(*logbook, batch);
        EXPECT_TRUE(review) << review.error().sentence();
        return *review;
    }

    DescribedLogbook m_files;
};

TEST_F(OpenBatch, ThatWasForgottenTakesNoShareOfALaterOne)
{
    const std::string description = twoBatches("2026-03-10 00:00", "2026-03-12 00:00");
    const auto second = run(description, "Second");
    EXPECT_DOUBLE_EQ(second.figures.energy.whole.kwh, 2.0);
    EXPECT_THAT(second.figures.energy.sharedWith, IsEmpty());
    EXPECT_THAT(results::energyRemarks(second), IsEmpty());
    EXPECT_THAT(results::explain(second, results::Figure::wholeEnergy), Not(HasSubstr("shared")));
}

TEST_F(OpenBatch, ItsEnergyEnds48HoursAfterTheLastReadingOfItsBeer)
{
    const std::string description = twoBatches("2026-03-10 00:00", "2026-03-12 00:00");
    const auto first = run(description, "First");
    EXPECT_EQ(first.input.span.end, *parseRfc3339("2026-03-04T00:00:00Z"));
    EXPECT_DOUBLE_EQ(first.figures.energy.whole.kwh, 3.0);
    EXPECT_THAT(first.findings, ElementsAre(HasSubstr("still open, but its beer was not read")));
    ASSERT_EQ(first.figures.energy.stages.size(), 1U);
    EXPECT_DOUBLE_EQ(first.figures.energy.stages[0].energy.kwh, 3.0)
        << "the stage in progress goes on to the energy's end";
}

TEST_F(OpenBatch, AShareNamesTheOtherBatches)
{
    // Both ran on 3 and 4 March, the second alone on the 5th and 6th: 0.5 + 1 + 1 kWh.
    const std::string description = twoBatches("2026-03-03 00:00", "2026-03-06 00:00");
    const auto second = run(description, "Second");
    EXPECT_DOUBLE_EQ(second.figures.energy.whole.kwh, 2.5);
    EXPECT_THAT(second.figures.energy.sharedWith,
                ElementsAre(analysis::SharedTime{"First", std::chrono::hours(24)}));
    EXPECT_THAT(results::energyRemarks(second),
                ElementsAre("The energy was shared with First (24 h): each batch that runs on S "
                            "has an equal part."));
    EXPECT_THAT(results::explain(second, results::Figure::wholeEnergy),
                HasSubstr("For 24 h the batch shared S with First, and has an equal part"));
}

} // namespace
} // namespace holdband::test
