#include "core/text/numbers.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <rapidcheck/gtest.h>

using namespace holdband;

TEST(ScanDecimal, readsWhatLogsContain)
{
    EXPECT_EQ(scanDecimal("66.02"), (Decimal{66.02, 2}));
    EXPECT_EQ(scanDecimal("18,9", ','), (Decimal{18.9, 1}));
    EXPECT_EQ(scanDecimal("5.00"), (Decimal{5.0, 2}));
    EXPECT_EQ(scanDecimal("-127"), (Decimal{-127.0, 0}));
    EXPECT_EQ(scanDecimal("+3"), (Decimal{3.0, 0}));
    EXPECT_EQ(scanDecimal("\xE2\x88\x92"
                          "4.5"),
              (Decimal{-4.5, 1}));
    EXPECT_EQ(scanDecimal(".5"), (Decimal{0.5, 1}));
    EXPECT_EQ(scanDecimal("1e3"), (Decimal{1000.0, 0}));
    EXPECT_EQ(scanDecimal("123456789012345678.25"), (Decimal{123456789012345678.25, 2}));
}

TEST(ScanDecimal, refusesTextsThatAreNoNumber)
{
    for (const char* text : {"",      "-",      "nan",   "NaN",   "inf", "-inf", "infinity", "0x10",
                             "1e400", "1e-400", "1.2.3", "1,234", "5.",  ".",    "1 2",      " 1",
                             "1 ",    "12a",    "--1",   "+-1",   "e5",  "1e"})
        EXPECT_EQ(scanDecimal(text), std::nullopt) << text;
    EXPECT_EQ(scanDecimal("1.5", ','), std::nullopt);
    EXPECT_EQ(scanDecimal("1.5e3", ','), std::nullopt);
    EXPECT_EQ(scanDecimal(std::string(1000, '9')), std::nullopt);
}

TEST(ParseDecimal, namesWhatIsWrong)
{
    EXPECT_EQ(parseDecimal(" 1.5 ")->value, 1.5);
    EXPECT_EQ(parseDecimal("abc").error().what, "\"abc\" is not a number");
    EXPECT_EQ(parseDecimal("  ").error().what, "a number is missing");
}

TEST(TypedNumber, acceptsPointAndComma)
{
    EXPECT_EQ(parseTypedNumber("1.25")->value, 1.25);
    EXPECT_EQ(parseTypedNumber("1,25")->value, 1.25);
    EXPECT_EQ(parseTypedNumber(" 1.050 "), (Decimal{1.05, 3}));
    EXPECT_EQ(parseTypedNumber("0,125")->value, 0.125);
    EXPECT_EQ(parseTypedNumber("1234,567")->value, 1234.567);
    EXPECT_EQ(parseTypedNumber("1,050", ','), (Decimal{1.05, 3}));
}

TEST(TypedNumber, asksWhereTwoReadingsFit)
{
    EXPECT_EQ(parseTypedNumber("1,234").error().sentence(),
              "\"1,234\" can be read in two ways; write 1.234 or 1234.");
    EXPECT_EQ(parseTypedNumber("1.234", ',').error().sentence(),
              "\"1.234\" can be read in two ways; write 1,234 or 1234.");
    EXPECT_FALSE(parseTypedNumber("-1,234").has_value());
    for (const char* text : {"1.234,5", "1,234.5", "1,234,567", "1.234.567"})
        EXPECT_NE(parseTypedNumber(text).error().what.find("more than one"), std::string::npos)
            << text;
    for (const char* text : {"", "1 234", "twelve", "nan", "1e999"})
        EXPECT_FALSE(parseTypedNumber(text).has_value()) << text;
}

TEST(NumberText, isShortOrFixed)
{
    EXPECT_EQ(shortestText(0.1), "0.1");
    EXPECT_EQ(shortestText(66.02, ','), "66,02");
    EXPECT_EQ(fixedText(66.0, 1), "66.0");
    EXPECT_EQ(fixedText(-0.04, 1), "0.0");
    EXPECT_EQ(fixedText(-0.06, 1), "-0.1");
    EXPECT_EQ(fixedText(11.525, 2, ','), "11,53"); // the double is 11.5250000000000003…
}

RC_GTEST_PROP(NumberProperty, shortestTextReadsBack, (double value))
{
    RC_PRE(std::isfinite(value));
    const auto back = scanDecimal(shortestText(value));
    RC_ASSERT(back.has_value());
    RC_ASSERT(back->value == value);
}

RC_GTEST_PROP(NumberProperty, fastPathRoundsAsTheLibraryDoes, ())
{
    const auto digits =
        *rc::gen::inRange<std::int64_t>(-999'999'999'999'999, 1'000'000'000'000'000);
    std::string text = std::to_string(digits);
    const std::size_t first = digits < 0 ? 1 : 0;
    text.insert(*rc::gen::inRange<std::size_t>(first, text.size()), ".");
    const auto value = scanDecimal(text);
    RC_ASSERT(value.has_value());
    RC_ASSERT(value->value == std::stod(text)); // the tests run in the C locale
}
