// The verdict on a batch: judged once as planned and twice more with the sensor's uncertainty.
// Section 3 of the method in DEVELOPERS.md; guard bands after JCGM 106:2012. No Qt, no SQL.
#pragma once

#include "core/analysis/hold_band.h"
#include "core/analysis/statistics.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace holdband::analysis {

enum class Verdict { stayed, left, missed, notEnoughData };

struct JudgingSettings {
    double coverageNeeded = 0.9; ///< covered / hold time
};

/// An excursion and the number of its stage.
struct StageExcursion {
    std::size_t stage = 0;
    Excursion excursion;
};

/// Sums over the stages of one judging.
struct BandTotals : HeldTime {
    std::size_t excursions = 0;
    std::size_t counted = 0;             ///< of these, outside at least as long as what is ignored
    std::optional<StageExcursion> worst; ///< of all stages; absent without excursions

    /// K beyond an edge; 0 without excursions.
    double worstPeak() const { return worst ? worst->excursion.peak : 0.0; }
};

/// The batch judged with the stages' tolerances moved by one amount.
struct Judging {
    std::vector<BandJudgement> stages;
    BandTotals totals;
    Verdict verdict = Verdict::notEnoughData;
    std::vector<std::string> missed; ///< labels
};

/// The beer's statistics over a stage's covered hold time.
struct StageStatistics {
    TimeMoments deviation;
    std::optional<double> minimum;                  ///< °C, of the beer
    std::optional<double> maximum;                  ///< °C, of the beer
    std::optional<std::array<double, 3>> quantiles; ///< 5, 50, 95 % of the deviation, K
};

struct JudgedBatch {
    std::vector<PlacedStage> stages;
    std::vector<StageTrack> tracks;
    Judging asPlanned;
    std::optional<Judging> tighter; ///< tolerance − u; absent where u is unknown
    std::optional<Judging> wider;   ///< tolerance + u
    std::vector<StageStatistics> statistics;
    TimeMoments deviation; ///< over all stages
    std::optional<bool> sure;
};

struct JudgingRules {
    Milliseconds gapLimit{0};
    std::optional<TemperatureDifference> accuracy; ///< u
    Milliseconds ignoreShorterThan{0};
    BandTimes bandTimes;
    bool open = false;
};

/// A stretch of the beer's readings that the user left out by hand; both ends are left out too.
struct LeftOut {
    Span span;
    std::string why;
};

struct JudgingInput : JudgingRules {
    Series beer; ///< °C
    std::vector<LeftOut> leftOut;
    /// Of a batch with left-out stretches: the beer with all its readings, °C.
    Series withLeftOut;
    Milliseconds gapLimitWithLeftOut{0};
};

/// Computing the quantiles takes as long as everything else together.
enum class Detail { all, withoutQuantiles };

/// Judges the placed stages. Only the series must be sorted.
JudgedBatch judgeBatch(std::vector<PlacedStage> stages, const JudgingInput& input,
                       const JudgingSettings& settings, Detail detail = Detail::all);

/// The same from existing tracks; `tracks` are the stages' under rules.gapLimit.
JudgedBatch judgeTracks(std::vector<PlacedStage> stages, std::vector<StageTrack> tracks,
                        const JudgingRules& rules, const JudgingSettings& settings,
                        Detail detail = Detail::all);

} // namespace holdband::analysis
