#include "ui/record/readings_view.h"

#include "core/analysis/meter_curve.h"
#include "core/store/readings/readings.h"
#include "core/store/records/equipment.h"
#include "core/text/phrase.h"

#include <algorithm>

namespace holdband::ui {

namespace {

constexpr std::size_t mostShown = 3'000;
constexpr auto sensorStretch = std::chrono::days{1};
constexpr auto meterStretch = std::chrono::days{14};

Done readSensor(const store::LogbookFile& file, const std::optional<Span>& span, ReadingsView& view)
{
    const std::string& sensor = view.subject.name;
    auto last = store::lastReadingAt(file, sensor);
    HOLDBAND_TRY(last);
    const Instant end = last->value_or(file.now());
    view.span = span.value_or(Span{end - sensorStretch, end});
    auto list = store::listReadings(file, sensor, view.span, mostShown);
    HOLDBAND_TRY(list);
    view.readings = std::move(list->readings);
    view.more = list->more;
    auto exclusions = store::readExclusions(file);
    HOLDBAND_TRY(exclusions);
    for (const store::Exclusion& exclusion : *exclusions) {
        const bool touches =
            exclusion.span.start <= view.span.end && view.span.start <= exclusion.span.end;
        if (exclusion.sensor == sensor && touches)
            view.exclusions.push_back(exclusion);
    }
    return {};
}

/// Computes the energy between the reading before and the row's reading.
void countSince(const Meter& meter, const MeterReading& before, RegisterRow& row)
{
    using analysis::MeterCurve;
    const MeterReading& now = row.reading.inForce;
    const MeterCurve pair({{before, now}, meter.resolution, meter.rollsOverAt}, {});
    row.decimals = std::max(before.decimals, now.decimals);
    if (pair.pairBefore(1) == MeterCurve::Pair::unknown) {
        row.usedWhy = Phrase::tr("It is lower than the reading before and no reason is given, so "
                                 "this pair is not used.");
        return;
    }
    row.usedKwh = pair.over({before.at, now.at}).kwh;
    if (pair.pairBefore(1) == MeterCurve::Pair::reset)
        row.usedWhy =
            Phrase::tr("The register was reset to 0 in between: at least this much was used.");
    else if (now.event == MeterEvent::rollover)
        row.usedWhy = Phrase::tr("The register rolled over in between: its top is added.");
}

void countAll(const Meter& meter, const std::vector<store::StoredReading>& stored,
              std::vector<RegisterRow>& rows)
{
    for (RegisterRow& row : rows) {
        if (row.reading.leftOut)
            continue;
        const auto here = std::lower_bound(
            stored.begin(), stored.end(), row.reading.inForce.at,
            [](const store::StoredReading& a, Instant at) { return a.inForce.at < at; });
        if (here == stored.begin())
            row.usedWhy = Phrase::tr("It is the first reading.");
        else
            countSince(meter, std::prev(here)->inForce, row);
    }
}

Done readMeter(const store::LogbookFile& file, const Meter& meter, const std::optional<Span>& span,
               ReadingsView& view)
{
    auto stored = store::readMeterReadings(file, meter.name);
    HOLDBAND_TRY(stored);
    const Instant end = stored->empty() ? file.now() : stored->back().inForce.at;
    view.span = span.value_or(Span{end - meterStretch, end});
    auto list = store::listRegister(file, meter.name, view.span, mostShown);
    HOLDBAND_TRY(list);
    view.more = list->more;
    for (store::ListedRegister& reading : list->readings)
        view.registers.push_back({std::move(reading), {}, 0, {}});
    countAll(meter, *stored, view.registers);
    return {};
}

} // namespace

Result<ReadingsView> readReadingsView(const store::LogbookFile& file, const ReadingSubject& wanted,
                                      const std::optional<Span>& span)
{
    ReadingsView view;
    auto sensors = store::readSensors(file);
    HOLDBAND_TRY(sensors);
    auto meters = store::readMeters(file);
    HOLDBAND_TRY(meters);
    auto settings = store::readSettings(file);
    HOLDBAND_TRY(settings);
    auto zone = Zone::named(settings->zone);
    HOLDBAND_TRY(zone);
    view.zone = *zone;
    view.unit = settings->temperatureUnit();
    for (const Sensor& sensor : *sensors)
        view.subjects.push_back({false, sensor.name});
    for (const Meter& meter : *meters)
        view.subjects.push_back({true, meter.name});
    if (view.subjects.empty())
        return view;
    const auto found = std::find(view.subjects.begin(), view.subjects.end(), wanted);
    view.subject = found == view.subjects.end() ? view.subjects.front() : *found;
    if (!view.subject.meter) {
        HOLDBAND_TRY(readSensor(file, span, view));
        return view;
    }
    const auto meter = std::find_if(meters->begin(), meters->end(), [&](const Meter& each) {
        return each.name == view.subject.name;
    });
    HOLDBAND_TRY(readMeter(file, *meter, span, view));
    return view;
}

} // namespace holdband::ui
