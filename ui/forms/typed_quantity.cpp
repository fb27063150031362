#include "ui/forms/typed_quantity.h"

#include "core/text/numbers.h"
#include "core/text/phrase.h"
#include "core/text/quantities.h"
#include "core/text/trimmed.h"
#include "ui/words/words.h"

#include <QStringList>
#include <array>
#include <cmath>

namespace holdband::ui {

namespace {

constexpr double hoursPerDay = 24.0;
constexpr double longestInHours = 48.0; ///< longer lengths are written in days

/// A unit that may follow the number: the value is (number − zero) × scale.
struct Unit {
    const char* names; ///< in lower case, separated by spaces
    double scale = 1.0;
    double zero = 0.0;
};

std::vector<Unit> unitsOf(Quantity quantity)
{
    switch (quantity) {
    case Quantity::temperature:
        return {{"°c c"}, {"°f f", 1.0 / 1.8, 32.0}};
    case Quantity::difference:
        return {{"k °c c"}, {"°f f", 1.0 / 1.8}};
    case Quantity::hours:
        return {{"h hour hours"},
                {"d day days", hoursPerDay},
                {"min minutes", 1.0 / 60.0},
                {"w week weeks", 7.0 * hoursPerDay}};
    case Quantity::volume:
        return {{"l litre litres liter liters"},
                {"gal gallon gallons", Volume::litresPerUsGallon},
                {"ml", 0.001}};
    case Quantity::gravity:
        return {{"sg"}};
    case Quantity::power:
        return {{"w"}, {"kw", 1000.0}};
    case Quantity::energy:
        return {{"kwh"}, {"wh", 0.001}};
    case Quantity::percent:
        return {{"%", 0.01}};
    case Quantity::money:
    case Quantity::number:
        break;
    }
    return {};
}

const Unit* namedUnit(const std::vector<Unit>& units, const QString& name)
{
    for (const Unit& unit : units) {
        if (QString::fromUtf8(unit.names).split(QLatin1Char(' ')).contains(name.toLower()))
            return &unit;
    }
    return nullptr;
}

struct NumberAndUnit {
    QString number;
    QString unit;
};

/// Splits "66 °F" after its last digit or decimal sign.
NumberAndUnit parted(const QString& text, const UnitFormat& format)
{
    QString bare = text.trimmed();
    if (format.currency == "USD" && bare.startsWith(QLatin1Char('$')))
        bare.remove(0, 1);
    qsizetype end = bare.size();
    while (end > 0 && !bare[end - 1].isDigit() && bare[end - 1] != QLatin1Char('.') &&
           bare[end - 1] != QLatin1Char(','))
        --end;
    if (end == 0)
        return {bare, {}};
    return {bare.left(end).trimmed(), bare.mid(end).trimmed()};
}

std::string withoutZeros(std::string text, char sign)
{
    if (text.find(sign) == text.npos)
        return text;
    while (text.ends_with('0'))
        text.pop_back();
    if (text.ends_with(sign))
        text.pop_back();
    return text;
}

int decimalsOf(Quantity quantity)
{
    switch (quantity) {
    case Quantity::temperature:
    case Quantity::difference:
    case Quantity::volume:
    case Quantity::hours:
        return 2;
    case Quantity::gravity:
    case Quantity::power:
        return 3;
    default:
        return 6;
    }
}

QString amountText(double value, const UnitFormat& format)
{
    // A price for a kilowatt-hour has more places than a price for a part.
    const std::string cents = fixedText(value, 2, format.sign);
    const bool whole = std::abs(value * 100.0 - std::round(value * 100.0)) < 1e-9;
    return shown(whole ? cents : withoutZeros(fixedText(value, 6, format.sign), format.sign));
}

} // namespace

QString unitOf(Quantity quantity, const UnitFormat& format)
{
    const bool us = format.units == UnitSystem::us;
    switch (quantity) {
    case Quantity::temperature:
    case Quantity::difference:
        return shown(unitText(format.temperature()));
    case Quantity::hours:
        return QStringLiteral("h");
    case Quantity::volume:
        return us ? QStringLiteral("gal") : QStringLiteral("L");
    case Quantity::gravity:
        return QStringLiteral("SG");
    case Quantity::power:
        return QStringLiteral("W");
    case Quantity::energy:
        return QStringLiteral("kWh");
    case Quantity::money:
        return shown(format.currency);
    case Quantity::percent:
        return QStringLiteral("%");
    case Quantity::number:
        break;
    }
    return {};
}

Result<double> readTyped(Quantity quantity, const QString& text, const UnitFormat& format)
{
    const NumberAndUnit typed = parted(text, format);
    const auto number = parseTypedNumber(core(typed.number), format.sign);
    if (!number)
        return failure(number.error());
    const QString usual = unitOf(quantity, format);
    const QString unit = typed.unit.isEmpty() ? usual : typed.unit;
    if (unit.isEmpty() || unit.compare(shown(format.currency), Qt::CaseInsensitive) == 0)
        return number->value;
    const std::vector<Unit> units = unitsOf(quantity);
    const Unit* known = namedUnit(units, unit);
    if (known)
        return (number->value - known->zero) * known->scale;
    return dataProblem(Phrase::tr("\"%1\" is not a unit for this").with(core(typed.unit)), {},
                       usual.isEmpty() ? Phrase::tr("write the number alone").text()
                                       : Phrase::tr("write it in %1").with(core(usual)));
}

QString typedText(Quantity quantity, double value, const UnitFormat& format)
{
    if (quantity == Quantity::money)
        return amountText(value, format);
    if (quantity == Quantity::gravity)
        return shown(fixedText(value, 3, format.sign));
    const auto plain = [&](double number) {
        return shown(
            withoutZeros(fixedText(number, decimalsOf(quantity), format.sign), format.sign));
    };
    if (quantity == Quantity::hours)
        return value > longestInHours ? plain(value / hoursPerDay) + QStringLiteral(" d")
                                      : plain(value) + QStringLiteral(" h");
    const std::vector<Unit> units = unitsOf(quantity);
    const Unit* usual = namedUnit(units, unitOf(quantity, format));
    return plain(usual ? value / usual->scale + usual->zero : value);
}

} // namespace holdband::ui
