// The scenario: which batches ran when and how, and what went wrong. Temperatures of schedules are
// in degrees Fahrenheit, as the brewers wrote them; everything else is SI.
#pragma once

#include "sample-data/maker/clock.h"

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

struct Scenario {
    Span whole;
    std::vector<Batch> batches;
    std::vector<Span> bathOn;  ///< when the loop's coolant is cooled
    std::vector<Span> loopLog; ///< when the loop's logger writes
    std::vector<Span> cabinetLog;
    /// When its meter is read twice a day; otherwise on Sunday mornings.
    std::vector<Span> loopRounds;
    std::vector<Span> cabinetRounds;
    std::vector<MissedRound> missed;
    Span powerCut;
    Span pumpStopped; ///< of vessel 1
    Span lidOpen;     ///< of the cabinet
    Span probeOut;    ///< the cabinet's beer probe hangs in the room
    Span loopLogGap;
    Span warmSpell;
    Instant mistyped; ///< the loop's next round after this was typed wrongly
};

Scenario springTrials();

/// The batch's target at an instant, °C; before pitching the first one, after the end the last.
double targetC(const Batch& batch, Instant at);

} // namespace holdband::sample
