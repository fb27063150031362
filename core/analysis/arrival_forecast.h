// When will a crash, or a warm-up, reach its target's band? From the readings since the setup was
// turned down and from the past crashes that took the same way. Section 8.3 of the method in
// DEVELOPERS.md. Numbers and codes; words are made elsewhere. No Qt, no SQL.
#pragma once

#include "core/analysis/temperature_fall.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace holdband::analysis {

struct CrashRecord {
    std::vector<TemperatureAt> readings; ///< since it was turned down
    std::optional<double> litres;        ///< absent where unknown
    bool shared = false;                 ///< another batch ran on its setup meanwhile
};

/// The direction follows from the first reading: above the target a crash, below it a warm-up.
/// "Now" is the last reading.
struct ArrivalQuestion {
    std::vector<TemperatureAt> readings; ///< since it was turned down, or up
    double targetC = 0.0;
    double toleranceK = 0.0;
    std::optional<double> floorC; ///< the lowest (warm-up: highest) it could cool to, where known
    std::optional<double> litres; ///< absent where unknown
    bool shared = false;          ///< another batch runs on the setup now
    std::vector<CrashRecord> past;
};

enum class ArrivalAnswer {
    hours,   ///< middle, low and high
    openTop, ///< "not before low, may not arrive"; low is absent where it does not fall at all
    willNotArrive, ///< not at this rate; levels off near levelsOffC
    notYet,        ///< too early to say: see NotYet
    arrived,       ///< a reading was in the band, or beyond it
    noQuestion     ///< no finite reading, or a target or tolerance that is none
};

enum class NotYet {
    none,
    tooSoon,     ///< after turning down
    fewBlocks,   ///< with readings
    hardlyFallen ///< less than 1 K or a tenth of the way
};

enum class ArrivalSource { none, pastCrashes, curve };

struct ArrivalForecast {
    ArrivalAnswer answer = ArrivalAnswer::noQuestion;
    NotYet notYet = NotYet::none;
    ArrivalSource source = ArrivalSource::none;
    std::size_t pastCrashes = 0;   ///< that it rests on
    bool byPace = false;           ///< past crashes are scaled by this one's pace, not by volume
    std::optional<double> middleH; ///< hours from the last reading
    std::optional<double> lowH;    ///< hours from the last reading, 90 % interval
    std::optional<double> highH;   ///< hours from the last reading, 90 % interval
    std::optional<double> levelsOffC;
};

ArrivalForecast arrivalForecastOf(const ArrivalQuestion& question);

} // namespace holdband::analysis
