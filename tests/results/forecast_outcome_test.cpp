// What a run says about the forecast that its batch was pitched with. Batch "Loop 1" of the garage
// uses 8.46 kWh (see next_batch_test.cpp) and passes the edge of its crash's band after 7.5 h.
#include "core/results/run/forecast_outcome.h"
#include "tests/results/forecast_garage.h"

#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

class ForecastOutcome : public ::testing::Test {
protected:
    std::vector<std::string> saidOf(const std::string& forecast)
    {
        ForecastGarage garage;
        if (!forecast.empty())
            garage.batchMore = R"(,"forecast":{"made":"2026-02-28 12:00",)" + forecast + "}";
        const auto logbook = garage.loadInto(m_folder);
        const auto review = results::reviewRun(*logbook, "Loop 1");
        EXPECT_TRUE(review) << review.error().sentence();
        return review ? results::forecastOutcome(*review) : std::vector<std::string>();
    }

    DescribedLogbook m_folder;
};

TEST_F(ForecastOutcome, SaysWhetherWhatCameWasInsideTheRange)
{
    EXPECT_THAT(saidOf(R"("kwh":8.5,"kwh_low":7.5,"kwh_high":9.6,"crash_h":7,"crash_h_low":6,)"
                       R"("crash_h_high":7.2)"),
                ElementsAre("When it was pitched it was forecast to use 8.5 kWh (7.5 – 9.6); it "
                            "used 8.5 kWh, inside the range.",
                            "It was forecast to be cold 7.0 h (6.0 – 7.2) after turning down; it "
                            "took 7.5 h, more than the range."));
}

TEST_F(ForecastOutcome, SaysLessWhereItIs)
{
    EXPECT_THAT(saidOf(R"("kwh":10,"kwh_low":9,"kwh_high":11)"),
                ElementsAre(HasSubstr("less than the range")));
}

TEST_F(ForecastOutcome, IsEmptyWithoutAForecast)
{
    EXPECT_THAT(saidOf(""), IsEmpty());
}

} // namespace
} // namespace holdband::test
