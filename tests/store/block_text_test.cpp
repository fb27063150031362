// The text of a block of readings gives back every bit, and any other text is noticed as damage.
#include "core/store/readings/block_text.h"
#include "core/store/readings/reading_key.h"
#include "tests/random.h"

#include <bit>
#include <gtest/gtest.h>
#include <limits>
#include <rapidcheck.h>

namespace holdband::test {
namespace {

using store::BlockText;

/// What is read back; empty if the text is damaged.
struct ReadBack {
    std::vector<std::int64_t> ms;
    std::vector<double> values;
};

std::optional<ReadBack> readBack(const BlockText& block)
{
    ReadBack back;
    if (!store::readBlockText(block.firstAt, block.step, block.json, back.ms, back.values))
        return std::nullopt;
    return back;
}

TEST(BlockText, OfEqualStepsHasTheValuesAlone)
{
    const BlockText block = store::blockText({1000, 61'000, 121'000}, {66.12, 66.0, -1.5});
    EXPECT_EQ(block.firstAt, 1000);
    EXPECT_EQ(block.step, 60'000);
    EXPECT_EQ(block.json, "[66.12,66,-1.5]");
}

TEST(BlockText, OfOtherStepsHasTheTimeOfEach)
{
    const BlockText block = store::blockText({1000, 61'000, 121'001}, {66.12, 0.05, 100.0});
    EXPECT_EQ(block.step, std::nullopt);
    EXPECT_EQ(block.json, "[[0,66.12],[60000,0.05],[120001,100]]");
}

TEST(BlockText, OfOneReading)
{
    EXPECT_EQ(store::blockText({7}, {20.25}).json, "[20.25]");
    EXPECT_EQ(readBack(store::blockText({7}, {20.25}))->ms, std::vector<std::int64_t>{7});
}

/// A value as a logger writes it, or any finite one.
double anyValue()
{
    if (between(0, 2) > 0)
        return between(-999'999, 999'999) / std::pow(10.0, between(0, 6));
    const auto bits = *rc::gen::arbitrary<std::uint64_t>();
    const auto value = std::bit_cast<double>(bits);
    return std::isfinite(value) ? value : std::numeric_limits<double>::denorm_min();
}

TEST(BlockText, GivesBackEveryBit)
{
    const bool held = rc::check("any readings → text → the same readings", [] {
        const bool regular = between(0, 1) == 1;
        std::int64_t at = between(0, 1'000'000'000);
        std::vector<std::int64_t> ms;
        std::vector<double> values;
        for (int i = between(1, 40); i > 0; --i) {
            ms.push_back(at);
            values.push_back(anyValue());
            at += regular ? 60'000 : between(1, 1'000'000);
        }
        const auto back = readBack(store::blockText(ms, values));
        RC_ASSERT(back.has_value());
        RC_ASSERT(back->ms == ms);
        RC_ASSERT(back->values.size() == values.size());
        for (std::size_t i = 0; i < values.size(); ++i)
            RC_ASSERT(back->values[i] == values[i]);
    });
    EXPECT_TRUE(held);
}

TEST(BlockText, OfAnotherShapeIsDamaged)
{
    for (const char* json :
         {"",        "[",       "]",       "[]",     "[1",      "1]",    "[1,]",
          "[,1]",    "[1 ,2]",  "[1,2]x",  "[1,2]]", "[nan]",   "[inf]", "[1e999]",
          "[0x1p3]", "[\"1\"]", "[[0,1]]", "{}",     "[1.2.3]", "[--1]"})
        EXPECT_FALSE(readBack({0, 60'000, json})) << json;
    for (const char* json : {"[1]", "[[0]]", "[[0,1]", "[[0,1],]", "[[0.5,1]]", "[[-1,1]]",
                             "[[99999999999,1]]", "[[0,1,2]]", "[[,1]]"})
        EXPECT_FALSE(readBack({0, std::nullopt, json})) << json;
    EXPECT_FALSE(readBack({-1, 0, "[1]"}));
    EXPECT_FALSE(readBack({store::instantRange, 0, "[1]"}));
    EXPECT_FALSE(readBack({0, -1, "[1,2]"}));
    EXPECT_FALSE(readBack({0, std::numeric_limits<std::int64_t>::max(), "[1,2,3]"}));
}

} // namespace
} // namespace holdband::test
