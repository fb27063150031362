#include "core/editing/ice_point.h"

#include "core/analysis/statistics.h"
#include "core/text/phrase.h"
#include "core/text/quantities.h"

#include <cmath>

namespace holdband::results {

namespace {

constexpr double coverage = 2.0;      ///< k of an expanded uncertainty, JCGM 100
constexpr double bathHalfWidth = 0.1; ///< K, see the header
constexpr double furthestMean = 5.0;  ///< K from 0 °C

double expandedRectangular(double halfWidth)
{
    return coverage * halfWidth / std::sqrt(3.0);
}

} // namespace

Result<IcePoint> icePoint(std::span<const Temperature> readings, TemperatureDifference step)
{
    if (!(step.kelvins() >= 0.0))
        return dataProblem(Phrase::tr("the last digit shown can't be below 0"));
    std::vector<double> celsius;
    for (const Temperature reading : readings)
        celsius.push_back(reading.celsius());
    if (celsius.size() < 3)
        return dataProblem(Phrase::tr("an ice point needs at least three readings"), {},
                           Phrase::tr("stir, wait a minute, and read again"));
    const analysis::SampleSummary summary = analysis::summarise(celsius);
    if (!(std::fabs(summary.mean) <= furthestMean))
        return dataProblem(Phrase::tr("the readings are too far from the melting point of ice"), {},
                           Phrase::tr("leave the probe in crushed ice and water for some minutes"));
    const double scatter = *analysis::meanHalfWidth95(summary);
    const double rounding = expandedRectangular(step.kelvins() / 2.0);
    const double bath = expandedRectangular(bathHalfWidth);
    const auto kelvins = [](double value) { return TemperatureDifference::kelvins(value); };
    return IcePoint{celsius.size(),
                    Temperature::celsius(summary.mean),
                    kelvins(-summary.mean),
                    kelvins(scatter),
                    kelvins(rounding),
                    kelvins(bath),
                    kelvins(std::hypot(scatter, rounding, bath))};
}

std::vector<std::string> icePointText(const IcePoint& point, TemperatureUnit unit, char decimalSign)
{
    const auto say = [&](TemperatureDifference difference) {
        return differenceText(difference, unit, 2, decimalSign);
    };
    const std::string sign = point.offset.kelvins() < 0.0 ? "" : "+";
    return {
        Phrase::tr("The mean of %1 readings is %2; ice melts at %3: the offset is %4.")
            .with(std::to_string(point.count), temperatureText(point.mean, unit, 2, decimalSign),
                  temperatureText(Temperature::celsius(0.0), unit, 0, decimalSign),
                  sign + say(point.offset)),
        Phrase::tr("The remaining uncertainty is ± %1 (95 %), from three parts:")
            .with(say(point.doubt)),
        Phrase::tr("scatter of the readings ± %1 (Student's t);").with(say(point.scatter)),
        Phrase::tr("rounding to the last digit ± %1;").with(say(point.rounding)),
        Phrase::tr("the bath itself ± %1, assumed within 0.1 K.").with(say(point.bath)),
        Phrase::tr("It is measured at the ice point: far from it, the sensor may be off by more."),
    };
}

} // namespace holdband::results
