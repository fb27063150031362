#include "ui/charts/pair_energy.h"

#include "ui/charts/clipping.h"
#include "ui/charts/plot_frame.h"
#include "ui/words/words.h"

#include <QFontMetrics>
#include <algorithm>
#include <cmath>

namespace holdband::ui {

using analysis::Bounded;
using analysis::RatioPoint;

namespace {

using Pick = std::function<const Bounded*(const RatioPoint&)>;

struct Drawn {
    Pick pick;
    QColor colour;
    Qt::PenStyle style = Qt::SolidLine;
};

/// The line of a figure and its bounds as a pale ribbon.
void paintBounded(QPainter& painter, const PlotFrame& frame, const std::vector<RatioPoint>& curve,
                  const Drawn& drawn)
{
    const QRectF plot = frame.plot();
    const double all = curve.back().elapsedHours;
    QPolygonF line, upper, lower;
    for (const RatioPoint& point : curve) {
        const Bounded* figure = drawn.pick(point);
        if (!figure)
            continue;
        const double x = plot.left() + point.elapsedHours / all * plot.width();
        line << QPointF(x, frame.y(figure->value));
        if (figure->bounded() && std::isfinite(*figure->high) && std::isfinite(*figure->low)) {
            upper << QPointF(x, frame.y(*figure->high));
            lower << QPointF(x, frame.y(*figure->low));
        }
    }
    std::reverse(lower.begin(), lower.end());
    QColor pale = drawn.colour;
    pale.setAlpha(60);
    painter.setPen(Qt::NoPen);
    painter.setBrush(pale);
    painter.drawPolygon(areaInside(upper + lower, plot));
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(drawn.colour, 2.0, drawn.style, Qt::FlatCap, Qt::RoundJoin));
    for (const QPolygonF& part : lineInside(line, plot))
        painter.drawPolyline(part);
}

} // namespace

PairEnergyPicture::PairEnergyPicture(const results::SideBySide& pair, PairSides sides)
    : m_curve(pair.ratioCurve), m_since(shown(pair.text.alignedFrom)),
      m_crashA(pair.deviations.crashA), m_crashB(pair.deviations.crashB), m_sides(std::move(sides))
{
}

/// Marks the start of each crash. The later one's line starts below the earlier one's label, so
/// that it does not cross it.
void PairEnergyPicture::paintCrashes(QPainter& painter, const PlotFrame& frame,
                                     const PictureLook& look) const
{
    painter.setFont(frame.small());
    for (const bool first : {true, false}) {
        const auto& crash = first ? m_crashA : m_crashB;
        if (!crash || *crash <= 0.0 || *crash >= m_curve.back().elapsedHours)
            continue;
        const double x = frame.x(*crash);
        const auto& other = first ? m_crashB : m_crashA;
        const bool later = other && (first ? *crash > *other : *crash >= *other);
        const double top = frame.plot().top() + (later ? 14.0 : 0.0);
        painter.setPen(QPen(look.colours().muted, 1.0, Qt::DotLine));
        painter.drawLine(QPointF(x, top), QPointF(x, frame.plot().bottom()));
        painter.setPen(m_sides.text(first, look.colours()));
        painter.drawText(QPointF(x + 4.0, top + 10.0),
                         first ? Words::tr("A’s crash") : Words::tr("B’s crash"));
    }
}

double PairEnergyPicture::mostKwh() const
{
    double most = 0.0;
    for (const RatioPoint& point : m_curve)
        most = std::max({most, point.a.value, point.b.value});
    const double values = most;
    for (const RatioPoint& point : m_curve) {
        for (const Bounded& figure : {point.a, point.b})
            most = std::max(most, std::min(figure.high.value_or(0.0), 1.4 * values));
    }
    return most > 0.0 ? most * 1.06 : 1.0;
}

/// "A 11.3", at the end of its line.
QString PairEnergyPicture::endText(bool first) const
{
    return QStringLiteral("%1 %2").arg(
        first ? QStringLiteral("A") : QStringLiteral("B"),
        numberText((first ? m_curve.back().a : m_curve.back().b).value, 1));
}

QString PairEnergyPicture::ratioWords() const
{
    const auto& ratio = m_curve.back().ratio;
    return ratio ? QStringLiteral("%1 ×").arg(numberText(ratio->value, 2)) : QString();
}

