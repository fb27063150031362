#include "ui/charts/forecast_crash.h"

#include "core/text/quantities.h"
#include "ui/words/words.h"

#include <QFontMetricsF>
#include <algorithm>

namespace holdband::ui {

ForecastCrashPicture::ForecastCrashPicture(const results::NextBatch& review)
{
    const ForecastSides sides = sidesOf(review);
    const auto crash = analysis::crashStage(review.placed.stages);
    if (!review.crashPlan || !crash)
        return;
    const TemperatureUnit unit = review.settings.temperatureUnit();
    m_fahrenheit = unit == TemperatureUnit::fahrenheit;
    const auto inUnit = [&](double celsius) {
        return valueIn(Temperature::celsius(celsius), unit);
    };
    const analysis::PlacedStage& stage = review.placed.stages[*crash];
    m_from = inUnit(review.crashPlan->fromCelsius);
    m_to = inUnit(review.crashPlan->toCelsius);
    m_bandLow = inUnit(stage.startTarget.celsius() - stage.tolerance.kelvins());
    for (std::size_t i = 0; i < review.setups.size(); ++i) {
        const results::SetupForecast& setup = review.setups[i];
        if (setup.crash && !setup.crashShape.empty())
            m_fans.push_back({sides[i], setup.crashShape, setup.crash->hours, setup.crash->low,
                              setup.crash->high});
    }
}

/// From turning down to the band, if it took that many hours.
QPolygonF ForecastCrashPicture::curve(const Fan& fan, double hours) const
{
    QPolygonF points;
    const auto steps = static_cast<double>(fan.shape.size() - 1);
    for (std::size_t i = 0; i < fan.shape.size(); ++i)
        points << QPointF(fan.shape[i] * hours,
                          m_from + (m_to - m_from) * static_cast<double>(i) / steps);
    return points;
}

std::vector<Plot> ForecastCrashPicture::plots(QSizeF size, const PictureLook& look) const
{
    Plot plot(QRectF({}, size), look);
    double most = 1.0;
    for (const Fan& fan : m_fans)
        most = std::max(most, fan.high);
    plot.leaveBelow(2);
    const double margin = 0.05 * (m_from - m_bandLow);
    plot.setRanges({0.0, 1.05 * most}, {m_bandLow - margin, m_from + margin});
    plot.setHeading(Words::tr("Cold when? Beer in the crash, %1")
                        .arg(m_fahrenheit ? QStringLiteral("°F") : QStringLiteral("°C")));
    plot.addArea(QRectF(QPointF(0.0, m_bandLow), QPointF(1.05 * most, m_to)), plot.colours().band);
    plot.addUpAxis();
    plot.addAcrossAxis(Words::tr("hours after turning down"));
    for (std::size_t i = 0; i < m_fans.size(); ++i)
        addFan(plot, m_fans[i], i);
    return {plot};
}

void ForecastCrashPicture::addFan(Plot& plot, const Fan& fan, std::size_t index) const
{
    const QColor colour = fan.side.line(plot.colours());
    QPolygonF outline = curve(fan, fan.low);
    const QPolygonF late = curve(fan, fan.high);
    for (auto point = late.rbegin(); point != late.rend(); ++point)
        outline << *point;
    plot.addArea(std::move(outline), paleOf(colour, 50));
    const QPolygonF middle = curve(fan, fan.hours);
    plot.addLine(middle, QPen(colour, 2.0, index == 0 ? Qt::SolidLine : Qt::DashLine));
    // The names stand where the curves are apart: each a little lower than the one before.
    const double way = 0.35 + 0.15 * static_cast<double>(index);
    const QPointF at = middle[static_cast<int>(way * static_cast<double>(middle.size() - 1))];
    plot.addLabel({fan.side.name,
                   {plot.x(at.x()) + 7.0, plot.y(at.y())},
                   fan.side.text(plot.colours()),
                   LabelFont::bold,
                   true});
}

} // namespace holdband::ui
