// What the next batch would use, when it would be cold and whether it can be held, for one plan in
// one room on one or more setups: numbers and codes. The texts are made last, from these
// (next_batch_text.h). The window, the command line and the report show this and compute nothing
// themselves. Section 8 of the method in DEVELOPERS.md.
#pragma once

#include "core/analysis/backtest.h"
#include "core/analysis/comparison.h"
#include "core/analysis/crash_duration.h"
#include "core/analysis/forecast_stages.h"
#include "core/analysis/hold_need.h"
#include "core/results/forecast/next_batch_text.h"
#include "core/results/forecast/next_plan.h"
#include "core/results/forecast/room_record.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace holdband::results {

class ForecastCache;

/// A stretch of the room's record. `sensor` may be empty: the one that covers most of it.
struct RoomStretch {
    Span span;
    std::string sensor;

    bool operator==(const RoomStretch&) const = default;
};

struct NextBatchRequest {
    std::vector<std::string> setups; ///< empty: all that are in use
    NextPlan plan;
    std::variant<analysis::TypedRoom, RoomStretch> room;
    char decimalSign = '.';
};

/// How a crash goes: the share of its hours after which it has passed each step of the way, which
/// are equal in temperature. From 0 to 1, both included.
using CrashShape = std::vector<double>;

struct SetupForecast {
    Setup setup;
    std::size_t place = 0;     ///< among the logbook's setups, for its colour
    std::size_t batches = 0;   ///< past ones of the plan's kind
    std::size_t otherKind = 0; ///< past ones of the other kind: shared, or alone
    std::size_t unmetered = 0; ///< of `batches`, of which no part counts
    bool hasMeter = false;
    analysis::Forecast energy;
    std::vector<analysis::StageForecast> stages; ///< empty without a total
    std::optional<analysis::Cost> cost;          ///< absent where a price is unknown
    std::optional<analysis::CrashDuration> crash;
    CrashShape crashShape; ///< empty without `crash`
    std::optional<double> seenLiftK;
    analysis::HoldOutlook hold = analysis::HoldOutlook::unknown;
    analysis::Backtest backtest;

    /// Whether the total says enough to be shown as a figure.
    bool usable() const { return energy.total && energy.lack == analysis::ForecastLack::none; }
};

/// The room as the plan finds it.
struct NextRoom {
    std::optional<RoomRecord> record; ///< absent: typed
    double meanCelsius = 0.0;         ///< °C
    double swingK = 0.0;              ///< K, from the lowest to the highest of a day
    std::size_t starts = 1;           ///< how many beginnings of the plan were averaged
    bool repeated = false;            ///< the record is shorter than the plan
};

struct NextBatch {
    LogbookSettings settings;
    Zone zone;
    NextPlan plan;
    PlacedPlan placed;
    std::optional<analysis::CrashPlan> crashPlan; ///< absent without a crash
    NextRoom room;
    std::optional<double> neededLiftK; ///< K
    std::vector<SetupForecast> setups;
    /// Where two are forecast: whose energy is less; tooClose where the intervals overlap; absent
    /// where one has no forecast.
    std::optional<analysis::Ahead> less;
    NextBatchText text;
};

/// With a `cache`, only the batches are computed that a change has touched since the last use.
/// Problem (data): an unknown setup (with suggestions), a plan or a room that makes no sense.
Result<NextBatch> reviewNextBatch(const store::LogbookFile& logbook,
                                  const NextBatchRequest& request, ForecastCache* cache = nullptr);

/// The forecast to be kept with a batch that is pitched on that setup; absent without a figure.
std::optional<BatchForecast> batchForecast(const NextBatch& review, const SetupForecast& setup,
                                           Instant made);

/// kWh of the part; absent without a forecast of it.
const analysis::EnergyForecast* partEnergy(const SetupForecast& setup, analysis::BatchPart part);

} // namespace holdband::results