/// The same in both panels, so that their time axes match.
double PairEnergyPicture::endRoom(const QFontMetrics& metrics) const
{
    int widest = 0;
    for (const QString& words : {endText(true), endText(false), ratioWords()})
        widest = std::max(widest, metrics.horizontalAdvance(words));
    return widest + 12.0;
}

void PairEnergyPicture::paintEnergies(QPainter& painter, QRectF box, const PictureLook& look) const
{
    PlotFrame frame(painter, box, {0.0, mostKwh()}, look);
    const QString a = endText(true);
    const QString b = endText(false);
    const QFontMetrics metrics(frame.bold());
    frame.leaveRight(endRoom(metrics));
    const QString names = Words::tr("A %1 · B %2, dashed").arg(m_sides.a, m_sides.b);
    frame.setAcross({0.0, m_curve.back().elapsedHours});
    frame.paintHeading(Words::tr("Energy since %1, kWh").arg(m_since),
                       QFontMetrics(frame.small())
                           .elidedText(names, Qt::ElideRight, static_cast<int>(0.6 * box.width())));
    frame.paintValueAxis();
    paintCrashes(painter, frame, look);
    painter.setRenderHint(QPainter::Antialiasing);
    paintBounded(
        painter, frame, m_curve,
        {[](const RatioPoint& point) { return &point.a; }, m_sides.colour(true, look.colours())});
    paintBounded(painter, frame, m_curve,
                 {[](const RatioPoint& point) { return &point.b; },
                  m_sides.colour(false, look.colours()), Qt::DashLine});
    // Keeps the two labels apart even if the lines end together.
    double yA = frame.y(m_curve.back().a.value) + 4.0;
    double yB = frame.y(m_curve.back().b.value) + 4.0;
    separateLabels(yA, yB, metrics.height());
    painter.setFont(frame.bold());
    painter.setPen(m_sides.text(true, look.colours()));
    painter.drawText(QPointF(frame.plot().right() + 6.0, yA), a);
    painter.setPen(m_sides.text(false, look.colours()));
    painter.drawText(QPointF(frame.plot().right() + 6.0, yB), b);
}

void PairEnergyPicture::paintRatio(QPainter& painter, QRectF box, const PictureLook& look) const
{
    double most = 1.0;
    double least = 1.0;
    // The ratio of the first hours, with almost no energy used, would make the rest tiny.
    const double from = 0.08 * m_curve.back().elapsedHours;
    for (const RatioPoint& point : m_curve) {
        if (!point.ratio || point.elapsedHours < from)
            continue;
        most = std::max(most, point.ratio->value);
        least = std::min(least, point.ratio->value);
    }
    const double values = most;
    for (const RatioPoint& point : m_curve) {
        if (point.ratio && point.elapsedHours >= from)
            most = std::max(most, std::min(point.ratio->high.value_or(0.0), 1.3 * values));
    }
    const double margin = 0.15 * std::max(most - least, 0.2);
    PlotFrame frame(painter, box, {std::max(0.0, least - margin), most + margin}, look);
    frame.leaveRight(endRoom(QFontMetrics(frame.bold())));
    frame.leaveBelow(1);
    frame.paintHeading(Words::tr("A’s energy ÷ B’s at the same age"),
                       Words::tr("pale: the bounds"));
    frame.paintValueAxis();
    frame.paintDays(m_curve.back().elapsedHours);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(look.colours().muted, 1.0, Qt::DashLine));
    painter.drawLine(QPointF(frame.plot().left(), frame.y(1.0)),
                     QPointF(frame.plot().right(), frame.y(1.0)));
    paintBounded(painter, frame, m_curve,
                 {[](const RatioPoint& point) { return point.ratio ? &*point.ratio : nullptr; },
                  look.colours().energy});
    if (!m_curve.back().ratio)
        return;
    painter.setFont(frame.bold());
    painter.setPen(look.colours().text);
    painter.drawText(
        QPointF(frame.plot().right() + 6.0, frame.y(m_curve.back().ratio->value) + 4.0),
        ratioWords());
}

void PairEnergyPicture::paint(QPainter& painter, QSizeF size, const PictureLook& look) const
{
    const double upper = 0.6 * size.height();
    paintEnergies(painter, {0.0, 0.0, size.width(), upper}, look);
    paintRatio(painter, {0.0, upper + 8.0, size.width(), size.height() - upper - 8.0}, look);
}

} // namespace holdband::ui
