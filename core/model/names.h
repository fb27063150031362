// The written names of the logbook's choices, the same in the store, in descriptions and in
// messages. No Qt.
#pragma once

#include "core/model/batch.h"
#include "core/model/cause.h"
#include "core/model/equipment.h"
#include "core/model/readings.h"

#include <array>
#include <optional>
#include <string_view>
#include <utility>

namespace holdband {

template <typename Choice>
struct ChoiceNames;

template <>
struct ChoiceNames<SensorKind> {
    static constexpr std::array<std::pair<SensorKind, std::string_view>, 7> all{{
        {SensorKind::beer, "beer"},
        {SensorKind::ambient, "ambient"},
        {SensorKind::chamber, "chamber"},
        {SensorKind::coolant, "coolant"},
        {SensorKind::gravity, "gravity"},
        {SensorKind::power, "power_w"},
        {SensorKind::intervalEnergy, "interval_energy"},
    }};
};

template <>
struct ChoiceNames<IntervalTime> {
    static constexpr std::array<std::pair<IntervalTime, std::string_view>, 2> all{{
        {IntervalTime::start, "start"},
        {IntervalTime::end, "end"},
    }};
};

template <>
struct ChoiceNames<StageKind> {
    static constexpr std::array<std::pair<StageKind, std::string_view>, 2> all{{
        {StageKind::hold, "hold"},
        {StageKind::ramp, "ramp"},
    }};
};

template <>
struct ChoiceNames<StageUntil> {
    static constexpr std::array<std::pair<StageUntil, std::string_view>, 3> all{{
        {StageUntil::hours, "hours"},
        {StageUntil::turnedDown, "turned down"},
        {StageUntil::gravity, "gravity"},
    }};
};

template <>
struct ChoiceNames<MeterEvent> {
    static constexpr std::array<std::pair<MeterEvent, std::string_view>, 2> all{{
        {MeterEvent::rollover, "rollover"},
        {MeterEvent::reset, "reset"},
    }};
};

template <>
struct ChoiceNames<UnitSystem> {
    static constexpr std::array<std::pair<UnitSystem, std::string_view>, 2> all{{
        {UnitSystem::us, "us"},
        {UnitSystem::metric, "metric"},
    }};
};

template <>
struct ChoiceNames<ReadingUnit> {
    static constexpr std::array<std::pair<ReadingUnit, std::string_view>, 8> all{{
        {ReadingUnit::celsius, "C"},
        {ReadingUnit::fahrenheit, "F"},
        {ReadingUnit::watt, "W"},
        {ReadingUnit::kilowatt, "kW"},
        {ReadingUnit::wattHour, "Wh"},
        {ReadingUnit::kilowattHour, "kWh"},
        {ReadingUnit::specificGravity, "SG"},
        {ReadingUnit::degreePlato, "°P"},
    }};
};

template <>
struct ChoiceNames<Side> {
    static constexpr std::array<std::pair<Side, std::string_view>, 2> all{{
        {Side::above, "above"},
        {Side::below, "below"},
    }};
};

template <>
struct ChoiceNames<Cause> {
    static constexpr std::array<std::pair<Cause, std::string_view>, 6> all{{
        {Cause::lidOpen, "lid open"},
        {Cause::powerCut, "power cut"},
        {Cause::sensorMoved, "sensor moved"},
        {Cause::warmRoom, "warm room"},
        {Cause::control, "control"},
        {Cause::other, "other"},
    }};
};

template <typename Choice>
constexpr std::string_view nameOf(Choice choice)
{
    for (const auto& [value, name] : ChoiceNames<Choice>::all) {
        if (value == choice)
            return name;
    }
    return {};
}

template <typename Choice>
constexpr std::optional<Choice> choiceNamed(std::string_view wanted)
{
    for (const auto& [value, name] : ChoiceNames<Choice>::all) {
        if (name == wanted)
            return value;
    }
    return std::nullopt;
}

/// "beer, ambient, chamber …" for a message.
template <typename Choice>
std::string choicesText()
{
    std::string text;
    for (const auto& [value, name] : ChoiceNames<Choice>::all)
        text.append(text.empty() ? "" : ", ").append(name);
    return text;
}

} // namespace holdband
