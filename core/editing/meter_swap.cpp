#include "core/editing/meter_swap.h"

#include "core/model/meter_service.h"
#include "core/store/readings/meter_readings.h"
#include "core/store/records/equipment.h"
#include "core/text/phrase.h"
#include "core/text/places.h"

#include <algorithm>

namespace holdband::intake {

namespace {

std::string freeName(const std::vector<Meter>& meters, const std::string& base)
{
    for (int number = 2;; ++number) {
        const std::string name = base + " " + std::to_string(number);
        if (std::none_of(meters.begin(), meters.end(),
                         [&](const Meter& meter) { return meter.name == name; }))
            return name;
    }
}

Done checkNothingLater(const store::LogbookFile& logbook, const Meter& meter, Instant at)
{
    auto stored = store::readMeterReadings(logbook, meter.name);
    HOLDBAND_TRY(stored);
    if (!stored->empty() && stored->back().inForce.at >= at)
        return dataProblem(Phrase::tr("the old meter was read at that time or later"),
                           meterPlace(meter.name),
                           Phrase::tr("give the time at which the new one was in its place"));
    return {};
}

} // namespace

Result<std::string> replaceMeter(const store::LogbookFile& logbook, const std::string& meter,
                                 const MeterReading& first)
{
    auto meters = store::readMeters(logbook);
    HOLDBAND_TRY(meters);
    const auto found = std::find_if(meters->begin(), meters->end(),
                                    [&](const Meter& each) { return each.name == meter; });
    if (found == meters->end())
        return dataProblem(Phrase::tr("there is no meter \"%1\"").with(meter));
    Meter old = *found;
    HOLDBAND_TRY(checkNothingLater(logbook, old, first.at));
    Meter fresh;
    fresh.name = freeName(*meters, meter);
    fresh.setup = setupAt(old, first.at).value_or(old.setup);
    fresh.resolution = old.resolution;
    fresh.accuracy = old.accuracy;
    fresh.from = first.at;
    old.to = first.at;
    auto change =
        store::Change::begin(logbook, {store::HistoryVerb::meterReplaced, {fresh.name, meter}});
    HOLDBAND_TRY(change);
    HOLDBAND_TRY(store::updateMeter(*change, meter, old));
    HOLDBAND_TRY(store::addMeter(*change, fresh));
    HOLDBAND_TRY(store::addMeterReading(*change, fresh.name, first));
    HOLDBAND_TRY(change->commit());
    return fresh.name;
}

} // namespace holdband::intake
