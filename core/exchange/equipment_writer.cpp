// Writes equipment, prices and rounds.
#include "core/exchange/day_names.h"
#include "core/exchange/description_json.h"
#include "core/model/names.h"

#include <cmath>

namespace holdband::exchange {

namespace {

/// Percent from a fraction, without the rounding error of the multiplication.
double percentOf(double fraction)
{
    constexpr double places = 1e10;
    return std::round(fraction * 100.0 * places) / places;
}

std::string clockOf(int minute)
{
    const auto two = [](int number) {
        return std::string(number < 10 ? "0" : "") + std::to_string(number);
    };
    return two(minute / 60) + ":" + two(minute % 60);
}

} // namespace

Json windowJson(const TariffWindow& window)
{
    Json json;
    json["days"] = Json::array();
    for (std::size_t day = 0; day < window.days.size(); ++day) {
        if (window.days[day])
            json["days"].push_back(dayNames[day]);
    }
    json["from"] = clockOf(window.fromMinute);
    json["to"] = clockOf(window.toMinute);
    json["price_per_kwh"] = window.pricePerKwh;
    return json;
}

Json tariffChangeJson(const TariffChange& change)
{
    Json json;
    json["from"] = rfc3339Utc(change.from);
    put(json, "price_per_kwh", change.tariff.pricePerKwh);
    for (const TariffWindow& window : change.tariff.windows)
        json["time_of_use"].push_back(windowJson(window));
    return json;
}

Json roundJson(const RoundWindow& window)
{
    return {{"label", window.label},
            {"from", clockOf(window.fromMinute)},
            {"to", clockOf(window.toMinute)}};
}

Json setupJson(const Setup& setup)
{
    Json json;
    json["name"] = setup.name;
    putText(json, "kind", setup.kind);
    json["vessels"] = setup.vessels;
    if (setup.ratedPower)
        json["rated_power_w"] = setup.ratedPower->watts();
    for (const Part& part : setup.parts)
        json["parts"].push_back(
            {{"item", part.item}, {"quantity", part.quantity}, {"price", part.price}});
    for (const auto& [criterion, rating] : setup.ratings)
        json["ratings"][criterion] = rating;
    put(json, "retired", setup.retired);
    return json;
}

Json sensorJson(const Sensor& sensor)
{
    Json json;
    json["name"] = sensor.name;
    json["reads"] = nameOf(sensor.reads);
    put(json, "setup", sensor.setup);
    put(json, "accuracy_c", sensor.accuracy);
    putText(json, "placement", sensor.placement);
    for (const Offset& offset : sensor.offsets) {
        Json item;
        item["from"] = rfc3339Utc(offset.from);
        item["add_c"] = offset.add.kelvins();
        put(item, "doubt_c", offset.doubt);
        putText(item, "why", offset.why);
        json["offsets"].push_back(std::move(item));
    }
    if (sensor.readByHand)
        json["read_by_hand"] = true;
    if (sensor.intervalTime != IntervalTime::start)
        json["interval_time"] = nameOf(sensor.intervalTime);
    put(json, "retired", sensor.retired);
    return json;
}

Json meterJson(const Meter& meter)
{
    Json json;
    json["name"] = meter.name;
    json["setup"] = meter.setup;
    put(json, "resolution_kwh", meter.resolution);
    put(json, "rolls_over_at_kwh", meter.rollsOverAt);
    if (meter.accuracy)
        json["accuracy_pct"] = percentOf(*meter.accuracy);
    put(json, "from", meter.from);
    put(json, "to", meter.to);
    for (const MeterMove& move : meter.moves) {
        Json item;
        item["from"] = rfc3339Utc(move.from);
        put(item, "setup", move.setup);
        json["moves"].push_back(std::move(item));
    }
    put(json, "retired", meter.retired);
    return json;
}

} // namespace holdband::exchange
