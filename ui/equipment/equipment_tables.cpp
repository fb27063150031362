#include "ui/equipment/equipment_tables.h"

#include "core/logbook/names.h"
#include "core/text/numbers.h"
#include "core/text/quantities.h"
#include "core/text/times.h"
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

QString serviceWords(const Meter& meter, const Zone& zone)
{
    QString words;
    if (meter.from)
        words += QStringLiteral("from ") + shown(localText(*meter.from, zone)) + QLatin1Char(' ');
    if (meter.to)
        words += QStringLiteral("to ") + shown(localText(*meter.to, zone));
    return words.isEmpty() ? QStringLiteral("always") : words.trimmed();
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

} // namespace

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
    table.header = {QStringLiteral("Meter"),         QStringLiteral("measures"),
                    QStringLiteral("reads to"),      QStringLiteral("accuracy"),
                    QStringLiteral("rolls over at"), QStringLiteral("in service")};
    table.numeric = {false, false, true, true, true, false};
    for (const Meter& meter : equipment.meters) {
        const auto kwh = [](const std::optional<Energy>& energy) {
            return energy ? plain(energy->kilowattHours()) + QStringLiteral(" kWh") : dash;
        };
        table.rows.push_back(
            {{shown(meter.name), {}, true},
             {shown(meter.setup), {}, false},
             {kwh(meter.resolution), {}, false},
             {meter.accuracy
                  ? QStringLiteral("± ") + plain(*meter.accuracy * 100.0) + QStringLiteral(" %")
                  : QStringLiteral("unknown"),
              {},
              false},
             {kwh(meter.rollsOverAt), {}, false},
             {serviceWords(meter, equipment.zone), {}, false}});
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
            {{shown(sensor.name), {}, true},
             {sensor.reads == Reads::power ? QStringLiteral("power, W")
                                           : shown(nameOf(sensor.reads)),
              {},
              false},
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

QString priceWords(const LogbookSettings& settings)
{
    if (!settings.tariff.known())
        return QStringLiteral("No price of energy is on record.");
    QString words =
        QStringLiteral("Energy costs %1 a kWh").arg(money(*settings.tariff.pricePerKwh, settings));
    const auto windows = settings.tariff.windows.size();
    if (windows > 0)
        words += QStringLiteral(", and another price in %1 time-of-use window%2")
                     .arg(windows)
                     .arg(windows == 1 ? QString() : QStringLiteral("s"));
    return words + QLatin1Char('.');
}

} // namespace holdband::ui
