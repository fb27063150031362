// The layer over Qt Charts: values in, and nothing drawn outside the plot.
#include "ui/charts/plot.h"

#include "tests/ui/drawn_plots.h"
#include "ui/charts/gui_thread.h"

#include <QBuffer>
#include <QSvgGenerator>
#include <QThread>
#include <atomic>
#include <gtest/gtest.h>
#include <thread>

namespace holdband::ui::test {

namespace {

const QSizeF plotSize(400.0, 200.0);

/// With a line, an area and dots that go far beyond its ranges.
Plot overflowing()
{
    Plot plot(QRectF({}, plotSize), pictureLook());
    plot.leaveRight(40.0);
    plot.leaveBelow(2);
    plot.setRanges({0.0, 10.0}, {0.0, 100.0});
    plot.addArea({{QPointF(-5.0, -50.0), QPointF(20.0, -50.0), QPointF(20.0, 160.0)}}, Qt::green);
    plot.addLine({{QPointF(-5.0, 30.0), QPointF(5.0, 70.0), QPointF(6.0, 400.0)}},
                 QPen(Qt::blue, 2.0));
    PlotDots dots{{}, Qt::red, DotShape::square, 8.0};
    dots.points << QPointF(5.0, 50.0) << QPointF(50.0, 50.0);
    plot.addDots(dots);
    return plot;
}

QByteArray svgOf(const Plot& plot)
{
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setViewBox(QRectF({}, plotSize));
    QPainter painter(&generator);
    plot.draw(painter);
    painter.end();
    return buffer.data();
}

/// The centre of gravity of what is drawn on white, in the picture's units.
QPointF centreOfDrawn(const QImage& image)
{
    double x = 0.0, y = 0.0, all = 0.0;
    for (int row = 0; row < image.height(); ++row) {
        for (int column = 0; column < image.width(); ++column) {
            const double ink = 255.0 - qGray(image.pixel(column, row));
            x += ink * (column + 0.5);
            y += ink * (row + 0.5);
            all += ink;
        }
    }
    return QPointF(x, y) / (all * image.devicePixelRatio());
}

/// Of the red, green and blue of any pixel, 0 to 255.
int largestDifference(const QImage& a, const QImage& b)
{
    int largest = 0;
    for (int y = 0; y < a.height(); ++y) {
        for (int x = 0; x < a.width(); ++x) {
            const QColor one = a.pixelColor(x, y);
            const QColor other = b.pixelColor(x, y);
            largest = std::max({largest, std::abs(one.red() - other.red()),
                                std::abs(one.green() - other.green()),
                                std::abs(one.blue() - other.blue())});
        }
    }
    return largest;
}

} // namespace

TEST(Plot, DrawsItsSeriesInsideThePlotOnly)
{
    const Plot plot = overflowing();
    for (const double ratio : {1.0, 2.0}) {
        const DrawnPixels drawn = drawnBySeries(plot, ratio);
        const QSizeF pixels = plot.area().size() * ratio;
        // The area is a triangle of 344 of the 1000 square units, the line about 10 more.
        EXPECT_NEAR(drawn.inside / (pixels.width() * pixels.height()), 0.36, 0.015) << ratio;
        EXPECT_EQ(drawn.outside, 0) << ratio;
    }
}

TEST(Plot, PlacesValuesWhereItSaysTheyAre)
{
    const Plot plot = overflowing();
    const QImage image = imageOf(plot, 1.0);
    const QPoint dot = QPointF(plot.x(5.0), plot.y(50.0)).toPoint();
    EXPECT_EQ(image.pixelColor(dot), QColor(Qt::red));
    const QPoint onLine = QPointF(plot.x(2.5), plot.y(60.0)).toPoint();
    EXPECT_GT(image.pixelColor(onLine).blue(), image.pixelColor(onLine).red() + 100);
    const QPoint inArea = QPointF(plot.x(9.0), plot.y(5.0)).toPoint();
    EXPECT_EQ(image.pixelColor(inArea), QColor(Qt::green));
}

TEST(Plot, CentresDotsOnTheirValuesWhateverTheirEdge)
{
    for (const DotShape shape : {DotShape::disc, DotShape::square, DotShape::diamond}) {
        for (const double width : {0.0, 0.8, 1.6}) {
            Plot plot(QRectF({}, plotSize), pictureLook());
            plot.setRanges({0.0, 10.0}, {0.0, 100.0});
            const QPen edge = width > 0.0 ? QPen(Qt::black, width) : QPen(Qt::NoPen);
            plot.addDots({{{QPointF(5.0, 50.0)}}, Qt::black, shape, 9.0, edge});
            const QPointF centre = centreOfDrawn(imageOf(plot, 4.0));
            EXPECT_NEAR(centre.x(), plot.x(5.0), 0.05) << width << static_cast<int>(shape);
            EXPECT_NEAR(centre.y(), plot.y(50.0), 0.05) << width << static_cast<int>(shape);
        }
    }
}

TEST(Plot, DrawsBarsUpToTheirValues)
{
    Plot plot(QRectF({}, plotSize), pictureLook());
    plot.setRanges({0.0, 10.0}, {0.0, 100.0});
    plot.addBars({{{1.0, 3.0, 50.0}, {4.0, 6.0, 250.0}}, Qt::red});
    const QImage image = imageOf(plot, 1.0);
    const auto isRed = [&](double across, double up) {
        return image.pixelColor(QPointF(plot.x(across), plot.y(up)).toPoint()) == QColor(Qt::red);
    };
    EXPECT_TRUE(isRed(2.0, 48.0));
    EXPECT_FALSE(isRed(2.0, 52.0));
    EXPECT_FALSE(isRed(3.5, 10.0));
    EXPECT_TRUE(isRed(5.0, 98.0));
    EXPECT_EQ(drawnBySeries(plot, 1.0).outside, 0);
}

TEST(Plot, LeavesTheGapsOfALineEmpty)
{
    for (const int step : {1, 100}) { // few points, drawn as a path, and many, drawn in pieces
        Plot plot(QRectF({}, plotSize), pictureLook());
        plot.setRanges({0.0, 10.0}, {0.0, 100.0});
        QPolygonF points;
        for (int i = 0; i <= 10 * step; ++i) {
            const double across = static_cast<double>(i) / step;
            points << (across > 4.0 && across < 6.0 ? lineGap() : QPointF(across, 50.0));
        }
        plot.addLine(points, QPen(Qt::blue, 3.0));
        const QImage image = imageOf(plot, 1.0);
        const auto at = [&](double across) {
            return image.pixelColor(QPointF(plot.x(across), plot.y(50.0)).toPoint());
        };
        EXPECT_NE(at(3.9), QColor(Qt::white)) << step;
        EXPECT_EQ(at(5.0), QColor(Qt::white)) << step;
        EXPECT_NE(at(6.1), QColor(Qt::white)) << step;
    }
}

TEST(Plot, FillsNoLineWithTheBrushOfItsCaller)
{
    Plot plot(QRectF({}, plotSize), pictureLook());
    plot.setRanges({0.0, 10.0}, {0.0, 100.0});
    plot.addLine({{QPointF(0.0, 0.0), QPointF(5.0, 90.0), QPointF(10.0, 0.0)}},
                 QPen(Qt::blue, 2.0, Qt::DashLine)); // drawn as a path
    QImage image(plotSize.toSize(), QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setBrush(Qt::red);
    plot.draw(painter);
    painter.end();
    EXPECT_EQ(image.pixelColor(QPointF(plot.x(5.0), plot.y(30.0)).toPoint()), QColor(Qt::white));
}

TEST(Plot, WritesALineAsOnePathOfVectors)
{
    PictureLook look = pictureLook();
    look.vectors = true;
    Plot plot(QRectF({}, plotSize), look);
    plot.setRanges({0.0, 1000.0}, {0.0, 1.0});
    QPolygonF zigzag;
    for (int i = 0; i <= 1000; ++i)
        zigzag << QPointF(i, i % 2);
    plot.addLine(zigzag, QPen(Qt::blue, 2.0));
    const QByteArray svg = svgOf(plot);
    EXPECT_EQ(svg.count("<path"), 1);
    EXPECT_EQ(svg.count("<polyline"), 0);
}

TEST(Plot, HasThreeLabelsOnItsValueAxisAtAnyHeight)
{
    for (const double height : {60.0, 90.0, 150.0, 600.0}) {
        Plot plot(QRectF(0.0, 0.0, 400.0, height), pictureLook());
        plot.setRanges({0.0, 1.0}, {0.0, 19.0});
        plot.addUpAxis();
        EXPECT_GE(plot.upTicks().size(), 3U) << height;
    }
}

TEST(Plot, IsDrawnTheSameFromAnotherThread)
{
    Plot plot = overflowing();
    plot.setHeading("Heading", "remark");
    plot.addUpAxis();
    plot.addAcrossAxis("across");
    QImage image;
    std::atomic<bool> done = false;
    std::thread other([&] {
        image = imageOf(plot, 1.0);
        done = true;
    });
    while (!done) {
        serveGuiWork();
        QThread::msleep(1);
    }
    other.join();
    // A recorded drawing may round half a pixel the other way.
    EXPECT_LE(largestDifference(image, imageOf(plot, 1.0)), 2);
}

} // namespace holdband::ui::test
