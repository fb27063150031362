#include "core/analysis/meter_curve.h"
#include "core/results/rounds/round_rows.h"

#include <algorithm>

namespace holdband::results {

using analysis::MeterCurve;

namespace {

constexpr std::chrono::hours weekLength{7 * 24};
constexpr std::size_t leastReadings = 3; ///< fewer make no course

double meanPower(double kwh, Instant from, Instant to)
{
    return kwh * 1000.0 / hoursBetween(from, to);
}

/// The meter's readings of the week that ends at `end`.
analysis::MeterRegister registerOfWeek(const Meter& meter,
                                       const std::vector<store::StoredReading>& all, Instant end)
{
    analysis::MeterRegister part;
    for (const store::StoredReading& stored : all) {
        if (stored.inForce.at >= end - weekLength && stored.inForce.at <= end)
            part.readings.push_back(stored.inForce);
    }
    part.rollsOverAt = meter.rollsOverAt;
    return part;
}

} // namespace

MeterWeek weekBefore(const Meter& meter, const std::vector<store::StoredReading>& all, Instant at)
{
    const MeterCurve curve(registerOfWeek(meter, all, at), {});
    MeterWeek week;
    for (std::size_t i = 1; curve.size() >= leastReadings && i < curve.size(); ++i) {
        if (curve.pairBefore(i) != MeterCurve::Pair::plain)
            continue;
        const Span pair{curve.at(i - 1), curve.at(i)};
        const double watts = meanPower(curve.over(pair).kwh, pair.start, pair.end);
        week.leastWatts = week.rates.empty() ? watts : std::min(week.leastWatts, watts);
        week.mostWatts = std::max(week.mostWatts, watts);
        week.rates.push_back({pair.start, pair.end, watts});
    }
    return week;
}

std::optional<UsedSince> usedSince(const RoundRow& row, double kwh)
{
    if (row.kind != RoundKind::meter || !row.lastAt || row.at <= *row.lastAt)
        return std::nullopt;
    analysis::MeterRegister both;
    both.readings = {{*row.lastAt, Energy::kilowattHours(row.last), row.decimals, {}, {}},
                     {row.at, Energy::kilowattHours(kwh), row.decimals, {}, {}}};
    const MeterCurve curve(both, {});
    if (curve.pairBefore(1) != MeterCurve::Pair::plain)
        return std::nullopt;
    const double used = curve.over({*row.lastAt, row.at}).kwh;
    return UsedSince{used, meanPower(used, *row.lastAt, row.at)};
}

} // namespace holdband::results
