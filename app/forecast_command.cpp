// The command `forecast`: what the next batch would use.
#include "app/commands.h"
#include "app/forecast_json.h"
#include "app/forecast_text.h"
#include "app/logbook_call.h"
#include "app/meant_names.h"
#include "core/assign_result.h"
#include "core/store/records/equipment.h"
#include "core/text/numbers.h"
#include "core/text/times.h"

namespace holdband::app {

namespace {

using results::NextBatchRequest;
using results::NextPlan;

QCommandLineOption valued(const char* name, const char* summary, const char* value)
{
    return {QString::fromLatin1(name), QString::fromLatin1(summary), QString::fromLatin1(value)};
}

/// The value of an option as a number.
Result<std::optional<double>> numberOf(const Call& call, const char* option)
{
    const auto typed = call.value(option);
    if (!typed)
        return std::optional<double>();
    auto number = parseDecimal(*typed);
    if (!number)
        return dataProblem(number.error().what, std::string("--") + option);
    return std::optional(number->value);
}

Result<std::optional<Gravity>> gravityOf(const Call& call, const char* option)
{
    auto number = numberOf(call, option);
    HOLDBAND_TRY(number);
    if (!*number)
        return std::optional<Gravity>();
    if (!(**number >= 0.98 && **number <= 1.2))
        return dataProblem("a gravity is between 0.980 and 1.200", std::string("--") + option);
    return std::optional(Gravity::specific(**number));
}

Done setVolume(const Call& call, UnitSystem units, NextPlan& plan)
{
    auto volume = numberOf(call, "volume");
    HOLDBAND_TRY(volume);
    if (!*volume)
        return {};
    if (!(**volume > 0.0))
        return dataProblem("the volume must be more than 0", "--volume");
    plan.volume = units == UnitSystem::us ? Volume::usGallons(**volume) : Volume::litres(**volume);
    return {};
}

Result<NextPlan> chosenPlan(const store::LogbookFile& logbook, const std::string& typed)
{
    auto name = meantPlan(logbook, typed);
    HOLDBAND_TRY(name);
    return results::planNamed(logbook, *name);
}

Result<NextPlan> chosenLike(const store::LogbookFile& logbook, const std::string& typed)
{
    auto name = meantBatch(logbook, typed);
    HOLDBAND_TRY(name);
    return results::planLike(logbook, *name);
}

Result<NextPlan> planOf(const Call& call, const store::LogbookFile& logbook,
                        const LogbookSettings& settings)
{
    auto plan = call.has("plan") ? chosenPlan(logbook, *call.value("plan"))
                                 : chosenLike(logbook, *call.value("like"));
    HOLDBAND_TRY(plan);
    HOLDBAND_TRY(setVolume(call, settings.units, *plan));
    auto original = gravityOf(call, "og");
    HOLDBAND_TRY(original);
    auto final = gravityOf(call, "fg");
    HOLDBAND_TRY(final);
    if (*original)
        plan->originalGravity = *original;
    if (*final)
        plan->finalGravity = *final;
    plan->shared = call.has("shared");
    return plan;
}

Result<analysis::TypedRoom> typedRoom(const Call& call, TemperatureUnit unit)
{
    auto mean = numberOf(call, "room");
    HOLDBAND_TRY(mean);
    auto swing = numberOf(call, "swing");
    HOLDBAND_TRY(swing);
    const bool us = unit == TemperatureUnit::fahrenheit;
    return analysis::TypedRoom{
        (us ? Temperature::fahrenheit(**mean) : Temperature::celsius(**mean)).celsius(),
        swing->value_or(0.0) / degreesPerKelvin(unit)};
}

/// A time, or a date alone for its midnight.
Result<Instant> timeOf(const std::string& typed, const Zone& zone)
{
    constexpr std::size_t dateLength = 10; // 2026-07-01
    return parseTime(typed.size() == dateLength ? typed + " 00:00" : typed, zone);
}

Result<results::RoomStretch> roomStretch(const Call& call, const store::LogbookFile& logbook,
                                         const std::string& zoneName)
{
    auto zone = Zone::named(zoneName);
    HOLDBAND_TRY(zone);
    results::RoomStretch stretch;
    auto from = timeOf(*call.value("room-from"), *zone);
    HOLDBAND_TRY(from);
    auto to = timeOf(*call.value("room-to"), *zone);
    HOLDBAND_TRY(to);
    stretch.span = {*from, *to};
    if (const auto typed = call.value("room-sensor"))
        HOLDBAND_TRY(assignResult(meantSensor(logbook, *typed), stretch.sensor));
    return stretch;
}

Result<results::NextBatch> forecastOf(const Call& call, const store::LogbookFile& logbook)
{
    auto settings = store::readSettings(logbook);
    HOLDBAND_TRY(settings);
    NextBatchRequest request;
    for (int i = 1; i < call.argumentCount(); ++i) {
        auto setup = meantSetup(logbook, call.argument(i));
        HOLDBAND_TRY(setup);
        request.setups.push_back(std::move(*setup));
    }
    auto plan = planOf(call, logbook, *settings);
    HOLDBAND_TRY(plan);
    request.plan = std::move(*plan);
    if (call.has("room")) {
        auto typed = typedRoom(call, settings->temperatureUnit());
        HOLDBAND_TRY(typed);
        request.room = *typed;
    } else {
        auto stretch = roomStretch(call, logbook, settings->zone);
        HOLDBAND_TRY(stretch);
        request.room = *stretch;
    }
    return results::reviewNextBatch(logbook, request);
}

/// Why the call is wrong; empty where it is not.
std::string wrongOptions(const Call& call)
{
    if (call.has("plan") == call.has("like"))
        return "give one of --plan and --like";
    const bool stretch = call.has("room-from") || call.has("room-to");
    if (call.has("room") == stretch)
        return "give --room, or --room-from and --room-to";
    if (call.has("room-from") != call.has("room-to"))
        return "--room-from and --room-to belong together";
    if (call.has("swing") && !call.has("room"))
        return "--swing belongs to --room";
    if (call.has("room-sensor") && !stretch)
        return "--room-sensor belongs to --room-from and --room-to";
    return {};
}

int forecast(const Call& call, const Command& command)
{
    const std::string wrong = wrongOptions(call);
    if (!wrong.empty())
        return wrongCall(wrong, usageLine(command));
    auto logbook = openForFigures(call.argument(0));
    if (!logbook)
        return failOpening(logbook.error(), call.argument(0));
    auto review = forecastOf(call, **logbook);
    if (!review)
        return fail(review.error());
    print(call.has("json") ? forecastJson(*review) + "\n" : forecastText(*review));
    return exitDone;
}

} // namespace

std::vector<Command> forecastCommands()
{
    Command command{
        "forecast",
        "LOGBOOK [SETUP]...",
        "What the next batch would use, when it would be cold, and whether it can be held.",
        1,
        100,
        {valued("plan", "a named plan of the logbook", "PLAN"),
         valued("like", "the plan, volume and gravities of that batch", "BATCH"),
         valued("volume", "gallons or litres, as the logbook has them", "N"),
         valued("og", "original gravity, such as 1.052", "N"),
         valued("fg", "final gravity", "N"),
         valued("room", "the room's mean temperature, in the logbook's unit", "T"),
         valued("swing", "from the lowest to the highest temperature of a day; default 0", "T"),
         valued("room-from", "start of a stretch of the room's own record", "TIME"),
         valued("room-to", "its end", "TIME"),
         valued("room-sensor", "the sensor of that record; default: the one that covers most of it",
                "SENSOR"),
         {QStringLiteral("shared"),
          QStringLiteral("another batch will run on the setup meanwhile")},
         {QStringLiteral("json"), QStringLiteral("print the result as JSON")}},
        {}};
    command.run = [named = command](const Call& call) { return forecast(call, named); };
    return {command};
}

} // namespace holdband::app
