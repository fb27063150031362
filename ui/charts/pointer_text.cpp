#include "ui/charts/pointer_text.h"

#include "core/text/quantities.h"
#include "core/text/times.h"
#include "ui/words/words.h"

namespace holdband::ui {

namespace {

const QString dot = QStringLiteral(" · ");

QString timeLine(const RunChart& chart, Instant at)
{
    const double days = hoursBetween(chart.span.start, at) / 24.0;
    return shown(localShortText(at, chart.zone)) + dot +
           Words::tr("day %1").arg(numberText(days, 1));
}

const BandPiece* bandAt(const RunChart& chart, double ms)
{
    for (auto band = chart.bands.rbegin(); band != chart.bands.rend(); ++band) {
        if (ms >= band->time.fromMs && ms <= band->time.toMs)
            return &*band;
    }
    return nullptr;
}

QString missingBeer(const RunChart& chart, double ms)
{
    if (chart.fan && ms > chart.fan->nowMs)
        return Words::tr("not read yet");
    const LeftOutStretch* leftOut = chart.leftOutAt(ms);
    if (!leftOut)
        return Words::tr("beer not known");
    return leftOut->why.empty() ? Words::tr("beer left out by hand")
                                : Words::tr("beer left out by hand: %1").arg(shown(leftOut->why));
}

QString temperatureLine(const RunChart& chart, double ms)
{
    QStringList parts;
    for (auto line = chart.lines.rbegin(); line != chart.lines.rend(); ++line) {
        const std::optional<double> value = valueAt(line->track, ms);
        if (value)
            parts << shown(line->name) + QLatin1Char(' ') + numberText(*value, 1);
        else if (line->role == LineRole::beer)
            parts << missingBeer(chart, ms);
        if (line->role != LineRole::beer)
            continue;
        if (const BandPiece* band = bandAt(chart, ms))
            parts << Words::tr("target %1").arg(numberText(band->targetAt(ms), 1));
    }
    return parts.join(dot) + QLatin1Char(' ') + shown(unitText(chart.unit));
}

QString deviationLine(const RunChart& chart, double ms)
{
    const ChartLine* beer = chart.line(LineRole::beer);
    const BandPiece* band = bandAt(chart, ms);
    const auto value = beer ? valueAt(beer->track, ms) : std::nullopt;
    if (!value || !band)
        return {};
    for (const Stretch& stretch : chart.settling) {
        if (ms >= stretch.fromMs && ms < stretch.toMs)
            return Words::tr("settling, not judged");
    }
    const double deviation = *value - band->targetAt(ms);
    return Words::tr("%1 from target, %2")
        .arg(signedText(deviation, 1), std::abs(deviation) <= band->tolerance + 1e-6
                                           ? Words::tr("inside the band")
                                           : Words::tr("outside the band"));
}

QString energyLine(const RunChart& chart, double ms)
{
    const std::optional<double> kwh = energyAt(chart, ms);
    if (!kwh)
        return {};
    QString line = numberText(*kwh, 2) + QStringLiteral(" kWh");
    if (const auto bounds = boundsAt(chart, ms))
        line += QStringLiteral(" (%1 – %2)")
                    .arg(numberText(bounds->low, 2), numberText(bounds->high, 2));
    return line;
}

} // namespace

QStringList wordsAt(const RunChart& chart, Instant at)
{
    const double ms = chart.msOf(at);
    QStringList lines{timeLine(chart, at), temperatureLine(chart, ms), deviationLine(chart, ms),
                      energyLine(chart, ms)};
    lines.removeAll(QString());
    return lines;
}

} // namespace holdband::ui
