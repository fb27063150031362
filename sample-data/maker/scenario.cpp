#include "sample-data/maker/scenario.h"

namespace holdband::sample {

std::vector<Stage> aleSchedule(double riseF, double restHours, double settleHours)
{
    return {{"Primary", 66, 216},
            {"Rise", riseF, 24, true},
            {"Rest", riseF, restHours},
            {"Crash", crashF, 0, false, settleHours}};
}

std::vector<Stage> lagerSchedule(double primaryHours, double restHours)
{
    return {{"Primary", 52, primaryHours},
            {"Rise", 62, 36, true},
            {"Diacetyl rest", 62, restHours},
            {"Crash", crashF, 0, false, 36}};
}

Batch batchOf(const char* name, Vessel vessel, const char* pitched, const char* ended)
{
    using namespace std::chrono_literals;
    const Instant start = denver(pitched);
    const Instant end = denver(ended);
    return {name, vessel, start - 50min, start, end, end + 40min, 66, 1.050, 1.010, 44, 9, {}};
}

namespace {

Batch ale1()
{
    Batch b = batchOf("Ale 1", Vessel::loop1, "2026-02-26 17:30", "2026-03-13 18:30");
    b.originalGravity = 1.052;
    b.finalGravity = 1.011;
    b.fillF = 67.5;
    b.schedule = aleSchedule(70, 48, 36);
    return b;
}

Batch saison1()
{
    Batch b = batchOf("Saison 1", Vessel::loop2, "2026-03-04 19:00", "2026-03-19 18:00");
    b.originalGravity = 1.056;
    b.finalGravity = 1.006;
    b.fillF = 65;
    b.halfwayHours = 52;
    b.paceHours = 13;
    b.schedule = {{"Primary", 75, 0}};
    return b;
}

Batch ale2()
{
    Batch b = batchOf("Ale 2", Vessel::loop1, "2026-04-20 18:15", "2026-05-05 18:00");
    b.finalGravity = 1.012;
    b.fillF = 68;
    b.schedule = aleSchedule(70, 48, 36);
    return b;
}

Batch lager1()
{
    Batch b = batchOf("Lager 1", Vessel::cabinet, "2026-02-16 17:45", "2026-03-14 17:30");
    b.originalGravity = 1.048;
    b.finalGravity = 1.009;
    b.fillF = 58;
    b.halfwayHours = 105;
    b.paceHours = 26;
    b.schedule = lagerSchedule(336, 72);
    return b;
}

Batch lager2()
{
    Batch b = batchOf("Lager 2", Vessel::cabinet, "2026-03-24 18:30", "2026-04-18 17:00");
    b.originalGravity = 1.049;
    b.finalGravity = 1.010;
    b.fillF = 57;
    b.halfwayHours = 100;
    b.paceHours = 25;
    b.schedule = lagerSchedule(312, 72);
    return b;
}

Batch ale3()
{
    Batch b = batchOf("Ale 3", Vessel::cabinet, "2026-05-09 18:00", "2026-05-25 12:00");
    b.originalGravity = 1.053;
    b.finalGravity = 1.012;
    b.fillF = 68;
    b.schedule = aleSchedule(69, 72, 72);
    return b;
}

} // namespace

Scenario springTrials()
{
    Scenario s;
    s.whole = denverSpan("2026-02-14 12:00", "2026-05-31 12:00");
    s.weather.spring = s.whole;
    s.weather.movedToGarage = s.whole.to;
    s.weather.warmSpells = {{denverSpan("2026-05-20 12:00", "2026-05-29 12:00"), 9.5}};
    s.batches = {lager1(), ale1(), saison1(), lager2(), ale2(), ale3()};
    s.bathOn = {denverSpan("2026-02-25 19:30", "2026-03-20 08:30"),
                denverSpan("2026-04-19 19:00", "2026-05-06 08:00")};
    s.loopLog = {denverSpan("2026-02-26 16:30", "2026-03-19 19:00"),
                 denverSpan("2026-04-20 17:15", "2026-05-05 19:00")};
    s.cabinetLog = {denverSpan("2026-02-16 16:45", "2026-03-14 18:30"),
                    denverSpan("2026-03-24 17:30", "2026-04-18 18:00"),
                    denverSpan("2026-05-09 17:00", "2026-05-25 13:00")};
    s.loopRounds = {denverSpan("2026-02-25 12:00", "2026-03-20 12:00"),
                    denverSpan("2026-04-19 12:00", "2026-05-06 12:00")};
    s.cabinetRounds = {denverSpan("2026-02-16 05:00", "2026-03-15 12:00"),
                       denverSpan("2026-03-24 05:00", "2026-04-19 12:00"),
                       denverSpan("2026-05-09 05:00", "2026-05-26 12:00")};
    s.missed = {{"2026-02-21", true}, {"2026-03-06", false}, {"2026-03-29", false},
                {"2026-04-11", true}, {"2026-05-02", true},  {"2026-05-16", false}};
    s.powerCut = denverSpan("2026-04-28 03:10", "2026-04-28 03:52");
    s.pumpStopped = denverSpan("2026-02-28 12:20", "2026-02-28 16:45");
    s.lidOpen = {denverSpan("2026-03-28 16:10", "2026-03-28 19:15")};
    s.probeOut = denverSpan("2026-03-01 10:05", "2026-03-01 10:30");
    s.loopLogGap = denverSpan("2026-04-24 21:40", "2026-04-25 15:25");
    s.mistyped = denver("2026-03-02 12:00");
    return s;
}

double targetC(const Batch& batch, Instant at)
{
    double hoursLeft = hoursBetween(batch.pitched, at);
    double before = batch.schedule.front().targetF;
    for (const Stage& stage : batch.schedule) {
        const bool here = stage.hours == 0.0 || hoursLeft < stage.hours;
        if (here && stage.ramp)
            return celsius(before + (stage.targetF - before) * hoursLeft / stage.hours);
        if (here)
            return celsius(stage.targetF);
        hoursLeft -= stage.hours;
        before = stage.targetF;
    }
    return celsius(before);
}

} // namespace holdband::sample
