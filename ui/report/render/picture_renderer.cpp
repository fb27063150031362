#include "ui/report/render/picture_renderer.h"

#include "ui/report/compose/plain_text.h"
#include "ui/report/render/svg_renderer.h"
#include "ui/words/words.h"

#include <QBuffer>
#include <QFontMetrics>
#include <algorithm>
#include <cmath>

namespace holdband::report {

namespace {

constexpr double sheetMargin = 18.0; ///< around the sheet, in its own units
constexpr int textSize = 13;         ///< in the same units

/// A unit is chosen so that a landscape picture of 1080 pixels is 480 units high.
double scaleFor(QSize size)
{
    return std::sqrt(static_cast<double>(size.width()) * size.height()) / 640.0;
}

QFont fontOf(int pixels, bool bold)
{
    QFont font;
    font.setPixelSize(pixels);
    font.setHintingPreference(QFont::PreferNoHinting);
    if (bold)
        font.setWeight(QFont::DemiBold);
    return font;
}

/// Paints the text wrapped to the width, with at most `most` lines; returns the height used.
double paintWords(QPainter& painter, QPointF at, double width, const QString& words,
                  const QFont& font, const QColor& colour, int most)
{
    const QFontMetrics metrics(font);
    QString fit = words;
    const auto boxOf = [&](const QString& text) {
        return metrics.boundingRect(QRect(0, 0, static_cast<int>(width), 10'000),
                                    Qt::TextWordWrap | Qt::TextWrapAnywhere, text);
    };
    while (fit.size() > 8 && boxOf(fit).height() > most * metrics.lineSpacing() + 2)
        fit = shortened(fit, fit.size() * 9 / 10);
    const double height = boxOf(fit).height();
    painter.setFont(font);
    painter.setPen(colour);
    painter.drawText(QRectF(at, QSizeF(width, height + 4.0)), Qt::TextWordWrap, fit);
    return height;
}

/// One figure with its caption; returns its size.
QSizeF paintLarge(QPainter& painter, QPointF at, const LargeFigure& figure, int pixels,
                  const ui::Colours& colours, bool apply)
{
    const QFont large = fontOf(pixels, true);
    const QFont small = fontOf(textSize - 2, false);
    const QFontMetricsF value(large);
    const QFontMetricsF caption(small);
    if (apply) {
        painter.setFont(large);
        painter.setPen(figure.warns ? colours.warn : colours.text);
        painter.drawText(at + QPointF(0.0, value.ascent()), figure.value);
        painter.setFont(small);
        painter.setPen(colours.muted);
        painter.drawText(at + QPointF(0.0, value.height() + caption.ascent()), figure.caption);
    }
    return {
        std::max(value.horizontalAdvance(figure.value), caption.horizontalAdvance(figure.caption)),
        value.height() + caption.height()};
}

/// Side by side, and on in the next line where the width ends; returns the height used.
double paintLargeFigures(QPainter& painter, QPointF at, double width,
                         const std::vector<LargeFigure>& figures, const ui::Colours& colours)
{
    constexpr int leadPixels = 30;
    constexpr int otherPixels = 18;
    constexpr double gap = 20.0;
    QPointF place = at;
    double line = 0.0;
    for (const LargeFigure& figure : figures) {
        const int pixels = &figure == &figures.front() ? leadPixels : otherPixels;
        const QSizeF size = paintLarge(painter, place, figure, pixels, colours, false);
        if (place.x() > at.x() && place.x() + size.width() > at.x() + width) {
            place = {at.x(), place.y() + line + 4.0};
            line = 0.0;
        }
        paintLarge(painter, place, figure, pixels, colours, true);
        place.rx() += size.width() + gap;
        line = std::max(line, size.height());
    }
    return place.y() + line - at.y();
}

void paintAt(QPainter& painter, const QRectF& room, const ui::Picture& picture,
             const PictureLook& look)
{
    painter.save();
    painter.translate(room.topLeft());
    picture.paint(painter, room.size(), look);
    painter.restore();
}

/// To the left, or above if the room is upright; returns the room that it leaves.
QRectF paintGlance(QPainter& painter, const QRectF& room, const ui::Picture& glance,
                   const PictureLook& look)
{
    constexpr double gap = 14.0;
    constexpr double share = 0.42; ///< of the room's width or, at most, height
    const bool upright = room.height() > room.width();
    const QSizeF size =
        upright
            ? QSizeF(room.width(), std::min(glance.heightFor(room.width()), 0.5 * room.height()))
            : QSizeF(share * room.width(), room.height());
    const double scale = std::min(1.0, size.height() / glance.heightFor(size.width()));
    painter.save(); // smaller where it needs more height than there is
    painter.translate(room.topLeft());
    painter.scale(scale, scale);
    glance.paint(painter, size / scale, look);
    painter.restore();
    return upright ? room.adjusted(0.0, size.height() + gap, 0.0, 0.0)
                   : room.adjusted(size.width() + gap, 0.0, 0.0, 0.0);
}

void paintSheet(QPainter& painter, const Document& document, QSizeF size, PictureLook look)
{
    const ui::Colours& colours = look.colours();
    painter.fillRect(QRectF({}, size), colours.card);
    const double width = size.width() - 2.0 * sheetMargin;
    double y = sheetMargin - 6.0;
    y += paintWords(painter, {sheetMargin, y}, width, shortened(document.title, mostOfTitle),
                    fontOf(22, true), colours.text, 1);
    if (!document.largeFigures.empty())
        y += 4.0 + paintLargeFigures(painter, {sheetMargin, y + 2.0}, width, document.largeFigures,
                                     colours);
    y += 2.0 + paintWords(painter, {sheetMargin, y + 2.0}, width, unbroken(calm(document.headline)),
                          fontOf(15, false), colours.text, 3);
    const Figure* figure = document.figure();
    look.font = fontOf(textSize, false);
    const QRectF room(sheetMargin - 2.0, y + 8.0, width + 8.0, size.height() - y - 8.0 - 10.0);
    if (!figure) {
        paintWords(painter, room.topLeft() + QPointF(2.0, 20.0), width,
                   ui::Words::tr("There is nothing to draw yet."), look.font, colours.muted, 2);
        return;
    }
    const QRectF chart =
        document.glance ? paintGlance(painter, room, *document.glance, look) : room;
    paintAt(painter, chart, *figure->picture, look);
}

} // namespace

QImage asImage(const Document& document, QSize size, ui::Scheme scheme)
{
    const double scale = scaleFor(size);
    QImage image(size, QImage::Format_RGB32);
    image.fill(ui::coloursOf(scheme).card);
    QPainter painter(&image);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    painter.scale(scale, scale);
    PictureLook look;
    look.scheme = scheme;
    look.columns = scale;
    paintSheet(painter, document, QSizeF(size) / scale, look);
    return image;
}

QByteArray asPng(const Document& document, QSize size, ui::Scheme scheme)
{
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    QImage image = asImage(document, size, scheme);
    image.setText(QStringLiteral("Title"), calm(document.title));
    image.setText(QStringLiteral("Description"), calm(document.headline));
    image.save(&buffer, "PNG");
    return buffer.data();
}

QByteArray asSvg(const Document& document, QSize size, ui::Scheme scheme)
{
    PictureLook look;
    look.scheme = scheme;
    look.vectors = true;
    look.columns = 2.0;
    const QSizeF sheet = QSizeF(size) / scaleFor(size);
    const Figure* figure = document.figure();
    const QString words = figure ? figure->alt : document.headline;
    const QByteArray element =
        svgElement([&](QPainter& painter) { paintSheet(painter, document, sheet, look); }, sheet,
                   {document.title, words, size});
    return svgFile(element);
}

} // namespace holdband::report
