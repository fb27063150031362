#include "ui/charts/pair_deviation.h"

#include "core/text/quantities.h"
#include "ui/words/words.h"

#include <algorithm>
#include <cmath>

namespace holdband::ui {

namespace {

constexpr double msAnHour = 3'600'000.0;
constexpr double mostTolerances = 2.5; ///< shown in either direction; values beyond are cut off

bool settles(const std::vector<std::pair<double, double>>& stretches, double ms)
{
    return std::any_of(stretches.begin(), stretches.end(), [ms](const auto& stretch) {
        return ms >= stretch.first && ms < stretch.second;
    });
}

} // namespace

PairDeviationPicture::PairDeviationPicture(const results::DeviationCharts& charts,
                                           TemperatureUnit unit, PairSides sides)
    : m_unit(unit), m_sides(std::move(sides))
{
    const auto inUnit = [unit](double kelvins) {
        return valueIn(TemperatureDifference::kelvins(kelvins), unit);
    };
    m_toleranceA = inUnit(charts.toleranceA);
    m_toleranceB = inUnit(charts.toleranceB);
    m_a = lineOf(charts.a);
    m_b = lineOf(charts.b);
    for (const Line* line : {&m_a, &m_b}) {
        if (!line->track.ms.empty())
            m_endMs = std::max(m_endMs, line->track.ms.back());
    }
}

PairDeviationPicture::Line
PairDeviationPicture::lineOf(const std::optional<results::DeviationLine>& line) const
{
    Line own;
    if (!line)
        return own;
    own.track = line->track;
    own.settling = line->settling;
    for (double& value : own.track.value)
        value = valueIn(TemperatureDifference::kelvins(value), m_unit);
    own.pyramid = TrackPyramid(own.track);
    return own;
}

ValueRange PairDeviationPicture::range() const
{
    const double tolerance = std::max({m_toleranceA, m_toleranceB, 1e-6});
    double most = 1.35 * tolerance;
    for (const Line* line : {&m_a, &m_b}) {
        for (std::size_t i = 0; i < line->track.ms.size(); ++i) {
            if (line->track.ms[i] >= 0.0 && !settles(line->settling, line->track.ms[i]))
                most = std::max(most, 1.05 * std::abs(line->track.value[i]));
        }
    }
    most = std::min(most, mostTolerances * tolerance);
    return {-most, most};
}

/// While the beer settles there is no deviation to judge, so none is drawn.
void PairDeviationPicture::addLine(Plot& plot, const Line& line, bool first) const
{
    const double wanted = plot.area().width() * plot.look().columns;
    const int columns = std::max(1, static_cast<int>(wanted));
    QPolygonF points;
    for (const Polyline& run : decimate(line.track, 0.0, m_endMs, columns, &line.pyramid)) {
        for (const DrawnPoint& point : run)
            points << (settles(line.settling, point.ms)
                           ? lineGap()
                           : QPointF(point.ms / msAnHour, point.value));
        points << lineGap();
    }
    plot.addLine(points, QPen(m_sides.colour(first, plot.colours()), 1.2));
}

std::vector<Plot> PairDeviationPicture::plots(QSizeF size, const PictureLook& look) const
{
    Plot plot(QRectF({}, size), look);
    plot.leaveBelow(1);
    plot.setRanges({0.0, m_endMs / msAnHour}, range());
    plot.setHeading(Words::tr("Deviation from target, %1").arg(shown(unitText(m_unit))), m_sides,
                    m_toleranceA == m_toleranceB
                        ? Words::tr("band ± %1").arg(numberText(m_toleranceA, 1))
                        : Words::tr("bands: A ± %1, B ± %2")
                              .arg(numberText(m_toleranceA, 1), numberText(m_toleranceB, 1)));
    plot.addUpAxis();
    plot.addDays();
    const double inner = std::min(m_toleranceA, m_toleranceB);
    plot.addArea(QRectF(QPointF(0.0, -inner), QPointF(plot.across().high, inner)),
                 plot.colours().band);
    addLine(plot, m_b, false);
    addLine(plot, m_a, true);
    return {plot};
}

} // namespace holdband::ui
