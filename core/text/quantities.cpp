#include "core/text/quantities.h"

#include "core/text/numbers.h"

#include <cmath>

namespace holdband {

namespace {

std::string withoutZeros(std::string text, char decimalSign)
{
    if (text.find(decimalSign) == text.npos)
        return text;
    while (text.ends_with('0'))
        text.pop_back();
    if (text.ends_with(decimalSign))
        text.pop_back();
    return text;
}

} // namespace

std::string_view unitText(TemperatureUnit unit)
{
    return unit == TemperatureUnit::celsius ? "°C" : "°F";
}

std::string temperatureText(Temperature temperature, TemperatureUnit unit, int decimals,
                            char decimalSign)
{
    return fixedText(valueIn(temperature, unit), decimals, decimalSign) + " " +
           std::string(unitText(unit));
}

std::string differenceText(TemperatureDifference difference, TemperatureUnit unit, int decimals,
                           char decimalSign)
{
    return withoutZeros(fixedText(valueIn(difference, unit), decimals, decimalSign), decimalSign) +
           " " + std::string(unitText(unit));
}

std::string energyText(Energy energy, int decimals, char decimalSign)
{
    return fixedText(energy.kilowattHours(), decimals, decimalSign) + " kWh";
}

std::string powerText(Power power, int decimals, char decimalSign)
{
    return fixedText(power.watts(), decimals, decimalSign) + " W";
}

std::string moneyText(double amount, std::string_view currency, char decimalSign)
{
    const std::string number = fixedText(std::fabs(amount), 2, decimalSign);
    const bool zero = number.find_first_of("123456789") == number.npos;
    const std::string sign = amount < 0.0 && !zero ? "-" : "";
    if (currency == "USD")
        return sign + "$" + number;
    return currency.empty() ? sign + number : sign + number + " " + std::string(currency);
}

std::string shareText(double share, int decimals, char decimalSign)
{
    const double step = std::pow(10.0, -decimals);
    double percent = share * 100.0;
    // 99.97 % inside must not be shown as 100 %.
    if (share < 1.0 && percent > 100.0 - step && percent >= 100.0 - step / 2.0)
        percent = 100.0 - step;
    return fixedText(percent, decimals, decimalSign) + " %";
}

std::string volumeText(Volume volume, UnitSystem units, char decimalSign)
{
    const bool us = units == UnitSystem::us;
    const double value = us ? volume.usGallons() : volume.litres();
    return withoutZeros(fixedText(value, 1, decimalSign), decimalSign) + (us ? " gal" : " L");
}

std::string gravityText(Gravity gravity, char decimalSign)
{
    return fixedText(gravity.specific(), 3, decimalSign);
}

} // namespace holdband
