#include "core/results/prices.h"

#include <algorithm>

namespace holdband::results {

namespace {

using std::chrono::minutes;

constexpr int minutesPerDay = 24 * 60;

Instant edgeInstant(const Zone& zone, Date date, int minute)
{
    const LocalTime local = LocalTime{std::chrono::local_days{date}} + minutes{minute};
    const Resolved resolved = zone.resolve(local);
    return resolved.kind == LocalKind::missing ? resolved.change : resolved.earlier;
}

/// All edges of the local days that the span touches; the price at its start follows from an edge
/// before it.
std::vector<Instant> edgesOver(const Tariff& tariff, const Zone& zone, Span span)
{
    std::vector<Instant> edges{span.end};
    for (const LocalDay& day : zone.localDays(span)) {
        edges.push_back(zone.startOfDay(day.date));
        for (const TariffWindow& window : tariff.windows) {
            edges.push_back(edgeInstant(zone, day.date, window.fromMinute));
            edges.push_back(edgeInstant(zone, day.date, window.toMinute % minutesPerDay));
        }
    }
    std::erase_if(edges, [&](Instant at) { return at > span.end; });
    std::sort(edges.begin(), edges.end());
    edges.erase(std::unique(edges.begin(), edges.end()), edges.end());
    return edges;
}

/// Monday is 0.
std::size_t weekdayOf(std::chrono::local_days day)
{
    return std::chrono::weekday(day).iso_encoding() - 1;
}

bool covers(const TariffWindow& window, LocalTime local)
{
    const auto day = std::chrono::floor<std::chrono::days>(local);
    const auto minute = std::chrono::floor<minutes>(local - day).count();
    const std::size_t today = weekdayOf(day);
    if (window.fromMinute < window.toMinute)
        return window.days[today] && minute >= window.fromMinute && minute < window.toMinute;
    // After midnight the window still belongs to the day on which it began.
    const bool begunToday = window.days[today] && minute >= window.fromMinute;
    const bool begunBefore = window.days[(today + 6) % 7] && minute < window.toMinute;
    return begunToday || begunBefore;
}

std::optional<double> priceAt(const Tariff& tariff, LocalTime local)
{
    for (const TariffWindow& window : tariff.windows) {
        if (covers(window, local))
            return window.pricePerKwh;
    }
    return tariff.pricePerKwh;
}

} // namespace

std::vector<analysis::PricedSpan> pricesOver(const Tariff& tariff, const Zone& zone, Span span)
{
    if (span.empty())
        return {};
    if (tariff.windows.empty()) {
        if (!tariff.pricePerKwh)
            return {};
        return {{span, *tariff.pricePerKwh}};
    }
    std::vector<analysis::PricedSpan> prices;
    const std::vector<Instant> edges = edgesOver(tariff, zone, span);
    for (std::size_t i = 1; i < edges.size(); ++i) {
        const std::optional<double> price = priceAt(tariff, zone.toLocal(edges[i - 1]));
        const Span part = intersection({edges[i - 1], edges[i]}, span);
        if (!price || part.empty())
            continue;
        const bool goesOn = !prices.empty() && prices.back().span.end == part.start &&
                            prices.back().pricePerKwh == *price;
        if (goesOn)
            prices.back().span.end = part.end;
        else
            prices.push_back({part, *price});
    }
    return prices;
}

std::vector<analysis::PricedSpan> pricesOver(const LogbookSettings& settings, const Zone& zone,
                                             Span span)
{
    std::vector<analysis::PricedSpan> prices;
    const Tariff* tariff = &settings.tariff;
    Instant from = span.start;
    const auto addUntil = [&](Instant to) {
        const auto more = pricesOver(*tariff, zone, intersection(span, {from, to}));
        prices.insert(prices.end(), more.begin(), more.end());
    };
    for (const TariffChange& change : settings.tariffChanges) {
        addUntil(change.from);
        tariff = &change.tariff;
        from = std::max(span.start, change.from);
    }
    addUntil(span.end);
    return prices;
}

} // namespace holdband::results
