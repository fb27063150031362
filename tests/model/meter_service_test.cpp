// Which setup a meter counts for, and when.
#include "core/model/meter_service.h"

#include <gtest/gtest.h>

namespace holdband::test {
namespace {

Instant day(int number)
{
    return instantFromMs(1'772'900'000'000) + std::chrono::days{number};
}

TEST(MeterService, AMeterMovesRestsAndIsRetired)
{
    Meter meter;
    meter.name = "M";
    meter.setup = "Loop";
    meter.from = day(0);
    meter.moves = {{day(10), "Cabinet"}, {day(20), std::nullopt}, {day(30), "Loop"}};
    meter.retired = day(40);
    const std::vector<MeterService> expected{
        {"Loop", day(0), day(10)}, {"Cabinet", day(10), day(20)}, {"Loop", day(30), day(40)}};
    EXPECT_EQ(servicesOf(meter), expected);
    EXPECT_EQ(setupAt(meter, day(-1)), std::nullopt);
    EXPECT_EQ(setupAt(meter, day(10)), "Cabinet");
    EXPECT_EQ(setupAt(meter, day(25)), std::nullopt);
    EXPECT_EQ(setupAt(meter, day(39)), "Loop");
    EXPECT_EQ(setupAt(meter, day(40)), std::nullopt);
}

TEST(MeterService, OneThatNeverMovedIsInServiceFromItsBeginningToItsEnd)
{
    Meter meter;
    meter.setup = "Loop";
    EXPECT_EQ(servicesOf(meter), (std::vector<MeterService>{{"Loop", {}, {}}}));
    meter.to = day(3);
    EXPECT_EQ(servicesOf(meter), (std::vector<MeterService>{{"Loop", {}, day(3)}}));
}

} // namespace
} // namespace holdband::test
