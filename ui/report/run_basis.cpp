#include "ui/report/run_basis.h"

#include "core/logbook/names.h"
#include "core/text/durations.h"
#include "core/text/numbers.h"
#include "core/text/quantities.h"
#include "core/text/times.h"
#include "ui/words/words.h"

#include <algorithm>

namespace holdband::report {

namespace {

using review::RunReview;

QString lengthOf(Milliseconds length)
{
    return ui::shown(durationText(length, ui::decimalSign()));
}

/// `shared`: the beer was read by several sensors, one after another.
QString sensorWords(const review::SensorBasis& basis, const Cells& cells, bool shared)
{
    const TemperatureUnit unit = cells.settings().temperatureUnit();
    QStringList parts{ui::shown(basis.sensor.name)};
    parts << (basis.accuracy
                  ? QStringLiteral("good to ± ") +
                        ui::shown(differenceText(*basis.accuracy, unit, 2, ui::decimalSign()))
                  : QStringLiteral("accuracy unknown"));
    for (const Offset& offset : basis.sensor.offsets)
        parts << QStringLiteral("%1 added from %2 on")
                     .arg(ui::shown(differenceText(offset.add, unit, 2, ui::decimalSign())),
                          ui::shown(localText(offset.from, cells.zone())));
    if (!basis.sensor.placement.empty())
        parts << ui::shown(basis.sensor.placement);
    if (!shared)
        parts << QStringLiteral("%1 readings").arg(basis.readings);
    return parts.join(QStringLiteral(", "));
}

QString meterWords(const Meter& meter)
{
    QStringList parts{ui::shown(meter.name)};
    if (meter.resolution)
        parts << QStringLiteral("counts in steps of %1 kWh")
                     .arg(QString::fromStdString(
                         shortestText(meter.resolution->kilowattHours(), ui::decimalSign())));
    else
        parts << QStringLiteral("its last digit taken from its readings");
    parts << (meter.accuracy
                  ? QStringLiteral("good to %1 %").arg(ui::numberText(*meter.accuracy * 100.0, 1))
                  : QStringLiteral("accuracy class unknown"));
    return parts.join(QStringLiteral(", "));
}

QString coverageWords(const RunReview& review)
{
    const auto coverage = review.figures.judged.asPlanned.totals.coverage();
    return coverage ? QStringLiteral("%1 of the hold time was seen")
                          .arg(ui::shown(shareText(*coverage, 1, ui::decimalSign())))
                    : QStringLiteral("there was no hold time");
}

void addSensors(Table& table, const review::Basis& basis, const Cells& cells)
{
    const auto isRoom = [](const review::SensorBasis& sensor) {
        return sensor.sensor.reads == Reads::ambient;
    };
    const auto rooms = std::count_if(basis.sensors.begin(), basis.sensors.end(), isRoom);
    const bool several = basis.sensors.size() - static_cast<std::size_t>(rooms) > 1;
    for (const review::SensorBasis& sensor : basis.sensors) {
        addFact(table, isRoom(sensor) ? "Room sensor" : "Beer sensor",
                sensorWords(sensor, cells, several && !isRoom(sensor)));
    }
    if (several)
        addFact(table, "Readings of the beer", cells.count(basis.sensors.front().readings));
    for (const Meter& meter : basis.meters)
        addFact(table, "Meter", meterWords(meter));
}

void addSettings(Table& table, const RunReview& review, const Cells& cells)
{
    const Batch& batch = review.batch();
    const TemperatureUnit unit = cells.settings().temperatureUnit();
    addFact(table, "Tolerance",
            batch.tolerance
                ? QStringLiteral("± ") +
                      ui::shown(differenceText(*batch.tolerance, unit, 2, ui::decimalSign()))
                : QStringLiteral("each stage its own"));
    addFact(table, "Gap limit",
            lengthOf(review.input.judging.gapLimit) +
                (batch.gapLimit ? QString() : QStringLiteral(" (3 × the median interval)")));
    addFact(
        table, "Grace",
        batch.grace > Milliseconds{0}
            ? QStringLiteral("excursions shorter than %1 do not count").arg(lengthOf(batch.grace))
            : QStringLiteral("none: every excursion counts"));
    addFact(table, "Coverage needed",
            ui::shown(shareText(review.input.settings.coverageNeeded, 0, ui::decimalSign())));
}

} // namespace

void addBasis(Document& document, const RunReview& review, const review::Basis& basis,
              const Origin& origin)
{
    const Cells cells(review.settings, review.zone);
    Table table = factsTable("Computed from");
    addOrigin(table, origin, cells);
    addFact(table, "Span",
            QStringLiteral("%1 to %2")
                .arg(cells.instant(review.input.span.start).text,
                     cells.instant(review.input.span.end).text));
    addFact(table, "Coverage", coverageWords(review));
    addSensors(table, basis, cells);
    addSettings(table, review, cells);
    document.add(Heading{table.title});
    document.add(std::move(table));
    document.add(Paragraph{methodInShort(), Tone::muted});
}

} // namespace holdband::report
