// The three plots of a run as data: series, ranges, ticks and marks; and that they are drawn inside
// their areas.
#include "tests/ui/drawn_plots.h"
#include "ui/charts/deviation_plot.h"
#include "ui/charts/energy_plot.h"
#include "ui/charts/run_picture.h"
#include "ui/charts/temperature_plot.h"
#include "ui/run/deviation_histogram.h"

#include "core/text/times.h"

#include <gmock/gmock.h>

namespace holdband::ui::test {

namespace {

constexpr double h = 3.6e6;
constexpr QSizeF panelSize(860.0, 300.0);

ChartLine lineOf(LineRole role, const char* name, std::vector<double> hours,
                 std::vector<double> values)
{
    ChartLine line{role, name, {}};
    for (double& each : hours)
        each *= h;
    line.track.ms = std::move(hours);
    line.track.value = std::move(values);
    line.track.runs = {{0, line.track.ms.size() - 1}};
    line.pyramid = TrackPyramid(line.track);
    return line;
}

/// Four days in °C: 20 ± 1 for three of them, then 4 ± 1. One excursion, one gap, one note, four
/// readings of the meter, which was reset before the third one.
RunChart fourDays()
{
    RunChart chart;
    chart.origin = *parseRfc3339("2026-03-02T00:00:00Z");
    chart.zone = Zone::utc();
    chart.span = {chart.origin, chart.instantOf(96 * h)};
    chart.stages = {{"Primary", "", {0, 72 * h}}, {"Crash", "", {72 * h, 96 * h}}};
    chart.bands = {{{0, 72 * h}, 20.0, 20.0, 1.0}, {{72 * h, 96 * h}, 4.0, 4.0, 1.0}};
    chart.lines.push_back(lineOf(LineRole::chamber, "chamber", {0, 96}, {-10.0, -10.0}));
    chart.lines.push_back(lineOf(LineRole::ambient, "room", {0, 48, 96}, {24.0, 25.0, 24.0}));
    chart.lines.push_back(
        lineOf(LineRole::beer, "beer", {0, 30, 36, 42, 72, 80, 96}, {20, 20, 23, 20, 20, 4, 4}));
    chart.deviation.push_back(
        lineOf(LineRole::beer, "", {0, 30, 36, 42, 72}, {0, 0, 3, 0, 0}).track);
    chart.deviationPyramids.emplace_back(chart.deviation.back());
    chart.gaps = {{44 * h, 50 * h}};
    chart.settling = {{72 * h, 80 * h}};
    chart.leftOut = {{{10 * h, 12 * h}, "probe out"}};
    chart.excursions = {{{32 * h, 40 * h}, 7 * h, 36 * h, 23.0, 3.0, 1.0, true, "lid open"}};
    chart.notes = {{20 * h, "dry hops"}};
    chart.energy = {{0, 0.0, true, false, false},
                    {24 * h, 2.0, true, true, false},
                    {48 * h, 3.0, true, true, true},
                    {96 * h, 9.0, true, false, false}};
    chart.energyBounds = {{0, 0.0, 0.1, false},
                          {24 * h, 1.9, 2.1, true},
                          {48 * h, 2.9, 3.4, true},
                          {60 * h, 4.0, 4.5, false},
                          {96 * h, 8.9, 9.1, true}};
    chart.unmetered = {{50 * h, 58 * h}};
    return chart;
}

PanelPlace placeOf(const RunChart& chart, QSizeF size = panelSize)
{
    return {size, chart.span, chart.span};
}

PanelPlace zoomed(const RunChart& chart, double from, double to)
{
    return {panelSize, {chart.instantOf(from * h), chart.instantOf(to * h)}, chart.span};
}

template <typename Kind>
Plot drawn(const RunChart& chart, const PanelPlace& place)
{
    Kind kind;
    kind.setChart(&chart);
    return kind.plot(place, pictureLook());
}

std::vector<std::string> labelsOf(const std::vector<PlotTick>& ticks)
{
    std::vector<std::string> labels;
    for (const PlotTick& tick : ticks)
        labels.push_back(tick.label.toStdString());
    return labels;
}

} // namespace

TEST(TemperaturePlot, HasBandTargetRoomAndBeerAsSeries)
{
    const RunChart chart = fourDays();
    const Plot plot = drawn<TemperaturePlot>(chart, placeOf(chart));
    EXPECT_EQ(plot.across(), (ValueRange{0.0, 96 * h}));
    EXPECT_NEAR(plot.up().low, 3.0 - 0.05 * 22.0, 1e-9) << "the band's edge, without the chamber";
    EXPECT_NEAR(plot.up().high, 25.0 + 0.05 * 22.0, 1e-9);
    const auto bands = seriesOf<PlotArea>(plot);
    ASSERT_EQ(bands.size(), 1u);
    EXPECT_TRUE(bands[0].outline.containsPoint({70 * h, 19.5}, Qt::OddEvenFill));
    EXPECT_FALSE(bands[0].outline.containsPoint({70 * h, 4.0}, Qt::OddEvenFill));
    EXPECT_TRUE(bands[0].outline.containsPoint({80 * h, 4.5}, Qt::OddEvenFill));
    const auto lines = seriesOf<PlotLine>(plot);
    ASSERT_EQ(lines.size(), 3u);
    EXPECT_EQ(lines[0].points[1], QPointF(48 * h, 25.0)) << "the room, behind the others";
    EXPECT_EQ(lines[1].pen.style(), Qt::DashLine) << "the target";
    EXPECT_EQ(lines[1].points[3], QPointF(96 * h, 4.0));
    EXPECT_EQ(lines[2].points[2], QPointF(36 * h, 23.0)) << "the beer";
    EXPECT_LT(contrast(lines[0].pen.color(), plot.colours().card),
              contrast(plot.colours().ambient, plot.colours().card))
        << "the room's line is paler";
}

TEST(TemperaturePlot, MarksStagesStretchesExcursionsAndNotes)
{
    const RunChart chart = fourDays();
    const PlotMarks marks = drawn<TemperaturePlot>(chart, placeOf(chart)).marks();
    ASSERT_EQ(marks.stages.size(), 2u);
    EXPECT_EQ(marks.stages[1].label, "Crash");
    EXPECT_EQ(marks.stages[1].from, 72 * h);
    EXPECT_THAT(marks.stretches,
                ::testing::ElementsAre(PlotStretch{72 * h, 80 * h, Shading::slanted, {}},
                                       PlotStretch{44 * h, 50 * h, Shading::plain, "no data"},
                                       PlotStretch{10 * h, 12 * h, Shading::upright, "left out"}));
    ASSERT_EQ(marks.rings.size(), 1u);
    EXPECT_EQ(marks.rings[0].at, QPointF(36 * h, 23.0));
    EXPECT_EQ(marks.rings[0].label, "lid open");
    ASSERT_EQ(marks.notes.size(), 1u);
    EXPECT_EQ(marks.notes[0].label, "1");
}

TEST(TemperaturePlot, FindsTheRingAndTheNoteUnderThePointer)
{
    const RunChart chart = fourDays();
    const Plot plot = drawn<TemperaturePlot>(chart, placeOf(chart));
    const QPointF ring(plot.x(36 * h), plot.y(23.0));
    EXPECT_EQ(ringAt(plot, ring + QPointF(6.0, -6.0)), 0);
    EXPECT_EQ(ringAt(plot, ring + QPointF(20.0, 0.0)), -1);
    EXPECT_TRUE(noteBox(plot, 0).contains(QPointF(plot.x(20 * h), plot.area().bottom() - 6.0)));
}

TEST(TemperaturePlot, AnExcursionsTipSaysHowLongItWasOutsideWithoutShortReturns)
{
    const RunChart chart = fourDays();
    EXPECT_EQ(excursionText(chart, chart.excursions[0]),
              "Outside from 3 Mar 08:00, 7 h, up to 2.0 °C above the band · lid open");
}

TEST(TemperaturePlot, ChamberAndCoolantOnlyOnRequest)
{
    const RunChart chart = fourDays();
    TemperaturePlot kind;
    kind.setChart(&chart);
    kind.setCoolingShown(true);
    const Plot plot = kind.plot(placeOf(chart), pictureLook());
    EXPECT_EQ(seriesOf<PlotLine>(plot).size(), 4u);
    EXPECT_LT(plot.up().low, -10.0);
}

TEST(TemperaturePlot, ItsScaleFitsWhatIsShown)
{
    const RunChart chart = fourDays();
    const Plot plot = drawn<TemperaturePlot>(chart, zoomed(chart, 84.0, 96.0));
    EXPECT_GT(plot.up().high, 24.0) << "the room is shown";
    const Plot early = drawn<TemperaturePlot>(chart, zoomed(chart, 0.0, 20.0));
    EXPECT_NEAR(early.up().low, 19.0 - 0.05 * (early.up().high - early.up().low) / 1.1, 1e-9);
    EXPECT_GE(early.upTicks().size(), 3u);
}

TEST(TemperaturePlot, NamesItsLinesAtTheirEndsWhereThereIsSpace)
{
    const RunChart chart = fourDays();
    const Plot wide = drawn<TemperaturePlot>(chart, placeOf(chart));
    for (const char* name : {"room", "beer"}) {
        const PlotLabel* label = labelOf(wide, name);
        ASSERT_TRUE(label) << name;
        EXPECT_GT(label->at.x(), wide.area().right()) << name;
        const double width = QFontMetricsF(wide.bold()).horizontalAdvance(name);
        EXPECT_LE(label->at.x() + width, wide.box().right()) << name;
    }
    EXPECT_NEAR(labelOf(wide, "beer")->at.y(), wide.y(4.0), 8.0);
    const Plot narrow = drawn<TemperaturePlot>(chart, placeOf(chart, {300.0, 300.0}));
    ASSERT_TRUE(labelOf(narrow, "beer"));
    EXPECT_LT(labelOf(narrow, "beer")->at.y(), narrow.area().top()) << "in the key above";
    EXPECT_GT(narrow.area().width(), 220.0);
}

TEST(TemperaturePlot, ALineThatEndsEarlierIsNamedInTheKey)
{
    RunChart chart = fourDays();
    chart.lines[1] = lineOf(LineRole::ambient, "room", {0, 30}, {24.0, 25.0});
    const Plot plot = drawn<TemperaturePlot>(chart, placeOf(chart));
    ASSERT_TRUE(labelOf(plot, "room"));
    EXPECT_LT(labelOf(plot, "room")->at.y(), plot.area().top());
    EXPECT_GT(labelOf(plot, "beer")->at.x(), plot.area().right());
}

TEST(TemperaturePlot, NamesAtOneHeightAreMovedApart)
{
    RunChart chart = fourDays();
    chart.lines[1] = lineOf(LineRole::ambient, "room", {0, 96}, {24.0, 4.1});
    const Plot plot = drawn<TemperaturePlot>(chart, placeOf(chart));
    const double apart = labelOf(plot, "beer")->at.y() - labelOf(plot, "room")->at.y();
    EXPECT_GE(apart, QFontMetricsF(plot.small()).height() - 0.01);
}

TEST(TemperaturePlot, SaysWhatToDoWithoutReadings)
{
    RunChart chart = fourDays();
    chart.lines.clear();
    const Plot plot = drawn<TemperaturePlot>(chart, placeOf(chart));
    EXPECT_TRUE(plot.emptyText().startsWith("Nothing is logged yet"));
    EXPECT_TRUE(plot.series().empty());
    EXPECT_TRUE(plot.upTicks().empty());
}

TEST(RunPlots, HaveDatesAndAgesBelowTheLowestOnly)
{
    const RunChart chart = fourDays();
    const Plot energy = drawn<EnergyPlot>(chart, placeOf(chart));
    EXPECT_THAT(labelsOf(energy.acrossTicks()),
                ::testing::IsSupersetOf({"2 Mar", "3 Mar", "4 Mar", "5 Mar"}));
    EXPECT_THAT(labelsOf(energy.elapsedTicks()),
                ::testing::IsSupersetOf({"day 0", "day 1", "day 4"}));
    const Plot temperature = drawn<TemperaturePlot>(chart, placeOf(chart));
    EXPECT_EQ(temperature.acrossTicks().size(), energy.acrossTicks().size());
    EXPECT_TRUE(temperature.acrossTicks().front().label.isEmpty());
    EXPECT_TRUE(temperature.acrossTicks().front().strong) << "a midnight";
    EXPECT_TRUE(temperature.elapsedTicks().empty());
}

TEST(RunPlots, ShareTheirEdges)
{
    const RunChart chart = fourDays();
    for (const QSizeF size : {QSizeF(300, 120), panelSize, QSizeF(1900, 500)}) {
        const QRectF area = drawn<TemperaturePlot>(chart, placeOf(chart, size)).area();
        for (const QRectF& other : {drawn<DeviationPlot>(chart, placeOf(chart, size)).area(),
                                    drawn<EnergyPlot>(chart, placeOf(chart, size)).area()}) {
            EXPECT_EQ(other.left(), area.left());
            EXPECT_EQ(other.right(), area.right());
        }
    }
}

TEST(DeviationPlot, FillsWhatIsOutsideTheBand)
{
    const RunChart chart = fourDays();
    const Plot plot = drawn<DeviationPlot>(chart, placeOf(chart));
    EXPECT_DOUBLE_EQ(plot.up().high, 3.0 * 1.12);
    EXPECT_DOUBLE_EQ(plot.up().low, -1.7);
    ASSERT_EQ(plot.marks().fills.size(), 1u);
    const QPolygonF& outline = plot.marks().fills[0].outline;
    EXPECT_EQ(outline.front(), QPointF(32 * h, 1.0));
    EXPECT_EQ(outline.back(), QPointF(40 * h, 1.0));
    EXPECT_TRUE(outline.containsPoint({36 * h, 2.0}, Qt::OddEvenFill));
    const auto lines = seriesOf<PlotLine>(plot);
    ASSERT_EQ(lines.size(), 2u); // the target, and the deviation
    EXPECT_EQ(lines[1].points[2], QPointF(36 * h, 3.0));
    const Plot before = drawn<DeviationPlot>(chart, zoomed(chart, 0.0, 24.0));
    EXPECT_DOUBLE_EQ(before.up().high, 1.7) << "no excursion is shown";
    EXPECT_TRUE(before.marks().fills.empty());
}

TEST(DeviationPlot, ALowPanelHasTheTargetAndTheEdgesOfTheBand)
{
    const RunChart chart = fourDays();
    EXPECT_THAT(labelsOf(drawn<DeviationPlot>(chart, placeOf(chart, {860.0, 90.0})).upTicks()),
                ::testing::ElementsAre("−1", "0", "+1"));
}

TEST(EnergyPlot, HasTheEstimateItsBoundsTheReadingsAndTheReset)
{
    const RunChart chart = fourDays();
    const Plot plot = drawn<EnergyPlot>(chart, placeOf(chart));
    EXPECT_EQ(plot.up().low, 0.0);
    EXPECT_NEAR(plot.up().high, 9.1 * 1.06, 1e-9);
    const auto ribbons = seriesOf<PlotArea>(plot);
    ASSERT_EQ(ribbons.size(), 1u);
    EXPECT_TRUE(ribbons[0].outline.containsPoint({36 * h, 2.6}, Qt::OddEvenFill));
    EXPECT_FALSE(ribbons[0].outline.containsPoint({54 * h, 3.7}, Qt::OddEvenFill)) << "a break";
    EXPECT_TRUE(ribbons[0].outline.containsPoint({72 * h, 5.9}, Qt::OddEvenFill));
    const auto lines = seriesOf<PlotLine>(plot);
    ASSERT_EQ(lines.size(), 1u);
    EXPECT_EQ(lines[0].points[2], QPointF(48 * h, 3.0));
    EXPECT_TRUE(qIsNaN(lines[0].points[3].y())) << "not joined";
    const auto dots = seriesOf<PlotDots>(plot);
    ASSERT_EQ(dots.size(), 2u);
    EXPECT_EQ(dots[0].points.size(), 3);
    EXPECT_EQ(dots[1].points, QPolygonF({QPointF(48 * h, 3.0)}));
    EXPECT_EQ(dots[1].shape, DotShape::square);
    EXPECT_TRUE(labelOf(plot, "dots: readings · ribbon: minimum – maximum · square: reset to 0"));
    ASSERT_EQ(plot.marks().stretches.size(), 1u);
    EXPECT_EQ(plot.marks().stretches[0].name, "not metered");
}

TEST(EnergyPlot, AMeterReadEachMinuteHasNoMoreDotsThanCanBeToldApart)
{
    RunChart chart = fourDays();
    chart.energy.clear();
    for (int minute = 0; minute <= 96 * 60; ++minute)
        chart.energy.push_back({minute * 60'000.0, 0.001 * minute, true, minute > 0, false});
    const Plot plot = drawn<EnergyPlot>(chart, placeOf(chart));
    EXPECT_LE(seriesOf<PlotDots>(plot).at(0).points.size(), 860);
    EXPECT_LE(seriesOf<PlotLine>(plot).at(0).points.size(), 2 * 860);
}

TEST(DeviationHistogram, HasBarsInsideAndOutsideTheBand)
{
    DeviationBars bars;
    bars.distribution = {{-1.5, -1.0, 0.0, 1.0, 1.5}, {1.0, 5.0, 4.0, 0.0}};
    bars.tolerance = 1.0;
    bars.unit = TemperatureUnit::fahrenheit;
    const Plot plot = deviationPlot(bars, QRectF(0, 0, 240, 100), pictureLook());
    EXPECT_EQ(plot.across(), (ValueRange{-1.5, 1.5}));
    EXPECT_EQ(plot.up(), (ValueRange{0.0, 0.5})) << "half of the time";
    const auto series = seriesOf<PlotBars>(plot);
    ASSERT_EQ(series.size(), 2u);
    ASSERT_EQ(series[0].bars.size(), 2u);
    EXPECT_DOUBLE_EQ(series[0].bars[1].value, 0.4);
    EXPECT_EQ(series[0].fill, setupLine(0, plot.colours()));
    ASSERT_EQ(series[1].bars.size(), 1u);
    EXPECT_DOUBLE_EQ(series[1].bars[0].value, 0.1);
    EXPECT_EQ(series[1].fill, plot.colours().excursion);
    EXPECT_THAT(labelsOf(plot.acrossTicks()), ::testing::ElementsAre("−1.8", "target", "+1.8"));
    EXPECT_EQ(drawnBySeries(plot, 1.0).outside, 0);
    EXPECT_GT(drawnBySeries(plot, 1.0).inside, 1000);
}

TEST(RunPicture, DrawsEachPlotInsideItsArea)
{
    const RunPicture picture(fourDays());
    ASSERT_EQ(picture.plots({860.0, 560.0}, pictureLook()).size(), 3u);
    expectDrawnInside(picture, {860.0, 560.0}, 3.5);
}

} // namespace holdband::ui::test
