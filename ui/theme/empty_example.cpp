#include "ui/theme/empty_example.h"

#include <QPainterPath>
#include <array>
#include <cmath>

namespace holdband::ui {

namespace {

constexpr double faint = 0.45; ///< opacity of the whole picture

/// A curve through values from 0 (bottom) to 1 (top), evenly spaced.
template <std::size_t count>
QPainterPath curveIn(const QRectF& box, const std::array<double, count>& values)
{
    QPainterPath path;
    for (std::size_t i = 0; i < count; ++i) {
        const QPointF at(box.left() + box.width() * static_cast<double>(i) / (count - 1),
                         box.bottom() - box.height() * values[i]);
        i == 0 ? path.moveTo(at) : path.lineTo(at);
    }
    return path;
}

void drawCurve(QPainter& painter, const QPainterPath& path, const QColor& colour, double width)
{
    painter.setPen(QPen(colour, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(path);
}

void drawBlock(QPainter& painter, const QRectF& box, const QColor& fill)
{
    painter.setPen(Qt::NoPen);
    painter.setBrush(fill);
    painter.drawRoundedRect(box, 2.0, 2.0);
}

void drawGridLines(QPainter& painter, const QRectF& box, const Colours& colours)
{
    painter.setPen(QPen(colours.grid, 1.0));
    for (int i = 0; i <= 3; ++i) {
        const double y = box.top() + box.height() * i / 3.0;
        painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
    }
}

/// Rows of cells, as the last rounds of three meters; one was missed.
void paintRounds(QPainter& painter, const QRectF& box, const Colours& colours)
{
    constexpr int rows = 3, columns = 8, missedRow = 1, missedColumn = 4;
    const double width = box.width() / columns, height = box.height() / rows;
    for (int row = 0; row < rows; ++row) {
        for (int column = 0; column < columns; ++column) {
            const QRectF cell =
                QRectF(box.left() + width * column, box.top() + height * row, width, height)
                    .adjusted(3.0, 3.0, -3.0, -3.0);
            painter.setPen(QPen(colours.fieldEdge, 1.0));
            painter.setBrush(colours.card);
            painter.drawRoundedRect(cell, 3.0, 3.0);
            if (row == missedRow && column == missedColumn)
                painter.drawEllipse(cell.center(), 4.0, 4.0);
            else
                drawBlock(
                    painter,
                    QRectF(cell.center() - QPointF(0.25 * width, 2.0), QSizeF(0.5 * width, 4.0)),
                    colours.fieldEdge);
        }
    }
}

/// A temperature in its band, and the crash.
void paintRun(QPainter& painter, const QRectF& box, const Colours& colours)
{
    constexpr std::array target{0.60, 0.60, 0.60, 0.60, 0.80, 0.80, 0.18, 0.18, 0.18};
    constexpr std::array beer{0.58, 0.62, 0.59, 0.61, 0.78, 0.81, 0.36, 0.20, 0.17};
    drawGridLines(painter, box, colours);
    drawCurve(painter, curveIn(box, target), colours.band, 0.2 * box.height());
    drawCurve(painter, curveIn(box, target), colours.target, 1.5);
    drawCurve(painter, curveIn(box, beer), setupLine(0, colours), 2.5);
}

/// Pairs of bars, one of each side.
void paintPairs(QPainter& painter, const QRectF& box, const Colours& colours)
{
    constexpr std::array<std::array<double, 2>, 4> pairs{
        {{0.45, 0.75}, {0.40, 0.65}, {0.95, 0.93}, {0.35, 0.80}}};
    const double height = box.height() / pairs.size();
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        for (std::size_t side = 0; side < 2; ++side) {
            const double top = box.top() + height * (static_cast<double>(i) + 0.08) +
                               0.40 * height * static_cast<double>(side);
            drawBlock(painter, QRectF(box.left(), top, box.width() * pairs[i][side], 0.34 * height),
                      setupLine(static_cast<int>(side), colours));
        }
    }
}

/// The energy of two setups growing by stage, with what is uncertain about it.
void paintForecast(QPainter& painter, const QRectF& box, const Colours& colours)
{
    constexpr std::array low{0.0, 0.12, 0.24, 0.32, 0.58};
    constexpr std::array high{0.0, 0.20, 0.42, 0.56, 0.96};
    drawGridLines(painter, box, colours);
    QPainterPath fan = curveIn(box, high);
    fan.connectPath(curveIn(box, low).toReversed());
    painter.fillPath(fan, setupFill(0, colours));
    constexpr std::array middle{0.0, 0.16, 0.33, 0.44, 0.77};
    constexpr std::array other{0.0, 0.12, 0.20, 0.30, 0.50};
    drawCurve(painter, curveIn(box, middle), setupLine(0, colours), 2.5);
    drawCurve(painter, curveIn(box, other), setupLine(1, colours), 2.5);
}

/// Cards with a coloured edge and lines of text.
void paintCards(QPainter& painter, const QRectF& box, const Colours& colours)
{
    constexpr int cards = 2;
    constexpr std::array lines{0.45, 0.75, 0.60};
    const double width = box.width() / cards;
    for (int i = 0; i < cards; ++i) {
        const QRectF card = QRectF(box.left() + width * i, box.top(), width, box.height())
                                .adjusted(4.0, 2.0, -4.0, -2.0);
        painter.setPen(QPen(colours.fieldEdge, 1.0));
        painter.setBrush(colours.card);
        painter.drawRoundedRect(card, 4.0, 4.0);
        drawBlock(painter, QRectF(card.left(), card.top(), 4.0, card.height()),
                  setupLine(i, colours));
        for (std::size_t line = 0; line < lines.size(); ++line)
            drawBlock(painter,
                      QRectF(card.left() + 14.0,
                             card.top() + card.height() * (0.2 + 0.25 * static_cast<double>(line)),
                             lines[line] * (card.width() - 28.0), 5.0),
                      colours.fieldEdge);
    }
}

/// Rows of a file, which become points of a curve.
void paintLog(QPainter& painter, const QRectF& box, const Colours& colours)
{
    constexpr int rows = 5;
    constexpr std::array curve{0.25, 0.30, 0.22, 0.60, 0.66, 0.63};
    const QRectF file(box.left(), box.top(), 0.42 * box.width(), box.height());
    for (int row = 0; row < rows; ++row) {
        const double y = file.top() + file.height() * (row + 0.3) / rows;
        drawBlock(painter, QRectF(file.left(), y, 0.5 * file.width(), 5.0), colours.fieldEdge);
        drawBlock(painter, QRectF(file.left() + 0.6 * file.width(), y, 0.3 * file.width(), 5.0),
                  colours.fieldEdge);
    }
    const QRectF chart(box.left() + 0.55 * box.width(), box.top(), 0.45 * box.width(),
                       box.height());
    drawGridLines(painter, chart, colours);
    drawCurve(painter, curveIn(chart, curve), setupLine(0, colours), 2.5);
}

} // namespace

void paintEmptyExample(QPainter& painter, QSizeF size, EmptyExample example, const Colours& colours)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setOpacity(faint);
    const QRectF box = QRectF(QPointF(), size).adjusted(4.0, 4.0, -4.0, -4.0);
    switch (example) {
    case EmptyExample::rounds:
        paintRounds(painter, box, colours);
        break;
    case EmptyExample::run:
        paintRun(painter, box, colours);
        break;
    case EmptyExample::sideBySide:
        paintPairs(painter, box, colours);
        break;
    case EmptyExample::nextBatch:
        paintForecast(painter, box, colours);
        break;
    case EmptyExample::equipment:
        paintCards(painter, box, colours);
        break;
    case EmptyExample::imports:
        paintLog(painter, box, colours);
        break;
    }
    painter.restore();
}

} // namespace holdband::ui
