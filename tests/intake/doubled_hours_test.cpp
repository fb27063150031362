#include "core/intake/time/doubled_hours.h"

#include <gtest/gtest.h>

using namespace holdband;
using namespace std::chrono;

namespace {

/// Local times of 1 November 2026 in New York, "1:30" as 130. The hour from 1:00 exists twice:
/// 05:00Z … 06:00Z and 06:00Z … 07:00Z (tz database).
RowTimes rowsOf(const std::vector<int>& clock)
{
    RowTimes rows;
    for (const int time : clock) {
        const LocalTime wall = local_days{2026y / 11 / 1} + hours{time / 100} + minutes{time % 100};
        rows.value.push_back(wall.time_since_epoch().count());
        rows.kind.push_back(StampKind::local);
        rows.line.push_back(static_cast<std::uint32_t>(rows.line.size() + 2));
    }
    return rows;
}

/// The resolved times as UTC clock times of that day, or the line that is ambiguous.
std::vector<int> utcOf(const std::vector<int>& clock)
{
    RowTimes rows = rowsOf(clock);
    const auto resolved = resolveRows(rows, *Zone::named("America/New_York"));
    if (!resolved)
        return {-std::stoi(resolved.error().place.substr(5))};
    std::vector<int> list;
    for (const std::int64_t value : rows.value) {
        const auto ofDay =
            duration_cast<minutes>(instantFromMs(value) - Instant{sys_days{2026y / 11 / 1}});
        list.push_back(static_cast<int>(ofDay.count() / 60 * 100 + ofDay.count() % 60));
    }
    return list;
}

using Clock = std::vector<int>;

} // namespace

TEST(DoubledHours, rowsThatStepBackOnce)
{
    EXPECT_EQ(utcOf({30, 100, 150, 105, 155, 200}), (Clock{430, 500, 550, 605, 655, 700}));
    EXPECT_EQ(utcOf({30, 150, 105, 200}), (Clock{430, 550, 605, 700}));
}

TEST(DoubledHours, newestFirst)
{
    EXPECT_EQ(utcOf({200, 155, 105, 150, 100, 30}), (Clock{700, 655, 605, 550, 500, 430}));
}

TEST(DoubledHours, hourlyLogHasTheTimeTwice)
{
    EXPECT_EQ(utcOf({30, 130, 130, 230}), (Clock{430, 530, 630, 730}));
    // With repeats elsewhere, two equal times may be a repeat.
    EXPECT_EQ(utcOf({30, 30, 130, 130, 230}), (Clock{-4}));
}

TEST(DoubledHours, onlyRowsOfTheDoubledHour)
{
    EXPECT_EQ(utcOf({110, 120, 130, 105, 115}), (Clock{510, 520, 530, 605, 615}));
    EXPECT_EQ(utcOf({115, 105, 130, 120, 110}), (Clock{615, 605, 530, 520, 510}));
    EXPECT_EQ(utcOf({150, 110}), (Clock{-2}));
    EXPECT_EQ(utcOf({130}), (Clock{-2}));
}

TEST(DoubledHours, rowsThatDoNotShowIt)
{
    EXPECT_EQ(utcOf({30, 100, 130, 200}), (Clock{-3}));            // one pass only
    EXPECT_EQ(utcOf({100, 130, 100, 130, 100, 200}), (Clock{-2})); // three passes
    EXPECT_EQ(utcOf({30, 150, 105, 200, 15}), (Clock{-3}));        // unordered rows
}

TEST(DoubledHours, missingHourIsReported)
{
    RowTimes rows;
    const LocalTime wall = local_days{2026y / 3 / 8} + hours{2} + minutes{30};
    rows.value = {wall.time_since_epoch().count(), 5};
    rows.kind = {StampKind::local, StampKind::instant};
    rows.line = {2, 3};
    const auto resolved = resolveRows(rows, *Zone::named("America/New_York"));
    ASSERT_TRUE(resolved.has_value());
    EXPECT_EQ(resolved->missing, (std::vector<MissingTime>{{0, wall}}));
    EXPECT_EQ(rows.value[1], 5);
}
