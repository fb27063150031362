#include "ui/charts/decimate.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

namespace holdband::ui {

namespace {

analysis::Track trackOf(std::size_t count, double stepMs)
{
    analysis::Track track;
    for (std::size_t i = 0; i < count; ++i) {
        track.ms.push_back(static_cast<double>(i) * stepMs);
        track.value.push_back(std::sin(static_cast<double>(i) / 500.0));
    }
    track.runs = {{0, count - 1}};
    return track;
}

bool holds(const Polyline& line, double ms, double value)
{
    return std::find(line.begin(), line.end(), DrawnPoint{ms, value}) != line.end();
}

} // namespace

TEST(Decimate, OnePeakInAMillionReadingsIsDrawn)
{
    analysis::Track track = trackOf(1'000'000, 60'000.0);
    track.value[654'321] = 99.0;
    track.value[654'323] = -99.0;
    const auto lines = decimate(track, 0.0, track.ms.back(), 800);
    ASSERT_EQ(lines.size(), 1u);
    EXPECT_LE(lines[0].size(), 4u * 800u + 2u);
    EXPECT_TRUE(holds(lines[0], track.ms[654'321], 99.0));
    EXPECT_TRUE(holds(lines[0], track.ms[654'323], -99.0));
}

TEST(Decimate, ThePyramidDrawsTheSameAsTheReadings)
{
    analysis::Track track = trackOf(300'000, 60'000.0);
    for (std::size_t i = 0; i < track.value.size(); ++i) // equal values too
        track.value[i] = std::round(40.0 * track.value[i] + static_cast<double>(i * 7919 % 11));
    track.runs = {{0, 99'999}, {100'000, 299'999}};
    const TrackPyramid pyramid(track);
    for (const double from : {0.0, 1.0e9 + 17.0, 5.9e9}) {
        for (const int columns : {10, 333, 2'000})
            EXPECT_EQ(decimate(track, from, 1.6e10, columns, &pyramid),
                      decimate(track, from, 1.6e10, columns))
                << from << " " << columns;
    }
}

TEST(Decimate, EveryColumnHasItsFirstMinimumMaximumAndLast)
{
    const analysis::Track track = trackOf(100'000, 1000.0);
    const int columns = 50;
    const auto lines = decimate(track, 0.0, track.ms.back(), columns);
    ASSERT_EQ(lines.size(), 1u);
    const double width = track.ms.back() / columns;
    for (int column = 1; column + 1 < columns; ++column) {
        const auto from = static_cast<std::size_t>(std::ceil(column * width / 1000.0));
        auto to = static_cast<std::size_t>(std::ceil((column + 1) * width / 1000.0));
        const auto [least, most] =
            std::minmax_element(track.value.begin() + static_cast<std::ptrdiff_t>(from),
                                track.value.begin() + static_cast<std::ptrdiff_t>(to));
        for (const auto at : {from, to - 1, static_cast<std::size_t>(least - track.value.begin()),
                              static_cast<std::size_t>(most - track.value.begin())})
            EXPECT_TRUE(holds(lines[0], track.ms[at], track.value[at])) << column;
    }
}

TEST(Decimate, PointsComeInOrderOfTimeAndOnce)
{
    const analysis::Track track = trackOf(20'000, 1000.0);
    const auto lines = decimate(track, 3'000'000.0, 9'000'000.0, 40);
    ASSERT_EQ(lines.size(), 1u);
    for (std::size_t i = 1; i < lines[0].size(); ++i)
        EXPECT_LT(lines[0][i - 1].ms, lines[0][i].ms);
}

TEST(Decimate, ALineRunsOnBeyondTheEdges)
{
    const analysis::Track track = trackOf(20'000, 1000.0);
    const auto lines = decimate(track, 3'000'500.0, 9'000'500.0, 40);
    ASSERT_EQ(lines.size(), 1u);
    EXPECT_EQ(lines[0].front().ms, 3'000'000.0);
    EXPECT_EQ(lines[0].back().ms, 9'001'000.0);
}

TEST(Decimate, FewPointsStayAsTheyAre)
{
    const analysis::Track track = trackOf(100, 1000.0);
    const auto lines = decimate(track, 0.0, track.ms.back(), 800);
    ASSERT_EQ(lines.size(), 1u);
    EXPECT_EQ(lines[0].size(), 100u);
}

TEST(Decimate, NothingIsBridged)
{
    analysis::Track track = trackOf(1000, 1000.0);
    track.runs = {{0, 399}, {600, 999}};
    const auto lines = decimate(track, 0.0, track.ms.back(), 10);
    ASSERT_EQ(lines.size(), 2u);
    EXPECT_EQ(lines[0].back().ms, 399'000.0);
    EXPECT_EQ(lines[1].front().ms, 600'000.0);
}

TEST(Decimate, ARunOutsideIsLeftOut)
{
    analysis::Track track = trackOf(1000, 1000.0);
    track.runs = {{0, 399}, {600, 999}};
    EXPECT_EQ(decimate(track, 450'000.0, 550'000.0, 10).size(), 0u);
    EXPECT_EQ(decimate(track, 0.0, 0.0, 10).size(), 0u);
}

TEST(Decimate, HundredsOfRunsShareTheColumns)
{
    analysis::Track track = trackOf(1'000'000, 60'000.0);
    track.value[654'321] = 99.0;
    track.runs.clear();
    constexpr std::size_t runs = 500;
    for (std::size_t run = 0; run < runs; ++run)
        track.runs.push_back({run * 2000, run * 2000 + 1599});
    const auto lines = decimate(track, 0.0, track.ms.back(), 800);
    ASSERT_EQ(lines.size(), runs);
    std::size_t points = 0;
    for (const Polyline& line : lines)
        points += line.size();
    // Four for each column, a run's first and last column may be shared, and both its ends.
    EXPECT_LE(points, 4 * (800 + 2 * runs) + 2 * runs);
    EXPECT_TRUE(holds(lines[654'321 / 2000], track.ms[654'321], 99.0));
}

} // namespace holdband::ui
