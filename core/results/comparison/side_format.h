// How numbers of a comparison are written: in the logbook's units, with the reader's decimal sign.
// Not for use outside core/results.
#pragma once

#include "core/analysis/comparison.h"
#include "core/model/equipment.h"
#include "core/text/durations.h"
#include "core/text/numbers.h"
#include "core/text/phrase.h"
#include "core/text/quantities.h"

#include <string>

namespace holdband::results {

struct SideFormat {
    LogbookSettings settings;
    char decimalSign = '.';

    std::string fixed(double value, int decimals) const
    {
        return fixedText(value, decimals, decimalSign);
    }
    std::string energy(double kwh) const
    {
        return energyText(Energy::kilowattHours(kwh), 2, decimalSign);
    }
    std::string power(double watts, int decimals = 0) const
    {
        return powerText(Power::watts(watts), decimals, decimalSign);
    }
    std::string difference(double kelvins, int decimals = 2) const
    {
        return differenceText(TemperatureDifference::kelvins(kelvins), settings.temperatureUnit(),
                              decimals, decimalSign);
    }
    std::string temperature(double celsius) const
    {
        return temperatureText(Temperature::celsius(celsius), settings.temperatureUnit(), 1,
                               decimalSign);
    }
    std::string money(double amount) const
    {
        return moneyText(amount, settings.currency, decimalSign);
    }
    std::string share(double share) const { return shareText(share, 1, decimalSign); }
    std::string duration(double hours) const { return durationText(Hours{hours}, decimalSign); }
    std::string volume(double litres) const
    {
        return volumeText(Volume::litres(litres), settings.units, decimalSign);
    }
    /// "64 – 78"
    std::string range(double low, double high, int decimals) const
    {
        return fixed(low, decimals) + " – " + fixed(high, decimals);
    }
    /// " (64 – 78)"; empty without bounds
    std::string bounds(const analysis::Bounded& figure, int decimals) const
    {
        return figure.bounded() ? " (" + range(*figure.low, *figure.high, decimals) + ")" : "";
    }
    /// A difference of 1 K in the display unit: 1.8 or 1.
    double degrees() const { return degreesPerKelvin(settings.temperatureUnit()); }
    std::string degree() const { return std::string(unitText(settings.temperatureUnit())); }
};

/// "3 batches", "1 batch"
inline std::string batchCount(std::size_t count)
{
    return Phrase::counted("%n batches", "%n batch", count);
}

} // namespace holdband::results
