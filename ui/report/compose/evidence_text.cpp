#include "ui/report/compose/evidence_text.h"

#include "core/text/durations.h"
#include "core/text/numbers.h"
#include "core/text/quantities.h"
#include "core/text/times.h"
#include "ui/words/words.h"

#include <algorithm>

namespace holdband::report {

namespace {

QString lengthOf(Milliseconds length)
{
    return ui::shown(durationText(length, ui::decimalSign()));
}

} // namespace

QString sensorWords(const results::SensorBasis& basis, const Cells& cells, bool shared)
{
    const TemperatureUnit unit = cells.settings().temperatureUnit();
    QStringList parts{ui::shown(basis.sensor.name)};
    parts << (basis.accuracy
                  ? ui::Words::tr("accurate to ± %1")
                        .arg(ui::shown(differenceText(*basis.accuracy, unit, 2, ui::decimalSign())))
                  : ui::Words::tr("accuracy unknown"));
    for (const Offset& offset : basis.sensor.offsets)
        parts << ui::Words::tr("%1 added from %2 on")
                     .arg(ui::shown(differenceText(offset.add, unit, 2, ui::decimalSign())),
                          ui::shown(localText(offset.from, cells.zone())));
    if (!basis.sensor.placement.empty())
        parts << ui::shown(basis.sensor.placement);
    if (!shared)
        parts << ui::Words::counted("%n readings", "%n reading", basis.readings);
    return parts.join(QStringLiteral(", "));
}

QString meterWords(const Meter& meter)
{
    QStringList parts{ui::shown(meter.name)};
    if (meter.resolution)
        parts << ui::Words::tr("counts in steps of %1 kWh")
                     .arg(QString::fromStdString(
                         shortestText(meter.resolution->kilowattHours(), ui::decimalSign())));
    else
        parts << ui::Words::tr("its last digit taken from its readings");
    parts
        << (meter.accuracy
                ? ui::Words::tr("accurate to %1 %").arg(ui::numberText(*meter.accuracy * 100.0, 1))
                : ui::Words::tr("accuracy class unknown"));
    return parts.join(QStringLiteral(", "));
}

QString coverageWords(const results::Basis& basis, const Cells& cells)
{
    if (!basis.coverage)
        return ui::Words::tr("there was no hold time");
    const QString share = ui::shown(shareText(*basis.coverage, 1, ui::decimalSign()));
    return basis.judgedTo && *basis.judgedTo < basis.span.end
               ? ui::Words::tr(
                     "%1 of the hold time up to %2 is covered; there is no data after that")
                     .arg(share, cells.instant(*basis.judgedTo).text)
               : ui::Words::tr("%1 of the hold time is covered").arg(share);
}

QString toleranceWords(const results::Basis& basis, const Cells& cells)
{
    if (!basis.tolerance)
        return ui::Words::tr("each stage its own");
    const TemperatureUnit unit = cells.settings().temperatureUnit();
    return QStringLiteral("± ") +
           ui::shown(differenceText(*basis.tolerance, unit, 2, ui::decimalSign()));
}

QString gapLimitWords(const results::Basis& basis)
{
    const bool read = std::any_of(basis.sensors.begin(), basis.sensors.end(),
                                  [](const auto& each) { return each.readings > 0; });
    return lengthOf(basis.gapLimit) +
           (basis.usualGapLimit && read ? ui::Words::tr(" (3 × the median interval)") : QString());
}

QString graceWords(const results::Basis& basis)
{
    return basis.grace > Milliseconds{0}
               ? ui::Words::tr("shorter than %1").arg(lengthOf(basis.grace))
               : ui::Words::tr("none");
}

bool readsRoom(const results::SensorBasis& sensor)
{
    return sensor.sensor.reads == SensorKind::ambient;
}

} // namespace holdband::report
