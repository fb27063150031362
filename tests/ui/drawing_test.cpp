// Rough checks of the pixels that the lines of a chart draw.
#include "ui/charts/drawing.h"

#include <QImage>
#include <gtest/gtest.h>

namespace holdband::ui::test {

namespace {

constexpr std::size_t readings = 1'000'000;
constexpr int width = 500;
constexpr int height = 200;
const QColor ink(0, 0, 0);

RunChart flatChart(double peakAt)
{
    RunChart chart;
    ChartLine line{LineRole::beer, "beer", {}};
    for (std::size_t i = 0; i < readings; ++i) {
        line.track.ms.push_back(static_cast<double>(i) * 60'000.0);
        line.track.value.push_back(i % 2 == 0 ? 20.0 : 21.0);
    }
    line.track.value[static_cast<std::size_t>(peakAt * readings)] = 80.0;
    line.track.runs = {{0, readings - 1}};
    line.pyramid = TrackPyramid(line.track);
    chart.span = {chart.origin, chart.instantOf(line.track.ms.back())};
    chart.lines.push_back(std::move(line));
    return chart;
}

QImage drawn(const RunChart& chart, bool moving, double ratio)
{
    QImage image(static_cast<int>(width * ratio), static_cast<int>(height * ratio),
                 QImage::Format_RGB32);
    image.setDevicePixelRatio(ratio);
    image.fill(Qt::white);
    QPainter painter(&image);
    PanelLook look;
    look.moving = moving;
    look.columns = ratio;
    PanelCanvas canvas{painter, {QRectF(0, 0, width, height), chart.span, {0.0, 100.0}}, look};
    drawTrack(canvas, chart, chart.lines[0].track, chart.lines[0].pyramid, QPen(ink, 1.8));
    return image;
}

/// The darkest of the pixels around a point of the plot.
int darkest(const QImage& image, double x, double y)
{
    const double ratio = image.devicePixelRatio();
    int least = 255;
    for (int dx = -2; dx <= 2; ++dx) {
        for (int dy = -1; dy <= 1; ++dy)
            least = std::min(least, qGray(image.pixel(static_cast<int>(x * ratio) + dx,
                                                      static_cast<int>(y * ratio) + dy)));
    }
    return least;
}

} // namespace

TEST(DrawnTrack, OnePeakInAMillionReadingsIsOnThePicture)
{
    const RunChart chart = flatChart(0.4);
    for (const double ratio : {1.0, 2.0}) {
        for (const bool moving : {false, true}) {
            const QImage image = drawn(chart, moving, ratio);
            // 80 of 0 … 100 is 40 px from the top, the flat part between 158 and 160 px.
            EXPECT_LT(darkest(image, 0.4 * width, 42.0), 160) << ratio << moving;
            EXPECT_LT(darkest(image, 0.4 * width, 100.0), 160) << ratio << moving;
            EXPECT_LT(darkest(image, 0.7 * width, 159.0), 100) << ratio << moving;
            EXPECT_EQ(darkest(image, 0.7 * width, 100.0), 255) << ratio << moving;
            EXPECT_EQ(darkest(image, 0.7 * width, 170.0), 255) << ratio << moving;
        }
    }
}

TEST(DrawnTrack, AGapStaysEmptyAlsoWhereReadingsAreDense)
{
    RunChart chart = flatChart(0.1);
    chart.lines[0].track.runs = {{0, readings / 2}, {readings * 6 / 10, readings - 1}};
    const QImage image = drawn(chart, false, 1.0);
    EXPECT_LT(darkest(image, 0.45 * width, 159.0), 100);
    EXPECT_EQ(darkest(image, 0.55 * width, 159.0), 255);
    EXPECT_LT(darkest(image, 0.65 * width, 159.0), 100);
}

} // namespace holdband::ui::test
