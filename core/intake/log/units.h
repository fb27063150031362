// Which unit a column is in, and whether its values contradict that.
#pragma once

#include "core/intake/csv/header.h"
#include "core/intake/log/log.h"
#include "core/model/equipment.h"
#include "core/problem.h"

#include <string>
#include <string_view>
#include <vector>

namespace holdband {

inline constexpr double kelvinOfZeroCelsius = 273.15; ///< K

struct ChosenUnit {
    ReadingUnit unit = ReadingUnit::celsius;
    std::string reason;      ///< "the header says °F"
    bool said = false;       ///< by the person, for this import: never refused
    bool byHeader = false;   ///< the column's header says it
    bool byFallback = false; ///< nothing says it
    std::string warning;     ///< empty where there is none
    bool kelvin = false;     ///< the header says K: its numbers are converted to `unit`
};

/// The quantity that a sensor of that kind records.
SeriesKind seriesKind(SensorKind reads);

/// Whether a quantity of that kind can be in that unit.
bool fits(ReadingUnit unit, SeriesKind kind);

/// "temperature", "power", "gravity", "energy"
std::string kindWords(SeriesKind kind);

/// "the header says °F"
std::string headerUnitReason(const LogUnit& unit);

/// Takes the first that is set: the column's own unit, --unit (temperatures only), the header's
/// unit, the fallback. A last word of one letter ("Beer F") counts as a unit only if the header
/// isn't the sensor's name itself and no other column has the same name with another letter
/// ("Vessel A", "Vessel C"). Problem (data): the header's unit is of another kind of quantity.
Result<ChosenUnit> chooseUnit(const WantedColumn& wanted, const LogRequest& request,
                              const std::vector<std::string>& header, std::size_t column);

/// Compares a column's median with what beer, rooms and coolant can be: a °C column with a median
/// above 45, a °F column that only the fallback calls so below 28, a gravity outside 0.9 … 1.3 SG
/// or −5 … 50 °P; the energy of intervals has no likely range, so its unit must be said. If the
/// user hasn't set the unit: a Problem that proposes units. Else, and for a °F column below 28 by
/// its header: a warning (empty: none).
Result<std::string> contradiction(const LogColumn& column, const ChosenUnit& unit);

} // namespace holdband
