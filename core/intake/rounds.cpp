#include "core/intake/rounds.h"

#include "core/intake/register_check.h"
#include "core/store/equipment.h"
#include "core/store/meter_readings.h"
#include "core/text/near.h"
#include "core/text/times.h"

#include <algorithm>
#include <map>

namespace holdband::intake {

namespace {

/// Clocks of two devices may differ a little.
constexpr Milliseconds clockSlack = std::chrono::minutes{2};

Problem unknownMeter(const std::vector<Meter>& meters, const std::string& name)
{
    std::vector<std::string> names;
    for (const Meter& meter : meters)
        names.push_back(meter.name);
    return {ProblemKind::data, "there is no meter \"" + name + "\"", {}, suggestion(name, names)};
}

struct MeterContext {
    std::vector<Meter> meters;
    Zone zone;
};

Result<MeterContext> readContext(const store::LogbookFile& logbook)
{
    auto meters = store::readMeters(logbook);
    HOLDBAND_TRY(meters);
    auto settings = store::readSettings(logbook);
    HOLDBAND_TRY(settings);
    auto zone = Zone::named(settings->zone);
    HOLDBAND_TRY(zone);
    return MeterContext{std::move(*meters), *zone};
}

Result<RegisterCheck> openRegister(const store::LogbookFile& logbook, const MeterContext& context,
                                   const std::string& name)
{
    const auto meter = std::find_if(context.meters.begin(), context.meters.end(),
                                    [&](const Meter& each) { return each.name == name; });
    if (meter == context.meters.end())
        return failure(unknownMeter(context.meters, name));
    auto kept = store::readMeterReadings(logbook, name);
    HOLDBAND_TRY(kept);
    std::vector<MeterReading> standing;
    for (const store::KeptReading& reading : *kept)
        standing.push_back(reading.inForce);
    return RegisterCheck(*meter, std::move(standing), context.zone);
}

ReadingCheck checkTyped(const RegisterCheck& meter, const TypedReading& typed, Instant now,
                        const Zone& zone)
{
    if (typed.reading.at > now + clockSlack) {
        Problem problem{ProblemKind::data, localText(typed.reading.at, zone) + " is in the future",
                        "meter \"" + typed.meter + "\"", "check the time"};
        return {DoubtfulReading{ReadingDoubt::inFuture, std::move(problem)}, false, false};
    }
    return meter.check(typed.reading);
}

} // namespace

Result<RegisterCheck> registerOf(const store::LogbookFile& logbook, const std::string& meter)
{
    auto context = readContext(logbook);
    HOLDBAND_TRY(context);
    return openRegister(logbook, *context, meter);
}

Result<ReadingCheck> checkReading(const store::LogbookFile& logbook, const TypedReading& typed)
{
    auto context = readContext(logbook);
    HOLDBAND_TRY(context);
    auto meter = openRegister(logbook, *context, typed.meter);
    if (!meter)
        return ReadingCheck{DoubtfulReading{ReadingDoubt::unknownMeter, meter.error()}, false,
                            false};
    return checkTyped(*meter, typed, logbook.now(), context->zone);
}

Result<int> saveRound(const store::LogbookFile& logbook, const std::vector<TypedReading>& round)
{
    auto context = readContext(logbook);
    HOLDBAND_TRY(context);
    auto change = store::Change::begin(logbook, "typed a round");
    HOLDBAND_TRY(change);
    std::map<std::string, RegisterCheck> meters;
    int added = 0;
    for (const TypedReading& typed : round) {
        if (!meters.contains(typed.meter)) {
            auto meter = openRegister(logbook, *context, typed.meter);
            HOLDBAND_TRY(meter);
            meters.emplace(typed.meter, std::move(*meter));
        }
        RegisterCheck& meter = meters.at(typed.meter);
        const ReadingCheck check = checkTyped(meter, typed, logbook.now(), context->zone);
        if (check.doubt)
            return failure(check.doubt->problem);
        if (check.alreadyThere)
            continue;
        MeterReading reading = typed.reading;
        reading.event = eventOf(reading, check);
        HOLDBAND_TRY(store::addMeterReading(*change, typed.meter, reading));
        meter.accept(reading);
        ++added;
    }
    if (added > 0)
        HOLDBAND_TRY(change->commit());
    return added;
}

} // namespace holdband::intake
