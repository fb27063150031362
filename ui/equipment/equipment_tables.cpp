#include "ui/equipment/equipment_tables.h"

#include "core/logbook/names.h"
#include "core/text/numbers.h"
#include "core/text/quantities.h"
#include "core/text/times.h"
#include "ui/equipment/round_rows.h"
#include "ui/equipment/window_rows.h"
#include "ui/words/words.h"

namespace holdband::ui {

namespace {

QString money(double amount, const LogbookSettings& settings)
{
    return shown(moneyText(amount, settings.currency, decimalSign()));
}

QString plain(double value)
{
    return shown(shortestText(value, decimalSign()));
}

/// " · from 7 Mar 2026 18:05"; nothing where it always was in service
QString serviceWords(const Meter& meter, const Zone& zone)
{
    QString words;
    if (meter.from)
        words += QStringLiteral(" · from ") + shown(localText(*meter.from, zone));
    if (meter.to)
        words += QStringLiteral(" · to ") + shown(localText(*meter.to, zone));
    return words;
}

QString offsetWords(const Sensor& sensor, TemperatureUnit unit)
{
    if (sensor.offsets.empty())
        return dash;
    const Offset& last = sensor.offsets.back();
    const QString add =
        signedText(valueIn(last.add, unit), 2) + QLatin1Char(' ') + shown(unitText(unit));
    return sensor.offsets.size() == 1
               ? add
               : QStringLiteral("%1 (the last of %2)").arg(add).arg(sensor.offsets.size());
}

/// A name as far as a small window has room for it, and whether it is retired.
TableCell nameCell(const std::string& name, const QString& retired)
{
    constexpr qsizetype longest = 26;
    const QString whole = shown(name);
    const bool fits = whole.size() <= longest;
    return {(fits ? whole : whole.left(longest - 1) + QStringLiteral("…")) + retired, whole, true};
}

/// "Loop → Cabinet → shelf"
QString movesWords(const Meter& meter)
{
    QStringList places{shown(meter.setup)};
    for (const MeterMove& move : meter.moves)
        places << (move.setup ? shown(*move.setup) : QStringLiteral("shelf"));
    return places.join(QStringLiteral(" → "));
}

QString movesInFull(const Meter& meter, const Zone& zone)
{
    QStringList places{shown(meter.setup)};
    for (const MeterMove& move : meter.moves)
        places << QStringLiteral("%1 from %2")
                      .arg(move.setup ? shown(*move.setup) : QStringLiteral("on the shelf"),
                           shown(localText(move.from, zone)));
    return places.join(QStringLiteral(", "));
}

QString readsWords(const Sensor& sensor)
{
    const QString what =
        sensor.reads == Reads::power ? QStringLiteral("power, W") : shown(nameOf(sensor.reads));
    return sensor.readByHand ? what + QStringLiteral(", by eye") : what;
}

QString windowsWords(const Tariff& tariff, const LogbookSettings& settings)
{
    QStringList words;
    for (const EditRow& row : windowRows(
             tariff.windows, {settings.units, settings.currency, Zone::utc(), decimalSign()}))
        words << QStringLiteral("%1 %2 – %3: %4")
                     .arg(row.cells[0], row.cells[1], row.cells[2], row.cells[3]);
    return words.join(QStringLiteral(" · "));
}

} // namespace

QString retiredWords(const std::optional<Instant>& retired, const Zone& zone)
{
    return retired ? QStringLiteral(" · retired ") + shown(dateText(zone.localDate(*retired)))
                   : QString();
}

QString setupWords(const Setup& setup)
{
    QStringList parts;
    if (!setup.kind.empty())
        parts << shown(setup.kind);
    parts << (setup.vessels == 1 ? QStringLiteral("1 vessel")
                                 : QStringLiteral("%1 vessels").arg(setup.vessels));
    parts << (setup.ratedPower
                  ? QStringLiteral("rated ") + shown(powerText(*setup.ratedPower, 0, decimalSign()))
                  : QStringLiteral("rated power unknown"));
    return parts.join(QStringLiteral(" · "));
}

TableWords partsTable(const Setup& setup, const LogbookSettings& settings)
{
    TableWords table;
    table.header = {QStringLiteral("Part"), QStringLiteral("pieces"), QStringLiteral("each"),
                    QStringLiteral("together")};
    table.numeric = {false, true, true, true};
    for (const Part& part : setup.parts)
        table.rows.push_back({{shown(part.item), {}, false},
                              {plain(part.quantity), {}, false},
                              {money(part.price, settings), {}, false},
                              {money(part.quantity * part.price, settings), {}, false}});
    if (const auto sum = partsTotal(setup))
        table.rows.push_back(
            {{QStringLiteral("All parts"), {}, true}, {}, {}, {money(*sum, settings), {}, true}});
    return table;
}

QString partsSum(const Setup& setup, const LogbookSettings& settings)
{
    const auto sum = partsTotal(setup);
    return sum ? QStringLiteral("parts ") + money(*sum, settings) : QString();
}

QString ratingsWords(const Setup& setup)
{
    QStringList parts;
    for (const auto& [criterion, value] : setup.ratings)
        parts << QStringLiteral("%1 %2").arg(shown(criterion), plain(value));
    return parts.isEmpty() ? QString()
                           : QStringLiteral("Rated 1 – 5: ") + parts.join(QStringLiteral(" · "));
}

TableWords metersTable(const Equipment& equipment)
{
    TableWords table;
    table.header = {QStringLiteral("Meter"), QStringLiteral("measures"), QStringLiteral("reads to"),
                    QStringLiteral("accuracy"), QStringLiteral("rolls over at")};
    table.numeric = {false, false, true, true, true};
    for (const Meter& meter : equipment.meters) {
        const auto kwh = [](const std::optional<Energy>& energy) {
            return energy ? plain(energy->kilowattHours()) + QStringLiteral(" kWh") : dash;
        };
        table.rows.push_back(
            {nameCell(meter.name, retiredWords(meter.retired, equipment.zone)),
             {movesWords(meter) + serviceWords(meter, equipment.zone),
              movesInFull(meter, equipment.zone), false},
             {kwh(meter.resolution), {}, false},
             {meter.accuracy
                  ? QStringLiteral("± ") + plain(*meter.accuracy * 100.0) + QStringLiteral(" %")
                  : QStringLiteral("unknown"),
              {},
              false},
             {kwh(meter.rollsOverAt), {}, false}});
    }
    return table;
}

TableWords sensorsTable(const Equipment& equipment)
{
    const TemperatureUnit unit = equipment.settings.temperatureUnit();
    TableWords table;
    table.header = {QStringLiteral("Sensor"), QStringLiteral("reads"),
                    QStringLiteral("setup"),  QStringLiteral("accuracy"),
                    QStringLiteral("offset"), QStringLiteral("placement")};
    table.numeric = {false, false, false, true, true, false};
    for (const Sensor& sensor : equipment.sensors)
        table.rows.push_back(
            {nameCell(sensor.name, retiredWords(sensor.retired, equipment.zone)),
             {readsWords(sensor), {}, false},
             {sensor.setup ? shown(*sensor.setup) : dash, {}, false},
             {sensor.accuracy ? QStringLiteral("± ") +
                                    shown(differenceText(*sensor.accuracy, unit, 2, decimalSign()))
                              : QStringLiteral("unknown"),
              {},
              false},
             {offsetWords(sensor, unit), {}, false},
             {sensor.placement.empty() ? dash : shown(sensor.placement), {}, false}});
    return table;
}

TableWords plansTable(const Equipment& equipment)
{
    TableWords table;
    table.header = {QStringLiteral("Plan"), QStringLiteral("stages"), QStringLiteral("note")};
    table.numeric = {false, false, false};
    for (const NamedPlan& plan : equipment.plans) {
        QStringList stages;
        for (const Stage& stage : plan.schedule)
            stages << QStringLiteral("%1 %2").arg(
                shown(stage.label),
                shown(temperatureText(stage.target, equipment.settings.temperatureUnit(), 1,
                                      decimalSign())));
        table.rows.push_back({nameCell(plan.name, {}),
                              {stages.join(QStringLiteral(" · ")), {}, false},
                              {plan.note.empty() ? dash : shown(plan.note), {}, false}});
    }
    return table;
}

TableWords pricesTable(const Equipment& equipment)
{
    TableWords table;
    table.header = {QStringLiteral("Holds"), QStringLiteral("a kWh costs"),
                    QStringLiteral("time-of-use windows")};
    table.numeric = {false, true, false};
    const auto add = [&](const QString& when, const Tariff& tariff) {
        const QString price = tariff.pricePerKwh ? money(*tariff.pricePerKwh, equipment.settings)
                                                 : QStringLiteral("unknown");
        const QString windows =
            tariff.windows.empty() ? dash : windowsWords(tariff, equipment.settings);
        table.rows.push_back({{when, {}, false}, {price, {}, false}, {windows, {}, false}});
    };
    const LogbookSettings& settings = equipment.settings;
    if (settings.tariff.known() || !settings.tariffChanges.empty())
        add(settings.tariffChanges.empty() ? QStringLiteral("always") : QStringLiteral("at first"),
            settings.tariff);
    for (const TariffChange& change : settings.tariffChanges)
        add(QStringLiteral("from ") + shown(localText(change.from, equipment.zone)), change.tariff);
    return table;
}

TableWords roundsTable(const Equipment& equipment)
{
    TableWords table;
    table.header = {QStringLiteral("Round"), QStringLiteral("from"), QStringLiteral("to")};
    table.numeric = {false, true, true};
    for (const EditRow& row : roundRows(equipment.settings.rounds))
        table.rows.push_back(
            {{row.cells[0], {}, true}, {row.cells[1], {}, false}, {row.cells[2], {}, false}});
    return table;
}

QString priceWords(const LogbookSettings& settings)
{
    const bool known = settings.tariff.known() || !settings.tariffChanges.empty();
    return known ? QString() : QStringLiteral("No price of energy is on record.");
}

} // namespace holdband::ui
