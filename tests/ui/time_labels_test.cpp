#include "ui/lanes/time_labels.h"

#include "core/text/times.h"

#include <gmock/gmock.h>

namespace holdband::ui {

namespace {

using ::testing::ElementsAre;

double sixAnyLetter(const std::string& text)
{
    return 6.0 * static_cast<double>(text.size());
}

Instant utcDay(const char* text)
{
    return *parseRfc3339(std::string(text) + "T00:00:00Z");
}

std::vector<PlacedLabel> placed(const char* from, const char* to, double width)
{
    return timeLabels({utcDay(from), utcDay(to)}, Zone::utc(), 0.0, width, sixAnyLetter);
}

std::vector<std::string> names(const char* from, const char* to, double width)
{
    std::vector<std::string> all;
    for (const PlacedLabel& label : placed(from, to, width))
        all.push_back(label.label);
    return all;
}

} // namespace

TEST(TimeLabels, AreDaysWhereFewAreShown)
{
    EXPECT_THAT(names("2026-03-01", "2026-03-13", 800.0),
                ElementsAre("2 Mar 2026", "4 Mar", "6 Mar", "8 Mar", "10 Mar", "12 Mar"));
}

TEST(TimeLabels, AreMonthsAndTheFirstHasTheYear)
{
    EXPECT_THAT(names("2025-10-10", "2026-02-20", 900.0),
                ElementsAre("October 2025", "November", "December", "January 2026", "February"));
}

TEST(TimeLabels, TheYearIsWithTheNextMonthIfTheFirstHasNoRoom)
{
    const auto labels = placed("2025-10-28", "2026-02-20", 700.0);
    ASSERT_FALSE(labels.empty());
    EXPECT_EQ(labels[0].label, "November 2025");
    EXPECT_FALSE(labels[0].atEdge);
}

TEST(TimeLabels, GrowShorterAndFewerFarOut)
{
    EXPECT_THAT(names("2025-01-01", "2025-12-31", 760.0),
                ElementsAre("Jan 2025", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep",
                            "Oct", "Nov", "Dec"));
    EXPECT_THAT(names("2025-01-01", "2026-12-31", 500.0),
                ElementsAre("Jan 2025", "Apr", "Jul", "Oct", "Jan 2026", "Apr", "Jul", "Oct"));
    // 60 pixels a year: 2016 has 40 at the left, 2021 only 20 at the right.
    EXPECT_THAT(names("2016-05-01", "2021-05-01", 300.0),
                ElementsAre("2016", "2017", "2018", "2019", "2020"));
    EXPECT_THAT(names("2016-05-01", "2026-05-01", 200.0),
                ElementsAre("2018", "2020", "2022", "2024"));
}

TEST(TimeLabels, NeverTouchAtAnyScale)
{
    for (int days = 1; days < 9000; days += 1 + days / 9) {
        for (double width = 60.0; width < 1500.0; width *= 1.31) {
            const Instant from = utcDay("2016-11-24");
            const auto labels = timeLabels({from, from + std::chrono::days{days}}, Zone::utc(), 0.0,
                                           width, sixAnyLetter);
            ASSERT_FALSE(labels.empty()) << days << " days on " << width;
            for (std::size_t i = 1; i < labels.size(); ++i)
                ASSERT_LE(labels[i - 1].x + sixAnyLetter(labels[i - 1].label) + 8.0, labels[i].x)
                    << days << " days on " << width << ": " << labels[i].label;
        }
    }
}

TEST(TimeLabels, AreNoneForAnEmptySpan)
{
    EXPECT_TRUE(placed("2026-03-01", "2026-03-01", 500.0).empty());
    EXPECT_TRUE(placed("2026-03-01", "2026-04-01", 0.0).empty());
}

} // namespace holdband::ui
