// The scenario: which batches ran when and how, and what went wrong. Temperatures of schedules are
// in degrees Fahrenheit, as the brewers wrote them; everything else is SI.
#pragma once

#include "sample-data/maker/clock.h"

#include <cstdint>
#include <string>
#include <vector>

namespace holdband::sample {

inline double celsius(double fahrenheit)
{
    return (fahrenheit - 32.0) / 1.8;
}
inline double fahrenheit(double celsius)
{
    return celsius * 1.8 + 32.0;
}

enum class Vessel { loop1, loop2, cabinet };

struct Stage {
    std::string label;
    double targetF;
    double hours;             ///< 0 = to the batch's end
    bool ramp = false;        ///< a straight line from the previous target
    double settleHours = 0.0; ///< 0 = not set
};

struct Batch {
    std::string name;
    Vessel vessel;
    Instant filled;
    Instant pitched;
    Instant ended;
    Instant emptied;
    double fillF; ///< the wort's temperature when the vessel is filled
    double originalGravity;
    double finalGravity;
    double halfwayHours; ///< from pitching until half of the extract is fermented
    double paceHours;    ///< scale of the logistic curve of fermentation
    std::vector<Stage> schedule;
};

/// A round of meter readings that was missed.
struct MissedRound {
    std::string day; ///< "2026-03-06", Denver
    bool evening;
};

/// A few days that are warmer than the season.
struct WarmSpell {
    Span span;
    double riseC;
};

/// What decides the room's temperature.
struct Weather {
    Span spring;           ///< in the cool room, which warms over these months
    Instant movedToGarage; ///< from then on the room is the garage
    std::vector<WarmSpell> warmSpells;
    std::uint64_t start = 20260214; ///< of the random phases of the slow waves
};

struct Scenario {
    Span whole;
    Weather weather;
    std::vector<Batch> batches;
    std::vector<Span> bathOn;  ///< when the loop's coolant is cooled
    std::vector<Span> loopLog; ///< when the loop's logger writes
    std::vector<Span> cabinetLog;
    /// When its meter is read twice a day; otherwise on Sunday mornings.
    std::vector<Span> loopRounds;
    std::vector<Span> cabinetRounds;
    std::vector<MissedRound> missed;
    Span powerCut;
    Span pumpStopped;          ///< of vessel 1
    std::vector<Span> lidOpen; ///< of the cabinet
    Span probeOut;             ///< the cabinet's beer probe hangs in the room
    Span loopLogGap;
    Instant mistyped; ///< the loop's next round after this was typed wrongly
};

/// February to May: the six batches in the cool room.
Scenario springTrials();

inline constexpr double crashF = 35.0;

/// An ale: 9 days at 66 °F, a day's rise, a rest and a crash.
std::vector<Stage> aleSchedule(double riseF, double restHours, double settleHours);
/// A lager: 52 °F, a rise to 62 in a day and a half, a rest and a crash.
std::vector<Stage> lagerSchedule(double primaryHours, double restHours);

/// A batch with an ale's usual gravities and pace, filled 50 minutes before pitching and emptied
/// 40 minutes after the end. The times are Denver's.
Batch batchOf(const char* name, Vessel vessel, const char* pitched, const char* ended);

/// The batch's target at an instant, °C; before pitching the first one, after the end the last.
double targetC(const Batch& batch, Instant at);

} // namespace holdband::sample
