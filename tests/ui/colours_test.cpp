// Text is readable: 4.5:1 (WCAG 2.1, level AA), in light and in dark; and there is a font at all.
#include "ui/theme/colours.h"

#include <QFontDatabase>
#include <QFontInfo>
#include <QGuiApplication>
#include <gtest/gtest.h>

namespace holdband::ui {

namespace {

constexpr double readable = 4.5;

class ColoursTest : public ::testing::TestWithParam<Scheme> {};

} // namespace

TEST_P(ColoursTest, TextIsReadableOnItsBackground)
{
    const Colours& c = coloursOf(GetParam());
    for (const QColor& ground : {c.page, c.card}) {
        EXPECT_GE(contrast(c.text, ground), readable);
        EXPECT_GE(contrast(c.muted, ground), readable);
        EXPECT_GE(contrast(c.warn, ground), readable);
    }
    EXPECT_GE(contrast(c.text, c.button), readable);
    EXPECT_GE(contrast(c.strongText, c.strong), readable);
    EXPECT_GE(contrast(c.warn, c.warnBack), readable);
    EXPECT_GE(contrast(c.careText, c.careBack), readable);
    EXPECT_GE(contrast(c.bubbleText, c.bubble), readable);
}

TEST_P(ColoursTest, BatchNamesAreReadableOnTheirBars)
{
    const Colours& c = coloursOf(GetParam());
    for (int setup = 0; setup < 5; ++setup) {
        EXPECT_GE(contrast(c.text, setupFill(setup, c, false)), readable) << setup;
        EXPECT_GE(contrast(c.text, setupFill(setup, c, true)), readable) << setup;
        EXPECT_GE(contrast(setupText(setup, c), c.card), readable) << setup;
    }
}

INSTANTIATE_TEST_SUITE_P(Both, ColoursTest, ::testing::Values(Scheme::light, Scheme::dark));

TEST(Contrast, BlackOnWhiteIsTheHighest)
{
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21.0, 1e-9); // WCAG 2.1, definition
    EXPECT_NEAR(contrast(Qt::gray, Qt::gray), 1.0, 1e-9);
}

// Vermillion is for warnings alone.
TEST(Colours, TheFirstTwoSetupsAreBlueAndPurple)
{
    EXPECT_EQ(setupColour(0), QColor("#0072B2")); // Okabe and Ito, 2008
    EXPECT_NEAR(setupColour(1).hue(), QColor("#CC79A7").hue(), 10) << "their purple, darker";
    for (int setup = 0; setup < 5; ++setup) {
        EXPECT_NE(setupColour(setup), coloursOf(Scheme::light).excursion);
        for (int other = 0; other < setup; ++other)
            EXPECT_NE(setupColour(setup), setupColour(other));
        for (const Scheme scheme : {Scheme::light, Scheme::dark})
            EXPECT_GE(contrast(setupText(setup, coloursOf(scheme)), coloursOf(scheme).card), 4.5);
    }
}

TEST(Fonts, AFamilyIsFound)
{
    EXPECT_FALSE(QFontDatabase::families().isEmpty());
    EXPECT_FALSE(QFontInfo(QGuiApplication::font()).family().isEmpty());
}

} // namespace holdband::ui
