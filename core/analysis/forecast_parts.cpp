#include "core/analysis/forecast_parts.h"

#include "core/analysis/heat.h"

#include <algorithm>

namespace holdband::analysis {

namespace {

constexpr double meteredShareNeeded = 0.9;

std::optional<double> kwhOf(const std::optional<Energy>& heat)
{
    return heat ? std::optional(heat->kilowattHours()) : std::nullopt;
}

void add(Lift& sum, const Lift& lift)
{
    sum.coolingKh += lift.coolingKh;
    sum.heatingKh += lift.heatingKh;
    sum.knownHours += lift.knownHours;
    sum.spanHours += lift.spanHours;
}

} // namespace

bool PastBatch::counts(const ByPart<std::optional<PartConditions>>& planned) const
{
    return std::all_of(bothParts.begin(), bothParts.end(),
                       [&](BatchPart part) { return !planned[part] || parts[part]; });
}

double PastBatch::kwh(const ByPart<std::optional<PartConditions>>& planned) const
{
    double sum = 0.0;
    for (const BatchPart part : bothParts) {
        if (planned[part])
            sum += parts[part]->kwh;
    }
    return sum;
}

std::optional<PastPart> pastPart(const EnergyFigure& energy, Span part, const Lift& lift,
                                 std::optional<Energy> heat)
{
    const double hours = energy.meteredMs() / msPerHour;
    if (part.empty() || hours + 1e-9 < meteredShareNeeded * part.hours() || !lift.knownEnough())
        return std::nullopt;
    return PastPart{{hours, lift.coolingKh / lift.knownHours, kwhOf(heat)}, energy.kwh};
}

std::optional<Energy> crashTargetHeat(const std::vector<PlacedStage>& stages, Volume volume)
{
    const std::optional<std::size_t> crash = crashStage(stages);
    if (!crash)
        return std::nullopt;
    const PlacedStage& before = stages[*crash - 1];
    const auto length = static_cast<double>((before.span.end - before.span.start).count());
    return heatToCool(volume, Temperature::celsius(before.targetCelsiusAt(length)),
                      stages[*crash].startTarget);
}

BatchPart partOf(const std::vector<PlacedStage>& stages, std::size_t stage)
{
    const std::optional<std::size_t> crash = crashStage(stages);
    return crash && stage >= *crash ? BatchPart::crash : BatchPart::beforeCrash;
}

std::optional<ByPart<std::optional<PartConditions>>>
plannedParts(const std::vector<PlacedStage>& stages, const std::vector<Lift>& lifts,
             const PartHeat& heat)
{
    ByPart<Lift> sums;
    for (std::size_t i = 0; i < stages.size(); ++i)
        add(sums[partOf(stages, i)], lifts[i]);
    ByPart<std::optional<PartConditions>> planned;
    for (const BatchPart part : bothParts) {
        const Lift& lift = sums[part];
        if (!(lift.spanHours > 0.0))
            continue;
        if (!lift.knownEnough())
            return std::nullopt;
        planned[part] = {lift.spanHours, lift.coolingKh / lift.knownHours, kwhOf(heat[part])};
    }
    return planned;
}

} // namespace holdband::analysis
