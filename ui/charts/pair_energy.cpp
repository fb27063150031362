#include "ui/charts/pair_energy.h"

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
void addBounded(Plot& plot, const std::vector<RatioPoint>& curve, const Drawn& drawn)
{
    QPolygonF line, upper, lower;
    for (const RatioPoint& point : curve) {
        const Bounded* figure = drawn.pick(point);
        if (!figure)
            continue;
        line << QPointF(point.elapsedHours, figure->value);
        if (figure->bounded() && std::isfinite(*figure->high) && std::isfinite(*figure->low)) {
            upper << QPointF(point.elapsedHours, *figure->high);
            lower << QPointF(point.elapsedHours, *figure->low);
        }
    }
    plot.addRibbon(upper, lower, paleOf(drawn.colour, 60));
    plot.addLine(line, QPen(drawn.colour, 2.0, drawn.style));
}

} // namespace

PairEnergyPicture::PairEnergyPicture(const results::SideBySide& pair, PairSides sides)
    : m_curve(pair.ratioCurve), m_since(shown(pair.text.alignedFrom)),
      m_crashA(pair.deviations.crashA), m_crashB(pair.deviations.crashB), m_sides(std::move(sides))
{
}

/// Marks the start of each crash. The later one's line starts below the earlier one's label, so
/// that it does not cross it.
void PairEnergyPicture::addCrashes(Plot& plot) const
{
    for (const bool first : {true, false}) {
        const auto& crash = first ? m_crashA : m_crashB;
        if (!crash || *crash <= 0.0 || *crash >= m_curve.back().elapsedHours)
            continue;
        const auto& other = first ? m_crashB : m_crashA;
        const bool later = other && (first ? *crash > *other : *crash >= *other);
        const double down = later ? 14.0 : 0.0;
        plot.addLine(
            {{QPointF(*crash, plot.up().low), QPointF(*crash, plot.up().high - plot.upOf(down))}},
            QPen(plot.colours().muted, 1.0, Qt::DotLine));
        plot.addLabel({first ? Words::tr("A’s crash") : Words::tr("B’s crash"),
                       {plot.x(*crash) + 4.0, plot.area().top() + down + 10.0},
                       m_sides.text(first, plot.colours())});
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

/// Keeps the two labels apart even if the lines end together.
void PairEnergyPicture::addEnds(Plot& plot) const
{
    double yA = plot.y(m_curve.back().a.value) + 4.0;
    double yB = plot.y(m_curve.back().b.value) + 4.0;
    separateLabels(yA, yB, QFontMetrics(plot.bold()).height());
    for (const bool first : {true, false})
        plot.addLabel({endText(first),
                       {plot.area().right() + 6.0, first ? yA : yB},
                       m_sides.text(first, plot.colours()),
                       LabelFont::bold});
}

Plot PairEnergyPicture::energies(QRectF box, const PictureLook& look) const
{
    Plot plot(box, look);
    plot.leaveRight(endRoom(QFontMetrics(plot.bold())));
    plot.setRanges({0.0, m_curve.back().elapsedHours}, {0.0, mostKwh()});
    const QString names = Words::tr("A %1 · B %2, dashed").arg(m_sides.a, m_sides.b);
    plot.setHeading(Words::tr("Energy since %1, kWh").arg(m_since),
                    QFontMetrics(plot.small())
                        .elidedText(names, Qt::ElideRight, static_cast<int>(0.6 * box.width())));
    plot.addUpAxis();
    addCrashes(plot);
    addBounded(
        plot, m_curve,
        {[](const RatioPoint& point) { return &point.a; }, m_sides.colour(true, look.colours())});
    addBounded(plot, m_curve,
               {[](const RatioPoint& point) { return &point.b; },
                m_sides.colour(false, look.colours()), Qt::DashLine});
    addEnds(plot);
    return plot;
}

ValueRange PairEnergyPicture::ratios() const
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
    return {std::max(0.0, least - margin), most + margin};
}

Plot PairEnergyPicture::ratio(QRectF box, const PictureLook& look) const
{
    Plot plot(box, look);
    plot.leaveRight(endRoom(QFontMetrics(plot.bold())));
    plot.leaveBelow(1);
    plot.setRanges({0.0, m_curve.back().elapsedHours}, ratios());
    plot.setHeading(Words::tr("A’s energy ÷ B’s at the same age"), Words::tr("pale: the bounds"));
    plot.addUpAxis();
    plot.addDays();
    plot.addLevel(1.0, QPen(look.colours().muted, 1.0, Qt::DashLine));
    addBounded(plot, m_curve,
               {[](const RatioPoint& point) { return point.ratio ? &*point.ratio : nullptr; },
                look.colours().text});
    if (m_curve.back().ratio)
        plot.addLabel({ratioWords(),
                       {plot.area().right() + 6.0, plot.y(m_curve.back().ratio->value) + 4.0},
                       look.colours().text,
                       LabelFont::bold});
    return plot;
}

std::vector<Plot> PairEnergyPicture::plots(QSizeF size, const PictureLook& look) const
{
    const double upper = 0.6 * size.height();
    return {energies({0.0, 0.0, size.width(), upper}, look),
            ratio({0.0, upper + 8.0, size.width(), size.height() - upper - 8.0}, look)};
}

} // namespace holdband::ui
