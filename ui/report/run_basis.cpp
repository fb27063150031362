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
                  ? ui::Words::tr("good to ± %1")
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
    parts << (meter.accuracy
                  ? ui::Words::tr("good to %1 %").arg(ui::numberText(*meter.accuracy * 100.0, 1))
                  : ui::Words::tr("accuracy class unknown"));
    return parts.join(QStringLiteral(", "));
}

QString coverageWords(const RunReview& review)
{
    const auto coverage = review.figures.judged.asPlanned.totals.coverage();
    return coverage ? ui::Words::tr("%1 of the hold time was seen")
                          .arg(ui::shown(shareText(*coverage, 1, ui::decimalSign())))
                    : ui::Words::tr("there was no hold time");
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
        addFact(table, ui::Words::tr("Readings of the beer"),
                cells.count(basis.sensors.front().readings));
    for (const Meter& meter : basis.meters)
        addFact(table, ui::Words::tr("Meter"), meterWords(meter));
}

void addSettings(Table& table, const RunReview& review, const Cells& cells)
{
    const Batch& batch = review.batch();
    const TemperatureUnit unit = cells.settings().temperatureUnit();
    addFact(table, ui::Words::tr("Tolerance"),
            batch.tolerance
                ? QStringLiteral("± ") +
                      ui::shown(differenceText(*batch.tolerance, unit, 2, ui::decimalSign()))
                : ui::Words::tr("each stage its own"));
    addFact(table, ui::Words::tr("Gap limit"),
            lengthOf(review.input.judging.gapLimit) +
                (batch.gapLimit ? QString() : ui::Words::tr(" (3 × the median interval)")));
    addFact(
        table, ui::Words::tr("Grace"),
        batch.grace > Milliseconds{0}
            ? ui::Words::tr("excursions shorter than %1 do not count").arg(lengthOf(batch.grace))
            : ui::Words::tr("none: every excursion counts"));
    addFact(table, ui::Words::tr("Coverage needed"),
            ui::shown(shareText(review.input.settings.coverageNeeded, 0, ui::decimalSign())));
}

} // namespace

void addBasis(Document& document, const RunReview& review, const review::Basis& basis,
              const Origin& origin)
{
    const Cells cells(review.settings, review.zone);
    Table table = factsTable(ui::Words::tr("Computed from"));
    addOrigin(table, origin, cells);
    addFact(table, ui::Words::tr("Span"),
            ui::Words::tr("%1 to %2")
                .arg(cells.instant(review.input.span.start).text,
                     cells.instant(review.input.span.end).text));
    addFact(table, ui::Words::tr("Coverage"), coverageWords(review));
    addSensors(table, basis, cells);
    addSettings(table, review, cells);
    document.add(Heading{table.title});
    document.add(std::move(table));
    document.add(Paragraph{methodInShort(), Tone::muted});
}

} // namespace holdband::report
