#include "ui/report/compose/cells.h"

#include "core/text/durations.h"
#include "core/text/numbers.h"
#include "core/text/quantities.h"
#include "core/text/times.h"
#include "ui/words/words.h"

#include <cmath>

namespace holdband::report {

namespace {

constexpr double msInHour = 3'600'000.0;

} // namespace

QString rawNumber(double value)
{
    return ui::shown(shortestText(value));
}

Cell worded(Cell cell, const QString& text)
{
    cell.text = text;
    return cell;
}

Column words(const char* id, const QString& title)
{
    return {id, title};
}

Column wideWords(const char* id, const QString& title)
{
    Column column = words(id, title);
    column.wide = true;
    return column;
}

Column figures(const char* id, const QString& title, const QString& unit)
{
    return {id, title, unit, true};
}

Cell Cells::text(const std::string& utf8) const
{
    return {ui::shown(utf8)};
}

Cell Cells::absent() const
{
    return {ui::dash};
}

Cell Cells::number(std::optional<double> value, int decimals, const QString& unit) const
{
    if (!value || !std::isfinite(*value))
        return absent();
    return {ui::numberText(*value, decimals), rawNumber(*value), unit};
}

Cell Cells::count(std::size_t number) const
{
    const QString text = QString::number(number);
    return {text, text, "1"};
}

Cell Cells::share(std::optional<double> share) const
{
    if (!share)
        return absent();
    return {ui::shown(shareText(*share, 1, ui::decimalSign())), rawNumber(*share), "1"};
}

Cell Cells::instant(Instant at) const
{
    return {ui::shown(localText(at, m_zone)), ui::shown(localIso(at, m_zone))};
}

Cell Cells::span(Span span) const
{
    const Cell start = instant(span.start);
    const Cell end = instant(span.end);
    return {ui::Words::tr("%1 to %2").arg(start.text, end.text), start.raw + u'/' + end.raw};
}

Cell Cells::length(std::optional<double> ms) const
{
    if (!ms)
        return absent();
    return {ui::shown(durationText(wholeMs(*ms), ui::decimalSign())), rawNumber(*ms / msInHour),
            "h"};
}

Cell Cells::temperature(double celsius) const
{
    const TemperatureUnit unit = m_settings.temperatureUnit();
    const Temperature value = Temperature::celsius(celsius);
    return {ui::shown(temperatureText(value, unit, 1, ui::decimalSign())), rawNumber(celsius),
            QStringLiteral("°C")};
}

Cell Cells::difference(std::optional<double> kelvins, int decimals) const
{
    if (!kelvins)
        return absent();
    return {ui::signedText(inUnit(*kelvins), decimals), rawNumber(*kelvins), "K"};
}

Cell Cells::perDegreeDay(std::optional<double> kwh) const
{
    if (!kwh || !std::isfinite(*kwh))
        return absent();
    return {ui::numberText(perDegree(*kwh, m_settings.temperatureUnit()), 3), rawNumber(*kwh),
            QStringLiteral("kWh/(K·d)")};
}

Cell Cells::pastEdge(double kelvins) const
{
    if (!(kelvins > 0.0))
        return absent();
    return {ui::numberText(inUnit(kelvins), 1), rawNumber(kelvins), "K"};
}

Cell Cells::kwh(const analysis::EnergyFigure& energy) const
{
    return energy.any() ? number(energy.kwh, 2, "kWh") : absent();
}

Cell Cells::leastKwh(const analysis::EnergyFigure& energy) const
{
    return energy.any() && energy.lowKnown() ? number(energy.low, 2, "kWh") : absent();
}

Cell Cells::mostKwh(const analysis::EnergyFigure& energy) const
{
    if (energy.any() && !energy.highKnown())
        return {ui::Words::tr("unknown")};
    return energy.any() ? number(energy.high, 2, "kWh") : absent();
}

Cell Cells::metered(const analysis::EnergyFigure& energy) const
{
    return energy.any() ? length(energy.meteredMs()) : absent();
}

Cell Cells::watts(std::optional<double> watts) const
{
    return number(watts, 0, "W");
}

Cell Cells::money(std::optional<double> amount) const
{
    if (!amount || !std::isfinite(*amount))
        return absent();
    return {ui::shown(moneyText(*amount, m_settings.currency, ui::decimalSign())),
            rawNumber(*amount), ui::shown(m_settings.currency)};
}

Column Cells::differences(const char* id, const QString& name) const
{
    Column column = figures(id, QStringLiteral("%1, %2").arg(name, degrees()), "K");
    column.name = name;
    return column;
}

QString Cells::degrees() const
{
    return ui::shown(unitText(m_settings.temperatureUnit()));
}

double Cells::inUnit(double kelvins) const
{
    return valueIn(TemperatureDifference::kelvins(kelvins), m_settings.temperatureUnit());
}

} // namespace holdband::report
