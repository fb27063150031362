#include "sample-data/maker/summer.h"

#include <initializer_list>
#include <vector>

namespace holdband::sample {

namespace {

Batch ale4()
{
    Batch b = batchOf("Ale 4", Vessel::loop1, "2026-06-05 18:00", "2026-06-20 18:30");
    b.originalGravity = 1.051;
    b.finalGravity = 1.011;
    b.fillF = 69;
    b.schedule = aleSchedule(70, 48, 36);
    return b;
}

Batch ale5()
{
    Batch b = batchOf("Ale 5", Vessel::cabinet, "2026-06-12 18:20", "2026-06-28 18:00");
    b.originalGravity = 1.052;
    b.finalGravity = 1.011;
    b.fillF = 68;
    b.halfwayHours = 46;
    b.schedule = aleSchedule(69, 72, 72);
    return b;
}

Batch lager3()
{
    Batch b = batchOf("Lager 3", Vessel::loop1, "2026-06-25 18:15", "2026-07-19 17:45");
    b.originalGravity = 1.048;
    b.finalGravity = 1.010;
    b.fillF = 60;
    b.halfwayHours = 98;
    b.paceHours = 25;
    b.schedule = lagerSchedule(312, 72);
    return b;
}

Batch ale6()
{
    Batch b = batchOf("Ale 6", Vessel::cabinet, "2026-07-08 18:00", "2026-07-24 18:15");
    b.originalGravity = 1.051;
    b.finalGravity = 1.012;
    b.fillF = 70;
    b.halfwayHours = 41;
    b.paceHours = 8.5;
    b.schedule = aleSchedule(69, 72, 72);
    return b;
}

Batch ale7()
{
    Batch b = batchOf("Ale 7", Vessel::loop1, "2026-07-24 18:30", "2026-08-08 18:00");
    b.originalGravity = 1.052;
    b.finalGravity = 1.011;
    b.fillF = 71;
    b.halfwayHours = 42;
    b.schedule = aleSchedule(70, 48, 36);
    return b;
}

Batch ale8()
{
    Batch b = batchOf("Ale 8", Vessel::cabinet, "2026-08-28 18:15", "2026-09-13 18:00");
    b.originalGravity = 1.053;
    b.finalGravity = 1.012;
    b.fillF = 68;
    b.halfwayHours = 45;
    b.schedule = aleSchedule(69, 72, 72);
    return b;
}

template <typename T>
void append(std::vector<T>& all, std::initializer_list<T> more)
{
    all.insert(all.end(), more);
}

} // namespace

Scenario springAndSummer()
{
    Scenario s = springTrials();
    s.whole.to = denver("2026-09-20 12:00");
    s.weather.movedToGarage = denver("2026-06-01 10:00");
    append(s.weather.warmSpells, {{denverSpan("2026-08-03 12:00", "2026-08-10 12:00"), 6.0}});
    append(s.batches, {ale4(), ale5(), lager3(), ale6(), ale7(), ale8()});
    append(s.bathOn, {denverSpan("2026-06-04 19:00", "2026-06-21 08:30"),
                      denverSpan("2026-06-24 19:00", "2026-07-20 08:00"),
                      denverSpan("2026-07-23 19:30", "2026-08-09 08:30")});
    append(s.loopLog, {denverSpan("2026-06-05 17:00", "2026-06-20 19:30"),
                       denverSpan("2026-06-25 17:15", "2026-07-19 18:30"),
                       denverSpan("2026-07-24 17:30", "2026-08-08 19:00")});
    append(s.cabinetLog, {denverSpan("2026-06-12 17:15", "2026-06-28 19:00"),
                          denverSpan("2026-07-08 17:00", "2026-07-24 19:15"),
                          denverSpan("2026-08-28 17:15", "2026-09-13 19:00")});
    append(s.loopRounds, {denverSpan("2026-06-04 12:00", "2026-06-21 12:00"),
                          denverSpan("2026-06-24 12:00", "2026-07-20 12:00"),
                          denverSpan("2026-07-23 12:00", "2026-08-09 12:00")});
    append(s.cabinetRounds, {denverSpan("2026-06-12 05:00", "2026-06-29 12:00"),
                             denverSpan("2026-07-08 05:00", "2026-07-25 12:00"),
                             denverSpan("2026-08-28 05:00", "2026-09-14 12:00")});
    append(s.missed, {{"2026-06-17", true}, {"2026-07-12", false}, {"2026-09-05", true}});
    append(s.lidOpen, {denverSpan("2026-06-16 16:20", "2026-06-16 17:50")});
    return s;
}

} // namespace holdband::sample
