#include "ui/charts/weather_points.h"

#include "core/text/quantities.h"
#include "ui/words/words.h"

#include <QFontMetricsF>
#include <algorithm>
#include <array>

namespace holdband::ui {

using analysis::LiftModel;

namespace {

struct BatchMark {
    DotShape shape;
    QString filled;
    QString hollow;
};

/// The mark of a side's first, second … batch; they begin again after six.
const BatchMark& markOf(std::size_t batch)
{
    static const std::array<BatchMark, 6> marks{
        BatchMark{DotShape::disc, QStringLiteral("●"), QStringLiteral("○")},
        {DotShape::square, QStringLiteral("■"), QStringLiteral("□")},
        {DotShape::diamond, QStringLiteral("◆"), QStringLiteral("◇")},
        {DotShape::triangle, QStringLiteral("▲"), QStringLiteral("△")},
        {DotShape::star, QStringLiteral("★"), QStringLiteral("☆")},
        {DotShape::pentagon, QStringLiteral("⬟"), QStringLiteral("⬠")}};
    return marks[batch % marks.size()];
}

/// In the order of their first points. Of batches that ran at once the first one named.
std::vector<std::string> batchesOf(const LiftModel& model)
{
    std::vector<std::string> names;
    for (const analysis::WeatherPair& pair : model.pairs) {
        if (std::find(names.begin(), names.end(), pair.of.front()) == names.end())
            names.push_back(pair.of.front());
    }
    return names;
}

} // namespace

WeatherPicture::WeatherPicture(const results::SameWeather& weather, TemperatureUnit unit,
                               PairSides sides)
    : m_a(weather.a.model), m_b(weather.b.model), m_unit(unit), m_sides(std::move(sides))
{
    if (weather.any && weather.hold)
        m_reference = weather.hold->liftK;
}

double WeatherPicture::inUnit(double kelvins) const
{
    return valueIn(TemperatureDifference::kelvins(kelvins), m_unit);
}

ValueRange WeatherPicture::lifts() const
{
    double low = m_reference.value_or(0.0);
    double high = std::max(low, 1e-3);
    for (const LiftModel* model : {&m_a, &m_b}) {
        if (model->pairs.empty())
            continue;
        low = std::min(low, model->leastLift);
        high = std::max(high, model->mostLift);
    }
    const double margin = 0.05 * (high - std::min(low, 0.0));
    return {inUnit(std::min(low, 0.0)), inUnit(high + margin)};
}

ValueRange WeatherPicture::powers() const
{
    double most = 1.0;
    for (const LiftModel* model : {&m_a, &m_b}) {
        for (const analysis::WeatherPair& pair : model->pairs)
            most = std::max(most, pair.watts);
    }
    return {0.0, 1.1 * most};
}

/// The line over the range of recorded lifts, and the 95 % interval of the mean by batch.
void WeatherPicture::addModel(Plot& plot, const LiftModel& model, bool first) const
{
    if (!model.interval)
        return;
    constexpr int pieces = 24;
    QPolygonF line, upper, lower;
    for (int i = 0; i <= pieces; ++i) {
        const double lift = model.leastLift + (model.mostLift - model.leastLift) * i / pieces;
        const analysis::Interval95 mean = model.interval->meanResponse(lift);
        line << QPointF(inUnit(lift), mean.value);
        upper << QPointF(inUnit(lift), mean.high());
        lower << QPointF(inUnit(lift), mean.low());
    }
    const QColor colour = m_sides.colour(first, plot.colours());
    plot.addRibbon(upper, lower, paleOf(colour, 50));
    plot.addLine(line, QPen(colour, 2.0, penStyle(first)));
}

/// Each batch has a mark of its own: A's are filled, B's hollow.
void WeatherPicture::addPoints(Plot& plot, const LiftModel& model, bool first) const
{
    const QColor colour = m_sides.colour(first, plot.colours());
    const std::vector<std::string> batches = batchesOf(model);
    for (std::size_t batch = 0; batch < batches.size(); ++batch) {
        PlotDots dots;
        dots.fill = first ? colour : plot.colours().card;
        dots.edge = first ? QPen(plot.colours().card, 0.8) : QPen(colour, 1.4);
        dots.shape = markOf(batch).shape;
        dots.size = dots.shape == DotShape::square ? 6.0 : 7.4;
        for (const analysis::WeatherPair& pair : model.pairs) {
            if (pair.of.front() == batches[batch])
                dots.points << QPointF(inUnit(pair.liftK), pair.watts);
        }
        plot.addDots(std::move(dots));
    }
}

/// "A ● Ale 1  ■ Ale 2 · B ○ Lager 1", below the axis.
void WeatherPicture::addBatchNames(Plot& plot) const
{
    QStringList sides;
    for (const bool first : {true, false}) {
        const std::vector<std::string> batches = batchesOf(first ? m_a : m_b);
        QStringList names{first ? QStringLiteral("A") : QStringLiteral("B")};
        for (std::size_t batch = 0; batch < batches.size(); ++batch)
            names << (first ? markOf(batch).filled : markOf(batch).hollow) + QChar(u'\u00a0') +
                         shown(batches[batch]);
        if (!batches.empty())
            sides << names.join(QStringLiteral("  "));
    }
    const QFontMetricsF metrics(plot.small());
    const QString text = metrics.elidedText(sides.join(QStringLiteral("  ·  ")), Qt::ElideRight,
                                            plot.area().width());
    plot.addLabel({text,
                   {plot.area().left(),
                    plot.area().bottom() + 3.0 + 2.0 * metrics.height() + metrics.ascent()},
                   plot.colours().muted});
}

void WeatherPicture::addReference(Plot& plot) const
{
    if (!m_reference)
        return;
    plot.addUpright(inUnit(*m_reference), QPen(plot.colours().muted, 1.0, Qt::DashLine));
    const double x = plot.x(inUnit(*m_reference));
    const QString text = Words::tr("compared here");
    const double width = QFontMetricsF(plot.small()).horizontalAdvance(text);
    const bool left = x + width + 6.0 > plot.area().right();
    plot.addLabel(
        {text, {left ? x - width - 4.0 : x + 4.0, plot.area().top() + 10.0}, plot.colours().muted});
}

std::vector<Plot> WeatherPicture::plots(QSizeF size, const PictureLook& look) const
{
    Plot plot(QRectF({}, size), look);
    plot.leaveBelow(3);
    plot.setRanges(lifts(), powers());
    plot.setHeading(Words::tr("Mean power between readings, W"),
                    Words::tr("A %1, filled · B %2, hollow").arg(m_sides.a, m_sides.b));
    plot.addUpAxis();
    plot.addAcrossAxis(Words::tr("room warmer than the beer, %1").arg(shown(unitText(m_unit))));
    addReference(plot);
    addModel(plot, m_a, true);
    addModel(plot, m_b, false);
    addPoints(plot, m_a, true);
    addPoints(plot, m_b, false);
    addBatchNames(plot);
    return {plot};
}

} // namespace holdband::ui
