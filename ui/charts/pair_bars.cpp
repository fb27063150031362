#include "ui/charts/pair_bars.h"

#include "ui/words/words.h"

#include <QFontMetricsF>
#include <algorithm>

namespace holdband::ui {

using results::GlancePair;
using results::GlanceSide;

namespace {

constexpr double beforeBars = 10.0;  ///< from a row's title to its bars
constexpr double afterBars = 8.0;    ///< from a bar to its figure
constexpr double betweenRows = 14.0; ///< from a row's bars to the next one's
constexpr double mostWhisker = 1.8;  ///< of the largest bar or dot; a longer one is cut off
constexpr double upOfA = 1.5;
constexpr double upOfB = 0.5;

QFont boldOf(QFont font)
{
    font.setWeight(QFont::DemiBold);
    return font;
}

double dotSize(const Plot& plot)
{
    return 0.4 * QFontMetricsF(plot.look().font).height();
}

/// The largest bar or dot.
double mostOf(const GlancePair& pair)
{
    double most = 0.0;
    for (const GlanceSide* side : {&pair.a, &pair.b}) {
        if (side->figure)
            most = std::max(most, side->figure->value);
        for (const results::BatchFigure& batch : side->batches)
            most = std::max(most, batch.value);
    }
    return most > 0.0 ? most : 1.0;
}

/// Up to the end of the longest whisker.
double reachOf(const GlancePair& pair)
{
    const double most = mostOf(pair);
    double reach = most;
    for (const GlanceSide* side : {&pair.a, &pair.b}) {
        if (side->figure && side->figure->bounded())
            reach = std::max(reach, std::min(*side->figure->high, mostWhisker * most));
    }
    return reach;
}

} // namespace

/// Where everything goes, in the picture's units.
struct PairBarsPicture::Frame {
    double top = 0.0;    ///< of the first row
    double height = 0.0; ///< of a row
    double line = 0.0;   ///< of text
    double width = 0.0;
    double barsLeft = 0.0;
    double barsRight = 0.0;
    bool stacked = false; ///< title and who is ahead stand above the bars
    QStringList legend;

