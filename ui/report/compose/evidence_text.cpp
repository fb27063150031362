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

QString sensorText(const results::SensorProvenance& provenance, const Cells& cells, bool shared)
{
    const TemperatureUnit unit = cells.settings().temperatureUnit();
    QStringList parts{ui::shown(provenance.sensor.name)};
    parts << (provenance.accuracy ? ui::Words::tr("accurate to ± %1")
                                        .arg(ui::shown(differenceText(*provenance.accuracy, unit, 2,
                                                                      ui::decimalSign())))
                                  : ui::Words::tr("accuracy unknown"));
    for (const Offset& offset : provenance.sensor.offsets)
        parts << ui::Words::tr("%1 added from %2 on")
                     .arg(ui::shown(differenceText(offset.add, unit, 2, ui::decimalSign())),
                          ui::shown(localText(offset.from, cells.zone())));
    if (!provenance.sensor.placement.empty())
        parts << ui::shown(provenance.sensor.placement);
    if (!shared)
        parts << ui::Words::counted("%n readings", "%n reading", provenance.readings);
    return parts.join(QStringLiteral(", "));
}

QString meterText(const Meter& meter)
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

QString coverageWords(const results::Provenance& provenance, const Cells& cells)
{
    if (!provenance.coverage)
        return ui::Words::tr("there was no hold time");
    const QString share = ui::shown(shareText(*provenance.coverage, 1, ui::decimalSign()));
    return provenance.judgedTo && *provenance.judgedTo < provenance.span.end
               ? ui::Words::tr(
                     "%1 of the hold time up to %2 is covered; there is no data after that")
                     .arg(share, cells.instant(*provenance.judgedTo).text)
               : ui::Words::tr("%1 of the hold time is covered").arg(share);
}

QString toleranceText(const results::Provenance& provenance, const Cells& cells)
{
    if (!provenance.tolerance)
        return ui::Words::tr("each stage its own");
    const TemperatureUnit unit = cells.settings().temperatureUnit();
    return QStringLiteral("± ") +
           ui::shown(differenceText(*provenance.tolerance, unit, 2, ui::decimalSign()));
}

QString gapLimitText(const results::Provenance& provenance)
{
    const bool read = std::any_of(provenance.sensors.begin(), provenance.sensors.end(),
                                  [](const auto& each) { return each.readings > 0; });
    return lengthOf(provenance.gapLimit) + (provenance.usualGapLimit && read
                                                ? ui::Words::tr(" (3 × the median interval)")
                                                : QString());
}

QString ignoreShorterThanText(const results::Provenance& provenance)
{
    return provenance.ignoreShorterThan > Milliseconds{0}
               ? ui::Words::tr("shorter than %1").arg(lengthOf(provenance.ignoreShorterThan))
               : ui::Words::tr("none");
}

QString dwellText(const results::Provenance& provenance)
{
    return provenance.bandTimes.dwell > Milliseconds{0}
               ? ui::Words::tr("%1 inside the band").arg(lengthOf(provenance.bandTimes.dwell))
               : ui::Words::tr("the first moment inside the band");
}

QString returnText(const results::Provenance& provenance)
{
    return provenance.bandTimes.returnTime > Milliseconds{0}
               ? ui::Words::tr("%1 back inside").arg(lengthOf(provenance.bandTimes.returnTime))
               : ui::Words::tr("the first moment back inside");
}

bool readsRoom(const results::SensorProvenance& sensor)
{
    return sensor.sensor.reads == SensorKind::ambient;
}

} // namespace holdband::report
