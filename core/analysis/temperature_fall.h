// A falling temperature as a plain series: where it began, and when it first passed a temperature.
// For section 8.3 of the method in DEVELOPERS.md; a rise is handed in mirrored. No Qt, no SQL.
#pragma once

#include <optional>
#include <span>
#include <vector>

namespace holdband::analysis {

/// A reading, or the mean of some.
struct TemperatureAt {
    double hours = 0.0;   ///< h since the fall began (the setup was turned down)
    double celsius = 0.0; ///< °C
};

/// The readings from hour 0 on, in the order of time; those that are not finite are left out.
std::vector<TemperatureAt> inOrder(std::span<const TemperatureAt> readings);

/// Where the fall began: the greatest of the first three readings, °C. Needs at least one reading
/// in order, as the rest do.
double beginningOf(std::span<const TemperatureAt> fall);

/// The hour at which the fall was first at or below a temperature, straight between two readings;
/// absent where it never was.
std::optional<double> firstAtOrBelow(std::span<const TemperatureAt> fall, double celsius);

/// The hours from first passing one temperature to first passing a lower one. A fall that began
/// below the first one is taken from its beginning less 0.01 K, and the missing start is added at
/// the mean rate of its first quarter. Absent where it never came so low, or began that low.
std::optional<double> hoursFromTo(std::span<const TemperatureAt> fall, double from, double to);

/// The means of the readings from one hour to another in `count` blocks of equal length; blocks
/// without a reading are left out. A reading on an edge belongs to the later block.
std::vector<TemperatureAt> blockMeans(std::span<const TemperatureAt> readings, double fromHours,
                                      double toHours, int count);

} // namespace holdband::analysis
