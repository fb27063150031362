#include "ui/charts/pair_bars.h"

#include "tests/ui/drawn_plots.h"
#include "ui/charts/batch_energies.h"

#include <gmock/gmock.h>

namespace holdband::ui::test {

using results::GlanceRow;
using ::testing::ElementsAre;

namespace {

constexpr QSizeF barsSize(720.0, 340.0);

results::PairGlance twoPairs()
{
    results::PairGlance glance;
    results::GlancePair energy;
    energy.title = "Energy, kWh";
    energy.a = {analysis::Bounded{9.0, 7.0, 11.0}, {{"one", 8.0}, {"two", 10.0}}, "9.00"};
    energy.b = {analysis::Bounded{4.0, 0.0, 90.0}, {{"three", 4.0}}, "4.00"};
    energy.ahead = analysis::Ahead::b;
    energy.aheadText = "B less";
    results::GlancePair crash;
    crash.row = GlanceRow::crash;
    crash.title = "Crash cold in, h";
    crash.a = {analysis::Bounded{6.0, {}, {}}, {}, "6.0"};
    crash.b.text = "–";
    crash.aheadText = "B not known";
    glance.pairs = {energy, crash};
    return glance;
}

PairBarsPicture barsPicture(bool ofSetups = true)
{
    return {twoPairs(), ofSetups, {"Loop", "Cabinet"}};
}

} // namespace

TEST(PairBarsPicture, ShowsTheMeansTheIntervalsAndEveryBatch)
{
    const auto plots = barsPicture().plots(barsSize, pictureLook());
    ASSERT_EQ(plots.size(), 3U) << "the frame and a plot for each pair";
    const Plot& energy = plots[1];
    EXPECT_EQ(energy.across(), (ValueRange{0.0, 1.8 * 10.0})) << "a long whisker is cut off";
    const auto bars = seriesOf<PlotArea>(energy);
    ASSERT_EQ(bars.size(), 2U);
    EXPECT_EQ(bars[0].outline.boundingRect().right(), 9.0);
    EXPECT_EQ(bars[1].outline.boundingRect().right(), 4.0);
    EXPECT_GT(bars[0].outline.boundingRect().top(), bars[1].outline.boundingRect().bottom())
        << "A over B";
    const auto whiskers = seriesOf<PlotLine>(energy);
    ASSERT_EQ(whiskers.size(), 5U) << "A's with two ends, B's with one: it continues";
    EXPECT_EQ(whiskers[0].points.front().x(), 7.0);
    EXPECT_EQ(whiskers[0].points.back().x(), 11.0);
    EXPECT_EQ(whiskers[3].points.back().x(), 18.0);
    const auto dots = seriesOf<PlotDots>(energy);
    ASSERT_EQ(dots.size(), 2U);
    EXPECT_THAT(dots[0].points, ElementsAre(QPointF(8.0, 1.5), QPointF(10.0, 1.5)));
}

TEST(PairBarsPicture, WritesFiguresBesideTheBarsAndWhoIsAhead)
{
    const auto plots = barsPicture().plots(barsSize, pictureLook());
    const PlotLabel* a = labelOf(plots[1], "9.00");
    ASSERT_TRUE(a);
    EXPECT_GT(a->at.x(), plots[1].x(11.0)) << "right of the whisker";
    EXPECT_EQ(labelOf(plots[1], "B less")->font, LabelFont::bold);
    EXPECT_EQ(labelOf(plots[2], "B not known")->font, LabelFont::plain);
    EXPECT_TRUE(labelOf(plots[2], "–")) << "a figure that is not known";
    EXPECT_EQ(seriesOf<PlotArea>(plots[2]).size(), 1U);
    EXPECT_TRUE(seriesOf<PlotLine>(plots[2]).empty()) << "without bounds no whisker";
    EXPECT_TRUE(
        labelOf(plots[0], "bar: mean of the batches · whisker: 95 % interval · dot: a batch"));
    EXPECT_EQ(barsPicture(false).legend(), "bar: the figure · whisker: minimum – maximum");
}

TEST(PairBarsPicture, PutsTheTitlesAboveTheBarsWhereItIsNarrow)
{
    const auto wide = barsPicture().plots({720.0, 340.0}, pictureLook());
    const auto narrow = barsPicture().plots({260.0, 400.0}, pictureLook());
    EXPECT_GT(wide[1].area().left(), 100.0);
    EXPECT_LT(narrow[1].area().left(), 40.0);
    EXPECT_LT(labelOf(narrow[1], "Energy, kWh")->at.y(), narrow[1].area().top());
    QFont large;
    large.setPixelSize(26);
    EXPECT_GT(barsPicture().heightFor(720.0, large), 1.5 * barsPicture().heightFor(720.0));
}

TEST(PairBarsPicture, FindsThePairAtAPlace)
{
    QFont font;
    font.setPixelSize(13);
    const QRectF first = barsPicture().rowBox(0, barsSize, font);
    const QRectF second = barsPicture().rowBox(1, barsSize, font);
    EXPECT_EQ(first.bottom(), second.top());
    EXPECT_LT(second.bottom(), barsSize.height());
}

TEST(PairBarsPicture, IsDrawnInsideItsPlots)
{
    expectDrawnInside(barsPicture(), barsSize, 6.0);
}

TEST(BatchEnergiesPicture, HasALineForEachBatch)
{
    const BatchEnergiesPicture picture(
        {{"one", {{0.0, 0.0}, {24.0, 2.0}, {48.0, 5.0}}}, {"two", {{1.0, 0.0}, {30.0, 3.0}}}},
        {{"three", {{0.0, 0.0}, {72.0, 4.0}}}}, {"Loop", "Cabinet"});
    const Plot plot = picture.plots({560.0, 300.0}, pictureLook()).at(0);
    EXPECT_EQ(plot.across(), (ValueRange{0.0, 72.0}));
    EXPECT_NEAR(plot.up().high, 1.06 * 5.0, 1e-9);
    const auto lines = seriesOf<PlotLine>(plot);
    ASSERT_EQ(lines.size(), 3U);
    EXPECT_EQ(lines[0].points.back(), QPointF(48.0, 5.0));
    EXPECT_EQ(lines[1].pen.style(), Qt::SolidLine);
    EXPECT_EQ(lines[2].pen.style(), Qt::DashLine) << "B";
    EXPECT_TRUE(BatchEnergiesPicture({}, {}, {"Loop", "Cabinet"}).empty());
    expectDrawnInside(picture, {560.0, 300.0}, 4.5);
}

} // namespace holdband::ui::test