    double natural() const { return (stacked ? 3.0 : 2.0) * (line + 2.0) + betweenRows; }
};

PairBarsPicture::PairBarsPicture(results::PairGlance glance, bool ofSetups, PairSides sides)
    : m_glance(std::move(glance)), m_ofSetups(ofSetups), m_sides(std::move(sides))
{
}

QString PairBarsPicture::legend() const
{
    return m_ofSetups
               ? Words::tr("bar: mean of the batches · whisker: 95 % interval · dot: a batch")
               : Words::tr("bar: the figure · whisker: minimum – maximum");
}

/// As many entries in a line as fit.
QStringList PairBarsPicture::legendLines(double width, const QFont& font) const
{
    static const QString between = QStringLiteral(" · ");
    const QFontMetricsF metrics(smallFont(font));
    QStringList lines;
    for (const QString& entry : legend().split(between)) {
        if (!lines.isEmpty() && metrics.horizontalAdvance(lines.back() + between + entry) <= width)
            lines.back() += between + entry;
        else
            lines << entry;
    }
    return lines;
}

PairBarsPicture::Frame PairBarsPicture::frameOf(QSizeF size, const QFont& font) const
{
    const QFontMetricsF plain(font);
    const QFontMetricsF bold(boldOf(font));
    double titles = 0.0, figures = 0.0, ahead = 0.0;
    for (const GlancePair& pair : m_glance.pairs) {
        titles = std::max(titles, plain.horizontalAdvance(shown(pair.title)));
        ahead = std::max(ahead, bold.horizontalAdvance(shown(pair.aheadText)));
        for (const GlanceSide* side : {&pair.a, &pair.b})
            figures = std::max(figures, bold.horizontalAdvance(shown(side->text)));
    }
    Frame frame;
    frame.width = size.width();
    frame.line = plain.height();
    frame.legend = legendLines(size.width() - 8.0, font);
    const double letter = bold.horizontalAdvance(u'B') + 8.0;
    const double right = size.width() - figures - 3.0 * afterBars;
    frame.stacked = right - ahead - titles - beforeBars - letter < 9.0 * frame.line;
    frame.barsLeft = 2.0 + letter + (frame.stacked ? 0.0 : titles + beforeBars);
    frame.barsRight = right - (frame.stacked ? 0.0 : ahead);
    frame.top = frame.line + 14.0;
    const double legend =
        static_cast<double>(frame.legend.size()) * QFontMetricsF(smallFont(font)).height() + 6.0;
    frame.height = std::max(frame.natural(), (size.height() - frame.top - legend) /
                                                 static_cast<double>(m_glance.pairs.size()));
    return frame;
}

double PairBarsPicture::heightFor(double width, const QFont& font) const
{
    const Frame frame = frameOf({width, 0.0}, font);
    return frame.top + static_cast<double>(m_glance.pairs.size()) * frame.natural() +
           static_cast<double>(frame.legend.size()) * QFontMetricsF(smallFont(font)).height() + 8.0;
}

double PairBarsPicture::heightFor(double width) const
{
    QFont font;
    font.setPixelSize(13); // that of reports
    return heightFor(width, font);
}

QRectF PairBarsPicture::rowBox(std::size_t row, QSizeF size, const QFont& font) const
{
    const Frame frame = frameOf(size, font);
    return {0.0, frame.top + static_cast<double>(row) * frame.height, size.width(), frame.height};
}

/// Heading, legend, and the lines between the pairs.
Plot PairBarsPicture::base(QSizeF size, const Frame& frame, const PictureLook& look) const
{
    Plot plot(QRectF({}, size), look);
    plot.setArea(QRectF({}, size));
    plot.setRanges({0.0, size.width()}, {0.0, size.height()});
    plot.setHeading(Words::tr("At a glance"), m_sides, {});
    for (std::size_t i = 1; i < m_glance.pairs.size(); ++i) {
        const double up = size.height() - frame.top - static_cast<double>(i) * frame.height;
        plot.addLine({{QPointF(2.0, up), QPointF(size.width() - 6.0, up)}},
                     QPen(plot.colours().grid, 1.0));
    }
    const QFontMetricsF metrics(plot.small());
    double base = frame.top + static_cast<double>(m_glance.pairs.size()) * frame.height + 2.0 +
                  metrics.ascent();
    for (const QString& line : frame.legend) {
        plot.addLabel({line, {2.0, base}, plot.colours().muted});
        base += metrics.height();
    }
    return plot;
}

void PairBarsPicture::addWhisker(Plot& plot, const analysis::Bounded& figure, double up,
                                 double half) const
{
    if (!figure.bounded() || *figure.low == *figure.high)
        return;
    const QPen pen(plot.colours().text, 1.4);
    const double end = std::min(*figure.high, plot.across().high);
    plot.addLine({{QPointF(*figure.low, up), QPointF(end, up)}}, pen);
    const auto cap = [&](double at) {
        plot.addLine({{QPointF(at, up - 0.45 * half), QPointF(at, up + 0.45 * half)}}, pen);
    };
    cap(*figure.low);
    if (end == *figure.high) // else it continues
        cap(end);
}

/// Right of everything that is drawn for this side.
void PairBarsPicture::addFigure(Plot& plot, const GlanceSide& side, double up) const
{
    double reach = side.figure ? side.figure->value : 0.0;
    if (side.figure && side.figure->high)
        reach = std::max(reach, std::min(*side.figure->high, plot.across().high));
    double last = 0.0;
    for (const results::BatchFigure& batch : side.batches)
        last = std::max(last, batch.value);
    const double right =
        std::max(plot.x(reach), last > 0.0 ? plot.x(last) + dotSize(plot) / 2.0 : 0.0);
    const QFontMetricsF metrics(plot.bold());
    plot.addLabel({shown(side.text),
                   {right + afterBars, plot.y(up) + (metrics.ascent() - metrics.descent()) / 2.0},
                   plot.colours().text,
                   LabelFont::bold});
}

void PairBarsPicture::addSide(Plot& plot, const GlancePair& pair, bool first, double half) const
{
    const GlanceSide& side = first ? pair.a : pair.b;
    const double up = first ? upOfA : upOfB;
    plot.addRowLabel(up, first ? QStringLiteral("A") : QStringLiteral("B"),
                     m_sides.text(first, plot.colours()));
    if (side.figure) {
        const QColor fill = mixed(m_sides.colour(first, plot.colours()), plot.colours().card, 0.55);
        plot.addArea(QRectF(QPointF(0.0, up - half), QPointF(side.figure->value, up + half)), fill);
        addWhisker(plot, *side.figure, up, half);
    }
    PlotDots dots{
        {}, plot.colours().card, DotShape::disc, dotSize(plot), QPen(plot.colours().text, 1.2)};
    for (const results::BatchFigure& batch : side.batches)
        dots.points << QPointF(batch.value, up);
    if (!dots.points.isEmpty())
        plot.addDots(std::move(dots));
    addFigure(plot, side, up);
}

/// The title and who is ahead: beside the bars, or above them.
void PairBarsPicture::addTexts(Plot& plot, const GlancePair& pair, const Frame& frame) const
{
    const QFontMetricsF plain(plot.look().font);
    const bool decided = isDecided(pair.ahead);
    const QFontMetricsF aheadMetrics(decided ? plot.bold() : plot.look().font);
    const QString ahead = shown(pair.aheadText);
    const double middle = plot.area().center().y() + (plain.ascent() - plain.descent()) / 2.0;
    const double base = frame.stacked ? plot.area().top() - 3.0 - plain.descent() : middle;
    const double left = frame.width - 6.0 - aheadMetrics.horizontalAdvance(ahead);
    const double room = frame.stacked ? left - 12.0 : plot.area().left();
    plot.addLabel({plain.elidedText(shown(pair.title), Qt::ElideRight, room),
                   {2.0, base},
                   plot.colours().text,
                   LabelFont::plain});
    plot.addLabel({ahead,
                   {left, base},
                   decided ? plot.colours().text : plot.colours().muted,
                   decided ? LabelFont::bold : LabelFont::plain});
}

Plot PairBarsPicture::row(std::size_t index, const Frame& frame, const PictureLook& look) const
{
    const GlancePair& pair = m_glance.pairs[index];
    const double top = frame.top + static_cast<double>(index) * frame.height;
    const double above = frame.stacked ? frame.line + 2.0 : 0.0;
    Plot plot({0.0, top, frame.width, frame.height}, look);
    plot.setArea({frame.barsLeft, top + betweenRows / 2.0 + above, frame.barsRight - frame.barsLeft,
                  frame.height - betweenRows - above});
    plot.setRanges({0.0, reachOf(pair)}, {0.0, 2.0});
    const double thickness = std::min(0.86 * plot.area().height() / 2.0, 1.7 * frame.line);
    addSide(plot, pair, true, plot.upOf(thickness / 2.0));
    addSide(plot, pair, false, plot.upOf(thickness / 2.0));
    addTexts(plot, pair, frame);
    return plot;
}

std::vector<Plot> PairBarsPicture::plots(QSizeF size, const PictureLook& look) const
{
    const Frame frame = frameOf(size, look.font);
    std::vector<Plot> all{base(size, frame, look)};
    for (std::size_t i = 0; i < m_glance.pairs.size(); ++i)
        all.push_back(row(i, frame, look));
    return all;
}

} // namespace holdband::ui
