#include "ui/charts/plot.h"

#include "ui/charts/ticks.h"
#include "ui/words/words.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

namespace holdband::ui {

namespace {

/// The square of a side's colour before its name.
double squareBefore(const QFontMetrics& metrics)
{
    return 0.7 * metrics.ascent();
}

/// The width of everything beside a side's name.
double widthBeside(const QFontMetrics& metrics)
{
    return squareBefore(metrics) + 4.0 * metrics.horizontalAdvance(u' ');
}

constexpr double stroke = 19.0;  ///< the sample line in a key
constexpr double beside = 5.0;   ///< from it to its text
constexpr double between = 14.0; ///< from one entry of a key to the next

double widthOf(const std::vector<PlotKey>& key, const QFontMetrics& metrics)
{
    double width = 0.0;
    for (const PlotKey& entry : key)
        width += metrics.horizontalAdvance(entry.text) + (entry.pen ? stroke + beside : 0.0) +
                 (width > 0.0 ? between : 0.0);
    return width;
}

} // namespace

Plot::Plot(QRectF box, const PictureLook& look) : m_box(box), m_look(look)
{
    const double line = QFontMetrics(look.font).height();
    m_area = box.adjusted(leftMargin, line + 12.0, -6.0, -8.0);
}

void Plot::leaveRight(double width)
{
    m_area.setRight(m_box.right() - width);
}

void Plot::leaveBelow(int lines)
{
    m_area.setBottom(m_box.bottom() - 6.0 - lines * QFontMetrics(small()).height());
}

void Plot::setRanges(ValueRange across, ValueRange up)
{
    m_across = across;
    m_up = up;
}

QFont Plot::small() const
{
    return smallFont(m_look.font);
}

QFont Plot::bold() const
{
    QFont font = m_look.font;
    font.setWeight(QFont::DemiBold);
    return font;
}

double Plot::x(double value) const
{
    return m_area.left() + (value - m_across.low) / (m_across.high - m_across.low) * m_area.width();
}

double Plot::y(double value) const
{
    return m_area.bottom() - (value - m_up.low) / (m_up.high - m_up.low) * m_area.height();
}

double Plot::acrossOf(double width) const
{
    return width / m_area.width() * (m_across.high - m_across.low);
}

double Plot::upOf(double height) const
{
    return height / m_area.height() * (m_up.high - m_up.low);
}

void Plot::setHeading(const QString& heading, const QString& remark)
{
    m_heading = heading;
    const QFontMetrics metrics(bold());
    const double base = m_box.top() + 4.0 + metrics.ascent();
    addLabel({heading, {m_box.left() + m_inset, base}, colours().text, LabelFont::bold});
    const double width = QFontMetrics(small()).horizontalAdvance(remark);
    if (!remark.isEmpty() && metrics.horizontalAdvance(heading) + width + 20.0 <= m_box.width())
        addLabel({remark, {m_box.right() - 6.0 - width, base}, colours().muted});
}

void Plot::setHeading(const QString& heading, const PairSides& sides, const QString& remark)
{
    const QFontMetrics metrics(small());
    const QString a = QStringLiteral("A ") + sides.a;
    const QString b = QStringLiteral("B ") + sides.b;
    const double marks = 2.0 * widthBeside(metrics);
    const double names = metrics.horizontalAdvance(a) + metrics.horizontalAdvance(b) + marks;
    const double room = m_box.width() - QFontMetrics(bold()).horizontalAdvance(heading) - 26.0;
    // The names take precedence over the remark.
    const double remarked = metrics.horizontalAdvance(remark);
    const bool both = names + remarked <= room;
    setHeading(heading, both ? remark : QString());
    const double wide = std::min(names, room);
    if (wide < 2.0 * marks)
        return;
    const double base = m_box.top() + 4.0 + QFontMetrics(bold()).ascent();
    double left = m_box.right() - 6.0 - wide - (both ? remarked : 0.0);
    const int each = names <= room ? metrics.horizontalAdvance(a) + metrics.horizontalAdvance(b)
                                   : static_cast<int>((wide - marks) / 2.0);
    for (const bool first : {true, false})
        left = addSide(left, base, first, sides,
                       metrics.elidedText(first ? a : b, Qt::ElideRight, each));
}

bool Plot::isKeyBelow(const QString& heading, const std::vector<PlotKey>& key) const
{
    const double room = m_area.right() - m_box.left() - m_inset -
                        QFontMetrics(bold()).horizontalAdvance(heading) - 2.0 * between;
    return !key.empty() && widthOf(key, QFontMetrics(small())) > room;
}

void Plot::setHeading(const QString& heading, const std::vector<PlotKey>& key)
{
    setHeading(heading);
    const QFontMetrics metrics(small());
    const bool below = isKeyBelow(heading, key);
    double x = below ? m_box.left() + m_inset : m_area.right() - widthOf(key, metrics);
    const double base =
        below ? m_box.top() + 6.0 + QFontMetrics(m_look.font).height() + metrics.ascent()
              : m_box.top() + 4.0 + QFontMetrics(m_look.font).ascent();
    for (const PlotKey& entry : key) {
        if (entry.pen) {
            const double middle = std::round(base - metrics.xHeight() / 2.0) + 0.5;
            m_samples.push_back({{x, middle, x + stroke, middle}, *entry.pen});
            x += stroke + beside;
        }
        addLabel({entry.text, {x, base}, colours().muted});
        x += metrics.horizontalAdvance(entry.text) + between;
    }
}

/// Returns where the next one begins.
double Plot::addSide(double x, double base, bool first, const PairSides& sides, const QString& name)
{
    const QFontMetrics metrics(small());
    const double square = squareBefore(metrics);
    m_squares.push_back({{x, base - square, square, square}, sides.colour(first, colours())});
    addLabel(
        {name, {x + square + metrics.horizontalAdvance(u' '), base}, sides.text(first, colours())});
    return x + widthBeside(metrics) + metrics.horizontalAdvance(name);
}

void Plot::addUpAxis()
{
    const double line = QFontMetrics(small()).height();
    addUpTicks(axisTicks(m_up.low, m_up.high, static_cast<int>(m_area.height() / (line * 1.9))));
}

void Plot::addUpTicks(const std::vector<double>& values, bool isSigned)
{
    const int decimals = decimalsOf(values);
    for (const double value : values)
        m_upTicks.push_back({value, isSigned && value != 0.0 ? signedText(value, decimals)
                                                             : numberText(value, decimals)});
}

void Plot::addAcrossAxis(const QString& words)
{
    const std::vector<double> ticks =
        axisTicks(m_across.low, m_across.high, static_cast<int>(m_area.width() / 80.0));
    for (const double value : ticks)
        m_acrossTicks.push_back({value, numberText(value, decimalsOf(ticks))});
    m_acrossLines = true;
    const QFontMetricsF metrics(small());
    if (!words.isEmpty())
        addLabel({words,
                  {m_area.right() - metrics.horizontalAdvance(words),
                   m_area.bottom() + 3.0 + metrics.height() + metrics.ascent()},
                  colours().muted});
}

void Plot::addDays()
{
    const int most = std::max(2, static_cast<int>(m_area.width() / 70.0));
    for (const AgeTick& tick : ageTicks(m_across.low, m_across.high, most))
        m_acrossTicks.push_back({tick.hours, shown(tick.label)});
}

void Plot::addAcrossTicks(std::vector<PlotTick> ticks)
{
    m_acrossTicks = std::move(ticks);
}

void Plot::addTimes(std::vector<PlotTick> times, std::vector<PlotTick> elapsed)
{
    m_acrossTicks = std::move(times);
    m_elapsedTicks = std::move(elapsed);
    m_acrossLines = true;
}

void Plot::addArea(QPolygonF outline, const QColor& fill)
{
    m_series.emplace_back(PlotArea{std::move(outline), fill});
}

void Plot::addArea(const QRectF& box, const QColor& fill)
{
    addArea({{box.topLeft(), box.topRight(), box.bottomRight(), box.bottomLeft()}}, fill);
}

void Plot::addRibbon(const QPolygonF& upper, const QPolygonF& lower, const QColor& fill)
{
    QPolygonF outline = upper;
    for (auto point = lower.rbegin(); point != lower.rend(); ++point)
        outline << *point;
    addArea(std::move(outline), fill);
}

void Plot::addLine(QPolygonF points, const QPen& pen)
{
    m_series.emplace_back(PlotLine{std::move(points), pen});
}

void Plot::addDots(PlotDots dots)
{
    m_series.emplace_back(std::move(dots));
}

void Plot::addBars(PlotBars bars)
{
    m_series.emplace_back(std::move(bars));
}

void Plot::addLabel(PlotLabel label)
{
    m_labels.push_back(std::move(label));
}

void Plot::addRowLabel(double up, const QString& text, const QColor& colour)
{
    const QFontMetricsF metrics(bold());
    addLabel({text,
              {m_area.left() - 8.0 - metrics.horizontalAdvance(text),
               y(up) - metrics.height() / 2.0 + metrics.ascent()},
              colour,
              LabelFont::bold});
}

void Plot::addUpright(double across, const QPen& pen)
{
    addLine({{QPointF(across, m_up.low), QPointF(across, m_up.high)}}, pen);
}

void Plot::addLevel(double up, const QPen& pen)
{
    addLine({{QPointF(m_across.low, up), QPointF(m_across.high, up)}}, pen);
}

void separateLabels(double& a, double& b, double least)
{
    const double missing = least - std::abs(a - b);
    if (missing <= 0.0)
        return;
    double& upper = a <= b ? a : b;
    double& lower = a <= b ? b : a;
    upper -= missing / 2.0;
    lower += missing / 2.0;
}

QColor paleOf(QColor colour, int alpha)
{
    colour.setAlpha(alpha);
    return colour;
}

void PlotPicture::paint(QPainter& painter, QSizeF size, const PictureLook& look) const
{
    for (const Plot& plot : plots(size, look))
        plot.draw(painter);
}

} // namespace holdband::ui
