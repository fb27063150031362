// What a batch is made of for a forecast: the time before the crash and the crash, past and
// planned. Section 8.1 of the method in DEVELOPERS.md. No Qt, no SQL.
#pragma once

#include "core/analysis/energy_figure.h"
#include "core/analysis/target.h"
#include "core/analysis/weather.h"
#include "core/quantity/energy.h"
#include "core/quantity/volume.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace holdband::analysis {

/// In time order; also the index into a ByPart.
enum class BatchPart { beforeCrash, crash };
inline constexpr std::array bothParts{BatchPart::beforeCrash, BatchPart::crash};

/// One value for each part.
template <typename T>
class ByPart {
public:
    T& operator[](BatchPart part) { return m_parts[static_cast<std::size_t>(part)]; }
    const T& operator[](BatchPart part) const { return m_parts[static_cast<std::size_t>(part)]; }

private:
    std::array<T, bothParts.size()> m_parts{};
};

/// What decides how much energy a part needs.
struct PartConditions {
    double hours = 0.0;            ///< h
    double liftK = 0.0;            ///< K, mean of max(0, room − beer); planned: room − target
    std::optional<double> heatKwh; ///< kWh of heat to remove; absent where unknown
};

/// A part of a past batch that counts: pastPart().
struct PastPart {
    PartConditions conditions;
    double kwh = 0.0; ///< kWh of electricity, the batch's share
};

struct PastBatch {
    std::string batch; ///< as WeatherPair::of names it
    ByPart<std::optional<PastPart>> parts;

    /// Whether every part that `planned` has counts here.
    bool counts(const ByPart<std::optional<PartConditions>>& planned) const;
    /// kWh, of the parts that `planned` has; all of them must count.
    double kwh(const ByPart<std::optional<PartConditions>>& planned) const;
};

/// A part counts where 90 % of it is metered and its lift is known. Its hours are the metered ones,
/// the same as its energy's. `energy` is RunEnergy::beforeCrash or ::crash, `lift` that of the
/// energy's metered time.
std::optional<PastPart> pastPart(const EnergyFigure& energy, Span part, const Lift& lift,
                                 std::optional<Energy> heat);

/// The heat that the crash removes from the beer: from the target at the end of the stage before it
/// to its own; absent without a crash. For past and planned batches alike.
std::optional<Energy> crashTargetHeat(const std::vector<PlacedStage>& stages, Volume volume);

/// The part that a stage belongs to.
BatchPart partOf(const std::vector<PlacedStage>& stages, std::size_t stage);

/// The heat of each part: fermentationHeat() before the crash, crashTargetHeat() in it.
using PartHeat = ByPart<std::optional<Energy>>;

/// The plan's parts; a plan without a crash has one. `lifts` are plannedLifts() of the same stages.
/// Absent where less than 90 % of a part has a known lift.
std::optional<ByPart<std::optional<PartConditions>>>
plannedParts(const std::vector<PlacedStage>& stages, const std::vector<Lift>& lifts,
             const PartHeat& heat);

} // namespace holdband::analysis
