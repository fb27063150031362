#include "core/results/run/daily_energy.h"

#include "core/text/times.h"

namespace holdband::results {

namespace {

Date dateOf(const analysis::SpanEnergy& day, const Zone& zone)
{
    return zone.localDate(day.span.start);
}

bool isWhole(const analysis::SpanEnergy& day, const Zone& zone)
{
    const Date date = dateOf(day, zone);
    const Date next{std::chrono::local_days{date} + std::chrono::days{1}};
    return day.span.start == zone.startOfDay(date) && day.span.end == zone.startOfDay(next) &&
           day.energy.metered == std::vector{day.span};
}

} // namespace

std::optional<DailyEnergy> dailyEnergyOf(const analysis::RunEnergy& energy, const Zone& zone)
{
    DailyEnergy daily;
    double sum = 0.0;
    for (std::size_t i = 0; i < energy.days.size(); ++i) {
        if (!isWhole(energy.days[i], zone))
            continue;
        const double kwh = energy.days[i].energy.kwh;
        const bool first = daily.wholeDays.empty();
        if (first || kwh < energy.days[daily.least].energy.kwh)
            daily.least = i;
        if (first || kwh > energy.days[daily.most].energy.kwh)
            daily.most = i;
        daily.wholeDays.push_back(i);
        sum += kwh;
    }
    if (daily.wholeDays.empty())
        return std::nullopt;
    daily.meanKwh = sum / static_cast<double>(daily.wholeDays.size());
    return daily;
}

std::string dayText(const analysis::SpanEnergy& day, const Zone& zone)
{
    return dateText(dateOf(day, zone));
}

} // namespace holdband::results
