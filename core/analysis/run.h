// Everything that is computed for one batch: the verdict and what it is based on, energy, money,
// weather. The only entry point to the analysis of a run; callers read the store and fill in a
// RunInput. No Qt, no SQL.
#pragma once

#include "core/analysis/left_out.h"
#include "core/analysis/money.h"
#include "core/analysis/setup_energy.h"
#include "core/analysis/stage_figures.h"
#include "core/analysis/verdict.h"
#include "core/analysis/weather.h"

#include <optional>
#include <string>
#include <vector>

namespace holdband::analysis {

struct LabelledSpan {
    std::string label;
    Span span;
};

/// A hydrometer reading of the batch, not corrected.
struct GravityReading {
    Instant at;
    Gravity gravity;
    std::optional<Temperature> sample;

    bool operator==(const GravityReading&) const = default;
};

struct RunInput {
    Batch batch;
    /// Pitched to ended; for an open batch to the last reading of its beer, or to the last of a
    /// meter of its setup, at most 48 h later.
    Span span;
    std::optional<Instant> judgedTo; ///< of an open batch whose beer readings end earlier
    JudgingInput judging;
    JudgingSettings settings;
    Series ambient; ///< °C; empty where there is no ambient sensor
    Milliseconds ambientGap{0};
    SetupEnergy setup{{}};
    std::vector<ConcurrentBatch> concurrentBatches; ///< every batch of the setup, this one included
    std::size_t self = 0;                           ///< index of this batch in `concurrentBatches`
    std::vector<PricedSpan> prices;
    std::vector<GravityReading> gravities; ///< in order of time
    std::vector<LabelledSpan> days;        ///< local calendar days, clipped to the span
};

struct SpanEnergy {
    std::string label;
    Span span;
    EnergyFigure energy;
};

struct RunEnergy {
    EnergyFigure whole;
    std::optional<Cost> cost;
    std::vector<SharedTime> sharedWith; ///< other batches on the setup at the same time
    std::vector<SpanEnergy> stages;     ///< those that are judged, in the same order
    std::vector<SpanEnergy> days;
    std::vector<SpanEnergy> betweenReadings; ///< between successive register readings
    std::optional<SpanEnergy> beforeCrash;
    std::optional<SpanEnergy> crash;
    std::optional<Lift> lift; ///< over the full batch; absent if none of it is known
    /// Over the metered part, where there is one; the basis of kwhPerDegreeDay.
    std::optional<Lift> meteredLift;
    std::optional<double> kwhPerDegreeDay; ///< kWh for a K·day of cooling lift
    std::vector<WeightedSpan> shares;

    bool partlyMetered() const;
    std::optional<double> meanWatts() const;
    Span span;
};

/// Heat removed from the beer during the crash, and the electricity used for it.
struct CrashHeat {
    Energy moved;        ///< an estimate: see heat.h
    EnergyFigure energy; ///< over the same time
    Temperature from;    ///< of the beer, at the crash's first covered instant
    Temperature to;      ///< at its arrival
    Span span;           ///< from the first covered instant to the arrival
    std::optional<double> effectivePerformance() const;
};

/// The result of fermentation, from original and final gravity; formulas in gravity.h.
struct Fermentation {
    Gravity original;
    Gravity final;
    /// Set where no final gravity was given and the last measured one is used.
    std::optional<Instant> measuredAt;
    double apparentAttenuation = 0.0; ///< %
    double realAttenuation = 0.0;     ///< %
    double alcoholSimple = 0.0;       ///< % by volume, 131.25 × the fall in gravity
    double alcoholBalling = 0.0;      ///< % by volume
};

/// The calibration temperature of the hydrometer, to which samples are corrected: 68 °F.
inline constexpr Temperature hydrometerCalibration = Temperature::celsius(20.0);

/// A gravity measured in the batch.
struct GravityPoint {
    GravityReading reading;
    /// Corrected to the hydrometer's temperature where the sample's is known, else as read.
    Gravity gravity;
    std::optional<double> apparentAttenuation; ///< %; absent without an original gravity
};

struct RunFigures {
    JudgedBatch judged;
    std::vector<StageFigures> stages; ///< of judged.stages
    std::optional<LeftOutFigures> leftOut;
    RunEnergy energy;
    std::optional<std::size_t> crash; ///< index of the crash stage
    std::optional<CrashHeat> crashHeat;
    std::optional<Fermentation> fermentation; ///< absent without two gravities
    std::vector<GravityPoint> gravities;      ///< in order of time
};

/// The stages that are judged.
std::vector<PlacedStage> judgedStages(const RunInput& input);

/// The verdict and its figures; energy, heat and gravity are left empty.
RunFigures judgeRun(const RunInput& input, Detail detail = Detail::all);

RunFigures analyseRun(const RunInput& input, Detail detail = Detail::all);

/// W over the metered time; absent where nothing is metered.
std::optional<double> meanWatts(const EnergyFigure& energy);

} // namespace holdband::analysis
