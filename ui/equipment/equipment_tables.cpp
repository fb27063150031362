#include "ui/equipment/equipment_tables.h"

#include "core/model/names.h"
#include "core/results/comparison/side_by_side.h"
#include "core/text/numbers.h"
#include "core/text/quantities.h"
#include "core/text/times.h"
#include "ui/equipment/round_rows.h"
#include "ui/equipment/window_rows.h"
#include "ui/words/choice_text.h"
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

/// " · from 7 Mar 2026 18:05"; empty if it was always in service
QString serviceText(const Meter& meter, const Zone& zone)
{
    QString words;
    if (meter.from)
        words += Words::tr(" · from %1").arg(shown(localText(*meter.from, zone)));
    if (meter.to)
        words += Words::tr(" · to %1").arg(shown(localText(*meter.to, zone)));
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
               : Words::tr("%1 (the last of %2)").arg(add).arg(sensor.offsets.size());
}

/// A name, shortened to fit a small window, and whether it is retired.
TableCell nameCell(const std::string& name, const QString& retired)
{
    constexpr qsizetype longest = 26;
    const QString whole = shown(name);
    const bool fits = whole.size() <= longest;
    return {(fits ? whole : whole.left(longest - 1) + QStringLiteral("…")) + retired, whole, true};
}

/// "Loop → Cabinet → shelf"
QString movesText(const Meter& meter)
{
    QStringList places{shown(meter.setup)};
    for (const MeterMove& move : meter.moves)
        places << (move.setup ? shown(*move.setup) : Words::tr("not in use"));
    return places.join(QStringLiteral(" → "));
}

QString movesInFull(const Meter& meter, const Zone& zone)
{
    QStringList places{shown(meter.setup)};
    for (const MeterMove& move : meter.moves)
        places << Words::tr("%1 from %2")
                      .arg(move.setup ? shown(*move.setup) : Words::tr("not in use"),
                           shown(localText(move.from, zone)));
    return places.join(QStringLiteral(", "));
}

QString readsText(const Sensor& sensor)
{
    const QString what = readsWord(sensor.reads);
    return sensor.readByHand ? Words::tr("%1, by eye").arg(what) : what;
}

QString windowsText(const Tariff& tariff, const LogbookSettings& settings)
{
    QStringList words;
    for (const EditRow& row : windowRows(
             tariff.windows, {settings.units, settings.currency, Zone::utc(), decimalSign()}))
        words << QStringLiteral("%1 %2 – %3: %4")
                     .arg(row.cells[0], row.cells[1], row.cells[2], row.cells[3]);
    return words.join(QStringLiteral(" · "));
}

} // namespace

QString retiredText(const std::optional<Instant>& retired, const Zone& zone)
{
    return retired ? Words::tr(" · retired %1").arg(shown(dateText(zone.localDate(*retired))))
                   : QString();
}

QString setupWords(const Setup& setup)
{
    QStringList parts;
    if (!setup.kind.empty())
        parts << shown(setup.kind);
    parts << vesselsText(setup.vessels);
    parts << (setup.ratedPower
                  ? Words::tr("rated %1").arg(shown(powerText(*setup.ratedPower, 0, decimalSign())))
                  : Words::tr("rated power unknown"));
    return parts.join(QStringLiteral(" · "));
}

TableText partsTable(const Setup& setup, const LogbookSettings& settings)
{
    TableText table;
    table.header = {Words::tr("Part"), Words::tr("pieces"), Words::tr("each"),
                    Words::tr("together")};
    table.numeric = {false, true, true, true};
    for (const Part& part : setup.parts)
        table.rows.push_back({{shown(part.item), {}, false},
                              {plain(part.quantity), {}, false},
                              {money(part.price, settings), {}, false},
                              {money(part.quantity * part.price, settings), {}, false}});
    if (const auto sum = partsTotal(setup))
        table.rows.push_back(
            {{Words::tr("All parts"), {}, true}, {}, {}, {money(*sum, settings), {}, true}});
    return table;
}

QString partsSum(const Setup& setup, const LogbookSettings& settings)
{
    const auto sum = partsTotal(setup);
    if (!sum)
        return {};
    return Words::counted("%n parts", "%n part", setup.parts.size()) + QStringLiteral(" · ") +
           money(*sum, settings);
}

