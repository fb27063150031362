// What a plot's series draw, without its axes, heading and labels.
#pragma once

#include "ui/charts/plot.h"

#include <QImage>
#include <gtest/gtest.h>

namespace holdband::ui::test {

template <typename Series>
std::vector<Series> seriesOf(const Plot& plot)
{
    std::vector<Series> found;
    for (const PlotSeries& each : plot.series()) {
        if (const auto* series = std::get_if<Series>(&each))
            found.push_back(*series);
    }
    return found;
}

inline const PlotLabel* labelOf(const Plot& plot, const QString& text)
{
    for (const PlotLabel& label : plot.labels()) {
        if (label.text == text)
            return &label;
    }
    return nullptr;
}

inline PictureLook pictureLook(Scheme scheme = Scheme::light)
{
    PictureLook look;
    look.scheme = scheme;
    look.font.setPixelSize(13);
    return look;
}

/// Of the box from 0, 0 to the end of the plot's box.
inline QImage imageOf(const Plot& plot, double ratio, bool withSeries = true)
{
    const QSizeF size(plot.box().right(), plot.box().bottom());
    QImage image((size * ratio).toSize(), QImage::Format_RGB32);
    image.setDevicePixelRatio(ratio);
    image.fill(plot.colours().card);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    if (withSeries)
        plot.draw(painter);
    else {
        plot.paintBehind(painter);
        plot.paintOver(painter);
    }
    return image;
}

struct DrawnPixels {
    int inside = 0;
    int outside = 0;
};

/// The pixels that the series change, inside the plot's area and outside of it. A pen or a dot on
/// the edge reaches a little further.
inline DrawnPixels drawnBySeries(const Plot& plot, double ratio, double reach = 1.5)
{
    const QImage all = imageOf(plot, ratio);
    const QImage without = imageOf(plot, ratio, false);
    const QRectF area = plot.area().adjusted(-reach, -reach, reach, reach);
    DrawnPixels count;
    for (int y = 0; y < all.height(); ++y) {
        for (int x = 0; x < all.width(); ++x) {
            if (all.pixel(x, y) != without.pixel(x, y))
                ++(area.contains(QPointF(x + 0.5, y + 0.5) / ratio) ? count.inside : count.outside);
        }
    }
    return count;
}

/// Every plot of a picture draws something in its area and nothing outside.
inline void expectDrawnInside(const PlotPicture& picture, QSizeF size, double reach = 1.5)
{
    for (const Scheme scheme : {Scheme::light, Scheme::dark}) {
        for (const Plot& plot : picture.plots(size, pictureLook(scheme))) {
            for (const double ratio : {1.0, 2.0}) {
                const DrawnPixels drawn = drawnBySeries(plot, ratio, reach);
                EXPECT_GT(drawn.inside, 100);
                EXPECT_EQ(drawn.outside, 0) << plot.heading().toStdString() << ratio;
            }
        }
    }
}

} // namespace holdband::ui::test
