// Plain values for the equipment: setups, sensors, meters, the price of energy. They refer to each
// other by name, as people and description files do; the store turns names into row ids. Text is
// UTF-8. No Qt.
#pragma once

#include "core/quantity/energy.h"
#include "core/quantity/temperature.h"
#include "core/quantity/unit_system.h"

#include <array>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace holdband {

struct Part {
    std::string item;
    double quantity = 1.0; ///< pieces, dimensionless
    double price = 0.0;    ///< for one piece, in the logbook's currency

    bool operator==(const Part&) const = default;
};

/// A cooling arrangement.
struct Setup {
    std::string name;
    std::string kind; ///< free text: "coolant loop", "cabinet"
    int vessels = 1;
    std::optional<Power> ratedPower;
    std::vector<Part> parts;
    std::map<std::string, double> ratings; ///< criterion → 1 … 5
    std::optional<Instant> retired = {};   ///< no longer offered for anything new

    bool operator==(const Setup&) const = default;
};

/// The sum of quantity × price; absent where no part is listed.
inline std::optional<double> partsTotal(const Setup& setup)
{
    if (setup.parts.empty())
        return std::nullopt;
    double sum = 0.0; ///< in the logbook's currency
    for (const Part& part : setup.parts)
        sum += part.quantity * part.price;
    return sum;
}

enum class SensorKind {
    beer,
    ambient,
    chamber,
    coolant,
    gravity,
    power,
    intervalEnergy, ///< the energy that each interval used, where a meter counts a running total
};

/// A thermometer, which has offsets and an accuracy.
constexpr bool readsTemperature(SensorKind kind)
{
    return kind == SensorKind::beer || kind == SensorKind::ambient || kind == SensorKind::chamber ||
           kind == SensorKind::coolant;
}

/// Electricity, from which a setup without a meter gets its energy.
constexpr bool readsElectricity(SensorKind kind)
{
    return kind == SensorKind::power || kind == SensorKind::intervalEnergy;
}

/// Which end of its interval the time of a logged energy is.
enum class IntervalTime { start, end };

/// A calibration: added to each reading from `from` on, until the next offset replaces it.
struct Offset {
    Instant from;
    TemperatureDifference add;
    std::optional<TemperatureDifference> doubt; ///< replaces the sensor's accuracy from then on
    std::string why = {};

    bool operator==(const Offset&) const = default;
};

struct Sensor {
    std::string name;
    SensorKind reads = SensorKind::beer;
    std::optional<std::string> setup;
    std::optional<TemperatureDifference> accuracy; ///< ±; absent if unknown
    std::vector<Offset> offsets;                   ///< increasing in `from`
    std::string placement;   ///< "in the beer", "taped to the wall"; may be empty
    bool readByHand = false; ///< read by eye in the rounds, without a log
    std::optional<Instant> retired = {};
    IntervalTime intervalTime = IntervalTime::start; ///< of intervalEnergy only

    bool operator==(const Sensor&) const = default;
};

/// From `from` on, a meter counts for another setup, or is not in use.
struct MeterMove {
    Instant from;
    std::optional<std::string> setup; ///< absent: not in use

    bool operator==(const MeterMove&) const = default;
};

struct Meter {
    std::string name;
    std::string setup;                 ///< the first setup it counts for
    std::optional<Energy> resolution;  ///< absent: the finest decimal among its readings
    std::optional<Energy> rollsOverAt; ///< the highest value of the register
    std::optional<double> accuracy;    ///< a fraction of the reading (class 1: 0.01)
    std::optional<Instant> from;       ///< in service from; absent: always
    std::optional<Instant> to;
    std::vector<MeterMove> moves = {}; ///< increasing in `from`
    std::optional<Instant> retired = {};

    bool operator==(const Meter&) const = default;
};

/// A window of local time with its own energy price.
struct TariffWindow {
    std::array<bool, 7> days{true, true, true, true, true, true, true}; ///< Monday first
    int fromMinute = 0;  ///< minutes after local midnight
    int toMinute = 1440; ///< at or below fromMinute: it runs past midnight
    double pricePerKwh = 0.0;

    bool operator==(const TariffWindow&) const = default;
};

struct Tariff {
    std::optional<double> pricePerKwh; ///< outside all windows
    std::vector<TariffWindow> windows; ///< the first that matches an instant applies

    bool known() const { return pricePerKwh.has_value(); }
    bool operator==(const Tariff&) const = default;
};

/// A tariff that applies from an instant until the next change.
struct TariffChange {
    Instant from;
    Tariff tariff;

    bool operator==(const TariffChange&) const = default;
};

/// A time of day in which the meters are to be read. Minutes after local midnight.
struct RoundWindow {
    std::string label;
    int fromMinute = 0;
    int toMinute = 0; ///< above fromMinute: a window does not run past midnight

    bool operator==(const RoundWindow&) const = default;
};

/// Two rounds a day, the default.
inline std::vector<RoundWindow> usualRounds()
{
    return {{"Morning", 5 * 60, 9 * 60}, {"Evening", 16 * 60, 20 * 60}};
}

/// Settings of the logbook.
struct LogbookSettings {
    std::string zone = "UTC"; ///< IANA name
    UnitSystem units = UnitSystem::metric;
    std::string currency;                            ///< ISO 4217, or empty
    Tariff tariff;                                   ///< until the first change
    std::vector<TariffChange> tariffChanges = {};    ///< increasing in `from`
    std::vector<RoundWindow> rounds = usualRounds(); ///< in order of the day, not overlapping
    /// How far the times of register readings may be off that were typed with a time of their own.
    Milliseconds timeDoubt{0};

    TemperatureUnit temperatureUnit() const
    {
        return units == UnitSystem::us ? TemperatureUnit::fahrenheit : TemperatureUnit::celsius;
    }
    bool operator==(const LogbookSettings&) const = default;
};

} // namespace holdband