QString ratingsText(const Setup& setup)
{
    QStringList parts;
    for (const auto& [criterion, value] : setup.ratings)
        parts << QStringLiteral("%1 %2").arg(shown(results::criterionWord(criterion)),
                                             plain(value));
    return parts.isEmpty() ? QString()
                           : Words::tr("Rated from 1 poor to 5 good: %1")
                                 .arg(parts.join(QStringLiteral(" · ")));
}

TableText metersTable(const Equipment& equipment)
{
    TableText table;
    table.header = {Words::tr("Meter"), Words::tr("measures"), Words::tr("reads to"),
                    Words::tr("accuracy"), Words::tr("rolls over at")};
    table.numeric = {false, false, true, true, true};
    for (const Meter& meter : equipment.meters) {
        const auto kwh = [](const std::optional<Energy>& energy) {
            return energy ? plain(energy->kilowattHours()) + QStringLiteral(" kWh") : dash;
        };
        table.rows.push_back(
            {nameCell(meter.name, retiredText(meter.retired, equipment.zone)),
             {movesText(meter) + serviceText(meter, equipment.zone),
              movesInFull(meter, equipment.zone), false},
             {kwh(meter.resolution), {}, false},
             {meter.accuracy
                  ? QStringLiteral("± ") + plain(*meter.accuracy * 100.0) + QStringLiteral(" %")
                  : Words::tr("unknown"),
              {},
              false},
             {kwh(meter.rollsOverAt), {}, false}});
    }
    return table;
}

TableText sensorsTable(const Equipment& equipment)
{
    const TemperatureUnit unit = equipment.settings.temperatureUnit();
    TableText table;
    table.header = {Words::tr("Sensor"),   Words::tr("reads"),  Words::tr("setup"),
                    Words::tr("accuracy"), Words::tr("offset"), Words::tr("placement")};
    table.numeric = {false, false, false, true, true, false};
    for (const Sensor& sensor : equipment.sensors)
        table.rows.push_back(
            {nameCell(sensor.name, retiredText(sensor.retired, equipment.zone)),
             {readsText(sensor), {}, false},
             {sensor.setup ? shown(*sensor.setup) : dash, {}, false},
             {sensor.accuracy ? QStringLiteral("± ") +
                                    shown(differenceText(*sensor.accuracy, unit, 2, decimalSign()))
                              : Words::tr("unknown"),
              {},
              false},
             {offsetWords(sensor, unit), {}, false},
             {sensor.placement.empty() ? dash : shown(sensor.placement), {}, false}});
    return table;
}

TableText plansTable(const Equipment& equipment)
{
    TableText table;
    table.header = {Words::tr("Plan"), Words::tr("stages"), Words::tr("note")};
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

TableText pricesTable(const Equipment& equipment)
{
    TableText table;
    table.header = {Words::tr("Holds"), Words::tr("a kWh costs"), Words::tr("time-of-use windows")};
    table.numeric = {false, true, false};
    const auto add = [&](const QString& when, const Tariff& tariff) {
        const QString price = tariff.pricePerKwh ? money(*tariff.pricePerKwh, equipment.settings)
                                                 : Words::tr("unknown");
        const QString windows =
            tariff.windows.empty() ? dash : windowsText(tariff, equipment.settings);
        table.rows.push_back({{when, {}, false}, {price, {}, false}, {windows, {}, false}});
    };
    const LogbookSettings& settings = equipment.settings;
    if (settings.tariff.known() || !settings.tariffChanges.empty())
        add(settings.tariffChanges.empty() ? Words::tr("always") : Words::tr("at first"),
            settings.tariff);
    for (const TariffChange& change : settings.tariffChanges)
        add(Words::tr("from %1").arg(shown(localText(change.from, equipment.zone))), change.tariff);
    return table;
}

TableText roundsTable(const Equipment& equipment)
{
    TableText table;
    table.header = {Words::tr("Round"), Words::tr("from"), Words::tr("to")};
    table.numeric = {false, true, true};
    for (const EditRow& row : roundRows(equipment.settings.rounds))
        table.rows.push_back(
            {{row.cells[0], {}, true}, {row.cells[1], {}, false}, {row.cells[2], {}, false}});
    return table;
}

QString priceWords(const LogbookSettings& settings)
{
    const bool known = settings.tariff.known() || !settings.tariffChanges.empty();
    return known ? QString() : Words::tr("No price of energy is on record.");
}

} // namespace holdband::ui
