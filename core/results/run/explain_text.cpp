#include "core/results/run/explain_text.h"

#include "core/text/durations.h"
#include "core/text/numbers.h"
#include "core/text/phrase.h"
#include "core/text/times.h"

#include <cmath>

namespace holdband::results {

std::string spanText(double ms)
{
    return hoursText(wholeMs(ms));
}

std::string ExplainText::difference(double kelvins) const
{
    return differenceText(TemperatureDifference::kelvins(kelvins),
                          m_review.settings.temperatureUnit(), 2, m_sign);
}

std::string ExplainText::deviation(double kelvins) const
{
    const std::string text = difference(kelvins);
    const bool zero = text.find_first_of("123456789") == text.npos;
    return kelvins > 0.0 && !zero ? "+" + text : text;
}

std::string ExplainText::degreeHours(double kelvinHours) const
{
    const TemperatureUnit unit = m_review.settings.temperatureUnit();
    return fixedText(valueIn(TemperatureDifference::kelvins(kelvinHours), unit), 2, m_sign) + " " +
           std::string(unitText(unit)) + "·h";
}

std::string ExplainText::temperature(Temperature temperature) const
{
    return temperatureText(temperature, m_review.settings.temperatureUnit(), 1, m_sign);
}

std::string ExplainText::share(double share) const
{
    return shareText(share, 1, m_sign);
}

std::string ExplainText::kwh(double value, int decimals) const
{
    return energyText(Energy::kilowattHours(value), decimals, m_sign);
}

std::string ExplainText::number(double value, int decimals) const
{
    return fixedText(value, decimals, m_sign);
}

std::string ExplainText::money(double amount) const
{
    return moneyText(amount, m_review.settings.currency, m_sign);
}

std::string ExplainText::time(Instant at) const
{
    return timeInRun(m_review, at);
}

std::string ExplainText::bounds(const analysis::EnergyFigure& energy) const
{
    if (!energy.lowKnown())
        return {};
    if (energy.highKnown())
        return " (" + number(energy.low, 2) + " – " + number(energy.high, 2) + ")";
    return " " + Phrase::tr("(at least %1)").with(number(energy.low, 2));
}

bool ExplainText::fahrenheit() const
{
    return m_review.settings.temperatureUnit() == TemperatureUnit::fahrenheit;
}

} // namespace holdband::results
